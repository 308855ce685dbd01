#include "core/quality/run_length.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <stdexcept>

#include "core/plan/chance.h"

namespace weavelog {
namespace {

constexpr double kSureEnough = 1e-12;     // chance left at which a mean is summed to the end
constexpr std::size_t kLongest = 20'000;  // points after which what is left goes on at the rate of the last step

/// What all zone rules look at: the zones of the last four points (-3 to 3: beyond 2, beyond 1, inside, by sides) and how long the run is.
struct Past {
  std::array<signed char, 4> zones{};  // 0: before the first point
  signed char run = 0;                 // points in a row on one side, with its sign
  auto operator<=>(const Past&) const = default;
};

class ZoneChain {
 public:
  ZoneChain(RuleSet set, std::span<const int> rules, double shift) {
    for (const int rule : rules) {
      const bool electric = set == RuleSet::western_electric;
      if (rule == 1) beyond_ = true;
      else if (rule == (electric ? 2 : 5)) two_ = true;
      else if (rule == (electric ? 3 : 6)) four_ = true;
      else if (rule == (electric ? 4 : 2)) run_ = electric ? 8 : 9;
      else throw std::invalid_argument("run lengths are for rules by zones");
    }
    full_ = set == RuleSet::nelson;
    const auto between = [&](double from, double to) { return normal_chance(to - shift) - normal_chance(from - shift); };
    for (int zone = 1; zone <= 3; ++zone) {
      const double to = zone == 3 && !beyond_ ? 40 : zone;
      chances_[static_cast<std::size_t>(zone)] = between(zone - 1, to);
      chances_[static_cast<std::size_t>(zone + 3)] = between(-to, 1 - zone);
    }
    states_.emplace(Past{}, 0);
    pasts_.push_back({});
    for (std::size_t i = 0; i < pasts_.size(); ++i) expand(i);
  }

  /// One step of the chances to be in each state.
  [[nodiscard]] std::vector<double> step(const std::vector<double>& from) const {
    std::vector<double> out(pasts_.size(), 0);
    for (std::size_t i = 0; i < pasts_.size(); ++i)
      if (from[i] != 0)
        for (const auto& [to, chance] : next_[i]) out[to] += from[i] * chance;
    return out;
  }
  [[nodiscard]] std::size_t size() const { return pasts_.size(); }

 private:
  void expand(std::size_t at) {
    next_.emplace_back();
    for (int zone = -3; zone <= 3; ++zone) {
      if (zone == 0) continue;
      const Past past = pasts_[at];
      if (signals(past, zone)) continue;
      Past after;
      for (std::size_t i = 0; i + 1 < past.zones.size(); ++i) after.zones[i] = past.zones[i + 1];
      after.zones.back() = static_cast<signed char>(zone);
      // Only what rules can still need is kept, so that alike pasts are one state.
      const bool begun = full_ && std::any_of(past.zones.begin(), past.zones.end(), [](signed char one) { return one == 0; });
      if (!begun)
        for (signed char& one : after.zones) one = one == 0 ? one : static_cast<signed char>(four_ ? one : (two_ && std::abs(one) == 3 ? one : (one > 0 ? 1 : -1)));
      const int side = zone > 0 ? 1 : -1;
      after.run = run_ == 0 ? static_cast<signed char>(0) : static_cast<signed char>(past.run * side > 0 ? past.run + side : side);
      const auto [found, added] = states_.emplace(after, pasts_.size());
      if (added) pasts_.push_back(after);
      next_[at].emplace_back(found->second, chances_[static_cast<std::size_t>(zone > 0 ? zone : 3 - zone)]);
    }
  }

  [[nodiscard]] bool signals(const Past& past, int zone) const {
    const int side = zone > 0 ? 1 : -1;
    const auto count = [&](std::size_t before, int least) {  // of the points before this one
      int out = 0;
      for (std::size_t i = past.zones.size() - before; i < past.zones.size(); ++i) out += past.zones[i] * side >= least ? 1 : 0;
      return out;
    };
    const auto there = [&](std::size_t before) { return !full_ || past.zones[past.zones.size() - before] != 0; };
    if (two_ && zone * side == 3 && count(2, 3) >= 1 && there(2)) return true;
    if (four_ && zone * side >= 2 && count(4, 2) >= 3 && there(4)) return true;
    return run_ > 0 && past.run * side + 1 >= run_;
  }

  bool beyond_ = false, two_ = false, four_ = false, full_ = false;
  int run_ = 0;
  std::array<double, 7> chances_{};  // zones 1, 2, 3, then -1, -2, -3; from place 1
  std::map<Past, std::size_t> states_;
  std::vector<Past> pasts_;
  std::vector<std::vector<std::pair<std::size_t, double>>> next_;
};

double total(const std::vector<double>& chances) {
  double out = 0;
  for (const double one : chances) out += one;
  return out;
}

/// Sums a chain to its end: `step` takes the chances that are left, and the number of the point, on.
template <class Step>
RunLength follow(std::vector<double> state, std::size_t points, Step&& step) {
  RunLength out;
  double left = 1;
  for (std::size_t point = 1; point <= std::max(points, kLongest); ++point) {
    out.mean += left;
    state = step(state, point);
    const double before = left;
    left = total(state);
    if (out.by.size() < points) out.by.push_back(1 - left);
    if (out.by.size() < points) continue;
    if (left < kSureEnough) break;
    // Once every step takes the same part of what is left, the rest is a geometric series.
    const double kept = left / before;
    if (point > points + 200 && kept < 1) {
      std::vector<double> again = step(state, point + 1);
      const double next = total(again) / left;
      if (std::fabs(next - kept) < 1e-13 || point == std::max(points, kLongest)) {
        out.mean += left / (1 - kept);
        break;
      }
    }
  }
  return out;
}

/// The cells that an interval is divided into, and the chance to come from one into another.
constexpr std::size_t kCells = 301;

}  // namespace

RunLength rules_run_length(RuleSet set, std::span<const int> rules, double shift, std::size_t points) {
  const ZoneChain chain(set, rules, shift);
  std::vector<double> begin(chain.size(), 0);
  begin[0] = 1;
  return follow(std::move(begin), points, [&](const std::vector<double>& state, std::size_t) { return chain.step(state); });
}

RunLength ewma_run_length(const EwmaDesign& design, double shift, std::size_t points) {
  EwmaDesign settled = design;
  settled.settled = true;
  const double far = ewma_limit(settled, 1), width = 2 * far / kCells;
  const auto centre = [&](std::size_t cell) { return -far + (static_cast<double>(cell) + 0.5) * width; };
  // The chance that a point, clipped, is at most x.
  const auto below = [&](double x) {
    if (design.clip > 0 && x >= design.clip) return 1.0;
    if (design.clip > 0 && x < -design.clip) return 0.0;
    return normal_chance(x - shift);
  };
  std::vector<double> moves(kCells * kCells);
  for (std::size_t from = 0; from < kCells; ++from) {
    const auto at = [&](double edge) { return below((edge - (1 - design.weight) * centre(from)) / design.weight); };
    double last = at(-far);
    for (std::size_t to = 0; to < kCells; ++to) {
      const double next = at(-far + (static_cast<double>(to) + 1) * width);
      moves[from * kCells + to] = next - last;
      last = next;
    }
  }
  std::vector<double> begin(kCells, 0);
  begin[kCells / 2] = 1;
  return follow(std::move(begin), points, [&](const std::vector<double>& state, std::size_t point) {
    std::vector<double> out(kCells, 0);
    for (std::size_t from = 0; from < kCells; ++from) {
      if (state[from] == 0) continue;
      const double* row = &moves[from * kCells];
      for (std::size_t to = 0; to < kCells; ++to) out[to] += state[from] * row[to];
    }
    // While limits are still narrow, what lies beyond them has signalled; a cell across the limit in part.
    const double limit = ewma_limit(design, point);
    if (limit < far - width / 1000)
      for (std::size_t cell = 0; cell < kCells; ++cell)
        out[cell] *= std::clamp((limit - std::fabs(centre(cell))) / width + 0.5, 0.0, 1.0);
    return out;
  });
}

RunLength cusum_run_length(double reference, double decision, double shift, std::size_t points) {
  // Upper and lower sum side by side would be a plane of states; while one rises the other is at 0, so that for a reference value above 0
  // the two-sided mean follows from the one-sided ones, and the chances as if they were independent (exact to what both signal).
  const auto one_side = [&](double moved) {
    const double width = 2 * decision / (2 * static_cast<double>(kCells) - 1);
    std::vector<double> moves(kCells * kCells);
    for (std::size_t from = 0; from < kCells; ++from)
      for (std::size_t to = 0; to < kCells; ++to) {
        const double apart = (static_cast<double>(to) - static_cast<double>(from)) * width + reference - moved;
        moves[from * kCells + to] = to == 0 ? normal_chance(apart + width / 2) : normal_chance(apart + width / 2) - normal_chance(apart - width / 2);
      }
    std::vector<double> begin(kCells, 0);
    begin[0] = 1;
    return follow(std::move(begin), points, [&](const std::vector<double>& state, std::size_t) {
      std::vector<double> out(kCells, 0);
      for (std::size_t from = 0; from < kCells; ++from)
        if (state[from] != 0)
          for (std::size_t to = 0; to < kCells; ++to) out[to] += state[from] * moves[from * kCells + to];
      return out;
    });
  };
  const RunLength up = one_side(shift), down = one_side(-shift);
  RunLength out;
  out.mean = 1 / (1 / up.mean + 1 / down.mean);
  for (std::size_t i = 0; i < points; ++i) out.by.push_back(1 - (1 - up.by[i]) * (1 - down.by[i]));
  return out;
}

}  // namespace weavelog
