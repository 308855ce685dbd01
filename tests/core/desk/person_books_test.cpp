#include "core/desk/person_books.h"

#include <catch2/catch.hpp>

#include "core/desk/consent.h"
#include "core/desk/last_time.h"
#include "core/desk/questions.h"
#include "core/desk/undo.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

void say(Tablet& tablet, const BookId& one, const BookId& other, LinkSaid said = LinkSaid::same_person) {
  for (const Draft& draft : must(say_of_books(*tablet.ledger, one, other, said, "Mara", tablet.clock.now()))) tablet.append(draft);
}
std::vector<BookId> group(Tablet& tablet, const BookId& book) { return linked_books(*tablet.ledger, book).here; }

/// What a book holds but for what was said of it and another one.
std::vector<EntityState> rest_of(Tablet& tablet, const BookId& book) {
  auto out = tablet.ledger->entities(book);
  std::erase_if(out, [](const EntityState& state) { return state.kind == kBookLink; });
  return out;
}

}  // namespace

TEST_CASE("what was said of two books and undone is gone from the tables too") {
  for (const LinkSaid said : {LinkSaid::same_person, LinkSaid::other_person}) {
    Desk desk;
    const BookId harbour = desk.first_drop_off(1);
    const BookId lakeside = desk.first_drop_off(1);
    say(desk, harbour, lakeside, said);
    CHECK_FALSE(said_links(*desk.ledger).empty());
    for (const BookId& undone : {harbour, lakeside}) desk.append(must(undo(*desk.ledger, undone, *last_action(*desk.ledger, undone))));
    CHECK(said_of(*desk.ledger, harbour, lakeside) == LinkSaid::unsaid);
    CHECK(said_links(*desk.ledger).empty());
    CHECK(group(desk, harbour) == std::vector{harbour});
    CHECK(desk.ledger->verify().faults.empty());
  }
}

TEST_CASE("two books of one person are shown together, and parted each is as it was") {
  Desk desk;
  const BookId harbour = desk.first_drop_off(2);
  desk.clock.advance(20 * kDay);
  const BookId lakeside = desk.first_drop_off(1);
  const auto before = rest_of(desk, harbour), other = rest_of(desk, lakeside);
  CHECK(group(desk, harbour) == std::vector{harbour});
  say(desk, lakeside, harbour);
  CHECK(group(desk, harbour) == std::vector{harbour, lakeside});
  CHECK(group(desk, lakeside) == std::vector{harbour, lakeside});
  CHECK(said_of(*desk.ledger, harbour, lakeside) == LinkSaid::same_person);
  CHECK(all_linked_books(*desk.ledger).size() == 1);
  // Said again, nothing is written.
  CHECK(must(say_of_books(*desk.ledger, harbour, lakeside, LinkSaid::same_person, "Bo", desk.clock.now())).empty());

  const auto books = must(load_person(*desk.ledger, harbour));
  REQUIRE(books.records.size() == 2);
  CHECK(books.records[0].book == harbour);
  CHECK(newest_book(books) == lakeside);
  const PlayerRecord both = together(books);
  REQUIRE(both.jobs.size() == 3);
  CHECK(*both.jobs[2].now.at > *both.jobs[1].now.at);
  CHECK(both.rackets.size() == 3);
  // "Same as last time" is the newest of either book.
  CHECK(same_as_last_time(both, {})->job == both.jobs[2].id());

  for (const Draft& draft : must(part_book(*desk.ledger, harbour, "Mara", desk.clock.now()))) desk.append(draft);
  CHECK(group(desk, harbour) == std::vector{harbour});
  CHECK(rest_of(desk, harbour) == before);
  CHECK(rest_of(desk, lakeside) == other);
  CHECK(all_linked_books(*desk.ledger).empty());
  CHECK(must(part_book(*desk.ledger, harbour, "Mara", desk.clock.now())).empty());
  // And told to be one person's after all.
  say(desk, harbour, lakeside);
  CHECK(group(desk, lakeside).size() == 2);
}

TEST_CASE("chains and circles of links end, and one book leaves them whole") {
  Tablet tablet("desk");
  std::vector<BookId> books;
  for (const char* given : {"Ilse", "Ilze", "Elsa", "Else"}) books.push_back(tablet.add_player("Wendelmoor", given));
  say(tablet, books[0], books[1]);
  say(tablet, books[2], books[1]);
  say(tablet, books[2], books[3]);
  CHECK(group(tablet, books[3]) == books);
  say(tablet, books[0], books[3]);  // a circle
  say(tablet, books[0], books[2]);
  CHECK(group(tablet, books[1]) == books);
  REQUIRE(all_linked_books(*tablet.ledger).size() == 1);
  for (const Draft& draft : must(part_book(*tablet.ledger, books[1], "Mara", tablet.clock.now()))) tablet.append(draft);
  CHECK(group(tablet, books[1]) == std::vector{books[1]});
  CHECK(group(tablet, books[0]) == std::vector{books[0], books[2], books[3]});
}

TEST_CASE("links travel with either book, and merge like anything else") {
  Tablet here("here"), there("there");
  const BookId one = here.add_player("Wendelmoor", "Ilse"), other = here.add_player("Vendelmor", "Ilse");
  say(here, one, other);
  // Only one of the two books goes across: the other one is known by name alone, until it comes.
  meet(here, there, one);
  CHECK(group(there, one) == std::vector{one});
  CHECK(linked_books(*there.ledger, one).elsewhere == std::vector{other});
  CHECK(must(load_person(*there.ledger, one)).elsewhere == std::vector{other});
  meet(here, there, other);
  CHECK(group(there, one).size() == 2);

  SECTION("parted there, it is parted here, also with one of the two books only") {
    for (const Draft& draft : must(part_book(*there.ledger, other, "Bo", there.clock.now()))) there.append(draft);
    meet(here, there, one);
    CHECK(group(here, one) == std::vector{one});
    meet(here, there, other);
    CHECK(group(here, other) == std::vector{other});
  }
  SECTION("told otherwise while apart, a person decides") {
    for (const Draft& draft : must(part_book(*there.ledger, one, "Bo", there.clock.now()))) there.append(draft);
    here.clock.advance(kHour);
    for (const Draft& draft : must(part_book(*here.ledger, one, "Mara", here.clock.now()))) here.append(draft);
    say(here, one, other);
    meet(here, there, one);
    meet(here, there, other);
    CHECK(group(here, one) == group(there, one));
    const auto questions = here.ledger->open_questions(one);
    REQUIRE(questions.size() == 1);
    CHECK(questions[0].cell.tag == tag_of<BookLink>(&BookLink::said));
    here.append(close_question(questions[0], std::int64_t{2}));
    meet(here, there, one);
    CHECK(group(here, other) == std::vector{other});
    CHECK(group(there, other) == std::vector{other});
  }
}

TEST_CASE("where two books differ, it is asked, and the answer stands in both") {
  Desk desk;
  const BookId one = desk.first_drop_off(1), other = desk.first_drop_off(1);
  const auto setup = desk.load(other).setups.at(0).id();
  desk.change<Setup>(other, setup, [](Setup& now) { now.mains_tension = Quantity{{230, 1}, Unit::kilogram_force}; });
  desk.change<Person>(one, desk.load(one).person.id(), [](Person& now) { now.birth_year = 2008; });
  desk.change<Person>(other, desk.load(other).person.id(), [](Person& now) { now.birth_year = 2009, now.country = "PRT"; });
  say(desk, one, other);
  const auto books = must(load_person(*desk.ledger, one));
  const auto found = differences(books);
  REQUIRE(found.size() == 2);
  CHECK(found[0].name == "birth_year");
  CHECK(found[1].name == "mains_tension");
  CHECK(found[1].subject == "day");
  REQUIRE(found[1].answers.size() == 2);
  CHECK(found[1].answers[0].book == other);  // said last
  for (const Draft& draft : must(settle(books, found[1], found[1].answers[0].value))) desk.append(draft);
  CHECK(desk.load(one).setups[0].now.mains_tension == Quantity{{230, 1}, Unit::kilogram_force});
  CHECK(settle(books, found[0], std::string("2008")).error().code == FaultCode::bad_input);
  for (const Draft& draft : must(settle(books, found[0], std::int64_t{2010}))) desk.append(draft);
  CHECK(differences(must(load_person(*desk.ledger, other))).empty());
  CHECK(desk.load(other).person.now.birth_year == 2010);
  // What was there to be changed has gone meanwhile.
  REQUIRE(desk.ledger->forget(other));
  CHECK(must(load_person(*desk.ledger, one)).elsewhere == std::vector{other});
}

TEST_CASE("what is done for a person is done in every linked book: sent along, agreed to, forgotten") {
  Tablet here("here"), there("there");
  there.clock.advance(5000);  // made later: books of one person are told in the order of their making
  const BookId one = here.add_player("Wendelmoor", "Ilse"), other = here.add_player("Vendelmor", "Ilse"), third = there.add_player("Wendelmore", "I"),
               alone = here.add_player("Vantreel", "Jo");
  meet(here, there, third);
  say(here, one, other);
  say(here, other, third);
  CHECK(with_linked(*here.ledger, {alone, other}) == std::vector{alone, other, one, third});
  CHECK(with_linked(*here.ledger, {other, one}) == std::vector{other, one, third});
  CHECK(with_linked(*here.ledger, {}).empty());

  const auto books = must(load_person(*here.ledger, other));
  const std::string text = consent_text({}, ConsentChoice::any_room);
  const auto drafts = must(give_consent(books, ConsentChoice::any_room, {text, {}, here.clock.now(), here.ledger->self().id()}));
  REQUIRE(drafts.size() == 3);
  CHECK(drafts.front().book() == other);
  for (const Draft& draft : drafts) here.append(draft);
  for (const BookId& book : {one, other, third}) CHECK(find_player(*here.ledger, book)->consent == ConsentChoice::any_room);
  CHECK(find_player(*here.ledger, alone)->consent == ConsentChoice::unsaid);
  CHECK_FALSE(give_consent(books, ConsentChoice::any_room, {"something else", {}, 0, {}}));

  // The other tablet knows one of the books by name only, and forgets it all the same: it never comes.
  meet(here, there, other);
  REQUIRE(linked_books(*there.ledger, other).elsewhere == std::vector{one});
  const auto report = must(forget_person(*there.ledger, other));
  CHECK(report.erased.size() == 2);
  for (const BookId& book : {one, other, third}) CHECK(there.ledger->is_forgotten(book));
  meet(here, there, one);
  CHECK_FALSE(there.ledger->book(one));
  CHECK(must(forget_person(*here.ledger, alone)).erased == std::vector{alone});
  CHECK(here.ledger->book(one));
  CHECK(forget_person(*here.ledger, here.ledger->create_book_id()).error().code == FaultCode::not_found);
}

TEST_CASE("what can't be said of two books is refused, with the reason") {
  Desk desk;
  const BookId one = desk.add_player("Wendelmoor", "Ilse"), nowhere = desk.ledger->create_book_id(), gone = desk.ledger->create_book_id();
  const auto refusal = [&](const BookId& a, const BookId& b, LinkSaid said, const std::string& by) {
    const auto drafts = say_of_books(*desk.ledger, a, b, said, by, desk.clock.now());
    return drafts ? std::string("no fault") : drafts.error().message();
  };
  CHECK(refusal(one, one, LinkSaid::same_person, "Mara").find("one book, not two") != std::string::npos);
  CHECK(refusal(one, nowhere, LinkSaid::same_person, " ").find("who says so") != std::string::npos);
  CHECK(refusal(one, nowhere, LinkSaid::unsaid, "Mara").find("nothing was said") != std::string::npos);
  CHECK(refusal(gone, nowhere, LinkSaid::same_person, "Mara").find("neither") != std::string::npos);
  CHECK(part_book(*desk.ledger, gone, "Mara", desk.clock.now()).error().code == FaultCode::not_found);
  CHECK(load_person(*desk.ledger, gone).error().code == FaultCode::not_found);
}

TEST_CASE("somebody is found by another name, and no more when it is taken back") {
  Tablet tablet("desk");
  const BookId book = tablet.add_player("Wendelmoor", "Ilse");
  OtherName before;
  before.family_name = "Ŝtelbach";
  before.given_name = "Ilse";
  before.why = NameWhy::former;
  const EntityId id = tablet.add(book, before);
  CHECK(find_players(*tablet.ledger, "stelb").size() == 1);
  CHECK(find_players(*tablet.ledger, "wendel").size() == 1);
  tablet.change<Person>(book, tablet.ledger->entities(book, kPerson).at(0).id, [](Person& now) { now.family_name = "Vantreel"; });
  CHECK(find_players(*tablet.ledger, "stelb").size() == 1);
  CHECK(find_players(*tablet.ledger, "vantr").size() == 1);
  CHECK(find_players(*tablet.ledger, "wendel").empty());
  tablet.change<OtherName>(book, id, [](OtherName& now) { now = {}; });
  CHECK(find_players(*tablet.ledger, "stelb").empty());
  REQUIRE(tablet.ledger->rebuild());
  CHECK(find_players(*tablet.ledger, "vantr").size() == 1);
  CHECK(find_players(*tablet.ledger, "stelb").empty());
}
