// A program of somebody else: entities of its own in two ledgers that come together over TLS.
#include <iostream>

#include "sync/net/exchange_guest.h"
#include "sync/net/exchange_host.h"

using namespace weavelog;
using namespace std::chrono_literals;

constexpr BookKind kShelf{1};
constexpr EntityKind kBox{1};
constexpr FieldTag kLabel{1};
constexpr ActionKind kPack{1};

int main(int, char** argv) {
  const KindInfo kinds[] = {{kBox, "box"}};
  const FieldInfo fields[] = {{kLabel, kBox, "label", true}};  // guarded: two answers stay until a person picks one
  const FieldRegistry registry(1, kinds, fields);
  const auto open = [&](const std::string& name) {
    StationOptions options;
    options.folder = std::string(argv[1]) + "/" + name;
    options.device_name = name;
    options.registry = &registry;
    return Station::open(std::move(options)).value();
  };
  const auto desk = open("desk"), tablet = open("tablet");

  Draft draft(desk->ledger().create_book_id(), kShelf, kPack);
  const EntityState box = new_entity(draft.book(), kBox, WallClock::system().now());
  draft.put(box, kLabel, std::string("apples"));
  desk->ledger().append(draft).value();  // durable when it returns

  ExchangeHostOptions options;
  options.address = "127.0.0.1";
  options.port = 0;
  options.certificate = make_certificate().value();
  const auto host = ExchangeHost::start(*desk, std::move(options)).value();
  const auto secret = desk->devices().invite(Role::stringer).value().secret;
  ExchangeGuest guest(*tablet, ExchangeGuest::to_pair({{"127.0.0.1", host->port()}, host->fingerprint(), secret}), {});
  if (!guest.wait(10s, [](const GuestStatus& status) { return status.session.state == SessionState::agreed; })) return 1;
  std::cout << tablet->ledger().entity(box.book, box.id)->get_as<std::string>(kLabel).value() << '\n';
}
