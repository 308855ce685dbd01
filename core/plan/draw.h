#pragma once
// A draw as it is lived: withdrawals, lucky losers, walkovers, results tapped and taken back, and qualifying that feeds it.

#include "core/plan/meeting_odds.h"

namespace weavelog {

/// Qualifying: sections of 2, 4, ... lines, each played down to one who qualifies.
class Qualifying {
 public:
  /// Lines from top to bottom of all sections, results with those lines. Faults: bad_input (lines that can't be divided into so many sections
  /// of 2, 4, ... lines; those of Bracket::make()).
  [[nodiscard]] static Outcome<Qualifying> make(const std::vector<BracketLine>& lines, std::size_t qualifiers,
                                                std::span<const BracketResult> results = {});

  [[nodiscard]] const std::vector<Bracket>& sections() const { return sections_; }
  /// The line of who qualified in a section (from 0); none while it is not decided, or if they withdrew.
  [[nodiscard]] std::optional<BracketLine> qualifier(std::size_t section) const;
  /// Who lost in the last round of qualifying and did not withdraw, the highest rated first, then by section: who is asked first when a place becomes
  /// free. (Rules rank them by their ranking, with a lot; common practice, no source.)
  [[nodiscard]] std::vector<BracketLine> lucky_losers() const;

 private:
  std::vector<Bracket> sections_;
};

class Draw {
 public:
  /// Faults: those of Bracket::make().
  [[nodiscard]] static Outcome<Draw> make(std::vector<BracketLine> lines, std::vector<BracketResult> results = {});

  [[nodiscard]] const Bracket& bracket() const { return bracket_; }
  [[nodiscard]] std::span<const BracketResult> results() const { return results_; }

  /// Of each of these, either all of it or nothing. Faults: bad_input, with the line or match.

  /// Plays no match any more: whoever meets this line goes on by a walkover. What was won before stays. Faults: a bye, nobody there yet, or
  /// out already.
  [[nodiscard]] Outcome<> withdraw(std::size_t line);
  /// Somebody else in the place of one who withdrew, as long as nothing on this line was played: a lucky loser or an alternate. A seed's place goes
  /// on without the seed. Faults: a bye, somebody who did not withdraw, a match that was played or walked over; who is in the draw already.
  [[nodiscard]] Outcome<> replace(std::size_t line, BracketLine by);
  /// Who came through qualifying, on a line where nobody was known. Faults: somebody is there.
  [[nodiscard]] Outcome<> fill(std::size_t line, BracketLine by);
  /// A result, tapped. Faults: those of Bracket::make(); nobody there yet; who withdrew wins nothing.
  [[nodiscard]] Outcome<> record(const BracketResult& result);
  /// Takes the result of a match back. Faults: it has none, or a later one is built on it.
  [[nodiscard]] Outcome<> take_back(int round, std::size_t match);

 private:
  explicit Draw(Bracket bracket) : bracket_(std::move(bracket)) {}
  [[nodiscard]] Outcome<> become(std::vector<BracketLine> lines, std::vector<BracketResult> results);

  Bracket bracket_;
  std::vector<BracketResult> results_;
};

/// Puts those who qualified on the lines of the main draw that wait for them (BracketLine::qualifier). A place that is not decided gets the rating
/// that is expected of who comes, where there are ratings. Faults: bad_input (a section that is not there, or twice; a line where somebody
/// else is).
[[nodiscard]] Outcome<std::vector<BracketLine>> fed_by(std::vector<BracketLine> lines, const Qualifying& qualifying);

}  // namespace weavelog
