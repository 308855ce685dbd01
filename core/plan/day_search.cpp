// The search for a day's plan: sequences of jobs at benches, each job as early as its place in the sequence lets it be. Begins with several
// simple rules, mends the costly jobs by their best move, then goes on by late acceptance (Burke and Bykov, The late acceptance hill-climbing
// heuristic, 2017). Bounded by the number of timings that it reckons, not by a clock, so that the same day gives the same plan.

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

#include "core/plan/chance.h"
#include "core/plan/day_problem.h"

namespace weavelog {
namespace {

using Sequence = std::vector<std::uint32_t>;

DayCost operator+(const DayCost& a, const DayCost& b) { return {a.late + b.late, a.changed + b.changed}; }
DayCost operator-(const DayCost& a, const DayCost& b) { return {a.late - b.late, a.changed - b.changed}; }

class Search {
 public:
  Search(const DayProblem& problem, std::int64_t bound)
      : p_(problem), bound_(bound), bench_of_(problem.jobs), at_(problem.jobs), costs_(problem.jobs) {}

  void start(std::vector<Sequence> sequences) {
    sequences_ = std::move(sequences);
    after_.assign(p_.benches, {});
    total_ = {};
    for (std::size_t bench = 0; bench < p_.benches; ++bench) {
      after_[bench].push_back({});
      time_from(bench, 0);
      total_ = total_ + after_[bench].back().cost;
    }
  }
  [[nodiscard]] const DayCost& total() const { return total_; }
  [[nodiscard]] const std::vector<Sequence>& sequences() const { return sequences_; }
  [[nodiscard]] bool perfect() const { return total_.late <= bound_ && total_.changed == 0; }
  [[nodiscard]] std::int64_t timings() const { return timings_; }

  /// Puts a job where it costs least; at the end of a bench unless `anywhere`.
  void insert(std::uint32_t job, bool anywhere) {
    std::size_t best_bench = 0, best_at = 0;
    DayCost best{INT64_MAX, 0};
    UnixMs best_end = INT64_MAX;
    for (std::size_t bench = 0; bench < p_.benches; ++bench) {
      if (p_.at(job, bench) < 0) continue;
      const std::size_t size = sequences_[bench].size();
      for (std::size_t at = anywhere ? 0 : size; at <= size; ++at) {
        const After& before = after_[bench][at];
        std::size_t window = before.window;
        const UnixMs end = p_.end_at(job, bench, before.time, window);
        ++timings_;
        const DayCost own = p_.cost(job, bench, end);
        if (own > best) break;  // later places cost the job no less
        const DayCost delta = at == size ? own : with(bench, at, job) - after_[bench].back().cost;
        if (delta < best || (delta == best && end < best_end)) {
          best = delta, best_end = end;
          best_bench = bench, best_at = at;
        }
      }
    }
    auto& sequence = sequences_[best_bench];
    total_ = total_ - after_[best_bench].back().cost;
    sequence.insert(sequence.begin() + static_cast<std::ptrdiff_t>(best_at), job);
    time_from(best_bench, best_at);
    total_ = total_ + after_[best_bench].back().cost;
  }

  /// Mends costly jobs by their best moves until none helps or the timings are used up.
  void descend(std::int64_t until) {
    for (bool better = true; better && timings_ < until && !perfect();) {
      better = false;
      for (const std::uint32_t job : costly()) {
        if (timings_ >= until) break;
        better = relocate_best(job) || better;
      }
      for (const std::uint32_t job : costly()) {
        if (timings_ >= until) break;
        if (costs_[job] > DayCost{}) better = swap_best(job) || better;
      }
    }
  }

  /// `freedom`: how much worse it may become at first, ms late.
  void accept_late(std::int64_t until, std::size_t memory, double freedom, std::uint64_t luck) {
    if (p_.jobs < 2) return;
    Chance chance(luck);
    std::vector<DayCost> history(memory, total_);
    for (DayCost& one : history) one.late += static_cast<std::int64_t>(freedom * chance.uniform());
    std::vector<Sequence> best = sequences_;
    DayCost best_total = total_;
    std::vector<std::uint32_t> worst = costly();
    for (std::size_t turn = 0; timings_ < until && !(best_total.late <= bound_ && best_total.changed == 0); ++turn) {
      if (turn % 256 == 255) worst = costly();
      const auto job =
          !worst.empty() && (chance.bits() & 1) != 0 ? worst[chance.below(worst.size())] : static_cast<std::uint32_t>(chance.below(p_.jobs));
      DayCost& remembered = history[turn % memory];
      // Mostly to about the same time at some bench; else anywhere.
      const std::size_t bench = chance.below(p_.benches), size = sequences_[bench].size();
      std::size_t at = chance.below(size + 1);
      if ((chance.bits() & 3) != 0) at = std::min(size, near_in(bench, job) + chance.below(5) - std::min<std::size_t>(2, near_in(bench, job)));
      if ((chance.bits() & 1) == 0)
        try_move(job, bench, at, remembered);
      else if (at < size)
        try_swap(job, sequences_[bench][at], remembered);
      if (total_ < remembered) remembered = total_;
      if (total_ < best_total) best = sequences_, best_total = total_;
      timings_ += 2;  // what a turn costs beside them, so that hopeless ones end too
    }
    start(std::move(best));
  }

 private:
  struct After {
    UnixMs time = INT64_MIN;  // the bench is free from then
    std::size_t window = 0;
    DayCost cost;
  };

  void put(const std::uint32_t job, std::size_t bench, After& state) {
    const UnixMs end = p_.end_at(job, bench, state.time, state.window);
    if (end < p_.never) state.time = end;
    state.cost = state.cost + p_.cost(job, bench, end);
    ++timings_;
  }

  void time_from(std::size_t bench, std::size_t at) {
    auto& after = after_[bench];
    const Sequence& sequence = sequences_[bench];
    after.resize(at + 1);
    for (; at < sequence.size(); ++at) {
      After state = after.back();
      put(sequence[at], bench, state);
      costs_[sequence[at]] = state.cost - after.back().cost;
      bench_of_[sequence[at]] = static_cast<std::uint32_t>(bench);
      at_[sequence[at]] = static_cast<std::uint32_t>(at);
      after.push_back(state);
    }
  }

  /// What a bench would cost if `tail` stood from `at` on. From place `settled` of the tail on it is what stands there now, `shift` places
  /// later: as soon as the times agree the rest is known.
  DayCost cost_with(std::size_t bench, std::size_t at, const Sequence& tail, std::size_t settled, std::ptrdiff_t shift) {
    const auto& after = after_[bench];
    After state = after[at];
    for (std::size_t i = 0; i < tail.size(); ++i) {
      if (i >= settled) {
        const After& was = after[static_cast<std::size_t>(static_cast<std::ptrdiff_t>(at + i) - shift)];
        if (was.time == state.time) return state.cost + (after.back().cost - was.cost);
      }
      put(tail[i], bench, state);
    }
    return state.cost;
  }
  DayCost without(std::size_t bench, std::size_t at) {
    tail_.assign(sequences_[bench].begin() + static_cast<std::ptrdiff_t>(at) + 1, sequences_[bench].end());
    return cost_with(bench, at, tail_, 0, -1);
  }
  DayCost with(std::size_t bench, std::size_t at, std::uint32_t job) {
    tail_.assign(1, job);
    tail_.insert(tail_.end(), sequences_[bench].begin() + static_cast<std::ptrdiff_t>(at), sequences_[bench].end());
    return cost_with(bench, at, tail_, 1, 1);
  }
  DayCost with_instead(std::size_t bench, std::size_t at, std::uint32_t job) {
    tail_.assign(sequences_[bench].begin() + static_cast<std::ptrdiff_t>(at), sequences_[bench].end());
    tail_.front() = job;
    return cost_with(bench, at, tail_, 1, 0);
  }
  /// The bench with the job at `from` put to `to`.
  DayCost moved_within(std::size_t bench, std::size_t from, std::size_t to) {
    const std::size_t first = std::min(from, to), last = std::max(from, to);
    tail_.assign(sequences_[bench].begin() + static_cast<std::ptrdiff_t>(first), sequences_[bench].end());
    const auto begin = tail_.begin(), end = tail_.begin() + static_cast<std::ptrdiff_t>(last - first) + 1;
    std::rotate(begin, from < to ? begin + 1 : end - 1, end);
    return cost_with(bench, first, tail_, last - first + 1, 0);
  }
  DayCost swapped_within(std::size_t bench, std::size_t one, std::size_t other) {
    const std::size_t first = std::min(one, other), last = std::max(one, other);
    tail_.assign(sequences_[bench].begin() + static_cast<std::ptrdiff_t>(first), sequences_[bench].end());
    std::swap(tail_[0], tail_[last - first]);
    return cost_with(bench, first, tail_, last - first + 1, 0);
  }

  void move(std::uint32_t job, std::size_t bench, std::size_t at) {
    const std::size_t from = bench_of_[job], was = at_[job];
    const DayCost before = after_[from].back().cost + (bench == from ? DayCost{} : after_[bench].back().cost);
    auto& source = sequences_[from];
    source.erase(source.begin() + static_cast<std::ptrdiff_t>(was));
    auto& target = sequences_[bench];
    target.insert(target.begin() + static_cast<std::ptrdiff_t>(at), job);
    if (bench == from) {
      time_from(from, std::min(was, at));
    } else {
      time_from(from, was);
      time_from(bench, at);
    }
    total_ = total_ - before + after_[from].back().cost + (bench == from ? DayCost{} : after_[bench].back().cost);
  }
  void swap(std::uint32_t one, std::uint32_t other) {
    const std::size_t a = bench_of_[one], b = bench_of_[other], i = at_[one], j = at_[other];
    const DayCost before = after_[a].back().cost + (a == b ? DayCost{} : after_[b].back().cost);
    std::swap(sequences_[a][i], sequences_[b][j]);
    time_from(a, a == b ? std::min(i, j) : i);
    if (a != b) time_from(b, j);
    total_ = total_ - before + after_[a].back().cost + (a == b ? DayCost{} : after_[b].back().cost);
  }

  /// Where in a bench's sequence the time is at which a job begins.
  [[nodiscard]] std::size_t near_in(std::size_t bench, std::uint32_t job) const {
    const auto& after = after_[bench];
    const UnixMs time = after_[bench_of_[job]][at_[job]].time;
    return static_cast<std::size_t>(std::partition_point(after.begin(), after.end() - 1, [&](const After& one) { return one.time < time; }) -
                                    after.begin());
  }
  void try_move(std::uint32_t job, std::size_t bench, std::size_t at, const DayCost& remembered) {
    if (p_.at(job, bench) < 0) return;
    const std::size_t from = bench_of_[job], was = at_[job];
    DayCost now;
    if (bench == from) {
      at = std::min(at, sequences_[bench].size() - 1);
      if (at == was) return;
      now = total_ - after_[from].back().cost + moved_within(from, was, at);
    } else {
      now = total_ - after_[from].back().cost - after_[bench].back().cost + without(from, was) + with(bench, at, job);
    }
    if (now <= total_ || now < remembered) move(job, bench, at);
  }
  void try_swap(std::uint32_t one, std::uint32_t other, const DayCost& remembered) {
    if (one == other) return;
    const std::size_t a = bench_of_[one], b = bench_of_[other];
    if (p_.at(one, b) < 0 || p_.at(other, a) < 0) return;
    const DayCost now =
        a == b ? total_ - after_[a].back().cost + swapped_within(a, at_[one], at_[other])
               : total_ - after_[a].back().cost - after_[b].back().cost + with_instead(a, at_[one], other) + with_instead(b, at_[other], one);
    if (now <= total_ || now < remembered) swap(one, other);
  }

  /// Jobs that cost something, most first, and those right before them.
  std::vector<std::uint32_t> costly() const {
    std::vector<std::uint32_t> out;
    for (std::uint32_t job = 0; job < p_.jobs; ++job)
      if (costs_[job] > DayCost{}) out.push_back(job);
    std::sort(out.begin(), out.end(), [&](std::uint32_t a, std::uint32_t b) { return costs_[a] == costs_[b] ? a < b : costs_[a] > costs_[b]; });
    std::vector<bool> in(p_.jobs);
    for (const std::uint32_t job : out) in[job] = true;
    for (std::size_t i = 0, size = out.size(); i < size; ++i)
      for (std::size_t before = at_[out[i]]; before-- > 0 && at_[out[i]] - before <= 4;)
        if (const std::uint32_t other = sequences_[bench_of_[out[i]]][before]; !in[other]) in[other] = true, out.push_back(other);
    return out;
  }

  bool relocate_best(std::uint32_t job) {
    const std::size_t from = bench_of_[job], was = at_[job];
    const DayCost gain = after_[from].back().cost - without(from, was);
    DayCost best = gain;  // what putting it elsewhere may cost
    std::size_t best_bench = p_.benches, best_at = 0;
    for (std::size_t bench = 0; bench < p_.benches; ++bench) {
      if (p_.at(job, bench) < 0) continue;
      if (bench == from) {
        for (std::size_t at = 0; at < sequences_[from].size(); ++at) {
          if (at == was) continue;
          const DayCost cost = moved_within(from, was, at) - (after_[from].back().cost - gain);
          if (cost < best) best = cost, best_bench = bench, best_at = at;
        }
        continue;
      }
      for (std::size_t at = 0; at <= sequences_[bench].size(); ++at) {
        const After& before = after_[bench][at];
        std::size_t window = before.window;
        if (p_.cost(job, bench, p_.end_at(job, bench, before.time, window)) >= best) break;  // later it costs no less
        ++timings_;
        const DayCost cost = with(bench, at, job) - after_[bench].back().cost;
        if (cost < best) best = cost, best_bench = bench, best_at = at;
      }
    }
    if (best_bench == p_.benches) return false;
    move(job, best_bench, best_at);
    return true;
  }
  bool swap_best(std::uint32_t job) {
    const std::size_t a = bench_of_[job];
    DayCost best = total_;
    std::uint32_t best_other = job;
    for (std::uint32_t other = 0; other < p_.jobs; ++other) {
      const std::size_t b = bench_of_[other];
      if (other == job || p_.at(job, b) < 0 || p_.at(other, a) < 0) continue;
      DayCost now;
      if (a == b) {
        now = total_ - after_[a].back().cost + swapped_within(a, at_[job], at_[other]);
      } else {
        const DayCost rest = total_ - after_[a].back().cost - after_[b].back().cost;
        const DayCost there = with_instead(b, at_[other], job);
        if (rest + there >= best) continue;
        now = rest + there + with_instead(a, at_[job], other);
      }
      if (now < best) best = now, best_other = other;
    }
    if (best_other == job) return false;
    swap(job, best_other);
    return true;
  }

  const DayProblem& p_;
  std::int64_t bound_;
  std::vector<Sequence> sequences_;
  std::vector<std::vector<After>> after_;  // by bench: before all, after the first, ...
  std::vector<std::uint32_t> bench_of_, at_;
  std::vector<DayCost> costs_;
  DayCost total_;
  std::int64_t timings_ = 0;
  Sequence tail_;
};

/// By dispatching: whenever a bench is free it takes what is most urgent of what is there, by the apparent tardiness cost rule (Vepsalainen
/// and Morton, Priority rules for job shops with weighted tardiness costs, 1987).
std::vector<Sequence> dispatched(const DayProblem& p) {
  std::vector<Sequence> out(p.benches);
  std::vector<UnixMs> free(p.benches, 0);
  std::vector<std::size_t> window(p.benches);
  std::vector<bool> done(p.jobs);
  double mean = 1;
  for (std::size_t job = 0; job < p.jobs; ++job)
    mean += static_cast<double>(*std::max_element(&p.length[job * p.benches], &p.length[job * p.benches] + p.benches));
  mean /= static_cast<double>(std::max<std::size_t>(1, p.jobs));
  std::vector<bool> closed(p.benches);
  for (std::size_t left = p.jobs; left > 0;) {
    std::size_t bench = p.benches;
    UnixMs begin = INT64_MAX;
    for (std::size_t b = 0; b < p.benches; ++b) {
      if (closed[b]) continue;
      while (window[b] < p.open[b].size() && p.open[b][window[b]].until <= free[b]) ++window[b];
      if (window[b] == p.open[b].size()) {
        closed[b] = true;
        continue;
      }
      if (const UnixMs at = std::max(free[b], p.open[b][window[b]].from); at < begin) begin = at, bench = b;
    }
    if (bench == p.benches) break;
    double best = -1;
    std::size_t chosen = p.jobs;
    UnixMs next = INT64_MAX;
    for (std::size_t job = 0; job < p.jobs; ++job) {
      if (done[job] || p.at(job, bench) < 0) continue;
      if (begin + p.at(job, bench) > p.open[bench][window[bench]].until) continue;
      if (p.arrives[job] > begin) {
        next = std::min(next, p.arrives[job]);
        continue;
      }
      const auto takes = static_cast<double>(p.at(job, bench));
      const double slack = std::max(0.0, static_cast<double>(p.due[job] - begin) - takes);
      const double away = p.home[job] >= 0 && p.home[job] != static_cast<int>(bench) ? 0.5 : 1;
      const double urgent = away * static_cast<double>(p.weight[job]) / takes * std::exp(-slack / (2 * mean));
      if (urgent > best) best = urgent, chosen = job;
    }
    if (chosen == p.jobs) {
      free[bench] = next < p.open[bench][window[bench]].until ? next : p.open[bench][window[bench]].until;
      continue;
    }
    out[bench].push_back(static_cast<std::uint32_t>(chosen));
    done[chosen] = true;
    free[bench] = begin + p.at(chosen, bench);
    --left;
  }
  for (std::size_t job = 0; job < p.jobs; ++job)
    for (std::size_t bench = 0; bench < p.benches && !done[job]; ++bench)
      if (p.at(job, bench) >= 0) out[bench].push_back(static_cast<std::uint32_t>(job)), done[job] = true;
  return out;
}

std::vector<std::uint32_t> in_order(const DayProblem& p, const std::function<std::int64_t(std::size_t)>& key) {
  std::vector<std::uint32_t> out(p.jobs);
  std::iota(out.begin(), out.end(), 0U);
  std::stable_sort(out.begin(), out.end(), [&](std::uint32_t a, std::uint32_t b) { return key(a) < key(b); });
  return out;
}

}  // namespace

std::vector<Sequence> search_day(const DayProblem& p, std::int64_t bound, PlanEffort effort, const std::vector<Sequence>& told) {
  constexpr std::int64_t kDayTimings = 2'500'000, kEventTimings = 300'000;
  Search search(p, bound);
  std::vector<Sequence> best;
  DayCost best_cost{INT64_MAX, 0};
  const auto keep = [&] {
    if (search.total() < best_cost) best = search.sequences(), best_cost = search.total();
  };
  const auto good = [&] { return best_cost.late <= bound && best_cost.changed == 0; };

  // What was told, and what is new put in where it costs least.
  std::vector<bool> known(p.jobs);
  for (const Sequence& sequence : told)
    for (const std::uint32_t job : sequence) known[job] = true;
  const auto by_due = in_order(p, [&](std::size_t job) { return p.due[job]; });
  const bool any_told = std::find(known.begin(), known.end(), true) != known.end();
  search.start(any_told ? told : std::vector<Sequence>(p.benches));
  for (const std::uint32_t job : by_due)
    if (!known[job]) search.insert(job, any_told);
  keep();
  if (effort == PlanEffort::event && any_told) {
    search.descend(kEventTimings / 2);
    search.accept_late(kEventTimings, 50, 0, 1);
    keep();
    return best;
  }
  if (!good()) {
    const auto with_rule = [&](const std::vector<std::uint32_t>& order) {
      search.start(std::vector<Sequence>(p.benches));
      for (const std::uint32_t job : order) search.insert(job, false);
      keep();
    };
    if (any_told) with_rule(by_due);
    with_rule(in_order(
        p, [&](std::size_t job) { return p.due[job] - *std::max_element(&p.length[job * p.benches], &p.length[job * p.benches] + p.benches); }));
    with_rule(in_order(p, [&](std::size_t job) { return p.arrives[job]; }));
    with_rule(in_order(p, [&](std::size_t job) { return -p.weight[job]; }));
    if (p.jobs <= 2500) {
      search.start(dispatched(p));
      keep();
    }
  }
  // Few jobs: several starts, so that none is caught. Many: all that is left for one.
  const int starts = p.jobs <= 60 ? 6 : 1;
  const std::int64_t before = search.timings();
  std::int64_t weights = 0;
  for (const std::int64_t weight : p.weight) weights += weight;
  const double freedom = p.jobs == 0 ? 0 : 60.0 * 60'000 * static_cast<double>(weights) / static_cast<double>(p.jobs);
  for (int turn = 0; turn < starts && !good(); ++turn) {
    const std::int64_t until = before + kDayTimings * (turn + 1) / starts;
    search.start(best);
    if (turn % 3 == 1) {
      Chance chance(static_cast<std::uint64_t>(turn));
      auto order = by_due;
      for (std::size_t i = order.size(); i > 1; --i) std::swap(order[i - 1], order[chance.below(i)]);
      search.start(std::vector<Sequence>(p.benches));
      for (const std::uint32_t job : order) search.insert(job, true);
    } else if (turn % 3 == 2) {
      search.start(dispatched(p));
    }
    search.descend(starts == 1 ? before + kDayTimings / 2 : until);
    keep();
    search.accept_late(until, starts == 1 ? 100 : 400, starts == 1 ? 0 : freedom, 17 + static_cast<std::uint64_t>(turn));
    keep();
  }
  return best;
}

}  // namespace weavelog
