#pragma once
// What `plan schedule` and `plan promise` read: shifts, rackets, history.

#include "core/plan/day_tables.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {

struct DayArguments {
  std::string shifts, jobs, work, benches, at, day, zone = "UTC";
};

/// A day out of files.
struct DayFiles {
  PlanClock clock;
  WorkTimes times;
  JobTable table;
  DayInput day;
};

/// Adds the options to a command.
void add_day_options(CLI::App& command, DayArguments& arguments);
/// Faults: those of plan_file() and of the tables.
[[nodiscard]] Outcome<DayFiles> read_day(const DayArguments& arguments);
/// Now, and the day that is planned, out of what was typed. Faults: bad_input.
[[nodiscard]] Outcome<PlanClock> plan_clock(const std::string& at, const std::string& day, const std::string& zone);
/// What is known of durations; `path` "": the first guesses.
[[nodiscard]] Outcome<WorkTimes> read_times(const std::string& path);

}  // namespace weavelog::cli
