#pragma once
// What sums are taken in: a hundred digits, in which neither a sum of squares nor the difference of two loses what a double shows.
// Heavy: for a few sources, never for headers.

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <cmath>

#include "core/quality/written_number.h"

namespace weavelog {

using Exact = boost::multiprecision::number<boost::multiprecision::cpp_bin_float<100>, boost::multiprecision::et_off>;

/// Sizes beyond which squares leave what doubles can hold.
inline constexpr double kLargestNumber = 1e100;

inline Exact exact(double value) { return Exact(value); }
inline Exact exact(const WrittenNumber& value) {
  Exact power = 1;
  Exact ten = 10;
  for (int left = value.exponent < 0 ? -value.exponent : value.exponent; left > 0; left /= 2, ten *= ten)
    if (left % 2 == 1) power *= ten;
  return value.exponent < 0 ? Exact(value.mantissa) / power : Exact(value.mantissa) * power;
}
inline double nearest(const Exact& value) { return value.convert_to<double>(); }

inline bool can_be_summed(double value) { return std::isfinite(value) && std::fabs(value) <= kLargestNumber; }
inline bool can_be_summed(const WrittenNumber&) { return true; }

}  // namespace weavelog
