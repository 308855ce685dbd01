#pragma once
// The charts of a room's readings, as screens and commands show them, and the parts of their variance.

#include "core/quality/charts.h"
#include "core/quality/readings.h"
#include "core/quality/statistics.h"
#include "core/quality/watch.h"

namespace weavelog {

/// What a chart is of: one for each setup (in the reading's own unit), machine, stringer or frame (deviations in per cent), or all rackets together.
enum class ChartBy { setup, machine, stringer, frame, room };
/// "setup", "machine", ...
[[nodiscard]] std::string_view name_of(ChartBy by);
[[nodiscard]] std::optional<ChartBy> chart_by(std::string_view name);

struct RoomChartOptions {
  RuleSet rules = RuleSet::nelson;
  bool own = false;  ///< limits of per-cent charts about their own mean by their own moving ranges, in place of about 0 by the room's scatter
  double scatter = 0;  ///< per cent; 0: as the readings say
};

struct RoomChart {
  ChartBy by = ChartBy::room;
  std::string name;
  bool in_percent = true;
  std::vector<std::size_t> readings;  ///< places in the table
  std::vector<double> values;         ///< in the reading's unit or per cent (divided by their doubt, so that limits are one line)
  std::optional<IndividualsLimits> limits;
  std::optional<Fault> no_limits;  ///< why there are none
  std::vector<RuleSignal> signals;  ///< `at` is a place in values
  std::vector<double> average, average_limit;  ///< the moving average of the watch and how far from the centre it may be
};
/// In order of names. Readings without that name, or with nothing to compare them with, are on no chart.
[[nodiscard]] std::vector<RoomChart> room_charts(const ReadingTable& table, std::span<const Deviation> deviations, ChartBy by,
                                                 const RoomChartOptions& options = {});

/// How much of the variance of deviations one name explains, or two where the second lies inside the first.
struct VarianceSplit {
  std::string upper, lower;  ///< columns; lower "" of a one-way split
  std::optional<OneWay> one_way;
  std::optional<Nested> nested;
  std::optional<Fault> why_not;
};
/// One-way by stringer, machine and frame; nested frame in stringer, machine in stringer, frame in machine.
[[nodiscard]] std::vector<VarianceSplit> variance_splits(const ReadingTable& table, std::span<const Deviation> deviations);

/// What stands under a chart's name in a reading.
[[nodiscard]] const std::string& named(const StrungReading& reading, ChartBy by);

}  // namespace weavelog
