#include "core/plan/promise.h"

#include <algorithm>
#include <cmath>

#include "core/plan/chance.h"

namespace weavelog {
namespace {

constexpr UnixMs kNoTime = INT64_MAX;
constexpr std::int64_t kFiveMinutes = 5 * 60'000;
constexpr std::uint64_t kNewJob = 1, kRushes = 2, kQueue = 3, kChecks = 4;  // streams of luck
constexpr double kRushSpread = 0.25;  // common practice, no source: on court, one rush of three is a quarter off
/// A five-minute mark is taken if confidence lacks so little there: else rounding alone would make promises later than they say.
constexpr double kNearly = 0.005;

UnixMs rounded_up(UnixMs at) { return (at + kFiveMinutes - 1) / kFiveMinutes * kFiveMinutes; }

/// A factor of mean 1.
double lognormal(double z, double sigma) { return std::exp(sigma * z - sigma * sigma / 2); }

/// What stringing it once more adds, in most runs nothing.
double once_more(Chance& chance, double again, double own) {
  const bool fails = chance.uniform() < again;
  const double z = chance.normal();  // drawn in any case: the next racket's luck is the same
  return fails ? lognormal(z, own) : 0;
}

}  // namespace

double confidence_after(const std::vector<bool>& kept, double wanted) {
  constexpr double kStep = 0.01, kLeast = 0.8, kMost = 0.985;
  double out = wanted;
  for (const bool one : kept) out = std::clamp(out + kStep * (wanted - (one ? 1 : 0)), kLeast, kMost);
  return out;
}

/// When the new job, and every job of the queue, was ready in each run.
struct Promiser::Ends {
  std::vector<UnixMs> fresh;   // by run
  std::vector<UnixMs> queue;   // by run x jobs
};

/// One run: benches take rackets until all of the queue are strung.
struct Promiser::Player {
  struct Racket {
    UnixMs arrives;
    const DayJob* job;
    double factor;
    UnixMs end;
  };
  const Promiser& room;
  std::vector<Racket> rackets{};  // in the order in which benches take them
  std::vector<UnixMs> free{};     // by bench: when it looks again; never when it is closed
  std::vector<double> pace{};     // by bench: what really multiplies
  std::vector<std::size_t> window{};
  std::span<const Rush> rushes{};  // to come, in order; each takes the first bench that is free

  [[nodiscard]] std::int64_t takes(std::size_t bench, double length, double factor) const {
    return std::max<std::int64_t>(1, std::llround(length * room.input_.day.benches[bench].pace * factor));
  }

  /// What a bench begins with at a moment of its open time; the moment at which it looks again. `first`: before it all are strung.
  UnixMs next_for(std::size_t bench, UnixMs now, UnixMs until, std::size_t first, std::size_t& taken) {
    UnixMs again = until;
    if (!rushes.empty()) {
      const Rush& rush = rushes.front();
      const auto length = static_cast<double>(room.input_.rush_length);
      if (rush.arrives > now) {
        again = std::min(again, rush.arrives);
      } else if (now + takes(bench, length, 1) <= until) {
        rushes = rushes.subspan(1);
        return now + takes(bench, length, rush.factor * pace[bench]);
      }
    }
    for (std::size_t i = first; i < rackets.size(); ++i) {
      Racket& racket = rackets[i];
      const DayJob& job = *racket.job;
      if (racket.end != kNoTime) continue;
      if (!job.only.empty() && std::count(job.only.begin(), job.only.end(), bench) == 0) continue;
      const auto length = static_cast<double>(job.length);
      if (std::max(now, racket.arrives) + takes(bench, length, 1) > until) continue;
      if (racket.arrives > now) {
        again = std::min(again, racket.arrives);
        continue;
      }
      taken = i;
      return racket.end = now + takes(bench, length, racket.factor * pace[bench]);
    }
    return again;
  }

  /// Until all are strung, or only until one is.
  void play(std::size_t until) {
    std::size_t left = rackets.size(), first = 0;
    while (left > 0) {
      const auto next = std::min_element(free.begin(), free.end());
      const auto bench = static_cast<std::size_t>(next - free.begin());
      const UnixMs now = *next;
      if (now == kNoTime) return;
      const auto& open = room.open_[bench];
      while (window[bench] < open.size() && open[window[bench]].until <= now) ++window[bench];
      if (window[bench] == open.size()) {
        *next = kNoTime;
        continue;
      }
      const TimeSpan& span = open[window[bench]];
      if (span.from > now) {
        *next = span.from;
        continue;
      }
      while (first < rackets.size() && rackets[first].end != kNoTime) ++first;
      std::size_t taken = SIZE_MAX;
      *next = next_for(bench, now, span.until, first, taken);
      if (taken == SIZE_MAX) continue;
      if (taken == until) return;
      --left;
    }
  }
};

Outcome<Promiser> Promiser::make(PromiseInput input) {
  if (auto checked = check_day(input.day); !checked) return fail(checked.error());
  const auto spread_can_be = [](double sigma) { return sigma >= 0 && sigma <= 2; };
  if (input.own.size() != input.day.jobs.size() || input.shared.size() != input.day.benches.size() ||
      !std::all_of(input.own.begin(), input.own.end(), spread_can_be) || !std::all_of(input.shared.begin(), input.shared.end(), spread_can_be) ||
      !spread_can_be(input.common))
    return fail(FaultCode::bad_input, "the spreads are not one for each racket and bench, from 0 to 2", "spreads", "give them all");
  if (!(input.rushes_per_hour >= 0 && input.rushes_per_hour <= 60) || !(input.rushes_seen >= 0 && input.rushes_seen < 1e6) ||
       input.rush_length < 60'000 || input.rush_length > kLongestLength)
    return fail(FaultCode::bad_input, "so many or so long on-court rushes can't be", "rushes", "give 0 to 60 an hour");
  if (!(input.again >= 0 && input.again <= 0.5))
    return fail(FaultCode::bad_input, "so many rackets can't fail their check", "again", "give a share from 0 to 0.5");
  if (!(input.confidence >= 0.5 && input.confidence <= 0.99))
    return fail(FaultCode::bad_input, "this confidence can't be worked with", "confidence", "give 0.5 to 0.99");
  Promiser out;
  out.input_ = std::move(input);
  const DayInput& day = out.input_.day;
  for (const DayBench& bench : day.benches) out.open_.push_back(cut_out(joined(bench.open), {INT64_MIN, day.now}));
  for (std::size_t job = 0; job < day.jobs.size(); ++job)
    if (!day.jobs[job].in_work) out.queue_.push_back(job);
  std::stable_sort(out.queue_.begin(), out.queue_.end(), [&](std::size_t a, std::size_t b) {
    const auto key = [&](const DayJob& one) { return std::tuple(!one.on_court, one.due.value_or(kNoTime), one.arrives); };
    return key(day.jobs[a]) < key(day.jobs[b]);
  });
  for (const std::size_t job : out.queue_) out.rushes_ += day.jobs[job].on_court;
  // Few rackets are played more often: the answer then costs about the same.
  const std::size_t jobs = day.jobs.size(), benches = day.benches.size();
  out.runs_ = std::clamp<std::size_t>(30'000 / (jobs + 1), 400, 1000);
  out.job_luck_.resize(out.runs_ * jobs);
  out.bench_luck_.resize(out.runs_ * benches);
  for (std::size_t run = 0; run < out.runs_; ++run) {
    Chance chance(out.input_.luck * 8 + kQueue, run);
    const double all = lognormal(chance.normal(), out.input_.common);
    for (std::size_t bench = 0; bench < benches; ++bench)
      out.bench_luck_[run * benches + bench] = all * lognormal(chance.normal(), out.input_.shared[bench]);
    Chance checks(out.input_.luck * 8 + kChecks, run);
    for (std::size_t job = 0; job < jobs; ++job) {
      const DayJob& one = day.jobs[job];
      const double luck = chance.uniform(), own = out.input_.own[job];
      double z = normal_quantile(luck);
      if (one.in_work) {
        // It was not done yet: of the times that it may take, only those that are longer than it has been.
        const double expected =
            static_cast<double>(length_at(one, day.benches[one.in_work->bench])) * out.bench_luck_[run * benches + one.in_work->bench];
        const double elapsed = static_cast<double>(day.now - one.in_work->since) / expected;
        if (elapsed > 0 && own > 0) {
          const double before = normal_chance((std::log(elapsed) + own * own / 2) / own);
          z = normal_quantile(std::clamp(before + luck * (1 - before), 1e-12, 1 - 1e-9));
        }
      }
      out.job_luck_[run * jobs + job] = lognormal(z, own) + once_more(checks, out.input_.again, own);
    }
  }
  out.draw_rushes();
  out.chances_ = out.chances_in(out.play(nullptr, 0, 0));
  return out;
}

void Promiser::draw_rushes() {
  std::vector<TimeSpan> open;
  for (const auto& spans : open_) open.insert(open.end(), spans.begin(), spans.end());
  open = joined(std::move(open));
  rush_luck_.resize(runs_);
  for (std::size_t run = 0; run < runs_; ++run) {
    Chance chance(input_.luck * 8 + kRushes, run);
    // The rate is known from few rushes, so it is drawn too (gamma).
    const double rate = input_.rushes_per_hour * chance.gamma(input_.rushes_seen + 1) / (input_.rushes_seen + 1);
    if (rate < 1e-6) continue;
    const UnixMs far = input_.day.now + 72LL * 3'600'000;  // what comes later changes no promise of now
    for (const TimeSpan& span : open)
      for (auto at = static_cast<double>(span.from);;) {
        at += chance.exponential(rate) * 3'600'000;
        if (at >= static_cast<double>(std::min(span.until, far))) break;
        rush_luck_[run].push_back({static_cast<UnixMs>(at), lognormal(chance.normal(), kRushSpread)});
      }
  }
}

Promiser::Ends Promiser::play(const DayJob* job, double own, std::size_t place, bool alone) const {
  const DayInput& day = input_.day;
  const std::size_t jobs = day.jobs.size(), benches = day.benches.size();
  Ends ends;
  ends.queue.assign(runs_ * jobs, kNoTime);
  Player player{*this};
  std::vector<std::size_t> of_queue;  // place among the player's rackets of each in the queue
  for (std::size_t run = 0; run < runs_; ++run) {
    player.rackets.clear();
    std::size_t fresh = SIZE_MAX;
    of_queue.clear();
    for (std::size_t i = 0; i <= queue_.size(); ++i) {
      if (job != nullptr && i == place) {
        fresh = player.rackets.size();
        Chance chance(input_.luck * 8 + kNewJob, run);
        const double factor = lognormal(chance.normal(), own);
        player.rackets.push_back({std::max(job->arrives, day.now), job, factor + once_more(chance, input_.again, own), kNoTime});
      }
      if (i == queue_.size()) break;
      const DayJob& one = day.jobs[queue_[i]];
      of_queue.push_back(player.rackets.size());
      player.rackets.push_back({std::max(one.arrives, day.now), &one, job_luck_[run * jobs + queue_[i]], kNoTime});
    }
    player.rushes = rush_luck_[run];
    player.free.assign(benches, day.now);
    player.window.assign(benches, 0);
    player.pace.assign(bench_luck_.begin() + static_cast<std::ptrdiff_t>(run * benches),
                       bench_luck_.begin() + static_cast<std::ptrdiff_t>((run + 1) * benches));
    for (std::size_t i = 0; i < jobs; ++i) {
      const DayJob& one = day.jobs[i];
      if (!one.in_work) continue;
      const std::size_t bench = one.in_work->bench;
      const double takes = static_cast<double>(length_at(one, day.benches[bench])) * job_luck_[run * jobs + i] * player.pace[bench];
      ends.queue[run * jobs + i] = player.free[bench] = std::max<UnixMs>(day.now + 1000, one.in_work->since + std::llround(takes));
    }
    player.play(alone ? fresh : SIZE_MAX);
    if (job != nullptr) ends.fresh.push_back(player.rackets[fresh].end);
    if (alone) continue;
    for (std::size_t i = 0; i < queue_.size(); ++i) ends.queue[run * jobs + queue_[i]] = player.rackets[of_queue[i]].end;
  }
  return ends;
}

std::vector<double> Promiser::chances_in(const Ends& ends) const {
  const std::size_t jobs = input_.day.jobs.size();
  std::vector<double> out(jobs, 1.0);
  for (std::size_t job = 0; job < jobs; ++job) {
    const auto due = input_.day.jobs[job].due;
    if (!due) continue;
    std::size_t kept = 0;
    for (std::size_t run = 0; run < runs_; ++run) kept += ends.queue[run * jobs + job] <= *due;
    out[job] = static_cast<double>(kept) / static_cast<double>(runs_);
  }
  return out;
}

std::vector<double> Promiser::chances_behind(const DayJob& job, double own) const {
  auto out = chances_in(play(&job, own, queue_.size()));
  for (std::size_t i = 0; i < out.size(); ++i) out[i] = std::min(out[i], chances_[i]);
  return out;
}

std::vector<EndangeredPromise> Promiser::endangered(const Ends& ends, const std::vector<double>& behind) const {
  const auto after = chances_in(ends);
  std::vector<EndangeredPromise> out;
  for (std::size_t job = 0; job < after.size(); ++job)
    if (after[job] < std::min(behind[job], input_.confidence)) out.push_back({job, chances_[job], after[job]});
  std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.before - a.after > b.before - b.after; });
  return out;
}

std::size_t Promiser::place_by(UnixMs due) const {
  const auto& jobs = input_.day.jobs;
  const auto begin = queue_.begin() + static_cast<std::ptrdiff_t>(rushes_);
  return static_cast<std::size_t>(std::partition_point(begin, queue_.end(), [&](std::size_t job) { return jobs[job].due.value_or(kNoTime) <= due; }) -
                                  queue_.begin());
}

Outcome<> Promiser::check_new(const DayJob& job, double own) const {
  DayInput day = input_.day;
  day.jobs.assign(1, job);
  for (const DayJob& other : input_.day.jobs)
    if (other.id == job.id)
      return fail(FaultCode::bad_input, "this racket is in the queue already", "racket " + job.id, "give the new one another number");
  if (job.in_work) return fail(FaultCode::bad_input, "it is in work already", "racket " + job.id, "only what waits is promised");
  if (!(own >= 0 && own <= 2)) return fail(FaultCode::bad_input, "this spread can't be", "racket " + job.id, "give 0 to 2");
  return check_day(day);
}

namespace {

/// The moment by which so many of the runs were ready; never if too few were.
UnixMs quantile_of(std::vector<UnixMs> ends, double p) {
  const auto rank = std::min(ends.size(), static_cast<std::size_t>(std::ceil(p * static_cast<double>(ends.size() + 1)))) - 1;
  std::nth_element(ends.begin(), ends.begin() + static_cast<std::ptrdiff_t>(rank), ends.end());
  return ends[rank];
}

double share_by(const std::vector<UnixMs>& ends, UnixMs by) {
  return static_cast<double>(std::count_if(ends.begin(), ends.end(), [&](UnixMs end) { return end <= by; })) / static_cast<double>(ends.size());
}

}  // namespace

Outcome<Promise> Promiser::earliest(const DayJob& job, double own) const {
  if (auto checked = check_new(job, own); !checked) return fail(checked.error());
  const auto& jobs = input_.day.jobs;
  struct Try {
    UnixMs time = kNoTime;
    UnixMs middle = kNoTime;
    double chance = 0;
    bool good = false;
  };
  const auto behind = chances_behind(job, own);
  const auto at_place = [&](std::size_t place) {
    const Ends ends = play(&job, own, place, true);
    Try out;
    const UnixMs ready = quantile_of(ends.fresh, input_.confidence);
    if (ready == kNoTime) return out;
    // Its time has to bring it to this place again when benches take what is due first.
    const UnixMs before = place > rushes_ ? jobs[queue_[place - 1]].due.value_or(kNoTime) : 0;
    const UnixMs next = place < queue_.size() ? jobs[queue_[place]].due.value_or(kNoTime) : kNoTime;
    out.time = rounded_up(ready);
    if (share_by(ends.fresh, out.time - kFiveMinutes) >= input_.confidence - kNearly) out.time -= kFiveMinutes;
    out.time = std::max(out.time, before == kNoTime ? 0 : before);
    out.middle = quantile_of(ends.fresh, 0.5);
    out.chance = share_by(ends.fresh, out.time);
    out.good = out.time <= next && (place == queue_.size() || endangered(play(&job, own, place), behind).empty());
    return out;
  };
  if (job.on_court) {  // it goes first whatever it costs: what gives way is another question (check())
    const Try front = at_place(rushes_);
    if (front.time == kNoTime)
      return fail(FaultCode::bad_input, "no time can be promised: no shift has room for it", "racket " + job.id, "add shifts, or agree on another day");
    return Promise{front.time, front.chance, front.middle};
  }
  // The first place that is good: from there on all are.
  std::size_t low = rushes_, high = queue_.size();
  Try found = at_place(high);
  if (found.time == kNoTime)
    return fail(FaultCode::bad_input, "no time can be promised: the shifts end before it would surely be ready", "racket " + job.id,
                "add shifts, or agree on another day");
  while (low < high) {
    const std::size_t middle = low + (high - low) / 2;
    const Try tried = at_place(middle);
    if (tried.good) {
      high = middle;
      found = tried;
    } else {
      low = middle + 1;
    }
  }
  return Promise{found.time, found.chance, found.middle};
}

Outcome<WishAnswer> Promiser::check(const DayJob& job, double own, UnixMs wish) const {
  auto out = weigh(job, own, wish);
  if (!out) return out;
  if (auto found = earliest(job, own)) out->earliest = *found;
  return out;
}

Outcome<WishAnswer> Promiser::weigh(const DayJob& job, double own, UnixMs wish) const {
  if (auto checked = check_new(job, own); !checked) return fail(checked.error());
  WishAnswer out;
  const std::size_t place = job.on_court ? rushes_ : place_by(wish);
  const auto behind = chances_behind(job, own);
  const Ends in_turn = play(&job, own, place);
  out.chance = share_by(in_turn.fresh, wish);
  out.must_move = endangered(in_turn, behind);
  const double enough = input_.confidence - kNearly;  // as for a time that is offered: or it would be refused when it is taken
  out.even_first = out.chance >= enough;
  out.can_be_kept = out.even_first && out.must_move.empty();
  if (out.even_first) return out;
  // Further to the front, no further than it takes.
  const Ends first = play(&job, own, rushes_);
  out.even_first = share_by(first.fresh, wish) >= enough;
  out.must_move = endangered(first, behind);
  if (!out.even_first) return out;
  std::size_t good = rushes_, bad = place;
  while (good + 1 < bad) {
    const std::size_t middle = good + (bad - good) / 2;
    const Ends ends = play(&job, own, middle);
    if (share_by(ends.fresh, wish) >= enough) {
      good = middle;
      out.must_move = endangered(ends, behind);
    } else {
      bad = middle;
    }
  }
  out.can_be_kept = out.must_move.empty();
  return out;
}

}  // namespace weavelog
