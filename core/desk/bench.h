#pragma once
// The work on a racket at the bench: steps done, machine, time, note, and what was measured.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/desk/player_record.h"
#include "core/desk/stages.h"

namespace weavelog {

/// How often a job was done again: its failed checks.
[[nodiscard]] std::int64_t redos_of(const PlayerRecord& record, const EntityId& job);
/// The records of a job, oldest first.
[[nodiscard]] std::vector<const Loaded<BenchRecord>*> benches_of(const PlayerRecord& record, const EntityId& job);
/// That of the work going on since the newest failed check; null if nothing was noted of it.
[[nodiscard]] const Loaded<BenchRecord>* bench_now(const PlayerRecord& record, const EntityId& job);

/// How long a racket was, or is, on the machine: from its newest mark "on the machine" to the one "strung" after it. It comes from the
/// marks, so it goes on while the app is shut.
struct MachineTime {
  UnixMs since = 0;
  std::optional<UnixMs> until;  ///< nothing: it is there now
};
[[nodiscard]] std::optional<MachineTime> time_on_machine(const PlayerRecord& record, const EntityId& job);

/// Who does it, when.
struct BenchHand {
  std::string by;
  UnixMs at = 0;
};

/// The next step of the racket (take_step), with what the bench notes of it: cutting out or mounting begins the record, "strung" ends it.
/// Faults: those of take_step.
[[nodiscard]] Outcome<Draft> step_at_bench(const PlayerRecord& record, const EntityId& job, const StageStep& step);
/// A step of the list was done, or was not after all. `name` as in core/desk/work_list.h. Faults: not_found; bad_input (no name, so
/// already, more than a list has).
[[nodiscard]] Outcome<Draft> tick_step(const PlayerRecord& record, const EntityId& job, const std::string& name, bool done,
                                       const BenchHand& hand);

/// What is said about the work; what is not given stays.
struct BenchNote {
  std::optional<EntityId> machine{};
  std::optional<std::string> machine_name{};
  std::optional<std::string> note{};
};
/// Faults: not_found; bad_input (nothing said that is new; a machine without a name).
[[nodiscard]] Outcome<Draft> note_bench(const PlayerRecord& record, const EntityId& job, const BenchNote& said, const BenchHand& hand);

/// Something measured on a job's racket, or on the machine for it. Stored once and never changed: a wrong one is undone, or measured
/// again. Faults: not_found; bad_input (not said what; no value; a unit that this is not measured in; a value that can't be).
[[nodiscard]] Outcome<Draft> put_reading(const PlayerRecord& record, const EntityId& job, const Reading& measured);
/// The same of a machine alone, into the event's book. Faults: bad_input (as above; no machine).
[[nodiscard]] Outcome<Draft> put_reading(const BookId& event, const Reading& measured);
/// A job's readings, newest first.
[[nodiscard]] std::vector<const Loaded<Reading>*> readings_of(const PlayerRecord& record, const EntityId& job);
/// The units in which that is measured, the most usual first. `none` stands for an instrument's own scale.
[[nodiscard]] std::span<const Unit> units_of(ReadingKind what);

}  // namespace weavelog
