#pragma once
// Control charts of single readings: limits out of moving ranges, published run rules, moving averages that find small shifts soon, and
// what a room can promise (capability). All on plain numbers; readings of a room come in core/quality/readings.h.
//
// Sources: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2; Nelson, Journal of Quality Technology 16 (1984), 237-239; Western
// Electric, Statistical Quality Control Handbook (1956). Where the wording of a rule leaves something open, the convention is said beside it.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/outcome.h"
#include "core/quality/line_fit.h"

namespace weavelog {

/// What relates ranges and deviations of n normal readings to their standard deviation, each computed to ten digits.
struct ChartConstants {
  double d2 = 0, d3 = 0, c4 = 0;
  double a2 = 0, a3 = 0, b3 = 0, b4 = 0;
  double range_low = 0, range_high = 0;  ///< D3 and D4
};
/// n from 2 to 25; throws std::invalid_argument otherwise.
[[nodiscard]] ChartConstants chart_constants(int n);

/// Fewer readings than this have no limits: they would be as much in doubt as what they are to judge. The e-Handbook's own example has ten.
inline constexpr std::size_t kFewestForLimits = 8;
/// From here on limits count as settled (common practice: 20 to 25).
inline constexpr std::size_t kSettledLimits = 20;

struct IndividualsOptions {
  double width = 3;                ///< limits, in standard deviations
  double d2 = 1.1283791670955126;  ///< 2 / sqrt(pi); handbooks print limits made with 1.128
};
/// Limits of an individuals chart and of its moving ranges.
struct IndividualsLimits {
  std::size_t count = 0;
  double centre = 0;      ///< mean of the readings
  double sigma = 0;       ///< mean moving range / d2
  double lower = 0, upper = 0;
  double range_mean = 0;  ///< mean moving range
  double range_upper = 0;
};
/// Faults: bad_input (fewer than kFewestForLimits; a number that is not finite; all alike, so that nothing tells their scatter).
[[nodiscard]] Outcome<IndividualsLimits> individuals_limits(std::span<const double> readings, const IndividualsOptions& options = {});
/// |x[i] - x[i-1]|, one fewer than there are readings.
[[nodiscard]] std::vector<double> moving_ranges(std::span<const double> readings);

enum class RuleSet { nelson, western_electric };
/// A rule that a point completes; rules count from 1 as their sources do.
struct RuleSignal {
  std::size_t at = 0;
  int rule = 0;
  bool operator==(const RuleSignal&) const = default;
};
/// The signals of points in units of sigma about the centre line, in order of points, then rules. "Beyond" is strictly beyond; a point on the
/// centre line is on neither side; equal neighbours end a trend; the point that completes "2 of 3" or "4 of 5" is itself beyond its line.
[[nodiscard]] std::vector<RuleSignal> rule_signals(std::span<const double> z, RuleSet rules);
/// The longest window that a rule of either set looks back over.
inline constexpr std::size_t kLongestRule = 15;

/// An exponentially weighted moving average (Roberts, 1959) of points in units of sigma.
struct EwmaDesign {
  double weight = 0.25;   ///< of the newest point, above 0, at most 1
  double width = 3;       ///< limits, in standard deviations of the average
  double clip = 0;        ///< a point farther out than this counts as being there, so that one racket alone moves nobody's average; 0: none is
  bool settled = false;   ///< limits as after many points, from the first on; otherwise they widen to these with the points
};
/// Limit of the average after so many points (1 or more), in units of sigma.
[[nodiscard]] double ewma_limit(const EwmaDesign& design, std::size_t points);

/// The running average; begins at the centre.
class Ewma {
 public:
  explicit Ewma(const EwmaDesign& design) : design_(design) {}
  /// Takes a point in; true if the average is beyond its limit then.
  bool add(double z);
  [[nodiscard]] double value() const { return value_; }
  [[nodiscard]] double limit() const { return ewma_limit(design_, points_ == 0 ? 1 : points_); }
  [[nodiscard]] std::size_t points() const { return points_; }
  void restart() { value_ = 0, points_ = 0; }

 private:
  EwmaDesign design_;
  double value_ = 0;
  std::size_t points_ = 0;
};

/// Capability of readings against limits of tolerance; every figure is an estimate with its 95 % interval.
struct Capability {
  std::size_t count = 0;
  double mean = 0;
  double short_term = 0;  ///< sigma out of moving ranges: what neighbours differ by
  double overall = 0;     ///< standard deviation of all
  double lower = 0, upper = 0;  ///< the tolerance
  double cp = 0, cpk = 0;       ///< by the short-term sigma
  double pp = 0, ppk = 0;       ///< by the overall one
  Interval pp_band, ppk_band;   ///< 95 %: chi-square; Bissell (1990), Applied Statistics 39, 331-340 (from memory)
  double outside = 0;           ///< part outside the tolerance that a normal distribution of these has
  Interval outside_band;        ///< 95 %: of the part that the band of ppk leaves
  std::size_t seen_outside = 0; ///< of the readings
};
/// Faults: bad_input (fewer than kSettledLimits readings; no tolerance; those of individuals_limits).
[[nodiscard]] Outcome<Capability> capability_of(std::span<const double> readings, double lower, double upper);

}  // namespace weavelog
