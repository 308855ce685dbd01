#pragma once
// Readings of strung rackets, and what each differs from what was to be expected, in per cent, so that racket after racket of different
// setups stand on one chart.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/units.h"
#include "core/quality/written_number.h"

namespace weavelog {

/// One racket as it was read. Everything but the value may be unknown.
struct StrungReading {
  double value = 0;
  std::optional<double> wanted;  ///< what it should read; of a force: what was to be pulled
  std::string racket, setup, stringer, machine, frame, string;
  std::string kind;              ///< frame model, pattern: what makes readings at one tension comparable
  std::optional<UnixMs> at;
  std::string place;             ///< where it stands in its file, for faults
  std::optional<double> after = {};  ///< s from coming off the machine to the reading
  std::string material = {};         ///< of the strings
  double pre_stretch = 0, temperature = 20;  ///< per cent, C
  double aged_percent = 0;  ///< by which the value was raised because of its age (core/bed/one_age.h)
  double aged_sd = 0;       ///< per cent, doubt of that
  bool age_unknown = false; ///< others tell their age and this one does not: it is held against nothing
};

struct ReadingTable {
  std::vector<StrungReading> readings;  ///< in order of time
  Unit unit = Unit::none;               ///< of the values
  Unit wanted_unit = Unit::none;
};

/// Columns `reading`, and `wanted`, `unit`, `wanted_unit`, `racket`, `setup`, `stringer`, `machine`, `frame`, `kind`, `string`, `at`, `after` (`20min`),
/// `material`, `pre_stretch`, `temperature`; CSV, or JSON as a list of objects. A number may have its unit behind it; all of a column have one (N/mm and kg/cm, or kg, lb and N, are made one). Rows are in
/// order of time where `at` does not say more. Faults: bad_input with the place (no number, not above 0, units that do not go together, a
/// reading that stands apart from what was wanted as far as another unit would).
[[nodiscard]] Outcome<ReadingTable> read_strung(std::string_view bytes, std::string_view source, const std::string& zone = "UTC");
/// A reading that is this far from what was expected (a factor of 1.5 either way) is none of this racket: names the unit that it may be in.
/// Fault: bad_input.
[[nodiscard]] Outcome<> plausible_reading(double value, double expected);

/// What a reading is held against.
enum class Against { nothing, wanted, kind, setup };
struct Deviation {
  Against against = Against::nothing;
  double percent = 0;  ///< reading / expected - 1
  double doubt = 1;    ///< how many times as uncertain as one reading it is, because what it is held against is uncertain too
  std::size_t others = 0;  ///< readings that what it is held against is made of
};
struct DeviationOptions {
  std::optional<Against> only;  ///< hold against this alone
  double scatter = 0;           ///< per cent of one reading; an earlier reading of a setup that is off by three of it does not count; 0: the usual
};
/// Fewer earlier readings of a setup, or readings of a kind, than this say nothing.
inline constexpr std::size_t kFewestOfSetup = 3, kFewestOfKind = 5;
/// One a reading. Against what was wanted where that is in the reading's own measure; else, where a force was wanted, reading per force against
/// the median of its kind (an absolute stiffness from a tension is good to perhaps 20 per cent, ratios are far better); else against the mean
/// of the setup's earlier readings, in which what is always wrong is not seen. The doubt of what was corrected for age is in theirs. Faults: those of plausible_reading(), with the place.
[[nodiscard]] Outcome<std::vector<Deviation>> deviations_of(const ReadingTable& table, const DeviationOptions& options = {});

/// The scatter of one reading in per cent.
struct Scatter {
  double percent = 0;
  std::size_t readings = 0;  ///< that it was made of; 0: the usual one
};
/// Before there are readings: the middle of what such gauges and rooms are assumed to have, 1.5 to 2 per cent (an assumption, no source).
inline constexpr double kUsualScatter = 1.75;
/// From the median moving range of the readings of each stringer at each machine, which neither a shift nor some bad rackets move much
/// (Wheeler and Chambers, Understanding Statistical Process Control, 1992; from memory); the usual one below kSettledLimits ranges.
[[nodiscard]] Scatter scatter_of(std::span<const StrungReading> readings, std::span<const Deviation> deviations);

}  // namespace weavelog
