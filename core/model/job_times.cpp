#include "core/model/job_times.h"

#include <algorithm>
#include <vector>

namespace weavelog {
namespace {

constexpr std::int64_t kLongestWait = 30LL * 86'400'000;  // ms: longer than any event

}  // namespace

void JobTimes::take(const PlacedMark& placed) {
  const StageMark& mark = placed.mark;
  if (waiting_since && mark.stage != Stage::waiting) {
    // A clock that was put back must not take waiting away, nor one that is years ahead add to it.
    std::int64_t gone = 0;
    if (!__builtin_sub_overflow(mark.at.value_or(*waiting_since), *waiting_since, &gone)) waited += std::clamp<std::int64_t>(gone, 0, kLongestWait);
    waiting_since.reset();
  }
  if (mark.stage < Stage::ready) ready_at.reset();
  if (mark.stage != Stage::collected) collected_at.reset();
  switch (mark.stage) {
    case Stage::waiting:
      if (!waiting_since) waiting_since = mark.at;
      break;
    case Stage::on_machine:
      machine = mark.machine;
      mounted_at = mark.at;
      break;
    case Stage::strung:
      strung_at = mark.at;
      strung_by = mark.by;
      ++strung_count;
      break;
    case Stage::ready: ready_at = mark.at; break;
    case Stage::collected: collected_at = mark.at; break;
    default: break;
  }
  stamp = placed.stamp;
}

JobTimes job_times(std::span<const PlacedMark> marks) {
  std::vector<const PlacedMark*> in_order;
  for (const PlacedMark& placed : marks) in_order.push_back(&placed);
  std::sort(in_order.begin(), in_order.end(), [](const PlacedMark* a, const PlacedMark* b) {
    return a->stamp != b->stamp ? a->stamp < b->stamp : a->id < b->id;
  });
  JobTimes times;
  for (const PlacedMark* placed : in_order) times.take(*placed);
  return times;
}

}  // namespace weavelog
