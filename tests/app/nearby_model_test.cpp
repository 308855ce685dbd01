#include "app-qml/view/nearby_model.h"

#include <QSignalSpy>

#include "app-qml/view/exchange_model.h"
#include "tests/app/device_room.h"
#include "tests/app/event_server.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// An event server that also answers who is near.
struct NearServer : EventServer {
  std::unique_ptr<NearbyHost> near;

  NearServer() { listen(); }
  void listen() {
    NearbyHostOptions options;
    options.address = "127.0.0.1";
    options.offer = {station->ledger().self().key, host->fingerprint(), host->port(), "Harbour server",
                     "Harbour"};
    near = must(NearbyHost::start(std::move(options)));
  }
};

/// Whatever else of this machine answers at the usual port is left out. -1 if it is not there.
int rowOf(const NearbyModel& model, const NearServer& server) {
  const QString key = QString::fromStdString(to_hex(server.station->ledger().self().key));
  for (int row = 0; row < model.rowCount(); ++row)
    if (model.data(model.index(row), model.roleNames().key("serverKey")).toString() == key) return row;
  return -1;
}

QVariant told(const NearbyModel& model, const NearServer& server, const char* role) {
  return model.data(model.index(rowOf(model, server)), model.roleNames().key(role));
}

}  // namespace

TEST_CASE("a server that is near has a row while somebody looks, and what it is to this tablet follows") {
  NearServer server;
  AppRoom room;
  room.clock.set(WallClock::system().now());
  NearbyModel model(*room.device, {server.host->port()});
  CHECK_FALSE(model.isLooking());
  QSignalSpy counted(&model, &NearbyModel::countChanged);
  model.setLooking(true);
  REQUIRE(waitUntil([&] { return rowOf(model, server) >= 0; }));
  CHECK(counted.count() >= 1);
  CHECK(told(model, server, "name") == "Harbour server");
  CHECK(told(model, server, "event") == "Harbour");
  CHECK(told(model, server, "address").toString() == QString("127.0.0.1:%1").arg(server.host->port()));
  CHECK(told(model, server, "standing") == NearbyModel::NotPaired);

  ExchangeModel exchange(*room.device);
  REQUIRE(exchange.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return told(model, server, "standing") == NearbyModel::Connected; }));
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));

  server.host.reset();
  REQUIRE(waitUntil([&] { return told(model, server, "standing") == NearbyModel::Paired; }));
  model.setLooking(false);
  CHECK(model.count() == 0);
}

TEST_CASE("a known server that is heard at another address is met there, and the address is kept") {
  NearServer server;
  AppRoom room;
  room.clock.set(WallClock::system().now());
  ExchangeModel exchange(*room.device);
  REQUIRE(exchange.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
  const auto before = server.host->port();
  server.host.reset();
  server.near.reset();
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Trying; }));
  server.start(0);
  REQUIRE(server.host->port() != before);
  server.listen();

  NearbyModel model(*room.device, {server.host->port()});
  model.setLooking(true);
  REQUIRE(waitUntil([&] { return rowOf(model, server) >= 0; }));
  CHECK(told(model, server, "standing") == NearbyModel::Paired);
  exchange.meet(told(model, server, "serverKey").toString(), told(model, server, "address").toString());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
  CHECK(room.device->station().devices().hosts().front().address.port == server.host->port());
}

TEST_CASE("a stranger who says it is the known server is not believed, and the known address stays") {
  NearServer server;
  AppRoom room;
  room.clock.set(WallClock::system().now());
  ExchangeModel exchange(*room.device);
  REQUIRE(exchange.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
  const auto known = room.device->station().devices().hosts().front();
  server.host.reset();
  server.near.reset();
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Trying; }));

  const EventServer stranger;
  exchange.meet(QString::fromStdString(to_hex(known.key)),
                QString("127.0.0.1:%1").arg(stranger.host->port()));
  REQUIRE(waitUntil([&] { return exchange.trouble() == ExchangeModel::WrongCertificate; }));
  CHECK(room.device->station().devices().hosts().front().address == known.address);
}

TEST_CASE("who looks and finds nobody is told so after a moment, and asks again at the next look") {
  AppRoom room;
  NearbyModel model(*room.device);
  model.setLooking(true);
  CHECK_FALSE(model.isSettled());
  REQUIRE(waitUntil([&] { return model.isSettled(); }));
  model.setLooking(false);
  CHECK_FALSE(model.isSettled());
  CHECK_FALSE(model.isLooking());
}
