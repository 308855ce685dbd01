#include "core/desk/tags.h"

#include <algorithm>

#include "core/desk/stages.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

/// What rackets of the event carry that were not collected yet, in order.
std::set<std::int64_t> tags_in_use(const Ledger& ledger, const BookId& event) {
  std::set<std::int64_t> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement("SELECT tag_number FROM model_job WHERE event=?1 AND tag_number IS NOT NULL AND stage<>?2");
    bind_blob(query, 1, event.bytes);
    query.bind(2, static_cast<int>(Stage::collected));
    while (query.executeStep()) out.insert(query.getColumn(0).getInt64());
  });
  return out;
}

}  // namespace

std::int64_t next_tag(const Ledger& ledger, const BookId& event, const std::set<std::int64_t>& given) {
  std::int64_t next = std::min(highest_tag(ledger, event), kHighestTyped) + 1;
  while (given.contains(next)) ++next;
  if (next <= kHighestTyped) return next;
  const auto used = tags_in_use(ledger, event);
  for (next = 1; next <= kHighestTyped && (used.contains(next) || given.contains(next));) ++next;
  return next;
}

std::vector<JobRow> rackets_with_tag(const Ledger& ledger, const BookId& event, std::int64_t number) {
  auto rows = find_jobs_by_tag(ledger, number, event, 1000);
  std::erase_if(rows, [](const JobRow& row) { return row.stage == Stage::collected; });
  return rows;
}

std::set<std::int64_t> doubled_tags(const Ledger& ledger, const BookId& event) {
  std::set<std::int64_t> once, twice;
  for (const BoardJob& job : board_jobs(ledger, event, false))
    if (job.tag_number && !once.insert(*job.tag_number).second) twice.insert(*job.tag_number);
  return twice;
}

Outcome<> check_new_tags(const Ledger& ledger, const BookId& event, std::span<const std::int64_t> numbers) {
  std::set<std::int64_t> given;
  for (const std::int64_t number : numbers) {
    const std::string where = "tag " + std::to_string(number);
    if (number < 1 || number > kHighestTyped)
      return fail(FaultCode::bad_input, "no tag has this number", where, "give 1 to " + std::to_string(kHighestTyped));
    if (!given.insert(number).second) return fail(FaultCode::bad_input, "two rackets would carry this number", where, "give each its own");
    if (const auto held = rackets_with_tag(ledger, event, number); !held.empty())
      return fail(FaultCode::conflict, "a racket has this number already: " + tagged_racket_words(held.front()), where,
                  "the next free one is " + std::to_string(next_tag(ledger, event)));
  }
  return {};
}

Outcome<Draft> give_tag(const Ledger& ledger, const PlayerRecord& record, const EntityId& job, std::int64_t number) {
  const Loaded<Job>* held = record.job(job);
  if (!held) return fail(FaultCode::not_found, "no such job", job.hex(), "look at the board again");
  Draft draft(record.book, kPlayerBook, kActEdit);
  if (held->now.tag_number == number) return draft;
  if (record.stage_of(job).stage == Stage::collected)
    return fail(FaultCode::refused, "this racket was collected, so its tag is gone", "tag", "choose one that is still in the room");
  if (auto free = check_new_tags(ledger, held->now.event, std::span(&number, 1)); !free) return fail(free.error());
  Job wanted = held->now;
  wanted.tag_number = number;
  put_changes(draft, held->seen, wanted);
  return draft;
}

std::string tagged_racket_words(const JobRow& row) {
  std::string out = row.tag_number ? std::to_string(*row.tag_number) : "job " + row.job.hex();
  const std::string family = row.family_name.empty() ? row.native_name : row.family_name;
  out += ", " + family + (row.given_name.empty() || family == row.native_name ? "" : " " + row.given_name);
  return out + (row.racket_label.empty() ? "" : ", racket " + row.racket_label);
}

}  // namespace weavelog
