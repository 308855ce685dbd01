// draws, draw-add, draw-remove, draw-match, home-benches: draws and home benches as the event's book keeps them.

#include "core/base/text.h"
#include "core/desk/room_benches.h"
#include "core/model/field_json.h"
#include "core/plan/plan_words.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {
namespace {

struct EventDrawArguments {
  std::string event, draw, table, feeds, winner, end = "played", score, by, court, not_before, player, partner, stringer, follows;
  int round = 0;
  std::int64_t qualifiers = 0;
  std::size_t match = 0;
  bool back = false, any_time = false, withdraws = false, plan = false, unpin = false, group = false;
};

std::string who(Context& context, const EventDrawArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

json::value side_json(const HeldDraw& held, std::optional<std::size_t> line) {
  if (!line) return nullptr;
  const BracketLine& one = held.line(*line);
  return json::object{{"line", *line + 1}, {"name", line_name(one)}, {"bye", one.bye}, {"withdrawn", one.withdrawn}};
}

json::object draw_json(const HeldDraw& held) {
  json::object out{{"draw", held.sheet.id().hex()}};
  for (auto& [name, value] : fields_json(held.sheet.now)) out[name] = value;
  json::array troubles, lines, matches;
  for (const Fault& fault : held.troubles) troubles.push_back(json::string(fault.message()));
  for (const auto& place : held.places) {
    json::object one = fields_json(place.now);
    one.erase("draw");
    lines.push_back(std::move(one));
  }
  if (held.draw || held.group)
    for (int round = 1; round <= held.rounds(); ++round)
      for (std::size_t match = 0; match < held.matches_in(round); ++match) {
        const auto [upper, lower] = held.sides(round, match);
        json::object one{{"round", round}, {"match", match + 1}, {"upper", side_json(held, upper)}, {"lower", side_json(held, lower)}};
        const auto winner = held.winner(round, match);
        one["winner"] = winner ? json::value(*winner + 1) : json::value(nullptr);
        if (const auto* record = held.match(round, match))
          for (auto& [name, value] : fields_json(record->now))
            if (name != "draw" && name != "round" && name != "match" && name != "winner") one[name] = value;
        matches.push_back(std::move(one));
      }
  out["places"] = std::move(lines);
  out["matches"] = std::move(matches);
  out["troubles"] = std::move(troubles);
  if (held.group) {
    json::array standing;
    for (const std::size_t place : held.group->standing())
      standing.push_back(json::object{{"line", place + 1}, {"name", line_name(held.line(place))}, {"wins", held.group->wins(place)}});
    out["standing"] = std::move(standing);
  }
  return out;
}

std::string draw_text(const HeldDraw& held) {
  std::string out = held.sheet.now.name + ", " + std::to_string(held.lines.size()) + " lines\n";
  for (const Fault& fault : held.troubles) out += "  " + fault.message() + "\n";
  if (!held.draw && !held.group) return out;
  for (int round = 1; round <= held.rounds(); ++round)
    for (std::size_t match = 0; match < held.matches_in(round); ++match) {
      const auto [upper, lower] = held.sides(round, match);
      if (!upper || !lower) continue;
      const auto name = [&](std::size_t line) {
        const std::string known = line_name(held.line(line));
        return std::to_string(line + 1) + " " + (known.empty() ? "(not known yet)" : known);
      };
      out += "  round " + std::to_string(round) + ", match " + std::to_string(match + 1) + ": " + name(*upper) + " - " + name(*lower);
      if (const auto winner = held.winner(round, match)) out += "  -> " + name(*winner);
      if (const auto* record = held.match(round, match))
        for (const std::string& more : {record->now.score, record->now.court})
          if (!more.empty()) out += ", " + more;
      out += "\n";
    }
  if (held.group) {
    out += "  standing:";
    for (const std::size_t place : held.group->standing())
      out += " " + line_name(held.line(place)) + " (" + std::to_string(held.group->wins(place)) + ")";
    out += "\n";
  }
  return out;
}

void tell_draws(Context& context, const BookId& event) {
  json::array all;
  std::string text;
  for (const HeldDraw& held : event_draws(context.ledger(), event)) {
    all.push_back(draw_json(held));
    text += draw_text(held);
  }
  context.answer(all, text.empty() ? "the event has no draw" : text);
}

Outcome<Ending> store_draws(Context& context, const BookId& event, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  tell_draws(context, event);
  return Ending::done;
}

Outcome<HeldDraw> choose_draw(Context& context, const BookId& event, const std::string& wanted) {
  for (HeldDraw& held : event_draws(context.ledger(), event))
    if (search_key(held.sheet.now.name) == search_key(wanted) || held.sheet.id().hex() == wanted) return std::move(held);
  return fail(FaultCode::not_found, "the event has no such draw", "\"" + shortened(wanted, 40) + "\"", "`draws` lists them");
}

/// A line by its number or by who stands on it.
Outcome<std::size_t> choose_line(const HeldDraw& held, const std::string& wanted) {
  for (std::size_t line = 0; line < held.lines.size(); ++line)
    if (!held.lines[line].bye && !held.lines[line].player.empty() && search_key(line_name(held.lines[line])) == search_key(wanted)) return line;
  const auto number = whole_from(wanted, "line");
  if (number && *number >= 1 && static_cast<std::size_t>(*number) <= held.lines.size()) return static_cast<std::size_t>(*number - 1);
  return fail(FaultCode::not_found, "nobody of that name is in the draw", "\"" + shortened(wanted, 40) + "\"", "give the name as the draw has it, or the line");
}

/// "2/7" of the same draw, or "Doubles 2/7".
Outcome<EntityId> followed(Context& context, const BookId& event, const HeldDraw& same, const std::string& words) {
  const auto wrong = [&] {
    return fail(FaultCode::bad_input, "\"" + shortened(words, 40) + "\" names no match", "--follows", "give round/match as 2/7, with its draw before it if that is another one");
  };
  const std::size_t slash = words.rfind('/'), space = words.rfind(' ', slash);
  if (slash == std::string::npos) return wrong();
  const std::size_t begin = space == std::string::npos ? 0 : space + 1;
  const auto round = whole_from(words.substr(begin, slash - begin), "--follows"), match = whole_from(words.substr(slash + 1), "--follows");
  if (!round || !match || *round < 1 || *round > 8 || *match < 1) return wrong();
  if (begin == 0) return match_id(same, static_cast<int>(*round), static_cast<std::size_t>(*match - 1));
  const auto other = choose_draw(context, event, words.substr(0, space));
  if (!other) return fail(other.error());
  return match_id(*other, static_cast<int>(*round), static_cast<std::size_t>(*match - 1));
}

Outcome<Ending> show(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  tell_draws(context, *event);
  return Ending::done;
}

Outcome<Ending> add(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto bytes = plan_file(arguments.table);
  if (!bytes) return fail(bytes.error());
  auto lines = arguments.group ? read_entries(*bytes, arguments.table) : read_bracket(*bytes, arguments.table);
  if (!lines) return fail(lines.error());
  NewDraw wanted;
  wanted.name = arguments.draw;
  wanted.lines = std::move(*lines);
  if (arguments.group) wanted.kind = DrawKind::round_robin;
  if (arguments.qualifiers != 0) {
    wanted.kind = DrawKind::qualifying;
    wanted.sections = arguments.qualifiers;
  }
  if (!arguments.feeds.empty()) {
    const auto main = choose_draw(context, *event, arguments.feeds);
    if (!main) return fail(main.error());
    wanted.feeds = main->sheet.id();
  }
  return store_draws(context, *event, add_draw(*event, event_draws(context.ledger(), *event), wanted, context.now()));
}

Outcome<Ending> remove(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto held = choose_draw(context, *event, arguments.draw);
  if (!held) return fail(held.error());
  return store_draws(context, *event, remove_draw(*held));
}

Outcome<Ending> match(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto held = choose_draw(context, *event, arguments.draw);
  if (!held) return fail(held.error());
  if (arguments.match < 1) return fail(FaultCode::bad_input, "matches count from 1", "match", "`draws` lists them");
  const std::size_t number = arguments.match - 1;
  if (arguments.back) return store_draws(context, *event, take_back_winner(*held, arguments.round, number));
  if (!arguments.winner.empty()) {
    const auto line = choose_line(*held, arguments.winner);
    if (!line) return fail(line.error());
    const auto end = choice_from<EndOfMatch>(arguments.end);
    if (!end || *end == EndOfMatch::unsaid) return no_choice(arguments.end, "end", {"played", "walkover", "retired", "disqualified"});
    const auto [upper, lower] = held->sides(arguments.round, number);
    if (upper != *line && lower != *line)
      return fail(FaultCode::bad_input, "that player is not in this match", "round " + std::to_string(arguments.round) + ", match " + std::to_string(arguments.match),
                  "look at `draws`");
    return store_draws(context, *event, note_winner(*held, {arguments.round, *line, *end, arguments.score, who(context, arguments), context.now()}));
  }
  PlaySaid said;
  if (!arguments.court.empty()) said.court = arguments.court;
  said.any_time = arguments.any_time;
  if (!arguments.not_before.empty()) {
    const auto at = time_from(arguments.not_before, {context.zone_of(*event), context.now()}, "not before");
    if (!at) return fail(at.error());
    said.not_before = *at;
  }
  if (arguments.follows == "nothing") {
    said.after = EntityId{};
  } else if (!arguments.follows.empty()) {
    const auto after = followed(context, *event, *held, arguments.follows);
    if (!after) return fail(after.error());
    said.after = *after;
  }
  return store_draws(context, *event, set_play(*held, arguments.round, number, said));
}

Outcome<Ending> line(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto held = choose_draw(context, *event, arguments.draw);
  if (!held) return fail(held.error());
  const auto at = choose_line(*held, arguments.winner);
  if (!at) return fail(at.error());
  if (arguments.withdraws) return store_draws(context, *event, withdraw_line(*held, *at, context.now()));
  if (arguments.player.empty()) return fail(FaultCode::bad_input, "nothing is said of the line", "line", "say --withdraws, or who comes with --player");
  BracketLine by;
  by.player = arguments.player;
  by.partner = arguments.partner;
  by.entry = held->lines[*at].player.empty() ? DrawEntry::qualifier : DrawEntry::lucky_loser;
  return store_draws(context, *event, put_on_line(*held, *at, by));
}

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

Outcome<Ending> home_benches(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
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
    const auto draft = (*room)->move(*person, *bench, !arguments.unpin, who(context, arguments), context.now());
    if (!draft) return fail(draft.error());
    if (!draft->empty())
      if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  } else if (arguments.plan) {
    auto plan = (*room)->benches().plan();
    if (!plan) return fail(plan.error());
    const Draft draft = (*room)->keep(plan->choice(), who(context, arguments), context.now());
    if (!draft.empty())
      if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
    made = std::move(*plan);
  }
  room = RoomBenches::make(context.ledger(), *event);
  if (!room) return fail(room.error());
  tell_benches(context, **room, made ? &*made : nullptr);
  return Ending::done;
}

void add_event(CLI::App& command, EventDrawArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}
void draw_footer(CLI::App& command) {
  command.footer(
      "--json: an array of draws: [{draw, name, kind, lines, places: [{line, player, second, bye, seed, rating, via, withdrawn}], matches:\n"
      "[{round, match, upper, lower ({line, name, bye, withdrawn}), winner (line), end, score, court, not_before}], troubles}].");
}

}  // namespace

void add_event_draw_commands(CLI::App& app, Work& chosen) {
  add_command<EventDrawArguments>(app, chosen, "draws", "The event's draws, with their matches", show, [](CLI::App& command, EventDrawArguments& arguments) {
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-add", "Bring a draw in from a table", add, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("NAME", arguments.draw, "What it is called")->required();
    command.add_option("TABLE", arguments.table, "CSV: line, player; if known partner, seed, rating, entry, withdrawn, qualifier")->required();
    auto* through = command.add_option("--qualifiers", arguments.qualifiers, "It is qualifying, through which so many come");
    command.add_flag("--group", arguments.group, "It is a round-robin group of 3 to 8: a row each, no lines")->excludes(through);
    command.add_option("--feeds", arguments.feeds, "Of qualifying: the main draw");
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-remove", "Take a draw away", remove, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("DRAW", arguments.draw, "Its name")->required();
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-line", "Somebody withdraws, or comes into a place of a draw", line, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("DRAW", arguments.draw, "Its name")->required();
    command.add_option("LINE", arguments.winner, "The line's number, or who stands on it")->required();
    auto* out = command.add_flag("--withdraws", arguments.withdraws, "Plays no match any more");
    command.add_option("--player", arguments.player, "Who comes in the place of one who withdrew, or where nobody was known")->excludes(out);
    command.add_option("--partner", arguments.partner, "Of a pair");
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-match", "Who won a match, or where and when it is played", match, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("DRAW", arguments.draw, "Its name")->required();
    command.add_option("ROUND", arguments.round, "From 1")->required();
    command.add_option("MATCH", arguments.match, "In the round, from 1, from the top")->required();
    auto* winner = command.add_option("--winner", arguments.winner, "Name as in the draw, or line");
    command.add_option("--end", arguments.end, "played, walkover, retired, disqualified")->capture_default_str();
    command.add_option("--score", arguments.score, "6-4 7-5");
    command.add_flag("--take-back", arguments.back, "It has no result after all")->excludes(winner);
    command.add_option("--court", arguments.court, "Where it is played")->excludes(winner);
    auto* time = command.add_option("--not-before", arguments.not_before, "14:05 or 2031-05-26T14:05, in the event's zone")->excludes(winner);
    command.add_option("--follows", arguments.follows, "The match before it on its court: 2/7, or \"Doubles 2/7\"; \"nothing\" takes that back")->excludes(winner);
    command.add_flag("--any-time", arguments.any_time, "It has no time any more")->excludes(winner)->excludes(time);
    command.add_option("--by", arguments.by, "Who says so; default: the device's name");
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "home-benches", "Who strings whom as long as the event lasts", home_benches, [](CLI::App& command, EventDrawArguments& arguments) {
    auto* plan = command.add_flag("--plan", arguments.plan, "Plan, and keep it");
    auto* player = command.add_option("--player", arguments.player, "Move one player, and pin them there")->excludes(plan);
    command.add_option("--to", arguments.stringer, "The stringer; default: where they are")->needs(player);
    command.add_flag("--unpin", arguments.unpin, "The next plan may move them")->needs(player);
    command.add_option("--by", arguments.by, "Who says so; default: the device's name");
    add_event(command, arguments);
    command.footer("--json: one object: planned, players: [{player, stringer, machine, pinned, reason}], and of a new plan gap, rule, moved.");
  });
}

}  // namespace weavelog::cli
