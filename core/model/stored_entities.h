#pragma once
// Entities of one kind in one book out of the ledger's rows, for tables that can't be brought up to date from what changed alone.

#include <vector>

#include "core/store/ledger.h"

namespace weavelog {

/// Ordered by id. Rows that can't be read are left out: Ledger::verify tells of them.
[[nodiscard]] std::vector<EntityState> stored_entities(Connection& db, const BookId& book, EntityKind kind);

}  // namespace weavelog
