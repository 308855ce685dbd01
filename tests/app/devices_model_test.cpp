#include "app-qml/view/devices_model.h"

#include "app-qml/view/exchange_model.h"
#include "app-qml/view/give_card_model.h"
#include "app-qml/view/player_card.h"
#include "core/desk/consent.h"
#include "tests/app/event_server.h"
#include "tests/app/room_jobs.h"
#include "tests/app/rows.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A tablet that is paired with the server, in a role.
struct PairedRoom : AppRoom {
  std::unique_ptr<ExchangeModel> exchange;

  PairedRoom(EventServer& server, Role role) {
    clock.set(WallClock::system().now());
    exchange = std::make_unique<ExchangeModel>(*device);
    REQUIRE(exchange->pair(server.codeFor(role), "").isEmpty());
    REQUIRE(waitUntil([&] { return exchange->state() == ExchangeModel::Agreed && device->work().event(); }));
  }
};

}  // namespace

TEST_CASE("a head sees the tablets of the room, renames one, gives it another role and shuts it out") {
  EventServer server;
  PairedRoom head(server, Role::head), bench(server, Role::stringer);
  DevicesModel model(*head.device);
  REQUIRE(model.manages());
  model.ask();
  REQUIRE(waitUntil([&] { return model.devices().size() == 2; }));
  CHECK(at(model.devices(), 0).value("self").toBool());
  CHECK(at(model.devices(), 1).value("role").toInt() == ExchangeModel::Stringer);
  CHECK_FALSE(at(model.devices(), 1).value("since").toString().isEmpty());

  const QString key = at(model.devices(), 1).value("key").toString();
  model.rename(key, "  Bench by the window ");
  REQUIRE(waitUntil([&] { return at(model.devices(), 1).value("name") == "Bench by the window"; }));
  model.setRole(key, ExchangeModel::Reader);
  REQUIRE(waitUntil([&] { return at(model.devices(), 1).value("role").toInt() == ExchangeModel::Reader; }));
  CHECK(model.trouble().isEmpty());
  model.revoke(key);
  REQUIRE(waitUntil([&] { return !at(model.devices(), 1).value("revoked").toString().isEmpty(); }));
  REQUIRE(waitUntil([&] { return bench.exchange->trouble() == ExchangeModel::Refused; }));

  // The room is never without a head.
  model.setRole(at(model.devices(), 0).value("key").toString(), ExchangeModel::Desk);
  REQUIRE(waitUntil([&] { return !model.trouble().isEmpty(); }));
  CHECK(model.trouble().contains("no head"));
}

TEST_CASE("who is no head manages no tablets, and what its role forbids is refused on the tablet already") {
  EventServer server;
  PairedRoom bench(server, Role::stringer);
  DevicesModel model(*bench.device);
  CHECK_FALSE(model.manages());
  model.ask();
  CHECK_FALSE(model.asking());
  CHECK_FALSE(model.setsRule());
  QString told;
  QObject::connect(&bench.device->work(), &Work::failed, [&](const QString& what, const QString&) { told = what; });
  CHECK_FALSE(model.setKeepDays(14, "set"));
  CHECK(told.contains("stringer"));
  CHECK(model.keepDays() == -1);
}

TEST_CASE("the rule for players' books is set on one tablet and shown on the others with its day") {
  EventServer server;
  PairedRoom desk(server, Role::desk), bench(server, Role::stringer);
  DevicesModel model(*desk.device), other(*bench.device);
  REQUIRE(model.setsRule());
  REQUIRE(model.setKeepDays(14, "set"));
  CHECK(model.keepDays() == 14);
  CHECK(model.keptUntil().contains("22"));
  CHECK(model.keptUntil().contains("2099"));
  REQUIRE(waitUntil([&] { return other.keepDays() == 14; }));
  CHECK(other.keptUntil() == model.keptUntil());
  REQUIRE(model.setKeepDays(-1, "set"));
  REQUIRE(waitUntil([&] { return other.keepDays() == -1; }));
  CHECK(other.keptUntil().isEmpty());
}

TEST_CASE("a player's page says which devices have the book from here, and from where it came") {
  EventServer server;
  PairedRoom desk(server, Role::desk), bench(server, Role::stringer);
  const BookId book = desk.ledger().create_book_id();
  Draft draft(book, kPlayerBook, kActNewPlayer);
  (void)put_new(draft, named("Okafor"), desk.clock.now());
  PlayerCard card(desk.device->work()), there(bench.device->work());
  REQUIRE(desk.device->work().commit(draft, ""));
  card.show(QString::fromStdString(book.hex()));
  CHECK(card.holders().isEmpty());
  REQUIRE(waitUntil([&] {
    card.show(QString::fromStdString(book.hex()));
    there.show(QString::fromStdString(book.hex()));
    return card.holders().size() == 1 && there.holders().size() == 1;
  }));
  CHECK(at(card.holders(), 0).value("device") == "Harbour server");
  CHECK(at(card.holders(), 0).value("given").toBool());
  CHECK_FALSE(at(there.holders(), 0).value("given").toBool());

  // What is made of it for others stands there too: a card that is shown, a bundle.
  CHECK_FALSE(card.heldBeyond());
  GiveCardModel give(desk.device->work());
  give.show(QString::fromStdString(book.hex()));
  REQUIRE_FALSE(give.text().isEmpty());
  REQUIRE(desk.device->station().peers().note_handed(HandedAs::bundle, "Bo's tablet", {&book, 1}, desk.clock.now()));
  card.show(QString::fromStdString(book.hex()));
  REQUIRE(card.holders().size() == 3);
  CHECK(at(card.holders(), 1).value("as") == "bundle");
  CHECK(at(card.holders(), 1).value("device") == "Bo's tablet");
  CHECK(at(card.holders(), 2).value("as") == "card");

  // Agreed to more at first, then to one room: others have what they had.
  const auto agree = [&](ConsentChoice choice) {
    const Language language;
    return card.giveConsent(static_cast<int>(choice), "en", QString::fromStdString(consent_text(language, choice)));
  };
  REQUIRE(agree(ConsentChoice::this_room));
  CHECK_FALSE(card.heldBeyond());
  REQUIRE(agree(ConsentChoice::any_room));
  CHECK_FALSE(card.heldBeyond());
  REQUIRE(agree(ConsentChoice::this_room));
  CHECK(card.heldBeyond());
}
