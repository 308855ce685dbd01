// A day on benches and the promises of its desk, as the room grows.

#include <algorithm>

#include "core/plan/chance.h"
#include "core/plan/list_rules.h"
#include "core/plan/promise.h"
#include "core/plan/schedule.h"
#include "tests/bench/benches.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

const std::string kPlanDayBench = "plan of a day";
constexpr std::int64_t kMinute = 60'000;
constexpr UnixMs kMorning = 1'937'548'800'000;

/// 25 rackets a bench, all benches alike and without breaks, so that plain list scheduling is a fair reference.
DayInput made_up(std::size_t jobs, std::size_t benches) {
  Chance chance(jobs);
  DayInput day;
  day.now = kMorning;
  for (std::size_t bench = 0; bench < benches; ++bench)
    day.benches.push_back({"bench " + std::to_string(bench + 1), "", "", {{kMorning, kMorning + 900 * kMinute}}});
  for (std::size_t i = 0; i < jobs; ++i) {
    DayJob job{std::to_string(i + 1), kMorning + static_cast<std::int64_t>(chance.below(330)) * kMinute,
               static_cast<std::int64_t>(18 + chance.below(16)) * kMinute};
    job.due = job.arrives + static_cast<std::int64_t>(45 + chance.below(240)) * kMinute;
    job.weight = chance.below(6) == 0 ? 5 : 1;
    day.jobs.push_back(std::move(job));
  }
  return day;
}

/// The reference: whenever a bench is free it takes what is there and due first. Weighted minutes late.
double due_first(const DayInput& day) {
  std::vector<ListTask> tasks;
  std::vector<std::int64_t> dues;
  for (const DayJob& job : day.jobs) {
    tasks.push_back({job.length, job.arrives, {}, {}});
    dues.push_back(*job.due);
  }
  const auto turns = must(list_schedule(tasks, day.benches.size(), by_due(dues)));
  std::int64_t late = 0;
  for (std::size_t job = 0; job < turns.size(); ++job) late += day.jobs[job].weight * std::max<std::int64_t>(0, turns[job].end - dues[job]);
  return static_cast<double>(late) / kMinute;
}

void day_of(Report& report, std::size_t jobs, int runs) {
  const std::size_t benches = jobs / 25;
  const std::string size = std::to_string(jobs) + " rackets, " + std::to_string(benches) + " benches";
  DayInput day = made_up(jobs, benches);
  Figure whole{kPlanDayBench, size, "ms", {}, {}, jobs == 500 ? "under 100 ms" : "", "due first"};
  Figure late{kPlanDayBench, size + ": late, weighted", "min", {}, {}, "", "due first"};
  DayPlan plan;
  for (int run = 0; run < runs; ++run) {
    Stopwatch watch;
    plan = must(plan_day(day));
    whole.runs.values.push_back(watch.milliseconds());
    watch = {};
    const double reference = due_first(day);
    whole.reference.values.push_back(watch.milliseconds());
    late.runs.values = {static_cast<double>(plan.cost.late) / kMinute};
    late.reference.values = {reference};
  }
  report.say(whole);
  report.say(late);
  report.say(kPlanDayBench, size + ": no plan is less late", "min", static_cast<double>(plan.bound) / kMinute);

  // A rush at once, on from the plan that was told.
  day.told = told_by(day, plan);
  DayJob rush{"rush", day.now, 20 * kMinute, day.now + 25 * kMinute, 100};
  rush.on_court = true;
  day.jobs.push_back(std::move(rush));
  Figure event{kPlanDayBench, size + ": after a rush", "ms", {}, {}, jobs == 500 ? "under 20 ms" : "", "due first"};
  for (int run = 0; run < runs; ++run) {
    Stopwatch watch;
    plan = must(plan_day(day, PlanEffort::event));
    event.runs.values.push_back(watch.milliseconds());
    watch = {};
    (void)due_first(day);
    event.reference.values.push_back(watch.milliseconds());
  }
  report.say(event);
  report.say(kPlanDayBench, size + ": told otherwise by it", "rackets", static_cast<double>(plan.cost.changed));
}

void promise_of(Report& report, std::size_t jobs, int runs) {
  PromiseInput input;
  input.day = made_up(jobs, std::max<std::size_t>(1, jobs / 12));
  for (DayJob& job : input.day.jobs) job.arrives = kMorning;
  input.own.assign(input.day.jobs.size(), 0.18);
  input.shared.assign(input.day.benches.size(), 0.05);
  input.rushes_per_hour = 0.5;
  input.rushes_seen = 20;
  Figure figure{kPlanDayBench, "promise behind " + std::to_string(jobs) + " rackets", "ms", {}, {}, "", "due first, 100 times"};
  for (int run = 0; run < runs; ++run) {
    Stopwatch watch;
    (void)must(must(Promiser::make(input)).earliest({"new", kMorning, 25 * kMinute}, 0.18));
    figure.runs.values.push_back(watch.milliseconds());
    watch = {};
    for (int time = 0; time < 100; ++time) (void)due_first(input.day);
    figure.reference.values.push_back(watch.milliseconds());
  }
  report.say(figure);
}

}  // namespace

void plan_of_day(Report& report, const Setting& setting) {
  for (const std::size_t jobs : {100U, 500U, 2000U}) day_of(report, jobs, setting.full ? 9 : 3);
  for (const std::size_t jobs : {24U, 96U}) promise_of(report, jobs, setting.full ? 9 : 3);
}

}  // namespace weavelog::bench
