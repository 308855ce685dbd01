#include "core/plan/day.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/base/iso_time.h"

namespace weavelog {
namespace {

constexpr UnixMs kFar = 10'000'000'000'000;  // the year 2286
constexpr std::int64_t kNear = 400LL * 86'400'000;  // a plan knows nothing further from now: so no sum of lateness overflows

bool near_now(const DayInput& day, UnixMs at) { return can_be_planned(day.now, at); }

struct Use {
  TimeSpan span;
  const DayBench* bench = nullptr;
};

/// Nobody and nothing is at two benches at a time.
Outcome<> check_shared(const DayInput& day, std::string DayBench::* who, const char* what) {
  std::map<std::string, std::vector<Use>> uses;
  for (const DayBench& bench : day.benches)
    if (!(bench.*who).empty())
      for (const TimeSpan& span : bench.open) uses[bench.*who].push_back({span, &bench});
  for (auto& [name, list] : uses) {
    std::sort(list.begin(), list.end(), [](const Use& a, const Use& b) { return a.span.from < b.span.from; });
    for (std::size_t i = 1; i < list.size(); ++i)
      if (list[i].span.from < list[i - 1].span.until && list[i].bench != list[i - 1].bench)
        return fail(FaultCode::bad_input,
                    std::string(what) + " " + name + " is at " + list[i - 1].bench->name + " and at " + list[i].bench->name + " at once, from " +
                        iso_utc(list[i].span.from),
                    "shifts", "change one of the two shifts");
  }
  return {};
}

Outcome<> check_bench(const DayInput& day, const DayBench& bench) {
  const std::string place = "bench " + bench.name;
  if (bench.name.empty()) return fail(FaultCode::bad_input, "a bench has no name", "benches", "give it one");
  if (!(bench.pace >= 0.1 && bench.pace <= 10)) return fail(FaultCode::bad_input, "this pace can't be", place, "1 is the room's; give 0.1 to 10");
  for (const TimeSpan& span : bench.open) {
    if (!near_now(day, span.from) || !near_now(day, span.until))
      return fail(FaultCode::bad_input, "this time can't be: it is more than 400 days from now", place, "check the shift's times");
    if (span.until <= span.from)
      return fail(FaultCode::bad_input, "it closes before it opens, at " + iso_utc(span.from), place, "check the shift's times");
  }
  return {};
}

Outcome<> check_job(const DayInput& day, const DayJob& job) {
  const std::string place = "racket " + job.id;
  if (job.id.empty()) return fail(FaultCode::bad_input, "a racket has no number", "jobs", "give it one");
  if (job.length <= 0 || job.length > kLongestLength)
    return fail(FaultCode::bad_input, "no racket takes " + std::to_string(job.length / 60'000) + " minutes", place, "give up to 12 hours");
  if (job.weight < 1 || job.weight > 1000) return fail(FaultCode::bad_input, "its weight is " + std::to_string(job.weight), place, "give 1 to 1,000");
  if (!near_now(day, job.arrives) || !near_now(day, job.due.value_or(day.now)) || (job.in_work && !near_now(day, job.in_work->since)))
    return fail(FaultCode::bad_input, "this time can't be: it is more than 400 days from now", place, "check when it comes and when it is wanted");
  std::vector<std::size_t> named = job.only;
  if (job.home) named.push_back(*job.home);
  if (job.in_work) named.push_back(job.in_work->bench);
  for (const std::size_t bench : named)
    if (bench >= day.benches.size()) return fail(FaultCode::bad_input, "it names a bench that is not there", place, "correct the bench");
  if (job.in_work && job.in_work->since > day.now)
    return fail(FaultCode::bad_input, "it is in work since a time to come", place, "check when it went on the machine");
  return {};
}

}  // namespace

bool can_be_planned(UnixMs now, UnixMs at) { return at >= 0 && at <= kFar && std::abs(at - now) <= kNear; }

Outcome<> check_day(const DayInput& day) {
  if (day.benches.empty()) return fail(FaultCode::bad_input, "there is no bench", "benches", "give at least one stringer a shift");
  if (day.benches.size() > kMostBenches) return fail(FaultCode::bad_input, "there are more than 200 benches", "benches", "plan one room at a time");
  if (day.jobs.size() > kMostDayJobs) return fail(FaultCode::bad_input, "there are more than 5,000 rackets", "jobs", "plan a day at a time");
  if (day.now < 0 || day.now > kFar) return fail(FaultCode::bad_input, "this time can't be", "now", "check the clock");
  if (day.away_minutes < 0 || day.away_minutes > 10'000 || day.told_slack < 0 || day.told_slack > kNotFitting || day.change_minutes < 0 ||
      day.change_minutes > 10'000)
    return fail(FaultCode::bad_input, "a weight of the plan can't be", "weights", "give minutes from 0 up");
  std::set<std::string> names, ids;
  for (const DayBench& bench : day.benches) {
    if (auto checked = check_bench(day, bench); !checked) return checked;
    if (!names.insert(bench.name).second) return fail(FaultCode::bad_input, "two benches have this name", "bench " + bench.name, "rename one");
  }
  for (const ToldJob& one : day.told)
    if (!near_now(day, one.begin) || !near_now(day, one.ready))
      return fail(FaultCode::bad_input, "what was told of it is more than 400 days from now", "racket " + one.job, "leave the earlier plan out");
  std::map<std::size_t, std::string> in_work;
  for (const DayJob& job : day.jobs) {
    if (auto checked = check_job(day, job); !checked) return checked;
    if (!ids.insert(job.id).second) return fail(FaultCode::bad_input, "this racket is there twice", "racket " + job.id, "leave one of the two out");
    if (!job.in_work) continue;
    const auto [other, first] = in_work.emplace(job.in_work->bench, job.id);
    if (!first)
      return fail(FaultCode::bad_input, "racket " + other->second + " is in work at bench " + day.benches[job.in_work->bench].name + " too",
                  "racket " + job.id, "only one racket is on a machine");
  }
  if (auto checked = check_shared(day, &DayBench::stringer, "stringer"); !checked) return checked;
  return check_shared(day, &DayBench::machine, "machine");
}

std::vector<TimeSpan> joined(std::vector<TimeSpan> spans) {
  std::sort(spans.begin(), spans.end(), [](const TimeSpan& a, const TimeSpan& b) { return a.from < b.from; });
  std::vector<TimeSpan> out;
  for (const TimeSpan& span : spans) {
    if (span.until <= span.from) continue;
    if (!out.empty() && span.from <= out.back().until)
      out.back().until = std::max(out.back().until, span.until);
    else
      out.push_back(span);
  }
  return out;
}

std::vector<TimeSpan> cut_out(std::vector<TimeSpan> from, const TimeSpan& what) {
  std::vector<TimeSpan> out;
  for (const TimeSpan& span : from) {
    const UnixMs left = std::min(span.until, what.from), right = std::max(span.from, what.until);
    if (what.until <= what.from || what.from >= span.until || what.until <= span.from) {
      out.push_back(span);
      continue;
    }
    if (span.from < left) out.push_back({span.from, left});
    if (right < span.until) out.push_back({right, span.until});
  }
  return out;
}

std::int64_t length_at(const DayJob& job, const DayBench& bench) {
  return std::max<std::int64_t>(1, std::llround(static_cast<double>(job.length) * bench.pace));
}

UnixMs ready_of(const DayInput& day, const DayJob& job) {
  return std::max(job.in_work->since + length_at(job, day.benches[job.in_work->bench]), day.now + 3 * 60'000);
}

}  // namespace weavelog
