#pragma once
// The order of play of an event as its book has it: when each match is expected, and who has to be ready for it.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/desk/draws.h"

namespace weavelog {

struct ExpectedMatch {
  EntityId draw;
  std::string draw_name;
  int round = 0;          ///< from 1
  std::size_t match = 0;  ///< from 0
  std::string court;
  std::vector<std::string> players;  ///< as far as they are known
  UnixMs begin = 0;
  bool estimated = false;  ///< it has no time of its own
};

struct RoomOrder {
  std::vector<ExpectedMatch> matches;    ///< not decided yet, by time
  std::optional<Fault> trouble{};        ///< why the order as a whole can't be; then only times that were said count
};
/// Of all draws together, so that whoever plays in two of them rests between (core/plan/order_of_play.h).
[[nodiscard]] RoomOrder room_order(std::span<const HeldDraw> draws, const std::string& zone);
/// The next match from `now` on of each player, by the search key of the name.
[[nodiscard]] std::map<std::string, UnixMs> next_matches(const RoomOrder& order, UnixMs now);

}  // namespace weavelog
