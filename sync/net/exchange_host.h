#pragma once
// ExchangeHost: a station that others come to. A session for every pipe, live push to all of them.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "sync/exchange/session.h"
#include "sync/exchange/station.h"
#include "sync/net/host.h"

namespace weavelog {

struct ExchangeHostOptions {
  std::string address = "0.0.0.0";
  std::uint16_t port = kDefaultPort;
  ServerCertificate certificate;
  BookId event;
  std::function<bool(const BookId&, BookKind)> may_leave = [](const BookId&, BookKind) { return true; };
  std::function<LeaveRule()> leaves_by;  ///< see SessionOptions
  std::function<bool(const BookId&, BookKind, const BookId&, bool)> may_stay;  ///< see SessionOptions
  std::function<std::optional<Fault>()> over;                     ///< see SessionOptions
  RoomRights rights;                                              ///< see SessionOptions
  std::function<std::vector<BookId>(const PublicKey&)> shares;  ///< see SessionOptions: set for a tablet that plays the host
  /// See ContentRules; none: no pictures are exchanged.
  std::function<bool(const BookId&, const Digest&)> names_content;
  /// A session's state changed; on the host's worker thread.
  std::function<void(const SessionStatus&)> on_status;
};

/// Who is connected now.
struct Connected {
  std::string device;
  std::string remote;
  Role role = Role::reader;
  SessionState state = SessionState::greeting;
};

class ExchangeHost {
 public:
  /// Listens when this returns. `station` must outlive the host. Faults: those of WebHost::start.
  [[nodiscard]] static Outcome<std::unique_ptr<ExchangeHost>> start(Station& station, ExchangeHostOptions options);
  /// Stops and waits.
  ~ExchangeHost();
  ExchangeHost(const ExchangeHost&) = delete;
  ExchangeHost& operator=(const ExchangeHost&) = delete;

  [[nodiscard]] std::uint16_t port() const;
  [[nodiscard]] const Fingerprint& fingerprint() const;
  /// Any thread; waits for no session's work.
  [[nodiscard]] std::vector<Connected> connected() const;

 private:
  class Impl;
  explicit ExchangeHost(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace weavelog
