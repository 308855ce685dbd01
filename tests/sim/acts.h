#pragma once
// What a person does at a device: the draft that the desk's own functions make of it.

#include <optional>
#include <string>

#include "tests/sim/device.h"
#include "tests/sim/plan.h"

namespace weavelog::sim {

struct Act {
  Draft draft;
  std::string what;  ///< for the trace
  /// Set when a question is closed: what the person saw, and so what may be closed.
  std::optional<OpenQuestion> closes;
};

/// Stands in every name and note that people write into a player's book, and nowhere else: so it can be
/// looked for once the book is forgotten.
[[nodiscard]] std::string mark_of(const BookId& book);

/// The books that a device holds, of one kind if given, ordered by number.
[[nodiscard]] std::vector<BookId> books_at(Device& device, std::optional<BookKind> kind = {});

/// True for kinds that this file makes drafts of.
[[nodiscard]] bool is_act(EventKind kind);
[[nodiscard]] inline bool is_at_the_bench(EventKind kind) { return kind >= EventKind::inspect && kind <= EventKind::names; }
[[nodiscard]] inline bool is_in_the_room(EventKind kind) { return kind >= EventKind::money && kind <= EventKind::draws; }
/// Nothing if there is nothing to do (no question open, no player known), or the desk refuses. Reads only;
/// may throw SQLite's exception.
[[nodiscard]] std::optional<Act> act_of(EventKind kind, Device& device, Random& random);

}  // namespace weavelog::sim
