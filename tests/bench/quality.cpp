// The charts of a room over ten thousand weeks: how often they are wrong, how soon they find what is planted; and what statistics take.

#include <cmath>

#include "core/quality/readings.h"
#include "core/quality/run_length.h"
#include "core/quality/statistics.h"
#include "tests/bench/benches.h"
#include "tests/support/simulated_weeks.h"

namespace weavelog::bench {
namespace {

const std::string kQualityBench = "quality";

std::string digits(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.4g", value);
  return text;
}

void alarms(Report& report, std::size_t weeks) {
  Chance chance(1);
  const test::WeekSetting setting;
  const auto found = test::false_alarms(setting, weeks, chance);
  const double rackets = static_cast<double>(found.rackets);
  const std::string in = std::to_string(weeks) + " weeks, ";
  const double designed = 70 / test::expected_alarms(WatchDesign{}.average, 70);
  report.say(kQualityBench, in + "rackets to a false alarm of a racket by itself", "rackets", rackets / static_cast<double>(found.of_rackets), "370.4 by design");
  report.say(kQualityBench, in + "of a machine's average", "rackets", rackets / static_cast<double>(found.of_machines), digits(designed) + " by design");
  report.say(kQualityBench, in + "of a stringer's average", "rackets", rackets / static_cast<double>(found.of_stringers), digits(designed) + " by design");

  // The same where the scatter is not known but read from the week before.
  std::size_t all = 0, total = 0;
  for (std::size_t week = 0; week < weeks / 10; ++week) {
    std::vector<StrungReading> readings;
    std::vector<Deviation> deviations;
    for (const SuspectRacket& racket : test::simulated_week(setting, {}, chance)) {
      StrungReading one;
      one.stringer = racket.stringer, one.machine = racket.machine;
      readings.push_back(std::move(one));
      deviations.push_back({Against::wanted, racket.percent, 1, 0});
    }
    const auto counted = test::false_alarms(setting, 1, chance, scatter_of(readings, deviations).percent);
    all += counted.of_rackets + counted.of_machines + counted.of_stringers;
    total += 3 * counted.rackets;
  }
  report.say(kQualityBench, std::to_string(weeks / 10) + " weeks, of any chart, scatter out of the week before", "rackets", static_cast<double>(total) / static_cast<double>(all));
}

void planted(Report& report, std::size_t weeks) {
  struct Case {
    const char* name;
    test::Planted::Kind kind;
    double percent, often;
    Cause cause;
  };
  static constexpr Case cases[] = {
      {"a clamp that slips at every third racket, 8 % low", test::Planted::Kind::slipping_clamp, -8, 1.0 / 3, Cause::clamp_slip},
      {"a machine that reads 3 % low", test::Planted::Kind::machine_low, -3, 1, Cause::machine_calibration},
      {"a stringer who pulls 3 % long", test::Planted::Kind::stringer_long, 3, 1, Cause::stringer},
  };
  for (const double scatter : {1.5, 1.75, 2.0})
    for (const Case& one : cases) {
      test::WeekSetting setting;
      setting.scatter = scatter;
      Chance chance(static_cast<std::uint64_t>(scatter * 100));
      double soon = 0, after = 0, found = 0, first = 0, tenth = 0, tenths = 0, clear = 0, clear_right = 0, said = 0, gauged = 0;
      for (std::size_t week = 0; week < weeks; ++week) {
        test::Planted fault;
        fault.kind = one.kind, fault.percent = one.percent, fault.often = one.often, fault.who = week % 4;
        fault.from = week % 2 == 0 ? 0 : 140;  // from the start, or from the middle of the week
        const auto result = test::find_fault(setting, fault, chance);
        if (result.after) found += 1, after += static_cast<double>(*result.after), soon += *result.after <= 10 ? 1 : 0, first += result.first == one.cause ? 1 : 0;
        if (result.after) {
          const bool right = result.first == one.cause, among = right || result.second == one.cause;
          said += result.either ? among : right, gauged += result.gauged == one.cause;
          if (result.stands_out) clear += 1, clear_right += right;
        }
        if (result.at_tenth) tenths += 1, tenth += result.at_tenth == one.cause ? 1 : 0;
      }
      const std::string name = std::string(one.name) + ", scatter " + digits(scatter) + " %: ";
      report.say(kQualityBench, name + "found within ten rackets", "of 100", 100 * soon / static_cast<double>(weeks), "before ten went out");
      report.say(kQualityBench, name + "found after", "rackets", after / found);
      report.say(kQualityBench, name + "cause named first at once", "of 100", 100 * first / found);
      report.say(kQualityBench, name + "cause named first, or machine and stringer named as not told apart yet", "of 100", 100 * said / found);
      report.say(kQualityBench, name + "one cause stands out three to one", "of 100", 100 * clear / found);
      report.say(kQualityBench, name + "of these it is the cause", "of 100", 100 * clear_right / std::max(1.0, clear));
      report.say(kQualityBench, name + "cause named first once a gauge was put on the machine", "of 100", 100 * gauged / found);
      report.say(kQualityBench, name + "cause named first at the tenth", "of 100", 100 * tenth / tenths);
    }
}

}  // namespace

void quality(Report& report, const Setting& setting) {
  alarms(report, 10'000);
  planted(report, setting.full ? 10'000 : 1'000);
  Chance chance(2);
  std::vector<double> numbers;
  for (int i = 0; i < 100'000; ++i) numbers.push_back(1e6 + chance.normal());
  Figure exact{kQualityBench, "mean, deviation and lag-1 of 100,000 numbers", "ms", {}, {}, "", "plain sums, which lose digits"};
  for (int run = 0; run < 5; ++run) {
    Stopwatch watch;
    const auto summary = summary_of(numbers).value();
    exact.runs.values.push_back(watch.milliseconds());
    watch = {};
    double sum = 0, squares = 0;
    for (const double one : numbers) sum += one, squares += one * one;
    exact.reference.values.push_back(watch.milliseconds() + 1e-9 * (sum + squares > summary.mean ? 1 : 0));
  }
  report.say(exact);
  Figure causes{kQualityBench, "causes of a racket after a week of 280", "ms", {}, {}, "", ""};
  const auto week = test::simulated_week({}, {}, chance);
  for (int run = 0; run < 20; ++run) {
    Stopwatch watch;
    (void)causes_of(week, week.size() - 1 - static_cast<std::size_t>(run)).value();
    causes.runs.values.push_back(watch.milliseconds());
  }
  report.say(causes);
}

}  // namespace weavelog::bench
