#pragma once
// Tables that plans are made from: columns by name, cells as numbers and lists, each fault with its place.

#include <charconv>
#include <cmath>
#include <initializer_list>

#include "core/base/csv.h"

namespace weavelog {

class PlanTable {
 public:
  /// Faults: as read_csv(); bad_input (a row that can't be taken, a column of `needed` that is missing).
  [[nodiscard]] static Outcome<PlanTable> read(std::string_view bytes, std::string_view source, std::initializer_list<const char*> needed);

  [[nodiscard]] const std::vector<CsvRow>& rows() const { return table_.rows; }
  [[nodiscard]] bool has(std::string_view name) const { return column(name) != std::string::npos; }
  /// What stands in a row under a column, without spaces around; "" where there is no such column.
  [[nodiscard]] std::string cell(const CsvRow& row, std::string_view column) const;
  /// Its parts, which | divides; none is empty.
  [[nodiscard]] std::vector<std::string> list(const CsvRow& row, std::string_view column) const;
  /// "draw.csv, line 7, column 3 (seed)".
  [[nodiscard]] std::string place(const CsvRow& row, std::string_view column = {}) const;
  /// bad_input at that place.
  [[nodiscard]] tl::unexpected<Fault> wrong(const CsvRow& row, std::string_view column, std::string what, std::string what_to_do) const;

  /// A finite number without anything around it.
  template <class Number>
  [[nodiscard]] static std::optional<Number> number(std::string_view text) {
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    if constexpr (std::is_floating_point_v<Number>)
      if (!std::isfinite(value)) return std::nullopt;
    return value;
  }

 private:
  [[nodiscard]] std::size_t column(std::string_view name) const;

  CsvTable table_;
  std::string source_;
};

}  // namespace weavelog
