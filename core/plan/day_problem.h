#pragma once
// A day made ready for the search: what is fixed is taken out of the benches' times, the rest are numbers. Inside core/plan only.

#include "core/plan/schedule.h"

namespace weavelog {

struct DayProblem {
  std::size_t benches = 0, jobs = 0;
  UnixMs never = 0;  ///< what does not fit is ready then, and its length later
  std::vector<std::vector<TimeSpan>> open;  ///< by bench, from now on, without what is fixed
  std::vector<std::size_t> place;           ///< of each free job among DayInput::jobs
  std::vector<UnixMs> arrives, due, told_by;
  std::vector<std::int64_t> weight;
  std::vector<int> home, told_bench;    ///< -1: none
  std::vector<std::int64_t> length;     ///< by job x benches + bench; -1: may not
  std::vector<double> pace;
  std::int64_t away = 0;                ///< ms
  std::int64_t change = 0;              ///< ms that a change counts while searching
  std::vector<PlannedJob> fixed;
  DayCost fixed_cost;

  [[nodiscard]] std::int64_t at(std::size_t job, std::size_t bench) const { return length[job * benches + bench]; }
  [[nodiscard]] DayCost cost(std::size_t job, std::size_t bench, UnixMs end) const {
    DayCost out;
    if (end > due[job]) out.late = weight[job] * (end - due[job]);
    if (home[job] >= 0 && home[job] != static_cast<int>(bench)) out.late += weight[job] * away;
    out.changed = told_bench[job] != -1 && (told_bench[job] != static_cast<int>(bench) || end > told_by[job]) ? 1 : 0;
    out.late += out.changed * change;
    return out;
  }
  /// When a job that can begin at `from` is ready at a bench; never + its length if it does not fit. `window` is where to look from, and
  /// then where it fits.
  [[nodiscard]] UnixMs end_at(std::size_t job, std::size_t bench, UnixMs from, std::size_t& window) const {
    const std::int64_t takes = at(job, bench);
    const UnixMs begin = std::max(from, arrives[job]);
    const auto& spans = open[bench];
    for (std::size_t w = window; w < spans.size(); ++w)
      if (const UnixMs end = std::max(begin, spans[w].from) + takes; end <= spans[w].until) {
        window = w;
        return end;
      }
    return never + takes;
  }
};

/// `day` has been checked.
[[nodiscard]] DayProblem problem_of(const DayInput& day);

/// No plan has less DayCost::late (what is fixed left out). See day_bound.cpp.
[[nodiscard]] std::int64_t bound_of(const DayProblem& problem);
/// At least so many of the free jobs are late.
[[nodiscard]] std::size_t surely_late_of(const DayProblem& problem);

/// The sequences of jobs at the benches that the search found; by bench.
[[nodiscard]] std::vector<std::vector<std::uint32_t>> search_day(const DayProblem& problem, std::int64_t bound, PlanEffort effort,
                                                                 const std::vector<std::vector<std::uint32_t>>& told);

}  // namespace weavelog
