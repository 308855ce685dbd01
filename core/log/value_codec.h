#pragma once
// How values, dots and ids stand in entries and in entity rows. Shared by entry.cpp, cell.cpp and the player card (sync/carry).

#include <unordered_map>

#include "core/base/salted_hash.h"
#include "core/log/archive.h"
#include "core/log/entry.h"

namespace weavelog {

/// Authors are named by their place in a table that stands before the writes; place 0 is given by the context.
class AuthorTable {
 public:
  /// The place of an author, adding it if it is new. Small tables are looked through, which is fastest; large ones must not be, because
  /// an entry from outside can name tens of thousands.
  std::uint64_t place(const AuthorId& author);
  [[nodiscard]] const AuthorId& at(std::uint64_t place) const;  ///< ArchiveError if there is no such place
  [[nodiscard]] const std::vector<AuthorId>& all() const { return authors_; }
  void add(const AuthorId& author) { authors_.push_back(author); }

 private:
  static constexpr std::size_t kLookedThrough = 16;
  std::vector<AuthorId> authors_;
  std::unordered_map<AuthorId, std::size_t, SaltedIdHash> places_;  ///< of all, once there are more than that
};

/// One head byte (kind x 4 + shape), then by shape: 0 nothing, 1 a varint, 2 a length and bytes, 3 sixteen bytes. A kind that
/// is not known is so kept whole. Throws std::logic_error on a value that can't be written (an UnknownValue made by hand).
void save_value(OutArchive& ar, const Value& value);
[[nodiscard]] Value load_value(InArchive& ar);

}  // namespace weavelog
