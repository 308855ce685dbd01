#include "core/model/job_facts.h"

#include "core/model/job_tables.h"
#include "core/model/tables.h"
#include "core/store/database.h"

namespace weavelog {

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
    SQLite::Statement& query = db.statement(
        "SELECT at, ready_by, rush, mains_string, crosses_string, mains_amount, mains_unit, stage, machine, mounted_at, strung_at, strung_by, "
        "strung_count, ready_at, collected_at, waiting_since, waited, times_stamp FROM model_job WHERE event=? ORDER BY at, n");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) {
      JobFacts& facts = out.emplace_back();
      if (const std::int64_t at = query.getColumn(0).getInt64(); at != 0) facts.at = at;
      if (const std::int64_t by = query.getColumn(1).getInt64(); by != kNoTime) facts.ready_by = by;
      facts.rush = static_cast<Rush>(query.getColumn(2).getInt());
      facts.mains_string = query.getColumn(3).getString();
      facts.crosses_string = query.getColumn(4).getString();
      if (const std::string amount = query.getColumn(5).getString(); !amount.empty())
        if (const auto parsed = Decimal::parse(amount)) facts.mains_tension = Quantity{*parsed, static_cast<Unit>(query.getColumn(6).getInt())};
      facts.stage = static_cast<Stage>(query.getColumn(7).getInt());
      facts.times = times_at(query, 8);
    }
  });
  return out;
}

}  // namespace weavelog
