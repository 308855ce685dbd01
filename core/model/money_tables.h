#pragma once
// Charges and payments of every event, one row each, with the questions that screens and papers ask of them. A part of ModelTables.

#include <string>
#include <vector>

#include "core/model/money.h"
#include "core/store/ledger.h"

namespace weavelog {

inline constexpr const char* kMoneyTable = "model_money";
inline constexpr const char* kCreateMoney = R"sql(
CREATE TABLE model_money(event BLOB NOT NULL, id BLOB NOT NULL, payment INTEGER NOT NULL, player BLOB, job BLOB,
  service TEXT NOT NULL, means INTEGER NOT NULL, amount INTEGER NOT NULL, currency TEXT NOT NULL, at INTEGER NOT NULL,
  by_whom TEXT NOT NULL, note TEXT NOT NULL, reverses BLOB, PRIMARY KEY(event, id)) WITHOUT ROWID;
CREATE INDEX model_money_player ON model_money(event, player, at);
CREATE INDEX model_money_job ON model_money(event, job) WHERE job IS NOT NULL;
CREATE INDEX model_money_time ON model_money(event, at);
)sql";

/// Brings the row of a charge or a payment up to date.
void apply_money(Connection& db, const EntityState& state);
/// The event's book is forgotten.
void forget_money(Connection& db, const BookId& event);

/// One charge or payment.
struct MoneyRow {
  EntityId id;
  bool payment = false;
  BookId player;
  EntityId job;
  std::string service;  ///< of a charge
  PaidBy means = PaidBy::unsaid;  ///< of a payment
  std::int64_t amount = 0;  ///< minor units of the currency
  std::string currency;
  std::int64_t at = 0;
  std::string by;
  std::string note;
  EntityId reverses;
  bool operator==(const MoneyRow&) const = default;
};

/// All lines of a player at an event, oldest first.
[[nodiscard]] std::vector<MoneyRow> money_of_player(const Ledger& ledger, const BookId& event, const BookId& player);
/// What was charged for a job, oldest first.
[[nodiscard]] std::vector<MoneyRow> money_of_job(const Ledger& ledger, const BookId& event, const EntityId& job);
/// All lines of an event from a moment on and before another, oldest first.
[[nodiscard]] std::vector<MoneyRow> money_between(const Ledger& ledger, const BookId& event, std::int64_t from, std::int64_t until);
[[nodiscard]] std::optional<MoneyRow> money_line(const Ledger& ledger, const BookId& event, const EntityId& id);

}  // namespace weavelog
