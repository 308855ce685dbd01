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
  std::string pattern;      ///< of the racket, "16x19"; "" if it does not say
  std::int64_t pieces = 0;  ///< 0: not said
  Stage stage = Stage::none;
  JobTimes times;
};

/// A racket that the room still has to string, or is stringing.
struct OpenJob {
  BookId player;
  EntityId job;
  std::string family_name;
  std::string given_name;
  std::string racket_label;
  std::optional<std::int64_t> tag_number;
  std::string stage_by;
  bool clash = false;  ///< two people moved it on while apart
  JobFacts facts;
};
/// Of an event, from received to on the machine, those included that wait for an answer; in order of being taken in.
[[nodiscard]] std::vector<OpenJob> open_jobs(const Ledger& ledger, const BookId& event);

/// A job that was put on a machine which was named, and whose work that is: who mounted it, once it is strung who strung it.
struct MachineMount {
  EntityId machine;
  std::int64_t at = 0;
  std::string by;
};
/// All of an event, in no order; a third of what job_facts() takes.
[[nodiscard]] std::vector<MachineMount> machine_mounts(const Ledger& ledger, const BookId& event);

/// How much somebody brought to an event.
struct PlayerJobs {
  BookId player;
  std::string family_name;
  std::string given_name;
  std::string mains_string;  ///< that most of them had
  std::int64_t jobs = 0;
};
[[nodiscard]] std::vector<PlayerJobs> jobs_by_player(const Ledger& ledger, const BookId& event);

/// Every job of the event, in order of being taken in.
[[nodiscard]] std::vector<JobFacts> job_facts(const Ledger& ledger, const BookId& event);

}  // namespace weavelog
