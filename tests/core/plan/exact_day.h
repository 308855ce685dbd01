#pragma once
// A day's plan solved exactly with GLPK, as the reference: one binary variable for every racket, bench and moment of a grid.

#include <glpk.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/plan/schedule.h"

namespace weavelog::test {

/// The best cost of a day of which every time is a multiple of `grid` (ms), without rackets in work and rushes. The formulation is apart from
/// the program's: it knows moments, not sequences. A change counts a thousandth of a minute late, so that it comes second.
inline DayCost exact_cost(const DayInput& day, UnixMs grid) {
  glp_term_out(GLP_OFF);
  UnixMs closes = day.now;
  for (const DayBench& bench : day.benches)
    for (const TimeSpan& span : bench.open) closes = std::max(closes, span.until);
  const auto told = [&](const DayJob& job) {
    const auto found = std::find_if(day.told.begin(), day.told.end(), [&](const ToldJob& one) { return one.job == job.id; });
    return found == day.told.end() ? nullptr : &*found;
  };
  const auto cost = [&](const DayJob& job, std::size_t bench, UnixMs end) {
    DayCost out;
    out.late = job.weight * (std::max<UnixMs>(0, end - job.due.value_or(closes)) + (job.home && *job.home != bench ? day.away_minutes * 60'000 : 0));
    if (const ToldJob* before = told(job)) out.changed = before->bench != day.benches[bench].name || end > before->ready + day.told_slack;
    return out;
  };
  struct Choice {
    std::size_t job, bench;
    UnixMs begin, end;
    DayCost cost;
  };
  std::vector<Choice> choices;
  for (std::size_t j = 0; j < day.jobs.size(); ++j)
    for (std::size_t b = 0; b < day.benches.size(); ++b) {
      const DayJob& job = day.jobs[j];
      if (!job.only.empty() && std::find(job.only.begin(), job.only.end(), b) == job.only.end()) continue;
      const std::int64_t takes = length_at(job, day.benches[b]);
      for (const TimeSpan& span : day.benches[b].open)
        for (UnixMs begin = std::max({span.from, job.arrives, day.now}); begin + takes <= span.until; begin += grid)
          choices.push_back({j, b, begin, begin + takes, cost(job, b, begin + takes)});
      choices.push_back({j, b, -1, -1, cost(job, b, closes + kNotFitting + takes)});
    }
  glp_prob* problem = glp_create_prob();
  glp_set_obj_dir(problem, GLP_MIN);
  const auto jobs = static_cast<int>(day.jobs.size());
  const auto moments = static_cast<int>((closes - day.now) / grid);
  const auto benches = static_cast<int>(day.benches.size());
  glp_add_rows(problem, jobs + moments * benches);
  for (int j = 1; j <= jobs; ++j) glp_set_row_bnds(problem, j, GLP_FX, 1, 1);
  for (int r = jobs + 1; r <= jobs + moments * benches; ++r) glp_set_row_bnds(problem, r, GLP_UP, 0, 1);
  glp_add_cols(problem, static_cast<int>(choices.size()));
  for (std::size_t c = 0; c < choices.size(); ++c) {
    const Choice& choice = choices[c];
    const auto column = static_cast<int>(c) + 1;
    glp_set_col_kind(problem, column, GLP_BV);
    glp_set_obj_coef(problem, column, static_cast<double>(choice.cost.late) / 60'000 + static_cast<double>(choice.cost.changed) * 1e-3);
    std::vector<int> rows{0, static_cast<int>(choice.job) + 1};
    for (UnixMs at = choice.begin; choice.begin >= 0 && at < choice.end; at += grid)
      rows.push_back(jobs + 1 + static_cast<int>(choice.bench) * moments + static_cast<int>((at - day.now) / grid));
    const std::vector<double> ones(rows.size(), 1);
    glp_set_mat_col(problem, column, static_cast<int>(rows.size()) - 1, rows.data(), ones.data());
  }
  glp_iocp options;
  glp_init_iocp(&options);
  options.presolve = GLP_ON;
  options.msg_lev = GLP_MSG_OFF;
  options.tm_lim = 60'000;
  const int failed = glp_intopt(problem, &options);
  if (failed != 0 || glp_mip_status(problem) != GLP_OPT) throw std::runtime_error("GLPK did not solve a day: " + std::to_string(failed));
  DayCost out;
  for (std::size_t c = 0; c < choices.size(); ++c)
    if (glp_mip_col_val(problem, static_cast<int>(c) + 1) > 0.5) out.late += choices[c].cost.late, out.changed += choices[c].cost.changed;
  glp_delete_prob(problem);
  return out;
}

}  // namespace weavelog::test
