#pragma once
// Persons out of a CSV file, to be matched with those of another.
//
// Columns, in any order and case: id (whatever tells the row), family_name, given_name, native_name (the whole name in its own script),
// also_known_as (other names, "Family, Given" or a family name alone, parted by ; or |), country (three letters, Olympic or ISO), birth_year,
// hand (right, left), tour_number, rackets, strings (parted by ; or |). family_name or native_name has to be said. Others are ignored.

#include <string>
#include <string_view>
#include <vector>

#include "core/base/csv.h"
#include "core/people/person_facts.h"

namespace weavelog {

struct PeopleRow {
  std::size_t line = 0;  ///< of the file
  std::string id;        ///< "" if there is no such column
  PersonFacts facts;

  /// "Family, Given", or the native name.
  [[nodiscard]] std::string name() const;
};

struct PeopleTable {
  std::vector<PeopleRow> rows;
  /// Why rows were left out: line, column, what was expected.
  std::vector<Fault> faults;
  std::vector<std::string> ignored_columns;
};

/// Fails as a whole where read_csv() does, if the header does not name the columns, and if there are no rows.
[[nodiscard]] Outcome<PeopleTable> read_people(std::string_view bytes, const CsvOptions& options = {}, std::string_view source = {});

}  // namespace weavelog
