// What no plan can do better than. One bench that is as fast as all together, works on a racket in pieces and takes the one with least left
// first has, at any moment, finished as many as any plan can (Schrage, A proof of the optimality of the shortest remaining processing time
// discipline, 1968); its ends in order against the due times in order are late by no more than any plan. Weights come in as layers: jobs of
// weight w count once for every step of weight up to w.

#include <algorithm>
#include <cmath>
#include <queue>

#include "core/plan/day_problem.h"
#include "core/plan/list_rules.h"

namespace weavelog {
namespace {

/// Work that all benches together can have done by a moment: ms at pace 1.
class Capacity {
 public:
  explicit Capacity(const DayProblem& p) {
    std::vector<std::pair<UnixMs, double>> steps;
    for (std::size_t bench = 0; bench < p.benches; ++bench)
      for (const TimeSpan& span : p.open[bench]) {
        steps.emplace_back(span.from, 1 / p.pace[bench]);
        steps.emplace_back(span.until, -1 / p.pace[bench]);
      }
    std::sort(steps.begin(), steps.end());
    double speed = 0, done = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      if (i > 0) done += speed * static_cast<double>(steps[i].first - steps[i - 1].first);
      speed += steps[i].second;
      if (speed < 1e-9) speed = 0;
      points_.push_back({steps[i].first, done, speed});
    }
  }
  [[nodiscard]] double by(UnixMs at) const {
    const auto next = std::upper_bound(points_.begin(), points_.end(), at, [](UnixMs t, const Point& point) { return t < point.at; });
    if (next == points_.begin()) return 0;
    const Point& point = *(next - 1);
    return point.done + point.speed * static_cast<double>(at - point.at);
  }
  /// The first moment by which so much can be done, rounded down; `never` if it can't.
  [[nodiscard]] UnixMs when(double work, UnixMs never) const {
    const double wanted = work * (1 - 1e-12) - 1e-3;
    const auto next = std::lower_bound(points_.begin(), points_.end(), wanted, [](const Point& point, double w) { return point.done < w; });
    if (next == points_.end()) return never;
    if (next == points_.begin()) return next->at;
    const Point& before = *(next - 1);
    return before.at + (before.speed > 0 ? static_cast<UnixMs>(std::floor((wanted - before.done) / before.speed)) : 0);
  }

 private:
  struct Point {
    UnixMs at;
    double done, speed;
  };
  std::vector<Point> points_;
};

struct Alone {
  UnixMs end = 0;          ///< ready first, as if nothing else were there
  std::int64_t late = 0;   ///< weight x ms, home bench included
  double work = 0;         ///< least work, ms at pace 1
};

std::vector<Alone> alone_of(const DayProblem& p) {
  std::vector<Alone> out(p.jobs);
  for (std::size_t job = 0; job < p.jobs; ++job) {
    out[job] = {INT64_MAX, INT64_MAX, 1e300};
    for (std::size_t bench = 0; bench < p.benches; ++bench) {
      if (p.at(job, bench) < 0) continue;
      std::size_t window = 0;
      const UnixMs end = p.end_at(job, bench, 0, window);
      out[job].end = std::min(out[job].end, end);
      out[job].late = std::min(out[job].late, p.cost(job, bench, end).late);
      out[job].work = std::min(out[job].work, static_cast<double>(p.at(job, bench)) / p.pace[bench]);
    }
  }
  return out;
}

/// The ends of the one fast bench, in order; what it can't do ends never.
std::vector<UnixMs> fast_ends(const DayProblem& p, const Capacity& capacity, const std::vector<Alone>& alone, const std::vector<std::size_t>& jobs) {
  struct Coming {
    double from, work;
  };
  std::vector<Coming> coming;
  for (const std::size_t job : jobs) coming.push_back({capacity.by(p.arrives[job]), alone[job].work});
  std::sort(coming.begin(), coming.end(), [](const Coming& a, const Coming& b) { return a.from < b.from; });
  std::priority_queue<double, std::vector<double>, std::greater<>> left;
  std::vector<UnixMs> out;
  double now = 0;
  for (std::size_t next = 0; next < coming.size() || !left.empty();) {
    if (left.empty()) now = std::max(now, coming[next].from);
    while (next < coming.size() && coming[next].from <= now) left.push(coming[next++].work);
    const double shortest = left.top();
    left.pop();
    if (next < coming.size() && coming[next].from < now + shortest) {
      left.push(shortest - (coming[next].from - now));
      now = coming[next].from;
    } else {
      now += shortest;
      out.push_back(capacity.when(now, p.never));
    }
  }
  return out;
}

}  // namespace

std::int64_t bound_of(const DayProblem& p) {
  const auto alone = alone_of(p);
  std::int64_t each = 0;
  for (const Alone& one : alone) each += one.late;
  const Capacity capacity(p);
  // At most sixteen layers: coarser ones leave weight away, which keeps the bound below.
  std::vector<std::int64_t> weights = p.weight;
  std::sort(weights.begin(), weights.end());
  weights.erase(std::unique(weights.begin(), weights.end()), weights.end());
  std::vector<std::int64_t> layers;
  for (std::size_t i = 0; i < weights.size(); i += std::max<std::size_t>(1, (weights.size() + 15) / 16)) layers.push_back(weights[i]);
  std::int64_t together = 0, below = 0;
  for (const std::int64_t layer : layers) {
    std::vector<std::size_t> jobs;
    std::vector<UnixMs> dues, ends;
    std::int64_t own = 0;
    for (std::size_t job = 0; job < p.jobs; ++job) {
      if (p.weight[job] < layer) continue;
      jobs.push_back(job);
      dues.push_back(p.due[job]);
      ends.push_back(alone[job].end);
      own += std::max<std::int64_t>(0, alone[job].end - p.due[job]);
    }
    std::sort(dues.begin(), dues.end());
    std::sort(ends.begin(), ends.end());
    const auto fast = fast_ends(p, capacity, alone, jobs);
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < jobs.size(); ++i) sum += std::max<std::int64_t>(0, std::max(fast[i], ends[i]) - dues[i]);
    together += (layer - below) * std::max(own, sum);
    below = layer;
  }
  return std::max(each, together);
}

std::size_t surely_late_of(const DayProblem& p) {
  const auto alone = alone_of(p);
  const Capacity capacity(p);
  // On the fast bench, with everything there at once: as many on time as there can be (Moore and Hodgson).
  std::vector<std::int64_t> lengths, dues;
  std::size_t late_alone = 0;
  for (std::size_t job = 0; job < p.jobs; ++job) {
    lengths.push_back(static_cast<std::int64_t>(std::floor(alone[job].work)));
    dues.push_back(static_cast<std::int64_t>(std::ceil(capacity.by(p.due[job]))));
    late_alone += alone[job].end > p.due[job];
  }
  return std::max(late_alone, p.jobs - most_on_time(lengths, dues).size());
}

}  // namespace weavelog
