// quality charts, capability, variance.

#include <algorithm>
#include <cmath>

#include "core/base/csv.h"
#include "core/quality/room_charts.h"
#include "sync/cli/quality_commands.h"

namespace weavelog::cli {
namespace {

struct ChartArguments {
  ReadingsArguments readings;
  std::string by = "machine", rules = "nelson", csv, only;
  bool own = false;
};

std::string unit_of(const RoomChart& chart, const ReadingTable& table) { return chart.in_percent ? "%" : std::string(symbol_of(table.unit)); }

json::object limits_json(const IndividualsLimits& limits) {
  return {{"count", limits.count}, {"centre", limits.centre}, {"sigma", limits.sigma}, {"lower", limits.lower},
          {"upper", limits.upper}, {"range_mean", limits.range_mean}, {"range_upper", limits.range_upper}};
}

Outcome<Ending> charts(const Settings& settings, const ChartArguments& arguments) {
  const auto room = readings_in(arguments.readings);
  if (!room) return fail(room.error());
  RoomChartOptions options;
  options.rules = arguments.rules == "nelson" ? RuleSet::nelson : RuleSet::western_electric;
  options.own = arguments.own;
  options.scatter = room->scatter.percent;
  auto all = room_charts(room->table, room->deviations, *chart_by(arguments.by), options);
  if (!arguments.only.empty()) std::erase_if(all, [&](const RoomChart& chart) { return chart.name != arguments.only; });
  if (all.empty())
    return fail(arguments.only.empty() ? FaultCode::bad_input : FaultCode::not_found, "there is no such chart", arguments.readings.file,
                "give readings with " + arguments.by + ", and what they are held against (wanted, kind or setup)");
  json::array list;
  CsvWriter csv;
  csv.row({"chart", "name", "racket", "value", "unit", "centre", "lower", "upper", "average", "average_limit", "rules"});
  std::string text = scatter_text(room->scatter, arguments.readings.scatter > 0) + one_age_text(room->ages);
  for (const RoomChart& chart : all) {
    const std::string unit = unit_of(chart, room->table);
    json::array points;
    text += std::string(name_of(chart.by)) + " " + chart.name + ": " + std::to_string(chart.values.size()) + " readings";
    if (chart.limits) {
      text += ", centre " + with_decimals(chart.limits->centre, 2) + " " + unit + ", limits " + with_decimals(chart.limits->lower, 2) + " to " +
              with_decimals(chart.limits->upper, 2) + " " + unit + " (estimates)";
      if (chart.by == ChartBy::setup && chart.limits->count < kSettledLimits) text += ", not settled below " + std::to_string(kSettledLimits) + " readings";
    } else {
      text += ", no limits: " + chart.no_limits->message();
    }
    text += "\n";
    for (std::size_t i = 0; i < chart.values.size(); ++i) {
      std::string rules;
      json::array numbers;
      for (const RuleSignal& signal : chart.signals)
        if (signal.at == i) {
          rules += (rules.empty() ? "" : "|") + std::to_string(signal.rule);
          numbers.push_back(signal.rule);
        }
      const bool average_out = chart.limits && std::fabs(chart.average[i] - chart.limits->centre) > chart.average_limit[i];
      json::object point{{"racket", racket_name(room->table, chart.readings[i])}, {"value", chart.values[i]}, {"rules", std::move(numbers)}};
      if (chart.limits) point["average"] = chart.average[i], point["average_limit"] = chart.average_limit[i], point["average_out"] = average_out;
      points.push_back(std::move(point));
      const auto cell = [&](bool there, double value) { return there ? all_digits(value) : std::string(); };
      const bool limited = chart.limits.has_value();
      csv.row({std::string(name_of(chart.by)), chart.name, racket_name(room->table, chart.readings[i]), all_digits(chart.values[i]), unit,
               cell(limited, limited ? chart.limits->centre : 0), cell(limited, limited ? chart.limits->lower : 0),
               cell(limited, limited ? chart.limits->upper : 0), cell(limited, limited ? chart.average[i] : 0),
               cell(limited, limited ? chart.average_limit[i] : 0), rules});
      if (!rules.empty() || average_out)
        text += "  " + racket_name(room->table, chart.readings[i]) + ": " + with_decimals(chart.values[i], 2) + " " + unit +
                (rules.empty() ? "" : ", rule " + rules) + (average_out ? ", moving average beyond its limit" : "") + "\n";
    }
    json::object one{{"by", name_of(chart.by)}, {"name", chart.name}, {"unit", unit}, {"points", std::move(points)}};
    if (chart.limits) one["limits"] = limits_json(*chart.limits);
    if (chart.no_limits) one["no_limits"] = fault_json(*chart.no_limits);
    list.push_back(std::move(one));
  }
  const Context context(settings);
  if (!arguments.csv.empty())
    if (auto written = context.deliver(csv.text(), arguments.csv); !written) return fail(written.error());
  context.answer(json::object{{"scatter", scatter_json(room->scatter)}, {"ages", one_age_json(*room)}, {"rules", arguments.rules}, {"charts", std::move(list)}}, text);
  return Ending::done;
}

struct CapabilityArguments {
  ReadingsArguments readings;
  double tolerance = 0;
};

Outcome<Ending> capability(const Settings& settings, const CapabilityArguments& arguments) {
  const auto room = readings_in(arguments.readings);
  if (!room) return fail(room.error());
  std::vector<double> values;
  for (const Deviation& one : room->deviations)
    if (one.against != Against::nothing) values.push_back(one.percent);
  const auto found = capability_of(values, -arguments.tolerance, arguments.tolerance);
  if (!found) {
    Fault fault = found.error();
    if (fault.where.empty()) fault.where = arguments.readings.file;
    return fail(std::move(fault));
  }
  json::object document{{"count", found->count},
                        {"mean", found->mean},
                        {"short_term", found->short_term},
                        {"overall", found->overall},
                        {"tolerance", arguments.tolerance},
                        {"cp", found->cp},
                        {"cpk", found->cpk},
                        {"pp", found->pp},
                        {"pp_band", interval_json(found->pp_band)},
                        {"ppk", found->ppk},
                        {"ppk_band", interval_json(found->ppk_band)},
                        {"outside", found->outside},
                        {"outside_band", interval_json(found->outside_band)},
                        {"seen_outside", found->seen_outside}};
  const auto band = [](const Interval& one, double by, int decimals) {
    return " (95 %: " + with_decimals(by * one.low, decimals) + " to " + with_decimals(by * one.high, decimals) + ")";
  };
  Context(settings).answer(
      document, std::to_string(found->count) + " readings, mean " + with_decimals(found->mean, 2) + " %, deviation " + with_decimals(found->overall, 2) +
                    " % (from one to the next " + with_decimals(found->short_term, 2) + " %); all estimates\nwithin ±" +
                    with_decimals(arguments.tolerance, 1) + " %: Pp " + with_decimals(found->pp, 2) + band(found->pp_band, 1, 2) + ", Ppk " +
                    with_decimals(found->ppk, 2) + band(found->ppk_band, 1, 2) + ", Cp " + with_decimals(found->cp, 2) + ", Cpk " +
                    with_decimals(found->cpk, 2) + "\noutside " + with_decimals(100 * found->outside, 2) + " of 100" + band(found->outside_band, 100, 2) +
                    ", seen " + std::to_string(found->seen_outside) + "\n");
  return Ending::done;
}

Outcome<Ending> variance(const Settings& settings, const ReadingsArguments& arguments) {
  const auto room = readings_in(arguments);
  if (!room) return fail(room.error());
  json::array list;
  std::string text = "deviation of readings in per cent, by parts (estimates)\n";
  for (const VarianceSplit& split : variance_splits(room->table, room->deviations)) {
    json::object one{{"by", split.upper}};
    const std::string name = split.lower.empty() ? split.upper : split.lower + " in " + split.upper;
    if (!split.lower.empty()) one["inner"] = split.lower;
    if (split.one_way) {
      const OneWay& table = *split.one_way;
      one["groups"] = table.groups, one["readings"] = table.count, one["variance"] = table.between_variance, one["within"] = table.within_variance;
      one["f"] = number_or_null(table.f), one["chance"] = number_or_null(table.chance);
      text += name + ": " + with_decimals(std::sqrt(table.between_variance), 2) + " % between, " + with_decimals(std::sqrt(table.within_variance), 2) +
              " % within (" + std::to_string(table.groups) + " groups, " + std::to_string(table.count) + " readings" +
              (table.chance ? ", chance of as much if all are alike " + with_decimals(*table.chance, 4) : "") + ")\n";
    } else if (split.nested) {
      const Nested& parts = *split.nested;
      one["groups"] = parts.upper_groups, one["inner_groups"] = parts.lower_groups, one["readings"] = parts.count;
      one["variance"] = parts.upper_variance, one["inner_variance"] = parts.lower_variance, one["within"] = parts.within_variance;
      one["f"] = number_or_null(parts.f_upper), one["inner_f"] = number_or_null(parts.f_lower);
      text += name + ": " + with_decimals(std::sqrt(parts.upper_variance), 2) + " % between " + split.upper + "s, " +
              with_decimals(std::sqrt(parts.lower_variance), 2) + " % between " + split.lower + "s inside, " +
              with_decimals(std::sqrt(parts.within_variance), 2) + " % within\n";
    } else {
      one["why_not"] = fault_json(*split.why_not);
      text += name + ": none, " + split.why_not->message() + "\n";
    }
    list.push_back(std::move(one));
  }
  Context(settings).answer(json::object{{"scatter", scatter_json(room->scatter)}, {"ages", one_age_json(*room)}, {"splits", std::move(list)}}, text);
  return Ending::done;
}

}  // namespace

void add_chart_commands(CLI::App& quality, FolderWork& chosen) {
  add_plan_command<ChartArguments>(
      quality, chosen, "charts", "Individuals charts with limits, run rules and moving averages", charts, [](CLI::App& command, ChartArguments& arguments) {
        add_readings_options(command, arguments.readings);
        command.add_option("--by", arguments.by, "A chart for each of these; setups in the reading's unit, others as deviations in per cent")
            ->check(CLI::IsMember({"setup", "machine", "stringer", "frame", "room"}))
            ->capture_default_str();
        command.add_option("--only", arguments.only, "The chart of this one");
        command.add_option("--rules", arguments.rules, "Run rules")->check(CLI::IsMember({"nelson", "western-electric"}))->capture_default_str();
        command.add_flag("--own", arguments.own, "Limits of each chart by its own mean and moving ranges, not about 0 by the room's scatter");
        command.add_option("--csv", arguments.csv, "Write the charts' points to this file too");
        command.footer(
            "--json: scatter {percent, readings}, rules, charts [{by, name, unit, limits {count, centre, sigma, lower, upper, range_mean, range_upper} or\n"
            "no_limits {what, ...}, points [{racket, value, rules, average, average_limit, average_out}]}].");
      });
  add_plan_command<CapabilityArguments>(quality, chosen, "capability", "What part of the rackets keeps the room's tolerance", capability,
                                        [](CLI::App& command, CapabilityArguments& arguments) {
                                          add_readings_options(command, arguments.readings);
                                          command.add_option("--tolerance", arguments.tolerance, "Per cent either way; two pounds at 50 are 4")
                                              ->required()
                                              ->check(CLI::Range(0.01, 50.0));
                                          command.footer(
                                              "--json: count, mean, short_term, overall (deviations in per cent), tolerance, cp, cpk, pp, pp_band, ppk, "
                                              "ppk_band, outside, outside_band,\nseen_outside; bands hold 95 %.");
                                        });
  add_plan_command<ReadingsArguments>(quality, chosen, "variance", "Variance by stringer, machine and frame, one-way and nested", variance,
                                      [](CLI::App& command, ReadingsArguments& arguments) {
                                        add_readings_options(command, arguments);
                                        command.footer(
                                            "--json: scatter, splits [{by, inner, groups, inner_groups, readings, variance, inner_variance, within, f, inner_f, "
                                            "chance} or {by, why_not}],\nvariances in squared per cent.");
                                      });
}

}  // namespace weavelog::cli
