#pragma once
// Roles weigh what is new. What somebody may no longer say, or never might, is taken all the same where others like it of theirs are here already:
// those came by whoever may bring them, and a chain with a hole would hold up all that follows.

#include <cstdint>
#include <functional>

#include "core/store/ledger.h"

namespace weavelog {

/// The newest of the author's entries that are here, up to `head`, of which `may` says that its action is not the bringer's to write; 0: none.
[[nodiscard]] std::uint64_t said_such(const Ledger& ledger, const BookId& book, const AuthorId& author, std::uint64_t head, const std::function<bool(ActionKind)>& may);

}  // namespace weavelog
