#include "core/model/stored_entities.h"

#include "core/store/database.h"

namespace weavelog {

std::vector<EntityState> stored_entities(Connection& db, const BookId& book, EntityKind kind) {
  std::vector<EntityState> out;
  SQLite::Statement& query = db.statement("SELECT e.id, e.state FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? AND e.kind=? ORDER BY e.id");
  bind_blob(query, 1, book.bytes);
  query.bind(2, static_cast<int>(kind));
  while (query.executeStep()) {
    const auto id = EntityId::from_bytes(blob_of(query, 0));
    auto state = id ? decode_state(book, *id, blob_of(query, 1)) : fail(FaultCode::damaged, "an identifier of the wrong length", "entity table");
    if (state) out.push_back(std::move(*state));
  }
  return out;
}

}  // namespace weavelog
