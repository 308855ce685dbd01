#pragma once
// What an entry replaces stands before it in the ledger, nearly always. Where a number was given twice, two entries can wait for each other; then
// one of them replaces a value that comes after it, and that value must not stand again when the book is made from its entries.

#include <set>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/log/cell.h"

namespace weavelog {

/// For the entries of one book, asked for each of them in the order in which they are held.
class ReplacedBefore {
 public:
  /// Places in the entry's writes whose values an entry before it replaced.
  [[nodiscard]] std::vector<std::uint32_t> of(const AuthorId& author, const Entry& entry);

 private:
  std::unordered_map<AuthorId, std::uint64_t, SaltedIdHash> heads_;
  std::set<std::tuple<EntityId, FieldTag, Dot>> early_;
};

/// Takes the value that this write gave out of the state.
void drop_value(EntityState& state, FieldTag tag, const Dot& dot);

}  // namespace weavelog
