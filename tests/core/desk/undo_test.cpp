#include "core/desk/undo.h"

#include <catch2/catch.hpp>

#include "core/desk/questions.h"
#include "core/desk/stages.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

Outcome<Draft> undo_last(const Desk& desk, const BookId& book) {
  const auto seq = last_action(*desk.ledger, book);
  REQUIRE(seq);
  return undo(*desk.ledger, book, *seq);
}

}  // namespace

TEST_CASE("a changed field gets its old value back") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const EntityId setup = desk.load(book).setups.at(0).id();
  desk.change<Setup>(book, setup, [](Setup& now) {
    now.mains_tension = kg("26");
    now.note.clear();
  });
  desk.append(undo_last(desk, book));
  CHECK(static_cast<const Agreed&>(desk.load(book).setups.at(0).now) == day_wish());
}

TEST_CASE("a whole drop-off can be taken back as long as nobody has gone on from it") {
  Desk desk;
  const BookId book = desk.first_drop_off(3);
  const EntityId job = desk.load(book).jobs.at(0).id();
  desk.append(advance(desk.load(book), job, "Mara", desk.clock.now()));
  CHECK(last_action(*desk.ledger, book) == 2);
  const auto too_late = undo(*desk.ledger, book, 1);
  REQUIRE_FALSE(too_late);
  CHECK(too_late.error().code == FaultCode::conflict);

  desk.append(undo_last(desk, book));  // the step
  CHECK(desk.load(book).stage_of(job).stage == Stage::received);
  CHECK(find_job(*desk.ledger, book, job)->stage == Stage::received);
  CHECK(last_action(*desk.ledger, book) == 1);
  desk.append(undo_last(desk, book));  // the drop-off
  const PlayerRecord record = desk.load(book);
  CHECK(record.jobs.empty());
  CHECK(record.rackets.empty());
  CHECK(record.drop_offs.empty());
  CHECK(history_of(*desk.ledger, book).empty());
  CHECK(find_players(*desk.ledger, "wendel").empty());
  CHECK_FALSE(last_action(*desk.ledger, book));

  // Undoing the undo brings it all back.
  desk.append(undo(*desk.ledger, book, 4));
  CHECK(desk.load(book).jobs.size() == 3);
  CHECK(history_of(*desk.ledger, book).size() == 3);
  CHECK(find_players(*desk.ledger, "wendel").size() == 1);
  CHECK(last_action(*desk.ledger, book) == 1);
  CHECK(desk.ledger->verify().faults.empty());
}

TEST_CASE("what somebody changed since is not undone over their head") {
  Desk desk;
  Desk bench("bench");
  const BookId book = desk.first_drop_off(1);
  const EntityId setup = desk.load(book).setups.at(0).id();
  desk.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("26"); });
  meet(desk, bench, book);
  bench.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("24"); });
  meet(desk, bench, book);
  const auto refused = undo(*desk.ledger, book, 2);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::conflict);
  CHECK(refused.error().where == "mains_tension");
  CHECK(undo(*bench.ledger, book, 2).error().code == FaultCode::not_found);  // not the bench's own
}

TEST_CASE("a closed question cannot be opened again by undo") {
  Desk desk;
  Desk bench("bench");
  const BookId book = desk.first_drop_off(1);
  const EntityId setup = desk.load(book).setups.at(0).id();
  meet(desk, bench, book);
  desk.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("26"); });
  bench.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("24"); });
  meet(desk, bench, book);
  desk.append(close_question(desk.load(book).questions.at(0), Value{kg("24")}));
  const auto refused = undo_last(desk, book);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
}
