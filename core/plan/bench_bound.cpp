#include "core/plan/bench_bound.h"

#include <algorithm>

namespace weavelog {
namespace {

constexpr std::size_t kPart = 16;

struct Relaxed {
  double bound = 0;
  BenchProblem left;  // what meetings still cost, as clash
};

/// Members of both sides.
std::vector<std::size_t> everybody(const BenchMatch& match) {
  std::vector<std::size_t> out;
  for (const auto* side : {&match.upper, &match.lower})
    for (const auto& [player, chance] : *side) out.push_back(player);
  return out;
}

/// The least sum of squares of what lies on so many benches, however the parts are laid: the largest lie alone as long as they are more than what
/// the others would fill evenly. (Loads of benches majorise that: any few benches hold at least as much as as many parts.)
double least_squares(std::vector<double> parts, std::size_t benches) {
  std::sort(parts.rbegin(), parts.rend());
  double left = 0, out = 0;
  for (const double part : parts) left += part;
  for (const double part : parts) {
    if (benches == 1 || part <= left / static_cast<double>(benches)) break;
    out += part * part;
    left -= part;
    --benches;
  }
  return out + left * left / static_cast<double>(benches);
}

/// Takes a match out of the meetings that are left, with the part `share` of what it could take. Nothing if that gains nothing.
void relax(Relaxed& now, const BenchMatch& match, std::size_t benches, double share) {
  BenchProblem& p = now.left;
  double most = kNever, squares = 0;
  std::vector<double> chances;
  for (const auto& [one, a] : match.upper)
    for (const auto& [other, b] : match.lower) most = std::min(most, p.clash[one * p.players + other] / (a * b));
  if (most == kNever || most <= 0) return;
  // Who does not pay for sharing a bench by a meeting of their own is taken to share it. So the gain first rises with k and then falls.
  std::vector<std::pair<double, double>> ends;  // the k at which a pair has no more to pay, and what it costs beyond
  for (const auto* side : {&match.upper, &match.lower})
    for (std::size_t i = 0; i < side->size(); ++i) {
      const auto& [one, a] = (*side)[i];
      chances.push_back(a);
      squares += a * a;
      for (std::size_t j = 0; j < i; ++j) {
        const auto& [other, b] = (*side)[j];
        ends.emplace_back(p.clash[one * p.players + other] / (a * b), a * b);
      }
    }
  std::sort(ends.begin(), ends.end());
  const double each = (least_squares(std::move(chances), benches) - squares) / 2;
  double k = each > 0 ? most : 0, rise = each;
  for (const auto& [end, more] : ends) {
    if (end >= k) break;
    rise -= more;
    if (rise <= 0) k = end;
  }
  k *= share;
  double gain = k * each;
  for (const auto& [end, more] : ends) gain -= std::max(0.0, k - end) * more;
  if (gain <= 0) return;
  now.bound += gain;
  for (const auto* side : {&match.upper, &match.lower})
    for (std::size_t i = 0; i < side->size(); ++i)
      for (std::size_t j = 0; j < i; ++j) {
        const auto& [one, a] = (*side)[i];
        const auto& [other, b] = (*side)[j];
        p.set_clash(one, other, std::max(0.0, p.clash[one * p.players + other] - k * a * b));
      }
  for (const auto& [one, a] : match.upper)
    for (const auto& [other, b] : match.lower) p.set_clash(one, other, std::max(0.0, p.clash[one * p.players + other] - k * a * b));
}

}  // namespace

double meetings_floor(const BenchProblem& problem, const std::vector<std::size_t>& players, std::size_t benches, std::size_t nodes) {
  if (benches == 0) return players.empty() ? 0 : kNever;
  // These players alone, numbered anew.
  std::vector<std::size_t> number(problem.players, problem.players);
  for (std::size_t at = 0; at < players.size(); ++at) number[players[at]] = at;
  BenchProblem alone(players.size(), benches, 0);
  for (std::size_t i = 0; i < players.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      const std::size_t at = players[i] * problem.players + players[j];
      alone.set_clash(i, j, problem.clash[at] + problem.hard[at]);
    }
  std::vector<BenchMatch> matches;
  for (const BenchMatch& match : problem.matches) {
    BenchMatch here;
    for (const auto& [player, chance] : match.upper)
      if (number[player] < players.size()) here.upper.emplace_back(number[player], chance);
    for (const auto& [player, chance] : match.lower)
      if (number[player] < players.size()) here.lower.emplace_back(number[player], chance);
    if (!here.upper.empty() && !here.lower.empty()) matches.push_back(std::move(here));
  }
  std::stable_sort(matches.begin(), matches.end(),
                   [](const BenchMatch& a, const BenchMatch& b) { return a.upper.size() + a.lower.size() > b.upper.size() + b.lower.size(); });
  // Parts of the draw that can be solved; nobody is in two.
  std::vector<std::vector<std::size_t>> parts;
  std::vector<bool> in_part(players.size());
  std::vector<const BenchMatch*> large;
  for (const BenchMatch& match : matches) {
    auto members = everybody(match);
    if (members.size() > kPart) {
      large.push_back(&match);
    } else if (std::none_of(members.begin(), members.end(), [&](std::size_t one) { return in_part[one]; })) {
      std::sort(members.begin(), members.end());
      members.erase(std::unique(members.begin(), members.end()), members.end());
      for (const std::size_t one : members) in_part[one] = true;
      parts.push_back(std::move(members));
    }
  }
  double best = 0;
  for (const double share : {0.0, 0.4, 0.7, 1.0}) {
    Relaxed now{0, alone};
    for (const BenchMatch* match : large) relax(now, *match, benches, share);
    double floor = now.bound;
    for (const auto& part : parts) {
      BenchPatience patience{nodes / (4 * parts.size())};
      floor += BenchExact(now.left, part, false).clash_floor(benches, patience);
    }
    best = std::max(best, floor);
    if (large.empty()) break;
  }
  return std::max(0.0, best - 1e-9);
}

}  // namespace weavelog
