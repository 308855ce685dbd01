#include "core/desk/statement.h"

#include <algorithm>
#include <limits>
#include <set>

#include "core/model/queries.h"

namespace weavelog {
namespace {

std::vector<MoneyRow> rows_of(const std::vector<StatementLine>& lines) {
  std::vector<MoneyRow> out;
  for (const StatementLine& line : lines) out.push_back(line.row);
  return out;
}

}  // namespace

Statement statement_of(const Ledger& ledger, const BookId& event, const BookId& player) {
  Statement out;
  const auto rows = money_of_player(ledger, event, player);
  std::set<EntityId> open, reversed;
  for (const OpenQuestion& question : ledger.open_questions(event)) open.insert(question.entity);
  for (const MoneyRow& row : rows)
    if (row.reverses) reversed.insert(row.reverses);
  std::map<EntityId, std::optional<JobRow>> jobs;
  std::map<EntityId, StatementPart> parts;
  for (const MoneyRow& row : rows) {
    StatementLine line{row, reversed.contains(row.id), open.contains(row.id), {}, {}};
    if (row.job) {
      auto known = jobs.find(row.job);
      if (known == jobs.end()) known = jobs.emplace(row.job, find_job(ledger, player, row.job)).first;
      if (known->second) {
        line.racket_label = known->second->racket_label;
        line.tag_number = known->second->tag_number;
      }
    }
    // What belongs to no job stands alone, its reversal beside it.
    StatementPart& part = parts[row.job ? row.job : row.reverses ? row.reverses : row.id];
    part.job = row.job;
    part.racket_label = line.racket_label;
    part.tag_number = line.tag_number;
    part.newest_at = part.lines.empty() ? row.at : std::max(part.newest_at, row.at);
    part.lines.push_back(line);
    out.lines.push_back(std::move(line));
  }
  for (auto& [id, part] : parts) {
    part.sums = accounts_of(rows_of(part.lines));
    out.parts.push_back(std::move(part));
  }
  std::stable_sort(out.parts.begin(), out.parts.end(),
                   [](const StatementPart& a, const StatementPart& b) { return a.newest_at > b.newest_at; });
  out.accounts = accounts_of(rows);
  return out;
}

std::vector<EntityId> uncharged_jobs(const PlayerRecord& record, const BookId& event, std::span<const MoneyRow> lines) {
  std::vector<EntityId> out;
  for (const auto& job : record.jobs)
    if (job.now.event == event && !is_charged(lines, job.id()) && record.stage_of(job.id()).stage != Stage::aside) out.push_back(job.id());
  return out;
}

std::vector<Debtor> accounts_at(const Ledger& ledger, const BookId& event) {
  std::map<BookId, std::vector<MoneyRow>> by_player;
  for (MoneyRow& row : money_between(ledger, event, std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max()))
    by_player[row.player].push_back(std::move(row));
  std::vector<Debtor> out;
  for (const auto& [player, rows] : by_player) out.push_back({player, accounts_of(rows), rows.back().at});
  std::stable_sort(out.begin(), out.end(), [](const Debtor& a, const Debtor& b) { return a.newest_at > b.newest_at; });
  return out;
}

}  // namespace weavelog
