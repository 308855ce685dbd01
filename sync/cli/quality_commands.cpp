#include "sync/cli/quality_commands.h"

#include <charconv>
#include <cmath>
#include <cstdio>

#include "core/bed/bed_words.h"

namespace weavelog::cli {

std::string all_digits(double value) {
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, value).ptr;
  return {text, end};
}

std::string with_decimals(double value, int decimals) {
  char text[400];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

json::value number_or_null(const std::optional<double>& value) { return value && std::isfinite(*value) ? json::value(*value) : json::value(nullptr); }

json::object interval_json(const Interval& interval) { return {{"low", interval.low}, {"high", interval.high}}; }

void add_readings_options(CLI::App& command, ReadingsArguments& arguments) {
  command
      .add_option("file", arguments.file,
                  "CSV or JSON with reading (with its unit), and as known: racket, wanted, setup, stringer, machine, frame, kind, string, at,\n"
                  "after (time since stringing: 20min, 2h), material, pre_stretch, temperature")
      ->required();
  command.add_option("--against", arguments.against, "What readings are held against; default: for each reading the best that is there")
      ->check(CLI::IsMember({"wanted", "kind", "setup"}));
  command.add_option("--scatter", arguments.scatter, "Scatter of one reading in per cent; default: as the readings say, 1.75 under 20 of them")
      ->check(CLI::Range(0.01, 50.0));
  command.add_option("--zone", arguments.zone, "Zone in which `at` is told")->capture_default_str();
}

Outcome<RoomReadings> readings_in(const ReadingsArguments& arguments) {
  const auto bytes = plan_file(arguments.file);
  if (!bytes) return fail(bytes.error());
  auto table = read_strung(*bytes, arguments.file, arguments.zone);
  if (!table) return fail(table.error());
  const auto one_age = one_age_of(*table);
  const auto ages = bring_to_one_age(*table);
  if (!ages) return fail(ages.error());
  DeviationOptions options;
  options.scatter = arguments.scatter;
  if (arguments.against == "wanted") options.only = Against::wanted;
  if (arguments.against == "kind") options.only = Against::kind;
  if (arguments.against == "setup") options.only = Against::setup;
  auto deviations = deviations_of(*table, options);
  if (!deviations) return fail(deviations.error());
  RoomReadings out{std::move(*table), std::move(*deviations), {}, one_age, *ages};
  out.scatter = arguments.scatter > 0 ? Scatter{arguments.scatter, 0} : scatter_of(out.table.readings, out.deviations);
  return out;
}

json::object scatter_json(const Scatter& scatter) { return {{"percent", scatter.percent}, {"readings", scatter.readings}}; }

std::string scatter_text(const Scatter& scatter, bool given) {
  return "scatter of a reading " + with_decimals(scatter.percent, 2) + " % (" +
         (given ? std::string("as given") : scatter.readings == 0 ? std::string("assumed: too few readings") :
                                                                    "estimate out of " + std::to_string(scatter.readings) + " readings") +
         ")\n";
}

std::string one_age_text(const ReadingAges& ages) {
  const std::string words = one_age_words(Language(), ages);
  return words.empty() ? words : words + "\n";
}

json::object one_age_json(const RoomReadings& room) {
  const ReadingAges& ages = room.ages;
  return {{"brought_to_s", number_or_null(room.one_age)},
          {"known", ages.known},
          {"kept_apart", ages.unknown},
          {"taken_as_of_one_age", ages.assumed},
          {"lost_percent_mean", ages.mean_percent},
          {"lost_percent_most", ages.most_percent}};
}

std::string racket_name(const ReadingTable& table, std::size_t at) {
  return table.readings[at].racket.empty() ? "reading " + std::to_string(at + 1) : table.readings[at].racket;
}

void add_quality_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* quality = app.add_subcommand("quality", "Readings of rackets: charts, signals, causes, variance, capability; plain statistics: without --data");
  quality->require_subcommand(1);
  for (const auto add : {add_column_command, add_chart_commands, add_watch_commands}) add(*quality, chosen);
}

}  // namespace weavelog::cli
