#include "core/plan/bench_problem.h"

#include <algorithm>

namespace weavelog {

BenchCost cost_of(const BenchProblem& problem, std::span<const std::size_t> choice) {
  BenchCost out;
  std::vector<double> loads(problem.benches * problem.days);
  for (std::size_t i = 0; i < problem.players; ++i) {
    out.own += problem.own[i * problem.benches + choice[i]];
    for (std::size_t day = 0; day < problem.days; ++day) loads[choice[i] * problem.days + day] += problem.load[i * problem.days + day];
    for (std::size_t j = 0; j < i; ++j)
      if (choice[i] == choice[j]) {
        out.clash += problem.clash[i * problem.players + j];
        out.hard += problem.hard[i * problem.players + j];
      }
  }
  for (std::size_t at = 0; at < loads.size(); ++at) {
    out.over += problem.over_weight * std::max(0.0, loads[at] - problem.fair[at]);
    out.beyond += std::max(0.0, loads[at] - problem.most[at]);
  }
  return out;
}

}  // namespace weavelog
