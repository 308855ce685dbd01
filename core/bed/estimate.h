#pragma once
// A figure with its doubt.

#include <algorithm>
#include <cmath>

namespace weavelog {

/// What is reckoned of a bed: a value, and the band in which the true one lies nine times of ten as far as is known.
struct BedEstimate {
  double value = 0, low = 0, high = 0;
  double relative_sd = 0;  ///< standard deviation of its logarithm

  /// Of a value above 0 whose logarithm is doubted by that much.
  [[nodiscard]] static BedEstimate of(double value, double relative_sd) {
    constexpr double kNineOfTen = 1.6448536269514722;
    const double factor = std::exp(kNineOfTen * relative_sd);
    return {value, value / factor, value * factor, relative_sd};
  }
  [[nodiscard]] BedEstimate times(double factor) const { return {value * factor, low * factor, high * factor, relative_sd}; }
};

}  // namespace weavelog
