#pragma once
// Undo: a new entry that reverses one of our own, as long as nobody has built on it.

#include <optional>

#include "core/store/ledger.h"

namespace weavelog {

/// Puts back what the entry replaced and clears what it brought into being. Undoing an undo does the thing
/// again. Faults: not_found; refused (another device's entry; a closed question, which can only be answered
/// anew); conflict (a field was changed since, or something refers to what the entry made).
[[nodiscard]] Outcome<Draft> undo(const Ledger& ledger, const BookId& book, std::uint64_t seq);

/// The sequence number of our newest action in the book that has not been undone; nothing if there is none
/// among the last `look_back`.
[[nodiscard]] std::optional<std::uint64_t> last_action(const Ledger& ledger, const BookId& book,
                                                       std::size_t look_back = 100);

}  // namespace weavelog
