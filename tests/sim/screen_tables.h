#pragma once
// What the tables for screens say, and the open questions: of a device as a whole, and book by book.

#include <map>
#include <optional>
#include <set>
#include <string>

#include "core/store/ledger.h"

namespace weavelog::sim {

struct TablesDigest {
  Digest all{};
  std::map<BookId, Digest> books;
  bool operator==(const TablesDigest&) const = default;
};
/// Whatever the numbers of the rows are.
[[nodiscard]] TablesDigest tables_digest(const Ledger& ledger);
/// The rows of one book, or of all.
[[nodiscard]] std::set<std::string> table_rows(const Ledger& ledger, const std::optional<BookId>& book = {});
/// For people: a row that only one of them has.
[[nodiscard]] std::string difference(const std::set<std::string>& first, const std::set<std::string>& second);

}  // namespace weavelog::sim
