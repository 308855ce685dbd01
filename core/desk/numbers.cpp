#include "core/desk/numbers.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/base/csv.h"
#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/model/queries.h"

namespace weavelog {
namespace {

constexpr std::int64_t kMostDays = 400;  // a clock that is wrong by years must not make a row for every day

/// A row that is being counted, with what its median is made from.
struct Counting {
  NumbersRow row;
  std::vector<std::int64_t> turnarounds;
};

/// The value that `part` of `of` are not above (nearest rank). Changes the order.
std::optional<std::int64_t> ranked(std::vector<std::int64_t>& values, std::size_t part, std::size_t of) {
  if (values.empty()) return std::nullopt;
  const std::size_t rank = std::max<std::size_t>((values.size() * part + of - 1) / of, 1) - 1;
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(rank), values.end());
  return values[rank];
}

template <class Key>
std::vector<NumbersRow> rows_of(std::map<Key, Counting>& counting) {
  std::vector<NumbersRow> rows;
  for (auto& [key, one] : counting) {
    one.row.turnaround = ranked(one.turnarounds, 1, 2);
    rows.push_back(std::move(one.row));
  }
  return rows;
}

void most_first(std::vector<NumbersRow>& rows) {
  std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.strung > b.strung; });
}

std::string string_key(const JobFacts& job) {
  if (job.crosses_string.empty() || job.crosses_string == job.mains_string) return job.mains_string;
  return job.mains_string + " / " + job.crosses_string;
}

/// Whole kilograms below; nothing where no tension was said.
std::optional<std::int64_t> tension_key(const JobFacts& job) {
  const auto newtons = job.mains_tension ? in_newtons(*job.mains_tension) : std::nullopt;
  if (!newtons || !(*newtons > 0) || *newtons > 10'000) return std::nullopt;
  // 24 kg said in pounds is 52.9 lb, so a hair below a whole kilogram still belongs to it.
  return static_cast<std::int64_t>(std::floor(*newtons / 9.80665 + 0.005));
}

/// Days of the calendar of one event, those in between that have nothing included.
void fill_days(std::map<std::int64_t, Counting>& days) {
  if (days.empty()) return;
  const std::int64_t first = days.begin()->first, last = days.rbegin()->first;
  if (last - first <= kMostDays)
    for (std::int64_t day = first; day <= last; ++day) (void)days[day];
  for (auto& [day, one] : days) one.row.key = date_text(day);
}

}  // namespace

std::optional<std::int64_t> RoomNumbers::on_time_per_mille() const {
  if (on_time + late == 0) return std::nullopt;
  return (on_time * 1000 + (on_time + late) / 2) / (on_time + late);
}

RoomNumbers numbers_of(std::span<const JobFacts> jobs, const std::string& zone, UnixMs now, std::int64_t from, std::int64_t until) {
  const LocalTime local(zone);
  const auto within = [&](const std::optional<std::int64_t>& at) { return at && *at >= from && *at < until; };
  RoomNumbers out;
  std::map<std::int64_t, Counting> days, hours, tensions;
  std::map<std::string, Counting> stringers, strings;
  std::vector<std::int64_t> turnarounds, waits;
  for (const JobFacts& job : jobs) {
    const JobTimes& times = job.times;
    const std::string string = string_key(job);
    const auto tension = tension_key(job);
    /// Counts in every table that the job belongs to; days and hours by the moment.
    const auto count = [&](std::int64_t at, auto add) {
      add(days[local.day_of(at)]);
      add(hours[local.hour_of(at)]);
      if (!times.strung_by.empty()) add(stringers[times.strung_by]);
      if (!string.empty()) add(strings[string]);
      if (tension) add(tensions[*tension]);
    };
    if (within(job.at)) {
      ++out.jobs;
      out.rush += job.rush != Rush::none;
      out.on_court += job.rush == Rush::on_court;
      count(*job.at, [](Counting& one) { ++one.row.taken_in; });
    }
    if (within(times.strung_at)) {
      ++out.strung;
      out.redone += times.strung_count > 1;
      count(*times.strung_at, [](Counting& one) { ++one.row.strung; });
    }
    if (within(times.ready_at)) {
      ++out.ready;
      const bool timed = job.ready_by.has_value(), late = timed && *times.ready_at > *job.ready_by;
      out.on_time += timed && !late;
      out.late += late;
      std::optional<std::int64_t> took;
      std::int64_t gone = 0;
      if (job.at && !__builtin_sub_overflow(*times.ready_at, *job.at, &gone) && gone >= 0) took = gone;
      if (took) turnarounds.push_back(*took);
      count(*times.ready_at, [&](Counting& one) {
        ++one.row.ready;
        one.row.on_time += timed && !late;
        one.row.late += late;
        if (took) one.turnarounds.push_back(*took);
      });
    }
    out.collected += within(times.collected_at);
    out.aside += job.stage == Stage::aside && within(job.at);
    if (job.stage < Stage::collected) {
      ++out.in_room;
      out.overdue += job.stage < Stage::ready && job.ready_by && *job.ready_by < now;
      out.waiting += job.stage == Stage::waiting;
    }
    if ((times.waited > 0 || times.waiting_since) && within(job.at)) ++out.waited;
    if (times.waited > 0 && within(job.at)) waits.push_back(times.waited);
  }
  out.wait = ranked(waits, 1, 2);
  out.turnaround = ranked(turnarounds, 1, 2);
  out.slow_turnaround = ranked(turnarounds, 9, 10);
  fill_days(days);
  if (!hours.empty())
    for (std::int64_t hour = hours.begin()->first; hour <= hours.rbegin()->first; ++hour) (void)hours[hour];
  for (auto& [hour, one] : hours) one.row.key = (hour < 10 ? "0" : "") + std::to_string(hour);
  for (auto& [name, one] : stringers) one.row.key = name;
  for (auto& [name, one] : strings) one.row.key = name;
  for (auto& [kilograms, one] : tensions) one.row.key = std::to_string(kilograms);
  out.by_day = rows_of(days);
  out.by_hour = rows_of(hours);
  out.by_stringer = rows_of(stringers);
  out.by_string = rows_of(strings);
  out.by_tension = rows_of(tensions);
  most_first(out.by_stringer);
  most_first(out.by_string);
  return out;
}

std::optional<std::int64_t> Growth::per_mille() const {
  if (last_sum <= 0) return std::nullopt;
  return (this_sum - last_sum) * 1000 / last_sum;
}

std::optional<Growth> growth_of(const Ledger& ledger, const BookId& event, const std::string& zone, UnixMs now) {
  const auto without_years = [](const std::string& name) {
    std::string key;
    for (const char c : search_key(name))
      if ((c < '0' || c > '9') && c != ' ') key += c;
    return key;
  };
  const auto events = all_events(ledger);
  const auto here = std::find_if(events.begin(), events.end(), [&](const EventRow& row) { return row.book == event; });
  if (here == events.end()) return std::nullopt;
  const auto first = day_from(here->first_day);
  if (!first) return std::nullopt;
  const EventRow* before = nullptr;
  std::int64_t before_first = 0;
  for (const EventRow& row : events) {
    const auto day = day_from(row.first_day);
    if (!day || row.book == event || without_years(row.name) != without_years(here->name)) continue;
    const std::int64_t apart = *first - *day;
    if (apart < 300 || apart > 430) continue;
    if (before && std::abs(apart - 365) >= std::abs(*first - before_first - 365)) continue;
    before = &row;
    before_first = *day;
  }
  if (before == nullptr) return std::nullopt;
  Growth growth;
  growth.before = before->book;
  growth.name = before->name;
  const LocalTime local(zone);
  const auto by_day = [&](const BookId& book, std::int64_t begin) {
    std::vector<std::int64_t> days;
    for (const JobFacts& job : job_facts(ledger, book)) {
      if (!job.at) continue;
      // What was taken in on the eve counts to the first day.
      const std::int64_t day = std::max<std::int64_t>(local.day_of(*job.at) - begin, 0);
      if (day > kMostDays) continue;
      if (days.size() <= static_cast<std::size_t>(day)) days.resize(static_cast<std::size_t>(day) + 1);
      ++days[static_cast<std::size_t>(day)];
    }
    return days;
  };
  growth.this_year = by_day(event, *first);
  growth.last_year = by_day(before->book, before_first);
  const std::int64_t today = std::max<std::int64_t>(local.day_of(now) - *first, 0);
  for (std::size_t day = 0; day < growth.this_year.size(); ++day) growth.this_sum += growth.this_year[day];
  for (std::size_t day = 0; day < growth.last_year.size(); ++day) {
    growth.last_whole += growth.last_year[day];
    if (static_cast<std::int64_t>(day) <= today) growth.last_sum += growth.last_year[day];
  }
  return growth;
}

std::string numbers_csv(const RoomNumbers& numbers) {
  CsvWriter csv;
  csv.row({"by", "key", "taken_in", "strung", "ready", "on_time", "late", "turnaround_minutes"});
  const auto add = [&](const char* by, const std::vector<NumbersRow>& rows) {
    for (const NumbersRow& row : rows)
      csv.row({by, row.key, std::to_string(row.taken_in), std::to_string(row.strung), std::to_string(row.ready), std::to_string(row.on_time),
               std::to_string(row.late), row.turnaround ? std::to_string(*row.turnaround / kMinuteMs) : std::string()});
  };
  NumbersRow all;
  all.key = "all";
  all.taken_in = numbers.jobs;
  all.strung = numbers.strung;
  all.ready = numbers.ready;
  all.on_time = numbers.on_time;
  all.late = numbers.late;
  all.turnaround = numbers.turnaround;
  add("event", {all});
  add("day", numbers.by_day);
  add("hour", numbers.by_hour);
  add("stringer", numbers.by_stringer);
  add("string", numbers.by_string);
  add("tension_kg", numbers.by_tension);
  return csv.text();
}

}  // namespace weavelog
