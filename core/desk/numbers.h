#pragma once
// The numbers of a room: how much, how fast, how punctual; by day, hour, stringer, string and tension; beside the year before.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/model/job_facts.h"

namespace weavelog {

/// Counts of one day, hour, stringer, string or tension. Whatever is counted is counted where it happened: a racket taken in on
/// Monday and made ready on Tuesday is in both days.
struct NumbersRow {
  std::string key;
  std::int64_t taken_in = 0;
  std::int64_t strung = 0;   ///< counted when it was strung last
  std::int64_t ready = 0;    ///< made ready, and not taken back since
  std::int64_t on_time = 0;  ///< of those that had a time: ready by then
  std::int64_t late = 0;
  std::optional<std::int64_t> turnaround;  ///< ms from taken in to ready: the median
};

struct RoomNumbers {
  std::int64_t jobs = 0;       ///< taken in
  std::int64_t strung = 0;
  std::int64_t ready = 0;
  std::int64_t collected = 0;
  std::int64_t aside = 0;
  std::int64_t in_room = 0;    ///< now: neither collected nor aside
  std::int64_t rush = 0;       ///< on-court rushes included
  std::int64_t on_court = 0;
  std::int64_t redone = 0;     ///< strung more than once
  std::int64_t on_time = 0;
  std::int64_t late = 0;
  std::int64_t overdue = 0;    ///< now: not ready although its time has passed
  std::int64_t waiting = 0;    ///< now: for an answer
  std::int64_t waited = 0;     ///< jobs that waited for an answer at any time
  std::optional<std::int64_t> wait;              ///< ms: the median wait of those that were answered
  std::optional<std::int64_t> turnaround;        ///< ms: the median
  std::optional<std::int64_t> slow_turnaround;   ///< ms: nine of ten were faster
  std::vector<NumbersRow> by_day;       ///< "2031-05-26", every day from the first to the last
  std::vector<NumbersRow> by_hour;      ///< "00" to "23", from the first that has anything to the last
  std::vector<NumbersRow> by_stringer;  ///< most strung first
  std::vector<NumbersRow> by_string;    ///< "mains", or "mains / crosses" of a hybrid; most strung first
  std::vector<NumbersRow> by_tension;   ///< of the mains, whole kilograms: "24" is from 24 to under 25; ascending

  /// Of 1,000 that had a time and are ready, those on time.
  [[nodiscard]] std::optional<std::int64_t> on_time_per_mille() const;
};

/// What happened in [from, until) is counted; what is `now` is as of now whatever the span. Days and hours as the zone tells them.
[[nodiscard]] RoomNumbers numbers_of(std::span<const JobFacts> jobs, const std::string& zone, UnixMs now, std::int64_t from = INT64_MIN,
                                     std::int64_t until = INT64_MAX);

/// Jobs taken in, this year and the year before, by the day of the event.
struct Growth {
  BookId before;
  std::string name;                        ///< of the event before
  std::vector<std::int64_t> this_year;     ///< taken in on the first, second, ... day, up to today
  std::vector<std::int64_t> last_year;     ///< on all of its days
  std::int64_t this_sum = 0;
  std::int64_t last_sum = 0;               ///< up to the same day
  std::int64_t last_whole = 0;
  /// How many more of 1,000; nothing if there were none last year.
  [[nodiscard]] std::optional<std::int64_t> per_mille() const;
};
/// The event of the same name (years in it do not count) that began 300 to 430 days before, the nearest to a year. Nothing if there is
/// none here, or this event does not say when it begins.
[[nodiscard]] std::optional<Growth> growth_of(const Ledger& ledger, const BookId& event, const std::string& zone, UnixMs now);

/// One row a count: by, key, taken_in, strung, ready, on_time, late, turnaround_minutes (RFC 4180).
[[nodiscard]] std::string numbers_csv(const RoomNumbers& numbers);

}  // namespace weavelog
