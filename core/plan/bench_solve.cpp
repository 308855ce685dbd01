#include "core/plan/bench_solve.h"

#include <algorithm>
#include <numeric>

#include "core/plan/bench_bound.h"
#include "core/plan/bench_exact.h"
#include "core/plan/bench_parting.h"
#include "core/plan/bench_search.h"

namespace weavelog {
namespace {

constexpr std::size_t kFew = 28;  // players for whom the whole plan may be proven by branch and bound

std::vector<std::size_t> count_up(std::size_t from, std::size_t to) {
  std::vector<std::size_t> out(to - from);
  std::iota(out.begin(), out.end(), from);
  return out;
}

/// Among n players on m benches at least so many pairs share one.
std::size_t pairs_that_share(std::size_t n, std::size_t m) {
  const std::size_t each = n / m, more = n % m;
  return more * ((each + 1) * each / 2) + (m - more) * (each * (each - 1) / 2);
}

/// Of the likeliest players so many pairs share a bench, and these cost at least what the cheapest do.
double crowded_floor(const BenchProblem& p) {
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t i = 0; i < p.players; ++i) {
    double sum = 0;
    for (std::size_t j = 0; j < p.players; ++j) sum += p.clash[i * p.players + j] + p.hard[i * p.players + j];
    order.emplace_back(-sum, i);
  }
  std::sort(order.begin(), order.end());
  std::vector<double> pairs;
  double best = 0;
  for (std::size_t n = 0; n < p.players; ++n) {
    for (std::size_t k = 0; k < n; ++k) {
      const std::size_t at = order[n].second * p.players + order[k].second;
      pairs.push_back(p.clash[at] + p.hard[at]);
    }
    std::size_t share = pairs_that_share(n + 1, p.benches);
    if (share == 0) continue;
    std::nth_element(pairs.begin(), pairs.begin() + static_cast<std::ptrdiff_t>(share - 1), pairs.end());
    best = std::max(best, std::accumulate(pairs.begin(), pairs.begin() + static_cast<std::ptrdiff_t>(share), 0.0));
  }
  return best;
}

bool breaks(const BenchProblem& problem, const BenchChoice& choice) { return cost_of(problem, choice).hard > 0; }

}  // namespace

double BenchSolution::gap() const {
  const double more = cost.total() - floor;
  if (more <= 1e-6) return 0;
  return floor > 0 ? more / floor : kNever;
}

double bench_floor(const BenchProblem& problem, std::size_t nodes) {
  double meetings = crowded_floor(problem);
  meetings = std::max(meetings, meetings_floor(problem, count_up(0, problem.players), problem.benches, nodes));
  double rest = 0;
  for (std::size_t i = 0; i < problem.players; ++i)
    rest += *std::min_element(problem.own.begin() + static_cast<std::ptrdiff_t>(i * problem.benches),
                              problem.own.begin() + static_cast<std::ptrdiff_t>((i + 1) * problem.benches));
  for (std::size_t day = 0; day < problem.days; ++day) {
    double load = 0, fair = 0;
    for (std::size_t i = 0; i < problem.players; ++i) load += problem.load[i * problem.days + day];
    for (std::size_t bench = 0; bench < problem.benches; ++bench) fair += problem.fair[bench * problem.days + day];
    rest += problem.over_weight * std::max(0.0, load - fair);
  }
  return std::max(0.0, meetings + rest - 1e-9);
}

BenchSolution solve_benches(const BenchProblem& problem, std::span<const std::size_t> before, const BenchEffort& effort) {
  using Rule = BenchSolution::Rule;
  BenchSolution out;
  std::vector<BenchChoice> beginnings;
  if (before.size() == problem.players && problem.players > 0) beginnings.emplace_back(before.begin(), before.end());
  const auto search = [&](bool parted) {
    out.choice = even_out(problem, search_benches(problem, beginnings, {parted, effort.restarts, effort.steps, effort.chance}), parted);
    out.cost = cost_of(problem, out.choice);
  };
  const auto all_benches = count_up(0, problem.benches);
  BenchPatience patience{effort.nodes};
  if (std::any_of(problem.hard.begin(), problem.hard.end(), [](double cost) { return cost > 0; })) {
    BenchParting parting = part_benches(problem, effort.enough, patience);
    out.rule = parting.state == BenchParting::State::impossible ? Rule::impossible : Rule::not_found;
    if (parting.state != BenchParting::State::impossible) {
      for (BenchChoice& choice : parting.choices) beginnings.push_back(std::move(choice));
      search(true);
      if (out.cost.kept() && !breaks(problem, out.choice)) {
        out.rule = Rule::kept;
        out.floor = std::max(parting.floor, bench_floor(problem, effort.nodes / 4));
        return out;
      }
    }
    std::erase_if(beginnings, [&](const BenchChoice& choice) { return choice.empty(); });
  }
  search(false);
  out.floor = bench_floor(problem, effort.nodes / 4);
  if (problem.players <= kFew && problem.players > 0) {
    BenchExact exact(problem, count_up(0, problem.players), false);
    const double below = out.cost.kept() ? out.cost.total() : kNever;
    patience.nodes = std::max(patience.nodes, effort.nodes / 2);
    auto answer = exact.solve(all_benches, patience, below);
    if (answer.choice) {
      out.choice = even_out(problem, std::move(*answer.choice), false);
      out.cost = cost_of(problem, out.choice);
    }
    if (answer.proven) out.floor = std::max(out.floor, std::min(out.cost.total(), answer.floor));
  }
  return out;
}

}  // namespace weavelog
