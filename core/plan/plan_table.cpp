#include "core/plan/plan_table.h"

#include "core/base/text.h"

namespace weavelog {

Outcome<PlanTable> PlanTable::read(std::string_view bytes, std::string_view source, std::initializer_list<const char*> needed) {
  PlanTable out;
  out.source_ = source;
  auto table = read_csv(bytes, {}, source);
  if (!table) return fail(table.error());
  if (!table->faults.empty()) return fail(table->faults.front());
  out.table_ = std::move(*table);
  for (const char* name : needed)
    if (out.column(name) == std::string::npos)
      return fail(FaultCode::bad_input, std::string("the column ") + name + " is missing", csv_place(source, 1),
                  "name it in the first line of the table");
  return out;
}

std::size_t PlanTable::column(std::string_view name) const {
  for (std::size_t i = 0; i < table_.header.size(); ++i)
    if (search_key(table_.header[i]) == search_key(name)) return i;
  return std::string::npos;
}

std::string PlanTable::cell(const CsvRow& row, std::string_view name) const {
  const std::size_t at = column(name);
  return at == std::string::npos ? std::string() : std::string(trimmed(row.fields[at]));
}

std::vector<std::string> PlanTable::list(const CsvRow& row, std::string_view name) const {
  std::vector<std::string> out;
  const std::string text = cell(row, name);
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find('|', from), text.size());
    if (const auto part = trimmed(std::string_view(text).substr(from, to - from)); !part.empty()) out.emplace_back(part);
    from = to + 1;
  }
  return out;
}

std::string PlanTable::place(const CsvRow& row, std::string_view name) const {
  const std::size_t at = name.empty() ? std::string::npos : column(name);
  return at == std::string::npos ? csv_place(source_, row.line) : csv_place(source_, row.line, at + 1, name);
}

tl::unexpected<Fault> PlanTable::wrong(const CsvRow& row, std::string_view name, std::string what, std::string what_to_do) const {
  return fail(FaultCode::bad_input, std::move(what), place(row, name), std::move(what_to_do));
}

}  // namespace weavelog
