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

/// On which machine the racket is, or was put last; the stage mark is what tells.
struct MachineSaid {
  EntityId machine;  ///< none: it was not said
  std::string name;  ///< by which the room knew it then; "" where only the event's book tells
};
[[nodiscard]] MachineSaid machine_of(const PlayerRecord& record, const EntityId& job);

/// Who does it, when.
struct BenchHand {
  std::string by;
  UnixMs at = 0;
};

/// A step of the racket (take_step), with what the bench notes of it: cutting out or mounting begins the record, "strung" ends it. A
/// machine stands in the mark and in the record, written by the one entry.
/// Faults: those of take_step.
[[nodiscard]] Outcome<Draft> step_at_bench(const PlayerRecord& record, const EntityId& job, const StageStep& step);
/// A step of the list was done, or was not after all. `name` as in core/desk/work_list.h. Faults: not_found; bad_input (no name, so
/// already, more than a list has).
[[nodiscard]] Outcome<Draft> tick_step(const PlayerRecord& record, const EntityId& job, const std::string& name, bool done,
                                       const BenchHand& hand);

/// The racket is on another machine than was said, or that was not said: mark and record say so, and its time there goes on. Faults:
/// not_found; conflict (a clash); refused (it is on no machine now); bad_input (no machine, one without a name, the one that is said already).
[[nodiscard]] Outcome<Draft> change_machine_of(const PlayerRecord& record, const EntityId& job, const MachineSaid& said, const BenchHand& hand);
/// What the next one at this racket should know. Faults: not_found; bad_input (it says so already).
[[nodiscard]] Outcome<Draft> note_bench(const PlayerRecord& record, const EntityId& job, const std::string& note, const BenchHand& hand);

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
