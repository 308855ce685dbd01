#include "core/quality/calibration.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/quality/distributions.h"

namespace weavelog {
namespace {

constexpr std::size_t kFewestReadings = 5, kFewestSettings = 3;
constexpr double kDay = 86'400'000;
constexpr double kWide = 2;  // standard errors of a session's estimate that count as its doubt
const std::vector<int> kStraight{0, 1}, kBent{0, 1, 2};

std::size_t different(std::span<const double> values) { return std::set<double>(values.begin(), values.end()).size(); }

struct Day {
  std::vector<double> set, pulled;
  UnixMs at = 0;
  [[nodiscard]] bool enough() const { return set.size() >= kFewestReadings && different(set) >= kFewestSettings; }
};

tl::unexpected<Fault> wrong(std::string what, std::string what_to_do) {
  return fail(FaultCode::bad_input, std::move(what), {}, std::move(what_to_do));
}

}  // namespace

std::string_view name_of(Calibration::State state) {
  return state == Calibration::State::good ? "good" : state == Calibration::State::in_doubt ? "in_doubt" : "beyond";
}

Outcome<Calibration> Calibration::of(std::span<const GaugeReading> readings, const CalibrationOptions& options) {
  if (!(options.level > 0.5 && options.level < 0.9999)) return wrong("the level of intervals is between 0.5 and 0.9999", "use 0.95");
  if (!(options.tolerance > 0 && options.tolerance <= 20)) return wrong("the tolerance is above 0 and at most 20 per cent", "use 2");
  if (!(options.longest_days > 0 && options.longest_days <= 3650))
    return wrong("the longest time between checks is above 0 and at most 3650 days", "use 30");
  std::map<std::int64_t, Day> days;  // 0 where no time is known
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const GaugeReading& one = readings[i];
    if (!std::isfinite(one.set) || !std::isfinite(one.pulled) || one.set <= 0 || one.pulled <= 0)
      return fail(FaultCode::bad_input, "a pull is above 0", one.place.empty() ? "reading " + std::to_string(i + 1) : one.place,
                  "mend it, or leave it out");
    Day& day = days[one.at ? static_cast<std::int64_t>(std::floor(static_cast<double>(*one.at) / kDay)) : 0];
    day.set.push_back(one.set);
    day.pulled.push_back(one.pulled);
    if (one.at) day.at = std::max(day.at, *one.at);
  }
  const Day* newest = nullptr;
  for (const auto& day : days)
    if (day.second.enough()) newest = &day.second;
  if (newest == nullptr)
    return wrong("so few readings tell no line: of one day there are fewer than " + std::to_string(kFewestReadings) + ", or at fewer than " +
                     std::to_string(kFewestSettings) + " settings",
                 "pull at three settings or more, each twice");
  auto straight = LineFit::of(newest->set, newest->pulled, kStraight);
  if (!straight) return fail(straight.error());
  const double slope = straight->coefficients()[1];
  if (!(slope > 1 / 1.5 && slope < 1.5))
    return wrong("the pull does not follow what is set: it grows by " + Decimal::rounded(std::clamp(slope, -1e6, 1e6), 3).text() + " for 1",
                 "check the units of set and pulled, and the columns");
  Calibration out(std::move(*straight), options);
  out.reference_ = (out.straight_.range().low + out.straight_.range().high) / 2;
  out.look_for_bend(newest->set, newest->pulled);
  for (const auto& day : days) {
    const bool timed = std::any_of(readings.begin(), readings.end(), [](const GaugeReading& one) { return one.at.has_value(); });
    if (!timed || !day.second.enough()) continue;
    const auto fit = LineFit::of(day.second.set, day.second.pulled, out.is_bent_ && day.second.set.size() > 5 ? kBent : kStraight);
    if (!fit) continue;
    out.sessions_.push_back({day.second.at, day.second.set.size(), 100 * (fit->at(out.reference_) / out.reference_ - 1),
                             100 * fit->error_at(out.reference_) / out.reference_});
  }
  out.look_for_drift();
  return out;
}

void Calibration::look_for_bend(std::span<const double> set, std::span<const double> pulled) {
  // The straight line beside the scatter of repeats.
  std::map<double, std::vector<double>> repeats;
  for (std::size_t i = 0; i < set.size(); ++i) repeats[set[i]].push_back(pulled[i]);
  double within = 0, freedom = 0;
  for (const auto& one : repeats) {
    double mean = 0;
    for (const double value : one.second) mean += value / static_cast<double>(one.second.size());
    for (const double value : one.second) within += (value - mean) * (value - mean);
    freedom += static_cast<double>(one.second.size() - 1);
  }
  const double missed = straight_.freedom() - freedom;
  if (freedom > 0 && missed > 0 && within > 0)
    misfit_chance_ = f_above((straight_.residual_squares() - within) / missed / (within / freedom), missed, freedom);
  if (set.size() < 6 || repeats.size() < 4) return;
  auto bent = LineFit::of(set, pulled, kBent);
  if (!bent) return;
  if (bent->errors()[2] > 0) {
    bend_chance_ = student_two_sided(bent->coefficients()[2] / bent->errors()[2], bent->freedom());
  } else {
    bend_chance_ = bent->coefficients()[2] == 0 ? 1 : 0;
  }
  is_bent_ = *bend_chance_ < options_.bend_chance;
  bent_ = std::move(*bent);
}

void Calibration::look_for_drift() {
  const double t = student_quantile((1 + options_.level) / 2, line().freedom());
  const double now = 100 * (line().at(reference_) / reference_ - 1), error = 100 * line().error_at(reference_) / reference_;
  const double least = std::fabs(now) - t * error, most = std::fabs(now) + t * error;
  state_ = least > options_.tolerance ? State::beyond : most > options_.tolerance ? State::in_doubt : State::good;
  if (sessions_.empty()) return;
  const Session& last = sessions_.back();
  Due due{last.at + static_cast<UnixMs>(options_.longest_days * kDay), false};
  if (sessions_.size() > 1) {
    const Session& before = sessions_[sessions_.size() - 2];
    Drift drift;
    drift.percent = last.percent - before.percent;
    const double freedom = static_cast<double>(last.readings + before.readings) - 4;
    const double half = student_quantile((1 + options_.level) / 2, std::max(1.0, freedom)) * std::hypot(last.error, before.error);
    drift.band = {drift.percent - half, drift.percent + half};
    drift.clear = drift.band.low > 0 || drift.band.high < 0;
    // Over all sessions: least squares weighted by their certainty.
    double weights = 0, days = 0, squares = 0, products = 0;
    const auto weight = [](const Session& one) { return 1 / std::max(1e-12, one.error * one.error); };
    const auto day = [&](const Session& one) { return static_cast<double>(one.at - last.at) / kDay; };
    for (const Session& one : sessions_) weights += weight(one), days += weight(one) * day(one);
    const double middle = days / weights;
    for (const Session& one : sessions_) {
      squares += weight(one) * (day(one) - middle) * (day(one) - middle);
      products += weight(one) * (day(one) - middle) * one.percent;
    }
    drift.per_day = products / squares;
    if (sessions_.size() > 2) drift.per_day_error = std::sqrt(1 / squares);
    // Two sessions that do not clearly differ are no drift to reckon with; of more, one that is clearly there is.
    const bool there = drift.per_day_error ? std::fabs(*drift.per_day) > kWide * *drift.per_day_error : drift.clear;
    const double rate = there ? std::fabs(*drift.per_day) : 0;
    const double away = (now < 0) == (*drift.per_day < 0) ? std::fabs(now) : -std::fabs(now);
    if (rate > 0) {
      const double days_left = std::max(0.0, (options_.tolerance - kWide * error - away) / rate);
      const UnixMs at = last.at + static_cast<UnixMs>(std::min(days_left, 3650.0) * kDay);
      if (at < due.at) due = {at, true};
    }
    drift_ = drift;
  }
  due_ = due;
}

Outcome<Calibration::Error> Calibration::error_at(double set) const {
  const Interval range = straight_.range();
  const double beyond = 0.1 * (range.high - range.low);
  if (!(set >= range.low - beyond && set <= range.high + beyond))
    return wrong("nothing was read near that setting", "calibrate where the machine is used");
  const Interval band = line().confidence(set, options_.level);
  return Error{100 * (line().at(set) / set - 1), {100 * (band.low / set - 1), 100 * (band.high / set - 1)}};
}

Outcome<Calibration::Setting> Calibration::setting_for(double wanted) const {
  if (!std::isfinite(wanted) || wanted <= 0) return wrong("a pull is above 0", "say what is wanted");
  const auto inverse = line().inverse(wanted, options_.level);
  if (!inverse) return wrong("the readings do not reach what is wanted, or leave the line in doubt", "calibrate where the machine is used");
  Setting out{inverse->x, inverse->confidence, line().prediction(inverse->x, options_.level), false};
  out.needed = wanted < out.band.low || wanted > out.band.high;
  return out;
}

}  // namespace weavelog
