#include "core/desk/last_time.h"

#include <catch2/catch.hpp>

#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("who has never been here has no last time") {
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  CHECK_FALSE(same_as_last_time(desk.load(book), EntityId{}));
  CHECK(rackets_of_last_drop_off(desk.load(book)).empty());
}

TEST_CASE("a setup alone is enough for a proposal") {
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  Setup setup;
  static_cast<Agreed&>(setup) = day_wish();
  const auto id = desk.add(book, setup);
  const auto last = same_as_last_time(desk.load(book), EntityId{});
  REQUIRE(last);
  CHECK(last->setup == id);
  CHECK(last->proposal == day_wish());
  CHECK_FALSE(last->as_strung);
}

TEST_CASE("what was agreed after the last job counts, shown as a change field by field") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const PlayerRecord before = desk.load(book);
  desk.change<Setup>(book, before.setups.at(0).id(), [](Setup& setup) {
    setup.mains_tension = kg("24.5");
    setup.dampener.clear();
  });
  const PlayerRecord record = desk.load(book);
  const auto last = same_as_last_time(record, record.rackets.at(0).id());
  REQUIRE(last);
  CHECK(last->as_strung->mains_tension == kg("25"));
  CHECK(last->proposal.mains_tension == kg("24.5"));
  CHECK(last->proposal.crosses_tension == kg("24"));
  CHECK(last->proposal.dampener.empty());
  REQUIRE(last->since.size() == 2);
  CHECK(last->since[0].name == "mains_tension");
  CHECK(last->since[0].before == Value{kg("25")});
  CHECK(last->since[0].after == Value{kg("24.5")});
  CHECK(last->since[1].name == "dampener");
  CHECK(is_cleared(last->since[1].after));
}

TEST_CASE("a racket put aside was not strung, and a new racket goes by the newest job") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  PlayerRecord record = desk.load(book);
  const EntityId job = record.jobs.at(0).id();
  const EntityId racket = record.rackets.at(0).id();
  CHECK(same_as_last_time(record, racket)->own_racket);
  const auto other = same_as_last_time(record, EntityId{{77}});
  REQUIRE(other);
  CHECK_FALSE(other->own_racket);
  CHECK(other->proposal == day_wish());
  desk.append(take_step(record, std::span(&job, 1), {Stage::aside, "Mara", "cracked", desk.clock.now()}));
  record = desk.load(book);
  const auto last = same_as_last_time(record, racket);
  REQUIRE(last);
  CHECK_FALSE(last->job);
  CHECK(last->setup == record.setups.at(0).id());
}

TEST_CASE("an open question on the setup stands beside the proposal") {
  Desk desk;
  Tablet bench("bench");
  const BookId book = desk.first_drop_off(1);
  const EntityId setup = desk.load(book).setups.at(0).id();
  meet(desk, bench, book);
  desk.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("26"); });
  bench.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("24"); });
  meet(desk, bench, book);
  const PlayerRecord record = desk.load(book);
  const auto last = same_as_last_time(record, record.rackets.at(0).id());
  REQUIRE(last);
  REQUIRE(last->questions.size() == 1);
  CHECK(last->questions[0].cell.tag == tag_of<Setup>(&Agreed::mains_tension));
}
