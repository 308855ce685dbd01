#pragma once
// The subcommands of `quality`, one family a file, and `calibrate`. They work on files alone.

#include "core/quality/line_fit.h"
#include "core/bed/one_age.h"
#include "core/quality/readings.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {

void add_column_command(CLI::App& quality, FolderWork& chosen);   // quality column
void add_chart_commands(CLI::App& quality, FolderWork& chosen);   // quality charts, capability, variance
void add_watch_commands(CLI::App& quality, FolderWork& chosen);   // quality signals, causes, power

/// A number with all digits that it takes to read it back.
[[nodiscard]] std::string all_digits(double value);
/// With so many decimals.
[[nodiscard]] std::string with_decimals(double value, int decimals);
[[nodiscard]] json::value number_or_null(const std::optional<double>& value);
[[nodiscard]] json::object interval_json(const Interval& interval);

/// What all commands on readings take.
struct ReadingsArguments {
  std::string file, against, zone = "UTC";
  double scatter = 0;
};
void add_readings_options(CLI::App& command, ReadingsArguments& arguments);
/// Readings with what they differ by from what was to be expected.
struct RoomReadings {
  ReadingTable table;
  std::vector<Deviation> deviations;
  Scatter scatter;  ///< as given (of 0 readings), or as the readings say
  std::optional<double> one_age;  ///< s, to which readings were brought
  ReadingAges ages; ///< what was done about the time since stringing
};
/// Faults: those of plan_file(), read_strung() and deviations_of().
[[nodiscard]] Outcome<RoomReadings> readings_in(const ReadingsArguments& arguments);
/// {"percent", "readings"}: 0 readings where it is assumed or given.
[[nodiscard]] json::object scatter_json(const Scatter& scatter);
/// "scatter of a reading 1.8 % (estimate out of 84 readings)".
[[nodiscard]] std::string scatter_text(const Scatter& scatter, bool given);
/// What was done about the readings' time since stringing; "" where nobody tells it.
[[nodiscard]] std::string one_age_text(const ReadingAges& ages);
[[nodiscard]] json::object one_age_json(const RoomReadings& room);
/// What a reading is called: its racket, else its number from 1.
[[nodiscard]] std::string racket_name(const ReadingTable& table, std::size_t at);

}  // namespace weavelog::cli
