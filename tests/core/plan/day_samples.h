#pragma once
// Days to plan in tests, and what has to hold of any plan.

#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/base/local_time.h"
#include "core/plan/chance.h"
#include "core/plan/schedule.h"

namespace weavelog::test {

inline constexpr UnixMs kMorning = 1'937'548'800'000;  // a morning, 2031-05-26T00:00:00Z and 8 hours

/// A day of a busy room: benches from 0 to 600 minutes with a break, rackets that come over the day and are wanted some hours later.
inline DayInput room(std::size_t benches, std::size_t jobs, std::uint64_t start) {
  Chance chance(start);
  DayInput day;
  day.now = kMorning;
  for (std::size_t b = 0; b < benches; ++b) {
    DayBench bench{"bench " + std::to_string(b + 1), "stringer " + std::to_string(b + 1), "machine " + std::to_string(b + 1)};
    bench.pace = 0.85 + 0.3 * chance.uniform();
    const UnixMs rest = kMorning + static_cast<std::int64_t>(200 + 15 * chance.below(8)) * kMinuteMs;
    bench.open = {{kMorning, rest}, {rest + 45 * kMinuteMs, kMorning + 780 * kMinuteMs}};
    day.benches.push_back(bench);
  }
  for (std::size_t j = 0; j < jobs; ++j) {
    DayJob job;
    job.id = std::to_string(101 + j);
    job.length = static_cast<std::int64_t>(18 + chance.below(16)) * kMinuteMs;
    job.arrives = kMorning + static_cast<std::int64_t>(chance.below(3) == 0 ? 0 : chance.below(420)) * kMinuteMs;
    job.due = job.arrives + static_cast<std::int64_t>(45 + chance.below(300)) * kMinuteMs;
    job.weight = chance.below(6) == 0 ? 5 : 1;
    if (chance.below(2) == 0) job.home = chance.below(benches);
    day.jobs.push_back(job);
  }
  return day;
}

/// Every racket once, at a bench that may, in its time, none over another, the cost as told.
inline void sound(const DayInput& day, const DayPlan& plan) {
  std::set<std::size_t> seen(plan.unfitting.begin(), plan.unfitting.end());
  std::map<std::size_t, UnixMs> free;
  for (const PlannedJob& one : plan.jobs) {
    const DayJob& job = day.jobs.at(one.job);
    const bool fresh = seen.insert(one.job).second;
    bool right = fresh && one.begin >= free[one.bench] && (job.only.empty() || std::count(job.only.begin(), job.only.end(), one.bench) == 1);
    free[one.bench] = one.end;
    right = right && one.late == (job.due ? std::max<std::int64_t>(0, one.end - *job.due) : 0);
    if (!job.in_work) {
      right = right && one.begin >= std::max(job.arrives, day.now) && one.end - one.begin == length_at(job, day.benches[one.bench]);
      bool open = false;
      for (const TimeSpan& span : joined(day.benches[one.bench].open)) open = open || (span.from <= one.begin && one.end <= span.until);
      right = right && open;
    }
    if (!right) FAIL("racket " << job.id << " can't be where it is planned");
  }
  if (seen.size() != day.jobs.size()) FAIL("not every racket is planned");
  if (plan.bound > plan.cost.late) FAIL("the bound is above the plan");
}

}  // namespace weavelog::test
