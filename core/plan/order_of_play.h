#pragma once
// The order of play: which match where and when. A match has a time, is "not before" one, or follows what is on its court before it.

#include <map>

#include "core/base/clock.h"
#include "core/plan/bracket.h"

namespace weavelog {

struct PlayedMatch {
  std::string draw;       ///< its name, "" if there is one draw only
  int round = 0;          ///< from 1
  std::size_t match = 0;  ///< from 0, from the top
  auto operator<=>(const PlayedMatch&) const = default;
};

struct OrderEntry {
  std::string day;                      ///< "2031-05-26"
  std::string court;
  PlayedMatch match;
  std::optional<UnixMs> at{};           ///< starts then
  std::optional<UnixMs> not_before{};   ///< at the earliest; neither: when the court is free
  std::optional<PlayedMatch> follows{}; ///< and after that match, wherever it is
  std::string place{};                  ///< where it was written, for faults
};

/// When a match is expected to begin and to end. Without a time of its own this is an estimate.
struct MatchTime {
  UnixMs begin = 0, end = 0;
  bool estimated = false;
};

struct OrderOptions {
  UnixMs match_length = 90 * 60'000;  ///< expected; our own assumption
  UnixMs rest = 60 * 60'000;          ///< between two matches of one player, in two draws too where both are told a time
  std::map<std::string, UnixMs> day_begins{};  ///< by day: first match where no time is said; a day without: the earliest time said on it
};

/// A table with the columns day, court, round, match (from 1), and draw, at, not_before ("14:05"), follows ("2/7" or "Doubles 2/7": round and match),
/// in the order of play of each court. Times are told in `zone` (IANA name). Faults, with the place: as read_csv(); bad_input (a day, time, number or
/// zone that is none).
[[nodiscard]] Outcome<std::vector<OrderEntry>> read_order(std::string_view bytes, const std::string& zone, std::string_view source = {});

/// When each match is expected. `draws` by name, to look up who plays and what leads to a match. Faults, located: bad_input (a draw, round or match
/// that is not there; a match twice; a match that is over; a match before one that leads to it; a match that follows one which is not in the order,
/// or in the end itself; a time before that of the match ahead on the court; no time from which a day could be reckoned).
[[nodiscard]] Outcome<std::map<PlayedMatch, MatchTime>> expected_times(std::span<const OrderEntry> order,
                                                                       const std::map<std::string, const Bracket*>& draws,
                                                                       const OrderOptions& options = {});

}  // namespace weavelog
