// home-benches: who strings whom as long as the event lasts, as the event's book keeps it.

#include "core/base/text.h"
#include "core/desk/room_benches.h"
#include "core/plan/plan_words.h"
#include "sync/cli/commands.h"

namespace weavelog::cli {
namespace {

struct HomeBenchArguments {
  std::string event, player, stringer, by;
  bool plan = false, unpin = false;
};

json::array benches_json(const RoomBenches& room, const BenchChoice& choice) {
  const HomeBenches& plan = room.benches();
  json::array out;
  for (std::size_t person = 0; person < choice.size(); ++person) {
    const auto* place = room.book().of(plan.people()[person].name);
    out.push_back(json::object{{"player", plan.people()[person].name},
                               {"stringer", plan.benches()[choice[person]].stringer},
                               {"machine", plan.benches()[choice[person]].machine},
                               {"pinned", place != nullptr && place->now.pinned.value_or(false)},
                               {"reason", std::string(name_of(plan.why(choice, person).kind))}});
  }
  return out;
}

void tell_benches(Context& context, const RoomBenches& room, const BenchPlan* made) {
  json::object out{{"planned", false}, {"players", json::array()}};
  std::string text;
  if (made != nullptr) {
    out["gap"] = made->solution.gap();
    out["rule"] = name_of(made->solution.rule);
    out["moved"] = made->moved.size();
    text = "at most " + std::to_string(static_cast<int>(made->solution.gap() * 1000 + 0.5) / 10.0).substr(0, 4) + " % from the best\n";
  }
  if (const auto choice = room.held()) {
    out["planned"] = true;
    out["players"] = benches_json(room, *choice);
    for (std::size_t person = 0; person < choice->size(); ++person)
      text += room.benches().people()[person].name + ": " + room.benches().benches()[(*choice)[person]].name + "  (" +
              reason_words(context.language(), room.benches(), *choice, person, room.benches().why(*choice, person)) + ")\n";
  } else {
    text += "not everybody has a bench: home-benches --plan\n";
  }
  context.answer(out, text);
}

Outcome<Ending> home_benches(Context& context, const HomeBenchArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const std::string by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  auto room = RoomBenches::make(context.ledger(), *event);
  if (!room) return fail(room.error());
  std::optional<BenchPlan> made;
  if (!arguments.player.empty()) {
    const auto person = (*room)->benches().person(arguments.player);
    if (!person) return fail(FaultCode::not_found, "nobody of that name may still play", "\"" + shortened(arguments.player, 40) + "\"", "give the name as the draw has it");
    auto bench = arguments.stringer.empty() ? std::optional<std::size_t>{} : (*room)->benches().bench(arguments.stringer);
    if (!arguments.stringer.empty() && !bench) return fail(FaultCode::not_found, "no such bench", arguments.stringer, "`team` lists who strings");
    if (!bench) {
      const auto held = (*room)->held();
      if (!held) return fail(FaultCode::bad_input, "not everybody has a bench yet", "home benches", "plan them first");
      bench = (*held)[*person];
    }
    const auto draft = (*room)->move(*person, *bench, !arguments.unpin, by, context.now());
    if (!draft) return fail(draft.error());
    if (!draft->empty())
      if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  } else if (arguments.plan) {
    auto plan = (*room)->benches().plan();
    if (!plan) return fail(plan.error());
    const Draft draft = (*room)->keep(plan->choice(), by, context.now());
    if (!draft.empty())
      if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
    made = std::move(*plan);
  }
  room = RoomBenches::make(context.ledger(), *event);
  if (!room) return fail(room.error());
  tell_benches(context, **room, made ? &*made : nullptr);
  return Ending::done;
}

}  // namespace

void add_home_benches_command(CLI::App& app, Work& chosen) {
  add_command<HomeBenchArguments>(app, chosen, "home-benches", "Who strings whom as long as the event lasts", home_benches, [](CLI::App& command, HomeBenchArguments& arguments) {
    auto* plan = command.add_flag("--plan", arguments.plan, "Plan, and keep it");
    auto* player = command.add_option("--player", arguments.player, "Move one player, and pin them there")->excludes(plan);
    command.add_option("--to", arguments.stringer, "The stringer; default: where they are")->needs(player);
    command.add_flag("--unpin", arguments.unpin, "The next plan may move them")->needs(player);
    command.add_option("--by", arguments.by, "Who says so; default: the device's name");
    command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
    command.footer("--json: one object: planned, players: [{player, stringer, machine, pinned, reason}], and of a new plan gap, rule, moved.");
  });
}

}  // namespace weavelog::cli
