#include "core/people/arrival_account.h"

#include "core/desk/event_book.h"
#include "core/desk/person_books.h"
#include "core/people/arrival.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

Arrival going_on(const Tablet& tablet) {
  auto arrival = arrival_going_on(*tablet.ledger);
  REQUIRE(arrival);
  return std::move(*arrival);
}
const std::function<bool(const BookId&)> kNobody = [](const BookId&) { return false; };

}  // namespace

TEST_CASE("what came in an arrival is told beside what was here, player by player and in all") {
  Desk here, there;
  CHECK_FALSE(arrival_going_on(*here.ledger));
  const BookId both = here.first_drop_off(2);
  here.clock.advance(10 * kDay);
  there.clock.set(here.clock.now());
  meet(here, there, both);
  const BookId quiet = here.add_player("Vantreel", "Jo");
  REQUIRE(begin_arrival(*here.ledger, here.clock.now()));

  // Meanwhile the room strung two more for one whom we know, and three for somebody whom we do not.
  there.clock.advance(5 * kDay);
  const BookId fresh = there.first_drop_off(3);
  Desk* desk = &there;
  for (int i = 0; i < 2; ++i) {
    Job job;
    job.at = desk->clock.now();
    (void)desk->add(both, job);
  }
  meet(here, there, both);
  meet(here, there, fresh);

  const Arrival arrival = going_on(here);
  CHECK(arrival.before.at(both).jobs == 2);
  CHECK(arrival.before.at(quiet) == BookSum{});
  CHECK_FALSE(arrival.was_here(fresh));
  const BookSums now = book_sums(*here.ledger);
  const Gain known = gain_here({both}, now, arrival), whole = gain_here({fresh}, now, arrival), none = gain_here({quiet}, now, arrival);
  CHECK(known.jobs == 2);
  CHECK(known.books == 0);
  CHECK_FALSE(known.first);
  CHECK(known.newer_days == 15);
  CHECK(whole.jobs == 3);
  CHECK(whole.books == 1);
  CHECK(whole.first);
  CHECK_FALSE(whole.newer_days);
  CHECK(none.nothing());
  CHECK(came_in(now, arrival) == Moved{1, 5});
}

TEST_CASE("what the other side would gain counts the books that it lacks, and how much newer their last time is") {
  Desk desk;
  const BookId older = desk.first_drop_off(1);
  desk.clock.advance(12 * kDay);
  const BookId newer = desk.first_drop_off(2);
  const BookSums now = book_sums(*desk.ledger);
  const Gain all = gain_there({older, newer}, now, kNobody);
  CHECK(all.first);
  CHECK(all.books == 2);
  CHECK(all.jobs == 3);
  CHECK_FALSE(all.newer_days);
  const Gain rest = gain_there({older, newer}, now, [&](const BookId& book) { return book == older; });
  CHECK_FALSE(rest.first);
  CHECK(rest.jobs == 2);
  CHECK(rest.newer_days == 12);
  // What they have is the newer one: it is still more, but nothing newer.
  const Gain back = gain_there({older, newer}, now, [&](const BookId& book) { return book == newer; });
  CHECK(back.jobs == 1);
  CHECK_FALSE(back.newer_days);
  CHECK(gain_there({older}, now, [](const BookId&) { return true; }).nothing());
  CHECK(gain_there({desk.ledger->create_book_id()}, now, kNobody).nothing());
}

TEST_CASE("what went is kept as it was, each book once, and goes with a forgotten player and with the end of the arrival") {
  Desk desk;
  const BookId one = desk.first_drop_off(2), other = desk.first_drop_off(1);
  REQUIRE(note_sent(*desk.ledger, {one}));  // no arrival goes on
  CHECK_FALSE(arrival_going_on(*desk.ledger));
  REQUIRE(begin_arrival(*desk.ledger, desk.clock.now()));
  CHECK(went_out(going_on(desk)) == Moved{});
  REQUIRE(note_sent(*desk.ledger, {one}));
  REQUIRE(note_sent(*desk.ledger, {one, other, desk.ledger->create_book_id()}));
  CHECK(went_out(going_on(desk)) == Moved{2, 3});
  REQUIRE(desk.ledger->forget(one));
  CHECK(went_out(going_on(desk)) == Moved{1, 1});
  CHECK_FALSE(going_on(desk).was_here(one));
  CHECK(going_on(desk).was_here(other));
  // Another arrival begins with nothing sent.
  REQUIRE(begin_arrival(*desk.ledger, desk.clock.now()));
  CHECK(going_on(desk).sent.empty());
  REQUIRE(end_arrival(*desk.ledger));
  CHECK_FALSE(arrival_going_on(*desk.ledger));
  // What was kept by another program, or broken, is no arrival.
  for (const char* kept : {"", "[]", "{}", "[[1,2,3]]", "[[\"x\"]]", "["}) {
    REQUIRE(desk.ledger->remember("arrival before", as_bytes(kept)));
    CHECK_FALSE(arrival_going_on(*desk.ledger));
  }
}

TEST_CASE("an entry that the room linked to its own book is asked about where an older book here may be the same player's") {
  Desk here, there;
  there.clock.advance(kDay);
  const BookId ours = here.first_drop_off(2), theirs = there.first_drop_off(1);
  for (auto& [desk, book] : {std::pair(&here, ours), std::pair(&there, theirs)})
    desk->change<Person>(book, desk->load(book).person.id(), [](Person& person) { person.country = "NED", person.birth_year = 2002; });
  const BookId event = there.ledger->create_book_id();
  EventInfo info;
  info.name = "Lakeside Cup";
  there.append(new_event(event, info, there.clock.now()));
  const auto list = must(read_entry_list("family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\n"));
  for (const Draft& draft : import_entries(must(load_event(*there.ledger, event)), list.rows, there.clock.now()).drafts) there.append(draft);
  const auto record = must(load_event(*there.ledger, event));
  const std::pair<EntityId, BookId> link{record.entries.at(0).id(), theirs};
  there.append(must(link_entries(record, std::span(&link, 1))));

  REQUIRE(begin_arrival(*here.ledger, here.clock.now()));
  meet(here, there, event);
  meet(here, there, theirs);
  const Arrival begun = going_on(here);
  const auto plain = arrival(*here.ledger, event, here.clock.now());
  CHECK(plain.at(0).band == MatchBand::known);
  auto lines = arrival(*here.ledger, event, here.clock.now(), &begun);
  REQUIRE(lines.at(0).candidates.size() == 2);
  CHECK(lines[0].linked);
  CHECK(lines[0].band == MatchBand::likely);
  CHECK(lines[0].candidates[0].match.book == theirs);
  CHECK(lines[0].candidates[1].match.book == ours);

  SECTION("the same player: both books go together from then on") {
    for (const Draft& draft : must(say_of_books(*here.ledger, ours, theirs, LinkSaid::same_person, "Mara", here.clock.now()))) here.append(draft);
    lines = arrival(*here.ledger, event, here.clock.now(), &begun);
    CHECK(lines.at(0).band == MatchBand::known);
    CHECK(lines[0].candidates.at(0).books == std::vector{theirs, ours});
  }
  SECTION("another one: nobody is asked again") {
    for (const Draft& draft : must(say_of_books(*here.ledger, ours, theirs, LinkSaid::other_person, "Mara", here.clock.now()))) here.append(draft);
    lines = arrival(*here.ledger, event, here.clock.now(), &begun);
    CHECK(lines.at(0).band == MatchBand::known);
    CHECK(lines[0].candidates.at(0).books == std::vector{theirs});
  }
}
