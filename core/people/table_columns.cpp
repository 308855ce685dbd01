#include "core/people/table_columns.h"

#include <algorithm>

#include "core/base/decimal.h"
#include "core/base/text.h"

namespace weavelog {
namespace {

std::string column_key(std::string_view name) {
  std::string out = search_key(name);
  std::replace(out.begin(), out.end(), ' ', '_');
  return out;
}

/// No line breaks or other control characters inside.
bool is_one_line(std::string_view text) {
  return std::none_of(text.begin(), text.end(),
                      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

}  // namespace

std::string listed(std::span<const std::string_view> names) {
  std::string out;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) out += i + 1 == names.size() ? " and " : ", ";
    out += names[i];
  }
  return out;
}

Outcome<TableColumns> TableColumns::of(const CsvTable& table, std::span<const std::string_view> known,
                                       std::span<const std::string_view> required, std::string_view source) {
  TableColumns out;
  for (std::size_t i = 0; i < table.header.size(); ++i) {
    const std::string key = column_key(table.header[i]);
    if (std::find(known.begin(), known.end(), key) == known.end()) {
      if (!is_blank(table.header[i])) out.ignored_.push_back(shortened(trimmed(table.header[i]), 40));
    } else if (out.find(key)) {
      return fail(FaultCode::bad_input, "there are two columns named " + key,
                  std::string(source) + (source.empty() ? "" : ", ") + "column " + std::to_string(i + 1),
                  "rename or remove one of them");
    } else {
      out.places_.emplace_back(key, i);
    }
  }
  for (const auto& name : required) {
    if (out.find(name)) continue;
    return fail(FaultCode::bad_input, "the header line has no column " + std::string(name),
                std::string(source), "the first line has to name the columns; known are " + listed(known));
  }
  return out;
}

std::optional<std::size_t> TableColumns::find(std::string_view name) const {
  for (const auto& [known, place] : places_)
    if (known == name) return place;
  return std::nullopt;
}

std::string RowReader::place(std::string_view column) const {
  const auto at = columns_->find(column);
  return csv_place(source_, row_->line, at ? *at + 1 : 0, column);
}

void RowReader::expected(std::string_view column, std::string_view found, std::string_view expected) {
  faults_.push_back({FaultCode::bad_input, "\"" + shortened(found, 40) + "\" is not " + std::string(expected),
                     place(column), "correct this cell and bring the list in again"});
}

std::string RowReader::text(std::string_view column, std::size_t max) {
  const auto at = columns_->find(column);
  if (!at) return {};
  auto text = clean_text(row_->fields.at(*at), place(column));
  if (!text) {
    faults_.push_back(text.error());
    return {};
  }
  if (text->size() > max || !is_one_line(*text)) {
    expected(column, is_one_line(*text) ? *text : "text with line breaks",
             "one line of at most " + std::to_string(max) + " bytes");
    return {};
  }
  return std::move(*text);
}

std::optional<std::int64_t> RowReader::whole(std::string_view column, std::int64_t low, std::int64_t high) {
  const std::string cell = text(column);
  if (cell.empty()) return std::nullopt;
  const auto number = Decimal::parse(cell);
  if (number && number->scale == 0 && number->mantissa >= low && number->mantissa <= high)
    return number->mantissa;
  expected(column, cell, "a whole number from " + std::to_string(low) + " to " + std::to_string(high));
  return std::nullopt;
}

}  // namespace weavelog
