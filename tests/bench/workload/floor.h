#pragma once
// The floor: the workload in plain SQLite with a row for every field, its history and its current state, and
// the same durability; no books, no signatures, no causality, no search.

#include <sqlite3.h>

#include <filesystem>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/bytes.h"
#include "tests/bench/workload/operations.h"

namespace weavelog::bench {

class Floor {
 public:
  /// WAL, synchronous=FULL. Throws std::runtime_error on any fault of SQLite, as all of its functions do.
  explicit Floor(const std::filesystem::path& file);
  ~Floor();
  Floor(const Floor&) = delete;
  Floor& operator=(const Floor&) = delete;

  /// One action in one durable transaction; newer (time, device) wins.
  void apply(const Action& action);
  void finish() {}  ///< all is written
  /// The rows of the history after that place, packed with a dictionary of words.
  [[nodiscard]] Bytes changes_since(std::int64_t place) const;
  [[nodiscard]] std::int64_t place() const;
  /// Takes in what changes_since() gave, in one durable transaction.
  void take(ByteView packed);
  [[nodiscard]] std::string digest(const std::set<std::string>& left_out = {}) const;
  /// True if both answers stand in the history after that place.
  [[nodiscard]] bool holds_both(const Contended& contended, std::int64_t after) const;

 private:
  class Query;
  void check(int result) const;
  void run(const char* sql) const;
  [[nodiscard]] sqlite3_stmt* prepared(const char* sql);
  void step(sqlite3_stmt* statement) const;
  /// The field's number; a name begins with the type of its values.
  [[nodiscard]] std::int64_t field(const std::string& typed_name);
  void put(std::int64_t time, int device, std::string_view record, std::int64_t field,
           std::string_view value);
  [[nodiscard]] std::string typed(sqlite3_stmt* row, int column, std::int64_t field) const;

  sqlite3* db_ = nullptr;
  sqlite3_stmt *begin_ = nullptr, *commit_ = nullptr, *log_ = nullptr, *now_ = nullptr, *name_ = nullptr;
  std::vector<std::string> names_;
  std::unordered_map<std::string, std::int64_t> numbers_;
};

}  // namespace weavelog::bench
