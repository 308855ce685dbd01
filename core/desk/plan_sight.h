#pragma once
// What somebody saw of the plan when they last looked at it, and what has happened to it since. Kept on the device that was looked at.

#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/desk/draws.h"
#include "core/desk/room_day.h"

namespace weavelog {

struct PlanSight {
  struct Racket {
    std::string whose;  ///< tag and name, as people call it
    std::string bench;  ///< "": no shift has room
    UnixMs ready = 0;
    bool late = false;
    bool operator==(const Racket&) const = default;
  };
  UnixMs at = 0;
  std::map<std::string, Racket> rackets;        ///< still to be strung, by job
  std::map<std::string, std::string> homes;     ///< stringer by player
  std::set<std::string> withdrawn;              ///< from any draw
  std::map<std::string, int> results;           ///< matches decided, by draw
};
/// As it is now.
[[nodiscard]] PlanSight plan_sight(const Ledger& ledger, const BookId& event, const RoomDay& day, const DayPlan& plan);

struct PlanNews {
  enum class Kind {
    came,           ///< a racket that was not there
    off_the_list,   ///< strung, put aside or taken back
    other_bench,    ///< before -> after
    later,          ///< by more than ten minutes: from -> to
    sooner,
    now_late,       ///< it will not be ready when it was promised
    in_time_again,
    home_moved,     ///< of a player: before -> after
    withdrew,
    played,         ///< so many matches of a draw
  };
  Kind kind = Kind::came;
  std::string who;  ///< racket, player or draw
  std::string before, after;
  UnixMs from = 0, to = 0;
  int count = 0;    ///< of played
};
/// What matters most first: late, withdrawn, moved; what came and went last.
[[nodiscard]] std::vector<PlanNews> news_since(const PlanSight& before, const PlanSight& now);

/// As text for a file of this device.
[[nodiscard]] std::string sight_text(const PlanSight& sight);
/// Faults: bad_input (no such text).
[[nodiscard]] Outcome<PlanSight> sight_from(std::string_view text);

}  // namespace weavelog
