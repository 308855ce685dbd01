#include "core/model/stage_now.h"

#include <algorithm>

namespace weavelog {

StageNow stage_now(std::span<const PlacedMark> marks) {
  StageNow now;
  std::vector<EntityId> passed;
  for (const PlacedMark& placed : marks)
    for (const EntityId& id : split_ids(placed.mark.after)) passed.push_back(id);
  std::sort(passed.begin(), passed.end());

  std::vector<const PlacedMark*> newest;
  for (const PlacedMark& placed : marks)
    if (!std::binary_search(passed.begin(), passed.end(), placed.id)) newest.push_back(&placed);
  // Marks that name each other in a ring come from a faulty device only; all of them count then.
  if (newest.empty())
    for (const PlacedMark& placed : marks) newest.push_back(&placed);
  if (newest.empty()) return now;

  std::sort(newest.begin(), newest.end(),
            [](const PlacedMark* a, const PlacedMark* b) { return a->id < b->id; });
  for (const PlacedMark* placed : newest) now.newest.push_back(placed->id);
  const PlacedMark& top =
      **std::max_element(newest.begin(), newest.end(), [](const PlacedMark* a, const PlacedMark* b) {
        return a->stamp != b->stamp ? a->stamp < b->stamp : a->id < b->id;
      });
  now.stage = top.mark.stage;
  now.at = top.mark.at;
  now.by = top.mark.by;
  now.reason = top.mark.reason;
  now.stamp = top.stamp;
  const bool hands_on = now.stage == Stage::cut_out || now.stage == Stage::on_machine;
  now.clash = std::any_of(newest.begin(), newest.end(), [&](const PlacedMark* other) {
    return other->mark.stage != now.stage || (hands_on && other->mark.by != now.by);
  });
  return now;
}

std::optional<PlacedMark> placed_mark(const EntityState& state) {
  if (!exists(state)) return std::nullopt;
  PlacedMark placed{state.id, {}, from_state<StageMark>(state)};
  if (const Cell* cell = state.find(tag_of<StageMark>(&StageMark::stage)))
    placed.stamp = cell->latest().stamp;
  return placed;
}

Bytes join_ids(std::span<const EntityId> ids) {
  Bytes out;
  out.reserve(ids.size() * 16);
  for (const EntityId& id : ids) out.insert(out.end(), id.bytes.begin(), id.bytes.end());
  return out;
}

std::vector<EntityId> split_ids(ByteView bytes) {
  std::vector<EntityId> ids;
  for (; bytes.size() >= 16; bytes = bytes.subspan(16)) ids.push_back(*EntityId::from_bytes(bytes.first(16)));
  return ids;
}

bool exists(const EntityState& state) {
  return std::any_of(state.cells.begin(), state.cells.end(),
                     [](const Cell& cell) { return !is_cleared(cell.latest().value); });
}

}  // namespace weavelog
