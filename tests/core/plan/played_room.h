#pragma once
// Two weeks of a room, played: rackets come and are promised a time, benches take what is due first, rushes come from the court, stringers
// are as fast as nobody was told. The promises know only what a desk can know.

#include <catch2/catch.hpp>
#include <functional>
#include <string>
#include <vector>

#include "core/plan/chance.h"
#include "core/plan/durations.h"
#include "core/plan/promise.h"
#include "core/plan/schedule.h"

namespace weavelog::test {

struct PlayedRoom {
  std::size_t benches = 4;
  int days = 14;
  double rackets_a_day = 58;
  double rushes_an_hour = 0.7;
  double wishing = 0.35;  ///< part of the rackets with a time wished
  bool oracle = false;   ///< asks one who knows paces, kinds and the chance of rushes as they are, too
  bool planned = false;  ///< benches follow plan_day(), made anew with every event, rather than what is due first
};

struct Played {
  std::size_t promised = 0, kept = 0;     ///< the earliest time
  std::size_t wishes = 0, granted = 0, wishes_kept = 0;
  double slack = 0;                       ///< minutes: from ready to promised, mean
  double oracle_slack = 0;                ///< the same of the oracle's promises
  double waited = 0;                      ///< minutes from drop-off to ready, mean
};

class RoomPlayer {
 public:
  RoomPlayer(const PlayedRoom& room, std::uint64_t start) : room_(room), chance_(start) {
    const double usual = std::exp(0.15 * chance_.normal());
    for (std::size_t b = 0; b < room.benches; ++b) paces_.push_back(usual * std::exp(0.2 * chance_.normal()));
    for (double& effect : materials_) effect += 0.08 * chance_.normal();
  }

  Played play() {
    learn();
    for (int day = 0; day < room_.days; ++day) {
      day_begin_ = kDay0 + day * kDay;
      hours_ += 11;
      for (UnixMs at : arrivals()) {
        work_until(at);
        arrive(at);
      }
      work_until(day_begin_ + kDay);
      learn();
    }
    work_until(day_begin_ + 4 * kDay);
    for (const Racket& racket : rackets_) {
      if (racket.rush) continue;
      REQUIRE(racket.end > 0);
      const double early = static_cast<double>(racket.due - racket.end) / 60'000;
      if (racket.wish) {
        ++out_.granted;
        out_.wishes_kept += early >= 0;
      } else {
        ++out_.promised;
        out_.kept += early >= 0;
        out_.slack += early;
        out_.oracle_slack += static_cast<double>(racket.oracle_due - racket.end) / 60'000;
        out_.waited += static_cast<double>(racket.end - racket.arrives) / 60'000;
      }
    }
    out_.slack /= static_cast<double>(out_.promised);
    out_.waited /= static_cast<double>(out_.promised);
    out_.oracle_slack /= static_cast<double>(out_.promised);
    return out_;
  }

 private:
  static constexpr UnixMs kDay = 86'400'000, kHour = 3'600'000, kMinute = 60'000, kDay0 = 1'937'520'000'000;
  static constexpr double kNoise = 0.17;
  struct Racket {
    UnixMs arrives = 0, due = 0, oracle_due = 0, begin = 0, end = 0;
    WorkKind kind;
    double log_expected = 0, log_truth = 0;  // of minutes at pace 1: without luck, with it
    bool wish = false, rush = false;
    std::size_t bench = SIZE_MAX;
    bool settled = false;
  };

  [[nodiscard]] std::vector<UnixMs> arrivals() {
    std::vector<UnixMs> out;
    // Half of them in the first three hours.
    const auto count = chance_.poisson(room_.rackets_a_day);
    for (std::uint64_t i = 0; i < count; ++i)
      out.push_back(day_begin_ + 9 * kHour + static_cast<UnixMs>(chance_.uniform() * (chance_.uniform() < 0.5 ? 3 : 9) * static_cast<double>(kHour)));
    rush_at_.clear();
    for (auto at = static_cast<double>(day_begin_ + 9 * kHour);;) {
      at += chance_.exponential(room_.rushes_an_hour) * static_cast<double>(kHour);
      if (at > static_cast<double>(day_begin_ + 20 * kHour)) break;
      out.push_back(static_cast<UnixMs>(at));
      rush_at_.push_back(static_cast<UnixMs>(at));
    }
    std::sort(out.begin(), out.end());
    return out;
  }

  [[nodiscard]] std::vector<TimeSpan> shift(std::size_t bench, UnixMs day) const {
    const UnixMs rest = day + 13 * kHour + static_cast<UnixMs>(bench % 3) * 40 * kMinute;
    return {{day + 9 * kHour, rest}, {rest + 40 * kMinute, day + 20 * kHour}};
  }

  void learn() {
    times_ = WorkTimes(readings_);
    rushes_expected_ = (rushes_seen_ + 1.0) / (hours_ + 2.0);
  }

  /// The room as the desk sees it now. `places`: which racket each job is.
  [[nodiscard]] PromiseInput seen(UnixMs now, std::vector<std::size_t>& places) const {
    PromiseInput out;
    out.day.now = now;
    const WorkKind usual{"16x19", "multifilament", 1};
    for (std::size_t b = 0; b < room_.benches; ++b) {
      DayBench bench{"bench " + std::to_string(b), name(b), ""};
      for (int more = 0; more < 3; ++more)
        for (const TimeSpan& span : shift(b, day_begin_ + more * kDay)) bench.open.push_back(span);
      const WorkTime time = times_.of(name(b), usual);
      bench.pace = pace_of(b);
      out.day.benches.push_back(bench);
      out.shared.push_back(time.shared);
    }
    // What two benches doubt alike, on the mean; the rest is each one's own.
    double alike = 0;
    for (std::size_t a = 0; a < room_.benches; ++a)
      for (std::size_t b = 0; b < a; ++b) alike += std::pow(times_.in_common(name(a), name(b), usual), 2);
    alike /= static_cast<double>(room_.benches * (room_.benches - 1) / 2);
    out.common = std::sqrt(alike);
    for (double& one : out.shared) one = std::sqrt(std::max(0.0, one * one - alike));
    for (std::size_t i = 0; i < rackets_.size(); ++i) {
      const Racket& racket = rackets_[i];
      if (racket.end != 0 && racket.end <= now) continue;
      DayJob job = job_of(racket, std::to_string(i));
      if (racket.bench != SIZE_MAX) job.in_work = InWork{racket.bench, racket.begin};
      out.day.jobs.push_back(job);
      out.own.push_back(own_of(racket));
      places.push_back(i);
    }
    out.rushes_per_hour = rushes_expected_;
    out.rushes_seen = rushes_seen_;
    out.rush_length = rush_length();
    return out;
  }
  [[nodiscard]] DayJob job_of(const Racket& racket, const std::string& id) const {
    DayJob job{id, racket.arrives, static_cast<std::int64_t>(times_.of("", racket.kind).mean() * 60'000)};
    if (racket.due != 0 && !racket.rush) job.due = racket.due;
    job.on_court = racket.rush;
    if (racket.rush) job.length = rush_length();
    return job;
  }
  /// As learned: times as long as the room.
  [[nodiscard]] double pace_of(std::size_t bench) const {
    return times_.of(name(bench), {"16x19", "multifilament", 1}).mean() / times_.of("", {"16x19", "multifilament", 1}).mean();
  }
  [[nodiscard]] std::int64_t rush_length() const { return static_cast<std::int64_t>((rush_minutes_ + 5 * 20) / (rushes_strung_ + 5) * 60'000); }
  [[nodiscard]] double own_of(const Racket& racket) const { return times_.of("", racket.kind).own; }

  void arrive(UnixMs now) {
    Racket racket;
    racket.arrives = now;
    racket.rush = std::find(rush_at_.begin(), rush_at_.end(), now) != rush_at_.end();
    const std::size_t material = chance_.below(3);
    static const char* const kNames[] = {"multifilament", "natural gut", "hybrid"};
    racket.kind = {"16x19", kNames[material], material == 2 ? 2 : 1};
    racket.log_expected = std::log(racket.rush ? 20.0 : 26.0) + materials_[material];
    racket.log_truth = racket.log_expected + kNoise * chance_.normal();
    if (racket.rush) {
      ++rushes_seen_;
    } else {
      std::vector<std::size_t> places;
      PromiseInput input = seen(now, places);
      settle(now);
      input.confidence = confidence_after(settled_);
      const DayJob job = job_of(racket, "new");
      auto promiser = Promiser::make(std::move(input));
      if (!promiser) FAIL(promiser.error().message());
      const bool wishes = chance_.uniform() < room_.wishing;
      if (wishes) {
        ++out_.wishes;
        const UnixMs wish = now + static_cast<UnixMs>((1 + 5 * chance_.uniform()) * static_cast<double>(kHour));
        const auto answer = promiser->check(job, own_of(racket), wish);
        if (!answer) FAIL(answer.error().message());
        if (answer->can_be_kept) racket.wish = true, racket.due = wish;
        if (!racket.wish) {
          REQUIRE(answer->earliest);
          racket.due = answer->earliest->ready_by;
        }
      } else {
        const auto promise = promiser->earliest(job, own_of(racket));
        if (!promise) FAIL(promise.error().message());
        racket.due = promise->ready_by;
      }
      if (room_.oracle && !racket.wish) racket.oracle_due = oracle(now, racket);
    }
    rackets_.push_back(racket);
    queue_.push_back(rackets_.size() - 1);
    replan_ = true;
    start_idle(now);
  }

  /// What has become of the earliest times that were promised.
  void settle(UnixMs now) {
    for (Racket& racket : rackets_)
      if (!racket.settled && racket.end != 0 && racket.end <= now) {
        racket.settled = true;
        if (!racket.wish && !racket.rush) settled_.push_back(racket.end <= racket.due);
      }
  }
  /// What could be promised by one who knows the room, though not the luck of each racket.
  [[nodiscard]] UnixMs oracle(UnixMs now, const Racket& racket) const {
    std::vector<std::size_t> places;
    PromiseInput input = seen(now, places);
    const auto truth = [&](const Racket& one) { return static_cast<std::int64_t>(std::exp(one.log_expected + kNoise * kNoise / 2) * 60'000); };
    for (std::size_t i = 0; i < places.size(); ++i) {
      input.day.jobs[i].length = truth(rackets_[places[i]]);
      input.own[i] = kNoise;
    }
    for (std::size_t b = 0; b < room_.benches; ++b) input.day.benches[b].pace = paces_[b], input.shared[b] = 0;
    input.common = 0;
    input.rushes_per_hour = room_.rushes_an_hour;
    input.rushes_seen = 1e4;
    input.rush_length = static_cast<std::int64_t>(20 * 1.1 * 60'000);
    DayJob job = job_of(racket, "new");
    job.length = truth(racket);
    const auto promiser = Promiser::make(std::move(input));
    if (!promiser) FAIL(promiser.error().message());
    const auto promise = promiser->earliest(job, kNoise);
    if (!promise) FAIL(promise.error().message());
    return promise->ready_by;
  }

  [[nodiscard]] static std::string name(std::size_t bench) { return "stringer " + std::to_string(bench); }

  /// The next racket of a bench that is free; SIZE_MAX: none now.
  [[nodiscard]] std::size_t next_for(std::size_t bench, UnixMs now, UnixMs until) {
    if (room_.planned) {
      if (replan_) plan(now);
      for (const auto& [b, i] : plan_)
        if (b == bench && rackets_[i].bench == SIZE_MAX) return i;
      return SIZE_MAX;
    }
    std::sort(queue_.begin(), queue_.end(), [&](std::size_t a, std::size_t b) {
      return std::tuple(!rackets_[a].rush, rackets_[a].due, a) < std::tuple(!rackets_[b].rush, rackets_[b].due, b);
    });
    const double pace = pace_of(bench);
    for (const std::size_t i : queue_)
      if (now + static_cast<UnixMs>(times_.of("", rackets_[i].kind).mean() * pace * 60'000) <= until) return i;
    return SIZE_MAX;
  }
  void plan(UnixMs now) {
    std::vector<std::size_t> places;
    const PromiseInput input = seen(now, places);
    const auto plan = plan_day(input.day, PlanEffort::day);
    if (!plan) FAIL(plan.error().message());
    plan_.clear();
    for (const PlannedJob& one : plan->jobs)
      if (!input.day.jobs[one.job].in_work) plan_.emplace_back(one.bench, places[one.job]);
    replan_ = false;
  }

  void start(std::size_t bench, UnixMs now) {
    for (const TimeSpan& span : shift(bench, day_of(now)))
      if (span.from <= now && now < span.until) {
        const std::size_t i = next_for(bench, now, span.until);
        if (i == SIZE_MAX) return;
        Racket& racket = rackets_[i];
        racket.bench = bench;
        racket.begin = now;
        racket.end = now + static_cast<UnixMs>(std::exp(racket.log_truth) * paces_[bench] * 60'000);
        queue_.erase(std::find(queue_.begin(), queue_.end(), i));
        busy_.emplace_back(racket.end, bench);
        if (racket.rush) ++rushes_strung_, rush_minutes_ += static_cast<double>(racket.end - racket.begin) / 60'000 / pace_of(bench);
        if (!racket.rush) readings_.push_back({name(bench), racket.kind, static_cast<double>(racket.end - racket.begin) / 60'000});
        return;
      }
  }
  [[nodiscard]] static UnixMs day_of(UnixMs now) { return kDay0 + (now - kDay0) / kDay * kDay; }
  void start_idle(UnixMs now) {
    for (std::size_t b = 0; b < room_.benches; ++b)
      if (std::none_of(busy_.begin(), busy_.end(), [&](const auto& one) { return one.second == b; })) start(b, now);
  }
  /// What happens before a moment: ends of work, ends of breaks.
  void work_until(UnixMs until) {
    for (;;) {
      UnixMs next = INT64_MAX;
      for (const auto& one : busy_) next = std::min(next, one.first);
      if (!queue_.empty())
        for (std::size_t b = 0; b < room_.benches; ++b)
          for (UnixMs day = day_of(now_); day <= day_of(now_) + kDay; day += kDay)
            for (const TimeSpan& span : shift(b, day))
              if (span.from > now_) next = std::min(next, span.from);
      if (next >= until) break;
      now_ = next;
      std::erase_if(busy_, [&](const auto& one) { return one.first <= now_; });
      replan_ = true;
      start_idle(now_);
    }
    now_ = std::max(now_, until);
  }

  PlayedRoom room_;
  Chance chance_;
  Played out_;
  std::vector<double> paces_, materials_{0, 0.12, 0.08};
  std::vector<Racket> rackets_;
  std::vector<std::size_t> queue_;
  std::vector<std::pair<UnixMs, std::size_t>> busy_;  // until when, bench
  std::vector<std::pair<std::size_t, std::size_t>> plan_;  // bench, racket: in order of begin
  std::vector<UnixMs> rush_at_;
  std::vector<WorkReading> readings_;
  std::vector<bool> settled_;
  WorkTimes times_;
  double rushes_expected_ = 0, rushes_seen_ = 0, hours_ = 0, rushes_strung_ = 0, rush_minutes_ = 0;
  UnixMs day_begin_ = kDay0, now_ = kDay0;
  bool replan_ = true;
};

}  // namespace weavelog::test
