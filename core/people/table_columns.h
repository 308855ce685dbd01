#pragma once
// Columns of an imported table by name, and cells read with a fault that says line, column and what was
// expected.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/csv.h"

namespace weavelog {

/// Which column of the file is which of ours. Names match in any case, with spaces or hyphens for
/// underscores, in any order.
class TableColumns {
 public:
  /// Fails if a known column is there twice or one of `required` is missing.
  [[nodiscard]] static Outcome<TableColumns> of(const CsvTable& table,
                                                std::span<const std::string_view> known,
                                                std::span<const std::string_view> required,
                                                std::string_view source);

  /// Names in the header that are not known, as written.
  [[nodiscard]] const std::vector<std::string>& ignored() const { return ignored_; }
  /// 0-based; nothing if the file has no such column.
  [[nodiscard]] std::optional<std::size_t> find(std::string_view name) const;

 private:
  std::vector<std::pair<std::string, std::size_t>> places_;
  std::vector<std::string> ignored_;
};

/// Reads the cells of one row and gathers every fault in it.
class RowReader {
 public:
  RowReader(const TableColumns& columns, const CsvRow& row, std::string_view source)
      : columns_(&columns), row_(&row), source_(source) {}

  /// Cleaned (normal form C, trimmed), "" if there is no such column. At most `max` bytes, no control
  /// characters.
  std::string text(std::string_view column, std::size_t max = 200);
  /// A whole number from `low` to `high`; nothing if the cell is empty.
  std::optional<std::int64_t> whole(std::string_view column, std::int64_t low, std::int64_t high);
  /// Notes that a cell is not what was expected.
  void expected(std::string_view column, std::string_view found, std::string_view expected);

  [[nodiscard]] std::string place(std::string_view column) const;
  [[nodiscard]] bool good() const { return faults_.empty(); }
  [[nodiscard]] const std::vector<Fault>& faults() const { return faults_; }

 private:
  const TableColumns* columns_;
  const CsvRow* row_;
  std::string source_;
  std::vector<Fault> faults_;
};

/// "a, b and c", for messages.
[[nodiscard]] std::string listed(std::span<const std::string_view> names);

}  // namespace weavelog
