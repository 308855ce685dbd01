#include "core/people/entry_list.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

#include "core/base/text.h"
#include "core/people/country.h"
#include "core/people/person_columns.h"
#include "core/people/table_columns.h"

namespace weavelog {
namespace {

constexpr auto kEntryColumns =
    std::to_array<std::string_view>({"family_name", "given_name", "native_name", "country", "birth_year",
                                     "seed", "entry", "draw", "hand", "tour_number"});
constexpr auto kEntryRequired = std::to_array<std::string_view>({"family_name"});

constexpr auto kEntries = std::to_array<std::pair<std::string_view, EntryVia>>({
    {"", EntryVia::unsaid},
    {"direct", EntryVia::direct},
    {"direct acceptance", EntryVia::direct},
    {"da", EntryVia::direct},
    {"qualifier", EntryVia::qualifier},
    {"q", EntryVia::qualifier},
    {"wild card", EntryVia::wild_card},
    {"wildcard", EntryVia::wild_card},
    {"wc", EntryVia::wild_card},
    {"lucky loser", EntryVia::lucky_loser},
    {"ll", EntryVia::lucky_loser},
    {"alternate", EntryVia::alternate},
    {"alt", EntryVia::alternate},
});

EntryVia via_cell(RowReader& reader) {
  const std::string cell = reader.text("entry");
  const std::string key = search_key(cell);
  for (const auto& [name, value] : kEntries)
    if (name == key && is_blank(cell) == name.empty()) return value;
  reader.expected("entry", cell, "direct, qualifier, wild card or lucky loser");
  return EntryVia::unsaid;
}

EntryListItem read_entry(RowReader& reader) {
  EntryListItem item;
  item.family_name = reader.text("family_name");
  item.given_name = reader.text("given_name");
  item.native_name = reader.text("native_name");
  if (reader.good() && is_blank(item.family_name) && is_blank(item.native_name))
    reader.expected("family_name", item.family_name, "a name");
  item.country = country_cell(reader);
  item.birth_year = birth_year_cell(reader);
  item.seed = reader.whole("seed", 1, 999);
  item.via = via_cell(reader);
  item.draw = reader.text("draw");
  item.hand = hand_cell(reader);
  item.tour_number = reader.text("tour_number", 40);
  return item;
}

std::string draw_key(const EntryListItem& item) {
  return search_key(item.draw);
}

std::string named(const EntryListRow& row) {
  return "line " + std::to_string(row.line) + " (" +
         shortened(row.item.family_name.empty() ? row.item.native_name : row.item.family_name, 40) + ")";
}

/// Two rows of one draw with one folded name and country whose birth years do not differ. Across draws that
/// is one player twice.
void look_for_doubled_names(EntryList& list, std::string_view source) {
  std::map<std::string, std::vector<const EntryListRow*>> seen;
  for (const auto& row : list.rows) {
    const auto& item = row.item;
    auto& same =
        seen[draw_key(item) + '\n' + search_key(item.family_name) + '\n' + search_key(item.given_name) +
             '\n' + (item.family_name.empty() ? search_key(item.native_name) : "") + '\n' +
             country_key(item.country)];
    const auto twin = std::find_if(same.begin(), same.end(), [&](const EntryListRow* other) {
      return !other->item.birth_year || !item.birth_year || *other->item.birth_year == *item.birth_year;
    });
    if (twin != same.end()) {
      list.doubts.push_back({FaultCode::bad_input,
                             "the same name, country and birth year as " + named(**twin),
                             csv_place(source, row.line), "if it is one player, leave one of the two out"});
    }
    same.push_back(&row);
  }
}

void look_for_odd_seeds(EntryList& list, std::string_view source) {
  std::map<std::string, std::int64_t> players;
  for (const auto& row : list.rows) ++players[draw_key(row.item)];
  std::map<std::pair<std::string, std::int64_t>, const EntryListRow*> seen;
  for (const auto& row : list.rows) {
    if (!row.item.seed) continue;
    const auto seed = *row.item.seed;
    if (seed > players[draw_key(row.item)]) {
      list.doubts.push_back({FaultCode::bad_input,
                             "seed " + std::to_string(seed) + " in a draw of " +
                                 std::to_string(players[draw_key(row.item)]) + " players",
                             csv_place(source, row.line, 0, "seed"), "check the seed"});
    }
    const auto [first, fresh] = seen.try_emplace({draw_key(row.item), seed}, &row);
    if (!fresh) {
      list.doubts.push_back({FaultCode::bad_input,
                             "seed " + std::to_string(seed) + " again, after " + named(*first->second),
                             csv_place(source, row.line, 0, "seed"), "check both seeds"});
    }
  }
}

}  // namespace

Outcome<EntryList> read_entry_list(std::string_view bytes, const CsvOptions& options,
                                   std::string_view source) {
  auto table = read_csv(bytes, options, source);
  if (!table) return fail(table.error());
  const auto columns = TableColumns::of(*table, kEntryColumns, kEntryRequired, source);
  if (!columns) return fail(columns.error());

  EntryList list;
  list.faults.assign(table->faults.begin(), table->faults.end());
  list.ignored_columns = columns->ignored();
  for (const auto& row : table->rows) {
    RowReader reader(*columns, row, source);
    EntryListItem item = read_entry(reader);
    if (reader.good()) {
      list.rows.push_back({row.line, std::move(item)});
    } else {
      list.faults.insert(list.faults.end(), reader.faults().begin(), reader.faults().end());
    }
  }
  look_for_doubled_names(list, source);
  look_for_odd_seeds(list, source);
  return list;
}

}  // namespace weavelog
