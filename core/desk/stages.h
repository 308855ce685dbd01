#pragma once
// The way of a racket through the room: which step may follow which, and the drafts that take it.

#include <span>
#include <string>
#include <vector>

#include "core/desk/player_record.h"

namespace weavelog {

/// Steps forward that a room may take from a stage, the usual one first. Rooms that do not inspect, check or
/// stencil apart skip those stages. Steps that need a reason (aside, back) are not among them.
[[nodiscard]] std::span<const Stage> next_steps(Stage from);
/// Still in the room's care and not put aside.
[[nodiscard]] bool is_open(Stage stage);

struct StageStep {
  Stage to = Stage::none;
  std::string by;      ///< who does it
  std::string reason;  ///< needed for aside, for a step back, and to settle a clash
  UnixMs at = 0;
  EntityId machine{};  ///< on which it is put, if known; only of a step to on_machine. Not said, a settled clash keeps what was said in it
  std::string machine_name{};  ///< for the record of the work (core/desk/bench.h); only with a machine
};

/// Moves jobs of one player on, put aside or back, in one action. A step that is not one of next_steps(), and
/// one out of a clash, needs a reason. Faults: not_found, bad_input (no such step, a reason is missing),
/// conflict (a clash that must be settled first), refused (the frame is in doubt: see inspection.h).
[[nodiscard]] Outcome<Draft> take_step(const PlayerRecord& record, std::span<const EntityId> jobs,
                                       const StageStep& step);
/// One job moved on to the usual next stage. Faults: as above; refused if the job has been collected or put
/// aside.
[[nodiscard]] Outcome<Draft> advance(const PlayerRecord& record, const EntityId& job, const std::string& by,
                                     UnixMs at);

/// On which machine a step puts the racket; none if that is not said, or if it is no step to one.
[[nodiscard]] EntityId machine_of_step(const PlayerRecord& record, const EntityId& job, const StageStep& step);
/// Where a fault about this job lies, as people know it: "tag 14", or its id.
[[nodiscard]] std::string job_place(const Loaded<Job>& job);
/// A job's marks, oldest first.
[[nodiscard]] std::vector<PlacedMark> marks_of(const PlayerRecord& record, const EntityId& job);
/// Jobs whose newest marks do not fit together.
[[nodiscard]] std::vector<EntityId> clashing_jobs(const PlayerRecord& record);

}  // namespace weavelog
