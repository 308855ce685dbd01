#include "core/quality/statistics.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "core/plan/chance.h"
#include "tests/core/quality/certified.h"
#include "tests/support/published.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

namespace json = boost::json;

WrittenNumber written(const json::value& value) {
  const std::string text = value.is_string() ? std::string(value.get_string()) : json::serialize(value);
  return WrittenNumber::parse(text).value();
}

std::vector<WrittenNumber> univariate(const json::object& set) {
  std::vector<WrittenNumber> out;
  if (const json::value* data = set.if_contains("data")) {
    for (const json::value& one : data->as_array()) out.push_back(written(one));
    return out;
  }
  const json::object& rule = set.at("constructed").as_object();
  const json::array& pair = rule.at("then_alternating").as_array();
  out.push_back(written(rule.at("first")));
  while (out.size() < rule.at("total").to_number<std::size_t>()) out.push_back(written(pair.at((out.size() - 1) % 2)));
  return out;
}

std::vector<std::vector<WrittenNumber>> anova(const json::object& set) {
  std::vector<std::vector<WrittenNumber>> out;
  if (const json::value* groups = set.if_contains("groups")) {
    for (const json::value& group : groups->as_array()) {
      out.emplace_back();
      for (const json::value& one : group.as_array()) out.back().push_back(written(one));
    }
    return out;
  }
  const json::object& rule = set.at("constructed").as_object();
  for (const json::value& three : rule.at("first_second_third").as_array()) {
    out.emplace_back();
    out.back().push_back(written(three.at(0)));
    while (out.back().size() < rule.at("replicates").to_number<std::size_t>()) out.back().push_back(written(three.at(out.back().size() % 2 == 1 ? 1 : 2)));
  }
  return out;
}

std::vector<double> as_doubles(const std::vector<WrittenNumber>& numbers) {
  std::vector<double> out;
  for (const WrittenNumber& one : numbers) out.push_back(one.to_double());
  return out;
}

}  // namespace

TEST_CASE("numbers are kept as they are written") {
  CHECK(WrittenNumber::parse("-12.50")->to_double() == -12.5);
  CHECK(WrittenNumber::parse("1,5")->to_double() == 1.5);
  CHECK(WrittenNumber::parse("1.0000000000004E12")->to_double() == 1000000000000.4);
  CHECK(WrittenNumber::parse("00012000000000000000000000000000")->to_double() == 1.2e28);
  CHECK(WrittenNumber::parse("0")->to_double() == 0);
  CHECK(WrittenNumber::parse("-0.000")->mantissa == 0);
  for (const char* text : {"", ".", "-", "1.2.3", "1e", "12 kg", "nan", "inf", "0x10", "1e999999999999", "1e200", "1e-200", "1234567890123456789012"}) {
    INFO(text);
    CHECK_FALSE(WrittenNumber::parse(text));
  }
}

TEST_CASE("means, deviations and lag-1 correlations have all digits of the reference data sets", "[published]") {
  // NIST StRD, univariate. Digits reached, of the 15 that are certified: 15 everywhere but in the last place of what memory gives to 13 or 14.
  const json::value all = published_json("strd_univariate.json");
  for (const auto& set : all.as_object()) {
    if (!set.value().is_object()) continue;
    INFO(std::string(set.key()));
    const json::object& one = set.value().as_object();
    const auto summary = summary_of(univariate(one)).value();
    for (const char* kind : {"certified", "recomputed_exact"}) {
      INFO(kind);
      if (!one.contains(kind)) continue;
      const json::object& certified = one.at(kind).as_object();
      const double least = 14.5;
      CHECK(digits(summary.mean, number(certified.at("mean"))) >= least);
      CHECK(digits(*summary.deviation, number(certified.at("sd"))) >= least);
      CHECK(digits(*summary.lag1, number(certified.at("lag1_autocorrelation"))) >= least);
    }
  }
  // Held as doubles the data themselves are off by so much, and nothing is lost beyond that.
  const auto hard = as_doubles(univariate(all.at("NumAcc3").as_object()));
  CHECK(digits(*summary_of(hard)->deviation, 0.1000000000349246) >= 14.5);
  // NumAcc4 (from memory): 10000000.2, then .1 and .3 in turn, 1001 in all; mean 10000000.2, deviation 0.1, lag-1 -0.999.
  std::vector<WrittenNumber> harder{{100000002, -1}};
  while (harder.size() < 1001) harder.push_back({harder.size() % 2 == 1 ? 100000001 : 100000003, -1});
  const auto summary = summary_of(harder).value();
  CHECK(summary.mean == 10000000.2);
  CHECK(digits(*summary.deviation, 0.1) == 15);
  CHECK(digits(*summary.lag1, -0.999) == 15);
}

TEST_CASE("one-way tables have all digits of the reference data sets", "[published]") {
  // NIST StRD, analysis of variance: every certified figure to 14.5 digits or more, the hard ones too, because data are read as written.
  const json::value all = published_json("strd_anova.json");
  for (const auto& set : all.as_object()) {
    if (!set.value().is_object() || !set.value().as_object().contains("certified")) continue;
    INFO(std::string(set.key()));
    const json::object& certified = set.value().as_object().at("certified").as_object();
    const auto table = one_way(anova(set.value().as_object())).value();
    const auto check = [&](const char* name, double value) {
      INFO(name);
      CHECK(digits(value, number(certified.at(name))) >= 14.4);
    };
    check("df_between", table.between.freedom), check("df_within", table.within.freedom);
    check("ss_between", table.between.squares), check("ss_within", table.within.squares);
    check("ms_between", table.between.mean_square), check("ms_within", table.within.mean_square);
    check("F", *table.f), check("r_squared", *table.r_squared), check("residual_sd", table.residual_deviation);
  }
  for (const auto& [name, best] : {std::pair<const char*, double>{"SmLs04", 21.0000000007761}, {"SmLs07", 21.0008118878188}}) {
    std::vector<std::vector<double>> groups;
    for (const auto& group : anova(all.at(name).as_object())) groups.push_back(as_doubles(group));
    CHECK(digits(*one_way(groups)->f, best) >= 14);  // all that doubles hold of these data
  }
  const json::object& gears = all.at("eHandbook_3_2_3_1").as_object();
  const auto table = one_way(anova(gears)).value();
  CHECK(table.between.squares == Approx(0.00013744).epsilon(1e-12));
  CHECK(table.within.squares == Approx(0.000132).epsilon(1e-12));
  CHECK(*table.f == Approx(5.20606060606).epsilon(1e-11));
  // Tables of F: 0.05 is exceeded by 2.866 with 4 and 20 degrees of freedom, 0.01 by 4.431 (standard tables).
  CHECK(*table.chance < 0.01);
  CHECK(*table.chance > 0.001);
  // Parts of the variance of equal groups: (mean square between - within) / 5.
  CHECK(table.between_variance == Approx((3.436e-5 - 6.6e-6) / 5).epsilon(1e-10));
}

TEST_CASE("what cannot be computed is said") {
  CHECK_FALSE(summary_of(std::vector<double>{}));
  const auto one = summary_of(std::vector<double>{3}).value();
  CHECK(one.mean == 3);
  CHECK_FALSE(one.deviation);
  CHECK_FALSE(one.lag1);
  const auto equal = summary_of(std::vector<double>{0.1, 0.1, 0.1}).value();
  CHECK(*equal.deviation == 0);
  CHECK_FALSE(equal.lag1);
  const auto broken = summary_of(std::vector<double>{1, std::numeric_limits<double>::quiet_NaN()});
  REQUIRE_FALSE(broken);
  CHECK(broken.error().where == "number 2");
  CHECK_FALSE(summary_of(std::vector<double>{1e200, 1}));
  CHECK_FALSE(one_way(std::vector<std::vector<double>>{{1, 2}}));
  CHECK_FALSE(one_way(std::vector<std::vector<double>>{{1}, {2}}));
  CHECK_FALSE(one_way(std::vector<std::vector<double>>{{1, 2}, {}}));
  const auto still = one_way(std::vector<std::vector<double>>{{1, 1}, {2, 2}}).value();
  CHECK_FALSE(still.f);
  CHECK(*still.r_squared == 1);
  CHECK_FALSE(nested(std::vector<std::vector<std::vector<double>>>{{{1, 2}, {2, 3}}}));
  CHECK_FALSE(nested(std::vector<std::vector<std::vector<double>>>{{{1, 2}}, {{2, 3}}}));
}

TEST_CASE("nested parts of the variance are those of equal numbers by hand, and of unequal ones those that were planted") {
  // Two upper groups of two lower ones of two numbers. By hand: means 2, 4 | 9, 11 (upper 3, 10; all 6.5); within 4 x 2 = 8 with 4 degrees,
  // lower 2 x (1 + 1 + 1 + 1) = 8 with 2, upper 4 x (3.5^2 x 2) = 98 with 1.
  const auto hand = nested(std::vector<std::vector<std::vector<double>>>{{{1, 3}, {3, 5}}, {{8, 10}, {10, 12}}}).value();
  CHECK(hand.within.squares == Approx(8));
  CHECK(hand.lower.squares == Approx(8));
  CHECK(hand.upper.squares == Approx(98));
  CHECK(hand.within_variance == Approx(2));
  CHECK(hand.lower_variance == Approx((4 - 2) / 2.0));
  CHECK(hand.upper_variance == Approx((98 - 4) / 4.0));
  CHECK(*hand.f_upper == Approx(98 / 4.0));
  CHECK(*hand.f_lower == Approx(2));

  Chance chance(11);
  std::vector<std::vector<std::vector<double>>> groups(400);
  for (auto& upper : groups) {
    const double of_upper = 2 * chance.normal();
    upper.resize(1 + chance.below(5));
    for (auto& lower : upper) {
      const double of_lower = 1.2 * chance.normal();
      for (std::size_t i = 0; i < 1 + chance.below(4); ++i) lower.push_back(50 + of_upper + of_lower + 0.8 * chance.normal());
    }
  }
  const auto parts = nested(groups).value();
  CHECK(parts.upper_variance == Approx(4).epsilon(0.2));
  CHECK(parts.lower_variance == Approx(1.44).epsilon(0.15));
  CHECK(parts.within_variance == Approx(0.64).epsilon(0.1));
}
