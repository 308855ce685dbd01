#include "core/desk/room_promise.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/base/local_time.h"
#include "core/plan/day_tables.h"

namespace weavelog {
namespace {

constexpr std::int64_t kRoundMs = 5 * kMinuteMs;
constexpr std::size_t kMostRackets = 20;
constexpr int kMostSteps = 24;  ///< two hours

/// Up to whole five minutes, as people tell times.
UnixMs told_time(UnixMs at) { return (at + kRoundMs - 1) / kRoundMs * kRoundMs; }

}  // namespace

Outcome<RoomPromises> RoomPromises::make(const Ledger& ledger, const BookId& event, UnixMs now, std::span<const EntityId> without) {
  auto day = RoomDay::make(ledger, event, now);
  if (!day) return fail(day.error());
  RoomPromises out;
  out.input_ = day->promise_input();
  for (std::size_t job = 0; job < day->input().jobs.size(); ++job) {
    const auto at = static_cast<std::ptrdiff_t>(out.places_.size());
    if (std::find(without.begin(), without.end(), day->racket(job).job) == without.end()) {
      out.places_.push_back(job);
    } else {
      out.input_.day.jobs.erase(out.input_.day.jobs.begin() + at);
      out.input_.own.erase(out.input_.own.begin() + at);
    }
  }
  out.day_ = std::make_shared<const RoomDay>(std::move(*day));
  auto queue = Promiser::make(out.input_);
  if (!queue) return fail(queue.error());
  out.queue_ = std::make_shared<const Promiser>(std::move(*queue));
  return out;
}

Outcome<std::vector<DayJob>> RoomPromises::jobs_of(const RacketsToCome& rackets) const {
  if (rackets.kinds.empty() || rackets.kinds.size() > kMostRackets)
    return fail(FaultCode::bad_input, "a time is promised for 1 to " + std::to_string(kMostRackets) + " rackets", "rackets",
                "take more in parts");
  std::vector<DayJob> out;
  for (std::size_t i = 0; i < rackets.kinds.size(); ++i) {
    DayJob job;
    job.id = "new " + std::to_string(i + 1);
    job.arrives = input_.day.now;
    job.length = std::llround(day_->times().of("", rackets.kinds[i]).mean() * static_cast<double>(kMinuteMs));
    job.on_court = rackets.rush == Rush::on_court;
    out.push_back(std::move(job));
  }
  return out;
}

double RoomPromises::spread(const RacketsToCome& rackets, std::size_t racket) const { return own_spread(day_->times(), rackets.kinds[racket]); }

Outcome<Promise> RoomPromises::earliest(const RacketsToCome& rackets) const {
  const auto jobs = jobs_of(rackets);
  if (!jobs) return fail(jobs.error());
  PromiseInput input = input_;
  std::optional<Promiser> held;
  Promise last;
  for (std::size_t i = 0; i < jobs->size(); ++i) {
    const Promiser& queue = held ? *held : *queue_;
    const auto found = queue.earliest((*jobs)[i], spread(rackets, i));
    if (!found) return fail(found.error());
    last = i == 0 || found->ready_by >= last.ready_by ? *found : last;
    if (i + 1 == jobs->size()) break;
    // The next one comes behind this one.
    DayJob taken = (*jobs)[i];
    taken.due = found->ready_by;
    input.day.jobs.push_back(std::move(taken));
    input.own.push_back(spread(rackets, i));
    auto next = Promiser::make(input);
    if (!next) return fail(next.error());
    held = std::move(*next);
  }
  last.ready_by = told_time(last.ready_by + day_->finishing());
  last.expected += day_->finishing();
  // Between what the benches finish and the round time that is told, another racket may be due, behind which these then stand: what is offered
  // has to be what is kept when it is taken. One for the court goes first whatever it costs.
  if (rackets.rush == Rush::on_court) return last;
  for (int step = 0; step < kMostSteps; ++step) {
    const auto kept = weigh(rackets, last.ready_by);
    if (!kept) return fail(kept.error());
    last.chance = kept->chance;
    if (kept->can_be_kept) return last;
    last.ready_by += kRoundMs;
  }
  return fail(FaultCode::bad_input, "no time can be promised: whatever is told would endanger what was promised to others", "rackets",
              "add shifts, move a promise, or agree on another day");
}

Outcome<RoomWish> RoomPromises::check(const RacketsToCome& rackets, UnixMs wish) const {
  auto out = weigh(rackets, wish);
  if (!out) return out;
  if (auto first = earliest(rackets)) out->earliest = *first;
  return out;
}

Outcome<RoomWish> RoomPromises::weigh(const RacketsToCome& rackets, UnixMs wish) const {
  const auto jobs = jobs_of(rackets);
  if (!jobs) return fail(jobs.error());
  const UnixMs strung_by = wish - day_->finishing();
  RoomWish out;
  out.can_be_kept = out.even_first = true;
  PromiseInput input = input_;
  std::optional<Promiser> held;
  std::map<std::size_t, EndangeredPromise> costs;  // by job of the queue as it was
  for (std::size_t i = 0; i < jobs->size(); ++i) {
    const Promiser& queue = held ? *held : *queue_;
    const auto found = queue.weigh((*jobs)[i], spread(rackets, i), strung_by);
    if (!found) return fail(found.error());
    out.can_be_kept = out.can_be_kept && found->can_be_kept;
    out.even_first = out.even_first && (found->even_first || found->can_be_kept);
    out.chance = i == 0 ? found->chance : std::min(out.chance, found->chance);
    for (const EndangeredPromise& one : found->must_move) {
      if (one.job >= input_.day.jobs.size()) continue;  // a sister of theirs
      const auto [cost, fresh] = costs.emplace(one.job, one);
      if (!fresh) cost->second.after = std::min(cost->second.after, one.after);
    }
    if (i + 1 == jobs->size()) break;
    DayJob taken = (*jobs)[i];
    taken.due = strung_by;
    input.day.jobs.push_back(std::move(taken));
    input.own.push_back(spread(rackets, i));
    auto next = Promiser::make(input);
    if (!next) return fail(next.error());
    held = std::move(*next);
  }
  for (const auto& [job, cost] : costs) {
    const OpenJob& racket = day_->racket(places_[job]);
    out.must_move.push_back({racket.player, racket.job, player_words(racket),
                             racket.tag_number, racket.facts.ready_by.value_or(0), cost.before, cost.after});
  }
  std::stable_sort(out.must_move.begin(), out.must_move.end(),
                   [](const auto& a, const auto& b) { return a.before - a.after > b.before - b.after; });
  if (out.can_be_kept) out.even_first = false;
  return out;
}

}  // namespace weavelog
