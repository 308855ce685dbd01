#include "core/plan/bench_exact.h"

#include <algorithm>

namespace weavelog {
namespace {

constexpr double kRounding = 1e-9;
constexpr std::size_t kBlock = 16;           // players whose meetings are soon looked through
constexpr std::size_t kStepNodes = 20'000;   // for one more player among those whose meetings have a floor

}  // namespace

BenchExact::BenchExact(const BenchProblem& problem, std::vector<std::size_t> players, bool parted)
    : p_(problem), parted_(parted), players_(std::move(players)) {
  const std::size_t n = players_.size();
  cost_.resize(n * n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      const std::size_t at = players_[i] * p_.players + players_[j];
      cost_[i * n + j] = p_.clash[at] + (p_.hard[at] > 0 ? (parted ? kNever : p_.hard[at]) : 0);
    }
  load_from_.resize((n + 1) * p_.days);
  for (std::size_t i = n; i-- > 0;)
    for (std::size_t day = 0; day < p_.days; ++day)
      load_from_[i * p_.days + day] = load_from_[(i + 1) * p_.days + day] + p_.load[players_[i] * p_.days + day];
}

/// One search, over all costs or, to make the floors, over those of meetings alone.
struct BenchExact::Search {
  const BenchExact& all;
  std::vector<std::size_t> benches;
  bool meetings_only;
  const std::vector<double>& floors;  // of the players from here on
  BenchPatience& patience;
  double best;                        // only what is cheaper is sought
  std::size_t first = 0;              // those before have no place
  std::vector<std::size_t> places{}, best_places{};
  std::vector<double> sums{};   // players x benches: meetings with those who have a place
  std::vector<double> loads{};  // benches x days
  std::vector<std::size_t> like{};  // the first bench that is like this one
  std::vector<std::size_t> used{};
  bool gave_up = false;

  void prepare() {
    const std::size_t n = all.players_.size(), days = all.p_.days, m = benches.size();
    places.assign(n, 0);
    sums.assign(n * m, 0);
    loads.assign(m * days, 0);
    used.assign(m, 0);
    like.resize(m);
    for (std::size_t b = 0; b < m; ++b) {
      like[b] = b;
      for (std::size_t earlier = 0; earlier < b && like[b] == b; ++earlier)
        if (meetings_only || same(benches[earlier], benches[b])) like[b] = earlier;
    }
  }
  [[nodiscard]] bool same(std::size_t one, std::size_t other) const {
    const BenchProblem& p = all.p_;
    for (const std::size_t player : all.players_)
      if (p.own[player * p.benches + one] != p.own[player * p.benches + other]) return false;
    for (std::size_t day = 0; day < p.days; ++day)
      if (p.fair[one * p.days + day] != p.fair[other * p.days + day] || p.most[one * p.days + day] != p.most[other * p.days + day]) return false;
    return true;
  }
  [[nodiscard]] double own(std::size_t i, std::size_t b) const {
    return meetings_only ? 0 : all.p_.own[all.players_[i] * all.p_.benches + benches[b]];
  }
  /// What the loads of those from `i` on add at least, filled in where there is still room; kNever if limits break.
  [[nodiscard]] double over_floor(std::size_t i) const {
    const BenchProblem& p = all.p_;
    double out = 0;
    for (std::size_t day = 0; day < p.days; ++day) {
      double free = 0, room = 0;
      for (std::size_t b = 0; b < benches.size(); ++b) {
        const std::size_t at = benches[b] * p.days + day;
        free += std::max(0.0, p.fair[at] - loads[b * p.days + day]);
        room += std::max(0.0, p.most[at] - loads[b * p.days + day]);
      }
      const double left = all.load_from_[i * p.days + day];
      if (left > room + kRounding) return kNever;
      out += p.over_weight * std::max(0.0, left - free);
    }
    return out;
  }
  /// What adding this player changes about uneven loads; kNever beyond a limit.
  double add_load(std::size_t i, std::size_t b) {
    const BenchProblem& p = all.p_;
    double out = 0;
    for (std::size_t day = 0; day < p.days; ++day) {
      double& load = loads[b * p.days + day];
      const std::size_t at = benches[b] * p.days + day;
      const double before = std::max(0.0, load - p.fair[at]);
      load += p.load[all.players_[i] * p.days + day];
      out += p.over_weight * (std::max(0.0, load - p.fair[at]) - before);
      if (load > p.most[at] + kRounding) out = kNever;
    }
    return out;
  }
  void go(std::size_t i, double cost) {
    const std::size_t n = all.players_.size(), m = benches.size();
    if (i == n) {
      best = cost;
      best_places = places;
      return;
    }
    if (patience.nodes == 0) {
      gave_up = true;
      return;
    }
    patience.nodes -= std::min(patience.nodes, 1 + (n - i) * m / 64);  // a node of many players on many benches is more work
    double floor = cost + floors[i];
    for (std::size_t j = i; j < n; ++j) {
      double least = kNever;
      for (std::size_t b = 0; b < m; ++b) least = std::min(least, sums[j * m + b] + own(j, b));
      floor += least;
    }
    if (!meetings_only && floor < best - kRounding) floor += over_floor(i);
    if (floor >= best - kRounding) return;
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t b = 0; b < m; ++b) {
      // Of benches that are alike and empty, the first stands for all.
      bool stands = true;
      for (std::size_t earlier = 0; earlier < b && used[b] == 0; ++earlier)
        if (used[earlier] == 0 && like[earlier] == like[b]) stands = false;
      if (const double added = sums[i * m + b] + own(i, b); stands && added < kNever) order.emplace_back(added, b);
    }
    std::sort(order.begin(), order.end());
    for (const auto& [added, b] : order) {
      const double over = meetings_only ? 0 : add_load(i, b);
      if (cost + added + over < best - kRounding) {
        places[i] = b;
        ++used[b];
        for (std::size_t j = i + 1; j < n; ++j) sums[j * m + b] += all.cost_[i * n + j];
        go(i + 1, cost + added + over);
        --used[b];
        if (i + 1 < n) take_back(i, b);
      }
      if (!meetings_only)
        for (std::size_t day = 0; day < all.p_.days; ++day) loads[b * all.p_.days + day] -= all.p_.load[all.players_[i] * all.p_.days + day];
      if (gave_up) return;
    }
  }
  /// Anew rather than by subtraction: never cost nothing again, and no rounding stays.
  void take_back(std::size_t i, std::size_t b) {
    const std::size_t n = all.players_.size(), m = benches.size();
    for (std::size_t j = i + 1; j < n; ++j) {
      double sum = 0;
      for (std::size_t k = first; k < i; ++k)
        if (places[k] == b) sum += all.cost_[k * n + j];
      sums[j * m + b] = sum;
    }
  }
};

const std::vector<double>& BenchExact::floors(std::size_t benches, BenchPatience& patience) {
  const std::size_t n = players_.size();
  benches = std::min(benches, std::max<std::size_t>(n, 1));
  const auto [found, made] = floors_.try_emplace(benches);
  std::vector<double>& out = found->second;
  if (!made) return out;
  out.assign(n + 1, 0);
  if (n == 0) return out;
  std::vector<std::size_t> any(benches);
  for (std::size_t b = 0; b < benches; ++b) any[b] = b;
  if (benches == 1) {  // all together
    for (std::size_t i = n; i-- > 0;) {
      out[i] = out[i + 1];
      for (std::size_t j = i + 1; j < n; ++j) out[i] += cost_[i * n + j];
    }
    return out;
  }
  // Many players are also looked at in blocks apart: different meetings, so that their floors add up.
  if (n > kBlock && blocks_.empty())
    for (std::size_t from = 0; from < n; from += kBlock)
      blocks_.emplace_back(p_,
                           std::vector<std::size_t>(players_.begin() + static_cast<std::ptrdiff_t>(from),
                                                    players_.begin() + static_cast<std::ptrdiff_t>(std::min(n, from + kBlock))),
                           parted_);
  // The search from player i on, in which those before have no place, uses the floors of those after.
  bool whole = true;  // so far every search came to its end
  for (std::size_t i = n; i-- > 0;) {
    out[i] = out[i + 1];
    if (!blocks_.empty()) {
      const std::size_t block = i / kBlock, next = std::min(n, (block + 1) * kBlock);
      BenchExact& here = blocks_[block];
      // The floors of a block may be asked for more benches than it has players.
      out[i] = std::max(out[i], here.floors(benches, patience)[i % kBlock] + out[next]);
    }
    double most_added = 0;
    for (std::size_t j = i + 1; j < n; ++j) most_added += cost_[i * n + j];
    if (out[i] == kNever || most_added == 0 || !whole) continue;
    BenchPatience some{std::min(patience.nodes, kStepNodes)};
    const std::size_t given = some.nodes;
    Search search{*this, any, true, out, some, kNever, i};
    search.prepare();
    search.go(i, 0);
    patience.nodes -= given - some.nodes;
    whole = !search.gave_up;
    if (whole) out[i] = std::max(out[i], search.best - kRounding);
  }
  return out;
}

double BenchExact::clash_floor(std::size_t benches, BenchPatience& patience) {
  if (benches == 0) return kNever;
  const auto known = known_.find(benches);
  return std::max(known == known_.end() ? 0 : known->second, floors(benches, patience)[0]);
}

double BenchExact::quick_floor(std::span<const std::size_t> benches, BenchPatience& patience) {
  double out = clash_floor(benches.size(), patience);
  for (const std::size_t player : players_) {
    double least = kNever;
    for (const std::size_t bench : benches) least = std::min(least, p_.own[player * p_.benches + bench]);
    out += least;
  }
  for (std::size_t day = 0; day < p_.days; ++day) {
    double fair = 0, most = 0;
    for (const std::size_t bench : benches) fair += p_.fair[bench * p_.days + day], most += p_.most[bench * p_.days + day];
    if (load_from_[day] > most + kRounding) return kNever;
    out += p_.over_weight * std::max(0.0, load_from_[day] - fair);
  }
  return out;
}

double BenchExact::floor_of_any(std::size_t benches, BenchPatience& patience) {
  double out = clash_floor(benches, patience);
  for (const std::size_t player : players_) {
    double least = kNever;
    for (std::size_t bench = 0; bench < p_.benches; ++bench) least = std::min(least, p_.own[player * p_.benches + bench]);
    out += least;
  }
  for (std::size_t day = 0; day < p_.days; ++day) {
    const auto widest = [&](const std::vector<double>& of) {
      std::vector<double> each;
      for (std::size_t bench = 0; bench < p_.benches; ++bench) each.push_back(of[bench * p_.days + day]);
      std::sort(each.rbegin(), each.rend());
      double sum = 0;
      for (std::size_t at = 0; at < std::min(benches, each.size()); ++at) sum += each[at];
      return sum;
    };
    if (load_from_[day] > widest(p_.most) + kRounding) return kNever;
    out += p_.over_weight * std::max(0.0, load_from_[day] - widest(p_.fair));
  }
  return out;
}

BenchExact::Answer BenchExact::solve(std::span<const std::size_t> benches, BenchPatience& patience, double below) {
  Answer out;
  out.floor = quick_floor(benches, patience);
  if (out.floor == kNever) {
    out.proven = true;
    return out;
  }
  Search search{*this, {benches.begin(), benches.end()}, false, floors(benches.size(), patience), patience, below};
  search.prepare();
  search.go(0, 0);
  if (!search.best_places.empty()) {
    out.cost = search.best;
    out.choice.emplace();
    for (const std::size_t place : search.best_places) out.choice->push_back(benches[place]);
  }
  out.proven = !search.gave_up;
  if (out.proven) out.floor = std::max(out.floor, search.best - kRounding);
  return out;
}

}  // namespace weavelog
