#pragma once
// A player's account at an event as it is read across the desk: what belongs to a job, what does not, and what is due.

#include <optional>
#include <string>
#include <vector>

#include "core/desk/money.h"

namespace weavelog {

struct StatementLine {
  MoneyRow row;
  bool reversed = false;  ///< another line took it back
  bool open = false;      ///< two tablets charged different amounts for it: the newer one is shown and counted until a person decides
  std::string racket_label;  ///< of its job, "" where that is not known here
  std::optional<std::int64_t> tag_number;
};

/// The lines of one job, or a payment or a sale alone.
struct StatementPart {
  EntityId job;  ///< none: no job's
  std::string racket_label;
  std::optional<std::int64_t> tag_number;
  std::vector<StatementLine> lines;  ///< oldest first
  std::int64_t newest_at = 0;
  std::vector<Account> sums;  ///< by currency
};

struct Statement {
  std::vector<StatementLine> lines;  ///< oldest first, as they are numbered
  std::vector<StatementPart> parts;  ///< newest first
  std::vector<Account> accounts;
};
[[nodiscard]] Statement statement_of(const Ledger& ledger, const BookId& event, const BookId& player);

/// The player's jobs at an event of which nothing that stands was charged, oldest first; not those put aside.
[[nodiscard]] std::vector<EntityId> uncharged_jobs(const PlayerRecord& record, const BookId& event, std::span<const MoneyRow> lines);

/// What every player owes at an event, or is owed.
struct Debtor {
  BookId player;
  std::vector<Account> accounts;
  std::int64_t newest_at = 0;
};
/// Those with lines, newest line first.
[[nodiscard]] std::vector<Debtor> accounts_at(const Ledger& ledger, const BookId& event);

}  // namespace weavelog
