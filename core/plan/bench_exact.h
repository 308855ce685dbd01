#pragma once
// Few players on few benches, exactly: branch and bound with floors made from the last players alone ("Russian doll search": Verfaillie,
// Lemaître and Schiex, AAAI 1996; from memory). Also what a bound of larger plans is put together from.

#include <map>
#include <optional>

#include "core/plan/bench_problem.h"

namespace weavelog {

/// Work that may still be done, in nodes of the search (of some players on some benches; larger ones count more); shared by whoever shares the patience.
struct BenchPatience {
  std::size_t nodes = 0;
};

class BenchExact {
 public:
  /// Some players of a problem, in the order of their lines. `parted`: meetings that are to be avoided are not allowed; else they cost.
  BenchExact(const BenchProblem& problem, std::vector<std::size_t> players, bool parted);

  struct Answer {
    double floor = 0;                  ///< no plan costs less; kNever: there is none
    std::optional<BenchChoice> choice;  ///< by the order of `players`, benches as in the problem: the cheapest that was found
    double cost = kNever;              ///< of `choice`
    bool proven = false;               ///< nothing is cheaper than `choice`, or there is none
  };
  /// The cheapest way to put these players on these benches, all costs counted, if nobody else is on them. With `below`: only what costs less
  /// is sought; then `proven` without a choice says that nothing does, and the floor is `below`.
  [[nodiscard]] Answer solve(std::span<const std::size_t> benches, BenchPatience& patience, double below = kNever);
  /// What is known from elsewhere of that: no plan of so many benches has meetings that cost less.
  void know_floor(std::size_t benches, double floor) { known_[benches] = floor; }
  /// What meetings among these players cost at least, on so many benches of whatever kind.
  [[nodiscard]] double clash_floor(std::size_t benches, BenchPatience& patience);
  /// The sum of what meetings, own costs and loads cost at least, each looked at alone; kNever where the limits can't be kept.
  [[nodiscard]] double quick_floor(std::span<const std::size_t> benches, BenchPatience& patience);

  /// The same for so many benches, whichever they are.
  [[nodiscard]] double floor_of_any(std::size_t benches, BenchPatience& patience);

  [[nodiscard]] const std::vector<std::size_t>& players() const { return players_; }

 private:
  struct Search;
  [[nodiscard]] const std::vector<double>& floors(std::size_t benches, BenchPatience& patience);

  const BenchProblem& p_;
  bool parted_;
  std::vector<std::size_t> players_;
  std::vector<double> cost_;                              // players_ x players_
  std::vector<double> load_from_;                         // (players_ + 1) x days: of a player and all after
  std::map<std::size_t, std::vector<double>> floors_;     // by number of benches: meetings among a player and all after
  std::map<std::size_t, double> known_;
  std::vector<BenchExact> blocks_;                        // of many players: these apart, a few each
};

}  // namespace weavelog
