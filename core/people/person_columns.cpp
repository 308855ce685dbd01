#include "core/people/person_columns.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/people/country.h"

namespace weavelog {
namespace {

constexpr auto kHands = std::to_array<std::pair<std::string_view, Hand>>({
    {"", Hand::unsaid},
    {"right", Hand::right},
    {"right handed", Hand::right},
    {"r", Hand::right},
    {"left", Hand::left},
    {"left handed", Hand::left},
    {"l", Hand::left},
});

}  // namespace

std::string country_cell(RowReader& reader) {
  std::string out = reader.text("country");
  if (!out.empty() && !is_country_code(out)) reader.expected("country", out, "a country of three letters, such as POR");
  std::transform(out.begin(), out.end(), out.begin(), [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  return out;
}

std::optional<std::int64_t> birth_year_cell(RowReader& reader) {
  return reader.whole("birth_year", 1900, 2099);
}

Hand hand_cell(RowReader& reader) {
  const std::string cell = reader.text("hand");
  const std::string key = search_key(cell);
  for (const auto& [name, value] : kHands)
    if (name == key && is_blank(cell) == name.empty()) return value;
  reader.expected("hand", cell, "right or left");
  return Hand::unsaid;
}

}  // namespace weavelog
