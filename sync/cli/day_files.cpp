#include "sync/cli/day_files.h"

#include <cmath>

#include "core/base/iso_time.h"
#include "core/base/local_time.h"

namespace weavelog::cli {

void add_day_options(CLI::App& command, DayArguments& arguments) {
  command.add_option("--shifts", arguments.shifts, "CSV or JSON with stringer, from, until, and machine, kind (shift, break, out of order)")
      ->required();
  command
      .add_option(
          "--jobs", arguments.jobs,
          "CSV or JSON with racket, and arrives, due, match, margin (minutes before the match, default 60), weight, player, home, only, on_court,\n"
          "pattern, material, pieces, minutes; bench and since of what is in work")
      ->required();
  command.add_option("--work", arguments.work, "CSV or JSON with stringer, minutes, and pattern, material, pieces: what rackets took so far");
  command.add_option("--benches", arguments.benches, "A plan of `plan benches`: the home benches of players");
  command.add_option("--at", arguments.at, "The time that it is; default: this machine's");
  command.add_option("--day", arguments.day, "Of times without a day; default: that of --at");
  command.add_option("--zone", arguments.zone, "Time zone of the event, as Europe/Lisbon")->capture_default_str();
}

Outcome<PlanClock> plan_clock(const std::string& at, const std::string& day, const std::string& zone) {
  if (!is_time_zone(zone)) return fail(FaultCode::bad_input, "\"" + zone + "\" is no time zone", "--zone", "write one such as Europe/Lisbon");
  PlanClock out{WallClock::system().now(), zone, {}};
  if (!day.empty()) {
    if (!is_iso_date(day)) return fail(FaultCode::bad_input, "\"" + day + "\" is not a day", "--day", "write it as 2031-05-26");
    out.day = day;
  }
  if (!at.empty()) {
    const auto now = plan_moment(at, out);
    if (!now) return fail(FaultCode::bad_input, now.error().what, "--at", now.error().what_to_do);
    out.now = *now;
  }
  if (out.day.empty()) out.day = date_text(LocalTime(zone).day_of(out.now));
  return out;
}

Outcome<WorkTimes> read_times(const std::string& path) {
  if (path.empty()) return WorkTimes();
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  const auto readings = read_work(*bytes, path);
  if (!readings) return fail(readings.error());
  return WorkTimes(*readings);
}

Outcome<DayFiles> read_day(const DayArguments& arguments) {
  DayFiles out;
  auto clock = plan_clock(arguments.at, arguments.day, arguments.zone);
  if (!clock) return fail(clock.error());
  out.clock = std::move(*clock);
  auto times = read_times(arguments.work);
  if (!times) return fail(times.error());
  out.times = std::move(*times);
  const auto shifts = plan_file(arguments.shifts);
  if (!shifts) return fail(shifts.error());
  auto benches = read_shifts(*shifts, out.clock, arguments.shifts);
  if (!benches) return fail(benches.error());
  set_paces(*benches, out.times);
  const auto bytes = plan_file(arguments.jobs);
  if (!bytes) return fail(bytes.error());
  auto table = read_jobs(*bytes, *benches, out.times, out.clock, arguments.jobs);
  if (!table) return fail(table.error());
  const auto homes = benches_of_plan(arguments.benches);
  if (!homes) return fail(homes.error());
  for (std::size_t i = 0; i < table->jobs.size(); ++i) {
    DayJob& job = table->jobs[i];
    const auto home = homes->find(table->players[i]);
    if (job.home || table->players[i].empty() || home == homes->end()) continue;
    if (const auto bench = bench_named(*benches, home->second)) job.home = *bench;  // a home bench without a shift today is none today
  }
  out.day.now = out.clock.now;
  out.day.benches = std::move(*benches);
  out.day.jobs = table->jobs;
  out.table = std::move(*table);
  return out;
}

}  // namespace weavelog::cli
