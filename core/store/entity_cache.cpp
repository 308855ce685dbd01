#include "core/store/entity_cache.h"

namespace weavelog {

std::optional<EntityState> EntityCache::find(const BookId& book, const EntityId& id) const {
  const std::lock_guard guard(mutex_);
  const auto found = places_.find({book, id});
  return found == places_.end() ? std::nullopt : std::optional(found->second->state);
}

std::optional<HeldEntity> EntityCache::take(const BookId& book, const EntityId& id) {
  const std::lock_guard guard(mutex_);
  const auto found = places_.find({book, id});
  if (found == places_.end()) return std::nullopt;
  HeldEntity out = std::move(*found->second);
  order_.erase(found->second);
  places_.erase(found);
  return out;
}

void EntityCache::give(HeldEntity entity) {
  const std::lock_guard guard(mutex_);
  const Key key{entity.state.book, entity.state.id};
  if (const auto held = places_.find(key); held != places_.end()) {
    order_.erase(held->second);
    places_.erase(held);
  }
  order_.push_front(std::move(entity));
  places_.emplace(key, order_.begin());
  if (order_.size() <= kMost) return;
  places_.erase({order_.back().state.book, order_.back().state.id});
  order_.pop_back();
}

void EntityCache::clear() {
  const std::lock_guard guard(mutex_);
  places_.clear();
  order_.clear();
}

}  // namespace weavelog
