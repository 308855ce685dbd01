#include "core/model/stock_tables.h"

#include <algorithm>

#include "core/base/local_time.h"
#include "core/model/stage_now.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

void remove_row(Connection& db, const char* sql, const EntityState& state) {
  SQLite::Statement& remove = db.statement(sql);
  bind_blob(remove, 1, state.book.bytes);
  bind_blob(remove, 2, state.id.bytes);
  remove.exec();
}

void apply_item(Connection& db, const EntityState& state) {
  if (!exists(state)) return remove_row(db, "DELETE FROM model_stock_item WHERE event=? AND id=?", state);
  SQLite::Statement& add = db.statement("INSERT OR IGNORE INTO model_stock_item(event, id) VALUES(?,?)");
  bind_blob(add, 1, state.book.bytes);
  bind_blob(add, 2, state.id.bytes);
  add.exec();
}

void apply_move(Connection& db, const EntityState& state) {
  // Its time is part of the key, and may have been another before.
  remove_row(db, "DELETE FROM model_stock_move WHERE event=? AND id=?", state);
  if (!exists(state)) return;
  const auto move = from_state<StockMove>(state);
  if (!move.item) return;
  const std::int64_t amount = (move.why == StockWhy::counted ? move.count : move.change).value_or(0);
  SQLite::Statement& add = db.statement("INSERT INTO model_stock_move(event, item, at, id, why, amount, job) VALUES(?,?,?,?,?,?,?)");
  bind_blob(add, 1, state.book.bytes);
  bind_blob(add, 2, move.item.bytes);
  add.bind(3, move.at.value_or(0));
  bind_blob(add, 4, state.id.bytes);
  add.bind(5, static_cast<int>(move.why));
  add.bind(6, std::clamp(amount, -kMostStock, kMostStock));
  if (move.job) bind_blob(add, 7, move.job.bytes);
  add.exec();
}

}  // namespace

void apply_stock(Connection& db, const EntityState& state) {
  if (state.kind == kStockItem)
    apply_item(db, state);
  else
    apply_move(db, state);
}

void forget_stock(Connection& db, const BookId& event) {
  for (const char* sql : {"DELETE FROM model_stock_item WHERE event=?", "DELETE FROM model_stock_move WHERE event=?"}) {
    SQLite::Statement& remove = db.statement(sql);
    bind_blob(remove, 1, event.bytes);
    remove.exec();
  }
}

std::optional<std::int64_t> StockLevel::runs_out_at(std::int64_t now) const {
  constexpr double kYearMs = 365.0 * 86'400'000;
  if (left <= 0 || !first_use || used <= 0 || now < *first_use) return std::nullopt;
  const double ahead = static_cast<double>(left) * static_cast<double>(std::max(now - *first_use, kHourMs)) / static_cast<double>(used);
  return ahead < kYearMs ? std::optional(now + static_cast<std::int64_t>(ahead)) : std::nullopt;
}

std::vector<StockLevel> stock_levels(const Ledger& ledger, const BookId& event, std::int64_t since) {
  std::vector<StockLevel> out;
  std::vector<EntityId> items;
  ledger.read([&](Connection& db) {
    auto& query = db.statement("SELECT id FROM model_stock_item WHERE event=? ORDER BY id");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep())
      if (const auto id = EntityId::from_bytes(blob_of(query, 0))) items.push_back(*id);
    for (const EntityId& id : items) {
      const auto state = ledger.entity(event, id);
      if (!state) continue;
      StockLevel level;
      level.item = Loaded<StockItem>(*state);
      auto& moves = db.statement("SELECT at, why, amount FROM model_stock_move WHERE event=? AND item=? ORDER BY at, id");
      bind_blob(moves, 1, event.bytes);
      bind_blob(moves, 2, id.bytes);
      while (moves.executeStep()) {
        const std::int64_t at = moves.getColumn(0).getInt64(), amount = moves.getColumn(2).getInt64();
        const auto why = static_cast<StockWhy>(moves.getColumn(1).getInt());
        level.left = why == StockWhy::counted ? amount : level.left + amount;
        if (why != StockWhy::used || at < since) continue;
        level.used -= amount;
        if (!level.first_use) level.first_use = at;
      }
      out.push_back(std::move(level));
    }
  });
  return out;
}

std::vector<std::pair<EntityId, std::int64_t>> stock_of_job(const Ledger& ledger, const BookId& event, const EntityId& job) {
  std::vector<std::pair<EntityId, std::int64_t>> out;
  ledger.read([&](Connection& db) {
    auto& query = db.statement("SELECT item, -amount FROM model_stock_move WHERE event=? AND job=? ORDER BY at, id");
    bind_blob(query, 1, event.bytes);
    bind_blob(query, 2, job.bytes);
    while (query.executeStep())
      if (const auto id = EntityId::from_bytes(blob_of(query, 0))) out.emplace_back(*id, query.getColumn(1).getInt64());
  });
  return out;
}

}  // namespace weavelog
