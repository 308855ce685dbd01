#include "app-qml/view/event_model.h"

#include <QSignalSpy>

#include "app-qml/view/bench_model.h"
#include "app-qml/view/devices_model.h"
#include "app-qml/view/exchange_model.h"
#include "app-qml/view/money_place.h"
#include "app-qml/view/room_model.h"
#include "core/desk/event_book.h"
#include "core/desk/room_promise.h"
#include "core/desk/tag_code.h"
#include "tests/app/desk_room.h"
#include "tests/app/event_server.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct EventsRoom : DeskRoom {
  std::unique_ptr<EventModel> events;

  EventsRoom() { events = std::make_unique<EventModel>(*device); }
  ~EventsRoom() {
    events.reset();
    desk.reset();
  }
  [[nodiscard]] QVariantMap form(const QString& name = "Stringing at the lake") const {
    QVariantMap out = events->fresh();
    out["name"] = name;
    out["timeZone"] = "Europe/Lisbon";
    out["currency"] = "eur";
    return out;
  }
  // What a form says is wrong, field by field.
  [[nodiscard]] QStringList wrongWith(const QString& field, const QString& value) const {
    QVariantMap said = form();
    said[field] = value;
    return events->wrong(said).keys();
  }
  // A new player hands a racket over and confirms.
  BookId takeIn(const QString& family, int rackets = 1) {
    desk->finder()->setTyped(family);
    desk->addPlayer();
    draft().setPerson("given_name", "Ilse");
    answerNeeded();
    for (int i = 1; i < rackets; ++i) draft().addRacket();
    const BookId book = draft().book();
    desk->readBack();
    REQUIRE(desk->page() == DeskModel::Page::Confirm);
    desk->confirm(draft().readBack());
    REQUIRE(desk->page() == DeskModel::Page::Stored);
    return book;
  }
  [[nodiscard]] BookId event() const { return device->work().event(); }
};

}  // namespace

TEST_CASE("in an empty folder an event is made, and a racket taken in then has its number, lies on the bench and can be charged") {
  EventsRoom room;
  CHECK(room.events->events().isEmpty());
  CHECK_FALSE(room.events->mayChange());
  QSignalSpy made(room.events.get(), &EventModel::made);
  REQUIRE(room.events->make(room.form(), true));
  CHECK(made.size() == 1);
  CHECK(room.device->eventName() == "Stringing at the lake");
  CHECK(room.device->work().zone() == "Europe/Lisbon");
  REQUIRE(room.events->events().size() == 1);
  CHECK(room.events->events()[0].toMap()["shown"].toBool());
  CHECK(room.events->mayChange());

  const BookId player = room.takeIn("Wendelmoor");
  CHECK(room.draft().tags()[0].toMap()["tag"] == "1");
  const auto next = next_jobs(room.ledger(), room.event(), 5);
  REQUIRE(next.size() == 1);
  CHECK(next[0].book == player);
  CHECK(must(tag_number_from(must(tag_code(room.event(), 1)), room.event())) == 1);
  {
    RoomModel board(room.device->work());
    CHECK(board.hasEvent());
    CHECK(board.open() == 1);
    BenchModel bench(room.device->work());
    CHECK(bench.tag() == "1");
    CHECK(bench.mains() == "25");
    CHECK(bench.step("cut out"));
    MoneyPlace money(room.device->work());
    CHECK(money.prices()->hasEvent());
    CHECK(money.prices()->currency() == "EUR");
    CHECK(money.prices()->set("labour", "20", "Price"));
    money.account()->show(hex(player));
    REQUIRE(money.account()->uncharged().size() == 1);
    CHECK(money.account()->charge({hex(next[0].job)}, "Charged"));
  }
  // Whoever made it strings, so that a time can be promised.
  const auto team = must(load_event(room.ledger(), room.event())).team;
  REQUIRE(team.size() == 1);
  CHECK(team[0].now.name == "Ines");
  const auto promises = must(RoomPromises::make(room.ledger(), room.event(), room.clock.now()));
  RacketsToCome racket;
  racket.kinds.push_back(promises.day().work_kind("Tarnbrook Silk", "Velmora Round", "16x19", 2));
  CHECK(must(promises.earliest(racket)).ready_by > room.clock.now());

  // The next start is there too.
  CHECK(room.faults.isEmpty());
  room.events.reset();
  room.startAgain();
  CHECK(room.device->eventName() == "Stringing at the lake");
}

TEST_CASE("a form begins with today and six days more, where the tablet is, and with who works at it") {
  EventsRoom room;
  const auto fresh = room.events->fresh();
  CHECK(fresh["name"] == "");
  CHECK(fresh["firstDay"] == "2031-05-26");
  CHECK(fresh["lastDay"] == "2031-06-01");
  CHECK_FALSE(fresh["timeZone"].toString().isEmpty());
  CHECK(fresh["who"] == "Ines");
  CHECK(room.events->wrong(room.form()).isEmpty());
  CHECK(room.events->dayWords("2031-05-26") == "Monday, May 26, 2031");
  CHECK(room.events->dayWords("2031-05-32").isEmpty());
  CHECK(room.events->moved("2031-05-31", 1) == "2031-06-01");
  CHECK(room.events->moved("2031-03-01", -1) == "2031-02-28");
  CHECK(room.events->moved("soon", 1) == "2031-05-26");
}

TEST_CASE("what is wrong is said at its field, and nothing is made") {
  EventsRoom room;
  CHECK(room.wrongWith("name", " ") == QStringList{"name"});
  CHECK(room.wrongWith("firstDay", "26.5.2031") == QStringList{"firstDay"});
  CHECK(room.wrongWith("firstDay", "") == QStringList{"firstDay"});
  CHECK(room.wrongWith("lastDay", "2031-02-30") == QStringList{"lastDay"});
  CHECK(room.wrongWith("lastDay", "2031-05-25") == QStringList{"lastDay"});
  CHECK(room.wrongWith("currency", "EURO") == QStringList{"currency"});
  CHECK(room.wrongWith("timeZone", "Lake/Nowhere") == QStringList{"timeZone"});
  CHECK(room.wrongWith("place", "") == QStringList{});
  CHECK(room.wrongWith("currency", "") == QStringList{});
  QVariantMap backwards = room.form();
  backwards["lastDay"] = "2031-05-25";
  CHECK_FALSE(room.events->make(backwards, true));
  CHECK_FALSE(room.events->make(room.form(""), true));
  CHECK_FALSE(room.events->change(room.form(), "changed"));  // there is none
  CHECK(room.ledger().books(kEventBook).empty());
  CHECK(room.device->event().isEmpty());
}

TEST_CASE("rackets confirmed before there was an event come into it, unless the person says no") {
  EventsRoom room;
  room.takeIn("Wendelmoor", 2);
  CHECK(room.draft().tags()[0].toMap()["tag"] == "");
  QSignalSpy asked(room.events.get(), &EventModel::asked);
  room.events->ask();
  REQUIRE(asked.size() == 1);
  CHECK(room.events->left() == 2);
  CHECK(room.events->leftNames() == "Wendelmoor Ilse");
  SECTION("they come") {
    REQUIRE(room.events->make(room.form(), true));
    CHECK(next_jobs(room.ledger(), room.event(), 5).size() == 2);
    CHECK(room.events->left() == 0);
    // Their numbers stand on the page that is still open.
    REQUIRE(room.draft().tags().size() == 2);
    CHECK(room.draft().tags()[0].toMap()["tag"] == "1");
    CHECK(room.draft().tags()[1].toMap()["tag"] == "2");
  }
  SECTION("they stay where they are") {
    REQUIRE(room.events->make(room.form(), false));
    CHECK(next_jobs(room.ledger(), room.event(), 5).empty());
    CHECK(room.draft().tags()[0].toMap()["tag"] == "");
    room.events->ask();
    CHECK(room.events->left() == 2);
  }
  CHECK(room.faults.isEmpty());
}

TEST_CASE("an event's name, days and zone are changed; its currency stays") {
  EventsRoom room;
  REQUIRE(room.events->make(room.form(), true));
  QVariantMap form = room.events->held();
  CHECK(form["name"] == "Stringing at the lake");
  CHECK(form["currency"] == "EUR");
  form["name"] = "Lakeside Days";
  form["lastDay"] = "2031-06-03";
  form["timeZone"] = "America/New_York";
  form["currency"] = "USD";
  REQUIRE(room.events->change(form, "Event changed"));
  REQUIRE(waitUntil([&] { return room.device->eventName() == "Lakeside Days"; }));
  CHECK(room.device->work().zone() == "America/New_York");
  CHECK(room.events->held()["lastDay"] == "2031-06-03");
  CHECK(room.events->held()["currency"] == "EUR");
  form["lastDay"] = "2031-05-01";
  CHECK_FALSE(room.events->change(form, "Event changed"));
  CHECK(room.events->held()["lastDay"] == "2031-06-03");
}

TEST_CASE("a tablet that pairs goes over to the server's event, keeps its own, and shows whichever a person chooses") {
  EventServer server;
  EventsRoom room;
  room.clock.set(WallClock::system().now());
  REQUIRE(room.events->make(room.form(), true));
  const BookId own = room.event();
  const BookId here = room.takeIn("Wendelmoor");
  room.desk->next();
  {
    ExchangeModel exchange(*room.device);
    REQUIRE(exchange.pair(server.codeFor(Role::stringer), "").isEmpty());
    REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed && room.device->eventName() == "Harbour"; }));
    REQUIRE(room.events->events().size() == 2);
    CHECK(room.events->hosts().isEmpty());
    CHECK_FALSE(room.events->mayChange());  // a stringer there
    CHECK(room.device->room() == server.event);

    // Back to the own one: it stays on the screen while the connection goes on, and work goes on in it.
    room.events->show(hex(own));
    CHECK(room.device->work().event() == own);
    CHECK(room.events->hosts() == "Harbour");
    CHECK(room.events->mayChange());
    CHECK(room.device->room() == server.event);  // whose books may go there is asked for that room
    CHECK(next_jobs(room.ledger(), own, 5).size() == 1);
    DevicesModel devices(*room.device);
    CHECK_FALSE(devices.setsRule());
    QVariantMap form = room.events->held();
    form["name"] = "Lakeside Days";
    REQUIRE(room.events->change(form, ""));
    const auto before = room.ledger().position();
    Draft draft(server.event, kEventBook, kActNewEvent);
    TeamMember member;
    member.name = "Corvin";
    (void)put_new(draft, member, server.station->ledger().wall().now());
    (void)must(server.station->ledger().append(draft));
    REQUIRE(waitUntil([&] { return room.ledger().position() > before && exchange.state() == ExchangeModel::Agreed && exchange.waiting() == 0; }));
    CHECK(room.device->work().event() == own);
    CHECK_FALSE(server.station->ledger().book(own));   // nothing of it went there
    CHECK_FALSE(server.station->ledger().book(here));  // nor did its players, who never came to that room
  }
  // The next start finds it so, and coming back to the server by itself changes nothing.
  room.events.reset();
  room.startAgain();
  {
    EventModel events(*room.device);
    ExchangeModel exchange(*room.device);
    CHECK(room.device->work().event() == own);
    REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
    QCoreApplication::processEvents();
    CHECK(room.device->work().event() == own);
    events.showHosts();
    CHECK(room.device->eventName() == "Harbour");
    CHECK(events.hosts().isEmpty());
    // Whoever asks for the server by its name is at its event.
    events.show(hex(own));
    exchange.chooseHost(exchange.hosts().first().toMap().value("key").toString());
    REQUIRE(waitUntil([&] { return room.device->eventName() == "Harbour"; }));
    CHECK(next_jobs(room.ledger(), own, 5).size() == 1);
  }
  room.device->hangUp();
}

TEST_CASE("what a player allows in the room of an own event keeps the book from the server's room") {
  EventServer server;
  EventsRoom room;
  room.clock.set(WallClock::system().now());
  REQUIRE(room.events->make(room.form(), true));
  const BookId own = room.event();
  const auto& may_leave = room.device->work().workplace().may_leave();
  const BookId player = room.addPlayer(named("Okafor", "Sade"));
  {
    Draft draft(player, kPlayerBook, kActEdit);
    const auto record = must(load_player(room.ledger(), player));
    Person person = record.person.now;
    person.consent = ConsentChoice::this_room;
    put_changes(draft, record.person.seen, person);
    ConsentGiven given;
    given.choice = ConsentChoice::this_room;
    given.at = room.clock.now();
    given.event = own;
    (void)put_new(draft, given, room.clock.now());
    room.append(draft);
  }
  CHECK(may_leave(player, kPlayerBook));  // no server: that room is this tablet's
  ExchangeModel exchange(*room.device);
  REQUIRE(exchange.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed && room.device->eventName() == "Harbour"; }));
  CHECK_FALSE(may_leave(player, kPlayerBook));
  room.events->show(hex(own));
  CHECK_FALSE(may_leave(player, kPlayerBook));
  room.device->hangUp();
}

TEST_CASE("an event that came without days is renamed, and gets days if somebody says them") {
  EventsRoom room;
  const BookId book = room.addEvent("Harbour", "");
  room.device->chooseEvent(book);
  QVariantMap form = room.events->held();
  CHECK(form["firstDay"] == "");
  form["name"] = "Harbour Days";
  CHECK(room.events->wrong(form).contains("firstDay"));  // a new one has days
  CHECK(room.events->wrong(form, true).isEmpty());
  REQUIRE(room.events->change(form, "Event changed"));
  REQUIRE(waitUntil([&] { return room.device->eventName() == "Harbour Days"; }));
  CHECK(room.events->held()["firstDay"] == "");
  form["firstDay"] = "26.5.2031";
  CHECK(room.events->wrong(form, true).keys() == QStringList{"firstDay"});
  form["firstDay"] = "2031-05-26";
  form["lastDay"] = "2031-05-27";
  REQUIRE(room.events->change(form, "Event changed"));
  CHECK(room.events->held()["lastDay"] == "2031-05-27");
  // What was said is not taken away.
  form["lastDay"] = "";
  CHECK(room.events->wrong(form, true).keys() == QStringList{"lastDay"});
  CHECK_FALSE(room.events->change(form, "Event changed"));
  CHECK(room.faults.isEmpty());
}
