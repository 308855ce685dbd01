#pragma once
// Which books may cross to another device, by what the player agreed to.

#include "core/log/registry.h"
#include "core/store/ledger.h"

namespace weavelog {

/// May this book go to the room whose event book is `room` (none: to anybody else)? Kit books never do; event
/// books and books of kinds of a newer version do. A player book does unless the player has withdrawn, or
/// said "this room" and the exchange is not that of the event at which this was said (where none is noted,
/// nowhere). "Events entered" needs no rule here: only players of the entry list are offered for ticking at
/// arrival. Several answers at once: the most careful one counts, until a person closes the question. Costs
/// two indexed look-ups.
[[nodiscard]] bool may_cross(const Ledger& ledger, const BookId& book, BookKind kind,
                             const BookId& room = {});

}  // namespace weavelog
