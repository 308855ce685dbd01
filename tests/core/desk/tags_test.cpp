#include "core/desk/tags.h"

#include <catch2/catch.hpp>

#include "core/desk/undo.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Tagged : DayRoom {
  Tagged() {
    open({"Merrin"});
    clock.set(at("09:00"));
  }
  [[nodiscard]] std::optional<std::int64_t> number_of(const Brought& one) const { return load(one.player).job(one.job)->now.tag_number; }
};

}  // namespace

TEST_CASE("a tag's number is in use until its racket was collected") {
  Tagged room;
  const auto one = room.bring("Quillon", room.at("11:00"));
  const std::vector<std::int64_t> first{1}, two{2, 3}, twice{5, 5}, none{0}, far{kHighestTyped + 1};
  CHECK(check_new_tags(*room.ledger, room.event, two));
  const auto held = check_new_tags(*room.ledger, room.event, first);
  REQUIRE_FALSE(held);
  CHECK(held.error().code == FaultCode::conflict);
  CHECK(held.error().what.find("1, Quillon Ilse, racket 1") != std::string::npos);
  CHECK(held.error().what_to_do.find("2") != std::string::npos);
  for (const auto& wrong : {twice, none, far}) CHECK(check_new_tags(*room.ledger, room.event, wrong).error().code == FaultCode::bad_input);
  CHECK(check_new_tags(*room.ledger, room.ledger->create_book_id(), first));  // another event's numbers are its own
  StageStep aside;
  aside.to = Stage::aside;
  aside.by = "Mara";
  aside.reason = "a crack";
  aside.at = room.clock.now();
  room.append(take_step(room.load(one.player), std::vector{one.job}, aside));
  CHECK_FALSE(check_new_tags(*room.ledger, room.event, first));  // it still lies there with its tag
  StageStep gone = aside;
  gone.to = Stage::collected;
  gone.reason = "taken home";
  room.append(take_step(room.load(one.player), std::vector{one.job}, gone));
  CHECK(check_new_tags(*room.ledger, room.event, first));
  CHECK(give_tag(*room.ledger, room.load(one.player), one.job, 4).error().code == FaultCode::refused);
}

TEST_CASE("two rackets with one number are seen once both are here, and another number parts them until it is undone") {
  Tagged room;
  DayRoom other("other");
  other.event = room.event;
  meet(room, other, room.event);
  other.clock.set(room.clock.now());
  const auto here = room.bring("Quillon", room.at("11:00")), there = other.bring("Vantreel", room.at("12:00"));
  CHECK(doubled_tags(*room.ledger, room.event).empty());
  meet(room, other, here.player);
  meet(room, other, there.player);
  for (const DayRoom* one : {static_cast<const DayRoom*>(&room), static_cast<const DayRoom*>(&other)}) {
    CHECK(doubled_tags(*one->ledger, room.event) == std::set<std::int64_t>{1});
    CHECK(rackets_with_tag(*one->ledger, room.event, 1).size() == 2);
  }
  const Draft given = must(give_tag(*room.ledger, room.load(there.player), there.job, 2));
  room.append(given);
  CHECK(room.number_of(there) == 2);
  CHECK(room.number_of(here) == 1);
  CHECK(doubled_tags(*room.ledger, room.event).empty());
  CHECK(give_tag(*room.ledger, room.load(there.player), there.job, 1).error().code == FaultCode::conflict);
  CHECK(must(give_tag(*room.ledger, room.load(there.player), there.job, 2)).empty());
  CHECK(give_tag(*room.ledger, room.load(there.player), here.job, 9).error().code == FaultCode::not_found);
  room.append(undo(*room.ledger, there.player, last_action(*room.ledger, there.player).value()));
  CHECK(room.number_of(there) == 1);
  CHECK(doubled_tags(*room.ledger, room.event) == std::set<std::int64_t>{1});
  // A racket that was collected doubles nobody.
  for (const Stage step : {Stage::on_machine, Stage::strung, Stage::ready, Stage::collected}) room.step(here, step, "Merrin");
  CHECK(doubled_tags(*room.ledger, room.event).empty());
}

TEST_CASE("the next number is one above the highest, and where nobody could type that the lowest that is free") {
  Tagged room;
  CHECK(next_tag(*room.ledger, room.event) == 1);
  CHECK(next_tag(*room.ledger, room.event, {1, 2, 4}) == 3);
  room.tag = 6;
  const auto one = room.bring("Quillon", room.at("11:00"));  // 7
  CHECK(next_tag(*room.ledger, room.event) == 8);
  CHECK(next_tag(*room.ledger, room.event, {8, 9, 11}) == 10);
  room.tag = 0;
  const auto first = room.bring("Ostrel", room.at("11:00")), second = room.bring("Tarle", room.at("11:00"));  // 1, 2
  room.tag = kHighestTyped - 1;
  (void)room.bring("Vantreel", room.at("12:00"));
  CHECK(next_tag(*room.ledger, room.event) == 3);
  CHECK(next_tag(*room.ledger, room.event, {3, 4, 5, 6}) == 8);
  const std::vector<std::int64_t> free{3}, taken{7};
  CHECK(check_new_tags(*room.ledger, room.event, free));
  CHECK(check_new_tags(*room.ledger, room.event, taken).error().what_to_do.find("is 3") != std::string::npos);
  // One that was collected has given its number back, one put aside has not.
  room.step(first, Stage::on_machine, "Merrin");
  for (const Stage step : {Stage::strung, Stage::ready, Stage::collected}) room.step(first, step, "Merrin");
  StageStep aside;
  aside.to = Stage::aside;
  aside.by = "Mara";
  aside.reason = "a crack";
  aside.at = room.clock.now();
  room.append(take_step(room.load(second.player), std::vector{second.job}, aside));
  CHECK(next_tag(*room.ledger, room.event) == 1);
  CHECK(next_tag(*room.ledger, room.event, {1}) == 3);
  CHECK(room.number_of(one) == 7);
}
