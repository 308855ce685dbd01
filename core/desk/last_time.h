#pragma once
// "Same as last time": what was strung last, what has been agreed since, and what is still open, field by
// field.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/desk/player_record.h"

namespace weavelog {

struct LastTime {
  EntityId racket;
  EntityId job;    ///< the last one that counts; none if nothing was strung yet
  EntityId setup;  ///< that the proposal goes by; may be none
  bool own_racket =
      false;  ///< the job was on this very racket; otherwise it is the player's newest on another
  std::string event_name;
  std::optional<std::int64_t> at;
  std::optional<Agreed> as_strung;
  /// What "same as last time" means now: each field as last strung or, where the setup was changed after
  /// that, as changed.
  Agreed proposal;
  /// Fields changed since the last job: old -> new. `before` as strung, `after` as proposed.
  std::vector<Change> since;
  /// Open questions on the setup or the job that the proposal goes by. To be closed first.
  std::vector<OpenQuestion> questions;
};

/// Nothing if the player has neither a job nor a setup. Jobs put aside do not count. No racket (EntityId{}):
/// by the player's newest job, whatever the racket.
[[nodiscard]] std::optional<LastTime> same_as_last_time(const PlayerRecord& record, const EntityId& racket);
/// For several rackets, in their order; those without any history are left out.
[[nodiscard]] std::vector<LastTime> same_for_each(const PlayerRecord& record,
                                                  std::span<const EntityId> rackets);
/// The rackets of the newest drop-off, in its order.
[[nodiscard]] std::vector<EntityId> rackets_of_last_drop_off(const PlayerRecord& record);

}  // namespace weavelog
