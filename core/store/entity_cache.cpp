#include "core/store/entity_cache.h"

namespace weavelog {
namespace {

// Of a kind so many are kept before it is judged; then of one that is found less often than once in so many, every so-manieth is kept, so
// that a change is noticed.
constexpr std::uint32_t kJudgedFrom = 128;
constexpr std::uint32_t kOnceIn = 8;
constexpr std::uint32_t kSample = 16;
constexpr std::uint32_t kFadeAt = 512;

}  // namespace

void EntityCache::note_found(EntityKind kind) const {
  std::uint32_t& found = habits_[kind].found;
  if (found < kFadeAt) ++found;
}

bool EntityCache::worth_keeping(EntityKind kind) {
  Habit& habit = habits_[kind];
  const bool hardly_asked = habit.kept >= kJudgedFrom && habit.found * kOnceIn < habit.kept;
  if (hardly_asked && ++habit.passed % kSample != 0) return false;
  if (++habit.kept >= kFadeAt) {
    habit.kept /= 2;
    habit.found /= 2;
  }
  return true;
}

std::optional<EntityState> EntityCache::find(const BookId& book, const EntityId& id) const {
  const std::lock_guard guard(mutex_);
  const auto found = places_.find({book, id});
  if (found == places_.end()) return std::nullopt;
  note_found(found->second->state.kind);
  return found->second->state;
}

std::optional<HeldEntity> EntityCache::take(const BookId& book, const EntityId& id) {
  const std::lock_guard guard(mutex_);
  const auto found = places_.find({book, id});
  if (found == places_.end()) return std::nullopt;
  HeldEntity out = std::move(*found->second);
  note_found(out.state.kind);
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
  if (!worth_keeping(entity.state.kind)) return;
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
