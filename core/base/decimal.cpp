#include "core/base/decimal.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace weavelog {
namespace {

__extension__ typedef __int128 Wide;

constexpr std::size_t kMaxDigits = 15;
constexpr std::size_t kMaxDecimals = 9;
constexpr std::array<std::int64_t, kMaxDecimals + 1> kPowers{
    1, 10, 100, 1'000, 10'000, 100'000, 1'000'000, 10'000'000, 100'000'000, 1'000'000'000};

std::int64_t power_of_ten(std::uint8_t scale) {
  if (scale > kMaxDecimals) throw std::logic_error("a Decimal has at most 9 decimals");
  return kPowers[scale];
}

/// The mantissa at a scale that is at least the decimal's own.
Wide mantissa_at(const Decimal& decimal, std::uint8_t scale) {
  return Wide{decimal.mantissa} * power_of_ten(static_cast<std::uint8_t>(scale - decimal.scale));
}

Decimal held(Wide mantissa, std::uint8_t scale) {
  if (mantissa > std::numeric_limits<std::int64_t>::max() ||
      mantissa < std::numeric_limits<std::int64_t>::min())
    throw std::overflow_error("sum of decimals is too large");
  return {static_cast<std::int64_t>(mantissa), scale};
}

tl::unexpected<Fault> not_a_number(std::string_view text) {
  return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 40)) + "\" is not a decimal number", "",
              "write digits with at most one point or comma, such as 24.5");
}

}  // namespace

Outcome<Decimal> Decimal::parse(std::string_view text) {
  std::string_view rest = text;
  const bool negative = rest.starts_with('-');
  if (negative || rest.starts_with('+')) rest.remove_prefix(1);

  std::int64_t mantissa = 0;
  std::size_t digits = 0;
  std::size_t decimals = 0;
  bool after_point = false;
  for (const char c : rest) {
    if (c == '.' || c == ',') {
      if (after_point || digits == 0) return not_a_number(text);
      after_point = true;
    } else if (c >= '0' && c <= '9') {
      decimals += after_point ? 1 : 0;
      if (++digits > kMaxDigits || decimals > kMaxDecimals) {
        return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 40)) + "\" has too many digits",
                    "", "use at most 15 digits, 9 of them decimals");
      }
      mantissa = mantissa * 10 + (c - '0');
    } else {
      return not_a_number(text);
    }
  }
  if (digits == 0 || (after_point && decimals == 0)) return not_a_number(text);
  return Decimal{negative ? -mantissa : mantissa, static_cast<std::uint8_t>(decimals)};
}

Decimal Decimal::rounded(double value, std::uint8_t scale) {
  if (!std::isfinite(value)) throw std::invalid_argument("Decimal::rounded: the value is not finite");
  if (scale > kMaxDecimals) throw std::invalid_argument("Decimal::rounded: more than 9 decimals");
  const double magnitude = std::fabs(value);
  const auto power = static_cast<double>(kPowers[scale]);
  const double product = magnitude * power;
  if (product >= 1e15) throw std::invalid_argument("Decimal::rounded: the value is too large");
  // The product is rounded; fma gives back what that lost, so that only a true half rounds away from zero.
  const double lost = std::fma(magnitude, power, -product);
  const double whole = std::trunc(product);
  auto mantissa = static_cast<std::int64_t>(whole);
  if ((product - whole) - 0.5 + lost >= 0) ++mantissa;
  return {value < 0 ? -mantissa : mantissa, scale};
}

std::string Decimal::text() const {
  const auto power = static_cast<std::uint64_t>(power_of_ten(scale));
  const std::uint64_t magnitude =
      mantissa < 0 ? 0 - static_cast<std::uint64_t>(mantissa) : static_cast<std::uint64_t>(mantissa);
  std::string out = mantissa < 0 ? "-" : "";
  out += std::to_string(magnitude / power);
  if (scale > 0) {
    const std::string decimals = std::to_string(magnitude % power);
    out += '.' + std::string(scale - decimals.size(), '0') + decimals;
  }
  return out;
}

double Decimal::to_double() const {
  return static_cast<double>(mantissa) / static_cast<double>(power_of_ten(scale));
}

Decimal Decimal::trimmed() const {
  Decimal out = *this;
  while (out.scale > 0 && out.mantissa % 10 == 0) {
    out.mantissa /= 10;
    --out.scale;
  }
  return out;
}

bool same_value(const Decimal& a, const Decimal& b) {
  return compare_values(a, b) == std::strong_ordering::equal;
}

std::strong_ordering compare_values(const Decimal& a, const Decimal& b) {
  const std::uint8_t scale = std::max(a.scale, b.scale);
  const Wide left = mantissa_at(a, scale);
  const Wide right = mantissa_at(b, scale);
  if (left == right) return std::strong_ordering::equal;
  return left < right ? std::strong_ordering::less : std::strong_ordering::greater;
}

Decimal operator+(const Decimal& a, const Decimal& b) {
  const std::uint8_t scale = std::max(a.scale, b.scale);
  return held(mantissa_at(a, scale) + mantissa_at(b, scale), scale);
}

Decimal operator-(const Decimal& a, const Decimal& b) {
  const std::uint8_t scale = std::max(a.scale, b.scale);
  return held(mantissa_at(a, scale) - mantissa_at(b, scale), scale);
}

}  // namespace weavelog
