#pragma once
// Whom and what the words of a command mean.

#include <span>
#include <string>
#include <vector>

#include "core/desk/machines.h"
#include "core/desk/player_record.h"
#include "core/model/queries.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// "6 are meant: A; B; C; D and 2 more".
[[nodiscard]] std::string several_words(std::span<const std::string> meant);

/// PLAYER: at least six characters of a book's number, or a name that finds exactly one. Faults: not_found;
/// bad_input, naming the first few, if several are meant.
[[nodiscard]] Outcome<BookId> choose_player(Context& context, const std::string& wanted);
/// The same, loaded.
[[nodiscard]] Outcome<PlayerRecord> load_chosen(Context& context, const std::string& wanted);

/// JOB: a tag number (up to five digits, at the event) or at least six characters of a job's number. Only
/// jobs that are still in the room count for a tag, unless there are no others. Faults: not_found, bad_input
/// (several).
[[nodiscard]] Outcome<JobRow> choose_job(Context& context, const BookId& event, const std::string& wanted);

/// The event of those words, loaded. Faults: those of Context::event; not_found.
[[nodiscard]] Outcome<EventRecord> event_here(Context& context, const std::string& words);

/// A job with its player's book.
struct JobHere {
  JobRow row;
  PlayerRecord record;
  [[nodiscard]] const Loaded<Job>& job() const { return *record.job(row.job); }
};
/// JOB at the event of those words, loaded. Faults: as choose_job's; not_found.
[[nodiscard]] Outcome<JobHere> job_here(Context& context, const std::string& event_words, const std::string& job);
/// The same job again, after something was stored of it.
[[nodiscard]] Outcome<JobHere> job_again(Context& context, const JobHere& here);

/// RACKETS of a player: "3" (the first three of the last drop-off, then of the others, that are not in the
/// room of the event), or labels parted by commas; "" all of the last drop-off. A label of digits only is
/// meant by "#3". Faults: not_found, bad_input, conflict (too few are at hand).
[[nodiscard]] Outcome<std::vector<EntityId>> choose_rackets(const PlayerRecord& record, const BookId& event,
                                                            const std::string& wanted);

/// SETUP of a player by name; "": that of the newest job, or the newest. Faults: not_found.
[[nodiscard]] Outcome<const Loaded<Setup>*> choose_setup(const PlayerRecord& record,
                                                         const std::string& wanted);

/// MACHINE of the event by its name or its number in the list. Faults: not_found.
[[nodiscard]] Outcome<MachineNow> choose_machine(Context& context, const BookId& event, const std::string& wanted);

}  // namespace weavelog::cli
