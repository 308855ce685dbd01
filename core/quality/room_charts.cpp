#include "core/quality/room_charts.h"

#include <array>
#include <map>

namespace weavelog {
namespace {

void signal(RoomChart& chart, const RoomChartOptions& options) {
  if (!chart.limits) return;
  std::vector<double> z;
  Ewma average(WatchDesign{}.average);
  for (const double value : chart.values) {
    z.push_back((value - chart.limits->centre) / chart.limits->sigma);
    average.add(z.back());
    chart.average.push_back(chart.limits->centre + average.value() * chart.limits->sigma);
    chart.average_limit.push_back(average.limit() * chart.limits->sigma);
  }
  chart.signals = rule_signals(z, options.rules);
}

}  // namespace

std::string_view name_of(ChartBy by) {
  static constexpr std::array<std::string_view, 5> names{"setup", "machine", "stringer", "frame", "room"};
  return names[static_cast<std::size_t>(by)];
}

std::optional<ChartBy> chart_by(std::string_view name) {
  for (const ChartBy by : {ChartBy::setup, ChartBy::machine, ChartBy::stringer, ChartBy::frame, ChartBy::room})
    if (name_of(by) == name) return by;
  return std::nullopt;
}

const std::string& named(const StrungReading& reading, ChartBy by) {
  static const std::string room = "room";
  switch (by) {
    case ChartBy::setup: return reading.setup;
    case ChartBy::machine: return reading.machine;
    case ChartBy::stringer: return reading.stringer;
    case ChartBy::frame: return reading.frame;
    case ChartBy::room: break;
  }
  return room;
}

std::vector<RoomChart> room_charts(const ReadingTable& table, std::span<const Deviation> deviations, ChartBy by, const RoomChartOptions& options) {
  const Scatter scatter = options.scatter > 0 ? Scatter{options.scatter, 0} : scatter_of(table.readings, deviations);
  std::map<std::string, RoomChart> charts;
  for (std::size_t i = 0; i < table.readings.size(); ++i) {
    const std::string& name = named(table.readings[i], by);
    if (name.empty() || (by != ChartBy::setup && deviations[i].against == Against::nothing)) continue;
    RoomChart& chart = charts[name];
    chart.readings.push_back(i);
    chart.values.push_back(by == ChartBy::setup ? table.readings[i].value : deviations[i].percent / deviations[i].doubt);
  }
  std::vector<RoomChart> out;
  for (auto& one : charts) {
    RoomChart& chart = one.second;
    chart.by = by;
    chart.name = one.first;
    chart.in_percent = by != ChartBy::setup;
    if (chart.in_percent && !options.own) {
      IndividualsLimits limits;
      limits.count = chart.values.size();
      limits.sigma = scatter.percent;
      limits.lower = -3 * scatter.percent, limits.upper = 3 * scatter.percent;
      limits.range_mean = scatter.percent * IndividualsOptions{}.d2;
      limits.range_upper = 3.266531919 * limits.range_mean;
      chart.limits = limits;
    } else if (auto limits = individuals_limits(chart.values)) {
      chart.limits = *limits;
    } else {
      chart.no_limits = limits.error();
    }
    signal(chart, options);
    out.push_back(std::move(chart));
  }
  return out;
}

std::vector<VarianceSplit> variance_splits(const ReadingTable& table, std::span<const Deviation> deviations) {
  std::vector<VarianceSplit> out;
  const auto use = [&](std::size_t i, ChartBy by) { return deviations[i].against != Against::nothing && !named(table.readings[i], by).empty(); };
  for (const ChartBy by : {ChartBy::stringer, ChartBy::machine, ChartBy::frame}) {
    std::map<std::string, std::vector<double>> groups;
    for (std::size_t i = 0; i < table.readings.size(); ++i)
      if (use(i, by)) groups[named(table.readings[i], by)].push_back(deviations[i].percent);
    std::vector<std::vector<double>> numbers;
    for (auto& group : groups) numbers.push_back(std::move(group.second));
    VarianceSplit split{std::string(name_of(by)), "", {}, {}, {}};
    if (auto table_of = one_way(numbers)) {
      split.one_way = *table_of;
    } else {
      split.why_not = table_of.error();
    }
    out.push_back(std::move(split));
  }
  static constexpr std::pair<ChartBy, ChartBy> pairs[] = {
      {ChartBy::stringer, ChartBy::frame}, {ChartBy::stringer, ChartBy::machine}, {ChartBy::machine, ChartBy::frame}};
  for (const auto& pair : pairs) {
    std::map<std::string, std::map<std::string, std::vector<double>>> groups;
    for (std::size_t i = 0; i < table.readings.size(); ++i)
      if (use(i, pair.first) && use(i, pair.second))
        groups[named(table.readings[i], pair.first)][named(table.readings[i], pair.second)].push_back(deviations[i].percent);
    std::vector<std::vector<std::vector<double>>> numbers;
    for (auto& upper : groups) {
      numbers.emplace_back();
      for (auto& lower : upper.second) numbers.back().push_back(std::move(lower.second));
    }
    VarianceSplit split{std::string(name_of(pair.first)), std::string(name_of(pair.second)), {}, {}, {}};
    if (auto parts = nested(numbers)) {
      split.nested = *parts;
    } else {
      split.why_not = parts.error();
    }
    out.push_back(std::move(split));
  }
  return out;
}

}  // namespace weavelog
