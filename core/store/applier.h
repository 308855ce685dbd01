#pragma once
// Applies entries to entity rows inside one write transaction: each row is read and written once, however
// many entries touch it, and projections hear of it once.

#include <memory>
#include <span>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/store/database.h"
#include "core/store/entity_cache.h"
#include "core/store/ledger.h"

namespace weavelog {

class Applier {
 public:
  Applier(Connection& connection, const FieldRegistry& registry, std::span<const std::shared_ptr<Projection>> projections,
          EntityCache& cache);

  /// The book has come into being in this transaction: no row of it need be looked for.
  void begins(std::int64_t book_number) { begun_.insert(book_number); }
  /// `replaced`: places of writes whose values do not stand (replaced_before.h).
  void apply(std::int64_t book_number, const BookId& book, const AuthorId& author, const Entry& entry, std::span<const std::uint32_t> replaced = {});
  /// The state as applied so far.
  [[nodiscard]] const EntityState& state(std::int64_t book_number, const BookId& book, const EntityId& id);
  /// The same if it was touched, else null.
  [[nodiscard]] const EntityState* find(std::int64_t book_number, const EntityId& id) const;
  /// Writes the rows, the open questions and the projections. Call once, last.
  void finish();
  /// Gives what was applied to the cache: only after the transaction is on disk.
  void keep();

 private:
  struct Row {
    HeldEntity held;
    bool fresh = false;          ///< had no row before
    std::vector<FieldTag> tags;  ///< that were written
  };
  [[nodiscard]] static bool worth_keeping(const Row& row) { return !row.tags.empty() || !row.fresh; }
  Row& row(std::int64_t book_number, const BookId& book, const EntityId& id);
  void read_row(Row& row);
  static void make_room(Row& row, std::span<const Write> writes);
  void write_row(Row& row, ByteView packed);

  Connection& connection_;
  const FieldRegistry& registry_;
  std::span<const std::shared_ptr<Projection>> projections_;
  EntityCache& cache_;
  using Key = std::pair<std::int64_t, EntityId>;
  struct KeyHash {
    std::size_t operator()(const Key& key) const { return SaltedIdHash()(key.second) ^ static_cast<std::size_t>(key.first); }
  };
  std::unordered_map<Key, Row, KeyHash> rows_;
  std::unordered_set<std::int64_t> begun_;
  std::vector<Row*> order_;  ///< in which rows were first touched, which respects causality
  std::unordered_map<std::int64_t, BookId> other_kind_;  ///< books with an entity that is of another kind than its row said
};

/// Gives the projection all entities of a book, as their rows are, at once; it must hold nothing of that book yet.
void project_book(Connection& connection, Projection& projection, std::int64_t book_number, const BookId& book);

}  // namespace weavelog
