#include "core/quality/watch.h"

#include <cmath>

namespace weavelog {

std::string_view name_of(Watched watched) {
  return watched == Watched::racket ? "racket" : watched == Watched::machine ? "machine" : "stringer";
}

std::vector<WatchAlarm> RoomWatch::add(const std::string& stringer, const std::string& machine, double percent, double doubt) {
  std::vector<WatchAlarm> out;
  const double z = percent / (design_.scatter * doubt);
  if (std::fabs(z) > design_.width) {
    const double half = 1.96 * design_.scatter * doubt;
    out.push_back({Watched::racket, "", percent, {percent - half, percent + half}, 1});
  }
  take(Watched::machine, machine, z, out);
  take(Watched::stringer, stringer, z, out);
  return out;
}

void RoomWatch::take(Watched watched, const std::string& name, double z, std::vector<WatchAlarm>& alarms) {
  if (name.empty()) return;
  auto& all = watched == Watched::machine ? machines_ : stringers_;
  Line& line = all.try_emplace(name, Line{Ewma(design_.average), {}}).first->second;
  const double clip = design_.average.clip;
  line.points.push_back(clip > 0 ? std::fmin(clip, std::fmax(-clip, z)) : z);
  if (!line.average.add(z)) return;
  // Since when, most likely: the last points whose sum stands out most (maximum likelihood of a step).
  double sum = 0, best = -1, shift = 0;
  std::size_t count = 0;
  for (std::size_t n = 1; n <= line.points.size(); ++n) {
    sum += line.points[line.points.size() - n];
    const double strength = sum * sum / static_cast<double>(n);
    if (strength > best) best = strength, count = n, shift = sum / static_cast<double>(n);
  }
  const double middle = shift * design_.scatter, half = 1.96 * design_.scatter / std::sqrt(static_cast<double>(count));
  alarms.push_back({watched, name, middle, {middle - half, middle + half}, count});
  line = Line{Ewma(design_.average), {}};
}

void RoomWatch::restart(Watched watched, const std::string& name) { (watched == Watched::machine ? machines_ : stringers_).erase(name); }

std::optional<RoomWatch::Average> RoomWatch::average(Watched watched, const std::string& name) const {
  const auto found = lines(watched).find(name);
  if (watched == Watched::racket || found == lines(watched).end()) return std::nullopt;
  const Ewma& one = found->second.average;
  return Average{one.value() * design_.scatter, one.limit() * design_.scatter, one.points()};
}

}  // namespace weavelog
