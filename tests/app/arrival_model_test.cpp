#include "app-qml/view/arrival_model.h"
#include "app-qml/view/exchange_model.h"

#include "core/desk/event_book.h"
#include "core/people/entry_list.h"
#include "tests/app/event_server.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

void list(AppRoom& room, const BookId& event, const std::string& table) {
  const auto rows = must(read_entry_list(table)).rows;
  for (const Draft& draft : import_entries(must(load_event(room.ledger(), event)), rows, room.clock.now()).drafts) room.append(draft);
}
BookId known(AppRoom& room, const char* family, const char* country, std::int64_t year) {
  Person person = named(family, "Ilse");
  person.country = country;
  person.birth_year = year;
  return room.addPlayer(person);
}

/// A tablet whose clock is the machine's, as that of the server is.
struct MetRoom : AppRoom {
  BookId event;
  MetRoom() {
    clock.set(WallClock::system().now());
    event = addEvent("Lakeside", "2031-05-26");
    device->chooseEvent(event);
  }
};

int bandOf(const ArrivalModel& model, int row) { return role(model, row, "band").toInt(); }

}  // namespace

TEST_CASE("the entry list is seen beside what is known, with what speaks for and against each") {
  RoomOfJobs room;
  const BookId ilse = known(room, "Wendelmoor", "NED", 2002);
  (void)room.receive(ilse, day_wish());
  room.clock.advance(3 * kDay);
  (void)known(room, "Vantreel", "BEL", 1999);
  list(room, room.event, "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Ilse,BEL,1998\nOkonjo,Ada,NGR,2001\n");
  ArrivalModel model(*room.device);
  REQUIRE(waitUntil([&] { return model.count() == 3; }));
  CHECK(model.known() == 1);
  CHECK(model.likely() == 1);
  // By name: Okonjo, Vantreel, Wendelmoor.
  CHECK(bandOf(model, 0) == ArrivalModel::New);
  CHECK(bandOf(model, 1) == ArrivalModel::Likely);
  const auto asked = role(model, 1, "candidates").toList().at(0).toMap();
  CHECK(asked["like"].toString().contains("country"));
  CHECK(asked["unlike"].toString().contains("birth year"));
  const auto sure = role(model, 2, "candidates").toList().at(0).toMap();
  CHECK(sure["last"].toString().contains("25 / 24 kg"));
  CHECK(sure["last"].toString().contains("3 day"));
  CHECK(sure["unlike"].toString().isEmpty());
}

TEST_CASE("who is ticked goes across and is linked to the list, and stays ticked while the list is looked at anew") {
  MetRoom room;
  const BookId ilse = known(room, "Wendelmoor", "NED", 2002);
  (void)known(room, "Vantreel", "BEL", 1999);
  list(room, room.event, "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Ilse,BEL,1999\n");
  ArrivalModel model(*room.device);
  REQUIRE(waitUntil([&] { return model.known() == 2; }));
  model.tick(1, 0);
  CHECK(model.ticked() == 1);
  model.tick(1, 7);  // there is no such candidate
  model.tick(9, 0);
  CHECK(model.ticked() == 1);
  list(room, room.event, "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Ilse,BEL,1999\nOkonjo,Ada,NGR,2001\n");
  model.look();
  REQUIRE(waitUntil([&] { return model.count() == 3; }));
  CHECK(model.ticked() == 1);
  // Without an event server nobody goes anywhere, and it is said.
  QStringList told;
  QObject::connect(&room.device->work(), &Work::failed, [&](const QString& what) { told.append(what); });
  CHECK_FALSE(model.send());
  CHECK(told.size() == 1);
  CHECK(model.ticked() == 1);
  EventServer server;
  ExchangeModel exchange(*room.device);
  REQUIRE(exchange.pair(server.codeFor(Role::head), "").isEmpty());
  REQUIRE(waitUntil([&] { return exchange.state() == ExchangeModel::Agreed; }));
  // The event of that server is today's from now on; its list is brought in anew.
  REQUIRE(waitUntil([&] { return room.device->work().event() == server.event; }));
  list(room, server.event, "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Ilse,BEL,1999\nOkonjo,Ada,NGR,2001\n");
  model.look();
  REQUIRE(waitUntil([&] { return model.count() == 3; }));
  model.tick(2, 0);  // another event was looked at meanwhile
  REQUIRE(model.ticked() == 1);
  REQUIRE(model.send());
  CHECK(room.device->work().workplace().is_ticked(ilse));
  CHECK(model.ticked() == 0);
  REQUIRE(waitUntil([&] { return server.station->ledger().book(ilse).has_value(); }));
  int linked = 0;
  for (const auto& state : room.ledger().entities(server.event, kEntryListItem)) linked += from_state<EntryListItem>(state).player == ilse ? 1 : 0;
  CHECK(linked == 1);
}

TEST_CASE("whoever did not agree to travel can't be ticked") {
  RoomOfJobs room;
  Person person = named("Wendelmoor", "Ilse");
  person.country = "NED";
  person.birth_year = 2002;
  person.consent = ConsentChoice::withdrawn;
  (void)room.addPlayer(person);
  list(room, room.event, "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\n");
  ArrivalModel model(*room.device);
  REQUIRE(waitUntil([&] { return model.known() == 1; }));
  CHECK_FALSE(role(model, 0, "candidates").toList().at(0).toMap()["mayCross"].toBool());
  model.tick(0, 0);
  model.tickAllKnown();
  CHECK(model.ticked() == 0);
}
