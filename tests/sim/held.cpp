#include "tests/sim/held.h"

#include <algorithm>

#include "core/store/database.h"

namespace weavelog::sim {
namespace {

std::vector<HeldEntry> entries_by(const Ledger& ledger, const char* sql) {
  std::vector<HeldEntry> out;
  ledger.read([&](Connection& db) {
    auto& query = db.statement(sql);
    while (query.executeStep()) {
      HeldEntry held;
      held.key.book = BookId::from_bytes(blob_of(query, 0)).value();
      held.key.author = AuthorId::from_bytes(blob_of(query, 1)).value();
      held.key.seq = static_cast<std::uint64_t>(query.getColumn(2).getInt64());
      const ByteView body = blob_of(query, 3), key = blob_of(query, 4);
      held.body = digest_of(body);
      held.bytes.assign(body.begin(), body.end());
      std::copy(key.begin(), key.end(), held.author_key.begin());
      held.written_here = query.getColumn(5).getInt() == 0;
      held.reason = query.getColumn(6).getString();
      out.push_back(std::move(held));
    }
  });
  return out;
}

}  // namespace

std::vector<HeldEntry> all_entries(const Ledger& ledger) {
  return entries_by(ledger,
                    "SELECT b.id, a.id, e.seq, e.body, a.key, e.source, '' FROM entry e JOIN author a ON a.n=e.author JOIN book b ON b.n=e.book");
}

std::vector<HeldEntry> all_aside(const Ledger& ledger) {
  return entries_by(ledger,
                    "SELECT q.book, q.author, q.seq, q.body, coalesce(a.key, zeroblob(32)), 1, q.reason FROM quarantine q LEFT JOIN author a ON "
                    "a.id=q.author");
}

}  // namespace weavelog::sim
