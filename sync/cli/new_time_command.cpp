// new-time: another time for rackets that are in the room, agreed with the player.

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/new_time.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct NewTimeArguments {
  std::string job, event, time, with;
  bool only = false;
};

Outcome<Ending> new_time(Context& context, const NewTimeArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto time = time_from(arguments.time, {record->event.now.time_zone, context.now()}, "TIME");
  if (!time) return fail(time.error());
  auto jobs = promised_with(here->record, here->row.job);
  // A racket that can't be promised any more is refused by its name.
  if (arguments.only || jobs.empty()) jobs.assign(1, here->row.job);
  const auto before = here->job().now.ready_by;
  const auto draft = agree_time(here->record, jobs, {*time, arguments.with, context.now()});
  if (!draft) return fail(draft.error());
  if (!draft->empty())
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  json::array ids;
  for (const EntityId& id : jobs) ids.push_back(json::string(id.hex()));
  json::object out{{"jobs", std::move(ids)}, {"ready_by", iso_utc(*time)}, {"agreed_with", arguments.with}};
  if (before) out["before"] = iso_utc(*before);
  ToldTimes told(context);
  context.answer(out, std::to_string(jobs.size()) + (jobs.size() == 1 ? " racket: " : " rackets: ") + (before ? told(*before, record->book) + " -> " : "") +
                          told(*time, record->book) + ", agreed with " + arguments.with);
  return Ending::done;
}

}  // namespace

void add_new_time_command(CLI::App& app, Work& chosen) {
  add_command<NewTimeArguments>(
      app, chosen, "new-time", "Promise rackets for another time, as agreed with the player", new_time,
      [](CLI::App& command, NewTimeArguments& arguments) {
        command.add_option("JOB-OR-TAG", arguments.job, "Tag number, or six or more characters of the job's number")->required();
        command.add_option("TIME", arguments.time, "14:05, +90, 2031-05-26T14:05")->required();
        command.add_option("--with", arguments.with, "Who agreed: the player, or who speaks for them")->required();
        command.add_flag("--only", arguments.only, "Only this racket, not all that were promised with it");
        command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
        command.footer(
            "`room-promise` says what can be promised. What was promised before stays in the log.\n"
            "--json: one object: jobs, ready_by, agreed_with, and before if a time had been said.");
      });
}

}  // namespace weavelog::cli
