#pragma once
// A day of the room as plans see it: benches with the times at which they are open, rackets with the times that they are wanted. Knows no
// ledger and no files.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/outcome.h"

namespace weavelog {

struct TimeSpan {
  UnixMs from = 0;
  UnixMs until = 0;
  bool operator==(const TimeSpan&) const = default;
};

/// A stringer at a machine.
struct DayBench {
  std::string name;
  std::string stringer, machine;  ///< "" if not said
  std::vector<TimeSpan> open{};   ///< the shift without breaks and without times when the machine is out of order
  double pace = 1;                ///< times as long as the room takes
};

/// Where a racket is being strung, since when.
struct InWork {
  std::size_t bench = 0;
  UnixMs since = 0;
};

struct DayJob {
  std::string id;
  UnixMs arrives = 0;               ///< can't begin before
  std::int64_t length = 0;          ///< ms at pace 1
  std::optional<UnixMs> due{};      ///< wanted ready by; none: some time while benches are open
  std::int64_t weight = 1;          ///< 1 to 1,000: what a minute late counts
  std::optional<std::size_t> home{};  ///< its player's home bench
  std::vector<std::size_t> only{};  ///< the benches that may string it; empty: all
  bool on_court = false;            ///< a rush from the court: begins before all that waits
  std::optional<InWork> in_work{};
};

/// What was said of a racket before, by an earlier plan.
struct ToldJob {
  std::string job, bench;
  UnixMs begin = 0, ready = 0;
};

/// A plan knows no time that lies further than 400 days from now.
[[nodiscard]] bool can_be_planned(UnixMs now, UnixMs at);

struct DayInput {
  UnixMs now = 0;
  std::vector<DayBench> benches;
  std::vector<DayJob> jobs;
  std::vector<ToldJob> told{};
  std::int64_t away_minutes = 10;         ///< leaving the home bench counts as so many minutes late
  std::int64_t told_slack = 5 * 60'000;   ///< ms: later than told by no more is no change
  std::int64_t change_minutes = 15;       ///< after one event only: what a change has to save, in minutes late at weight 1
};

inline constexpr std::size_t kMostBenches = 200, kMostDayJobs = 5000;
inline constexpr std::int64_t kLongestLength = 12LL * 3'600'000;
/// What does not fit while benches are open counts as ready so long after the last of them closes.
inline constexpr std::int64_t kNotFitting = 24LL * 3'600'000;

/// Faults: bad_input, each naming the bench or racket and what to do (names twice; an end before its beginning; one stringer at two benches
/// or one machine under two stringers at a time; a length, weight or pace that can't be; a bench that is not there; two rackets in work at
/// one bench; more than the bounds above).
[[nodiscard]] Outcome<> check_day(const DayInput& day);

/// The spans without what is in `what`; in order as they were.
[[nodiscard]] std::vector<TimeSpan> cut_out(std::vector<TimeSpan> from, const TimeSpan& what);
/// In order, overlapping ones joined, empty ones dropped.
[[nodiscard]] std::vector<TimeSpan> joined(std::vector<TimeSpan> spans);
/// How long a racket takes at a bench: ms, at least one.
[[nodiscard]] std::int64_t length_at(const DayJob& job, const DayBench& bench);
/// When what is in work is ready: as planned, but never before three minutes from now (common practice, no source: whoever runs over has
/// knots to tie yet).
[[nodiscard]] UnixMs ready_of(const DayInput& day, const DayJob& job);

}  // namespace weavelog
