#pragma once
// What meetings cost at least on so many benches, for more players than can be looked through.

#include "core/plan/bench_exact.h"

namespace weavelog {

/// A floor of what meetings among these players cost on so many benches of whatever kind; own costs and loads not counted. Matches between many
/// players are bounded by how evenly chances can lie on benches, parts of the draw of up to sixteen players are solved.
///
/// Of a match with chances P(b) and Q(b) that its sides come from bench b, the cost is at least k sum P(b)Q(b) for some k. With S, the least that
/// sum (P(b) + Q(b))^2 can be, that is at least k/2 (S - sum P(b)^2 - sum Q(b)^2); and sum P(b)^2 is made of pairs on one side who share a bench,
/// whose own meetings pay for it. So each match, the largest first, takes something from the pairs on its sides. (Own reasoning, checked against
/// plans and an exact solver by tests.)
[[nodiscard]] double meetings_floor(const BenchProblem& problem, const std::vector<std::size_t>& players, std::size_t benches, std::size_t nodes);

}  // namespace weavelog
