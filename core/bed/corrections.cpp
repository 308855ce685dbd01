#include "core/bed/corrections.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cmath>

namespace weavelog {
namespace {

constexpr std::size_t kMostReadings = 5'000, kMostNames = 600;
constexpr double kPriorReadings = 4;  // as which BedSpread counts

/// The levels that a reading stands on, with their kinds, numbered as BedLevel::Of. What is not named stands on no level of that kind.
std::vector<std::pair<std::string, int>> levels_of(const std::string& frame, const std::string& model, const std::string& string,
                                                   const std::string& material) {
  std::vector<std::pair<std::string, int>> out{{"all", 0}};
  if (!model.empty()) out.emplace_back("model " + model, 1);
  if (!frame.empty()) out.emplace_back("frame " + std::to_string(model.size()) + " " + model + " / " + frame, 2);
  if (!string.empty()) out.emplace_back("string " + string, 3);
  if (!material.empty()) out.emplace_back("material " + material, 4);
  return out;
}

double spread_of(const BedSpread& spread, int kind) {
  return kind == 0 ? spread.all : kind == 1 ? spread.model : kind == 2 ? spread.frame : kind == 3 ? spread.string : spread.material;
}

}  // namespace

std::string_view name_of(BedLevel::Of level) {
  static constexpr std::array<std::string_view, 5> names{"all", "model", "frame", "string", "material"};
  return names[static_cast<std::size_t>(level)];
}

void ReadingAges::add(double left) {
  const double lost = 100 * (1 - left);
  mean_percent += (lost - mean_percent) / static_cast<double>(++known);
  most_percent = std::max(most_percent, lost);
}

BedCorrections::BedCorrections() = default;

Outcome<BedCorrections> BedCorrections::fitted(std::span<const BedReading> readings, const BedSpread& spread) {
  return solved(readings, spread, false);
}
Outcome<BedCorrections> BedCorrections::predicted(std::span<const BedReading> readings, const BedSpread& spread) {
  return solved(readings, spread, true);
}

// Given the spreads all is normal: one solve. Given the levels each spread is the mean of its levels' squares; both in turns (EM), with the prior
// spreads as some readings more.
Outcome<BedCorrections> BedCorrections::solved(std::span<const BedReading> readings, const BedSpread& spread, bool known) {
  if (readings.size() > kMostReadings) return fail(FaultCode::bad_input, "more than 5,000 readings", "readings", "give the latest ones");
  for (const double one : {spread.all, spread.model, spread.frame, spread.string, spread.material})
    if (!(one > 0 && one < 2)) return fail(FaultCode::bad_input, "a spread is above 0 and below 2", "spread", "give 0.06 for 6 percent");
  BedCorrections out;
  out.spread_ = out.prior_ = spread;
  std::vector<int> kinds;
  std::vector<std::vector<std::size_t>> rows;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const BedReading& one = readings[i];
    const std::string where = "reading " + std::to_string(i + 1);
    if (!(std::abs(one.log_ratio) <= std::log(2.0)))
      return fail(FaultCode::bad_input, "this is more than twice, or less than half, of what is reckoned for the racket", where,
                  "check unit, string and tension");
    if (!(one.relative_sd > 0 && one.relative_sd < 1))
      return fail(FaultCode::bad_input, "a reading is doubted by more than 0 and less than all", where, "give 0.03 for 3 percent");
    rows.emplace_back();
    for (const auto& level : levels_of(one.frame, one.model, one.string, one.material)) {
      const auto [place, is_new] = out.levels_.try_emplace(level.first, kinds.size());
      if (is_new) {
        kinds.push_back(level.second);
        out.seen_.push_back(0);
      }
      ++out.seen_[place->second];
      rows.back().push_back(place->second);
    }
  }
  if (kinds.size() > kMostNames)
    return fail(FaultCode::bad_input, "more than 600 different frames, models and strings", "readings", "give the latest ones");
  const auto n = static_cast<Eigen::Index>(kinds.size());
  Eigen::MatrixXd covariance;
  Eigen::VectorXd mean;
  for (int turn = 0; turn < (readings.empty() ? 0 : known ? 1 : 60); ++turn) {
    Eigen::MatrixXd normal = Eigen::MatrixXd::Zero(n, n);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(n);
    for (Eigen::Index k = 0; k < n; ++k) normal(k, k) = 1 / std::pow(spread_of(out.spread_, kinds[static_cast<std::size_t>(k)]), 2);
    for (std::size_t i = 0; i < readings.size(); ++i) {
      const double w = 1 / std::pow(readings[i].relative_sd * out.noise_, 2);
      for (const std::size_t a : rows[i]) {
        right[static_cast<Eigen::Index>(a)] += w * readings[i].log_ratio;
        for (const std::size_t b : rows[i]) normal(static_cast<Eigen::Index>(a), static_cast<Eigen::Index>(b)) += w;
      }
    }
    const Eigen::LDLT<Eigen::MatrixXd> factor(normal);
    mean = factor.solve(right);
    covariance = factor.solve(Eigen::MatrixXd::Identity(n, n));
    if (known) break;
    std::array<double, 5> squares{}, counts{};
    for (Eigen::Index k = 0; k < n; ++k) {
      const auto kind = static_cast<std::size_t>(kinds[static_cast<std::size_t>(k)]);
      squares[kind] += mean[k] * mean[k] + covariance(k, k);
      ++counts[kind];
    }
    const auto drawn = [&](std::size_t kind, double prior) {
      return std::sqrt((squares[kind] + kPriorReadings * prior * prior) / (counts[kind] + kPriorReadings));
    };
    double noise = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
      double left = readings[i].log_ratio, doubt = 0;
      for (const std::size_t a : rows[i]) {
        left -= mean[static_cast<Eigen::Index>(a)];
        for (const std::size_t b : rows[i]) doubt += covariance(static_cast<Eigen::Index>(a), static_cast<Eigen::Index>(b));
      }
      noise += (left * left + doubt) / std::pow(readings[i].relative_sd, 2);
    }
    const BedSpread before = out.spread_;
    const double noise_before = out.noise_;
    out.spread_ = {spread.all, drawn(1, spread.model), drawn(2, spread.frame), drawn(3, spread.string), drawn(4, spread.material)};
    out.noise_ = std::sqrt((noise + kPriorReadings) / (static_cast<double>(readings.size()) + kPriorReadings));
    if (std::abs(before.model - out.spread_.model) + std::abs(before.frame - out.spread_.frame) + std::abs(before.string - out.spread_.string) +
            std::abs(before.material - out.spread_.material) + std::abs(noise_before - out.noise_) <
        1e-6)
      break;
  }
  out.mean_.assign(mean.data(), mean.data() + mean.size());
  out.covariance_.assign(covariance.data(), covariance.data() + covariance.size());
  return out;
}

BedCorrection BedCorrections::told(const BedWhose& one, const BedWhose* other) const {
  // The sum over one's levels less that over the other's, by name, so that what both stand on falls out.
  std::map<std::string, std::pair<int, double>> parts;
  const auto add = [&](const BedWhose& whose, double sign) {
    // Whoever names no frame or no model asks for any one of them; a string that is named has one material.
    static const std::string kAny = "\x01";
    const std::string own = sign > 0 ? kAny : kAny + kAny;
    for (const auto& level :
         levels_of(whose.frame.empty() ? own : whose.frame, whose.model.empty() ? own : whose.model, whose.string.empty() ? own : whose.string,
                   !whose.material.empty() ? whose.material : whose.string.empty() ? own : kAny + whose.string)) {
      auto& part = parts.try_emplace(level.first, level.second, 0.0).first->second;
      part.second += sign;
    }
  };
  add(one, 1);
  if (other != nullptr) add(*other, -1);
  BedCorrection out;
  double variance = 0, before = 0;
  std::vector<std::pair<std::size_t, double>> known;
  for (const auto& part : parts) {
    const double weight = part.second.second;
    if (weight == 0) continue;
    before += std::pow(weight * spread_of(prior_, part.second.first), 2);
    const auto found = levels_.find(part.first);
    if (found == levels_.end())
      variance += std::pow(weight * spread_of(spread_, part.second.first), 2);
    else
      known.emplace_back(found->second, weight);
  }
  for (const auto& a : known) {
    out.log += a.second * mean_[a.first];
    for (const auto& b : known) variance += a.second * b.second * covariance_[a.first * mean_.size() + b.first];
  }
  out.sd = std::sqrt(variance);
  out.from_data = before > 0 ? std::min(1.0, std::max(0.0, 1 - variance / before)) : 0;
  for (const auto& level : levels_of(one.frame, one.model, one.string, one.material)) {
    const auto found = levels_.find(level.first);
    if (found == levels_.end()) continue;
    const std::size_t at = found->second, n = mean_.size();
    (level.second == 0   ? out.of_all
     : level.second == 1 ? out.of_model
     : level.second == 2 ? out.of_frame
     : level.second == 3 ? out.of_string
                         : out.of_material) = seen_[at];
    out.levels.push_back({static_cast<BedLevel::Of>(level.second), seen_[at], mean_[at], std::sqrt(covariance_[at * n + at])});
  }
  return out;
}

BedCorrection BedCorrections::of(const BedWhose& whose) const {
  return told(whose, nullptr);
}
BedCorrection BedCorrections::between(const BedWhose& one, const BedWhose& other) const {
  return told(one, &other);
}

}  // namespace weavelog
