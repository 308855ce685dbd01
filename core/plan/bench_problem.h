#pragma once
// Players to benches as numbers alone: what a plan costs. Everything that has to do with names stands in home_benches.h.

#include <cstddef>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace weavelog {

/// Not allowed at any price.
inline constexpr double kNever = std::numeric_limits<double>::infinity();

/// The bench, from 0, of each player.
using BenchChoice = std::vector<std::size_t>;

/// A match of which it is not decided who plays it: of each side one comes, with these chances. What it costs to have both on one bench is in the
/// tables of meetings; that it is a product of chances is what makes a good bound.
struct BenchMatch {
  std::vector<std::pair<std::size_t, double>> upper, lower;  ///< players with their chances, above 0
};

/// All costs are 0 or more, in one and the same unit (points).
struct BenchProblem {
  BenchProblem(std::size_t all_players, std::size_t all_benches, std::size_t all_days)
      : players(all_players), benches(all_benches), days(all_days), clash(players * players), hard(players * players), own(players * benches),
        load(players * days), fair(benches * days, kNever), most(benches * days, kNever) {}

  std::size_t players, benches, days;
  std::vector<double> clash;  ///< players x players, symmetric: what it costs to have both on one bench
  std::vector<double> hard;   ///< likewise, for meetings that are to be avoided whatever else it costs, as far as they can be
  std::vector<double> own;    ///< players x benches: of this player on this bench; kNever: not allowed
  std::vector<double> load;   ///< players x days: rackets expected
  std::vector<double> fair;   ///< benches x days: rackets that cost nothing
  std::vector<double> most;   ///< benches x days: rackets that can't be exceeded
  double over_weight = 0;     ///< points per racket beyond what is fair
  std::vector<BenchMatch> matches{};  ///< from which the meetings come, in any order; may be left out: then bounds are weaker

  void set_clash(std::size_t one, std::size_t other, double points) { clash[one * players + other] = clash[other * players + one] = points; }
  void set_hard(std::size_t one, std::size_t other, double points) { hard[one * players + other] = hard[other * players + one] = points; }
};

struct BenchCost {
  double hard = 0;    ///< of meetings that should not be possible
  double clash = 0;   ///< of other meetings
  double own = 0;     ///< of players on their benches
  double over = 0;    ///< of uneven loads
  double beyond = 0;  ///< rackets beyond limits; a plan that can be kept has none

  [[nodiscard]] double total() const { return hard + clash + own + over; }
  /// Only then is it a plan.
  [[nodiscard]] bool kept() const { return beyond <= 1e-9 && own < kNever; }
};

[[nodiscard]] BenchCost cost_of(const BenchProblem& problem, std::span<const std::size_t> choice);

}  // namespace weavelog
