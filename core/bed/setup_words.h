#pragma once
// A setup told in words, NAME=VALUE, as command lines and files have them: DEVELOPERS.md, "A bed in words".

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/units.h"
#include "core/bed/corrections.h"
#include "core/bed/relaxation.h"
#include "core/bed/setup.h"

namespace weavelog {

/// What was said, with the unit in which tensions were.
struct ToldSetup {
  BedSetup setup;
  Unit unit = Unit::kilogram_force;
  BedWhose whose;             ///< frame, model, and the strings as kind and gauge
  bool tension_told = false;  ///< none of the figures holds without one
  bool crosses_told = false;
  bool after_told = false;  ///< the time since stringing
};

/// Takes one word ("gauge=1.25", "crosses=24 kg") over what was told before. A name of strings without
/// "mains_" or "crosses_" before it is of both; `mains` alone is the tension of both until `crosses` is told.
/// Faults, with the name: bad_input (a name that is not known, a value that is none, a unit that does not go with it).
[[nodiscard]] Outcome<> tell(ToldSetup& told, std::string_view word);
[[nodiscard]] Outcome<ToldSetup> setup_in_words(std::span<const std::string> words, ToldSetup before = {});
/// The same out of a JSON object of names with texts or numbers. Faults: also bad_input (no such object).
[[nodiscard]] Outcome<ToldSetup> setup_in_json(std::string_view json, std::string_view source = {});
/// Corners out of CSV with x and y, mm. Faults, with the place: those of read_csv(); bad_input.
[[nodiscard]] Outcome<std::vector<BedPoint>> read_corners(std::string_view bytes, std::string_view source = {});

/// "52 lb", "24.5kg", "1.25": a number with an optional unit. Faults: bad_input.
[[nodiscard]] Outcome<Quantity> quantity_in(std::string_view text, std::string_view what);
/// "90" s, "90s", "20min", "2h", "3d". Faults: bad_input.
[[nodiscard]] Outcome<double> seconds_in(std::string_view text, std::string_view what);
/// A stiffness in N/m: "34 N/mm", "34 kg/cm", "190 lb/in"; the unit is needed. Faults: bad_input (another unit; outside 8 to 120 N/mm).
[[nodiscard]] Outcome<double> stiffness_in(std::string_view text, std::string_view what);

/// Readings of one thing over time: racket, after, value (proportional to tension) or hz, and material, pre_stretch, temperature, doubt (percent).
/// Faults, with the place: those of read_csv(); bad_input.
[[nodiscard]] Outcome<std::vector<RelaxationReading>> read_relaxation(std::string_view bytes, std::string_view source = {});
/// Measured beds: setup (words, divided by spaces or ;) with stiffness (with unit) or hz, and frame, model, string, doubt (percent); each beside what
/// is reckoned for it at its own time since stringing (`after`). Where some rows tell that time, those that do not are kept apart; where none does,
/// all are taken as read just off the machine. Faults, with the place: those of read_csv(); bad_input.
struct MeasuredRows {
  std::vector<BedReading> readings;
  ReadingAges ages;
};
[[nodiscard]] Outcome<MeasuredRows> read_measured(std::string_view bytes, const BedReckoner& reckoner, std::string_view source = {});

}  // namespace weavelog
