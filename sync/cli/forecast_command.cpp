// plan forecast: the rackets to come, and the benches and the string that they need.

#include <cmath>
#include <cstdio>

#include "core/base/text.h"
#include "sync/cli/day_files.h"
#include "sync/cli/forecast_answer.h"

namespace weavelog::cli {
namespace {

struct ForecastArguments {
  std::string players, hours, work;
  std::vector<std::string> days;
  ForecastInput input;
};

json::object band_json(const Band& band) {
  const auto tenth = [](double value) { return std::round(value * 10) / 10; };
  return {{"mean", tenth(band.mean)}, {"low", tenth(band.low)}, {"middle", tenth(band.middle)}, {"high", tenth(band.high)}};
}

std::string band_text(const Band& band) {
  char text[96];
  std::snprintf(text, sizeof text, "%.0f (%.0f to %.0f)", band.mean, band.low, band.high);
  return text;
}

json::array strings_json(const std::vector<StringNeed>& strings) {
  json::array out;
  for (const StringNeed& need : strings) out.push_back(json::object{{"string", need.string}, {"metres", band_json(need.metres)}});
  return out;
}

Outcome<Ending> forecast(const Settings& settings, const ForecastArguments& arguments) {
  ForecastInput input = arguments.input;
  input.days = arguments.days;
  const auto times = read_times(arguments.work);
  if (!times) return fail(times.error());
  const auto bytes = plan_file(arguments.players);
  if (!bytes) return fail(bytes.error());
  auto players = read_forecast_players(*bytes, *times, arguments.players);
  if (!players) return fail(players.error());
  input.players = std::move(*players);
  if (!arguments.hours.empty()) {
    const auto text = plan_file(arguments.hours);
    if (!text) return fail(text.error());
    const auto hours = read_hours(*text, arguments.hours);
    if (!hours) return fail(hours.error());
    input.taken_in = *hours;
  }
  const auto made = forecast_of(input);
  if (!made) {
    Fault fault = made.error();
    fault.where = arguments.players + (fault.where.empty() ? "" : ", " + fault.where);
    return fail(std::move(fault));
  }
  tell_forecast(Context(settings), *made);
  return Ending::done;
}

}  // namespace

void tell_forecast(const Context& context, const Forecast& made) {
  json::array days;
  char rackets[32];
  std::snprintf(rackets, sizeof rackets, "%.1f", made.rackets_a_match);
  std::string text = "mean (one time of ten less, one time of ten more); " + std::string(rackets) + " rackets a match\n";
  for (const ForecastDay& day : made.days) {
    json::array hours;
    for (std::size_t hour = 0; hour < 24; ++hour) {
      if (day.by_hour[hour].mean == 0 && day.benches_by_hour[hour] == 0) continue;
      json::object one{{"hour", hour}, {"rackets", band_json(day.by_hour[hour])}, {"benches", day.benches_by_hour[hour]}};
      hours.push_back(std::move(one));
    }
    days.push_back(json::object{{"day", day.day}, {"rackets", band_json(day.rackets)}, {"minutes", band_json(day.minutes)}, {"benches", day.benches},
                                {"hours", std::move(hours)}, {"strings", strings_json(day.strings)}});
    text += day.day + ": " + band_text(day.rackets) + " rackets, " + std::to_string(day.benches) + " benches\n";
    for (std::size_t hour = 0; hour < 24; ++hour)
      if (day.by_hour[hour].mean > 0)
        text += "  " + std::string(hour < 10 ? "0" : "") + std::to_string(hour) + "  " + band_text(day.by_hour[hour]) + ", " +
                std::to_string(day.benches_by_hour[hour]) + " benches\n";
  }
  text += "all days: " + band_text(made.rackets) + " rackets\n";
  for (const StringNeed& need : made.strings) text += need.string + ": " + band_text(need.metres) + " m\n";
  context.answer(json::object{{"days", std::move(days)}, {"rackets", band_json(made.rackets)}, {"rackets_a_match", made.rackets_a_match},
                                        {"strings", strings_json(made.strings)}},
                           text);
}

void add_forecast_command(CLI::App& plan, FolderWork& chosen) {
  add_plan_command<ForecastArguments>(
      plan, chosen, "forecast", "Rackets to come by day and hour, with the benches and the string they need", forecast,
      [](CLI::App& command, ForecastArguments& arguments) {
        command
            .add_option("--players", arguments.players,
                        "CSV or JSON with player, chances (to play, one a day, as 1|0.5), and draw (players from top to bottom), matches, rackets "
                        "(own history),\n"
                        "string, metres, pattern, material, pieces, minutes (of a racket)")
            ->required();
        command.add_option("--days", arguments.days, "The days, as 2031-05-27,2031-05-28")->delimiter(',')->required();
        command.add_option("--hours", arguments.hours, "CSV or JSON with hour, rackets: taken in so far by hour of the day");
        command.add_option("--work", arguments.work, "As of `plan schedule`");
        command.option_defaults()->always_capture_default();
        command.add_option("--opens", arguments.input.opens, "Hour");
        command.add_option("--closes", arguments.input.closes, "Hour");
        command.add_option("--within", arguments.input.within, "Hours after which a racket should be ready");
        command.add_option("--at-work", arguments.input.at_work, "Part of an hour that a stringer is at the machine");
        command.footer(kForecastAnswer);
      });
}

}  // namespace weavelog::cli
