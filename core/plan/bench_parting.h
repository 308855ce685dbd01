#pragma once
// Plans in which no meeting that is to be avoided is possible at all. Then a bench serves one section of the draw only, and a plan is a
// parting of the benches among the sections: by dynamic programming over sets of benches, each section's part exactly.

#include "core/plan/bench_exact.h"

namespace weavelog {

struct BenchParting {
  enum class State { found, impossible, unknown };  ///< impossible is proven, unknown is not

  State state = State::unknown;
  std::vector<BenchChoice> choices;  ///< plans that part, each better than the one before
  double floor = 0;                  ///< no plan that parts costs less
};

/// Groups of players, in the order of their first: two of different groups may meet where it is to be avoided, so that they never share a bench.
[[nodiscard]] std::vector<std::vector<std::size_t>> sections_of(const BenchProblem& problem);

/// Ends when the cheapest parting is proven, or within `enough` (a part) of proven, or with the patience.
[[nodiscard]] BenchParting part_benches(const BenchProblem& problem, double enough, BenchPatience& patience);

}  // namespace weavelog
