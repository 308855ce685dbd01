#include "sync/net/tablet_host.h"

#include <spdlog/spdlog.h>

#include "sync/net/nearby.h"
#include "sync/net/own_addresses.h"
#include "sync/trust/rights.h"

namespace weavelog {

class TabletHost::Impl {
 public:
  Station* station = nullptr;
  std::string reach;
  std::unique_ptr<ExchangeHost> exchange;
  std::unique_ptr<NearbyHost> near;  // before the exchange ends
};

Outcome<std::unique_ptr<TabletHost>> TabletHost::start(Station& station, TabletHostOptions options) {
  auto impl = std::make_unique<Impl>();
  impl->station = &station;
  impl->reach = options.reach;
  if (impl->reach.empty()) {
    const auto own = own_addresses();
    if (own.empty())
      return fail(FaultCode::not_found, "this device is in no network", "network", "join the Wi-Fi that the others are in, or open one on this device");
    impl->reach = own.front();
  }
  const auto certificate = load_or_create_certificate(station.folder() / "server.pem");
  if (!certificate) return fail(certificate.error());
  ExchangeHostOptions host;
  host.address = options.address;
  host.port = options.port;
  host.certificate = *certificate;
  host.event = options.event;
  if (options.may_leave) host.may_leave = options.may_leave;
  host.leaves_by = options.leaves_by;
  host.may_stay = options.may_stay;
  host.rights = rights_in(options.event);
  host.names_content = options.names_content;
  host.on_status = options.on_status;
  host.shares = [shares = options.shares](const PublicKey&) { return shares ? shares() : std::vector<BookId>{}; };
  auto started = ExchangeHost::start(station, host);
  if (!started && started.error().code == FaultCode::locked && host.port != 0) {
    host.port = 0;
    started = ExchangeHost::start(station, std::move(host));
  }
  if (!started) return fail(started.error());
  impl->exchange = std::move(*started);
  if (options.listed) {
    NearbyHostOptions near;
    near.address = options.address;
    near.offer = {station.ledger().self().key, impl->exchange->fingerprint(), impl->exchange->port(), station.ledger().self().device,
                  options.event_name};
    auto answers = NearbyHost::start(std::move(near));
    if (answers) {
      impl->near = std::move(*answers);
    } else {
      spdlog::warn("others can't see that this tablet is near: {}", answers.error().message());
    }
  }
  return std::unique_ptr<TabletHost>(new TabletHost(std::move(impl)));
}

TabletHost::TabletHost(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
TabletHost::~TabletHost() = default;

Outcome<TabletHost::Invited> TabletHost::invite(Role role, UnixMs life) {
  const auto invitation = impl_->station->devices().invite(role, life);
  if (!invitation) return fail(invitation.error());
  return Invited{{address(), fingerprint(), invitation->secret}, *invitation};
}

Address TabletHost::address() const { return {impl_->reach, impl_->exchange->port()}; }
const Fingerprint& TabletHost::fingerprint() const { return impl_->exchange->fingerprint(); }
std::vector<Connected> TabletHost::connected() const { return impl_->exchange->connected(); }

}  // namespace weavelog
