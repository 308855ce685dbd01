#pragma once
// The reference: what a program would do that stores the same fields in SQLite with the same durability and
// nothing else. One row a field; no history, no causality, no search.

#include <sqlite3.h>

#include <filesystem>
#include <span>

#include "core/log/entry.h"

namespace weavelog::bench {

class PlainStore {
 public:
  /// WAL, synchronous=FULL. Throws std::runtime_error on any fault of SQLite.
  explicit PlainStore(const std::filesystem::path& file);
  ~PlainStore();
  PlainStore(const PlainStore&) = delete;
  PlainStore& operator=(const PlainStore&) = delete;

  /// One durable transaction.
  void store(const BookId& book, std::span<const Write> writes, Stamp stamp);

 private:
  void check(int result) const;
  void run(const char* sql) const;
  void bind(int index, const Value& value);

  sqlite3* db_ = nullptr;
  sqlite3_stmt* put_ = nullptr;
  sqlite3_stmt* begin_ = nullptr;
  sqlite3_stmt* commit_ = nullptr;
};

}  // namespace weavelog::bench
