#include "core/store/replaced_before.h"

#include <algorithm>

namespace weavelog {

std::vector<std::uint32_t> ReplacedBefore::of(const AuthorId& author, const Entry& entry) {
  std::vector<std::uint32_t> out;
  if (!early_.empty())
    for (std::uint32_t i = 0; i < entry.writes.size(); ++i)
      if (early_.contains({entry.writes[i].entity, entry.writes[i].tag, Dot{author, entry.seq, i}})) out.push_back(i);
  heads_[author] = entry.seq;
  for (const Write& write : entry.writes)
    for (const Dot& dot : write.replaces)
      if (const auto held = heads_.find(dot.author); held == heads_.end() || held->second < dot.seq) early_.insert({write.entity, write.tag, dot});
  return out;
}

void drop_value(EntityState& state, FieldTag tag, const Dot& dot) {
  const auto cell = std::find_if(state.cells.begin(), state.cells.end(), [&](const Cell& one) { return one.tag == tag; });
  if (cell == state.cells.end()) return;
  auto& values = cell->values;
  values.erase(std::remove_if(values.begin(), values.end(), [&](const CellValue& value) { return value.dot == dot; }), values.end());
  if (values.empty()) state.cells.erase(cell);
}

}  // namespace weavelog
