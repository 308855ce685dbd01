#pragma once
// The tables that a day's plan, promises and a forecast are made from: CSV, or JSON as a list of objects with the same names. The columns
// stand in DEVELOPERS.md, "Tables of a plan".

#include <map>
#include <string>
#include <string_view>

#include "core/plan/durations.h"
#include "core/plan/forecast.h"
#include "core/plan/promise.h"
#include "core/plan/schedule.h"

namespace weavelog {

/// How times in tables are told.
struct PlanClock {
  UnixMs now = 0;
  std::string zone = "UTC";  ///< IANA name
  std::string day;           ///< "2031-05-26": of times without a day
};

/// "14:05" on that day, "2031-05-26T14:05", "+90" minutes from now. Faults: bad_input.
[[nodiscard]] Outcome<UnixMs> plan_moment(std::string_view text, const PlanClock& clock);

/// A table as CSV: what is CSV as it stands; of JSON the list of objects, one a row, with all names that occur. Faults: bad_input (JSON that is
/// no list of flat objects).
[[nodiscard]] Outcome<std::string> table_text(std::string_view bytes, std::string_view source);

/// stringer, from, until, and machine, kind (shift, break, out of order): one bench for every stringer and machine with a shift, open then but
/// for the stringer's breaks and the machine's times out of order. Named "stringer / machine", or by the stringer alone. Faults, with the
/// place: bad_input (a time that is none, an end before its beginning, a break of nobody, ...).
[[nodiscard]] Outcome<std::vector<DayBench>> read_shifts(std::string_view bytes, const PlanClock& clock, std::string_view source = {});
/// stringer, minutes, and pattern, material, pieces. Faults, with the place: bad_input. Readings that can't be are not faults: WorkTimes
/// leaves them out.
[[nodiscard]] Outcome<std::vector<WorkReading>> read_work(std::string_view bytes, std::string_view source = {});

/// Rackets with what is known of their work.
struct JobTable {
  std::vector<DayJob> jobs;
  std::vector<WorkKind> kinds;       ///< by job
  std::vector<std::string> players;  ///< by job; may be ""
};
/// racket, and arrives, due, or match and margin (minutes; due is the match less the margin), weight, player, home, only, on_court, pattern,
/// material, pieces, minutes (expected, in place of what `times` knows), bench with since (in work). Benches go by their name, or by a
/// stringer or machine that has only one. Faults, with the place: bad_input.
[[nodiscard]] Outcome<JobTable> read_jobs(std::string_view bytes, const std::vector<DayBench>& benches, const WorkTimes& times,
                                          const PlanClock& clock, std::string_view source = {});
/// By its name, or by a stringer or machine that has only one. Faults: not_found; bad_input (several).
[[nodiscard]] Outcome<std::size_t> bench_named(const std::vector<DayBench>& benches, std::string_view name);

/// player, chances (one a day, divided by |), and draw, matches, rackets, string, metres, pattern, material, pieces, minutes. Faults, with the place:
/// bad_input.
[[nodiscard]] Outcome<std::vector<ForecastPlayer>> read_forecast_players(std::string_view bytes, const WorkTimes& times,
                                                                         std::string_view source = {});
/// hour (0 to 23), rackets. Faults, with the place: bad_input.
[[nodiscard]] Outcome<std::array<double, 24>> read_hours(std::string_view bytes, std::string_view source = {});

/// due, ready, of promises that came to an end, in their order: whether each was kept. Faults, with the place: bad_input.
[[nodiscard]] Outcome<std::vector<bool>> read_settled(std::string_view bytes, const PlanClock& clock, std::string_view source = {});

/// Sets the benches' paces by what was learned.
void set_paces(std::vector<DayBench>& benches, const WorkTimes& times);
/// A queue and its spreads out of tables. `day`: its jobs as in `table`.
[[nodiscard]] PromiseInput promise_input(DayInput day, const JobTable& table, const WorkTimes& times);
/// The spread of one racket's time.
[[nodiscard]] double own_spread(const WorkTimes& times, const WorkKind& kind);

}  // namespace weavelog
