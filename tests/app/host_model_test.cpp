#include "app-qml/view/host_model.h"

#include "app-qml/view/exchange_model.h"
#include "app-qml/view/met_model.h"
#include "app-qml/view/nearby_model.h"
#include "tests/app/device_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A tablet whose clock is the machine's, as the other's is.
struct TabletRoom : AppRoom {
  explicit TabletRoom(const std::string& name) {
    stop();
    settings->setDeviceName(QString::fromStdString(name));
    start();
    clock.set(WallClock::system().now());
  }
};

}  // namespace

TEST_CASE("two tablets work at one event without a server: one lets the other exchange with it") {
  TabletRoom ilse("Ilse's tablet"), bo("Bo's tablet");
  const BookId event = ilse.addEvent("Harbour Open", "2031-05-26");
  REQUIRE(waitUntil([&] { return ilse.device->eventName() == "Harbour Open"; }));
  const BookId elsewhere = ilse.addPlayer(named("Elsewhere"));
  HostModel host(*ilse.device, 0);
  CHECK(host.share() == HostModel::Event);
  REQUIRE(host.ready());
  host.start("127.0.0.1");
  REQUIRE(host.on());
  CHECK(host.trouble().isEmpty());
  host.invite(false);
  REQUIRE(host.inviteWords().count('-') == 4);
  CHECK(host.inviteRows().size() == host.inviteRows().first().toList().size());

  NearbyModel near(*bo.device, {static_cast<std::uint16_t>(host.address().section(':', 1).toInt())});
  near.setLooking(true);
  REQUIRE(waitUntil([&] {
    for (int row = 0; row < near.count(); ++row)
      if (near.data(near.index(row), near.roleNames().key("name")) == "Ilse's tablet") return true;
    return false;
  }));
  near.setLooking(false);
  // Nobody meets himself.
  NearbyModel own(*ilse.device, {static_cast<std::uint16_t>(host.address().section(':', 1).toInt())});
  own.setLooking(true);
  REQUIRE(waitUntil([&] { return own.isSettled(); }));
  for (int row = 0; row < own.count(); ++row) CHECK(own.data(own.index(row), own.roleNames().key("name")) != "Ilse's tablet");
  own.setLooking(false);

  ExchangeModel exchange(*bo.device);
  REQUIRE(exchange.pair(host.inviteCode(), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed && bo.device->eventName() == "Harbour Open"; }));
  CHECK(exchange.host() == "Ilse's tablet");
  REQUIRE(waitUntil([&] { return host.guests().size() == 1 && host.guests().first().toMap().value("agreed").toBool(); }));
  CHECK(host.guests().first().toMap().value("name") == "Bo's tablet");
  CHECK(host.inviteWords().isEmpty());
  CHECK(host.known() == QStringList{"Bo's tablet"});
  CHECK_FALSE(bo.ledger().book(elsewhere));

  // What the guest writes is here at once, and the other way round.
  Draft draft(event, kEventBook, kActLinkEntry);  // as a stringer may
  EntryListItem item;
  item.family_name = "Okafor";
  (void)put_new(draft, item, bo.clock.now());
  REQUIRE(bo.device->work().commit(draft, ""));
  REQUIRE(waitUntil([&] { return ilse.ledger().entities(event, kEntryListItem).size() == 1; }));

  host.stop();
  CHECK_FALSE(host.on());
  CHECK(host.guests().isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Trying; }));
}

TEST_CASE("chosen players go to a colleague who is only met: nothing that is written later follows, and the guest's own room stays") {
  TabletRoom ilse("Ilse's tablet"), bo("Bo's tablet");
  const BookId wendel = ilse.addPlayer(named("Wendelmoor")), okafor = ilse.addPlayer(named("Okafor"));
  HostModel host(*ilse.device, 0);
  CHECK(host.share() == HostModel::Players);
  CHECK_FALSE(host.ready());
  host.choice()->choose(QString::fromStdString(wendel.hex()), true);
  REQUIRE(host.ready());
  host.start("127.0.0.1");
  REQUIRE(host.on());
  host.invite(false);
  ExchangeModel exchange(*bo.device);
  REQUIRE(exchange.pair(host.inviteCode(), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed && bo.ledger().book(wendel); }));
  CHECK(host.shared() == "Wendelmoor");
  CHECK_FALSE(bo.ledger().book(okafor));
  QCoreApplication::processEvents();
  CHECK_FALSE(bo.device->work().workplace().host());
  CHECK(bo.device->isOnlyMet(ilse.ledger().self().key));
  Draft draft(bo.ledger().create_book_id(), kPlayerBook, kActNewPlayer);
  (void)put_new(draft, named("Kova"), bo.clock.now());
  REQUIRE(bo.device->work().commit(draft, ""));
  exchange.chooseHost(exchange.hosts().first().toMap().value("key").toString());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
  CHECK_FALSE(bo.device->work().workplace().host());
  CHECK_FALSE(ilse.ledger().book(draft.book()));
}

TEST_CASE("a guest of a colleague without an event ticks whose books go there, and nobody else's do") {
  TabletRoom ilse("Ilse's tablet"), bo("Bo's tablet");
  const BookId kova = bo.addPlayer(named("Kova")), okafor = bo.addPlayer(named("Okafor"));
  HostModel host(*ilse.device, 0);
  host.setShare(HostModel::Nothing);
  host.start("127.0.0.1");
  REQUIRE(host.on());
  host.invite(false);
  MetModel met(*bo.device);
  CHECK(met.host().isEmpty());
  CHECK_FALSE(met.give());
  ExchangeModel exchange(*bo.device);
  REQUIRE(exchange.pair(host.inviteCode(), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed && met.host() == "Ilse's tablet"; }));
  CHECK_FALSE(met.onlyGets());
  CHECK(met.given().isEmpty());
  CHECK_FALSE(met.give());  // nobody is ticked
  met.choice()->choose(QString::fromStdString(kova.hex()), true);
  REQUIRE(met.give());
  REQUIRE(waitUntil([&] { return ilse.ledger().book(kova).has_value(); }));
  CHECK(met.given() == "Kova");
  CHECK(met.choice()->chosen() == 0);
  CHECK_FALSE(ilse.ledger().book(okafor));
  host.stop();
  REQUIRE(waitUntil([&] { return met.host().isEmpty(); }));
}

TEST_CASE("without an event there is none to share") {
  TabletRoom ilse("Ilse's tablet");
  HostModel host(*ilse.device, 0);
  host.setShare(HostModel::Event);
  CHECK_FALSE(host.ready());
  host.start("127.0.0.1");
  CHECK_FALSE(host.on());
}
