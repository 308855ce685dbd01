#include "core/quality/watch.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/quality/causes.h"
#include "core/quality/run_length.h"
#include "tests/support/simulated_weeks.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

using Kind = weavelog::test::Planted::Kind;

weavelog::test::Planted planted(Kind kind, double percent, double often, std::size_t from, std::size_t who) {
  weavelog::test::Planted out;
  out.kind = kind, out.percent = percent, out.often = often, out.from = from, out.who = who;
  return out;
}

}  // namespace

TEST_CASE("every chart is designed for a false alarm in 370 rackets") {
  const WatchDesign design;
  CHECK(ewma_run_length(design.average, 0, 1).mean == Approx(370.4).margin(1));
  CHECK(rules_run_length(RuleSet::nelson, std::vector<int>{1}, 0, 1).mean == Approx(370.4).margin(0.05));
  // What that finds within ten rackets of a shift of 3 per cent, with readings that scatter by 1.5, 1.75 and 2 per cent.
  CHECK(ewma_run_length(design.average, 2, 10).within(10) > 0.999);
  CHECK(ewma_run_length(design.average, 3 / 1.75, 10).within(10) > 0.99);
  CHECK(ewma_run_length(design.average, 1.5, 10).within(10) > 0.97);
}

TEST_CASE("false alarms come at the designed rate") {
  Chance chance(77);
  WeekSetting setting;
  const FalseAlarms alarms = false_alarms(setting, 400, chance);
  const double rackets = static_cast<double>(alarms.rackets);
  const auto near = [](std::size_t counted, double expected) { return std::fabs(static_cast<double>(counted) - expected) < 4 * std::sqrt(expected); };
  CHECK(near(alarms.of_rackets, rackets / 370.4));
  const double averages = 400 * 4 * expected_alarms(WatchDesign{}.average, 70);
  CHECK(near(alarms.of_stringers, averages));
  CHECK(near(alarms.of_machines, averages));
  CHECK(averages == Approx(rackets / 370).epsilon(0.05));
}

TEST_CASE("what is planted in a room is found before ten rackets went out") {
  // A clamp that slips at every third racket and then loses 8 per cent; a machine that reads 3 per cent low; a stringer who pulls 3 per cent long. Begun
  // on Monday morning and in the middle of the week. Of the slips three in a hundred have no low racket among ten.
  struct Case {
    Kind kind;
    double percent, often, least;
    Cause cause;
  };
  WeekSetting setting;
  for (const Case& one : {Case{Kind::slipping_clamp, -8, 1.0 / 3, 0.95, Cause::clamp_slip}, Case{Kind::machine_low, -3, 1, 0.97, Cause::machine_calibration},
                          Case{Kind::stringer_long, 3, 1, 0.97, Cause::stringer}})
    for (const std::size_t from : {0U, 140U}) {
      Chance chance(from + 5);
      int soon = 0, among_two = 0, right = 0, tenth = 0;
      constexpr int kWeeks = 150;
      for (int week = 0; week < kWeeks; ++week) {
        const Found found = find_fault(setting, planted(one.kind, one.percent, one.often, from, static_cast<std::size_t>(week) % 4), chance);
        if (found.after && *found.after <= 10) ++soon;
        if (found.first == one.cause || found.second == one.cause) ++among_two;
        if (found.at_tenth) ++tenth;
        if (found.at_tenth == one.cause) ++right;
      }
      INFO(name_of(one.cause) << " from " << from << ": soon " << soon << ", among two " << among_two << ", right " << right << " of " << tenth);
      CHECK(soon >= static_cast<int>((one.least - 0.03) * kWeeks));  // and room for chance
      CHECK(among_two >= 0.7 * kWeeks);
      CHECK(right >= 0.8 * tenth);
    }
}

TEST_CASE("one bad racket accuses nobody but itself") {
  RoomWatch watch({});
  for (int i = 0; i < 5; ++i) CHECK(watch.add("Ida", "T1", i % 2 == 0 ? 0.4 : -0.4).empty());
  const auto alarms = watch.add("Ida", "T1", -12);
  REQUIRE(alarms.size() == 1);
  CHECK(alarms[0].watched == Watched::racket);
  CHECK(alarms[0].percent == -12);
  CHECK(alarms[0].band.high < -8);
}

TEST_CASE("an alarm says how far and since when, and its chart begins anew") {
  RoomWatch watch({});
  for (int i = 0; i < 12; ++i) CHECK(watch.add("Ida", "T1", i % 2 == 0 ? 1 : -1).empty());
  std::vector<WatchAlarm> alarms;
  int shifted = 0;
  while (alarms.empty()) {
    ++shifted;
    REQUIRE(shifted < 10);
    alarms = watch.add("Bo", "T1", -3.5);
  }
  REQUIRE(alarms.size() >= 1);
  const auto of_machine = std::find_if(alarms.begin(), alarms.end(), [](const WatchAlarm& one) { return one.watched == Watched::machine; });
  const auto of_bo = std::find_if(alarms.begin(), alarms.end(), [](const WatchAlarm& one) { return one.watched == Watched::stringer; });
  REQUIRE(of_bo != alarms.end());
  CHECK(of_bo->name == "Bo");
  CHECK(of_bo->percent == Approx(-3.5));
  CHECK(of_bo->rackets == static_cast<std::size_t>(shifted));
  CHECK(watch.average(Watched::stringer, "Bo")->points == 0);
  if (of_machine != alarms.end()) CHECK(of_machine->name == "T1");
  CHECK_FALSE(watch.average(Watched::machine, "T9"));
  watch.restart(Watched::machine, "T1");
  CHECK_FALSE(watch.average(Watched::machine, "T1"));
}
