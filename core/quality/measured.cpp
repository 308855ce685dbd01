#include "core/quality/measured.h"

#include <algorithm>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/quality/written_number.h"

namespace weavelog {

namespace {

constexpr double kLeastReading = 1e-3, kLargestReading = 1e6;

bool is_stiffness(Unit unit) { return unit == Unit::newton_per_millimetre || unit == Unit::kilogram_force_per_centimetre; }

}  // namespace

bool is_force(Unit unit) { return unit == Unit::kilogram_force || unit == Unit::pound_force || unit == Unit::newton; }

std::optional<double> unit_factor(Unit from, Unit to) {
  if (from == to) return 1.0;
  if (is_force(from) && is_force(to)) return *in_newtons({Decimal{1, 0}, from}) / *in_newtons({Decimal{1, 0}, to});
  if (is_stiffness(from) && is_stiffness(to)) {
    const double kilogram_per_centimetre = *in_newtons({Decimal{1, 0}, Unit::kilogram_force}) / 10;  // in N/mm
    return from == Unit::kilogram_force_per_centimetre ? kilogram_per_centimetre : 1 / kilogram_per_centimetre;
  }
  return std::nullopt;
}

Outcome<Measured> measured(const PlanTable& table, const CsvRow& row, const char* column, const char* unit_column) {
  const std::string text = table.cell(row, column);
  const std::size_t end = std::min(text.find_first_not_of("0123456789.,+-eE"), text.size());
  const auto number = WrittenNumber::parse(std::string_view(text).substr(0, end));
  if (!number) {
    const bool nothing = end == 0;
    return table.wrong(row, column, nothing ? "'" + shortened(text, 60) + "' is no number" : number.error().what, number.error().what_to_do);
  }
  std::string unit(trimmed(std::string_view(text).substr(end)));
  if (unit.empty()) unit = table.cell(row, unit_column);
  Measured out{number->to_double(), Unit::none};
  if (!unit.empty()) {
    const auto known = unit_from(unit);
    if (!known) return table.wrong(row, column, "'" + shortened(unit, 30) + "' is no unit that is known here", "write kg, lb, N, N/mm, kg/cm or Hz");
    out.unit = *known;
  }
  if (!(out.value >= kLeastReading && out.value <= kLargestReading))
    return table.wrong(row, column, "'" + shortened(text, 40) + "' is nothing that a gauge reads", "write what it read, above 0, or leave the row out");
  return out;
}

Outcome<double> in_unit(const PlanTable& table, const CsvRow& row, const char* column, const Measured& one, Unit& unit, bool first) {
  if (first) unit = one.unit;
  const auto by = unit_factor(one.unit, unit);
  if (!by)
    return table.wrong(row, column,
                       "this is in " + (one.unit == Unit::none ? std::string("no unit") : std::string(symbol_of(one.unit))) + ", the rows before are in " +
                           (unit == Unit::none ? std::string("none") : std::string(symbol_of(unit))),
                       "write the unit of each, in one measure");
  return one.value * *by;
}

Outcome<std::optional<UnixMs>> moment_of(const PlanTable& table, const CsvRow& row, const std::string& zone) {
  const std::string at = table.cell(row, "at");
  if (at.empty()) return std::optional<UnixMs>();
  // A day alone is its noon, so that it is that day in any zone.
  const auto moment = moment_from(is_iso_date(at) ? at + "T12:00" : at, zone, 0);
  if (!moment || at.find('-') == std::string::npos) return table.wrong(row, "at", "'" + shortened(at, 40) + "' is no moment", "write 2031-05-26T14:05");
  return std::optional<UnixMs>(*moment);
}

}  // namespace weavelog
