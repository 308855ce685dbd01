#include "core/plan/promise.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "tests/core/plan/day_samples.h"
#include "tests/core/plan/played_room.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

PromiseInput one_bench(std::size_t queue, double own = 0.2) {
  PromiseInput out;
  out.day.now = kMorning;
  out.day.benches.push_back({"bench", "stringer", "", {{kMorning, kMorning + 720 * kMinuteMs}}});
  for (std::size_t i = 0; i < queue; ++i)
    out.day.jobs.push_back({"q" + std::to_string(i), kMorning, 30 * kMinuteMs, kMorning + static_cast<std::int64_t>(60 + 45 * i) * kMinuteMs});
  out.own.assign(queue, own);
  out.shared = {0.0};
  return out;
}
Promiser promiser_of(PromiseInput input) {
  auto made = Promiser::make(std::move(input));
  if (!made) FAIL(made.error().message());
  return std::move(*made);
}
DayJob fresh(std::int64_t minutes = 30) { return {"new", kMorning, minutes * kMinuteMs}; }

}  // namespace

TEST_CASE("with nothing in front the promise is the quantile of the racket's own time") {
  PromiseInput input = one_bench(0, 0.2);
  const Promiser room = promiser_of(std::move(input));
  const auto promise = room.earliest(fresh(), 0.2);
  REQUIRE(promise);
  // Lognormal of mean 30 and sigma 0.2: 30 exp(1.6449 x 0.2 - 0.02) = 40.86 minutes; in whole five minutes.
  const double quantile = 30 * std::exp(normal_quantile(0.95) * 0.2 - 0.02);
  CHECK(promise->ready_by >= kMorning + static_cast<std::int64_t>((quantile - 1.5) * 60'000));
  CHECK(promise->ready_by == kMorning + 45 * kMinuteMs);
  CHECK(promise->chance >= 0.94);
  CHECK(promise->expected == Approx(kMorning + 30 * std::exp(-0.02) * 60'000).margin(60'000));
}

TEST_CASE("behind a queue the spreads add up as they should") {
  // Nine rackets of mean 30 and sigma 0.2 in front, all due before: the sum of ten has standard deviation sqrt(10) x 30 x 0.2021, nearly normal.
  PromiseInput input = one_bench(9);
  for (DayJob& job : input.day.jobs) job.due = kMorning + 60 * kMinuteMs;
  const auto promise = promiser_of(std::move(input)).earliest(fresh(), 0.2);
  REQUIRE(promise);
  const double expected = 300 + normal_quantile(0.95) * std::sqrt(10.0) * 30 * std::sqrt(std::expm1(0.04));
  CHECK(static_cast<double>(promise->ready_by - kMorning) / 60'000 == Approx(expected).margin(7));
}

TEST_CASE("a rush from the court is promised as what is taken first, and its cost is told apart") {
  const Promiser room = promiser_of(one_bench(6));  // due after 60, 105, ... minutes, as tight as it gets
  DayJob rush = fresh();
  const auto in_turn = room.earliest(rush, 0.2);
  rush.on_court = true;
  const auto first = room.earliest(rush, 0.2);
  REQUIRE(in_turn);
  REQUIRE(first);
  CHECK(first->ready_by == kMorning + 45 * kMinuteMs);  // as with nothing in front of it
  CHECK(in_turn->ready_by > kMorning + 100 * kMinuteMs);
  const auto wish = room.check(rush, 0.2, kMorning + 45 * kMinuteMs);
  REQUIRE(wish);
  CHECK(wish->even_first);
  CHECK_FALSE(wish->can_be_kept);
  REQUIRE_FALSE(wish->must_move.empty());
  CHECK(wish->must_move.front().job == 0);
  // Behind another rush it waits for that one.
  PromiseInput busy = one_bench(6);
  busy.day.jobs[5].on_court = true;
  busy.day.jobs[5].due = kMorning + 40 * kMinuteMs;
  CHECK(promiser_of(busy).earliest(rush, 0.2)->ready_by >= kMorning + 70 * kMinuteMs);
}

TEST_CASE("a doubt about the stringer widens the promise more than luck does") {
  PromiseInput lucky = one_bench(9), doubted = one_bench(9);
  for (auto* input : {&lucky, &doubted})
    for (DayJob& job : input->day.jobs) job.due = kMorning + 60 * kMinuteMs;
  doubted.shared = {0.2};
  const auto one = promiser_of(std::move(lucky)).earliest(fresh(), 0.2), other = promiser_of(std::move(doubted)).earliest(fresh(), 0.2);
  REQUIRE(one);
  REQUIRE(other);
  CHECK(other->ready_by > one->ready_by + 60 * kMinuteMs);
}

TEST_CASE("a racket goes before those that can wait, and not before those that can't") {
  PromiseInput roomy = one_bench(6);
  for (DayJob& job : roomy.day.jobs) job.due = kMorning + 600 * kMinuteMs;
  const auto early = promiser_of(roomy).earliest(fresh(), 0.2);
  REQUIRE(early);
  CHECK(early->ready_by <= kMorning + 45 * kMinuteMs);
  PromiseInput tight = one_bench(6);
  const Promiser room = promiser_of(tight);
  const auto late = room.earliest(fresh(), 0.2);
  REQUIRE(late);
  CHECK(late->ready_by > kMorning + 100 * kMinuteMs);
  // Once it is in the queue by that time, nobody's chance is below what it was, or below confidence.
  tight.day.jobs.push_back(fresh());
  tight.day.jobs.back().due = late->ready_by;
  tight.own.push_back(0.2);
  const Promiser after = promiser_of(tight);
  for (std::size_t job = 0; job < 6; ++job) CHECK(after.chances()[job] >= std::min(room.chances()[job], 0.95) - 0.02);
  CHECK(after.chances()[6] >= 0.93);
}

TEST_CASE("breaks, the end of the day and rushes to come are reckoned with") {
  PromiseInput input = one_bench(0);
  input.day.benches[0].open = {{kMorning, kMorning + 20 * kMinuteMs}, {kMorning + 60 * kMinuteMs, kMorning + 300 * kMinuteMs}};
  const auto after_break = promiser_of(input).earliest(fresh(), 0.1);
  REQUIRE(after_break);
  CHECK(after_break->ready_by >= kMorning + 90 * kMinuteMs);
  input.day.benches[0].open = {{kMorning, kMorning + 25 * kMinuteMs}};
  const auto none = promiser_of(input).earliest(fresh(), 0.1);
  REQUIRE_FALSE(none);
  CHECK(none.error().message().find("no time can be promised") != std::string::npos);
  PromiseInput calm = one_bench(3), wild = one_bench(3);
  wild.rushes_per_hour = 0.5;
  wild.rushes_seen = 50;
  CHECK(promiser_of(wild).earliest(fresh(), 0.2)->ready_by > promiser_of(calm).earliest(fresh(), 0.2)->ready_by);
}

TEST_CASE("what is in work has only the time left that it may still take") {
  PromiseInput input = one_bench(1, 0.15);
  input.day.jobs[0].in_work = InWork{0, kMorning - 25 * kMinuteMs};
  const auto promise = promiser_of(input).earliest(fresh(), 0.15);
  REQUIRE(promise);
  CHECK(promise->expected > kMorning + 30 * kMinuteMs);
  CHECK(promise->expected < kMorning + 42 * kMinuteMs);
  // Far over its time: it goes on, and is not taken for done.
  input.day.jobs[0].in_work = InWork{0, kMorning - 120 * kMinuteMs};
  const auto over = promiser_of(input).earliest(fresh(), 0.15);
  REQUIRE(over);
  CHECK(over->expected > kMorning + 29 * kMinuteMs);
}

TEST_CASE("a wish is kept, or said plainly what it would cost") {
  const Promiser room = promiser_of(one_bench(6));  // due after 60, 105, ... 285 minutes, 30 minutes each
  const auto easy = room.check(fresh(), 0.2, kMorning + 500 * kMinuteMs);
  REQUIRE(easy);
  CHECK(easy->can_be_kept);
  CHECK(easy->chance > 0.95);
  CHECK(easy->must_move.empty());

  const auto hard = room.check(fresh(), 0.2, kMorning + 62 * kMinuteMs);
  REQUIRE(hard);
  CHECK_FALSE(hard->can_be_kept);
  CHECK(hard->even_first);
  REQUIRE_FALSE(hard->must_move.empty());
  CHECK(hard->must_move.front().job == 0);
  CHECK(hard->must_move.front().after < hard->must_move.front().before);
  REQUIRE(hard->earliest);
  CHECK(hard->earliest->ready_by > kMorning + 62 * kMinuteMs);

  const auto never = room.check(fresh(), 0.2, kMorning + 20 * kMinuteMs);
  REQUIRE(never);
  CHECK_FALSE(never->can_be_kept);
  CHECK_FALSE(never->even_first);
  CHECK(never->chance < 0.1);
}

TEST_CASE("a racket that may fail its check is promised for later, and so is what comes behind it") {
  // Of one racket in five that takes twice its time: the 95 per cent quantile lies among those. Without spread it is known to the minute.
  PromiseInput input = one_bench(0, 0);
  input.again = 0.2;
  const auto own = promiser_of(input).earliest(fresh(), 0);
  REQUIRE(own);
  CHECK(own->ready_by == kMorning + 60 * kMinuteMs);
  CHECK(own->expected == kMorning + 30 * kMinuteMs);
  // One in a hundred does not reach it.
  input.again = 0.01;
  CHECK(promiser_of(input).earliest(fresh(), 0)->ready_by == kMorning + 30 * kMinuteMs);
  // Behind nine, all due before: how many of ten fail is binomial(10, 0.2), of which 95 per cent are four or fewer (published tables: 0.967).
  PromiseInput queue = one_bench(9, 0);
  for (DayJob& job : queue.day.jobs) job.due = kMorning + 60 * kMinuteMs;
  queue.again = 0.2;
  const auto behind = promiser_of(queue).earliest(fresh(), 0);
  REQUIRE(behind);
  CHECK(behind->ready_by == kMorning + 14 * 30 * kMinuteMs);
  CHECK(behind->expected == kMorning + 12 * 30 * kMinuteMs);
}

TEST_CASE("the same question has the same answer") {
  const auto one = promiser_of(one_bench(6)).earliest(fresh(), 0.2), other = promiser_of(one_bench(6)).earliest(fresh(), 0.2);
  CHECK(one->ready_by == other->ready_by);
  CHECK(one->chance == other->chance);
}

TEST_CASE("what can't be asked is refused, with the place") {
  const auto said = [](const std::function<void(PromiseInput&)>& change) {
    PromiseInput input = one_bench(2);
    change(input);
    const auto made = Promiser::make(std::move(input));
    return made ? std::string("no fault") : made.error().message();
  };
  CHECK(said([](PromiseInput& in) { in.own.pop_back(); }).find("spreads") != std::string::npos);
  CHECK(said([](PromiseInput& in) { in.own[0] = std::nan(""); }).find("spreads") != std::string::npos);
  CHECK(said([](PromiseInput& in) { in.rushes_per_hour = 1e9; }).find("rushes") != std::string::npos);
  CHECK(said([](PromiseInput& in) { in.again = std::nan(""); }).find("fail their check") != std::string::npos);
  CHECK(said([](PromiseInput& in) { in.confidence = 1; }).find("confidence") != std::string::npos);
  CHECK(said([](PromiseInput& in) { in.day.jobs[1].id = "q0"; }).find("there twice") != std::string::npos);
  const Promiser room = promiser_of(one_bench(2));
  CHECK(room.earliest({"q1", kMorning, 30 * kMinuteMs}, 0.2).error().message().find("in the queue already") != std::string::npos);
  CHECK(room.earliest({"new", kMorning, 0}, 0.2).error().message().find("racket new") != std::string::npos);
  CHECK(room.check(fresh(), 5, kMorning).error().message().find("spread") != std::string::npos);
}

TEST_CASE("confidence follows how promises ended") {
  CHECK(confidence_after({}) == 0.95);
  CHECK(confidence_after({false}) == Approx(0.9595));
  CHECK(confidence_after({true, true}) == Approx(0.949));
  CHECK(confidence_after(std::vector<bool>(1000, false)) == 0.985);
  CHECK(confidence_after(std::vector<bool>(1000, true)) == 0.8);
}

namespace {

struct Weeks {
  Played sum;
  void add(const Played& one) {
    const auto before = static_cast<double>(sum.promised), more = static_cast<double>(one.promised);
    sum.slack = (sum.slack * before + one.slack * more) / (before + more);
    sum.oracle_slack = (sum.oracle_slack * before + one.oracle_slack * more) / (before + more);
    sum.promised += one.promised, sum.kept += one.kept, sum.granted += one.granted, sum.wishes_kept += one.wishes_kept;
  }
  /// A wish is granted for a time of its own choice, which is later than it would have to be: it is kept more often.
  void hold() const {
    const double earliest = static_cast<double>(sum.kept) / static_cast<double>(sum.promised);
    const double wishes = static_cast<double>(sum.wishes_kept) / static_cast<double>(sum.granted);
    const double together = static_cast<double>(sum.kept + sum.wishes_kept) / static_cast<double>(sum.promised + sum.granted);
    INFO("earliest " << earliest << " of " << sum.promised << ", wishes " << wishes << " of " << sum.granted << ", together " << together
                     << ", slack " << sum.slack << " minutes");
    CHECK(earliest >= 0.93);
    CHECK(earliest <= 0.97);
    CHECK(wishes >= 0.93);
    CHECK(together >= 0.93);
    CHECK(together <= 0.98);
  }
};

}  // namespace

TEST_CASE("in played weeks promises are kept as often as they say, and are not late for nothing") {
  Weeks weeks;
  for (const std::uint64_t start : {6U, 8U}) {
    PlayedRoom room;
    room.benches = 3;
    room.rackets_a_day = 34;
    room.oracle = true;
    weeks.add(RoomPlayer(room, start).play());
  }
  CHECK(weeks.sum.promised > 600);
  weeks.hold();
  INFO("slack " << weeks.sum.slack << " minutes, of one who knows the room " << weeks.sum.oracle_slack);
  CHECK(weeks.sum.slack < 1.25 * weeks.sum.oracle_slack);
}

TEST_CASE("promises are kept as often as they say in a room that follows its plan, too") {
  Weeks weeks;
  for (const std::uint64_t start : {2U, 3U}) {
    PlayedRoom room;
    room.benches = 2;
    room.rackets_a_day = 21;
    room.planned = true;
    weeks.add(RoomPlayer(room, start).play());
  }
  weeks.hold();
}
