#pragma once
// Round-robin groups: everybody meets everybody once.

#include "core/plan/meeting_odds.h"

namespace weavelog {

/// Two of a group, by their places in it (from 0).
struct GroupMatch {
  std::size_t one = 0, other = 0;
};

/// Who meets whom in which round: each once, nobody twice in a round; with an odd number somebody rests each round. The circle method (in use since
/// the nineteenth century; from memory).
[[nodiscard]] std::vector<std::vector<GroupMatch>> circle_rounds(std::size_t players);

class RoundRobin {
 public:
  struct Result {
    GroupMatch match;
    std::size_t winner = 0;  ///< place in the group
    std::string place{};     ///< where it was written, for faults
  };

  /// 3 to 8 players, of whom some may have withdrawn: what they have not played is walked over. Faults, located: bad_input (too few or many; a bye or
  /// a place that is not filled; somebody twice; a result of two who do not meet, of a winner who did not play, or twice with different winners).
  [[nodiscard]] static Outcome<RoundRobin> make(std::vector<BracketLine> players, std::span<const Result> results = {});

  [[nodiscard]] std::span<const BracketLine> players() const { return players_; }
  [[nodiscard]] std::optional<std::size_t> winner(std::size_t one, std::size_t other) const { return winners_[one * players_.size() + other]; }
  /// Whether two are still to meet.
  [[nodiscard]] bool meets(std::size_t one, std::size_t other) const;
  [[nodiscard]] std::size_t matches_left(std::size_t player) const;
  [[nodiscard]] std::size_t wins(std::size_t player) const;
  /// Places, best first: by matches won, then by those won among the ones who are level; who is level still keeps the order of the group
  /// (rules go on to sets and games, which are not known here).
  [[nodiscard]] std::vector<std::size_t> standing() const;
  /// The chance of each to come first, exactly over all that can still happen; who is level at the end shares it. `chance` by places. At most 2^20
  /// ways: groups of up to six, or of seven and eight once some matches are played; nothing beyond.
  [[nodiscard]] std::optional<std::vector<double>> first_chances(const WinChance& chance) const;

 private:
  RoundRobin() = default;
  [[nodiscard]] std::vector<std::vector<std::size_t>> levels() const;
  void decide(std::size_t one, std::size_t other, std::optional<std::size_t> winner);

  std::vector<BracketLine> players_;
  std::vector<std::optional<std::size_t>> winners_;  // players x players, symmetric
};

}  // namespace weavelog
