#include "core/quality/charts.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdio>
#include <limits>
#include <set>

#include "core/plan/chance.h"
#include "core/quality/run_length.h"
#include "tests/core/quality/certified.h"
#include "tests/support/published.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

namespace json = boost::json;

std::vector<double> numbers(const json::value& values) {
  std::vector<double> out;
  for (const json::value& one : values.as_array()) out.push_back(one.to_number<double>());
  return out;
}
std::string printed(double value, int decimals) {
  char text[40];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

}  // namespace

TEST_CASE("constants of charts have ten digits", "[published]") {
  for (const auto& row : published_rows("spc_constants.csv")) {
    const auto constants = chart_constants(std::stoi(row.at("n")));
    INFO(row.at("n"));
    const auto check = [&](const char* name, double value) {
      INFO(name);
      CHECK(value == Approx(std::stod(row.at(name))).epsilon(1e-9).margin(1e-9));
      if (row.count(std::string("pub_") + name) == 0 || (std::string(name) == "D4" && row.at("n") == "3")) return;  // printed 2.574, is 2.57459
      const std::string table = row.at(std::string("pub_") + name);
      const auto point = table.find('.');
      CHECK(printed(value, point == std::string::npos ? 0 : static_cast<int>(table.size() - point - 1)) == table);
    };
    check("d2", constants.d2), check("d3", constants.d3), check("c4", constants.c4), check("A2", constants.a2), check("A3", constants.a3);
    check("B3", constants.b3), check("B4", constants.b4), check("D3", constants.range_low), check("D4", constants.range_high);
  }
  CHECK(chart_constants(2).d2 == Approx(IndividualsOptions{}.d2).epsilon(1e-12));
  CHECK_THROWS_AS(chart_constants(1), std::invalid_argument);
}

TEST_CASE("the handbook's chart of individuals comes out to its printed digits", "[published]") {
  // NIST/SEMATECH e-Handbook 6.3.2.2.
  const json::value all = published_json("spc_cases.json");
  const json::object& example = all.at("individuals_NIST_6_3_2_2").as_object();
  const auto data = numbers(example.at("data"));
  IndividualsOptions as_printed;
  as_printed.d2 = 1.128;
  const auto limits = individuals_limits(data, as_printed).value();
  const json::object& published = example.at("published").as_object();
  CHECK(printed(limits.centre, 2) == text_in(published, "mean"));
  CHECK(printed(limits.range_mean, 4) == text_in(published, "mr_mean"));
  CHECK(printed(limits.upper, 4) == text_in(published, "ucl"));
  CHECK(printed(limits.lower, 4) == text_in(published, "lcl"));
  for (const double one : data) CHECK((one > limits.lower && one < limits.upper));  // in control, as it says

  const auto exact = individuals_limits(data).value();
  const json::object& recomputed = example.at("recomputed").at("exact_d2").as_object();
  CHECK(exact.sigma == Approx(number(recomputed.at("sigma"))).epsilon(1e-11));
  CHECK(exact.upper == Approx(number(recomputed.at("ucl"))).epsilon(2e-12));
  CHECK(exact.lower == Approx(number(recomputed.at("lcl"))).epsilon(2e-12));
  CHECK(exact.range_upper == Approx(number(recomputed.at("mr_ucl"))).epsilon(1e-9));
  const auto ranges = moving_ranges(data), expected = numbers(example.at("recomputed").at("moving_ranges"));
  for (std::size_t i = 0; i < ranges.size(); ++i) CHECK(ranges[i] == Approx(expected[i]));
}

TEST_CASE("the handbook's moving average comes out to its printed digits", "[published]") {
  // NIST/SEMATECH e-Handbook 6.3.2.4.
  const json::value all = published_json("spc_cases.json");
  const json::object& example = all.at("ewma_NIST_6_3_2_4").as_object();
  const double target = 50, sigma = 2.0539;
  EwmaDesign design;
  design.weight = 0.3, design.settled = true;
  Ewma average(design);
  const auto data = numbers(example.at("data")), expected = numbers(example.at("published").at("ewma"));
  for (std::size_t i = 0; i < data.size(); ++i) {
    CHECK_FALSE(average.add((data[i] - target) / sigma));
    // The handbook prints 50.16 for 50.15936 and 51.94 and 51.99 for the last; 49.75 for 49.7480.
    CHECK(target + sigma * average.value() == Approx(expected[i]).margin(0.0051));
  }
  CHECK(target + sigma * ewma_limit(design, 1) == Approx(52.5884).margin(5e-5));
  CHECK(target - sigma * ewma_limit(design, 1) == Approx(47.4115).margin(1e-4));
}

TEST_CASE("run rules signal where their words say", "[published]") {
  const json::value all = published_json("spc_rules.json");
  for (const auto& one : all.at("cases").as_object()) {
    const auto z = numbers(one.value().at("z"));
    for (const auto& [name, set] : {std::pair<const char*, RuleSet>{"nelson", RuleSet::nelson}, {"western_electric", RuleSet::western_electric}}) {
      INFO(std::string(one.key()) << ' ' << name);
      std::set<std::pair<int, std::size_t>> expected, found;
      for (const auto& rule : one.value().at(name).as_object())
        for (const json::value& at : rule.value().as_array()) expected.emplace(std::stoi(std::string(rule.key())), at.to_number<std::size_t>());
      for (const RuleSignal& signal : rule_signals(z, set)) found.emplace(signal.rule, signal.at);
      CHECK(found == expected);
    }
  }
}

TEST_CASE("rules give false alarms as often as is published", "[published]") {
  // Champ and Woodall, Technometrics 29 (1987): 91.75 for the four of Western Electric; 370.4 for three sigmas alone.
  const json::value all = published_json("spc_cases.json");
  const json::object& exact = all.at("false_alarm_ARL0_western_electric").at("exact_markov").as_object();
  const auto mean = [](std::vector<int> rules) { return rules_run_length(RuleSet::western_electric, rules, 0, 1).mean; };
  CHECK(printed(mean({1}), 1) == "370.4");
  CHECK(printed(mean({1, 2}), 2) == printed(exact.at("rules_1_2").to_number<double>(), 2));
  CHECK(printed(mean({1, 3}), 2) == printed(exact.at("rules_1_3").to_number<double>(), 2));
  CHECK(printed(mean({1, 4}), 2) == printed(exact.at("rules_1_4").to_number<double>(), 2));
  CHECK(printed(mean({1, 2, 3, 4}), 2) == printed(exact.at("rules_1_2_3_4").to_number<double>(), 2));
  CHECK(printed(rules_run_length(RuleSet::nelson, std::vector<int>{1, 2}, 0, 1).mean, 1) == printed(exact.at("rules_1_and_9_run").to_number<double>(), 1));
  CHECK_THROWS_AS(rules_run_length(RuleSet::nelson, std::vector<int>{3}, 0, 1), std::invalid_argument);

  // And the rules themselves, on 400,000 points, as often as the chain says (four standard errors).
  Chance chance(8);
  const std::vector<int> four{1, 2, 3, 4};
  std::size_t alarms = 0;
  std::vector<double> z;
  constexpr std::size_t kMany = 400'000;
  std::size_t begin = 0;
  for (std::size_t i = 0; i < kMany; ++i) {
    z.push_back(chance.normal());
    const std::size_t from = std::max(begin, z.size() > 15 ? z.size() - 15 : 0);
    const auto signals = rule_signals(std::span<const double>(z).subspan(from), RuleSet::western_electric);
    if (!signals.empty() && signals.back().at == z.size() - 1 - from) ++alarms, begin = z.size();
  }
  const double expected = kMany / rules_run_length(RuleSet::western_electric, four, 0, 1).mean;
  CHECK(std::fabs(static_cast<double>(alarms) - expected) < 4 * std::sqrt(expected));
}

TEST_CASE("moving averages and cumulative sums run as long as is published", "[published]") {
  // Lucas and Saccucci, Technometrics 32 (1990), table 3 (from memory): weight 0.25, width 2.998: 500 without a shift, 11.1 at one sigma, 5.5 at 1.5,
  // 3.6 at two. Hawkins and Olwell, Cumulative Sum Charts (1998), and e-Handbook 6.3.2.3: k = 0.5, h = 5: 465, 10.4 at one, 4.01 at two; h = 4: 168, 8.38.
  EwmaDesign design{0.25, 2.998, 0, true};
  CHECK(ewma_run_length(design, 0, 1).mean == Approx(500).epsilon(0.003));
  CHECK(ewma_run_length(design, 1, 1).mean == Approx(11.1).margin(0.06));
  CHECK(cusum_run_length(0.5, 5, 0, 1).mean == Approx(465).epsilon(0.003));
  CHECK(cusum_run_length(0.5, 5, 1, 1).mean == Approx(10.4).margin(0.05));
  CHECK(cusum_run_length(0.5, 5, 2, 1).mean == Approx(4.01).margin(0.02));
  CHECK(cusum_run_length(0.5, 4, 0, 1).mean == Approx(168).epsilon(0.005));
  // The chain of limits that widen, beside a plain simulation.
  const EwmaDesign widening{0.2, 2.846, 3, false};
  const RunLength run = ewma_run_length(widening, 1.5, 10);
  Chance chance(4);
  int found = 0;
  constexpr int kMany = 40'000;
  for (int i = 0; i < kMany; ++i) {
    Ewma average(widening);
    for (int k = 0; k < 10; ++k)
      if (average.add(1.5 + chance.normal())) {
        ++found;
        break;
      }
  }
  CHECK(static_cast<double>(found) / kMany == Approx(run.within(10)).margin(0.004));
}

TEST_CASE("too few readings have no limits and no capability") {
  const std::vector<double> seven{50, 51, 49, 50, 52, 48, 50};
  const auto limits = individuals_limits(seven);
  REQUIRE_FALSE(limits);
  CHECK(limits.error().message() == "so few readings have no limits: 7; wait for at least 8");
  CHECK_FALSE(individuals_limits(std::vector<double>(12, 50.0)));
  CHECK_FALSE(individuals_limits(std::vector<double>{1, 2, 3, 4, 5, 6, 7, std::numeric_limits<double>::infinity()}));
  std::vector<double> many;
  for (int i = 0; i < 30; ++i) many.push_back(50 + (i % 3) - 1);
  CHECK(capability_of(many, 46, 54));
  CHECK_FALSE(capability_of(many, 54, 46));
  many.resize(19);
  CHECK_FALSE(capability_of(many, 46, 54));
}

TEST_CASE("capability is that of what was planted, and its bands hold it nineteen times of twenty") {
  Chance chance(21);
  int pp = 0, ppk = 0;
  double outside = 0;
  constexpr int kMany = 400;
  for (int i = 0; i < kMany; ++i) {
    std::vector<double> readings;
    for (int k = 0; k < 60; ++k) readings.push_back(0.5 + 1.75 * chance.normal());
    const auto one = capability_of(readings, -4, 4).value();
    pp += one.pp_band.low < 8 / (6 * 1.75) && 8 / (6 * 1.75) < one.pp_band.high ? 1 : 0;
    ppk += one.ppk_band.low < 3.5 / (3 * 1.75) && 3.5 / (3 * 1.75) < one.ppk_band.high ? 1 : 0;
    outside += one.outside / kMany;
    CHECK((one.outside_band.low <= one.outside && one.outside <= one.outside_band.high));
  }
  CHECK(pp > kMany * 0.92);
  CHECK(ppk > kMany * 0.92);
  CHECK(outside == Approx(normal_chance(-2) + normal_chance(-4.5 / 1.75)).margin(0.006));
}
