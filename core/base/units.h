#pragma once
// Units and quantities: what was said is what is stored; other units are derived. Factors: NIST SP 811 (2008), App. B.8.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/decimal.h"

namespace weavelog {

/// Stable codes (they are stored): never renumber. A code that this version does not know is kept as it is.
enum class Unit : std::uint8_t {
  none = 0,
  kilogram_force = 1,
  pound_force = 2,
  newton = 3,
  millimetre = 4,
  metre = 5,
  percent = 6,
  minute = 7,
  gram = 8,
  square_centimetre = 9,
  square_inch = 10,
  hertz = 11,
  newton_per_millimetre = 12,
  kilogram_force_per_centimetre = 13,
};

/// A decimal with its unit, both as spoken. Equality is of what was said; see same_force() for the force.
struct Quantity {
  Decimal amount;
  Unit unit = Unit::none;

  bool operator==(const Quantity&) const = default;
};

/// "kg", "lb", "N", "mm", "m", "%", "min", "g", "cm²", "in²", "Hz", "N/mm", "kg/cm", ""; "?" for an unknown code.
[[nodiscard]] std::string_view symbol_of(Unit unit);
/// Reads a symbol or a customary spelling of it (kg, kgf, kp, lb, lbs, lbf, N, mm, ...), case-insensitive.
[[nodiscard]] std::optional<Unit> unit_from(std::string_view text);
/// "24.5 kg". No localisation; core/text does that.
[[nodiscard]] std::string text_of(const Quantity& quantity);
/// Newtons for kilogram-force, pound-force and newton; nothing for other units.
[[nodiscard]] std::optional<double> in_newtons(const Quantity& quantity);
/// The same force in another unit, rounded to `scale` decimals; nothing if either is not a force.
[[nodiscard]] std::optional<Quantity> converted_force(const Quantity& quantity, Unit to, std::uint8_t scale);
/// True if both are the same number of newtons (to one part in 10^9), however said.
[[nodiscard]] bool same_force(const Quantity& a, const Quantity& b);

}  // namespace weavelog
