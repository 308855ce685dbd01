// quality signals, causes, power.

#include <algorithm>

#include "core/quality/causes.h"
#include "core/quality/run_length.h"
#include "core/quality/watch.h"
#include "sync/cli/quality_commands.h"

namespace weavelog::cli {
namespace {

std::vector<SuspectRacket> suspects(const RoomReadings& room, std::vector<std::size_t>& places) {
  std::vector<SuspectRacket> out;
  for (std::size_t i = 0; i < room.table.readings.size(); ++i) {
    const StrungReading& one = room.table.readings[i];
    if (room.deviations[i].against == Against::nothing) continue;
    places.push_back(i);
    out.push_back({room.deviations[i].percent, room.deviations[i].doubt, one.stringer, one.machine, one.frame, one.string});
  }
  return out;
}

json::array causes_json(const Language& language, const SuspectRacket& racket, const CauseReport& report, std::string& text) {
  json::array out;
  for (const CauseFinding& finding : report.findings) {
    if (finding.chance < 0.005) continue;
    const std::string evidence = evidence_words(language, racket, finding), advice = advice_words(language, racket, finding);
    out.push_back(json::object{{"cause", name_of(finding.cause)},
                               {"chance", finding.chance},
                               {"percent", finding.percent},
                               {"band", interval_json(finding.band)},
                               {"rackets", finding.rackets},
                               {"evidence", evidence},
                               {"advice", advice}});
    text += "  " + with_decimals(100 * finding.chance, 0) + " of 100  " + std::string(name_of(finding.cause)) + ": " + evidence + " " + advice + "\n";
  }
  return out;
}

std::string together(const Language& language, const SuspectRacket& racket) {
  return quality_words().say(language, "together", {{"machine", racket.machine}, {"stringer", racket.stringer}});
}

Outcome<RoomReadings> room_of(const ReadingsArguments& arguments) {
  auto room = readings_in(arguments);
  if (!room) return fail(room.error());
  if (std::all_of(room->deviations.begin(), room->deviations.end(), [](const Deviation& one) { return one.against == Against::nothing; }))
    return fail(FaultCode::bad_input, "there is nothing to hold the readings against", arguments.file,
                "give what was wanted, or a setup with more than three readings, or a kind with five");
  return room;
}

Outcome<Ending> signals(const Settings& settings, const ReadingsArguments& arguments) {
  const auto room = room_of(arguments);
  if (!room) return fail(room.error());
  const Context context(settings);
  std::vector<std::size_t> places;
  const auto rackets = suspects(*room, places);
  WatchDesign design;
  design.scatter = room->scatter.percent;
  RoomWatch watch(design);
  json::array list;
  std::string text = scatter_text(room->scatter, arguments.scatter > 0) + one_age_text(room->ages);
  CauseOptions options;
  options.scatter = design.scatter;
  for (std::size_t i = 0; i < rackets.size(); ++i) {
    const auto alarms = watch.add(rackets[i].stringer, rackets[i].machine, rackets[i].percent, rackets[i].doubt);
    if (alarms.empty()) continue;
    const std::string racket = racket_name(room->table, places[i]);
    json::array charts;
    for (const WatchAlarm& alarm : alarms) {
      text += racket + ": " + (alarm.watched == Watched::racket ? "off by itself" : std::string(name_of(alarm.watched)) + " " + alarm.name + " has moved") +
              ", " + with_decimals(alarm.percent, 1) + " % (estimate, 95 %: " + with_decimals(alarm.band.low, 1) + " to " +
              with_decimals(alarm.band.high, 1) + ", " + std::to_string(alarm.rackets) + (alarm.rackets == 1 ? " racket)\n" : " rackets)\n");
      charts.push_back(json::object{{"chart", name_of(alarm.watched)}, {"name", alarm.name}, {"percent", alarm.percent},
                                    {"band", interval_json(alarm.band)}, {"rackets", alarm.rackets}});
    }
    options.question = alarms.front().watched == Watched::racket ? CauseQuestion::racket : CauseQuestion::chart;
    const auto report = causes_of(rackets, i, options);
    if (!report) return fail(report.error());
    json::object one{{"racket", racket}, {"place", room->table.readings[places[i]].place}, {"percent", rackets[i].percent},
                     {"charts", std::move(charts)}, {"causes", causes_json(context.language(), rackets[i], *report, text)}};
    if (report->machine_or_stringer) {
      one["together"] = together(context.language(), rackets[i]);
      text += "  " + together(context.language(), rackets[i]) + "\n";
    }
    list.push_back(std::move(one));
  }
  if (list.empty()) text += "no signal in " + std::to_string(rackets.size()) + " rackets\n";
  context.answer(json::object{{"scatter", scatter_json(room->scatter)}, {"ages", one_age_json(*room)}, {"compared", rackets.size()}, {"readings", room->table.readings.size()},
                              {"signals", std::move(list)}},
                 text);
  return Ending::done;
}

struct CausesArguments {
  ReadingsArguments readings;
  std::string racket;
  std::vector<std::string> gauged;
};

Outcome<Ending> causes(const Settings& settings, const CausesArguments& arguments) {
  const auto room = room_of(arguments.readings);
  if (!room) return fail(room.error());
  const Context context(settings);
  std::vector<std::size_t> places;
  const auto rackets = suspects(*room, places);
  std::size_t at = rackets.size() - 1;
  if (!arguments.racket.empty()) {
    std::size_t found = rackets.size();
    for (std::size_t i = 0; i < rackets.size(); ++i)
      if (racket_name(room->table, places[i]) == arguments.racket) found = i;
    if (found == rackets.size())
      return fail(FaultCode::not_found, "there is no such racket that could be compared", arguments.readings.file, "name one as in the column racket");
    at = found;
  }
  CauseOptions options;
  options.scatter = room->scatter.percent;
  for (const std::string& one : arguments.gauged) {
    const auto equals = one.rfind('=');
    const auto wrong = [&] { return fail(FaultCode::bad_input, "'" + one + "' says nothing of a machine", "--gauged", "write MACHINE=PERCENT,ERROR"); };
    if (equals == std::string::npos) return wrong();
    const std::string numbers = one.substr(equals + 1);
    const auto comma = numbers.find(',');
    const auto percent = WrittenNumber::parse(numbers.substr(0, comma)), error = WrittenNumber::parse(comma == std::string::npos ? "0.5" : numbers.substr(comma + 1));
    if (!percent || !error || !(error->to_double() > 0)) return wrong();
    options.gauged[one.substr(0, equals)] = {percent->to_double(), error->to_double(), 0};  // it was put there now: nothing has moved since
  }
  const auto report = causes_of(rackets, at, options);
  if (!report) return fail(report.error());
  std::string text = racket_name(room->table, places[at]) + ": " + with_decimals(rackets[at].percent, 1) + " % from what was to be expected (estimate)\n";
  json::object document{{"racket", racket_name(room->table, places[at])}, {"percent", rackets[at].percent}, {"scatter", scatter_json(room->scatter)}, {"ages", one_age_json(*room)}, {"raised_percent_for_age", room->table.readings[places[at]].aged_percent}};
  document["causes"] = causes_json(context.language(), rackets[at], *report, text);
  if (report->machine_or_stringer) {
    document["together"] = together(context.language(), rackets[at]);
    text += together(context.language(), rackets[at]) + "\n";
  }
  context.answer(document, text);
  return Ending::done;
}

struct PowerArguments {
  double scatter = kUsualScatter, shift = 3;
  std::size_t within = 10;
};

Outcome<Ending> power(const Settings& settings, const PowerArguments& arguments) {
  const double shift = arguments.shift / arguments.scatter;
  const WatchDesign design;
  const std::vector<int> one{1}, four{1, 2, 3, 4};
  struct Line {
    const char* name;
    RunLength quiet, shifted;
  };
  const EwmaDesign& average = design.average;
  const Line lines[] = {
      {"three sigmas alone", rules_run_length(RuleSet::western_electric, one, 0, arguments.within),
       rules_run_length(RuleSet::western_electric, one, shift, arguments.within)},
      {"western electric rules 1 to 4", rules_run_length(RuleSet::western_electric, four, 0, arguments.within),
       rules_run_length(RuleSet::western_electric, four, shift, arguments.within)},
      {"moving average of the watch", ewma_run_length(average, 0, arguments.within), ewma_run_length(average, shift, arguments.within)},
      {"cumulative sum, k 0.75, h 3.34", cusum_run_length(0.75, 3.34, 0, arguments.within), cusum_run_length(0.75, 3.34, shift, arguments.within)},
  };
  json::array list;
  std::string text = "a shift of " + with_decimals(arguments.shift, 1) + " % where readings scatter by " + with_decimals(arguments.scatter, 2) + " %, within " +
                     std::to_string(arguments.within) + " rackets\n";
  for (const Line& line : lines) {
    list.push_back(json::object{{"chart", line.name},
                                {"false_alarm_every", line.quiet.mean},
                                {"found_within", line.shifted.within(arguments.within)},
                                {"found_after", line.shifted.mean}});
    text += std::string(line.name) + ": found " + with_decimals(100 * line.shifted.within(arguments.within), 1) + " times of 100, after " +
            with_decimals(line.shifted.mean, 1) + " rackets on average; a false alarm every " + with_decimals(line.quiet.mean, 0) + " rackets\n";
  }
  Context(settings).answer(
      json::object{{"scatter", arguments.scatter}, {"shift", arguments.shift}, {"within", arguments.within}, {"charts", std::move(list)}}, text);
  return Ending::done;
}

}  // namespace

void add_watch_commands(CLI::App& quality, FolderWork& chosen) {
  add_plan_command<ReadingsArguments>(quality, chosen, "signals", "What the room's charts would have said, racket by racket, with likely causes", signals,
                                      [](CLI::App& command, ReadingsArguments& arguments) {
                                        add_readings_options(command, arguments);
                                        command.footer(
                                            "--json: scatter, compared, readings, signals [{racket, place, percent, charts [{chart (racket, machine, "
                                            "stringer), name, percent, band,\nrackets}], causes, together}]; causes as of `quality causes`.");
                                      });
  add_plan_command<CausesArguments>(quality, chosen, "causes", "Why a racket is off, the likeliest cause first", causes,
                                    [](CLI::App& command, CausesArguments& arguments) {
                                      add_readings_options(command, arguments.readings);
                                      command.add_option("--racket", arguments.racket, "Its name in the column racket; default: the last one");
                                      command.add_option("--gauged", arguments.gauged,
                                                         "What a gauge said of a machine that is not corrected: MACHINE=PERCENT,ERROR, as T1=-3.1,0.4; repeat it");
                                      command.footer(
                                          "--json: racket, percent, scatter, causes [{cause (scatter, machine_calibration, clamp_slip, wrong_string, frame, "
                                          "stringer), chance, percent, band,\nrackets, evidence, advice}], together where machine and stringer can't be told apart.");
                                    });
  add_plan_command<PowerArguments>(quality, chosen, "power", "How soon charts find a shift, and how often they are wrong", power,
                                   [](CLI::App& command, PowerArguments& arguments) {
                                     command.option_defaults()->always_capture_default();
                                     command.add_option("--scatter", arguments.scatter, "Of a reading, per cent")->check(CLI::Range(0.1, 50.0));
                                     command.add_option("--shift", arguments.shift, "Per cent")->check(CLI::Range(0.0, 100.0));
                                     command.add_option("--within", arguments.within, "Rackets")->check(CLI::Range(1, 1000));
                                     command.footer("--json: scatter, shift, within, charts [{chart, false_alarm_every, found_within, found_after}].");
                                   });
}

}  // namespace weavelog::cli
