#include "core/log/draft.h"

#include <algorithm>
#include <stdexcept>

#include "core/log/dot_set.h"
#include "core/log/entity_id.h"

namespace weavelog {

void Draft::put(const EntityState& seen, FieldTag tag, Value value) {
  std::vector<Dot> replaces;
  if (const Cell* cell = seen.find(tag))
    for (const auto& held : cell->values) replaces.push_back(held.dot);
  put_replacing(seen, tag, std::move(value), std::move(replaces));
}

void Draft::put_replacing(const EntityState& seen, FieldTag tag, Value value, std::vector<Dot> replaces) {
  if (seen.book != book_) throw std::logic_error("a draft writes in one book only");
  const DotSet replaced(replaces);
  if (const Cell* cell = seen.find(tag))
    for (const auto& held : cell->values)
      if (replaced.contains(held.dot)) newest_replaced_ = std::max(newest_replaced_, held.stamp);
  // A second thought about a field within one action takes the place of the first.
  if (!written_.emplace(seen.id, tag).second)
    std::erase_if(writes_, [&](const Write& write) { return write.entity == seen.id && write.tag == tag; });
  writes_.push_back(Write{seen.id, seen.kind, tag, std::move(value), std::move(replaces)});
}

EntityState new_entity(BookId book, EntityKind kind, UnixMs now) {
  EntityState state;
  state.book = book;
  state.kind = kind;
  state.id = make_entity_id(kind, now);
  return state;
}

}  // namespace weavelog
