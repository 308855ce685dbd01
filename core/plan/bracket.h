#pragma once
// A knock-out draw: its lines from top to bottom, and who won what so far.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/csv.h"
#include "core/base/outcome.h"

namespace weavelog {

struct BracketLine {
  std::string player;  ///< empty only of a bye, or where nobody is known yet (a qualifier's place)
  bool bye = false;    ///< nobody plays here: the neighbour goes on without a match
  std::optional<double> rating{};
  std::optional<std::int64_t> seed{};  ///< from 1
};

/// Who went on from a match, played or not.
struct BracketResult {
  int round = 0;           ///< from 1
  std::size_t winner = 0;  ///< line, from 0
};

class Bracket {
 public:
  /// Faults, each naming the line or the result: bad_input (not 2, 4, ... 256 lines; a player or a seed twice; two byes that meet; a result
  /// of a round or line that is not there, of a match that has another winner already, before the matches that lead to it, or of a bye).
  [[nodiscard]] static Outcome<Bracket> make(std::vector<BracketLine> lines, std::span<const BracketResult> results = {});

  [[nodiscard]] std::span<const BracketLine> lines() const { return lines_; }
  /// Matches on the way to the title: log2 of the number of lines.
  [[nodiscard]] int rounds() const { return rounds_; }
  /// The line that won this match, played or by a bye, if that is known. `match` from 0, from the top.
  [[nodiscard]] std::optional<std::size_t> winner(int round, std::size_t match) const;
  /// The match of a round on the way of a line, from 0.
  [[nodiscard]] static std::size_t match_of(int round, std::size_t line) { return line >> round; }
  /// The only round in which two lines can meet; 0 of a line with itself.
  [[nodiscard]] static int meeting_round(std::size_t one, std::size_t other);

 private:
  Bracket() = default;

  std::vector<BracketLine> lines_;
  int rounds_ = 0;
  std::vector<std::vector<std::optional<std::size_t>>> winners_;  // by round - 1 and match
};

/// "final", "semi-final", "quarter-final", "round of 16", ... of a draw of so many rounds.
[[nodiscard]] std::string round_name(int rounds, int round);

/// A draw from a table with the columns line, player, seed, rating, in any order; only line and player are required. Lines count from 1 and
/// all have to be there; a player called "bye" is one; an empty one is not known yet. Faults: as read_csv() and Bracket::make(); bad_input
/// (a number that is none, a line twice or missing) with the place in the file.
[[nodiscard]] Outcome<std::vector<BracketLine>> read_bracket(std::string_view bytes, std::string_view source = {});
/// Results from a table with the columns round, winner: a line's number or its player's name. Faults: likewise.
[[nodiscard]] Outcome<std::vector<BracketResult>> read_results(std::string_view bytes, std::span<const BracketLine> lines,
                                                               std::string_view source = {});

}  // namespace weavelog
