#pragma once
// Plain statistics of columns, each to the digits that a double can show: sums are taken in a hundred digits, so that nothing is lost where
// numbers are large and differences small. Numbers may be given as written (exactly) or as doubles (then what the double holds is exact).
//
// Checked against the Statistical Reference Datasets of NIST (fixtures/published/strd_*.json).

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/quality/written_number.h"

namespace weavelog {

struct Summary {
  std::size_t count = 0;
  double mean = 0;
  std::optional<double> deviation;  ///< standard deviation with count - 1; none of one number
  std::optional<double> lag1;       ///< autocorrelation at distance 1; none where all are equal
};
/// Faults: bad_input (no number; one that is not finite, or beyond 10^100).
[[nodiscard]] Outcome<Summary> summary_of(std::span<const WrittenNumber> numbers);
[[nodiscard]] Outcome<Summary> summary_of(std::span<const double> numbers);

/// A line of a table of variances.
struct VarianceLine {
  double freedom = 0;
  double squares = 0;
  double mean_square = 0;
};

/// One-way table of variances, with the parts of the variance by its mean squares (unequal groups allowed).
struct OneWay {
  std::size_t groups = 0, count = 0;
  VarianceLine between, within;
  std::optional<double> f;         ///< none where nothing varies within
  std::optional<double> chance;    ///< of an F at least as large if groups are alike
  std::optional<double> r_squared; ///< none where nothing varies at all
  double residual_deviation = 0;
  double between_variance = 0;  ///< 0 where the estimate is below 0
  double within_variance = 0;
};
/// Faults: bad_input (fewer than two groups, an empty one, no group with two numbers, a number that is not finite).
[[nodiscard]] Outcome<OneWay> one_way(std::span<const std::vector<WrittenNumber>> groups);
[[nodiscard]] Outcome<OneWay> one_way(std::span<const std::vector<double>> groups);

/// Two levels, the lower inside the upper (rackets of one stringer, frames of one machine): table and parts of the variance by mean squares,
/// with the coefficients of unequal numbers (Searle, Casella, McCulloch, Variance Components, 1992, chapter 3; from memory).
struct Nested {
  std::size_t upper_groups = 0, lower_groups = 0, count = 0;
  VarianceLine upper, lower, within;
  std::optional<double> f_upper, f_lower, chance_lower;  ///< upper against lower, lower against within
  double upper_variance = 0, lower_variance = 0, within_variance = 0;  ///< 0 where an estimate is below 0
  [[nodiscard]] double total() const { return upper_variance + lower_variance + within_variance; }
};
/// groups[upper][lower] are numbers. Faults: bad_input (fewer than two upper groups, none with two lower ones, none of these with two numbers).
[[nodiscard]] Outcome<Nested> nested(std::span<const std::vector<std::vector<double>>> groups);

}  // namespace weavelog
