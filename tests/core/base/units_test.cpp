// Factors and cases: fixtures/published/units_*.csv, exact from 1 lb = 0.45359237 kg and g_n = 9.80665 m/s2
// (NIST SP 811 (2008), App. B.8).
#include "core/base/units.h"

#include <catch2/catch.hpp>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
std::optional<Unit> force_unit(const std::string& name) {
  const auto unit = unit_from(name);
  return unit && in_newtons({{1, 0}, *unit}) ? unit : std::nullopt;
}
}  // namespace

TEST_CASE("published force factors hold to the last printed digit", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("units_factors.csv")) {
    const auto from = force_unit(row.at("from"));
    const auto to = force_unit(row.at("to"));
    if (!from || !to) continue;
    ++checked;
    const double factor = std::stod(row.at("decimal_17"));
    if (*to == Unit::newton) CHECK(in_newtons({{1, 0}, *from}).value() == factor);
    const auto converted = converted_force({{1, 0}, *from}, *to, 9).value();
    CHECK(converted.unit == *to);
    CHECK(converted.amount == Decimal::rounded(factor, 9));
  }
  CHECK(checked == 6);
}

TEST_CASE("published force cases convert exactly", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("units_cases.csv")) {
    const auto from = force_unit(row.at("from"));
    const auto to = force_unit(row.at("to"));
    if (!from || !to) continue;
    ++checked;
    const Quantity said{Decimal::parse(row.at("value")).value(), *from};
    const double expected = std::stod(row.at("decimal_17"));
    if (*to == Unit::newton) CHECK(in_newtons(said).value() == Approx(expected).epsilon(1e-15));
    for (const std::uint8_t scale : {std::uint8_t{0}, std::uint8_t{1}, std::uint8_t{6}})
      CHECK(converted_force(said, *to, scale).value().amount == Decimal::rounded(expected, scale));
  }
  CHECK(checked == 10);
}

TEST_CASE("a trip through the other unit and back loses what was said, which is why it is stored") {
  // Of the 80 half-pound values 40.0 to 79.5 lbf, 44 do not survive a trip to the nearest 0.5 kgf and back
  // (own enumeration in exact arithmetic).
  int lost = 0;
  for (std::int64_t half_pounds = 80; half_pounds < 160; ++half_pounds) {
    const Quantity said{{half_pounds * 5, 1}, Unit::pound_force};
    const double half_kilos = converted_force(said, Unit::kilogram_force, 9).value().amount.to_double() * 2;
    const Quantity there{{Decimal::rounded(half_kilos, 0).mantissa * 5, 1}, Unit::kilogram_force};
    const double back = converted_force(there, Unit::pound_force, 9).value().amount.to_double() * 2;
    if (Decimal::rounded(back, 0).mantissa != half_pounds) ++lost;
  }
  CHECK(lost == 44);
}

TEST_CASE("forces are the same however said, and nothing else is a force") {
  CHECK(same_force({{245, 1}, Unit::kilogram_force}, {{24500, 3}, Unit::kilogram_force}));
  CHECK(same_force({{1, 0}, Unit::kilogram_force}, {{980665, 5}, Unit::newton}));
  CHECK_FALSE(same_force({{55, 0}, Unit::pound_force}, {{249, 1}, Unit::kilogram_force}));
  CHECK_FALSE(same_force({{25, 0}, Unit::millimetre}, {{25, 0}, Unit::millimetre}));
  CHECK_FALSE(in_newtons({{25, 0}, Unit::none}));
  CHECK_FALSE(converted_force({{25, 0}, Unit::percent}, Unit::newton, 1));
  CHECK_FALSE(converted_force({{25, 0}, Unit::kilogram_force}, Unit::gram, 1));
  CHECK_FALSE(converted_force({{1'000'000'000'000'000, 0}, Unit::kilogram_force}, Unit::newton, 9));
  CHECK(converted_force({{-5, 1}, Unit::kilogram_force}, Unit::newton, 0).value().amount == Decimal{-5, 0});
}

TEST_CASE("units are read by symbol and customary spelling, and their codes and symbols are stable") {
  for (std::uint8_t code = 0; code <= 10; ++code) {
    const auto unit = static_cast<Unit>(code);
    CHECK(unit_from(symbol_of(unit)) == unit);
  }
  CHECK(unit_from("KG") == Unit::kilogram_force);
  CHECK(unit_from("kp") == Unit::kilogram_force);
  CHECK(unit_from("Lbs") == Unit::pound_force);
  CHECK(unit_from("n") == Unit::newton);
  CHECK_FALSE(unit_from("stone"));
  CHECK(symbol_of(static_cast<Unit>(200)) == "?");
  CHECK(text_of({{2450, 2}, Unit::kilogram_force}) == "24.50 kg");
  CHECK(text_of(Quantity{{10, 0}, Unit::percent}) == "10 %");
  CHECK(text_of(Quantity{{10, 0}, Unit::none}) == "10");
}
