#pragma once
// A tablet that plays the host for a while: others exchange with it over the local network, without an event server. It gives them only
// what it shares, answers who asks who is near, and invites as an event server does.

#include <memory>
#include <string>

#include "sync/net/exchange_host.h"

namespace weavelog {

struct TabletHostOptions {
  std::string address = "0.0.0.0";
  std::uint16_t port = kDefaultPort;  ///< where it is taken, or 0, any free one
  std::string reach;                  ///< how others reach this machine; "": its address in the local network
  BookId event;                       ///< at whose event guests work with this tablet from now on; none: they only meet it
  std::string event_name;
  bool listed = true;                 ///< shows itself to who asks
  std::function<bool(const BookId&, BookKind)> may_leave;
  std::function<LeaveRule()> leaves_by;
  std::function<bool(const BookId&, BookKind, const BookId&, bool)> may_stay;
  std::function<bool(const BookId&, const Digest&)> names_content;
  std::function<std::vector<BookId>()> shares;  ///< books for every guest; see SessionOptions::shares
  std::function<void(const SessionStatus&)> on_status;
};

class TabletHost {
 public:
  /// Listens when this returns. `station` must outlive it. Faults: those of the certificate's file and of ExchangeHost::start; not_found
  /// (this machine is in no network, and `reach` was not said).
  [[nodiscard]] static Outcome<std::unique_ptr<TabletHost>> start(Station& station, TabletHostOptions options);
  /// Stops and waits; guests go on trying.
  ~TabletHost();
  TabletHost(const TabletHost&) = delete;
  TabletHost& operator=(const TabletHost&) = delete;

  /// A code for one device. Faults: those of DeviceList::invite.
  struct Invited {
    PairingCode code;
    Invitation invitation;
  };
  [[nodiscard]] Outcome<Invited> invite(Role role, UnixMs life = DeviceList::kInvitationLife);
  [[nodiscard]] Address address() const;
  [[nodiscard]] const Fingerprint& fingerprint() const;
  /// Any thread.
  [[nodiscard]] std::vector<Connected> connected() const;

 private:
  class Impl;
  explicit TabletHost(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace weavelog
