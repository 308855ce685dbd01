// Readings of a machine against a gauge out of a table.

#include <algorithm>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/plan/day_tables.h"
#include "core/quality/calibration.h"
#include "core/quality/measured.h"
#include "core/quality/readings.h"

namespace weavelog {

Outcome<GaugeTable> read_gauge(std::string_view bytes, std::string_view source, const std::string& zone) {
  const auto text = table_text(bytes, source);
  if (!text) return fail(text.error());
  const auto table = PlanTable::read(*text, source, {"set", "pulled"});
  if (!table) return fail(table.error());
  GaugeTable out;
  std::size_t timed = 0;
  for (const CsvRow& row : table->rows()) {
    GaugeReading one;
    for (const char* column : {"set", "pulled"}) {
      const auto value = measured(*table, row, column, "unit");
      if (!value) return fail(value.error());
      if (value->unit != Unit::none && !is_force(value->unit))
        return table->wrong(row, column, "a pull is a force, this is in " + std::string(symbol_of(value->unit)), "write kg, lb or N");
      const auto brought = in_unit(*table, row, column, *value, out.unit, out.readings.empty() && std::string_view(column) == "set");
      if (!brought) return fail(brought.error());
      (std::string_view(column) == "set" ? one.set : one.pulled) = *brought;
    }
    if (const auto plausible = plausible_reading(one.pulled, one.set); !plausible)
      return table->wrong(row, "pulled", plausible.error().what, "check the units of both");
    one.machine = table->cell(row, "machine");
    const auto at = moment_of(*table, row, zone);
    if (!at) return fail(at.error());
    one.at = *at;
    if (one.at) ++timed;
    if (timed != 0 && timed != out.readings.size() + 1)
      return table->wrong(row, "at", "some rows say when they were read and some do not", "say it in all rows, or in none");
    one.place = table->place(row, "pulled");
    out.readings.push_back(std::move(one));
  }
  if (out.readings.empty()) return fail(FaultCode::bad_input, "there are no readings", std::string(source), "give a row for each pull");
  std::stable_sort(out.readings.begin(), out.readings.end(), [](const GaugeReading& a, const GaugeReading& b) { return a.at < b.at; });
  return out;
}

}  // namespace weavelog
