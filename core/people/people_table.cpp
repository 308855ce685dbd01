#include "core/people/people_table.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/people/person_columns.h"

namespace weavelog {
namespace {

constexpr auto kPeopleColumns = std::to_array<std::string_view>(
    {"id", "family_name", "given_name", "native_name", "also_known_as", "country", "birth_year", "hand", "tour_number", "rackets", "strings"});
constexpr auto kPeopleRequired = std::to_array<std::string_view>({"family_name"});
constexpr std::size_t kLongCell = 1000;

std::vector<std::string> parted(std::string_view text) {
  std::vector<std::string> out;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find_first_of(";|"), text.size());
    if (const auto part = trimmed(text.substr(0, end)); !part.empty()) out.emplace_back(part);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return out;
}

PeopleRow read_person(RowReader& reader) {
  PeopleRow row;
  row.id = reader.text("id");
  PersonFacts& facts = row.facts;
  facts.family = reader.text("family_name");
  facts.given = reader.text("given_name");
  facts.native = reader.text("native_name");
  if (reader.good() && is_blank(facts.family) && is_blank(facts.native)) reader.expected("family_name", facts.family, "a name");
  facts.also_known_as = parted(reader.text("also_known_as", kLongCell));
  facts.country = country_cell(reader);
  facts.birth_year = birth_year_cell(reader);
  facts.hand = hand_cell(reader);
  facts.tour_number = reader.text("tour_number", 40);
  facts.rackets = parted(reader.text("rackets", kLongCell));
  facts.strings = parted(reader.text("strings", kLongCell));
  return row;
}

}  // namespace

std::string PeopleRow::name() const {
  if (facts.family.empty()) return facts.native;
  return facts.given.empty() ? facts.family : facts.family + ", " + facts.given;
}

Outcome<PeopleTable> read_people(std::string_view bytes, const CsvOptions& options, std::string_view source) {
  auto table = read_csv(bytes, options, source);
  if (!table) return fail(table.error());
  const auto columns = TableColumns::of(*table, kPeopleColumns, kPeopleRequired, source);
  if (!columns) return fail(columns.error());
  PeopleTable out;
  out.faults.assign(table->faults.begin(), table->faults.end());
  out.ignored_columns = columns->ignored();
  for (const auto& row : table->rows) {
    RowReader reader(*columns, row, source);
    PeopleRow person = read_person(reader);
    person.line = row.line;
    if (reader.good()) {
      out.rows.push_back(std::move(person));
    } else {
      out.faults.insert(out.faults.end(), reader.faults().begin(), reader.faults().end());
    }
  }
  if (out.rows.empty() && out.faults.empty())
    return fail(FaultCode::bad_input, "there are no persons below the header line", std::string(source), "give a file with a line for each person");
  return out;
}

}  // namespace weavelog
