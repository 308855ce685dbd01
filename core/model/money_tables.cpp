#include "core/model/money_tables.h"

#include "core/model/stage_now.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr const char* kColumns =
    "SELECT id, payment, player, job, service, means, amount, currency, at, by_whom, note, reverses FROM model_money WHERE event=? ";

void put_row(Connection& db, const BookId& event, const MoneyRow& row) {
  SQLite::Statement& set = db.statement(
      "INSERT OR REPLACE INTO model_money(event, id, payment, player, job, service, means, amount, currency, at, by_whom, note, reverses) "
      "VALUES(?,?,?,?,?,?,?,?,?,?,?,?,?)");
  bind_blob(set, 1, event.bytes);
  bind_blob(set, 2, row.id.bytes);
  set.bind(3, row.payment ? 1 : 0);
  bind_maybe(set, 4, row.player);
  bind_maybe(set, 5, row.job);
  set.bind(6, row.service);
  set.bind(7, static_cast<int>(row.means));
  set.bind(8, row.amount);
  set.bind(9, row.currency);
  set.bind(10, row.at);
  set.bind(11, row.by);
  set.bind(12, row.note);
  bind_maybe(set, 13, row.reverses);
  set.exec();
}

template <class IdType>
IdType id_in(SQLite::Statement& row, int column) {
  if (row.getColumn(column).isNull()) return {};
  return IdType::from_bytes(blob_of(row, column)).value_or(IdType{});
}

std::vector<MoneyRow> rows_of(SQLite::Statement& query) {
  std::vector<MoneyRow> out;
  while (query.executeStep()) {
    MoneyRow row;
    row.id = id_in<EntityId>(query, 0);
    row.payment = query.getColumn(1).getInt() != 0;
    row.player = id_in<BookId>(query, 2);
    row.job = id_in<EntityId>(query, 3);
    row.service = query.getColumn(4).getString();
    row.means = static_cast<PaidBy>(query.getColumn(5).getInt());
    row.amount = query.getColumn(6).getInt64();
    row.currency = query.getColumn(7).getString();
    row.at = query.getColumn(8).getInt64();
    row.by = query.getColumn(9).getString();
    row.note = query.getColumn(10).getString();
    row.reverses = id_in<EntityId>(query, 11);
    out.push_back(std::move(row));
  }
  return out;
}

}  // namespace

void apply_money(Connection& db, const EntityState& state) {
  if (!exists(state)) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_money WHERE event=? AND id=?");
    bind_blob(remove, 1, state.book.bytes);
    bind_blob(remove, 2, state.id.bytes);
    remove.exec();
    return;
  }
  if (state.kind == kCharge) {
    const auto held = from_state<Charge>(state);
    put_row(db, state.book,
            {state.id, false, held.player, held.job, held.service, PaidBy::unsaid, held.amount_minor.value_or(0), held.currency,
             held.at.value_or(0), held.by, held.note, held.reverses});
  } else {
    const auto held = from_state<Payment>(state);
    put_row(db, state.book,
            {state.id, true, held.player, {}, {}, held.means, held.amount_minor.value_or(0), held.currency, held.at.value_or(0), held.by,
             held.note, held.reverses});
  }
}

void forget_money(Connection& db, const BookId& event) {
  SQLite::Statement& remove = db.statement("DELETE FROM model_money WHERE event=?");
  bind_blob(remove, 1, event.bytes);
  remove.exec();
}

std::vector<MoneyRow> money_of_player(const Ledger& ledger, const BookId& event, const BookId& player) {
  std::vector<MoneyRow> out;
  ledger.read([&](Connection& db) {
    static const std::string sql = std::string(kColumns) + "AND player=? ORDER BY at, id";
    auto& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    bind_blob(query, 2, player.bytes);
    out = rows_of(query);
  });
  return out;
}

std::vector<MoneyRow> money_of_job(const Ledger& ledger, const BookId& event, const EntityId& job) {
  std::vector<MoneyRow> out;
  ledger.read([&](Connection& db) {
    static const std::string sql = std::string(kColumns) + "AND job=? ORDER BY at, id";
    auto& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    bind_blob(query, 2, job.bytes);
    out = rows_of(query);
  });
  return out;
}

std::vector<MoneyRow> money_between(const Ledger& ledger, const BookId& event, std::int64_t from, std::int64_t until) {
  std::vector<MoneyRow> out;
  ledger.read([&](Connection& db) {
    static const std::string sql = std::string(kColumns) + "AND at>=? AND at<? ORDER BY at, id";
    auto& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    query.bind(2, from);
    query.bind(3, until);
    out = rows_of(query);
  });
  return out;
}

std::optional<MoneyRow> money_line(const Ledger& ledger, const BookId& event, const EntityId& id) {
  std::vector<MoneyRow> out;
  ledger.read([&](Connection& db) {
    static const std::string sql = std::string(kColumns) + "AND id=?";
    auto& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    bind_blob(query, 2, id.bytes);
    out = rows_of(query);
  });
  return out.empty() ? std::nullopt : std::optional(out.front());
}

}  // namespace weavelog
