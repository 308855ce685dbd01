#include "core/desk/room_promise.h"

#include <catch2/catch.hpp>

#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

RacketsToCome rackets(std::size_t count, Rush rush = Rush::none) {
  RacketsToCome out;
  out.kinds.assign(count, {});
  out.rush = rush;
  return out;
}

}  // namespace

TEST_CASE("more rackets are promised for later, whole five minutes, and within the shifts") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "17:00");
  const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
  const Promise one = must(promises.earliest(rackets(1))), three = must(promises.earliest(rackets(3)));
  CHECK(one.ready_by % (5 * kMinute) == 0);
  CHECK(one.ready_by > room.at("09:25"));
  CHECK(one.ready_by < room.at("10:30"));
  CHECK(three.ready_by >= one.ready_by + 40 * kMinute);
  CHECK(three.ready_by < room.at("12:00"));
  CHECK(one.expected < one.ready_by);
  CHECK(one.chance >= promises.confidence() - 0.005);
  CHECK(promises.confidence() == Approx(0.95));
  // A whole day of rackets does not fit, and is refused rather than promised.
  CHECK_FALSE(promises.earliest(rackets(20)));
  CHECK(promises.earliest(rackets(21)).error().code == FaultCode::bad_input);
  CHECK(promises.earliest(rackets(0)).error().code == FaultCode::bad_input);
}

TEST_CASE("a wish that can't be kept says when it could be, and who would have to give way") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "17:00");
  // Promised as the queue can just keep it.
  std::vector<DayRoom::Brought> queue;
  for (const char* name : {"Quillon", "Vantreel", "Osmer"}) {
    const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
    queue.push_back(room.bring(name, must(promises.earliest(rackets(1))).ready_by));
  }
  const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
  const RoomWish soon = must(promises.check(rackets(1), room.at("10:00")));
  CHECK_FALSE(soon.can_be_kept);
  CHECK(soon.even_first);
  REQUIRE_FALSE(soon.must_move.empty());
  CHECK(soon.must_move[0].name.ends_with(" Ilse"));  // as the lists name a player
  CHECK(soon.must_move[0].ready_by > room.at("09:30"));
  CHECK(soon.must_move[0].after < soon.must_move[0].before);
  REQUIRE(soon.earliest);
  CHECK(soon.earliest->ready_by > room.at("10:20"));
  const RoomWish later = must(promises.check(rackets(1), soon.earliest->ready_by + 30 * kMinute));
  CHECK(later.can_be_kept);
  CHECK(later.must_move.empty());
  CHECK(later.chance > 0.9);
  const RoomWish never = must(promises.check(rackets(2), room.at("09:15")));
  CHECK_FALSE(never.can_be_kept);
  CHECK_FALSE(never.even_first);
  // What is left of the day carries no five more with certainty in half an hour, and nobody is told otherwise.
  CHECK(must(promises.check(rackets(5), room.at("09:40"))).chance < 0.05);
}

TEST_CASE("a time that is offered can be kept when it is taken") {
  for (int busy = 0; busy < 6; ++busy) {
    DayRoom room;
    room.open({"Merrin", "Corvin"});
    room.clock.set(room.at("09:00"));
    room.shift("Merrin", "09:00", "17:00");
    if (busy % 2 == 1) room.shift("Corvin", "09:30", "13:00");
    // Odd minutes too: a plan is not made of round times alone.
    const char* names[] = {"Quillon", "Vantreel", "Osmer", "Brandal", "Tessaly", "Wickmar"};
    for (int i = 0; i < busy; ++i) {
      const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
      room.bring(names[i], must(promises.earliest(rackets(1))).ready_by + (i * 7 % 11) * kMinute);
    }
    const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
    for (std::size_t count = 1; count <= 4; ++count) {
      CAPTURE(busy, count);
      const Promise offered = must(promises.earliest(rackets(count)));
      const RoomWish taken = must(promises.check(rackets(count), offered.ready_by));
      CHECK(taken.can_be_kept);
      CHECK(taken.must_move.empty());
      REQUIRE(taken.earliest);
      CHECK(taken.earliest->ready_by == offered.ready_by);
    }
  }
}

TEST_CASE("a room that keeps fewer of its promises than it should promises more carefully") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("08:00"));
  for (int i = 0; i < 12; ++i) {
    const auto one = room.bring(("Player" + std::to_string(i)).c_str(), room.clock.now() + 20 * kMinute);
    room.step(one, Stage::on_machine, "Merrin");
    room.clock.advance(30 * kMinute);
    room.step(one, Stage::strung, "Merrin");
    room.clock.advance(4 * kMinute);
    room.step(one, Stage::ready, "Merrin");
  }
  room.clock.set(room.at("09:00") + kDay);
  const auto promises = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
  CHECK(promises.confidence() == Approx(0.985));
  CHECK(promises.day().finishing() >= 4 * kMinute);
  CHECK(promises.day().finishing() < 5 * kMinute);
}
