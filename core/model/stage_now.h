#pragma once
// Where a job is, out of its stage marks: the newest mark says; two newest ones that did not know of each
// other are a clash.

#include <span>
#include <vector>

#include "core/model/player.h"

namespace weavelog {

/// One mark with the stamp of its entry.
struct PlacedMark {
  EntityId id;
  Stamp stamp;
  StageMark mark;
};

struct StageNow {
  Stage stage = Stage::none;
  std::optional<std::int64_t> at;
  std::string by;
  std::string reason;
  Stamp stamp;                   ///< of the newest mark
  std::vector<EntityId> newest;  ///< marks that no other mark came after, ordered by id
  /// The newest marks do not fit together: different stages, or two people cut out or mounted one racket. A
  /// person looks.
  bool clash = false;
};

/// In any order of marks the same answer.
[[nodiscard]] StageNow stage_now(std::span<const PlacedMark> marks);
/// The mark held by an entity, nothing if it was undone.
[[nodiscard]] std::optional<PlacedMark> placed_mark(const EntityState& state);

/// Ids one after another, 16 bytes each, and back; a rest that is no whole id is left out.
[[nodiscard]] Bytes join_ids(std::span<const EntityId> ids);
[[nodiscard]] std::vector<EntityId> split_ids(ByteView bytes);

/// False if everything that was ever written to the entity is cleared: its making was undone.
[[nodiscard]] bool exists(const EntityState& state);

}  // namespace weavelog
