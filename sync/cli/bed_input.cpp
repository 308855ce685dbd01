#include "sync/cli/bed_input.h"

#include <cmath>
#include <cstdio>

#include "core/bed/bed_words.h"

namespace weavelog::cli {

void add_bed_options(CLI::App& command, BedArguments& arguments, bool corrected) {
  command.add_option(
      "SETUP", arguments.words,
      "The setup in words: head=100in2 pattern=16x19 string=polyester gauge=1.25 tension=24kg ... (aspect, shape, widening, main_positions,\n"
      "cross_positions, mains, crosses, pre_stretch, weight (g/m), elasticity (N), pieces, temperature, after=2h, contact (mm), off_machine (%),\n"
      "weaving_loss (%), frame, model; crosses_string, crosses_gauge, mains_pre_stretch, ... for one of the two)");
  command.add_option("--setup", arguments.setup, "JSON file with the same names; words change it");
  command.add_option("--outline", arguments.outline, "CSV with x, y: corners of the head in mm, in place of area and aspect");
  command.add_option("--relaxation", arguments.relaxation,
                     "CSV with racket, after, value or hz, and material, pre_stretch, temperature, doubt: own readings over time");
  if (corrected)
    command.add_option("--measured", arguments.measured, "CSV with setup, stiffness or hz, and frame, model, string, doubt: beds measured before");
}

Outcome<ToldSetup> told_setup(const BedArguments& arguments, bool needs_tension) {
  ToldSetup told;
  if (!arguments.setup.empty()) {
    const auto bytes = plan_file(arguments.setup);
    if (!bytes) return fail(bytes.error());
    auto read = setup_in_json(*bytes, arguments.setup);
    if (!read) return fail(read.error());
    told = std::move(*read);
  }
  auto made = setup_in_words(arguments.words, std::move(told));
  if (!made) return fail(made.error());
  if (!arguments.outline.empty()) {
    const auto bytes = plan_file(arguments.outline);
    if (!bytes) return fail(bytes.error());
    auto corners = read_corners(*bytes, arguments.outline);
    if (!corners) return fail(corners.error());
    made->setup.corners = std::move(*corners);
  }
  if (needs_tension && !made->tension_told)
    return fail(FaultCode::bad_input, "the tension is not told", "setup", "give tension=24kg, or mains= and crosses=");
  return made;
}

Outcome<BedReckoner> bed_reckoner(const BedArguments& arguments) {
  if (arguments.relaxation.empty()) return BedReckoner();
  const auto bytes = plan_file(arguments.relaxation);
  if (!bytes) return fail(bytes.error());
  const auto readings = read_relaxation(*bytes, arguments.relaxation);
  if (!readings) return fail(readings.error());
  auto model = RelaxationModel::fitted(*readings);
  if (!model) {
    Fault fault = model.error();
    fault.where = arguments.relaxation + ", " + fault.where;
    return fail(std::move(fault));
  }
  return BedReckoner(std::move(*model));
}

Outcome<BedCorrections> bed_corrections(const BedArguments& arguments, const BedReckoner& reckoner, ReadingAges& ages) {
  if (arguments.measured.empty()) return BedCorrections();
  const auto bytes = plan_file(arguments.measured);
  if (!bytes) return fail(bytes.error());
  const auto readings = read_measured(*bytes, reckoner, arguments.measured);
  if (!readings) return fail(readings.error());
  ages = readings->ages;
  auto fitted = BedCorrections::fitted(readings->readings);
  if (!fitted) {
    Fault fault = fitted.error();
    fault.where = arguments.measured + ", " + fault.where;
    return fail(std::move(fault));
  }
  return fitted;
}

json::array levels_json(const BedCorrection& correction) {
  json::array out;
  for (const BedLevel& level : correction.levels)
    out.push_back(json::object{{"of", name_of(level.of)},
                               {"readings", level.readings},
                               {"percent", 100 * std::expm1(level.log)},
                               {"doubt_percent", 100 * level.sd}});
  return out;
}

json::object ages_json(const ReadingAges& ages) {
  return {{"known", ages.known},
          {"kept_apart", ages.unknown},
          {"taken_as_fresh", ages.assumed},
          {"lost_percent_mean", ages.mean_percent},
          {"lost_percent_most", ages.most_percent}};
}

std::string data_lines(const Language& language, double from_data, const BedCorrection& correction, const ReadingAges& ages) {
  std::string out = data_words(language, from_data, correction.of_all) + "\n";
  for (const std::string& line : {level_words(language, correction), age_words(language, ages)})
    if (!line.empty()) out += line + "\n";
  return out;
}

json::object estimate_json(const BedEstimate& estimate, double by) {
  return {{"value", estimate.value / by}, {"low", estimate.low / by}, {"high", estimate.high / by}};
}

std::string fixed(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

std::string estimate_text(const BedEstimate& estimate, double by, int decimals, const char* unit) {
  return fixed(estimate.value / by, decimals) + " (" + fixed(estimate.low / by, decimals) + " to " + fixed(estimate.high / by, decimals) + ") " +
         unit;
}

json::array doubts_json(const std::vector<BedDoubt>& doubts) {
  json::array out;
  for (const BedDoubt& doubt : doubts) out.push_back(json::object{{"of", doubt.of}, {"percent", 100 * doubt.relative_sd}});
  return out;
}

std::string tension_text(double newtons, Unit unit) {
  const auto told = converted_force({Decimal::rounded(newtons, 6), Unit::newton}, unit, 1);
  return told ? text_of(*told) : fixed(newtons, 1) + " N";
}

}  // namespace weavelog::cli
