#pragma once
// How soon a chart signals: run lengths of run rules and moving averages by Markov chains, for independent normal readings whose centre and
// sigma are known. So the rate of false alarms and the power are stated, not hoped for; what limits out of few readings add to it is
// measured by simulation (tests, weavelog-bench).
//
// Sources: Champ and Woodall, Technometrics 29 (1987), 393-399 (run rules; 91.75 for all four of Western Electric); Brook and Evans,
// Biometrika 59 (1972), 539-549; Lucas and Saccucci, Technometrics 32 (1990), 1-12 (moving averages).

#include <span>
#include <vector>

#include "core/quality/charts.h"

namespace weavelog {

struct RunLength {
  double mean = 0;              ///< points until the first signal
  std::vector<double> by;       ///< chance of a signal by point 1, 2, ...
  [[nodiscard]] double within(std::size_t points) const { return points == 0 ? 0 : by[points - 1]; }
};

/// Of rules by zones (Western Electric 1 to 4; Nelson 1, 2, 5, 6), when the centre has moved by `shift` sigmas before the first point.
/// Throws std::invalid_argument for other rules. `points` is how far `by` goes.
[[nodiscard]] RunLength rules_run_length(RuleSet set, std::span<const int> rules, double shift, std::size_t points);
/// Of a moving average.
[[nodiscard]] RunLength ewma_run_length(const EwmaDesign& design, double shift, std::size_t points);
/// Of a two-sided cumulative sum (reference value and decision interval in sigmas; Page, 1954), both sides begun at 0. Only for comparison.
[[nodiscard]] RunLength cusum_run_length(double reference, double decision, double shift, std::size_t points);

}  // namespace weavelog
