#pragma once
// Who is on the event's entry list and nowhere else on this device yet, and who of it a player is.

#include <string>
#include <vector>

#include "core/people/arrival.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// Those of whose name every typed word begins a word, and what makes players of them, a line each; "" for nobody, for nothing typed,
/// and without an event.
[[nodiscard]] std::string entered_text(Context& context, const std::string& typed);

/// The entries, not linked yet, that a player of the list is: all that are known to be (one in each draw),
/// else the one that a person must have meant by ticking.
[[nodiscard]] std::vector<EntityId> entries_of(const std::vector<ArrivalLine>& lines, const BookId& book);

/// What the entry list was told after a hand-over, and a line that says so; "" where there was nothing to say.
struct EntriesLinked {
  std::vector<EntityId> entries;
  std::string text;
};
/// Whoever hands rackets over at an event is that entry of its list, said once for the whole room: where it is known beyond doubt, or where nobody
/// else may be meant and the names are the same. Where that is not so, the line says how a person can say it. A failure costs the link only and is told.
[[nodiscard]] EntriesLinked link_entered(Context& context, const BookId& event, const BookId& player);

}  // namespace weavelog::cli
