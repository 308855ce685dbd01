#pragma once
// Draft: an action in the making. Each change says what its maker saw, so that it replaces that and nothing
// else.

#include <unordered_set>
#include <utility>
#include <vector>

#include "core/log/cell.h"

namespace weavelog {

class Draft {
 public:
  Draft(BookId book, BookKind kind, ActionKind action) : book_(book), kind_(kind), action_(action) {}

  /// Sets a field of an entity as seen in `seen` (an EntityState with no cells for a new entity).
  void put(const EntityState& seen, FieldTag tag, Value value);
  /// Sets a field and closes exactly the answers named.
  void put_replacing(const EntityState& seen, FieldTag tag, Value value, std::vector<Dot> replaces);
  void clear(const EntityState& seen, FieldTag tag) { put(seen, tag, Value{}); }

  [[nodiscard]] BookId book() const { return book_; }
  [[nodiscard]] BookKind kind() const { return kind_; }
  [[nodiscard]] ActionKind action() const { return action_; }
  [[nodiscard]] const std::vector<Write>& writes() const { return writes_; }
  [[nodiscard]] bool empty() const { return writes_.empty(); }
  /// The greatest stamp among what is replaced: the entry's own must come after it.
  [[nodiscard]] Stamp newest_replaced() const { return newest_replaced_; }

 private:
  using Place = std::pair<EntityId, FieldTag>;
  struct PlaceHash {
    std::size_t operator()(const Place& place) const {
      return IdHash()(place.first) ^ (static_cast<std::size_t>(place.second) * 0x9e3779b97f4a7c15U);
    }
  };

  BookId book_;
  BookKind kind_;
  ActionKind action_;
  std::vector<Write> writes_;
  std::unordered_set<Place, PlaceHash> written_;  ///< so that a large draft need not search its writes
  Stamp newest_replaced_;
};

/// A state without cells, for an entity that is about to come into being.
[[nodiscard]] EntityState new_entity(BookId book, EntityKind kind, UnixMs now);

}  // namespace weavelog
