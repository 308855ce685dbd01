// room-day, room-promise, room-forecast, plan-rules, bench-wish: the plan of the room as its books have it.

#include <algorithm>
#include <cmath>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/machines.h"
#include "core/desk/room_benches.h"
#include "core/desk/room_forecast.h"
#include "core/desk/room_promise.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/forecast_answer.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct RoomArguments {
  std::string event, by, wish, mains, crosses, pattern, player, stringer, machine;
  std::vector<std::string> rules;
  std::size_t rackets = 1;
  std::int64_t pieces = 0;
  bool anew = false, tell = false, on_court = false, never = false, drop = false;
};

std::string who(Context& context, const RoomArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

std::string whole_percent(double part) { return std::to_string(static_cast<int>(std::lround(part * 100))) + " %"; }

std::string doubt_words(const BookId& event, const RoomDay& day, const DayDoubt& doubt, ToldTimes& told) {
  const std::string& bench = day.input().benches[doubt.bench].name;
  switch (doubt.kind) {
    case DayDoubt::Kind::two_at_once:
      return bench + " has two rackets on the machine; is " + racket_words(day.open()[doubt.open_job]) + " strung?";
    case DayDoubt::Kind::not_of_team:
      return racket_words(day.open()[doubt.open_job]) + " is on a machine of somebody who is not of the team";
    case DayDoubt::Kind::machine_out:
      return bench + "'s machine is out of order, and no other is free";
    case DayDoubt::Kind::other_machine:
      return bench + "'s machine is out of order; planned on " + day.input().benches[doubt.bench].machine;
    case DayDoubt::Kind::no_machine:
      return "there is no machine for " + bench;
    case DayDoubt::Kind::no_such_time: {
      const OpenJob& racket = day.open()[doubt.open_job];
      const auto& promised = racket.facts.ready_by;
      if (promised && !can_be_planned(day.input().now, *promised))
        return racket_words(racket) + " is in no plan: it was promised for " +
               told(*promised, event) + ", which can't be; agree on another time with `new-time`";
      return racket_words(racket) + " is in no plan: when it went on the machine, or its player's match, can't be right";
    }
  }
  return {};
}

void tell_day(Context& context, const BookId& event, const RoomDay& day, const DayPlan& plan) {
  const DayInput& input = day.input();
  ToldTimes told(context);
  const auto clock = [&](UnixMs at) { return told.today(at, event); };
  json::array benches, jobs, changes, unfitting, doubts, waiting;
  std::string text;
  for (std::size_t bench = 0; bench < input.benches.size(); ++bench) {
    const DayBench& one = input.benches[bench];
    json::array open;
    for (const TimeSpan& span : one.open) open.push_back(json::object{{"from", iso_utc(span.from)}, {"until", iso_utc(span.until)}});
    benches.push_back(json::object{{"stringer", one.stringer}, {"machine", one.machine}, {"open", std::move(open)}});
    text += one.name + (one.machine.empty() ? "" : ", " + one.machine) + "\n";
    for (const PlannedJob& planned : plan.jobs) {
      if (planned.bench != bench) continue;
      const OpenJob& racket = day.racket(planned.job);
      text += "  " + clock(planned.begin) + " to " + clock(planned.end) + "  " + racket_words(racket);
      if (racket.facts.ready_by) text += ", promised " + clock(*racket.facts.ready_by);
      text += planned.late > 0 ? "  LATE by " + std::to_string((planned.late + 59'999) / 60'000) + " min\n" : "\n";
    }
  }
  for (const PlannedJob& planned : plan.jobs) {
    const OpenJob& racket = day.racket(planned.job);
    json::object one{{"job", racket.job.hex()}, {"player", racket.player.hex()}, {"name", racket_words(racket)},
                     {"stringer", input.benches[planned.bench].stringer}, {"begin", iso_utc(planned.begin)}, {"strung", iso_utc(planned.end)},
                     {"ready", iso_utc(planned.end + day.finishing())}, {"late_minutes", std::ceil(static_cast<double>(planned.late) / 60'000)},
                     {"fixed", planned.fixed}};
    if (racket.facts.ready_by) one["promised"] = iso_utc(*racket.facts.ready_by);
    jobs.push_back(std::move(one));
  }
  for (const PlanChange& change : changes_of(input, plan)) {
    const std::string name = racket_words(day.racket(change.job));
    json::object one{{"name", name}, {"bench_told", change.bench_told}, {"ready_told", iso_utc(change.ready_told)}, {"late", change.late_now}};
    if (change.ready_now) one["bench"] = change.bench_now, one["ready"] = iso_utc(*change.ready_now);
    changes.push_back(std::move(one));
    text += "changed: " + name + ", told " + clock(change.ready_told) + " at " + change.bench_told + ", now " +
            (change.ready_now ? clock(*change.ready_now) + " at " + change.bench_now : std::string("without a time")) + "\n";
  }
  for (const std::size_t job : plan.unfitting) unfitting.push_back(json::string(racket_words(day.racket(job))));
  for (const DayDoubt& doubt : day.doubts()) {
    const std::string words = doubt_words(event, day, doubt, told);
    doubts.push_back(json::string(words));
    text += words + "\n";
  }
  for (const std::size_t one : day.waiting()) {
    waiting.push_back(json::string(racket_words(day.open()[one])));
    text += "waits for an answer: " + racket_words(day.open()[one]) + "\n";
  }
  json::object out{{"at", iso_utc(input.now)}, {"benches", std::move(benches)}, {"jobs", std::move(jobs)}, {"changes", std::move(changes)},
                   {"unfitting", std::move(unfitting)}, {"waiting", std::move(waiting)}, {"doubts", std::move(doubts)},
                   {"shifts_assumed", day.shifts_assumed()}, {"told", input.told.size()}};
  if (const auto overload = overload_of(input, plan)) {
    out["overload"] = fault_json(*overload);
    text += overload->message() + "\n";
  }
  if (day.shifts_assumed()) text += "the event has no shifts yet: everybody counts as there from 8 to 20 o'clock\n";
  context.answer(out, text.empty() ? "nothing is to be strung" : text);
}

Outcome<Ending> room_day(Context& context, const RoomArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  auto day = RoomDay::make(context.ledger(), *event, context.now());
  if (!day) return fail(day.error());
  const auto plan = plan_day(day->input(), arguments.anew || day->input().told.empty() ? PlanEffort::day : PlanEffort::event);
  if (!plan) return fail(plan.error());
  if (arguments.tell)
    for (const Draft& draft : day->tell(*plan, who(context, arguments), context.now()))
      if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
  tell_day(context, *event, *day, *plan);
  return plan->unfitting.empty() ? Ending::done : Ending::needs_answer;
}

Outcome<Ending> room_promise(Context& context, const RoomArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto room = RoomPromises::make(context.ledger(), *event, context.now());
  if (!room) return fail(room.error());
  RacketsToCome rackets;
  rackets.kinds.assign(std::min<std::size_t>(arguments.rackets, 1000),
                       room->day().work_kind(arguments.mains, arguments.crosses, pattern_key(arguments.pattern), arguments.pieces));
  if (arguments.on_court) rackets.rush = Rush::on_court;
  ToldTimes told(context);
  const auto clock = [&](UnixMs at) { return told(at, *event); };
  json::object out{{"at", iso_utc(context.now())}, {"rackets", arguments.rackets}, {"confidence", room->confidence()}};
  std::string text;
  const auto put = [&](const Promise& found) {
    out["ready_by"] = iso_utc(found.ready_by);
    out["chance"] = found.chance;
    out["expected"] = iso_utc(found.expected);
    text += "can be promised for " + clock(found.ready_by) + " (" + whole_percent(found.chance) + "); as likely before as after " +
            clock(found.expected) + "\n";
  };
  bool kept = true;
  if (arguments.wish.empty()) {
    const auto found = room->earliest(rackets);
    if (!found) return fail(found.error());
    put(*found);
  } else {
    const auto wish = time_from(arguments.wish, {room->day().zone(), context.now()}, "--wish");
    if (!wish) return fail(wish.error());
    const auto found = room->check(rackets, *wish);
    if (!found) return fail(found.error());
    kept = found->can_be_kept;
    text += clock(*wish) + (kept ? " can be kept (" : " can't be kept (") + whole_percent(found->chance) + ")\n";
    json::array must_move;
    for (const CostToOthers& cost : found->must_move) {
      must_move.push_back(json::object{{"job", cost.job.hex()}, {"name", cost.name}, {"ready_by", iso_utc(cost.ready_by)}, {"before", cost.before}, {"after", cost.after}});
      text += "would have to give way: " + (cost.tag_number ? std::to_string(*cost.tag_number) + " " : std::string()) + cost.name + ", promised for " +
              clock(cost.ready_by) + " (" + whole_percent(cost.before) + " now, " + whole_percent(cost.after) + " then)\n";
    }
    if (!kept && !found->even_first) text += "not even before all that waits\n";
    out["wish"] = json::object{{"ready_by", iso_utc(*wish)}, {"can_be_kept", kept}, {"chance", found->chance}, {"even_first", found->even_first},
                               {"must_move", std::move(must_move)}};
    if (found->earliest) put(*found->earliest);
    else text += "no time can be promised: the shifts end before it would surely be ready\n";
  }
  context.answer(out, text);
  return kept ? Ending::done : Ending::needs_answer;
}

Outcome<Ending> room_forecast(Context& context, const RoomArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto input = room_forecast_input(context.ledger(), *event, context.now());
  if (!input) return fail(input.error());
  const auto made = forecast_of(*input);
  if (!made) return fail(made.error());
  tell_forecast(context, *made);
  return Ending::done;
}

Outcome<Ending> plan_rules(Context& context, const RoomArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const BenchBook book = load_bench_book(context.ledger(), *event);
  PlanRules wanted = book.rules.now;
  if (auto set = set_fields(wanted, arguments.rules, {context.zone_of(*event), context.now()}); !set) return fail(set.error());
  if (wanted != book.rules.now) {
    const auto draft = set_plan_rules(*event, book, wanted);
    if (!draft) return fail(draft.error());
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  }
  json::object out;
  std::string text;
  for (auto& [name, value] : fields_json(wanted)) {
    text += std::string(name) + ": " + (value.is_string() ? std::string(value.get_string()) : json::serialize(value)) + "\n";
    out[name] = value;
  }
  context.answer(out, text.empty() ? "nothing is set: the room plans by what is usual" : text);
  return Ending::done;
}

/// A wish of nobody would wait for ever: the name has to be in a draw, on the entry list or among the players.
Outcome<> require_somebody(Context& context, const BookId& event, const std::string& player) {
  const std::string key = search_key(player);
  // One wish is one person's: the name of a pair is nobody's, and benches are kept by persons.
  for (const HeldDraw& held : event_draws(context.ledger(), event))
    for (std::size_t line = 0; line < held.lines.size(); ++line)
      for (const std::string& person : people_of(held.line(line)))
        if (search_key(person) == key) return {};
  const auto called = [&](const auto& row) { return search_key(row.family_name + " " + row.given_name) == key; };
  const auto entries = entry_list(context.ledger(), event);
  const auto players = find_players(context.ledger(), player, 50);
  if (std::any_of(entries.begin(), entries.end(), called) || std::any_of(players.begin(), players.end(), called)) return {};
  return fail(FaultCode::not_found, "nobody of that name is in a draw or on the entry list", "\"" + shortened(player, 40) + "\"",
              "give one player's name as the draw has it; `draws` shows who plays");
}

Outcome<Ending> bench_wish(Context& context, const RoomArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto record = load_event(context.ledger(), *event);
  if (!record) return fail(record.error());
  const BenchBook book = load_bench_book(context.ledger(), *event);
  if (!arguments.player.empty()) {
    if (search_key(arguments.player).empty())
      return fail(FaultCode::bad_input, "this is no name", "\"" + shortened(arguments.player, 40) + "\"", "give the name as the draw has it; `draws` shows who plays");
    BenchAsk wish;
    wish.player = arguments.player;
    if (arguments.never) wish.never = true;
    if (!arguments.stringer.empty()) {
      for (const auto& member : record->team)
        if (search_key(member.now.name) == search_key(arguments.stringer)) wish.stringer = member.id();
      if (!wish.stringer) return fail(FaultCode::not_found, "nobody of the team has that name", arguments.stringer, "`team` lists them");
    }
    if (!arguments.machine.empty()) {
      const auto machine = choose_machine(context, *event, arguments.machine);
      if (!machine) return fail(machine.error());
      wish.machine = machine->machine.id();
    }
    Outcome<Draft> draft = fail(FaultCode::not_found, "there is no such wish", arguments.player, "`bench-wish` lists them");
    if (arguments.drop) {
      for (const auto& held : book.asks)
        if (search_key(held.now.player) == search_key(wish.player) && held.now.stringer == wish.stringer && held.now.machine == wish.machine)
          draft = remove_wish(*event, held);
    } else {
      if (auto somebody = require_somebody(context, *event, wish.player); !somebody) return fail(somebody.error());
      draft = add_wish(*event, book, wish);
    }
    if (!draft) return fail(draft.error());
    if (!draft->empty())
      if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  }
  std::map<EntityId, std::string> names;
  for (const auto& member : record->team) names[member.id()] = member.now.name;
  for (const auto& machine : load_machines(context.ledger(), *event)) names[machine.id()] = machine.now.name;
  json::array out;
  std::string text;
  for (const auto& held : load_bench_book(context.ledger(), *event).asks) {
    const bool never = held.now.never.value_or(false);
    const std::string with = names[held.now.stringer ? held.now.stringer : held.now.machine];
    out.push_back(json::object{{"player", held.now.player}, {"wish", never ? "never" : "only"}, {"with", with}});
    text += held.now.player + (never ? ": never with " : ": only with ") + with + "\n";
  }
  context.answer(out, text.empty() ? "nobody wishes for anything" : text);
  return Ending::done;
}

void add_event(CLI::App& command, RoomArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}
void add_by(CLI::App& command, RoomArguments& arguments) {
  command.add_option("--by", arguments.by, "Who says so; default: the device's name");
}

}  // namespace

void add_room_day_commands(CLI::App& app, Work& chosen) {
  add_command<RoomArguments>(app, chosen, "room-day", "Which racket is strung where and when, from now on", room_day, [](CLI::App& command, RoomArguments& arguments) {
    command.add_flag("--anew", arguments.anew, "As if nothing had been told yet; otherwise as little as can be changes of what was");
    command.add_flag("--tell", arguments.tell, "Writes the plan into the event's book, for everybody");
    add_by(command, arguments);
    add_event(command, arguments);
    command.footer(
        "Ends with 3 if the shifts can't carry all of it.\n"
        "--json: one object: at, benches [{stringer, machine, open [{from, until}]}], jobs [{job, player, name, stringer, begin, strung, ready, promised,\n"
        "late_minutes, fixed}] in order of begin, changes [{name, bench_told, ready_told, bench, ready, late}], unfitting, waiting, doubts, overload,\n"
        "shifts_assumed, told.");
  });
  add_command<RoomArguments>(app, chosen, "room-promise", "The earliest time that rackets can be promised for, or whether a wish can be kept", room_promise,
                             [](CLI::App& command, RoomArguments& arguments) {
                               command.add_option("--rackets", arguments.rackets, "How many come together")->capture_default_str();
                               command.add_option("--wish", arguments.wish, "Ready by then: 14:05, +90, 2031-05-26T14:05");
                               command.add_option("--mains", arguments.mains, "The string, as the stock calls it");
                               command.add_option("--crosses", arguments.crosses, "Of a hybrid");
                               command.add_option("--pattern", arguments.pattern, "16x19");
                               command.add_option("--pieces", arguments.pieces, "1 or 2")->check(CLI::Range(0, 2));
                               command.add_flag("--on-court", arguments.on_court, "A rush from the court");
                               add_event(command, arguments);
                               command.footer(
                                   "Ends with 3 if the wish can't be kept. Chances are estimates from the queue, the shifts and how long rackets took so far.\n"
                                   "--json: one object: at, rackets, confidence, ready_by, chance, expected, and of a wish wish {ready_by, can_be_kept, chance,\n"
                                   "even_first, must_move [{job, name, ready_by, before, after}]}.");
                             });
  add_command<RoomArguments>(app, chosen, "room-forecast", "Rackets to come on the event's days, with the benches and the string they need", room_forecast,
                             [](CLI::App& command, RoomArguments& arguments) {
                               add_event(command, arguments);
                               command.footer(kForecastAnswer);
                             });
  add_command<RoomArguments>(app, chosen, "plan-rules", "By what the room plans", plan_rules, [](CLI::App& command, RoomArguments& arguments) {
    command.add_option("RULE=VALUE", arguments.rules,
                       "hard_places (8: nobody shares a bench with somebody they can meet from the quarter-final on; 0: no rule), chances (rating, seed,\n"
                       "even), margin_min (minutes before a match, 0 to 1440), round_weights (what a meeting on one bench costs, the final's first: \"16 8 4 2 1\")");
    add_event(command, arguments);
    command.footer("--json: one object with the rules that are set.");
  });
  add_command<RoomArguments>(app, chosen, "bench-wish", "Who wants to be only, or never, with a stringer or at a machine", bench_wish,
                             [](CLI::App& command, RoomArguments& arguments) {
                               auto* player = command.add_option("PLAYER", arguments.player, "One player's name as in the draw, of a pair each for itself; nobody: the wishes there are");
                               auto* stringer = command.add_option("--stringer", arguments.stringer, "With this one")->needs(player);
                               command.add_option("--machine", arguments.machine, "At this one")->needs(player)->excludes(stringer);
                               command.add_flag("--never", arguments.never, "Never; otherwise: only")->needs(player);
                               command.add_flag("--drop", arguments.drop, "The wish does not hold any more")->needs(player);
                               add_event(command, arguments);
                               command.footer("--json: an array of {player, wish (only, never), with}.");
                             });
}

}  // namespace weavelog::cli
