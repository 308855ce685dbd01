// new-tag: another tag number for a racket, where two carry one.

#include "core/desk/tags.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

struct NewTagArguments {
  std::string job, event;
  std::int64_t number = 0;  ///< 0: the next free one
};

Outcome<Ending> new_tag(Context& context, const NewTagArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const std::int64_t number = arguments.number > 0 ? arguments.number : next_tag(context.ledger(), here->row.event);
  const auto draft = give_tag(context.ledger(), here->record, here->row.job, number);
  if (!draft) return fail(draft.error());
  if (!draft->empty())
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const auto now = job_again(context, *here);
  if (!now) return fail(now.error());
  const auto doubled = doubled_tags(context.ledger(), now->row.event);
  json::object out = row_json(now->row, doubled);
  if (here->row.tag_number) out["before"] = *here->row.tag_number;
  out["stored"] = !draft->empty();
  context.answer(out, (here->row.tag_number ? std::to_string(*here->row.tag_number) : std::string("no tag")) + " -> " + tagged_racket_words(now->row) +
                          (draft->empty() ? "\nnothing was changed" : "\nwrite it on the racket's tag, or print the tag again"));
  return Ending::done;
}

}  // namespace

void add_new_tag_command(CLI::App& app, Work& chosen) {
  add_command<NewTagArguments>(
      app, chosen, "new-tag", "Give a racket another tag number, where two carry one", new_tag, [](CLI::App& command, NewTagArguments& arguments) {
        command.add_option("JOB-OR-TAG", arguments.job, "Tag number, or six or more characters of the job's number")->required();
        command.add_option("NUMBER", arguments.number, "The new one; default: the next free one")->check(CLI::Range(std::int64_t{1}, kHighestTyped));
        command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
        command.footer(
            "Two desks that are apart may both give out the next number. `board` and `next` then say DOUBLED beside the tag, with the job's whole\n"
            "number: give that one, because the tag means both.\n"
            "--json: the job as `board` has it, and before (the number until now), stored. `undo PLAYER` takes it back.");
      });
}

}  // namespace weavelog::cli
