#pragma once
// ExchangeGuest: a station's connection to one host, paired now or before; live push while it stands, tried again when it
// breaks.

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <utility>

#include "sync/exchange/session.h"
#include "sync/exchange/station.h"
#include "sync/net/guest.h"

namespace weavelog {

struct ExchangeGuestOptions {
  Address address;
  std::optional<Fingerprint> pin;         ///< from a scanned code or a known host; none when pairing by spoken words
  std::optional<PairingSecret> secret;    ///< to pair with; the host is remembered when that is done
  std::optional<PublicKey> expected;      ///< the known host's key
  bool keep_trying = false;               ///< reconnect after every end, unless this is a pairing
  std::function<bool(const BookId&, BookKind)> may_leave = [](const BookId&, BookKind) { return true; };
  std::function<LeaveRule()> leaves_by;  ///< see SessionOptions
  std::function<bool(const BookId&, BookKind, const BookId&, bool)> may_stay;  ///< see SessionOptions
  /// See ContentRules; none: no pictures are exchanged.
  std::function<bool(const BookId&, const Digest&)> names_content;
};

/// What a person sees of the connection.
struct GuestStatus {
  bool connected = false;
  SessionStatus session;        ///< of the newest connection
  std::optional<Fault> fault;   ///< why there is no connection, or why the last one ended
  /// Contents that were asked for and have neither come nor failed, while there is no connection too.
  std::set<std::pair<BookId, Digest>> wanted;
};

class ExchangeGuest {
 public:
  /// To pair, or to go on with a host paired before.
  [[nodiscard]] static ExchangeGuestOptions to_pair(const PairingCode& code);
  [[nodiscard]] static ExchangeGuestOptions to_return(const KnownHost& host);

  /// Starts at once. `station` must outlive it. `on_status` is called on its worker thread after every step that changed something.
  ExchangeGuest(Station& station, ExchangeGuestOptions options, std::function<void(const GuestStatus&)> on_status);
  /// Stops and waits. Not on its own worker thread.
  ~ExchangeGuest();
  ExchangeGuest(const ExchangeGuest&) = delete;
  ExchangeGuest& operator=(const ExchangeGuest&) = delete;

  [[nodiscard]] GuestStatus status() const;
  /// Waits until `until` holds of the status, or the time is over. True if it held.
  bool wait(std::chrono::milliseconds time, const std::function<bool(const GuestStatus&)>& until) const;
  /// Books were ticked for this host.
  void scope_changed();
  void wish_invitation(Role role, UnixMs life);
  void wish_devices();
  void wish_revocation(const PublicKey& device);
  void wish_change(const PublicKey& device, const std::string& name, std::optional<Role> role);
  /// Fetches a content, at the next connection if there is none; goes on from what has come after a cut. How it goes stands in
  /// SessionStatus::fetches.
  void fetch_content(const BookId& book, const Digest& hash);
  void retry_now();

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace weavelog
