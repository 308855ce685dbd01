#pragma once
// Stock items and their moves of every event, with what is left of each. A part of ModelTables.

#include <vector>

#include "core/model/stock.h"
#include "core/store/ledger.h"

namespace weavelog {

inline constexpr const char* kStockItemTable = "model_stock_item";
inline constexpr const char* kStockMoveTable = "model_stock_move";
inline constexpr const char* kCreateStock = R"sql(
CREATE TABLE model_stock_item(event BLOB NOT NULL, id BLOB NOT NULL, PRIMARY KEY(event, id)) WITHOUT ROWID;
CREATE TABLE model_stock_move(event BLOB NOT NULL, item BLOB NOT NULL, at INTEGER NOT NULL, id BLOB NOT NULL, why INTEGER NOT NULL,
  amount INTEGER NOT NULL, job BLOB, PRIMARY KEY(event, item, at, id)) WITHOUT ROWID;
CREATE UNIQUE INDEX model_stock_move_id ON model_stock_move(event, id);
CREATE INDEX model_stock_move_job ON model_stock_move(event, job) WHERE job IS NOT NULL;
)sql";

/// Brings the row of an item or a move up to date.
void apply_stock(Connection& db, const EntityState& state);
/// The event's book is forgotten.
void forget_stock(Connection& db, const BookId& event);

/// No single change or count is taken for more than this (mm or pieces): a kilometre of string is five reels.
inline constexpr std::int64_t kMostStock = 1'000'000'000;

struct StockLevel {
  Loaded<StockItem> item;
  std::int64_t left = 0;  ///< mm or pieces; below zero: more was used than anybody brought in
  std::int64_t used = 0;  ///< from `since` on
  std::optional<std::int64_t> first_use;  ///< of those
  [[nodiscard]] bool low() const { return item.now.low_mark && left <= *item.now.low_mark; }
  /// When it runs out if it goes on being used as from `first_use` to `now`, an hour at least, so that the first use of a morning does not
  /// frighten anybody; nothing if nothing was used, nothing is left, or it would last a year.
  [[nodiscard]] std::optional<std::int64_t> runs_out_at(std::int64_t now) const;
};

/// Everything in stock at an event, in the order of making; `used` counts from `since` on.
[[nodiscard]] std::vector<StockLevel> stock_levels(const Ledger& ledger, const BookId& event, std::int64_t since);
/// What was used for a job: items with their amounts (mm or pieces).
[[nodiscard]] std::vector<std::pair<EntityId, std::int64_t>> stock_of_job(const Ledger& ledger, const BookId& event, const EntityId& job);

}  // namespace weavelog
