#pragma once
// Which kind of book an entity belongs to.

#include "core/model/fields.h"

namespace weavelog {

/// By the numbers of kinds: those below the event's are a player's, those from 40 on the kit's.
[[nodiscard]] constexpr BookKind book_kind_of(EntityKind kind) {
  if (kind < kEvent) return kPlayerBook;
  return static_cast<std::uint32_t>(kind) < 40 ? kEventBook : kKitBook;
}

}  // namespace weavelog
