#pragma once
// Who gets how far and who meets whom, exactly: a dynamic programme over the bracket, given the chance of each match and what is known so
// far. Matches are taken as independent of each other.

#include <functional>
#include <vector>

#include "core/plan/bracket.h"

namespace weavelog {

/// The chance, 0 to 1, that the first line beats the second.
using WinChance = std::function<double(std::size_t, std::size_t)>;

[[nodiscard]] WinChance even_chances();
/// By the difference of ratings, 1 / (1 + 10^(-d/400)): A. Elo, The Rating of Chessplayers Past and Present (1978). Who has no rating counts
/// as the mean of those who have one. Faults: bad_input (nobody has a rating).
[[nodiscard]] Outcome<WinChance> chances_by_rating(std::span<const BracketLine> lines);
[[nodiscard]] Outcome<WinChance> chances_by_rating(const Bracket& bracket);
/// By seeds, where there is no rating: strengths one over the rank, so that seed 1 beats seed 3 three times of four; all without a seed share
/// the rank in the middle of the places that the seeds leave. Common practice has no formula for this; it is our own assumption.
/// Faults: bad_input (nobody is seeded).
[[nodiscard]] Outcome<WinChance> chances_by_seed(const Bracket& bracket);

class MeetingOdds {
 public:
  /// O(n^2) calls of `chance`, n = lines.
  MeetingOdds(const Bracket& bracket, const WinChance& chance);

  /// That a line comes to be in a match of a round (from 1), by byes too; of round rounds() + 1: that it wins the draw. A bye's own is 0
  /// from round 2 on.
  [[nodiscard]] double reaches(std::size_t line, int round) const;
  /// That two lines play each other, which they can in one round only; 1 if they did.
  [[nodiscard]] double meet(std::size_t one, std::size_t other) const;
  /// That a line plays a match of a round (from 1) that is not decided yet: the parts of matches_left().
  [[nodiscard]] double plays(std::size_t line, int round) const;
  /// Matches that a line is still expected to play: without those that are decided, and without byes.
  [[nodiscard]] double matches_left(std::size_t line) const;

 private:
  enum class State : std::uint8_t { open, played, walked_over };

  std::size_t size_;
  std::vector<std::vector<double>> reach_;  // by round - 1 and line
  std::vector<std::vector<double>> plays_;  // by round - 1 and line
  std::vector<std::vector<State>> states_;  // by round - 1 and match
  std::vector<bool> withdrawn_;             // by line
};

}  // namespace weavelog
