#pragma once
// The rows of jobs and what stage they are at. For tables.cpp and job_facts.cpp only.

#include <cstdint>
#include <vector>

#include "core/model/job_times.h"
#include "core/store/database.h"
#include "core/store/ledger.h"

namespace weavelog {

/// What one transaction did to the jobs and stage marks of one player.
struct JobChanges {
  std::vector<const EntityChange*> jobs;
  std::vector<const EntityChange*> marks;
};

/// Brings the player's rows in model_job up to date. True if a job came, went or changed (not only its
/// stage).
bool apply_jobs(Connection& db, std::int64_t player, const BookId& book, const JobChanges& changes);

/// Reads machine to times_stamp, in that order, from `column` on.
[[nodiscard]] JobTimes times_at(SQLite::Statement& row, int column);

}  // namespace weavelog
