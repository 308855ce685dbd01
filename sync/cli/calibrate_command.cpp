// calibrate: a tension machine against a gauge.

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/iso_time.h"
#include "core/base/localised.h"
#include "core/quality/calibration.h"
#include "core/quality/causes.h"
#include "core/quality/measured.h"
#include "sync/cli/quality_commands.h"

namespace weavelog::cli {
namespace {

struct CalibrateArguments {
  std::string file, machine, now, zone = "UTC";
  std::vector<std::string> want;
  CalibrationOptions options;
};

Quantity pull(double value, Unit unit) { return {Decimal::rounded(value, 2), unit}; }
Decimal tenth(double value) { return Decimal::rounded(std::fabs(value), 1); }

std::string day_of(const Language& language, UnixMs at, const std::string& zone) { return localised(language, Moment{at, zone, Moment::Form::day}); }

/// "25.5 kg" or "25.5", in the table's unit.
Outcome<double> wanted_in(const std::string& text, Unit unit) {
  const std::size_t end = std::min(text.find_first_not_of("0123456789.,+-"), text.size());
  const auto number = WrittenNumber::parse(text.substr(0, end));
  const std::string rest = text.substr(std::min(text.find_first_not_of(' ', end), text.size()));
  const auto said = rest.empty() ? std::optional<Unit>(unit) : unit_from(rest);
  const auto by = said ? unit_factor(*said, unit) : std::nullopt;
  if (!number || !by || !(number->to_double() > 0))
    return fail(FaultCode::bad_input, "'" + text + "' is no pull", "--want", "write one as 25.5 " + std::string(symbol_of(unit)));
  return number->to_double() * *by;
}

json::object line_json(const LineFit& fit) {
  json::array coefficients, errors;
  for (const double one : fit.coefficients()) coefficients.push_back(one);
  for (const double one : fit.errors()) errors.push_back(one);
  return {{"coefficients", std::move(coefficients)}, {"errors", std::move(errors)}, {"residual_deviation", fit.residual_deviation()},
          {"r_squared", number_or_null(fit.r_squared())}, {"freedom", fit.freedom()}};
}

Outcome<Ending> calibrate(const Settings& settings, const CalibrateArguments& arguments) {
  const auto bytes = plan_file(arguments.file);
  if (!bytes) return fail(bytes.error());
  const auto table = read_gauge(*bytes, arguments.file, arguments.zone);
  if (!table) return fail(table.error());
  std::set<std::string> machines;
  for (const GaugeReading& one : table->readings) machines.insert(one.machine);
  if (arguments.machine.empty() && machines.size() > 1)
    return fail(FaultCode::bad_input, "there are readings of " + std::to_string(machines.size()) + " machines", arguments.file, "name one with --machine");
  const std::string machine = arguments.machine.empty() ? *machines.begin() : arguments.machine;
  std::vector<GaugeReading> readings;
  for (const GaugeReading& one : table->readings)
    if (one.machine == machine) readings.push_back(one);
  if (readings.empty()) return fail(FaultCode::not_found, "there are no readings of " + machine, arguments.file, "name it as in the column machine");
  const auto in_file = [&](Fault fault) {
    if (fault.where.empty()) fault.where = arguments.file;
    return fail(std::move(fault));
  };
  const auto made = Calibration::of(readings, arguments.options);
  if (!made) return in_file(made.error());
  const Context context(settings);
  const Language language = context.language();
  const auto say = [&](const char* key, const PhraseArgs& args) { return quality_words().say(language, key, args); };
  const LineFit& line = made->line();
  const std::string unit(symbol_of(table->unit));
  const auto error = made->error_at(made->reference());
  if (!error) return in_file(error.error());
  const auto half = [](const Interval& band) { return (band.high - band.low) / 2; };
  json::object document{{"machine", machine},
                        {"unit", unit},
                        {"readings", made->used()},
                        {"straight", line_json(made->straight())},
                        {"bent", made->bent() ? json::value(line_json(*made->bent())) : json::value(nullptr)},
                        {"bend_chance", number_or_null(made->bend_chance())},
                        {"misfit_chance", number_or_null(made->misfit_chance())},
                        {"is_bent", made->is_bent()},
                        {"reference", made->reference()},
                        {"error", json::object{{"percent", error->percent}, {"band", interval_json(error->band)}}},
                        {"state", name_of(made->state())}};
  std::string text = (machine.empty() ? std::string() : machine + ": ") + std::to_string(made->used()) + " readings, pulled = ";
  for (std::size_t k = 0; k < line.powers().size(); ++k)
    text += (k == 0 ? "" : " + ") + with_decimals(line.coefficients()[k], k == 0 ? 3 : 5) + (k == 0 ? "" : k == 1 ? " x set" : " x set^2");
  text += " " + unit + ", scatter of one pull " + with_decimals(line.residual_deviation(), 3) + " " + unit + " (estimates)\n";
  if (made->is_bent()) text += say("calibration.curved", {}) + "\n";
  text += "at " + localised(language, pull(made->reference(), table->unit)) + ": " + with_decimals(error->percent, 2) + " % (estimate, " +
          with_decimals(100 * arguments.options.level, 0) + " %: " + with_decimals(error->band.low, 2) + " to " + with_decimals(error->band.high, 2) + ")\n";
  if (made->state() == Calibration::State::beyond)
    text += say("calibration.beyond", {{"reference", pull(made->reference(), table->unit)},
                                       {"percent", tenth(error->percent)},
                                       {"band", tenth(half(error->band))},
                                       {"side", std::string(error->percent < 0 ? "low" : "high")},
                                       {"tolerance", Decimal::rounded(arguments.options.tolerance, 1)}}) +
            "\n";
  json::array settings_list;
  for (const std::string& one : arguments.want) {
    const auto wanted = wanted_in(one, table->unit);
    if (!wanted) return fail(wanted.error());
    const auto setting = made->setting_for(*wanted);
    if (!setting) {
      Fault fault = setting.error();
      fault.where = one;
      return fail(std::move(fault));
    }
    settings_list.push_back(json::object{{"wanted", *wanted}, {"set", setting->set}, {"band", interval_json(setting->band)},
                                         {"next_pull", interval_json(setting->next)}, {"needed", setting->needed}});
    text += setting->needed ? say("calibration.corrected", {{"wanted", pull(*wanted, table->unit)},
                                                            {"set", pull(setting->set, table->unit)},
                                                            {"low", pull(setting->band.low, table->unit)},
                                                            {"high", pull(setting->band.high, table->unit)},
                                                            {"level", Decimal::rounded(100 * arguments.options.level, 0)}})
                            : say("calibration.none", {{"wanted", pull(*wanted, table->unit)}});
    text += "\n";
  }
  document["settings"] = std::move(settings_list);
  json::array sessions;
  for (const Calibration::Session& one : made->sessions())
    sessions.push_back(json::object{{"at", iso_utc(one.at)}, {"readings", one.readings}, {"percent", one.percent}, {"error", one.error}});
  document["sessions"] = std::move(sessions);
  if (made->drift()) {
    const Calibration::Drift& drift = *made->drift();
    document["drift"] = json::object{{"percent", drift.percent}, {"band", interval_json(drift.band)}, {"clear", drift.clear},
                                     {"per_day", number_or_null(drift.per_day)}, {"per_day_error", number_or_null(drift.per_day_error)}};
    if (drift.clear)
      text += say("calibration.drift", {{"before", day_of(language, made->sessions()[made->sessions().size() - 2].at, arguments.zone)},
                                        {"after", day_of(language, made->sessions().back().at, arguments.zone)},
                                        {"reference", pull(made->reference(), table->unit)},
                                        {"percent", tenth(drift.percent)},
                                        {"band", tenth(half(drift.band))}}) +
              "\n";
  }
  if (made->due()) {
    UnixMs now = made->sessions().back().at;
    if (!arguments.now.empty()) {
      const auto moment = moment_from(is_iso_date(arguments.now) ? arguments.now + "T12:00" : arguments.now, arguments.zone, now);
      if (!moment) return fail(FaultCode::bad_input, "'" + arguments.now + "' is no moment", "--now", "write 2031-05-26");
      now = *moment;
    }
    const bool overdue = now > made->due()->at;
    const std::string day = day_of(language, made->due()->at, arguments.zone);
    document["due"] = json::object{{"at", iso_utc(made->due()->at)}, {"by_drift", made->due()->by_drift}, {"overdue", overdue}};
    text += (overdue ? say("calibration.overdue", {{"day", day}})
                     : say("calibration.due", {{"day", day}, {"why", std::string(made->due()->by_drift ? "drift" : "age")}})) +
            "\n";
  }
  context.answer(document, text);
  return Ending::done;
}

}  // namespace

void add_calibrate_command(CLI::App& app, FolderWork& chosen) {
  add_plan_command<CalibrateArguments>(
      app, chosen, "calibrate", "A tension machine against a gauge: correction, drift, next check; without --data", calibrate,
      [](CLI::App& command, CalibrateArguments& arguments) {
        command.add_option("file", arguments.file, "CSV or JSON with set and pulled (kg, lb or N), and machine, at")->required();
        command.add_option("--machine", arguments.machine, "The machine, where the file has several");
        command.add_option("--want", arguments.want, "A pull that is wanted, as 25 or '55 lb': says what to set; repeat it");
        command.add_option("--now", arguments.now, "Today, for what is overdue; default: the day of the newest readings");
        command.add_option("--zone", arguments.zone, "Zone in which `at` is told")->capture_default_str();
        command.option_defaults()->always_capture_default();
        command.add_option("--level", arguments.options.level, "Of intervals");
        command.add_option("--tolerance", arguments.options.tolerance, "Per cent that a pull may be off");
        command.add_option("--longest", arguments.options.longest_days, "Days between checks at most");
        command.footer(
            "--json: machine, unit, readings, straight and bent {coefficients, errors, residual_deviation, r_squared, freedom}, bend_chance, misfit_chance,\n"
            "is_bent, reference, error {percent, band}, state (good, in_doubt, beyond), settings [{wanted, set, band, next_pull, needed}], sessions [{at, "
            "readings,\npercent, error}], drift {percent, band, clear, per_day, per_day_error}, due {at, by_drift, overdue}.\n"
            "Before opening a machine or its tension head follow its maker's instructions.");
      });
}

}  // namespace weavelog::cli
