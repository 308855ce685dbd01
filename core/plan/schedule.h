#pragma once
// Rackets to benches over the day, so that as little as possible is late, then so that as little as possible changes of what was told.
//
// What is minimised, the first part before the second: the sum of weight x ms late, where leaving the home bench counts as so many minutes
// (DayInput::away_minutes); the number of rackets that were told another bench or an earlier time. A racket is strung without a break, so it
// has to fit between two breaks. What is in work stays where it is. An on-court rush takes the bench at which it is ready first, before all
// that waits; it does not take a racket off a machine. What does not fit any more counts as a day late (kNotFitting).

#include <compare>

#include "core/plan/day.h"

namespace weavelog {

struct DayCost {
  std::int64_t late = 0;     ///< weight x ms
  std::int64_t changed = 0;  ///< rackets
  auto operator<=>(const DayCost&) const = default;
};

struct PlannedJob {
  std::size_t job = 0;    ///< place in DayInput::jobs
  std::size_t bench = 0;
  UnixMs begin = 0, end = 0;
  std::int64_t late = 0;  ///< ms after what is due
  bool fixed = false;     ///< in work, or an on-court rush
};

struct DayPlan {
  std::vector<PlannedJob> jobs;      ///< in order of begin
  std::vector<std::size_t> unfitting;  ///< rackets for which no shift has room, in order of due
  DayCost cost;
  std::int64_t bound = 0;      ///< no plan has less DayCost::late
  std::size_t surely_late = 0;  ///< at least so many are late, whoever strings what

  [[nodiscard]] const PlannedJob* of(std::size_t job) const;
};

/// How much is tried: the whole day; or quickly on from what was told, after one event, where a change also has to be worth something
/// (DayInput::change_minutes): a plan that was good enough is not turned over for a few minutes.
enum class PlanEffort { day, event };

/// The same input gives the same plan on every machine. Faults: those of check_day().
[[nodiscard]] Outcome<DayPlan> plan_day(const DayInput& day, PlanEffort effort = PlanEffort::day);

/// A plan as what was told, for the next one.
[[nodiscard]] std::vector<ToldJob> told_by(const DayInput& day, const DayPlan& plan);

/// A racket that is elsewhere or later than told: what gives way.
struct PlanChange {
  std::size_t job = 0;  ///< place in DayInput::jobs
  std::string bench_told, bench_now;
  UnixMs ready_told = 0;
  std::optional<UnixMs> ready_now{};  ///< none: it does not fit any more
  bool late_told = false, late_now = false;
};
/// What comes later by most first.
[[nodiscard]] std::vector<PlanChange> changes_of(const DayInput& day, const DayPlan& plan);

/// That the shifts can't carry the load, with the rackets that do not fit; nothing if all do.
[[nodiscard]] std::optional<Fault> overload_of(const DayInput& day, const DayPlan& plan);

}  // namespace weavelog
