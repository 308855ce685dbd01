#include "core/quality/line_fit.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/plan/chance.h"
#include "core/quality/distributions.h"
#include "tests/core/quality/certified.h"
#include "tests/support/published.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

namespace json = boost::json;

std::vector<WrittenNumber> column(const json::value& values) {
  std::vector<WrittenNumber> out;
  for (const json::value& one : values.as_array()) out.push_back(WrittenNumber::parse(json::serialize(one)).value());
  return out;
}

void check(const LineFit& fit, const json::object& certified, double least) {
  const json::array& coefficients = certified.at("coef").as_array();
  const json::array& errors = certified.at("se").as_array();
  for (std::size_t k = 0; k < coefficients.size(); ++k) {
    CHECK(digits(fit.coefficients()[k], number(coefficients[k])) >= least);
    CHECK(digits(fit.errors()[k], number(errors[k])) >= least);
  }
  CHECK(digits(fit.residual_deviation(), number(certified.at("residual_sd"))) >= least);
  CHECK(digits(*fit.r_squared(), number(certified.at("r_squared"))) >= std::min(least, 12.0));  // printed to fewer places
}

}  // namespace

TEST_CASE("lines have all digits of the reference data sets", "[published]") {
  // NIST StRD, linear regression, Norris: all of the 15 digits that are certified, as far as these are rounded.
  const json::value all = published_json("calibration_regression.json");
  const json::object& norris = all.at("Norris").as_object();
  const std::vector<int> straight{0, 1};
  const auto fit = LineFit::of(column(norris.at("x")), column(norris.at("y")), straight).value();
  check(fit, norris.at("certified").as_object(), 14.3);  // the slope is printed to fifteen digits, cut off
  check(fit, norris.at("recomputed_exact").as_object(), 14.4);
  CHECK(fit.freedom() == 34);

  // e-Handbook: load cell and line width, recomputed exactly to fifteen digits.
  const json::object& cell = all.at("LoadCell_mpc365").as_object();
  for (const auto& one : cell.at("recomputed_exact").as_object()) {
    INFO(std::string(one.key()));
    std::vector<int> powers;
    for (const json::value& power : one.value().at("powers").as_array()) powers.push_back(power.to_number<int>());
    check(LineFit::of(column(cell.at("x")), column(cell.at("y")), powers).value(), one.value().as_object(), 14);
  }
  for (const char* name : {"Linewidth_mpc3673", "own_machine_B"}) {
    INFO(name);
    const json::object& set = all.at(name).as_object();
    check(LineFit::of(column(set.at("x")), column(set.at("y")), straight).value(), set.at("recomputed_exact").as_object(), 14);
  }
}

TEST_CASE("high powers of made-up lines come back exactly", "[published]") {
  // NIST StRD, Wampler1 and Wampler2 (definitions from memory): x = 0 ... 20, y = sum of x^i, and of (x / 10)^i, i = 0 ... 5. All digits.
  std::vector<WrittenNumber> x, y1, y2;
  for (std::int64_t i = 0; i <= 20; ++i) {
    std::int64_t one = 0, two = 0, power = 1, ten = 100'000;
    for (int k = 0; k <= 5; ++k, power *= i, ten /= 10) one += power, two += power * ten;
    x.push_back({i, 0});
    y1.push_back({one, 0});
    y2.push_back({two, -5});
  }
  const std::vector<int> powers{0, 1, 2, 3, 4, 5};
  const auto first = LineFit::of(x, y1, powers).value(), second = LineFit::of(x, y2, powers).value();
  for (std::size_t k = 0; k < 6; ++k) {
    CHECK(first.coefficients()[k] == 1);
    CHECK(digits(second.coefficients()[k], std::pow(10, -static_cast<double>(k))) == 15);
  }
  CHECK(first.residual_deviation() == 0);
  CHECK(*first.r_squared() == 1);
  // NoInt1 and NoInt2: through the origin (from memory).
  std::vector<double> a, b;
  for (int i = 0; i <= 10; ++i) a.push_back(60 + i), b.push_back(130 + i);
  const std::vector<int> origin{1};
  const auto through = LineFit::of(a, b, origin).value();
  CHECK(digits(through.coefficients()[0], 2.07438016528926) >= 14);
  CHECK(digits(through.errors()[0], 0.0165289256198347) >= 14);
  CHECK(digits(through.residual_deviation(), 3.56753034006338) >= 14);
  const auto small = LineFit::of(std::vector<double>{4, 5, 6}, std::vector<double>{3, 4, 4}, origin).value();
  CHECK(digits(small.coefficients()[0], 0.727272727272727) >= 14);
  CHECK(digits(small.errors()[0], 0.0420827318078432) >= 14);
}

TEST_CASE("intervals follow from the tables and hold what they promise") {
  // Standard tables of t and chi-square.
  CHECK(student_quantile(0.975, 8) == Approx(2.306).margin(5e-4));
  CHECK(student_quantile(0.95, 34) == Approx(1.691).margin(5e-4));
  CHECK(chi_square_quantile(0.95, 10) == Approx(18.307).margin(5e-4));
  CHECK(f_above(4.431, 4, 20) == Approx(0.01).margin(5e-5));

  const json::value all = published_json("calibration_regression.json");
  const json::object& machine = all.at("own_machine_B").as_object();
  const auto fit = LineFit::of(column(machine.at("x")), column(machine.at("y")), std::vector<int>{0, 1}).value();
  const auto inverse = fit.inverse(25, 0.95).value();
  CHECK(inverse.x == Approx(25.784615384615).epsilon(1e-13));
  // Fieller: its ends are where the confidence band of the line meets 25.
  CHECK(fit.confidence(inverse.confidence.low, 0.95).high == Approx(25).epsilon(1e-12));
  CHECK(fit.confidence(inverse.confidence.high, 0.95).low == Approx(25).epsilon(1e-12));
  CHECK_FALSE(fit.inverse(60, 0.95));  // far from what was read

  // A thousand machines: the true line is within the band nineteen times of twenty, and so is the next pull.
  Chance chance(3);
  int line = 0, next = 0, back = 0;
  for (int i = 0; i < 1000; ++i) {
    std::vector<double> x, y;
    for (int k = 0; k < 12; ++k) {
      x.push_back(20 + k);
      y.push_back(0.3 + 0.97 * x.back() + 0.1 * chance.normal());
    }
    const auto one = LineFit::of(x, y, std::vector<int>{0, 1}).value();
    const double truth = 0.3 + 0.97 * 25.5, pull = truth + 0.1 * chance.normal();
    const auto sure = one.confidence(25.5, 0.95), single = one.prediction(25.5, 0.95), set = one.inverse(truth, 0.95)->confidence;
    line += sure.low < truth && truth < sure.high ? 1 : 0;
    next += single.low < pull && pull < single.high ? 1 : 0;
    back += set.low < 25.5 && 25.5 < set.high ? 1 : 0;
  }
  for (const int held : {line, next, back}) {
    CHECK(held > 925);
    CHECK(held < 972);
  }
}

TEST_CASE("a bent line is turned round as well") {
  std::vector<double> x, y;
  for (int i = 0; i <= 20; ++i) x.push_back(i), y.push_back(1 + 0.5 * i + 0.01 * i * i + (i % 2 == 0 ? 1e-4 : -1e-4));
  const auto bent = LineFit::of(x, y, std::vector<int>{0, 1, 2}).value();
  const double wanted = 1 + 0.5 * 7.5 + 0.01 * 7.5 * 7.5;
  const auto inverse = bent.inverse(wanted, 0.95).value();
  CHECK(inverse.x == Approx(7.5).margin(2e-4));
  CHECK(inverse.confidence.low < inverse.x);
  CHECK(bent.slope_at(7.5) == Approx(0.65).margin(1e-3));
  CHECK_FALSE(bent.inverse(1e3, 0.95));
}

TEST_CASE("lines that cannot be are refused") {
  const std::vector<int> straight{0, 1};
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 2}, std::vector<double>{1, 2}, straight));
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 1, 1}, std::vector<double>{1, 2, 3}, straight));
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 2, 3}, std::vector<double>{1, 2}, straight));
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 2, INFINITY}, std::vector<double>{1, 2, 3}, straight));
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 2, 3}, std::vector<double>{1, 2, 3}, std::vector<int>{1, 0}));
  CHECK_FALSE(LineFit::of(std::vector<double>{0, 0, 1}, std::vector<double>{1, 2, 3}, std::vector<int>{1, 2}));
  // A level line can't be turned round.
  CHECK_FALSE(LineFit::of(std::vector<double>{1, 2, 3, 4}, std::vector<double>{1, 1.1, 0.9, 1}, straight)->inverse(1, 0.95));
}
