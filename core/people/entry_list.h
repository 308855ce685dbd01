#pragma once
// The entry list of an event out of a CSV file.
//
// Columns, in any order and case: family_name, given_name, native_name (the whole name in its own script),
// country (three letters), birth_year, seed, entry (direct, qualifier, wild card, lucky loser; or DA, Q, WC,
// LL), draw, hand (right, left), tour_number. Only family_name is required. Others are reported as ignored.

#include <string>
#include <string_view>
#include <vector>

#include "core/base/csv.h"
#include "core/model/event.h"

namespace weavelog {

struct EntryListRow {
  std::size_t line = 0;
  EntryListItem item;
};

struct EntryList {
  std::vector<EntryListRow> rows;
  /// Why rows were left out: line, column, what was expected. A row may have several.
  std::vector<Fault> faults;
  /// Rows that came in and need a look: doubled names, doubled or impossible seeds.
  std::vector<Fault> doubts;
  std::vector<std::string> ignored_columns;
};

/// Fails as a whole only where read_csv() does or if the header does not name the columns.
[[nodiscard]] Outcome<EntryList> read_entry_list(std::string_view bytes, const CsvOptions& options = {},
                                                 std::string_view source = {});

}  // namespace weavelog
