#include "core/store/entry_rules.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace weavelog {
namespace {

bool twice_in_any_order(const Entry& entry) {
  std::vector<std::pair<EntityId, FieldTag>> fields;
  fields.reserve(entry.writes.size());
  for (const Write& write : entry.writes) fields.emplace_back(write.entity, write.tag);
  std::sort(fields.begin(), fields.end());
  return std::adjacent_find(fields.begin(), fields.end()) != fields.end();
}

}  // namespace

bool writes_a_field_twice(const Entry& entry) {
  // Writes of an entity stand together, entities in order, and the numbers of an entity's fields are near each other: so one word of bits
  // tells it for nearly every entry, of which an import has tens of thousands.
  std::uint64_t seen = 0;
  for (std::size_t i = 0; i < entry.writes.size(); ++i) {
    const Write& write = entry.writes[i];
    if (i > 0 && write.entity != entry.writes[i - 1].entity) {
      if (write.entity < entry.writes[i - 1].entity) return twice_in_any_order(entry);
      seen = 0;
    }
    const std::uint64_t bit = std::uint64_t{1} << (static_cast<std::uint32_t>(write.tag) % 64);
    if ((seen & bit) != 0) return twice_in_any_order(entry);
    seen |= bit;
  }
  return false;
}

}  // namespace weavelog
