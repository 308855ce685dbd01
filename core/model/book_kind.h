#pragma once
// Which kind of book an entity belongs to.

#include "core/model/fields.h"

namespace weavelog {

/// By the numbers of kinds: those below the event's are a player's, those from 40 to 59 the kit's.
[[nodiscard]] constexpr BookKind book_kind_of(EntityKind kind) {
  const auto number = static_cast<std::uint32_t>(kind);
  if (kind < kEvent) return kPlayerBook;
  return number >= 40 && number < 60 ? kKitBook : kEventBook;
}

}  // namespace weavelog
