#pragma once
// A good plan, quickly: moves and exchanges from several beginnings, first by a slow cooling (Kirkpatrick, Gelatt and Vecchi, Science 220
// (1983) 671-680; from memory), then downhill until no move and no exchange is better.

#include <cstdint>

#include "core/plan/bench_problem.h"

namespace weavelog {

struct BenchSearch {
  bool parted = false;        ///< meetings that are to be avoided count more than anything, each alike; else by their cost
  std::size_t restarts = 4;   ///< beginnings by chance, beside those that are given
  std::size_t steps = 2'000;  ///< of cooling, per player and beginning
  std::uint64_t chance = 1;   ///< the same number gives the same plan, on every machine
};

/// The best of all beginnings. Every player has to have an allowed bench, and each beginning has to use allowed ones only.
/// The caller looks whether the limits are kept.
[[nodiscard]] BenchChoice search_benches(const BenchProblem& problem, std::span<const BenchChoice> beginnings, const BenchSearch& how);
/// The same plan or one that costs no more (nor breaks more) and has its loads closer to each other: what is within the even share costs
/// nothing, and still nobody likes to see it lie on one bench.
[[nodiscard]] BenchChoice even_out(const BenchProblem& problem, BenchChoice choice, bool parted);

}  // namespace weavelog
