#pragma once
// The entities that were written last, decoded: what an action sees is what an earlier one left. Holds
// committed states only.

#include <cstdint>
#include <list>
#include <mutex>
#include <optional>
#include <unordered_map>

#include "core/base/salted_hash.h"
#include "core/log/cell.h"

namespace weavelog {

/// An entity row as the writer keeps it.
struct HeldEntity {
  std::int64_t book_number = 0;
  EntityState state;
  std::int64_t questions = 0;
};

/// Thread-safe. Bounded: what was not used for longest goes first. Kinds of which hardly any is asked for again, such as marks that are
/// written once, are not kept: they would push out the others.
class EntityCache {
 public:
  static constexpr std::size_t kMost = 1024;  ///< entities, of about 3 KB each

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
    std::size_t operator()(const Key& key) const { return SaltedIdHash()(key.id) ^ (SaltedIdHash()(key.book) * 31); }
  };
  using Order = std::list<HeldEntity>;
  /// How often entities of a kind were kept, and how often one was found; both fade.
  struct Habit {
    std::uint32_t kept = 0, found = 0, passed = 0;
  };
  void note_found(EntityKind kind) const;
  [[nodiscard]] bool worth_keeping(EntityKind kind);

  mutable std::mutex mutex_;
  Order order_;  ///< newest first
  std::unordered_map<Key, Order::iterator, KeyHash> places_;
  mutable std::unordered_map<EntityKind, Habit> habits_;
};

}  // namespace weavelog
