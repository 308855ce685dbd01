#include "core/desk/event_book.h"

#include <map>

#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct EventRoom : Tablet {
  BookId book = ledger->create_book_id();

  EventRoom() : Tablet("head") {
    EventInfo event;
    event.name = "Harbour Open";
    event.currency = "EUR";
    append(new_event(book, event, clock.now()));
  }

  EventRecord load() const { return must(load_event(*ledger, book)); }
  ImportDrafts import_list(const std::string& csv) {
    const auto list = must(read_entry_list(csv));
    REQUIRE(list.faults.empty());
    return store(import_entries(load(), list.rows, clock.now()));
  }
  ImportDrafts import_price_list(const std::string& csv) {
    const auto list = must(read_price_list(csv));
    REQUIRE(list.faults.empty());
    return store(import_prices(load(), list.rows, clock.now()));
  }

 private:
  ImportDrafts store(ImportDrafts import) {
    for (const Draft& draft : import.drafts) append(draft);
    return import;
  }
};

}  // namespace

TEST_CASE("an event says what is wrong with it") {
  const auto why = [](auto change) {
    EventInfo event;
    event.name = "Harbour Open";
    event.first_day = "2031-05-26";
    event.last_day = "2031-06-01";
    event.currency = "EUR";
    event.time_zone = "Europe/Lisbon";
    change(event);
    const auto draft = new_event({}, event, kMonday);
    return draft ? std::string() : draft.error().where;
  };
  CHECK(why([](EventInfo&) {}).empty());
  CHECK(why([](EventInfo& event) { event.name = " "; }) == "name");
  CHECK(why([](EventInfo& event) { event.first_day = "2031-02-29"; }) == "first day");
  CHECK(why([](EventInfo& event) { event.first_day = "26.5.2031"; }) == "first day");
  CHECK(why([](EventInfo& event) { event.last_day = "2031-05-25"; }) == "last day");
  CHECK(why([](EventInfo& event) { event.currency = "euro"; }) == "currency");
  CHECK(why([](EventInfo& event) { event.time_zone = "Harbour/Nowhere"; }) == "time zone");
}

TEST_CASE("an event's name and days are changed, its currency is not, and what is wrong is refused") {
  EventRoom room;
  EventInfo wanted = room.load().event.now;
  wanted.name = "Harbour Days";
  wanted.first_day = "2031-05-26";
  wanted.last_day = "2031-06-01";
  wanted.time_zone = "Europe/Lisbon";
  wanted.currency = "USD";
  room.append(change_event(room.load(), wanted));
  const EventInfo now = room.load().event.now;
  CHECK(now.name == "Harbour Days");
  CHECK(now.last_day == "2031-06-01");
  CHECK(now.currency == "EUR");
  CHECK(must(change_event(room.load(), now)).empty());
  wanted.last_day = "2031-05-25";
  CHECK(change_event(room.load(), wanted).error().where == "last day");
  wanted.name.clear();
  CHECK(change_event(room.load(), wanted).error().where == "name");
  EventRecord nobody;
  CHECK(change_event(nobody, now).error().code == FaultCode::not_found);
}

TEST_CASE("an entry list comes in once however often it is imported") {
  EventRoom room;
  const std::string csv =
      "family_name,given_name,country,birth_year,seed\nŁukowska,Ania,POL,2001,1\nLindgrove,Ida,SWE,,\n";
  auto done = room.import_list(csv);
  CHECK(done.added == 2);
  CHECK(done.drafts.size() == 1);
  done = room.import_list(csv);
  CHECK(done.added == 0);
  CHECK(done.unchanged == 2);
  CHECK(done.drafts.empty());
  CHECK(room.load().entries.size() == 2);
}

TEST_CASE("a new import updates by name, country and birth year, and keeps what it does not say") {
  EventRoom room;
  (void)room.import_list(
      "family_name,given_name,country,birth_year,hand\nŁukowska,Ania,POL,2001,left\nLindgrove,Ida,SWE,1999,"
      "\n");
  const BookId player = room.add_player("Lukowska", "Ania");
  const auto first = room.load();
  room.append(link_entries(first, std::vector{std::pair(first.entries[0].id(), player)}));

  // The name in other spelling of the same letters, no birth year, a seed now; and somebody else of that
  // name.
  const auto done = room.import_list(
      "family_name,given_name,country,birth_year,seed\nLUKOWSKA,ania,POL,,3\nLindgrove,Ida,SWE,2004,\n");
  CHECK(done.updated == 1);
  CHECK(done.added == 1);
  const auto now = room.load();
  REQUIRE(now.entries.size() == 3);
  const auto& item = now.entries[0].now;
  CHECK(item.seed == 3);
  CHECK(item.birth_year == 2001);
  CHECK(item.hand == Hand::left);
  CHECK(item.player == player);
}

TEST_CASE("one player in two draws has two entries, and two of one name stay two") {
  EventRoom room;
  const std::string csv =
      "family_name,given_name,country,draw,birth_year\nLindgrove,Ida,SWE,women singles,\n"
      "Lindgrove,Ida,SWE,women doubles,\nOkonjo,Ada,NGR,women singles,1999\nOkonjo,Ada,NGR,women "
      "singles,2003\n";
  CHECK(room.import_list(csv).added == 4);
  const auto again = room.import_list(csv);
  CHECK(again.unchanged == 4);
  CHECK(room.load().entries.size() == 4);
}

TEST_CASE("a long entry list is split into actions that keep the bounds of an entry") {
  EventRoom room;
  std::string csv = "family_name,given_name,native_name,country,birth_year,seed,draw,hand,tour_number\n";
  for (int i = 0; i < 900; ++i)
    csv += "Family" + std::to_string(i) + "," + std::string(150, 'g') + "," + std::string(150, 'n') +
           ",SWE,2001," + std::to_string(i + 1) + ",singles,left,T" + std::to_string(i) + "\n";
  const auto done = room.import_list(csv);
  CHECK(done.added == 900);
  CHECK(done.drafts.size() > 1);
  for (const Draft& draft : done.drafts) CHECK(draft.writes().size() <= kMaxWritesPerEntry);
  CHECK(room.load().entries.size() == 900);
}

TEST_CASE("prices come in as minor units and a new list changes them") {
  EventRoom room;
  CHECK(room.import_price_list("service,amount,currency\nRestring,25.50,EUR\nRush,10,EUR\n").added == 2);
  const auto done = room.import_price_list("service,amount,currency\nRESTRING,26,EUR\nRush,10,EUR\n");
  CHECK(done.updated == 1);
  CHECK(done.unchanged == 1);
  const auto now = room.load();
  REQUIRE(now.prices.size() == 2);
  // Identifiers of prices follow from their services, so the order is none of a person's.
  std::map<std::string, std::int64_t> amounts;
  for (const auto& price : now.prices) amounts[price.now.service] = price.now.amount_minor.value_or(0);
  CHECK(amounts == std::map<std::string, std::int64_t>{{"RESTRING", 2600}, {"Rush", 1000}});
}

TEST_CASE("a member of the team is known by the tablet") {
  EventRoom room;
  TeamMember mara{"Mara", TeamRole::desk, "en fr", {}, Bytes(16, 7)};
  room.append(put_team_member(room.load(), mara, room.clock.now()));
  mara.role = TeamRole::head;
  mara.languages.clear();
  room.append(put_team_member(room.load(), mara, room.clock.now()));
  const auto now = room.load();
  REQUIRE(now.team.size() == 1);
  CHECK(now.team[0].now.role == TeamRole::head);
  CHECK(now.team[0].now.languages == "en fr");
  CHECK(put_team_member(now, TeamMember{}, room.clock.now()).error().code == FaultCode::bad_input);
}

TEST_CASE("linking twice changes nothing, and only entries that are there can be linked") {
  EventRoom room;
  (void)room.import_list("family_name\nLindgrove\n");
  const BookId player = room.add_player("Lindgrove", "");
  auto record = room.load();
  const std::vector links{std::pair(record.entries[0].id(), player)};
  room.append(link_entries(record, links));
  record = room.load();
  CHECK(must(link_entries(record, links)).empty());
  CHECK(link_entries(record, std::vector{std::pair(EntityId{}, player)}).error().code ==
        FaultCode::not_found);
  CHECK(load_event(*room.ledger, player).error().code == FaultCode::not_found);
}
