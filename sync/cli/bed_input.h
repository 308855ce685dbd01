#pragma once
// What the commands of bed and tone have in common: a setup in words, figures with their bands.

#include "core/bed/setup_words.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {

/// A setup, and what was measured before.
struct BedArguments {
  std::vector<std::string> words;
  std::string setup, outline, relaxation, measured;
};
/// Adds WORDS, --setup, --outline, --relaxation; with `corrected` also --measured.
void add_bed_options(CLI::App& command, BedArguments& arguments, bool corrected = false);
/// The setup told, file first, then words. Faults: those of setup_in_words(); with `needs_tension` bad_input without one.
[[nodiscard]] Outcome<ToldSetup> told_setup(const BedArguments& arguments, bool needs_tension = true);
/// With own readings of relaxation, if there are any.
[[nodiscard]] Outcome<BedReckoner> bed_reckoner(const BedArguments& arguments);
/// Out of --measured; `ages` says what was done about the readings' time since stringing.
[[nodiscard]] Outcome<BedCorrections> bed_corrections(const BedArguments& arguments, const BedReckoner& reckoner, ReadingAges& ages);
/// Readings, correction and its band by level; how old the readings were.
[[nodiscard]] json::array levels_json(const BedCorrection& correction);
[[nodiscard]] json::object ages_json(const ReadingAges& ages);
/// How much is data, by level, and what was done about ages: lines for people.
[[nodiscard]] std::string data_lines(const Language& language, double from_data, const BedCorrection& correction, const ReadingAges& ages);

/// {"value", "low", "high"} in a unit that is `by` of the estimate's.
[[nodiscard]] json::object estimate_json(const BedEstimate& estimate, double by = 1);
/// "36.1 (29.4 to 44.3) N/mm"
[[nodiscard]] std::string estimate_text(const BedEstimate& estimate, double by, int decimals, const char* unit);
[[nodiscard]] json::array doubts_json(const std::vector<BedDoubt>& doubts);
/// "1.234" with so many decimals.
[[nodiscard]] std::string fixed(double value, int decimals);
/// Newtons in the unit that a person speaks, one decimal.
[[nodiscard]] std::string tension_text(double newtons, Unit unit);
constexpr const char* kBandFooter = "Every figure is an estimate; its band (low to high) holds the true one nine times of ten as far as is known.";

}  // namespace weavelog::cli
