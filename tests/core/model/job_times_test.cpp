#include "core/model/job_times.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/model/job_facts.h"
#include "tests/core/desk/desk_room.h"
#include "core/desk/stages.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

PlacedMark mark(std::uint64_t minute, Stage stage, const std::string& by = "Mara") {
  PlacedMark placed;
  placed.id.bytes[15] = static_cast<std::uint8_t>(minute);
  placed.stamp = Stamp::of(minute * 60'000, 0);
  placed.mark.stage = stage;
  placed.mark.at = static_cast<std::int64_t>(minute) * 60'000;
  placed.mark.by = by;
  return placed;
}

}  // namespace

TEST_CASE("a job's times are those of its last round, in whatever order its marks come") {
  std::vector<PlacedMark> marks{mark(1, Stage::received),      mark(2, Stage::waiting),     mark(32, Stage::inspected), mark(40, Stage::on_machine),
                                mark(60, Stage::strung),       mark(61, Stage::ready),      mark(70, Stage::on_machine), mark(90, Stage::strung, "Joren"),
                                mark(95, Stage::checked, "Joren"), mark(96, Stage::ready)};
  JobTimes times = job_times(marks);
  CHECK(times.strung_at == 90 * 60'000);
  CHECK(times.strung_by == "Joren");
  CHECK(times.strung_count == 2);
  CHECK(times.ready_at == 96 * 60'000);
  CHECK(times.mounted_at == 70 * 60'000);
  CHECK(times.waited == 30 * 60'000);
  CHECK_FALSE(times.waiting_since);
  CHECK_FALSE(times.collected_at);
  std::mt19937 random(4);
  for (int i = 0; i < 50; ++i) {
    std::shuffle(marks.begin(), marks.end(), random);
    CHECK(job_times(marks) == times);
  }
  times.take(mark(120, Stage::collected));
  CHECK(times.collected_at == 120 * 60'000);
  times.take(mark(121, Stage::strung));  // handed back: not ready any more
  CHECK_FALSE(times.ready_at);
  CHECK_FALSE(times.collected_at);
}

TEST_CASE("a clock that goes back takes no waiting away, and one far ahead adds no years") {
  PlacedMark waits = mark(10, Stage::waiting), goes_on = mark(11, Stage::inspected);
  goes_on.mark.at = 5 * 60'000;
  CHECK(job_times(std::vector{waits, goes_on}).waited == 0);
  goes_on.mark.at = INT64_MAX;
  waits.mark.at = -5;
  CHECK(job_times(std::vector{waits, goes_on}).waited == 0);
  waits.mark.at = 0;
  CHECK(job_times(std::vector{waits, goes_on}).waited == 30LL * 86'400'000);
}

TEST_CASE("the table keeps the same times step by step as from all marks at once") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const EntityId job = desk.load(book).jobs.front().id();
  const auto step = [&](Stage to, const std::string& why = {}) {
    desk.clock.advance(7 * kMinute);
    desk.append(take_step(desk.load(book), std::span(&job, 1), StageStep{to, "Mara", why, desk.clock.now(), {}}));
  };
  for (const Stage to : {Stage::waiting, Stage::inspected, Stage::cut_out, Stage::on_machine, Stage::strung, Stage::checked}) step(to);
  step(Stage::on_machine, "a cross was missed");
  for (const Stage to : {Stage::strung, Stage::checked, Stage::ready, Stage::collected}) step(to);
  const auto facts = job_facts(*desk.ledger, desk.event);
  REQUIRE(facts.size() == 1);
  CHECK(facts.front().times == job_times(desk.load(book).marks));
  CHECK(facts.front().times.strung_count == 2);
  CHECK(facts.front().times.waited / kMinute == 7);
  CHECK(desk.ledger->verify().faults.empty());
}
