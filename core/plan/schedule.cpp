#include "core/plan/schedule.h"

#include <algorithm>
#include <map>

#include "core/base/iso_time.h"
#include "core/plan/day_problem.h"

namespace weavelog {
namespace {

/// What was told, as sequences of the free jobs at their benches.
std::vector<std::vector<std::uint32_t>> told_sequences(const DayInput& day, const DayProblem& problem) {
  std::map<std::string, const ToldJob*> told;
  for (const ToldJob& one : day.told) told[one.job] = &one;
  std::vector<std::vector<std::pair<UnixMs, std::uint32_t>>> order(problem.benches);
  for (std::uint32_t job = 0; job < problem.jobs; ++job) {
    const int bench = problem.told_bench[job];
    if (bench < 0 || problem.at(job, static_cast<std::size_t>(bench)) < 0) continue;
    order[static_cast<std::size_t>(bench)].emplace_back(told.at(day.jobs[problem.place[job]].id)->begin, job);
  }
  std::vector<std::vector<std::uint32_t>> out(problem.benches);
  for (std::size_t bench = 0; bench < problem.benches; ++bench) {
    std::sort(order[bench].begin(), order[bench].end());
    for (const auto& [begin, job] : order[bench]) out[bench].push_back(job);
  }
  return out;
}

}  // namespace

const PlannedJob* DayPlan::of(std::size_t job) const {
  const auto found = std::find_if(jobs.begin(), jobs.end(), [&](const PlannedJob& one) { return one.job == job; });
  return found == jobs.end() ? nullptr : &*found;
}

Outcome<DayPlan> plan_day(const DayInput& day, PlanEffort effort) {
  if (auto checked = check_day(day); !checked) return fail(checked.error());
  DayProblem problem = problem_of(day);
  const std::int64_t bound = bound_of(problem);
  if (effort == PlanEffort::event) problem.change = day.change_minutes * 60'000;
  const auto sequences = search_day(problem, bound, effort, told_sequences(day, problem));
  problem.change = 0;
  DayPlan out;
  out.jobs = problem.fixed;
  out.cost = problem.fixed_cost;
  out.bound = bound + problem.fixed_cost.late;
  out.surely_late = surely_late_of(problem);
  for (const PlannedJob& one : problem.fixed) out.surely_late += one.late > 0;
  for (std::size_t bench = 0; bench < problem.benches; ++bench) {
    UnixMs time = 0;
    std::size_t window = 0;
    for (const std::uint32_t job : sequences[bench]) {
      const UnixMs end = problem.end_at(job, bench, time, window);
      const DayCost cost = problem.cost(job, bench, end);
      out.cost.late += cost.late;
      out.cost.changed += cost.changed;
      if (end >= problem.never) {
        out.unfitting.push_back(problem.place[job]);
        continue;
      }
      time = end;
      const auto due = day.jobs[problem.place[job]].due;
      out.jobs.push_back({problem.place[job], bench, end - problem.at(job, bench), end, due ? std::max<std::int64_t>(0, end - *due) : 0, false});
    }
  }
  std::stable_sort(out.jobs.begin(), out.jobs.end(), [](const PlannedJob& a, const PlannedJob& b) { return a.begin < b.begin; });
  std::stable_sort(out.unfitting.begin(), out.unfitting.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(day.jobs[a].due.value_or(INT64_MAX), a) < std::pair(day.jobs[b].due.value_or(INT64_MAX), b);
  });
  return out;
}

std::vector<ToldJob> told_by(const DayInput& day, const DayPlan& plan) {
  std::vector<ToldJob> out;
  for (const PlannedJob& one : plan.jobs) out.push_back({day.jobs[one.job].id, day.benches[one.bench].name, one.begin, one.end});
  return out;
}

std::vector<PlanChange> changes_of(const DayInput& day, const DayPlan& plan) {
  std::map<std::string, const ToldJob*> told;
  for (const ToldJob& one : day.told) told[one.job] = &one;
  std::vector<PlanChange> out;
  const auto compare = [&](std::size_t job, const PlannedJob* now) {
    const auto known = told.find(day.jobs[job].id);
    if (known == told.end()) return;
    const ToldJob& before = *known->second;
    PlanChange change{job, before.bench, now != nullptr ? day.benches[now->bench].name : std::string(), before.ready};
    if (now != nullptr) change.ready_now = now->end;
    const UnixMs due = day.jobs[job].due.value_or(INT64_MAX);
    change.late_told = before.ready > due;
    change.late_now = now == nullptr ? day.jobs[job].due.has_value() : now->end > due;
    if (now == nullptr || change.bench_now != change.bench_told || now->end > before.ready + day.told_slack) out.push_back(std::move(change));
  };
  for (const PlannedJob& one : plan.jobs) compare(one.job, &one);
  for (const std::size_t job : plan.unfitting) compare(job, nullptr);
  std::stable_sort(out.begin(), out.end(), [](const PlanChange& a, const PlanChange& b) {
    const auto later = [](const PlanChange& one) { return one.ready_now ? *one.ready_now - one.ready_told : INT64_MAX; };
    return later(a) > later(b);
  });
  return out;
}

std::optional<Fault> overload_of(const DayInput& day, const DayPlan& plan) {
  if (plan.unfitting.empty()) return std::nullopt;
  std::string names;
  std::int64_t minutes = 0;
  UnixMs closes = 0;
  for (std::size_t i = 0; i < plan.unfitting.size(); ++i) {
    const DayJob& job = day.jobs[plan.unfitting[i]];
    minutes += job.length / 60'000;
    if (i < 8) names += (i > 0 ? ", " : "") + job.id;
  }
  if (plan.unfitting.size() > 8) names += " and " + std::to_string(plan.unfitting.size() - 8) + " more";
  for (const DayBench& bench : day.benches)
    for (const TimeSpan& span : bench.open) closes = std::max(closes, span.until);
  const auto count = plan.unfitting.size();
  return Fault{FaultCode::bad_input, "the shifts can't carry the load: no time is left for racket" + std::string(count == 1 ? " " : "s ") + names,
               closes > day.now ? "shifts, which end at " + iso_utc(closes) : "shifts, which are over",
               "add shifts of " + std::to_string(minutes) + " minutes together, or agree on a later day for what is named"};
}

}  // namespace weavelog
