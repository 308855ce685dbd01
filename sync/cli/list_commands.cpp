// steps, step-set, step-add: the lists by which a room works.

#include "sync/cli/list_commands.h"

#include "core/base/text.h"
#include "core/model/field_json.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"

namespace weavelog::cli {
namespace {

struct ListArguments {
  std::string event, list, step, text, in, words;
  std::optional<std::size_t> place;
  bool on = false, off = false, practice = false;
};

Outcome<WorkList> list_from(const std::string& typed) {
  const auto list = choice_from<WorkList>(typed);
  if (!list || *list == WorkList::unsaid) return no_choice(typed, "list", {"bench", "check"});
  return *list;
}

void tell(Context& context, const BookId& event, std::optional<WorkList> only) {
  const auto steps = list_steps(context.ledger(), event);
  json::array all;
  std::string text;
  for (const auto& choice : choices(WorkList{})) {
    if (choice.value == WorkList::unsaid || (only && *only != choice.value)) continue;
    text += std::string(choice.name) + "\n";
    std::size_t place = 0;
    for (const WorkStep& step : work_list(steps, choice.value, true)) {
      json::object one = fields_json(step.step);
      const bool off = step.step.off.value_or(false);
      one["place"] = ++place;
      one["name"] = step.name;
      one["words"] = step_words(context.language(), step.step);
      one["off"] = off;
      one["own"] = step.own;
      all.push_back(std::move(one));
      text += "  " + std::to_string(place) + "  " + step_words(context.language(), step.step) + (off ? "  (off)" : "") + "\n";
    }
  }
  context.answer(all, text);
}

Outcome<Ending> store(Context& context, const BookId& event, WorkList list, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  tell(context, event, list);
  return Ending::done;
}

Outcome<Ending> show(Context& context, const ListArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  std::optional<WorkList> only;
  if (!arguments.list.empty()) {
    const auto list = list_from(arguments.list);
    if (!list) return fail(list.error());
    only = *list;
  }
  tell(context, *event, only);
  return Ending::done;
}

Outcome<Ending> set(Context& context, const ListArguments& arguments) {
  const auto list = list_from(arguments.list);
  if (!list) return fail(list.error());
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto steps = list_steps(context.ledger(), *event);
  const auto step = choose_step(work_list(steps, *list, true), *list, arguments.step);
  if (!step) return fail(step.error());
  StepChange change;
  if (!arguments.text.empty() || arguments.practice) change.text = arguments.text;
  if (!arguments.in.empty()) change.language = arguments.in;
  if (arguments.on || arguments.off) change.off = arguments.off;
  change.place = arguments.place;
  return store(context, *event, *list, change_step(*event, steps, *list, step->name, change));
}

Outcome<Ending> add(Context& context, const ListArguments& arguments) {
  const auto list = list_from(arguments.list);
  if (!list) return fail(list.error());
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  return store(context, *event, *list,
               add_step(*event, list_steps(context.ledger(), *event), *list, arguments.text, arguments.place, context.now()));
}

void add_event(CLI::App& command, ListArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.footer("--json: an array of steps: [{list, place, name, words, off, own (the room added it), key, order, text, text_en, ...}].");
}
void add_list(CLI::App& command, ListArguments& arguments) {
  command.add_option("LIST", arguments.list, "bench or check")->required();
  add_event(command, arguments);
}

}  // namespace

Outcome<WorkStep> choose_step(const std::vector<WorkStep>& list, WorkList which, const std::string& typed) {
  const std::string key = "=" + std::string(name_of_choice(which)) + "." + typed;
  const bool digits = !typed.empty() && typed.size() < 4 && typed.find_first_not_of("0123456789") == std::string::npos;
  if (digits && std::stoul(typed) >= 1 && std::stoul(typed) <= list.size()) return list[std::stoul(typed) - 1];
  for (const WorkStep& step : list)
    if (step.name == typed || step.name == key) return step;
  return fail(FaultCode::not_found, "the list has no such step", "\"" + shortened(typed, 40) + "\"", "`steps` shows it with its places");
}

void add_list_commands(CLI::App& app, Work& chosen) {
  add_command<ListArguments>(app, chosen, "steps", "The lists by which the room works", show, [](CLI::App& command, ListArguments& arguments) {
    command.add_option("LIST", arguments.list, "bench or check; default: both");
    add_event(command, arguments);
  });
  add_command<ListArguments>(app, chosen, "step-set", "Change a step of a list", set, [](CLI::App& command, ListArguments& arguments) {
    add_list(command, arguments);
    command.add_option("STEP", arguments.step, "Its place in `steps`, its key (knots), or its words")->required();
    auto* text = command.add_option("--text", arguments.text, "The room's own words");
    command.add_flag("--practice", arguments.practice, "The common practice's words again")->excludes(text);
    command.add_option("--in", arguments.in, "Language of the words: en, de, fr, es; default: for every language");
    auto* on = command.add_flag("--on", arguments.on, "Show it");
    command.add_flag("--off", arguments.off, "Do not show it")->excludes(on);
    command.add_option("--place", arguments.place, "Move it to that place");
  });
  add_command<ListArguments>(app, chosen, "step-add", "Add a step of the room's own", add, [](CLI::App& command, ListArguments& arguments) {
    add_list(command, arguments);
    command.add_option("WORDS", arguments.text, "What is to be done")->required();
    command.add_option("--place", arguments.place, "At that place; default: at the end");
  });
}

}  // namespace weavelog::cli
