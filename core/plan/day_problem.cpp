#include "core/plan/day_problem.h"

#include <algorithm>
#include <map>

namespace weavelog {
namespace {

/// The bench at which a job is ready first; of equals its home bench. Reserves the time there.
std::optional<PlannedJob> at_once(const DayInput& day, DayProblem& problem, std::size_t job) {
  const DayJob& one = day.jobs[job];
  std::optional<PlannedJob> best;
  for (std::size_t bench = 0; bench < day.benches.size(); ++bench) {
    if (!one.only.empty() && std::find(one.only.begin(), one.only.end(), bench) == one.only.end()) continue;
    const std::int64_t takes = length_at(one, day.benches[bench]);
    for (const TimeSpan& span : problem.open[bench]) {
      const UnixMs begin = std::max({span.from, day.now, one.arrives});
      if (begin + takes > span.until) continue;
      if (!best || begin + takes < best->end || (begin + takes == best->end && one.home == bench)) best = {job, bench, begin, begin + takes, 0, true};
      break;
    }
  }
  if (best) problem.open[best->bench] = cut_out(problem.open[best->bench], {best->begin, best->end});
  return best;
}

}  // namespace

DayProblem problem_of(const DayInput& day) {
  DayProblem out;
  out.benches = day.benches.size();
  out.away = day.away_minutes * 60'000;
  UnixMs closes = day.now;
  for (const DayBench& bench : day.benches) {
    out.open.push_back(cut_out(joined(bench.open), {INT64_MIN, day.now}));
    if (!out.open.back().empty()) closes = std::max(closes, out.open.back().back().until);
    out.pace.push_back(bench.pace);
  }
  out.never = closes + kNotFitting;

  std::map<std::string, std::size_t> bench_named;
  for (std::size_t bench = 0; bench < day.benches.size(); ++bench) bench_named[day.benches[bench].name] = bench;
  std::map<std::string, const ToldJob*> told;
  for (const ToldJob& one : day.told) told[one.job] = &one;
  const auto add = [&](std::size_t job) {
    const DayJob& one = day.jobs[job];
    out.place.push_back(job);
    out.arrives.push_back(std::max(one.arrives, day.now));
    out.due.push_back(one.due.value_or(closes));
    out.weight.push_back(one.weight);
    out.home.push_back(one.home ? static_cast<int>(*one.home) : -1);
    const auto known = told.find(one.id);
    int bench_told = -1;
    if (known != told.end()) {
      const auto bench = bench_named.find(known->second->bench);
      bench_told = bench == bench_named.end() ? -2 : static_cast<int>(bench->second);  // a bench that is gone: a change wherever it goes
    }
    out.told_bench.push_back(bench_told);
    out.told_by.push_back(known != told.end() ? known->second->ready + day.told_slack : INT64_MAX);
    for (std::size_t bench = 0; bench < out.benches; ++bench) {
      const bool may = one.only.empty() || std::find(one.only.begin(), one.only.end(), bench) != one.only.end();
      out.length.push_back(may ? length_at(one, day.benches[bench]) : -1);
    }
  };
  std::vector<std::size_t> rushes, others;
  for (std::size_t job = 0; job < day.jobs.size(); ++job) {
    const DayJob& one = day.jobs[job];
    if (one.in_work) {
      const UnixMs end = ready_of(day, one);
      out.fixed.push_back({job, one.in_work->bench, one.in_work->since, end, 0, true});
      out.open[one.in_work->bench] = cut_out(out.open[one.in_work->bench], {INT64_MIN, end});
    } else {
      (one.on_court ? rushes : others).push_back(job);
    }
  }
  std::stable_sort(rushes.begin(), rushes.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(day.jobs[a].arrives, day.jobs[a].due.value_or(INT64_MAX)) < std::pair(day.jobs[b].arrives, day.jobs[b].due.value_or(INT64_MAX));
  });
  for (const std::size_t job : rushes) {
    if (const auto placed = at_once(day, out, job))
      out.fixed.push_back(*placed);
    else
      others.push_back(job);
  }
  std::sort(others.begin(), others.end());
  for (const std::size_t job : others) add(job);
  out.jobs = others.size();
  // What is fixed is reckoned like the rest, by a job that stands behind the free ones for a moment.
  for (PlannedJob& one : out.fixed) {
    add(one.job);
    const DayCost cost = out.cost(out.place.size() - 1, one.bench, one.end);
    out.fixed_cost.late += cost.late;
    out.fixed_cost.changed += cost.changed;
    one.late = std::max<std::int64_t>(0, one.end - day.jobs[one.job].due.value_or(INT64_MAX));
  }
  for (auto* list : {&out.arrives, &out.due, &out.told_by}) list->resize(out.jobs);
  out.place.resize(out.jobs);
  out.weight.resize(out.jobs);
  out.home.resize(out.jobs);
  out.told_bench.resize(out.jobs);
  out.length.resize(out.jobs * out.benches);
  return out;
}

}  // namespace weavelog
