#include "core/bed/relaxation.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <map>

namespace weavelog {
namespace {

constexpr std::size_t kMaterials = kBedMaterials.size();
constexpr std::size_t kShared = kMaterials + 2;
constexpr double kFrom = 60;
constexpr double kByDegree = 0.01, kByDegreeSd = 0.01;
constexpr double kByPercent = -0.03, kByPercentSd = 0.03;
constexpr double kRacketSd = 0.2;
constexpr double kMostLoss = 0.15;  // a decade; more is no string's
constexpr double kLongest = 2 * 366 * 86'400.0;

double prior_mean(std::size_t i) {
  return i < kMaterials ? std::log(prior_of(kBedMaterials[i]).loss_per_decade) : i == kMaterials ? kByDegree : kByPercent;
}
double prior_sd(std::size_t i) {
  return i < kMaterials ? prior_of(kBedMaterials[i]).loss_sd : i == kMaterials ? kByDegreeSd : kByPercentSd;
}

double decades(double seconds) {
  return std::log10(1 + seconds / kFrom);
}

Outcome<> possible(const RelaxationCase& of, double seconds, const std::string& where) {
  if (!(seconds >= 0 && seconds <= kLongest))
    return fail(FaultCode::bad_input, "this time since stringing can't be", where,
                "give 0 to two years; a reading needs the time since the racket left the machine");
  if (!(of.pre_stretch >= 0 && of.pre_stretch <= 30)) return fail(FaultCode::bad_input, "nobody pre-stretches so", where, "give 0 to 30 percent");
  if (!(of.temperature >= -30 && of.temperature <= 80))
    return fail(FaultCode::bad_input, "no racket lies so cold or so hot", where, "give degrees Celsius, -30 to 80");
  return {};
}

/// What is left and its doubt, from a loss a decade whose logarithm is doubted.
TensionLeft told(double log_loss, double sd, double prior_sd_of, double x, double x0) {
  const double loss = std::min(std::exp(log_loss), kMostLoss);
  TensionLeft out;
  out.per_decade = BedEstimate::of(loss, sd);
  const auto part = [&](double a) { return (1 - std::min(a, kMostLoss) * x) / (1 - std::min(a, kMostLoss) * x0); };
  const double value = part(loss);
  // More loss is less left; the band is carried through the law so that it stays below 1.
  out.left = {value, part(out.per_decade.high), part(out.per_decade.low), 0};
  if (out.left.low > out.left.high) std::swap(out.left.low, out.left.high);
  out.left.relative_sd = std::abs(std::log(out.left.high / out.left.low)) / (2 * 1.6448536269514722);
  out.from_data = std::clamp(1 - sd * sd / (prior_sd_of * prior_sd_of), 0.0, 1.0);
  return out;
}

}  // namespace

double LogTimeLaw::left(double seconds) const {
  return std::max(0.0, 1 - per_decade * std::log10(1 + std::max(0.0, seconds) / from));
}

double BentLogTimeLaw::left(double seconds) const {
  if (!(seconds > from)) return 1;
  double out = 1 - first * std::log10(std::min(seconds, bend) / from);
  if (seconds > bend) out -= second * std::log10(seconds / bend);
  return std::max(0.0, out);
}

RelaxationModel::RelaxationModel() : mean_(kShared), covariance_(kShared * kShared) {
  for (std::size_t i = 0; i < kShared; ++i) {
    mean_[i] = prior_mean(i);
    covariance_[i * kShared + i] = prior_sd(i) * prior_sd(i);
  }
}

std::vector<double> RelaxationModel::row(const RelaxationCase& of) const {
  std::vector<double> out(kShared);
  out[static_cast<std::size_t>(of.material)] = 1;
  out[kMaterials] = of.temperature - 20;
  out[kMaterials + 1] = of.pre_stretch;
  return out;
}

// Unknown are the shared parts, and for each racket how its loss deviates and the logarithm of its level. The law is not linear in them: Gauss
// and Newton, ten times at most.
Outcome<RelaxationModel> RelaxationModel::fitted(std::span<const RelaxationReading> readings) {
  if (readings.size() > 20'000) return fail(FaultCode::bad_input, "more than 20,000 readings", "readings", "give the latest ones");
  RelaxationModel out;
  out.readings_ = readings.size();
  std::map<std::string, std::size_t> index;
  std::vector<std::size_t> racket_of;
  std::vector<std::vector<double>> logs;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const RelaxationReading& one = readings[i];
    const std::string where = "reading " + std::to_string(i + 1);
    if (auto fine = possible(one.of, one.seconds, where); !fine) return fail(fine.error());
    if (!(one.value > 0 && one.value < 1e12))
      return fail(FaultCode::bad_input, "a reading is above 0", where, "give a tension, a stiffness, or a tone squared");
    if (!(one.relative_sd > 0 && one.relative_sd < 1))
      return fail(FaultCode::bad_input, "a reading is doubted by more than 0 and less than all", where, "give 0.015 for 1.5 percent");
    const auto [place, is_new] = index.try_emplace(one.racket, out.rackets_.size());
    if (is_new) {
      out.rackets_.push_back({one.racket, one.of, 0, 0});
      logs.emplace_back();
    }
    racket_of.push_back(place->second);
    logs[place->second].push_back(std::log(one.value));
  }
  if (out.rackets_.size() > 300) return fail(FaultCode::bad_input, "more than 300 rackets", "readings", "give the latest ones");
  std::vector<double> middle;
  for (std::vector<double> of : logs) {
    std::nth_element(of.begin(), of.begin() + static_cast<std::ptrdiff_t>(of.size() / 2), of.end());
    middle.push_back(of[of.size() / 2]);
  }
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (std::abs(std::log(readings[i].value) - middle[racket_of[i]]) > 0.45)
      return fail(FaultCode::bad_input, "this reading is more than half as much again, or less than two thirds, of the racket's others",
                  "reading " + std::to_string(i + 1), "check its unit, and whether it is of the same stringing");

  const auto n_rackets = static_cast<Eigen::Index>(out.rackets_.size());
  const auto shared = static_cast<Eigen::Index>(kShared);
  const Eigen::Index n = shared + 2 * n_rackets;
  Eigen::VectorXd now = Eigen::VectorXd::Zero(n), prior = Eigen::VectorXd::Zero(n), weight = Eigen::VectorXd::Zero(n);
  for (Eigen::Index i = 0; i < shared; ++i) {
    prior[i] = prior_mean(static_cast<std::size_t>(i));
    weight[i] = 1 / std::pow(prior_sd(static_cast<std::size_t>(i)), 2);
  }
  for (Eigen::Index r = 0; r < n_rackets; ++r) {
    weight[shared + 2 * r] = 1 / (kRacketSd * kRacketSd);
    prior[shared + 2 * r + 1] = middle[static_cast<std::size_t>(r)] + 0.05;
    weight[shared + 2 * r + 1] = 1;  // of the level hardly anything is known
  }
  now = prior;
  Eigen::MatrixXd normal(n, n);
  for (int round = 0; round < 12; ++round) {
    normal = weight.asDiagonal();
    Eigen::VectorXd right = weight.cwiseProduct(prior - now);
    for (std::size_t i = 0; i < readings.size(); ++i) {
      const RelaxationReading& one = readings[i];
      const Eigen::Index r = shared + 2 * static_cast<Eigen::Index>(racket_of[i]);
      const std::vector<double> x = out.row(one.of);
      double log_loss = now[r];
      for (Eigen::Index k = 0; k < shared; ++k) log_loss += x[static_cast<std::size_t>(k)] * now[k];
      const double loss = std::min(std::exp(log_loss), kMostLoss), part = 1 - loss * decades(one.seconds);
      const double slope = -loss * decades(one.seconds) / part;  // of the logarithm, by the logarithm of the loss
      const double off = std::log(one.value) - now[r + 1] - std::log(part), w = 1 / (one.relative_sd * one.relative_sd);
      std::vector<std::pair<Eigen::Index, double>> parts{{r, slope}, {r + 1, 1.0}};
      for (Eigen::Index k = 0; k < shared; ++k)
        if (x[static_cast<std::size_t>(k)] != 0) parts.emplace_back(k, slope * x[static_cast<std::size_t>(k)]);
      for (const auto& a : parts) {
        right[a.first] += w * a.second * off;
        for (const auto& b : parts) normal(a.first, b.first) += w * a.second * b.second;
      }
    }
    const Eigen::VectorXd step = normal.ldlt().solve(right);
    // The law bends where much is lost: no step moves a logarithm by more than one.
    const double most = step.head(shared).cwiseAbs().maxCoeff();
    now += most > 1 ? step / most : step;
    if (step.cwiseAbs().maxCoeff() < 1e-9) break;
  }
  const Eigen::MatrixXd covariance = normal.ldlt().solve(Eigen::MatrixXd::Identity(n, n));
  for (Eigen::Index i = 0; i < shared; ++i) {
    out.mean_[static_cast<std::size_t>(i)] = now[i];
    for (Eigen::Index k = 0; k < shared; ++k) out.covariance_[static_cast<std::size_t>(i * shared + k)] = covariance(i, k);
  }
  for (Eigen::Index r = 0; r < n_rackets; ++r) {
    Racket& racket = out.rackets_[static_cast<std::size_t>(r)];
    const std::vector<double> x = out.row(racket.of);
    Eigen::VectorXd along = Eigen::VectorXd::Zero(n);
    for (Eigen::Index k = 0; k < shared; ++k) along[k] = x[static_cast<std::size_t>(k)];
    along[shared + 2 * r] = 1;
    racket.log_loss = along.dot(now);
    racket.log_loss_sd = std::sqrt(along.dot(covariance * along));
  }
  return out;
}

Outcome<TensionLeft> RelaxationModel::left_at(const RelaxationCase& of, double seconds) const {
  if (auto fine = possible(of, seconds, "relaxation"); !fine) return fail(fine.error());
  const std::vector<double> x = row(of);
  double log_loss = 0, variance = 0, prior = 0;
  for (std::size_t i = 0; i < kShared; ++i) {
    log_loss += x[i] * mean_[i];
    prior += x[i] * x[i] * prior_sd(i) * prior_sd(i);
    for (std::size_t k = 0; k < kShared; ++k) variance += x[i] * x[k] * covariance_[i * kShared + k];
  }
  TensionLeft out = told(log_loss, std::sqrt(variance + kRacketSd * kRacketSd), std::sqrt(prior + kRacketSd * kRacketSd), decades(seconds), 0);
  out.from_data = std::clamp(1 - variance / prior, 0.0, 1.0);
  return out;
}

Outcome<TensionLeft> RelaxationModel::left_of(const std::string& racket, double since_seconds, double seconds) const {
  const auto found = std::find_if(rackets_.begin(), rackets_.end(), [&](const Racket& one) { return one.name == racket; });
  if (found == rackets_.end()) return fail(FaultCode::not_found, "no reading is of this racket", racket, "name one that has readings");
  for (const double time : {since_seconds, seconds})
    if (auto fine = possible(found->of, time, "relaxation"); !fine) return fail(fine.error());
  const std::vector<double> x = row(found->of);
  double prior = kRacketSd * kRacketSd;
  for (std::size_t i = 0; i < kShared; ++i) prior += x[i] * x[i] * prior_sd(i) * prior_sd(i);
  return told(found->log_loss, found->log_loss_sd, std::sqrt(prior), decades(seconds), decades(since_seconds));
}

}  // namespace weavelog
