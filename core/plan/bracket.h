#pragma once
// A knock-out draw: its lines from top to bottom, and who won what so far.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

/// How somebody came into a draw.
enum class DrawEntry : std::uint8_t { direct, wild_card, qualifier, lucky_loser, alternate };

struct BracketLine {
  std::string player;  ///< empty only of a bye, or where nobody is known yet (a qualifier's place)
  bool bye = false;    ///< nobody plays here: the neighbour goes on without a match
  std::optional<double> rating{};
  std::optional<std::int64_t> seed{};  ///< from 1
  std::string partner{};               ///< of a pair
  DrawEntry entry = DrawEntry::direct;
  bool withdrawn = false;     ///< plays no match any more: whoever would, goes on by a walkover
  std::size_t qualifier = 0;  ///< of which section of qualifying (from 1) somebody comes to this line; 0: of none
};

/// "Name", "Name / Partner", "bye", or "" where nobody is known yet.
[[nodiscard]] std::string line_name(const BracketLine& line);
/// Nobody, one, or two.
[[nodiscard]] std::vector<std::string> people_of(const BracketLine& line);

enum class MatchEnd : std::uint8_t { played, retired, walkover };

/// Who went on from a match, played or not.
struct BracketResult {
  int round = 0;           ///< from 1
  std::size_t winner = 0;  ///< line, from 0
  std::string place{};     ///< where it was written, for faults
  MatchEnd end = MatchEnd::played;
};

class Bracket {
 public:
  /// Faults, each naming the line or the result: bad_input (not 2, 4, ... 256 lines; a player or a seed twice; two byes that meet; a result
  /// of a round or line that is not there, of a match that has another winner already, before the matches that lead to it, or of a bye).
  [[nodiscard]] static Outcome<Bracket> make(std::vector<BracketLine> lines, std::span<const BracketResult> results = {});

  [[nodiscard]] std::span<const BracketLine> lines() const { return lines_; }
  /// Matches on the way to the title: log2 of the number of lines.
  [[nodiscard]] int rounds() const { return rounds_; }
  /// The line that won this match, if that is known: played, by a bye, or because the other withdrew. Of two who both withdrew the upper one
  /// goes on in name, and loses the next. `match` from 0, from the top.
  [[nodiscard]] std::optional<std::size_t> winner(int round, std::size_t match) const;
  /// The two lines of a match, upper first, as far as they are known.
  [[nodiscard]] std::pair<std::optional<std::size_t>, std::optional<std::size_t>> sides(int round, std::size_t match) const;
  /// Whether a match took place: it has a winner, and neither a bye nor a walkover decided it.
  [[nodiscard]] bool played(int round, std::size_t match) const;
  /// The match of a round on the way of a line, from 0.
  [[nodiscard]] static std::size_t match_of(int round, std::size_t line) { return line >> round; }
  /// The only round in which two lines can meet; 0 of a line with itself.
  [[nodiscard]] static int meeting_round(std::size_t one, std::size_t other);

 private:
  Bracket() = default;
  [[nodiscard]] Outcome<> take(const BracketResult& result);
  void walk_over(int round);

  std::vector<BracketLine> lines_;
  int rounds_ = 0;
  std::vector<std::vector<std::optional<std::size_t>>> winners_;  // by round - 1 and match
  std::vector<std::vector<bool>> played_;                         // likewise
};

/// A draw from a table with the columns line, player, partner, seed, rating, entry, withdrawn, qualifier, in any order; only line and player
/// are required. Lines count from 1 and all have to be there; a player called "bye" is one; an empty one is not known yet. Entry is empty
/// (direct), WC, Q, LL or ALT; withdrawn is empty, yes or no. Faults: as read_csv(); bad_input (a number or word that is none, a line twice
/// or missing) with the place in the file.
[[nodiscard]] Outcome<std::vector<BracketLine>> read_bracket(std::string_view bytes, std::string_view source = {});
/// Entries, or a group, from a table with the same columns but line, in the order of the rows: 1 to 256. An empty player waits for a qualifier.
/// An entry list of an event will do as well (core/people/entry_list.h): family_name and given_name in the place of player, and `draw` says which
/// of its draws is meant; "" if it has one. Faults: likewise; bad_input (several draws), not_found (no such draw).
[[nodiscard]] Outcome<std::vector<BracketLine>> read_entries(std::string_view bytes, std::string_view source = {}, std::string_view draw = {});
/// Results from a table with the columns round, winner (a line's number, its player's name, or a pair's as line_name()) and end (empty or
/// played, retired, walkover), which may be left out. Faults: likewise.
[[nodiscard]] Outcome<std::vector<BracketResult>> read_results(std::string_view bytes, std::span<const BracketLine> lines,
                                                               std::string_view source = {});

}  // namespace weavelog
