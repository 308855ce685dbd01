#include "core/plan/bench_tables.h"

#include "core/base/text.h"
#include "core/plan/plan_table.h"

namespace weavelog {
namespace {

constexpr int kLastDay = 60;

/// "1-4|6": days from 1, each named or in a range.
Outcome<std::vector<int>> days_in(const PlanTable& table, const CsvRow& row) {
  std::vector<int> out;
  for (const std::string& part : table.list(row, "days")) {
    const auto dash = part.find('-');
    const auto first = PlanTable::number<int>(trimmed(std::string_view(part).substr(0, dash)));
    const auto last = dash == std::string::npos ? first : PlanTable::number<int>(trimmed(std::string_view(part).substr(dash + 1)));
    if (!first || !last || *first < 1 || *last < *first || *last > kLastDay)
      return table.wrong(row, "days", "'" + part + "' are no days", "count days from 1, as in 1-4|6");
    for (int day = *first; day <= *last; ++day) out.push_back(day);
  }
  return out;
}

/// A number that is more than nothing; none if the cell is empty.
Outcome<std::optional<double>> amount_in(const PlanTable& table, const CsvRow& row, std::string_view column) {
  const std::string text = table.cell(row, column);
  if (text.empty()) return std::optional<double>();
  const auto number = PlanTable::number<double>(text);
  if (!number || *number <= 0 || *number > 10'000)
    return table.wrong(row, column, "'" + text + "' is no number of rackets", "write a number such as 24, or nothing");
  return number;
}

Outcome<std::string> needed_in(const PlanTable& table, const CsvRow& row, std::string_view column) {
  std::string text = table.cell(row, column);
  if (text.empty()) return table.wrong(row, column, "nobody is named", "write a name, or take the row out");
  return text;
}

}  // namespace

Outcome<std::vector<HomeBench>> read_benches(std::string_view bytes, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"stringer"});
  if (!table) return fail(table.error());
  std::vector<HomeBench> out;
  for (const CsvRow& row : table->rows()) {
    const auto stringer = needed_in(*table, row, "stringer");
    if (!stringer) return fail(stringer.error());
    HomeBench bench;
    bench.stringer = *stringer;
    bench.machine = table->cell(row, "machine");
    bench.name = table->cell(row, "bench");
    if (bench.name.empty()) bench.name = bench.machine.empty() ? bench.stringer : bench.stringer + " / " + bench.machine;
    bench.skills = table->list(row, "skills");
    bench.languages = table->list(row, "languages");
    const auto most = amount_in(*table, row, "most");
    if (!most) return fail(most.error());
    bench.most = *most;
    const auto days = days_in(*table, row);
    if (!days) return fail(days.error());
    bench.days = *days;
    for (const HomeBench& other : out)
      if (search_key(other.name) == search_key(bench.name))
        return table->wrong(row, "stringer", "two benches are called '" + bench.name + "'", "name the bench or the machine");
    out.push_back(std::move(bench));
  }
  return out;
}

Outcome<std::vector<BenchPerson>> read_bench_people(std::string_view bytes, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"player"});
  if (!table) return fail(table.error());
  std::vector<BenchPerson> out;
  for (const CsvRow& row : table->rows()) {
    const auto player = needed_in(*table, row, "player");
    if (!player) return fail(player.error());
    BenchPerson person;
    person.name = *player;
    const auto rackets = amount_in(*table, row, "rackets");
    if (!rackets) return fail(rackets.error());
    if (*rackets) person.rackets = **rackets;
    person.skills = table->list(row, "skills");
    person.languages = table->list(row, "languages");
    person.before = table->cell(row, "before");
    for (const BenchPerson& other : out)
      if (search_key(other.name) == search_key(person.name))
        return table->wrong(row, "player", "'" + person.name + "' comes twice", "leave one of the two rows");
    out.push_back(std::move(person));
  }
  return out;
}

Outcome<std::vector<BenchWish>> read_bench_wishes(std::string_view bytes, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"player", "wish", "with"});
  if (!table) return fail(table.error());
  std::vector<BenchWish> out;
  for (const CsvRow& row : table->rows()) {
    const auto player = needed_in(*table, row, "player");
    if (!player) return fail(player.error());
    const auto with = needed_in(*table, row, "with");
    if (!with) return fail(with.error());
    const std::string wish = search_key(table->cell(row, "wish"));
    if (wish != "only" && wish != "never") return table->wrong(row, "wish", "'" + table->cell(row, "wish") + "' is no wish", "write only or never");
    out.push_back({*player, wish == "never", *with, table->place(row)});
  }
  return out;
}

Outcome<std::vector<BenchPin>> read_bench_pins(std::string_view bytes, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"player", "bench"});
  if (!table) return fail(table.error());
  std::vector<BenchPin> out;
  for (const CsvRow& row : table->rows()) {
    const auto player = needed_in(*table, row, "player");
    if (!player) return fail(player.error());
    const auto bench = needed_in(*table, row, "bench");
    if (!bench) return fail(bench.error());
    out.push_back({*player, *bench, table->place(row)});
  }
  return out;
}

}  // namespace weavelog
