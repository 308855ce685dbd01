#include "core/plan/durations.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>

#include "core/base/text.h"
#include "core/plan/chance.h"

namespace weavelog {
namespace {

// First guesses: common practice, no source. A usual racket is 25 minutes at the bench, from mounting to the last knot.
const double kUsual = std::log(25.0);
constexpr double kRoomDoubt = 0.25, kMaterialDoubt = 0.12, kPatternDoubt = 0.08, kPiecesDoubt = 0.06;
constexpr double kBetween = 0.18;  // one stringer of three is 18 per cent faster or slower than the room
constexpr double kNoise = 0.18;    // and so is one racket of three of the same stringer
constexpr double kFarOff = 3.5;       // spreads
constexpr std::size_t kMostStringers = 120, kMostMaterials = 20, kMostPatterns = 40;

double material_guess(const std::string& key) {
  if (key == "natural gut") return 0.15;
  if (key == "hybrid") return 0.08;
  if (key == "polyester") return 0.05;
  return 0;
}

/// Half of the time goes into crossings, of which 16 x 19 has 304.
double pattern_guess(const std::string& key) {
  int mains = 0, crosses = 0;
  const auto x = key.find('x');
  if (x == std::string::npos) return 0;
  std::from_chars(key.data(), key.data() + x, mains);
  std::from_chars(key.data() + x + 1, key.data() + key.size(), crosses);
  if (mains < 10 || mains > 30 || crosses < 10 || crosses > 30) return 0;
  return 0.5 * std::log(mains * crosses / 304.0);
}

constexpr double kPiecesGuess = 0.04;

/// Numbers of names, the most frequent first; what comes beyond `most` has none.
std::map<std::string, std::size_t> numbered(const std::vector<std::string>& names, std::size_t most, std::size_t first) {
  std::map<std::string, std::size_t> count;
  for (const std::string& name : names)
    if (!name.empty()) ++count[name];
  std::vector<std::pair<std::size_t, std::string>> order;
  for (const auto& [name, times] : count) order.emplace_back(times, name);
  std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
  std::map<std::string, std::size_t> out;
  for (std::size_t i = 0; i < std::min(most, order.size()); ++i) out[order[i].second] = first + i;
  return out;
}

/// Symmetric, positive definite: solved and inverted in place by Cholesky's way.
class Equations {
 public:
  explicit Equations(std::size_t size) : size_(size), a_(size * size), b_(size) {}
  void clear() {
    std::fill(a_.begin(), a_.end(), 0.0);
    std::fill(b_.begin(), b_.end(), 0.0);
  }
  double& a(std::size_t i, std::size_t j) { return a_[i * size_ + j]; }
  double& b(std::size_t i) { return b_[i]; }
  /// The solution; afterwards a(i, j) is the inverse.
  std::vector<double> solve() {
    const std::size_t n = size_;
    for (std::size_t j = 0; j < n; ++j)
      for (std::size_t i = j; i < n; ++i) {
        double sum = a(i, j);
        for (std::size_t k = 0; k < j; ++k) sum -= a(i, k) * a(j, k);
        a(i, j) = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / a(j, j);
      }
    // The inverse of the factor, below the diagonal; then its square.
    for (std::size_t j = 0; j < n; ++j) {
      a(j, j) = 1 / a(j, j);
      for (std::size_t i = j + 1; i < n; ++i) {
        double sum = 0;
        for (std::size_t k = j; k < i; ++k) sum -= a(i, k) * a(k, j);
        a(i, j) = sum / a(i, i);
      }
    }
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j <= i; ++j) {
        double sum = 0;
        for (std::size_t k = i; k < n; ++k) sum += a(k, i) * a(k, j);
        a(i, j) = sum;
      }
    std::vector<double> out(n);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j < n; ++j) out[i] += b_[j] * (j <= i ? a(i, j) : a(j, i));
    return out;
  }

 private:
  std::size_t size_;
  std::vector<double> a_, b_;
};

double median_of(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

/// One reading as the equations see it: the numbers of its parts.
struct Row {
  std::size_t reading = 0;
  std::vector<std::size_t> parts;
  std::size_t stringer = 0;  // part, or 0
  double y = 0, weight = 1, off = 0;
};

}  // namespace

std::string pattern_key(std::string_view pattern) {
  std::string out;
  std::vector<std::string> numbers;
  bool in_number = false;
  for (const char c : pattern) {
    const bool digit = c >= '0' && c <= '9';
    if (digit && !in_number) numbers.emplace_back();
    if (digit) numbers.back() += c;
    in_number = digit;
  }
  if (numbers.size() == 2 && numbers[0].size() <= 2 && numbers[1].size() <= 2) return numbers[0] + "x" + numbers[1];
  return search_key(pattern);
}

double WorkTime::sigma() const { return std::sqrt(shared * shared + own * own); }
double WorkTime::median() const { return std::exp(log_median); }
double WorkTime::mean() const { return std::exp(log_median + sigma() * sigma() / 2); }
double WorkTime::spread() const { return mean() * std::sqrt(std::expm1(sigma() * sigma())); }
double WorkTime::quantile(double p) const { return std::exp(log_median + sigma() * normal_quantile(p)); }

namespace {

double guess(const WorkKind& kind) {
  return kUsual + material_guess(search_key(kind.material)) + pattern_guess(pattern_key(kind.pattern)) + (kind.pieces > 1 ? kPiecesGuess : 0);
}

}  // namespace

WorkTimes::WorkTimes(std::span<const WorkReading> readings)
    : parts_(2), covariances_{kRoomDoubt * kRoomDoubt, 0, 0, kPiecesDoubt * kPiecesDoubt}, between_(kBetween), noise_(kNoise) {
  std::vector<Row> rows;
  std::vector<std::string> materials, patterns, names;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const WorkReading& reading = readings[i];
    if (!(reading.minutes >= kShortestWork && reading.minutes <= kLongestWork)) {
      ignored_.push_back(i);
      continue;
    }
    rows.push_back({i, {}, 0, std::log(reading.minutes) - guess(reading.kind)});
    materials.push_back(search_key(reading.kind.material));
    patterns.push_back(pattern_key(reading.kind.pattern));
    names.push_back(reading.stringer);
  }
  if (rows.empty()) return;

  const auto material = numbered(materials, kMostMaterials, 2);
  const auto pattern = numbered(patterns, kMostPatterns, 2 + material.size());
  const std::size_t first_stringer = 2 + material.size() + pattern.size();
  const auto stringer = numbered(names, kMostStringers, first_stringer);
  const std::size_t size = first_stringer + stringer.size();
  std::vector<double> prior(size, kBetween * kBetween);
  prior[0] = kRoomDoubt * kRoomDoubt;
  prior[1] = kPiecesDoubt * kPiecesDoubt;
  std::fill(prior.begin() + 2, prior.begin() + 2 + static_cast<std::ptrdiff_t>(material.size()), kMaterialDoubt * kMaterialDoubt);
  std::fill(prior.begin() + 2 + static_cast<std::ptrdiff_t>(material.size()), prior.begin() + static_cast<std::ptrdiff_t>(first_stringer),
            kPatternDoubt * kPatternDoubt);
  for (std::size_t r = 0; r < rows.size(); ++r) {
    Row& row = rows[r];
    row.parts.push_back(0);
    if (readings[row.reading].kind.pieces > 1) row.parts.push_back(1);
    if (const auto found = material.find(materials[r]); found != material.end()) row.parts.push_back(found->second);
    if (const auto found = pattern.find(patterns[r]); found != pattern.end()) row.parts.push_back(found->second);
    if (const auto found = stringer.find(names[r]); found != stringer.end()) row.parts.push_back(row.stringer = found->second);
  }

  Equations equations(size);
  std::vector<double> parts(size);
  double noise = kNoise * kNoise, between = kBetween * kBetween;
  const auto fit = [&] {
    equations.clear();
    for (std::size_t i = 0; i < size; ++i) equations.a(i, i) = 1 / (i >= first_stringer ? between : prior[i]);
    for (const Row& row : rows)
      for (const std::size_t i : row.parts) {
        equations.b(i) += row.weight * row.y / noise;
        for (const std::size_t j : row.parts)
          if (j <= i) equations.a(i, j) += row.weight / noise;
      }
    parts = equations.solve();
    for (Row& row : rows) {
      row.off = row.y;
      for (const std::size_t i : row.parts) row.off -= parts[i];
    }
    if (size > first_stringer) {  // expectation and maximisation, held back by the first guess as by four stringers
      double sum = 4 * kBetween * kBetween;
      for (std::size_t i = first_stringer; i < size; ++i) sum += parts[i] * parts[i] + equations.a(i, i);
      between = sum / static_cast<double>(4 + size - first_stringer);
    }
  };
  // First with what is far off weighing less (Huber), by the median spread, which half of bad readings do not move.
  const auto count = static_cast<double>(rows.size());
  for (int turn = 0; turn < 15; ++turn) {
    fit();
    std::vector<double> offs;
    for (const Row& row : rows) offs.push_back(std::abs(row.off));
    const double middle = 1.4826 * median_of(std::move(offs));
    noise = (10 * kNoise * kNoise + count * middle * middle) / (10 + count);
    for (Row& row : rows) row.weight = std::min(1.0, 1.345 * std::sqrt(noise) / std::max(std::abs(row.off), 1e-9));
  }
  // Then without it.
  for (int turn = 0; turn < 25; ++turn) {
    const double limit = kFarOff * std::sqrt(noise);
    for (Row& row : rows) row.weight = std::abs(row.off) > limit ? 0 : 1;
    fit();
    double kept = 0, squares = 0, carried = 0;
    for (const Row& row : rows) {
      if (row.weight == 0) continue;
      kept += 1;
      squares += row.off * row.off;
      for (const std::size_t i : row.parts)
        for (const std::size_t j : row.parts) carried += (j <= i ? equations.a(i, j) : equations.a(j, i));
    }
    noise = (10 * kNoise * kNoise + squares + carried) / (10 + kept);
  }

  parts_ = parts;
  covariances_.resize(size * size);
  for (std::size_t i = 0; i < size; ++i)
    for (std::size_t j = 0; j < size; ++j) covariances_[i * size + j] = j <= i ? equations.a(i, j) : equations.a(j, i);
  materials_ = material;
  patterns_ = pattern;
  noise_ = std::sqrt(noise);
  between_ = std::sqrt(between);
  std::vector<double> squares(size), kept(size);
  for (const Row& row : rows) {
    if (row.weight == 0) {
      ignored_.push_back(row.reading);
      continue;
    }
    ++used_;
    squares[row.stringer] += row.off * row.off;
    kept[row.stringer] += 1;
  }
  std::sort(ignored_.begin(), ignored_.end());
  for (const auto& [name, i] : stringer) {
    const double spread = (20 * noise + squares[i]) / (20 + kept[i]);
    stringers_.push_back({name, static_cast<std::size_t>(kept[i]), std::exp(parts[i]), std::sqrt(spread), i});
  }
}

namespace {

const WorkTimes::Stringer* find_stringer(const std::vector<WorkTimes::Stringer>& stringers, std::string_view name) {
  const auto found =
      std::lower_bound(stringers.begin(), stringers.end(), name, [](const auto& one, std::string_view wanted) { return one.name < wanted; });
  return found != stringers.end() && found->name == name ? &*found : nullptr;
}

}  // namespace

std::vector<std::size_t> WorkTimes::parts_of(std::string_view stringer, const WorkKind& kind) const {
  std::vector<std::size_t> out{0};
  if (kind.pieces > 1) out.push_back(1);
  if (const auto found = materials_.find(search_key(kind.material)); found != materials_.end()) out.push_back(found->second);
  if (const auto found = patterns_.find(pattern_key(kind.pattern)); found != patterns_.end()) out.push_back(found->second);
  if (const Stringer* known = find_stringer(stringers_, stringer)) out.push_back(known->part);
  return out;
}

WorkTime WorkTimes::of(std::string_view stringer, const WorkKind& kind) const {
  double shared = 0, own = noise_ * noise_;
  const std::string material = search_key(kind.material), pattern = pattern_key(kind.pattern);
  if (!material.empty() && !materials_.contains(material)) shared += kMaterialDoubt * kMaterialDoubt;
  if (!pattern.empty() && !patterns_.contains(pattern)) shared += kPatternDoubt * kPatternDoubt;
  if (const Stringer* known = find_stringer(stringers_, stringer))
    own = known->spread * known->spread;
  else
    shared += between_ * between_;
  WorkTime out;
  out.log_median = guess(kind);
  const auto parts = parts_of(stringer, kind);
  for (const std::size_t i : parts) {
    out.log_median += parts_[i];
    for (const std::size_t j : parts) shared += covariances_[i * parts_.size() + j];
  }
  out.own = std::sqrt(own);
  out.shared = std::sqrt(std::max(shared, 0.0));
  return out;
}

double WorkTimes::in_common(std::string_view one, std::string_view other, const WorkKind& kind) const {
  double sum = 0;
  for (const std::size_t i : parts_of(one, kind))
    for (const std::size_t j : parts_of(other, kind)) sum += covariances_[i * parts_.size() + j];
  return std::sqrt(std::max(sum, 0.0));
}

double WorkTimes::pace(std::string_view stringer) const {
  const Stringer* known = find_stringer(stringers_, stringer);
  return known != nullptr ? known->pace : 1;
}

}  // namespace weavelog
