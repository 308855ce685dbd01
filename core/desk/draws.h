#pragma once
// The draws of an event as its book keeps them: who stands on which line, who won what, where and when it is played.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/model/draw.h"
#include "core/plan/draw.h"
#include "core/plan/round_robin.h"
#include "core/store/ledger.h"

namespace weavelog {

/// One draw, as it is kept and as it stands.
struct HeldDraw {
  BookId event;
  Loaded<DrawSheet> sheet;
  std::vector<Loaded<DrawPlace>> places;    ///< by line
  std::vector<Loaded<MatchRecord>> matches;  ///< by round and match; those of which something is known
  std::vector<BracketLine> lines;            ///< as the plan reads them
  /// Of qualifying: as if its sections were parts of one draw whose last rounds are not played. None: it can't be understood, see troubles.
  std::optional<Draw> draw;
  /// Of a round-robin group, which is no draw: everybody meets everybody. Its rounds are those of circle_rounds().
  std::optional<RoundRobin> group;
  /// What can't be: a line twice, a result that does not follow from the others (two devices noted while apart). They are left out, and said.
  std::vector<Fault> troubles;

  /// Rounds that are played: of qualifying those of a section.
  [[nodiscard]] int rounds() const;
  [[nodiscard]] std::size_t matches_in(int round) const;
  /// The two lines of a match, upper first, as far as they are known, and the one that won it or goes on without it.
  [[nodiscard]] std::pair<std::optional<std::size_t>, std::optional<std::size_t>> sides(int round, std::size_t match) const;
  [[nodiscard]] std::optional<std::size_t> winner(int round, std::size_t match) const;
  /// A line as it stands, who withdrew and was replaced included.
  [[nodiscard]] const BracketLine& line(std::size_t line) const;
  [[nodiscard]] const Loaded<MatchRecord>* match(int round, std::size_t match) const;
};

/// In order of making, without those that were taken away.
[[nodiscard]] std::vector<HeldDraw> event_draws(const Ledger& ledger, const BookId& event);

struct NewDraw {
  std::string name;
  DrawKind kind = DrawKind::knock_out;
  std::vector<BracketLine> lines;
  std::int64_t sections = 0;  ///< of qualifying: so many come through
  EntityId feeds{};           ///< and its main draw
};
/// Faults: bad_input (no name, or that of another draw; those of Draw::make(), Qualifying::make() and RoundRobin::make()).
[[nodiscard]] Outcome<Draft> add_draw(const BookId& event, std::span<const HeldDraw> held, const NewDraw& draw, UnixMs at);
/// Takes a draw away.
[[nodiscard]] Draft remove_draw(const HeldDraw& held);

struct MatchSaid {
  int round = 0;           ///< from 1
  std::size_t winner = 0;  ///< line, from 0
  EndOfMatch end = EndOfMatch::played;
  std::string score;
  std::string by;
  UnixMs at = 0;
};
/// Faults: bad_input, as Draw::record(); conflict (the draw can't be understood).
[[nodiscard]] Outcome<Draft> note_winner(const HeldDraw& held, const MatchSaid& said);
/// Faults: bad_input, as Draw::take_back().
[[nodiscard]] Outcome<Draft> take_back_winner(const HeldDraw& held, int round, std::size_t match);
/// Faults: bad_input, as Draw::withdraw().
[[nodiscard]] Outcome<Draft> withdraw_line(const HeldDraw& held, std::size_t line, UnixMs at);
/// Somebody in the place of who withdrew, or where nobody was known. Faults: bad_input, as Draw::replace() and Draw::fill().
[[nodiscard]] Outcome<Draft> put_on_line(const HeldDraw& held, std::size_t line, const BracketLine& by);

/// Where and when a match is played; what is not said stays as it was.
struct PlaySaid {
  std::optional<std::string> court{};
  std::optional<UnixMs> not_before{};
  bool any_time = false;  ///< it has no time any more
  std::optional<EntityId> after{};  ///< the match that it follows (match_id()); none any more: an id of zeros
};
/// The id of a match, also of one of which nothing is said yet. Faults: bad_input (no such match).
[[nodiscard]] Outcome<EntityId> match_id(const HeldDraw& held, int round, std::size_t match);
/// Round and match (from 0) of a match's id; nothing if it is not of this draw.
[[nodiscard]] std::optional<std::pair<int, std::size_t>> match_of_id(const HeldDraw& held, const EntityId& id);
/// Faults: bad_input (no such match; nothing is said; a text that is too long; it would follow itself).
[[nodiscard]] Outcome<Draft> set_play(const HeldDraw& held, int round, std::size_t match, const PlaySaid& said);

}  // namespace weavelog
