#pragma once
// Ids that say of what kind their entity is. The log can't forbid a faulty device to write to somebody's entity as to one of another kind; an id that
// its maker bound to a kind makes that idle on every replica, in whatever order the writes come.

#include <optional>

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/log/registry.h"

namespace weavelog {

/// Kinds below this can be bound: there are twelve bits for them.
inline constexpr EntityKind kKindsBound{4096};

/// A fresh id: a UUID version 8 (RFC 9562, section 5.8) laid out as make_id's are, with the kind in the twelve bits after the version and a constant in the
/// 22 after the variant, by which it is told from ids whose bits are a digest's; forty chance bits are left. Those of one kind, thread and millisecond sort as
/// they were made. Kinds from kKindsBound on get a version 7, which says nothing of them.
[[nodiscard]] EntityId make_entity_id(EntityKind kind, UnixMs now);
/// The kind to which the id is bound; nothing if to none, as all that were made before there were such ids.
[[nodiscard]] std::optional<EntityKind> kind_bound_to(const EntityId& id);

}  // namespace weavelog
