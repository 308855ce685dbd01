#pragma once
// Applies entries to entity rows inside one write transaction: each row is read and written once, however many entries
// touch it, and projections hear of it once.

#include <memory>
#include <span>
#include <unordered_map>
#include <vector>

#include "core/store/database.h"
#include "core/store/ledger.h"

namespace weavelog {

class Applier {
 public:
  Applier(Connection& connection, const FieldRegistry& registry, std::span<const std::shared_ptr<Projection>> projections);

  void apply(std::int64_t book_number, const BookId& book, const AuthorId& author, const Entry& entry);
  /// The state as applied so far.
  [[nodiscard]] const EntityState& state(std::int64_t book_number, const BookId& book, const EntityId& id);
  /// Writes the rows, the open questions and the projections. Call once, last.
  void finish();

 private:
  struct Row {
    std::int64_t book_number = 0;
    EntityState state;
    std::int64_t questions = 0;
    bool changed = false;
  };
  Row& row(std::int64_t book_number, const BookId& book, const EntityId& id);
  void write_row(Row& row);

  Connection& connection_;
  const FieldRegistry& registry_;
  std::span<const std::shared_ptr<Projection>> projections_;
  using Key = std::pair<std::int64_t, EntityId>;
  struct KeyHash {
    std::size_t operator()(const Key& key) const { return IdHash()(key.second) ^ static_cast<std::size_t>(key.first); }
  };
  std::unordered_map<Key, Row, KeyHash> rows_;
  std::vector<Key> order_;  ///< in which rows were first touched: deterministic, and near to each other on disk
};

}  // namespace weavelog
