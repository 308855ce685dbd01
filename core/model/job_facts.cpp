#include "core/model/job_facts.h"

#include "core/model/job_tables.h"
#include "core/model/tables.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr const char* kFacts =
    "j.at, j.ready_by, j.rush, j.mains_string, j.crosses_string, j.mains_amount, j.mains_unit, j.stage, r.mains, r.crosses, j.pieces, "
    "j.machine, j.mounted_at, j.strung_at, j.strung_by, j.strung_count, j.ready_at, j.collected_at, j.waiting_since, j.waited, j.times_stamp";
constexpr int kFactColumns = 21;
constexpr const char* kFrom = " FROM model_job j LEFT JOIN model_racket r ON r.player=j.player AND r.id=j.racket ";

std::string sql_of(std::initializer_list<std::string_view> parts) {
  std::string out;
  for (const std::string_view part : parts) out += part;
  return out;
}

JobFacts facts_at(SQLite::Statement& row) {
  JobFacts facts;
  if (const std::int64_t at = row.getColumn(0).getInt64(); at != 0) facts.at = at;
  if (const std::int64_t by = row.getColumn(1).getInt64(); by != kNoTime) facts.ready_by = by;
  facts.rush = static_cast<Rush>(row.getColumn(2).getInt());
  facts.mains_string = row.getColumn(3).getString();
  facts.crosses_string = row.getColumn(4).getString();
  if (const std::string amount = row.getColumn(5).getString(); !amount.empty())
    if (const auto parsed = Decimal::parse(amount)) facts.mains_tension = Quantity{*parsed, static_cast<Unit>(row.getColumn(6).getInt())};
  facts.stage = static_cast<Stage>(row.getColumn(7).getInt());
  if (!row.getColumn(8).isNull() && !row.getColumn(9).isNull())
    facts.pattern = std::to_string(row.getColumn(8).getInt64()) + "x" + std::to_string(row.getColumn(9).getInt64());
  facts.pieces = row.getColumn(10).getInt64();
  facts.times = times_at(row, 11);
  return facts;
}

}  // namespace

std::vector<MachineMount> machine_mounts(const Ledger& ledger, const BookId& event) {
  std::vector<MachineMount> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT machine, mounted_at, CASE stage WHEN ? THEN stage_by ELSE strung_by END FROM model_job "
        "WHERE event=? AND length(machine)=? AND mounted_at IS NOT NULL");
    query.bind(1, static_cast<int>(Stage::on_machine));
    bind_blob(query, 2, event.bytes);
    query.bind(3, static_cast<int>(EntityId{}.bytes.size()));
    while (query.executeStep()) {
      MachineMount& mount = out.emplace_back();
      const SQLite::Column machine = query.getColumn(0);
      std::copy_n(static_cast<const std::uint8_t*>(machine.getBlob()), mount.machine.bytes.size(), mount.machine.bytes.begin());
      mount.at = query.getColumn(1).getInt64();
      mount.by = query.getColumn(2).getString();
    }
  });
  return out;
}

std::vector<JobFacts> job_facts(const Ledger& ledger, const BookId& event) {
  std::vector<JobFacts> out;
  ledger.read([&](Connection& db) {
    static const std::string sql = sql_of({"SELECT ", kFacts, kFrom, "WHERE j.event=? ORDER BY j.at, j.n"});
    SQLite::Statement& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) out.push_back(facts_at(query));
  });
  return out;
}

std::vector<OpenJob> open_jobs(const Ledger& ledger, const BookId& event) {
  std::vector<OpenJob> out;
  ledger.read([&](Connection& db) {
    // The plus keeps the index of all that the event ever had from being walked for its order.
    static const std::string sql =
        sql_of({"SELECT ", kFacts, ", p.book, j.id, p.family, p.given, coalesce(r.label, ''), j.tag_number, j.stage_by, j.clash", kFrom,
                "JOIN model_player p ON p.n=j.player WHERE j.open=1 AND j.event=? AND j.stage>=? AND j.stage<=? ORDER BY +j.at, j.n"});
    SQLite::Statement& query = db.statement(sql.c_str());
    bind_blob(query, 1, event.bytes);
    query.bind(2, static_cast<int>(Stage::received));
    query.bind(3, static_cast<int>(Stage::on_machine));
    while (query.executeStep()) {
      OpenJob& job = out.emplace_back();
      job.facts = facts_at(query);
      job.player = *BookId::from_bytes(blob_of(query, kFactColumns));
      job.job = *EntityId::from_bytes(blob_of(query, kFactColumns + 1));
      job.family_name = query.getColumn(kFactColumns + 2).getString();
      job.given_name = query.getColumn(kFactColumns + 3).getString();
      job.racket_label = query.getColumn(kFactColumns + 4).getString();
      if (!query.getColumn(kFactColumns + 5).isNull()) job.tag_number = query.getColumn(kFactColumns + 5).getInt64();
      job.stage_by = query.getColumn(kFactColumns + 6).getString();
      job.clash = query.getColumn(kFactColumns + 7).getInt() != 0;
    }
  });
  return out;
}

std::vector<PlayerJobs> jobs_by_player(const Ledger& ledger, const BookId& event) {
  std::vector<PlayerJobs> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT p.book, p.family, p.given, j.mains_string, count(*) FROM model_job j JOIN model_player p ON p.n=j.player WHERE j.event=? "
        "GROUP BY p.n, j.mains_string ORDER BY p.n, count(*) DESC");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) {
      const BookId player = *BookId::from_bytes(blob_of(query, 0));
      if (out.empty() || out.back().player != player)
        out.push_back({player, query.getColumn(1).getString(), query.getColumn(2).getString(), query.getColumn(3).getString(), 0});
      out.back().jobs += query.getColumn(4).getInt64();
    }
  });
  return out;
}

}  // namespace weavelog
