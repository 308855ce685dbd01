#pragma once
// Decimals exactly as spoken: "24.5" stays 24.5 and "24.50" stays 24.50.

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// mantissa x 10^-scale, scale 0 to 9. Equality is of value and of scale; use same_value() for the value alone.
struct Decimal {
  std::int64_t mantissa = 0;
  std::uint8_t scale = 0;

  bool operator==(const Decimal&) const = default;

  /// Digits with at most one sign and one '.' or ','; at most 9 decimals and 15 digits in all.
  [[nodiscard]] static Outcome<Decimal> parse(std::string_view text);
  /// Nearest decimal with that many decimals, halves away from zero. Throws std::invalid_argument on a non-finite or too large value.
  [[nodiscard]] static Decimal rounded(double value, std::uint8_t scale);
  /// With a decimal point, exactly `scale` decimals.
  [[nodiscard]] std::string text() const;
  [[nodiscard]] double to_double() const;
  /// The same value without trailing zero decimals.
  [[nodiscard]] Decimal trimmed() const;
};

[[nodiscard]] bool same_value(const Decimal& a, const Decimal& b);
/// Orders by value.
[[nodiscard]] std::strong_ordering compare_values(const Decimal& a, const Decimal& b);
/// Exact; the scale is the larger of the two. Throws std::overflow_error if it can't be held.
[[nodiscard]] Decimal operator+(const Decimal& a, const Decimal& b);
[[nodiscard]] Decimal operator-(const Decimal& a, const Decimal& b);

}  // namespace weavelog
