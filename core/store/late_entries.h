#pragma once
// Entries that are on disk while what follows from them is not yet: read again, where nobody has it in memory.

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <functional>
#include <span>

#include "core/base/digest.h"
#include "core/base/id.h"

namespace weavelog {

/// An entry's place in its chain.
struct Link {
  std::int64_t book = 0, author = 0;  ///< row numbers
  std::uint64_t seq = 0;
  std::int64_t position = 0;
  Digest hash{};  ///< of the chain up to there
};

/// Visits them in the order in which they were written. The body is valid during the visit, which may store links and rows, not entries.
/// Throws SQLite's exception, also where a chain has a gap.
void each_late_entry(SQLite::Database& db, const std::function<void(const Link& link, const BookId& book, const AuthorId& author,
                                                                    std::span<const std::uint8_t> body)>& visit);
/// Stores it.
void store_link(SQLite::Statement& into, const Link& link);
inline constexpr const char* kStoreLink = "INSERT INTO link(book, author, seq, position, hash) VALUES(?,?,?,?,?)";
/// For a late entry: a backup has links already to what nobody has applied.
inline constexpr const char* kStoreLateLink = "INSERT OR IGNORE INTO link(book, author, seq, position, hash) VALUES(?,?,?,?,?)";
/// That there is such a chain, once for its first link.
inline constexpr const char* kBeginChain = "INSERT OR IGNORE INTO chain(book, author) VALUES(?,?)";
void begin_chain(SQLite::Statement& into, const Link& link);

}  // namespace weavelog
