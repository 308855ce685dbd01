#pragma once
// What the numbers of a room ask of every job of an event.

#include <optional>
#include <string>
#include <vector>

#include "core/base/units.h"
#include "core/model/choices.h"
#include "core/model/job_times.h"
#include "core/store/ledger.h"

namespace weavelog {

struct JobFacts {
  std::optional<std::int64_t> at;
  std::optional<std::int64_t> ready_by;
  Rush rush = Rush::none;
  std::string mains_string;
  std::string crosses_string;
  std::optional<Quantity> mains_tension;
  Stage stage = Stage::none;
  JobTimes times;
};

/// A job that was put on a machine which was named, and whose work that is: who mounted it, once it is strung who strung it.
struct MachineMount {
  EntityId machine;
  std::int64_t at = 0;
  std::string by;
};
/// All of an event, in no order; a third of what job_facts() takes.
[[nodiscard]] std::vector<MachineMount> machine_mounts(const Ledger& ledger, const BookId& event);

/// Every job of the event, in order of being taken in.
[[nodiscard]] std::vector<JobFacts> job_facts(const Ledger& ledger, const BookId& event);

}  // namespace weavelog
