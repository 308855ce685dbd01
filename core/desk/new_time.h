#pragma once
// Another time by which rackets are promised: agreed with the player, or with who speaks for them, when the first one can't be kept or is
// not wanted any more. What was promised before stays in the log.

#include <span>
#include <string>

#include "core/desk/player_record.h"

namespace weavelog {

/// A promise reaches no further than this.
inline constexpr std::int64_t kFarthestPromise = 30LL * 86'400'000;  // ms

/// What a racket may be promised for: a time to come that lies no more than 30 days ahead. Faults: bad_input.
[[nodiscard]] Outcome<> check_promise(UnixMs ready_by, UnixMs now, const std::string& where);

struct NewTime {
  UnixMs ready_by = 0;
  std::string agreed_by;  ///< the player, a coach
  UnixMs at = 0;
};

/// Puts the time on jobs of one player, in one action. Faults: not_found; bad_input (no job, nobody named, a time that has passed or lies more
/// than 30 days ahead); refused (a racket is ready, collected or put aside: there is nothing to promise).
[[nodiscard]] Outcome<Draft> agree_time(const PlayerRecord& record, std::span<const EntityId> jobs, const NewTime& agreed);

/// The rackets that were promised with this one: of the same hand-over for the same time, and not ready yet; itself included if it is open.
[[nodiscard]] std::vector<EntityId> promised_with(const PlayerRecord& record, const EntityId& job);

}  // namespace weavelog
