#pragma once
// The entities that were written last, decoded: what an action sees is what an earlier one left. Holds
// committed states only.

#include <list>
#include <mutex>
#include <optional>
#include <unordered_map>

#include "core/log/cell.h"

namespace weavelog {

/// An entity row as the writer keeps it.
struct HeldEntity {
  std::int64_t book_number = 0;
  EntityState state;
  std::int64_t questions = 0;
};

/// Thread-safe. Bounded: what was not used for longest goes first.
class EntityCache {
 public:
  static constexpr std::size_t kMost = 512;  ///< entities, of about 5 KB each

  [[nodiscard]] std::optional<EntityState> find(const BookId& book, const EntityId& id) const;
  /// Takes it out, for a writer that will change it and give it back when that is on disk. What is not given
  /// back is read anew.
  [[nodiscard]] std::optional<HeldEntity> take(const BookId& book, const EntityId& id);
  void give(HeldEntity entity);
  void clear();

 private:
  struct Key {
    BookId book;
    EntityId id;
    bool operator==(const Key&) const = default;
  };
  struct KeyHash {
    std::size_t operator()(const Key& key) const { return IdHash()(key.id) ^ (IdHash()(key.book) * 31); }
  };
  using Order = std::list<HeldEntity>;

  mutable std::mutex mutex_;
  Order order_;  ///< newest first
  std::unordered_map<Key, Order::iterator, KeyHash> places_;
};

}  // namespace weavelog
