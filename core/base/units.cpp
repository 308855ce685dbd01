#include "core/base/units.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace weavelog {
namespace {

__extension__ typedef __int128 Wide;

// Exact: 1 lb = 0.45359237 kg and g_n = 9.80665 m/s2, so with this denominator each force unit is a whole
// number.
constexpr std::int64_t kForceDenominator = 2'000'000'000'000;

/// Newtons in one of the unit, times kForceDenominator; 0 if it is not a force.
std::int64_t force_numerator(Unit unit) {
  switch (unit) {
    case Unit::kilogram_force:
      return 19'613'300'000'000;
    case Unit::pound_force:
      return 8'896'443'230'521;
    case Unit::newton:
      return kForceDenominator;
    default:
      return 0;
  }
}

Wide power_of_ten(std::uint8_t exponent) {
  Wide out = 1;
  for (std::uint8_t i = 0; i < exponent; ++i) out *= 10;
  return out;
}

std::string lowered(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

constexpr std::pair<std::string_view, Unit> kSpellings[] = {
    {"", Unit::none},
    {"kg", Unit::kilogram_force},
    {"kgs", Unit::kilogram_force},
    {"kgf", Unit::kilogram_force},
    {"kp", Unit::kilogram_force},
    {"kilo", Unit::kilogram_force},
    {"kilos", Unit::kilogram_force},
    {"kilogram", Unit::kilogram_force},
    {"kilograms", Unit::kilogram_force},
    {"lb", Unit::pound_force},
    {"lbs", Unit::pound_force},
    {"lbf", Unit::pound_force},
    {"pound", Unit::pound_force},
    {"pounds", Unit::pound_force},
    {"n", Unit::newton},
    {"newton", Unit::newton},
    {"newtons", Unit::newton},
    {"mm", Unit::millimetre},
    {"m", Unit::metre},
    {"metre", Unit::metre},
    {"metres", Unit::metre},
    {"%", Unit::percent},
    {"percent", Unit::percent},
    {"per cent", Unit::percent},
    {"min", Unit::minute},
    {"mins", Unit::minute},
    {"minute", Unit::minute},
    {"minutes", Unit::minute},
    {"g", Unit::gram},
    {"gram", Unit::gram},
    {"grams", Unit::gram},
    {"cm²", Unit::square_centimetre},
    {"cm2", Unit::square_centimetre},
    {"sq cm", Unit::square_centimetre},
    {"in²", Unit::square_inch},
    {"in2", Unit::square_inch},
    {"sq in", Unit::square_inch},
    {"hz", Unit::hertz},
    {"hertz", Unit::hertz},
    {"n/mm", Unit::newton_per_millimetre},
    {"kg/cm", Unit::kilogram_force_per_centimetre},
    {"kgf/cm", Unit::kilogram_force_per_centimetre},
    {"kp/cm", Unit::kilogram_force_per_centimetre},
    {"sqin", Unit::square_inch},
};

}  // namespace

std::string_view symbol_of(Unit unit) {
  switch (unit) {
    case Unit::none:
      return "";
    case Unit::kilogram_force:
      return "kg";
    case Unit::pound_force:
      return "lb";
    case Unit::newton:
      return "N";
    case Unit::millimetre:
      return "mm";
    case Unit::metre:
      return "m";
    case Unit::percent:
      return "%";
    case Unit::minute:
      return "min";
    case Unit::gram:
      return "g";
    case Unit::square_centimetre:
      return "cm²";
    case Unit::square_inch:
      return "in²";
    case Unit::hertz:
      return "Hz";
    case Unit::newton_per_millimetre:
      return "N/mm";
    case Unit::kilogram_force_per_centimetre:
      return "kg/cm";
  }
  return "?";
}

std::optional<Unit> unit_from(std::string_view text) {
  const std::string wanted = lowered(text);
  for (const auto& [spelling, unit] : kSpellings)
    if (spelling == wanted) return unit;
  return std::nullopt;
}

std::string text_of(const Quantity& quantity) {
  std::string out = quantity.amount.text();
  if (quantity.unit != Unit::none) out.append(" ").append(symbol_of(quantity.unit));
  return out;
}

std::optional<double> in_newtons(const Quantity& quantity) {
  const std::int64_t numerator = force_numerator(quantity.unit);
  if (numerator == 0) return std::nullopt;
  // One rounding in each step: mantissa x numerator can pass 2^53, so the product is formed in extended
  // precision.
  const long double product =
      static_cast<long double>(quantity.amount.mantissa) * static_cast<long double>(numerator);
  const auto divisor = static_cast<long double>(kForceDenominator * power_of_ten(quantity.amount.scale));
  return static_cast<double>(product / divisor);
}

std::optional<Quantity> converted_force(const Quantity& quantity, Unit to, std::uint8_t scale) {
  const std::int64_t from_factor = force_numerator(quantity.unit);
  const std::int64_t to_factor = force_numerator(to);
  if (from_factor == 0 || to_factor == 0 || scale > 9 || quantity.amount.scale > 9) return std::nullopt;
  // Within these bounds the numerator stays below 2^125.
  constexpr std::int64_t kBound = 1'000'000'000'000'000;
  if (quantity.amount.mantissa >= kBound || quantity.amount.mantissa <= -kBound) return std::nullopt;

  const bool negative = quantity.amount.mantissa < 0;
  const Wide magnitude = negative ? -Wide{quantity.amount.mantissa} : Wide{quantity.amount.mantissa};
  const Wide numerator = magnitude * from_factor * power_of_ten(scale);
  const Wide denominator = Wide{to_factor} * power_of_ten(quantity.amount.scale);
  Wide rounded = numerator / denominator;
  if ((numerator % denominator) * 2 >= denominator) ++rounded;
  if (rounded >= kBound) return std::nullopt;
  const auto mantissa = static_cast<std::int64_t>(rounded);
  return Quantity{Decimal{negative ? -mantissa : mantissa, scale}, to};
}

bool same_force(const Quantity& a, const Quantity& b) {
  const auto left = in_newtons(a);
  const auto right = in_newtons(b);
  if (!left || !right) return false;
  return std::fabs(*left - *right) <= 1e-9 * std::max(std::fabs(*left), std::fabs(*right));
}

}  // namespace weavelog
