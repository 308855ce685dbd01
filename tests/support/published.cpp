#include "tests/support/published.h"

#include <boost/json/src.hpp>
#include <stdexcept>

#include "core/base/csv.h"

namespace weavelog::test {

std::string published_text(const std::string& file) {
  auto text = read_text_file(std::string(WEAVELOG_FIXTURES) + "/published/" + file, 16 * 1024 * 1024);
  if (!text) throw std::runtime_error(text.error().message());
  return std::move(*text);
}

boost::json::value published_json(const std::string& file) {
  return boost::json::parse(published_text(file));
}

std::vector<std::unordered_map<std::string, std::string>> published_rows(const std::string& file) {
  const auto table = read_csv(published_text(file), {}, file);
  if (!table) throw std::runtime_error(table.error().message());
  if (!table->faults.empty()) throw std::runtime_error(table->faults.front().message());
  std::vector<std::unordered_map<std::string, std::string>> out;
  for (const auto& row : table->rows) {
    auto& record = out.emplace_back();
    for (std::size_t i = 0; i < row.fields.size(); ++i) record[table->header[i]] = row.fields[i];
  }
  return out;
}

std::string text_in(const boost::json::value& object, std::string_view key) {
  return std::string(object.at(key).as_string());
}

}  // namespace weavelog::test
