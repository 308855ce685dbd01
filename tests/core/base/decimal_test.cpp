#include "core/base/decimal.h"

#include <catch2/catch.hpp>
#include <limits>
#include <stdexcept>

using namespace weavelog;

TEST_CASE("a decimal is kept as spoken, trailing zeros included") {
  for (const char* text : {"24.5", "24.50", "0", "0.0", "-3", "55", "0.125", "123456.789012345", "-0.5"})
    CHECK(Decimal::parse(text).value().text() == text);
  CHECK(Decimal::parse("24,5").value() == Decimal{245, 1});
  CHECK(Decimal::parse("+7").value() == Decimal{7, 0});
  CHECK(Decimal::parse("007").value().text() == "7");
  CHECK(Decimal::parse("-0").value() == Decimal{0, 0});
}

TEST_CASE("what is not a decimal is refused with a clear fault") {
  for (const char* text :
       {"", "-", ".", "5.", ".5", "1.2.3", "1,2.3", "1e3", " 5", "5 ", "--5", "+-5", "0x10", "٥", "nan"}) {
    const auto parsed = Decimal::parse(text);
    REQUIRE_FALSE(parsed);
    CHECK(parsed.error().code == FaultCode::bad_input);
    CHECK_FALSE(parsed.error().what_to_do.empty());
  }
  CHECK_FALSE(Decimal::parse("1234567890123456"));
  CHECK_FALSE(Decimal::parse("0.1234567890"));
  CHECK(Decimal::parse("999999999999999"));
  CHECK_FALSE(Decimal::parse(std::string(1'000'000, '9')));
}

TEST_CASE("equality is of value and scale, same_value of the value alone") {
  CHECK_FALSE(Decimal{245, 1} == Decimal{2450, 2});
  CHECK(same_value({245, 1}, {2450, 2}));
  CHECK(compare_values({245, 1}, {2451, 2}) == std::strong_ordering::less);
  CHECK(compare_values({-1, 0}, {-11, 1}) == std::strong_ordering::greater);
  const auto huge = std::numeric_limits<std::int64_t>::max();
  CHECK(compare_values({huge, 0}, {huge, 9}) == std::strong_ordering::greater);
  CHECK(Decimal{2450, 2}.trimmed() == Decimal{245, 1});
  CHECK(Decimal{2400, 2}.trimmed() == Decimal{24, 0});
  CHECK(Decimal{0, 3}.trimmed() == Decimal{0, 0});
}

TEST_CASE("rounding is to the nearest decimal, true halves away from zero") {
  CHECK(Decimal::rounded(0.125, 2) == Decimal{13, 2});
  CHECK(Decimal::rounded(-0.125, 2) == Decimal{-13, 2});
  // The double nearest to 1.005 lies below it and times 100 rounds to 100.5 exactly: not a half all the same.
  CHECK(Decimal::rounded(1.005, 2) == Decimal{100, 2});
  CHECK(Decimal::rounded(0.49999999999999994, 0) == Decimal{0, 0});
  CHECK(Decimal::rounded(24.94758035, 1) == Decimal{249, 1});
  CHECK_THROWS_AS(Decimal::rounded(std::numeric_limits<double>::quiet_NaN(), 1), std::invalid_argument);
  CHECK_THROWS_AS(Decimal::rounded(std::numeric_limits<double>::infinity(), 1), std::invalid_argument);
  CHECK_THROWS_AS(Decimal::rounded(1e15, 0), std::invalid_argument);
  CHECK_THROWS_AS(Decimal::rounded(1.0, 10), std::invalid_argument);
}

TEST_CASE("sums are exact and keep the finer scale") {
  CHECK(Decimal{245, 1} - Decimal{1, 0} == Decimal{235, 1});
  CHECK(Decimal{1, 1} + Decimal{2, 1} == Decimal{3, 1});
  CHECK(Decimal{245, 1} + Decimal{25, 2} == Decimal{2475, 2});
  const auto huge = std::numeric_limits<std::int64_t>::max();
  CHECK_THROWS_AS((Decimal{huge, 0} + Decimal{1, 0}), std::overflow_error);
  CHECK_THROWS_AS((Decimal{huge, 0} + Decimal{1, 1}), std::overflow_error);
  CHECK(Decimal{std::numeric_limits<std::int64_t>::min(), 0}.text() == "-9223372036854775808");
}

TEST_CASE("a scale that no parser lets in is a broken invariant, not a crash") {
  CHECK_THROWS_AS((Decimal{1, 10}.text()), std::logic_error);
}
