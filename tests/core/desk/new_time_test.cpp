#include "core/desk/new_time.h"

#include <catch2/catch.hpp>

#include "core/desk/room_promise.h"
#include "core/model/job_facts.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Promised : DayRoom {
  DayRoom::Brought racket;
  Promised() {
    open({"Merrin"});
    clock.set(at("09:00"));
    shift("Merrin", "09:00", "17:00");
    racket = bring("Quillon", at("10:30"));
  }
  [[nodiscard]] std::string refusal(const NewTime& agreed) {
    const auto draft = agree_time(load(racket.player), std::vector{racket.job}, agreed);
    return draft ? std::string("no fault") : draft.error().message();
  }
};

}  // namespace

TEST_CASE("another time is agreed with somebody, and everything goes by it from then on") {
  Promised room;
  const UnixMs wanted = room.at("12:15");
  room.append(agree_time(room.load(room.racket.player), std::vector{room.racket.job}, {wanted, "coach", room.clock.now()}));
  const auto record = room.load(room.racket.player);
  CHECK(record.jobs[0].now.ready_by == wanted);
  CHECK(record.jobs[0].now.time_agreed_by == "coach");
  // What was confirmed at the desk stays as it was read and confirmed.
  CHECK(record.drop_offs[0].now.ready_by == room.at("10:30"));
  CHECK(job_facts(*room.ledger, room.event).at(0).ready_by == wanted);
  const RoomDay day = room.day();
  REQUIRE(day.input().jobs.size() == 1);
  CHECK(day.input().jobs[0].due == wanted - day.finishing());
  CHECK(record.questions.empty());
}

TEST_CASE("what can't be promised is refused, with the reason") {
  Promised room;
  const UnixMs now = room.clock.now();
  CHECK(room.refusal({room.at("12:00"), "  ", now}).find("who agreed") != std::string::npos);
  CHECK(room.refusal({now, "coach", now}).find("has passed") != std::string::npos);
  CHECK(room.refusal({now + kFarthestPromise + 1, "coach", now}).find("30 days") != std::string::npos);
  CHECK(agree_time(room.load(room.racket.player), {}, {room.at("12:00"), "coach", now}).error().code == FaultCode::bad_input);
  const std::vector<EntityId> nobody{EntityId{{7}}};
  CHECK(agree_time(room.load(room.racket.player), nobody, {room.at("12:00"), "coach", now}).error().code == FaultCode::not_found);
  for (const Stage step : {Stage::on_machine, Stage::strung, Stage::ready}) room.step(room.racket, step, "Merrin");
  CHECK(room.refusal({room.at("12:00"), "coach", now}).find("in work") != std::string::npos);
  CHECK(promised_with(room.load(room.racket.player), room.racket.job).empty());
}

TEST_CASE("rackets of one hand-over that were promised together are found together") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  const BookId book = room.ledger->create_book_id();
  const PlayerRecord nobody = record_of(book, {}, {});
  auto request = room.first_request(3);
  request.drop_off.ready_by = room.at("11:00");
  for (std::size_t i = 0; i < 3; ++i) request.lines[i].tag_number = static_cast<std::int64_t>(i + 1);
  room.append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
  const auto first = room.load(book).jobs[0].id(), second = room.load(book).jobs[1].id();
  CHECK(promised_with(room.load(book), first).size() == 3);
  room.append(agree_time(room.load(book), std::vector{second}, {room.at("13:00"), "Ilse", room.clock.now()}));
  CHECK(promised_with(room.load(book), first).size() == 2);
  CHECK(promised_with(room.load(book), second) == std::vector{second});
}

TEST_CASE("a racket's new time is reckoned without its own place in the queue") {
  Promised room;
  const auto with = must(RoomPromises::make(*room.ledger, room.event, room.clock.now()));
  const auto without = must(RoomPromises::make(*room.ledger, room.event, room.clock.now(), std::vector{room.racket.job}));
  RacketsToCome one;
  one.kinds.assign(1, {});
  // Alone it is as early as on an empty bench; with itself before itself, later.
  CHECK(must(without.earliest(one)).ready_by < must(with.earliest(one)).ready_by);
  // What stands behind is named by what it is, although a racket before it is left out.
  const auto other = room.bring("Osmer", must(without.earliest(one)).ready_by);
  const auto asked = must(RoomPromises::make(*room.ledger, room.event, room.clock.now(), std::vector{room.racket.job}));
  const RoomWish wish = must(asked.check(one, room.at("09:45")));
  REQUIRE(wish.must_move.size() == 1);
  CHECK(wish.must_move[0].job == other.job);
}
