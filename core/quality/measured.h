#pragma once
// Cells that hold a number with its unit, and moments, as the tables of this room have them.

#include "core/base/clock.h"
#include "core/base/units.h"
#include "core/plan/plan_table.h"

namespace weavelog {

struct Measured {
  double value = 0;  ///< from 0.001 to 1,000,000
  Unit unit = Unit::none;
};

[[nodiscard]] bool is_force(Unit unit);
/// How many of `to` one of `from` is; nothing if they do not measure the same.
[[nodiscard]] std::optional<double> unit_factor(Unit from, Unit to);
/// "25.3", "25.3 kg", "25.3kg/cm": a number and what follows it, or what stands in `unit_column`. Faults: bad_input with the place.
[[nodiscard]] Outcome<Measured> measured(const PlanTable& table, const CsvRow& row, const char* column, const char* unit_column);
/// Brings a number to `unit`, which the first one sets. Faults: bad_input with the place.
[[nodiscard]] Outcome<double> in_unit(const PlanTable& table, const CsvRow& row, const char* column, const Measured& one, Unit& unit, bool first);
/// What stands in the column `at`, told in a zone; none where it is empty. Faults: bad_input with the place.
[[nodiscard]] Outcome<std::optional<UnixMs>> moment_of(const PlanTable& table, const CsvRow& row, const std::string& zone);

}  // namespace weavelog
