#pragma once
// A plan of home benches with its proof: how far it is at most from the cheapest.

#include <cstdint>

#include "core/plan/bench_problem.h"

namespace weavelog {

struct BenchSolution {
  enum class Rule {
    none,        ///< there are no meetings that are to be avoided
    kept,        ///< none of them is possible
    impossible,  ///< proven: every plan has some; they were made as few as could be found
    not_found,   ///< as before, but not proven
  };

  BenchChoice choice;
  BenchCost cost;
  double floor = 0;  ///< proven: no plan (that keeps the rule, if this one does) costs less
  Rule rule = Rule::none;

  /// How much of the cost may be too much, as a part of the floor; 0: proven to be the cheapest.
  [[nodiscard]] double gap() const;
};

struct BenchEffort {
  std::size_t restarts = 4;
  std::size_t steps = 2'000;          ///< of the search, per player and beginning
  std::size_t nodes = 3'000'000;      ///< of the proof
  double enough = 0.002;              ///< a gap at which the proof need not go on
  std::uint64_t chance = 1;
};

/// Faults of the numbers are the caller's: every player has to have an allowed bench. If the limits can't be kept (or no way was found),
/// the cost's `beyond` is above 0. The same numbers give the same plan on every machine.
[[nodiscard]] BenchSolution solve_benches(const BenchProblem& problem, std::span<const std::size_t> before = {}, const BenchEffort& effort = {});

/// What every plan costs at least, without a look at partings: the meetings within parts of the draw, and of the likeliest players, whom
/// there are too few benches to hold apart; own costs; loads.
[[nodiscard]] double bench_floor(const BenchProblem& problem, std::size_t nodes);

}  // namespace weavelog
