#include "core/quality/charts.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/plan/chance.h"
#include "core/quality/distributions.h"
#include "core/quality/statistics.h"

namespace weavelog {
namespace {

constexpr double kRangeUpper = 3.266531919;  // D4 of two readings

/// +1 or -1 if x is strictly beyond `line` on that side, else 0.
int side(double x, double line) { return x > line ? 1 : x < -line ? -1 : 0; }

/// `need` of the last `window` points are beyond `line` on the side of the last one, which is beyond it too.
bool most_beyond(std::span<const double> z, std::size_t at, std::size_t window, std::size_t need, double line, bool full) {
  if (full && at + 1 < window) return false;
  const int here = side(z[at], line);
  if (here == 0) return false;
  std::size_t count = 0;
  for (std::size_t i = at + 1 >= window ? at + 1 - window : 0; i <= at; ++i)
    if (side(z[i], line) == here) ++count;
  return count >= need;
}

bool all_on_side(std::span<const double> z, std::size_t at, std::size_t window) { return most_beyond(z, at, window, window, 0, true); }

/// The last `window` points go up all the way, or down, or (`alternating`) to and fro.
bool steps(std::span<const double> z, std::size_t at, std::size_t window, bool alternating) {
  if (at + 1 < window) return false;
  int last = 0;
  for (std::size_t i = at + 2 - window; i <= at; ++i) {
    const int step = side(z[i] - z[i - 1], 0);
    if (step == 0 || (last != 0 && (alternating ? step == last : step != last))) return false;
    last = step;
  }
  return true;
}

bool hugging(std::span<const double> z, std::size_t at, std::size_t window) {
  if (at + 1 < window) return false;
  for (std::size_t i = at + 1 - window; i <= at; ++i)
    if (!(std::fabs(z[i]) < 1)) return false;
  return true;
}

bool avoiding(std::span<const double> z, std::size_t at, std::size_t window) {
  if (at + 1 < window) return false;
  bool above = false, below = false;
  for (std::size_t i = at + 1 - window; i <= at; ++i) {
    const int here = side(z[i], 1);
    if (here == 0) return false;
    (here > 0 ? above : below) = true;
  }
  return above && below;
}

Outcome<> all_finite(std::span<const double> readings) {
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (!std::isfinite(readings[i]))
      return fail(FaultCode::bad_input, "the reading is no number", "reading " + std::to_string(i + 1), "leave it out");
  return {};
}

}  // namespace

std::vector<double> moving_ranges(std::span<const double> readings) {
  std::vector<double> out;
  for (std::size_t i = 1; i < readings.size(); ++i) out.push_back(std::fabs(readings[i] - readings[i - 1]));
  return out;
}

Outcome<IndividualsLimits> individuals_limits(std::span<const double> readings, const IndividualsOptions& options) {
  if (const auto finite = all_finite(readings); !finite) return fail(finite.error());
  if (readings.size() < kFewestForLimits)
    return fail(FaultCode::bad_input, "so few readings have no limits: " + std::to_string(readings.size()), {},
                "wait for at least " + std::to_string(kFewestForLimits));
  const auto summary = summary_of(readings), ranges = summary_of(moving_ranges(readings));
  if (!summary) return fail(summary.error());
  if (!ranges) return fail(ranges.error());
  IndividualsLimits out;
  out.count = readings.size();
  out.centre = summary->mean;
  out.range_mean = ranges->mean;
  out.sigma = out.range_mean / options.d2;
  if (!(out.sigma > std::fabs(out.centre) * 1e-12))
    return fail(FaultCode::bad_input, "all readings are alike, so that nothing tells their scatter", {}, "check that the gauge moves");
  out.lower = out.centre - options.width * out.sigma;
  out.upper = out.centre + options.width * out.sigma;
  out.range_upper = kRangeUpper * out.range_mean;
  return out;
}

std::vector<RuleSignal> rule_signals(std::span<const double> z, RuleSet rules) {
  std::vector<RuleSignal> out;
  for (std::size_t at = 0; at < z.size(); ++at) {
    const auto put = [&](int rule, bool holds) {
      if (holds) out.push_back({at, rule});
    };
    put(1, side(z[at], 3) != 0);
    if (rules == RuleSet::western_electric) {
      put(2, most_beyond(z, at, 3, 2, 2, false));
      put(3, most_beyond(z, at, 5, 4, 1, false));
      put(4, all_on_side(z, at, 8));
      continue;
    }
    put(2, all_on_side(z, at, 9));
    put(3, steps(z, at, 6, false));
    put(4, steps(z, at, 14, true));
    put(5, most_beyond(z, at, 3, 2, 2, true));
    put(6, most_beyond(z, at, 5, 4, 1, true));
    put(7, hugging(z, at, 15));
    put(8, avoiding(z, at, 8));
  }
  return out;
}

double ewma_limit(const EwmaDesign& design, std::size_t points) {
  const double settled = design.width * std::sqrt(design.weight / (2 - design.weight));
  if (design.settled) return settled;
  return settled * std::sqrt(1 - std::pow(1 - design.weight, 2 * static_cast<double>(points)));
}

bool Ewma::add(double z) {
  if (design_.clip > 0) z = std::clamp(z, -design_.clip, design_.clip);
  value_ += design_.weight * (z - value_);
  ++points_;
  return std::fabs(value_) > ewma_limit(design_, points_);
}

Outcome<Capability> capability_of(std::span<const double> readings, double lower, double upper) {
  if (!std::isfinite(lower) || !std::isfinite(upper) || !(lower < upper))
    return fail(FaultCode::bad_input, "this is no tolerance", {}, "give a lower and a larger upper limit");
  if (readings.size() < kSettledLimits)
    return fail(FaultCode::bad_input, "so few readings say nothing of a tolerance: " + std::to_string(readings.size()), {},
                "wait for at least " + std::to_string(kSettledLimits));
  const auto limits = individuals_limits(readings);
  if (!limits) return fail(limits.error());
  const auto summary = summary_of(readings);
  if (!summary) return fail(summary.error());
  Capability out;
  out.count = readings.size();
  out.mean = summary->mean;
  out.short_term = limits->sigma;
  out.overall = *summary->deviation;
  out.lower = lower, out.upper = upper;
  const double near = std::min(upper - out.mean, out.mean - lower);
  out.cp = (upper - lower) / (6 * out.short_term), out.cpk = near / (3 * out.short_term);
  out.pp = (upper - lower) / (6 * out.overall), out.ppk = near / (3 * out.overall);
  const double n = static_cast<double>(out.count), freedom = n - 1;
  const auto part = [&](double p) { return std::sqrt(chi_square_quantile(p, freedom) / freedom); };
  out.pp_band = {out.pp * part(0.025), out.pp * part(0.975)};
  const double half = normal_quantile(0.975) * std::sqrt(1 / (9 * n) + out.ppk * out.ppk / (2 * freedom));
  out.ppk_band = {out.ppk - half, out.ppk + half};
  const auto beyond = [&](double near_by, double far_by) { return normal_chance(-3 * near_by) + normal_chance(-3 * far_by); };
  const double far = std::max(upper - out.mean, out.mean - lower) / (3 * out.overall);
  out.outside = beyond(out.ppk, far);
  out.outside_band = {normal_chance(-3 * out.ppk_band.high), std::min(1.0, beyond(out.ppk_band.low, std::max(out.ppk_band.low, far - half)))};
  for (const double one : readings)
    if (one < lower || one > upper) ++out.seen_outside;
  return out;
}

}  // namespace weavelog
