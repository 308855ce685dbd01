#pragma once
// What a book's state must be, worked out once more from its entries by other code than the product's: every
// answer that no entry replaces, and nothing else.

#include <map>
#include <set>
#include <vector>

#include "core/store/ledger.h"

namespace weavelog::sim {

struct BookEntry {
  AuthorId author;
  Entry entry;
  Digest body{};
};

/// Every entry of a book as the ledger holds it.
[[nodiscard]] std::vector<BookEntry> entries_of(const Ledger& ledger, const BookId& book);

using Place = std::pair<EntityId, FieldTag>;
using Answers = std::map<Dot, Value>;
/// For every field that was ever written: the answers that stand.
[[nodiscard]] std::map<Place, Answers> answers_of(const std::vector<BookEntry>& entries);

/// Throws a Violation where the ledger's entity rows or open questions are not what those answers give.
void compare_with(const Ledger& ledger, const BookId& book, const std::map<Place, Answers>& answers,
                  const std::string& device);

}  // namespace weavelog::sim
