// draws, draw-add, draw-remove, draw-line, draw-match: draws as the event's book keeps them.

#include <algorithm>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/draws.h"
#include "core/model/field_json.h"
#include "core/people/name_found.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/plan_commands.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct EventDrawArguments {
  std::string event, draw, table, feeds, winner, end = "played", score, by, court, not_before, player, partner, follows;
  int round = 0;
  std::int64_t qualifiers = 0;
  std::size_t match = 0;
  bool back = false, any_time = false, withdraws = false, group = false;
};

std::string who(Context& context, const EventDrawArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

json::value side_json(const HeldDraw& held, std::optional<std::size_t> line) {
  if (!line) return nullptr;
  const BracketLine& one = held.line(*line);
  return json::object{{"line", *line + 1}, {"name", line_name(one)}, {"bye", one.bye}, {"withdrawn", one.withdrawn}};
}

/// Matches of which somebody noted who won.
std::size_t results_of(const HeldDraw& held) {
  return static_cast<std::size_t>(std::count_if(held.matches.begin(), held.matches.end(), [](const auto& match) { return match.now.winner.value_or(0) > 0; }));
}

json::object draw_json(const HeldDraw& held, std::size_t number) {
  json::object out{{"number", number}, {"draw", held.sheet.id().hex()}};
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

/// "1  Women's singles, 8 lines, 3 results".
std::string heading(const HeldDraw& held, std::size_t number) {
  const std::size_t results = results_of(held);
  return std::to_string(number) + "  " + held.sheet.now.name + ", " + std::to_string(held.lines.size()) + " lines, " + std::to_string(results) +
         (results == 1 ? " result" : " results");
}

/// The match of that id: "round 2, match 7", with its draw before it if that is another one; "" for one that is not there.
std::string match_words(const std::vector<HeldDraw>& all, const HeldDraw& same, const EntityId& id) {
  for (const HeldDraw& held : all)
    if (const auto found = match_of_id(held, id))
      return (held.sheet.id() == same.sheet.id() ? "" : held.sheet.now.name + ", ") + "round " + std::to_string(found->first) + ", match " +
             std::to_string(found->second + 1);
  return {};
}

/// What is known of a match besides who plays: its score, where and when it is played.
std::string play_words(const std::vector<HeldDraw>& all, const HeldDraw& held, const MatchRecord& match, const BookId& event, ToldTimes& told) {
  std::string out;
  if (!match.score.empty()) out += ", " + match.score;
  // Courts are mostly called by a number.
  if (!match.court.empty()) out += (search_key(match.court).find_first_not_of("0123456789") == std::string::npos ? ", court " : ", ") + match.court;
  if (match.not_before) out += ", not before " + told(*match.not_before, event);
  if (match.after)
    if (const std::string before = match_words(all, held, match.after); !before.empty()) out += ", follows " + before;
  return out;
}

std::string draw_text(const std::vector<HeldDraw>& all, const HeldDraw& held, std::size_t number, const BookId& event, ToldTimes& told) {
  std::string out = heading(held, number) + "\n";
  for (const Fault& fault : held.troubles) out += "  " + fault.message() + "\n";
  if (!held.draw && !held.group) return out;
  for (int round = 1; round <= held.rounds(); ++round)
    for (std::size_t match = 0; match < held.matches_in(round); ++match) {
      const auto [upper, lower] = held.sides(round, match);
      const auto* record = held.match(round, match);
      const std::string more = record == nullptr ? std::string() : play_words(all, held, record->now, event, told);
      if ((!upper || !lower) && more.empty()) continue;
      const auto name = [&](std::optional<std::size_t> line) {
        const std::string known = line ? line_name(held.line(*line)) : std::string();
        return (line ? std::to_string(*line + 1) + " " : std::string()) + (known.empty() ? "(not known yet)" : known);
      };
      out += "  round " + std::to_string(round) + ", match " + std::to_string(match + 1) + ": " + name(upper) + " - " + name(lower);
      if (const auto winner = held.winner(round, match)) out += "  -> " + name(winner);
      out += more + "\n";
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
  const auto draws = event_draws(context.ledger(), event);
  ToldTimes told(context);
  for (const HeldDraw& held : draws) {
    all.push_back(draw_json(held, all.size() + 1));
    text += draw_text(draws, held, all.size(), event, told);
  }
  context.answer(all, text.empty() ? "the event has no draw" : text);
}

Outcome<Ending> store_draws(Context& context, const BookId& event, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  tell_draws(context, event);
  return Ending::done;
}

/// The draw of that name, number in `draws`, or beginning of its own number. Where several have the name, as two devices that were apart can
/// make them, nothing is chosen: it was asked which, and the command ends with 3.
Outcome<std::optional<HeldDraw>> choose_draw(Context& context, const BookId& event, const std::string& wanted) {
  auto draws = event_draws(context.ledger(), event);
  std::vector<std::size_t> meant;
  for (std::size_t at = 0; at < draws.size(); ++at)
    if (search_key(draws[at].sheet.now.name) == search_key(wanted)) meant.push_back(at);
  if (meant.empty()) {
    if (const auto number = whole_from(wanted, "DRAW"); number && *number >= 1 && static_cast<std::size_t>(*number) <= draws.size())
      meant.push_back(static_cast<std::size_t>(*number - 1));
    for (std::size_t at = 0; wanted.size() >= 6 && at < draws.size(); ++at)
      if (draws[at].sheet.id().hex().starts_with(wanted)) meant.push_back(at);
  }
  if (meant.empty()) return fail(FaultCode::not_found, "the event has no such draw", "\"" + shortened(wanted, 40) + "\"", "`draws` lists them");
  if (meant.size() == 1) return std::optional(std::move(draws[meant.front()]));
  json::array choices;
  ToldTimes told(context);
  std::string text = std::to_string(meant.size()) + " draws are meant; nothing was done: say which one by its number\n";
  for (const std::size_t at : meant) {
    const auto& sheet = draws[at].sheet;
    json::object one{{"number", at + 1}, {"draw", sheet.id().hex()}, {"name", sheet.now.name}, {"lines", draws[at].lines.size()}, {"results", results_of(draws[at])}};
    if (sheet.now.at) one["made"] = iso_utc(*sheet.now.at);
    text += heading(draws[at], at + 1) + (sheet.now.at ? ", made " + told(*sheet.now.at, event) : std::string()) + "\n";
    choices.push_back(std::move(one));
  }
  context.answer(json::object{{"asked", "draw"}, {"choices", std::move(choices)}}, text);
  return std::optional<HeldDraw>();
}

/// A line by its number or by who stands on it; a part of the name will do where it is clear, first among `near`.
Outcome<std::size_t> choose_line(const HeldDraw& held, const std::string& wanted, std::span<const std::size_t> near = {}) {
  const std::string key = search_key(wanted);
  std::vector<std::size_t> named;
  for (std::size_t line = 0; line < held.lines.size(); ++line)
    if (!held.line(line).bye && !held.line(line).player.empty()) named.push_back(line);
  for (const std::size_t line : named)
    if (search_key(line_name(held.line(line))) == key) return line;
  const auto number = whole_from(wanted, "line");
  if (number && *number >= 1 && static_cast<std::size_t>(*number) <= held.lines.size()) return static_cast<std::size_t>(*number - 1);
  for (const std::span<const std::size_t> among : {near, std::span<const std::size_t>(named)}) {
    std::vector<std::size_t> meant;
    for (const std::size_t line : among)
      if (!key.empty() && name_found(search_key(line_name(held.line(line))), key)) meant.push_back(line);
    if (meant.size() == 1) return meant.front();
    if (meant.size() > 1)
      return fail(FaultCode::bad_input,
                  std::to_string(meant.size()) + " are meant: " + std::to_string(meant[0] + 1) + " " + line_name(held.line(meant[0])) + ", " +
                      std::to_string(meant[1] + 1) + " " + line_name(held.line(meant[1])),
                  "\"" + shortened(wanted, 40) + "\"", "say more of the name, or give the line");
  }
  return fail(FaultCode::not_found, "nobody of that name is in the draw", "\"" + shortened(wanted, 40) + "\"", "give the name as the draw has it, or the line");
}

/// "2/7" of the same draw, or "Doubles 2/7"; nothing where it was asked which draw.
Outcome<std::optional<EntityId>> followed(Context& context, const BookId& event, const HeldDraw& same, const std::string& words) {
  const auto wrong = [&] {
    return fail(FaultCode::bad_input, "\"" + shortened(words, 40) + "\" names no match", "--follows", "give round/match as 2/7, with its draw before it if that is another one");
  };
  const std::size_t slash = words.rfind('/'), space = words.rfind(' ', slash);
  if (slash == std::string::npos) return wrong();
  const std::size_t begin = space == std::string::npos ? 0 : space + 1;
  const auto round = whole_from(words.substr(begin, slash - begin), "--follows"), match = whole_from(words.substr(slash + 1), "--follows");
  if (!round || !match || *round < 1 || *round > 8 || *match < 1) return wrong();
  const auto id = [&](const HeldDraw& held) -> Outcome<std::optional<EntityId>> {
    const auto found = match_id(held, static_cast<int>(*round), static_cast<std::size_t>(*match - 1));
    if (!found) return fail(found.error());
    return std::optional(*found);
  };
  if (begin == 0) return id(same);
  const auto other = choose_draw(context, event, words.substr(0, space));
  if (!other) return fail(other.error());
  return *other ? id(**other) : Outcome<std::optional<EntityId>>(std::nullopt);
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
    if (!*main) return Ending::needs_answer;
    wanted.feeds = (*main)->sheet.id();
  }
  return store_draws(context, *event, add_draw(*event, event_draws(context.ledger(), *event), wanted, context.now()));
}

Outcome<Ending> remove(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto held = choose_draw(context, *event, arguments.draw);
  if (!held) return fail(held.error());
  if (!*held) return Ending::needs_answer;
  return store_draws(context, *event, remove_draw(**held));
}

Outcome<Ending> match(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto chosen = choose_draw(context, *event, arguments.draw);
  if (!chosen) return fail(chosen.error());
  if (!*chosen) return Ending::needs_answer;
  const HeldDraw* held = &**chosen;
  if (arguments.match < 1) return fail(FaultCode::bad_input, "matches count from 1", "match", "`draws` lists them");
  const std::size_t number = arguments.match - 1;
  if (arguments.back) return store_draws(context, *event, take_back_winner(*held, arguments.round, number));
  if (!arguments.winner.empty()) {
    const auto [upper, lower] = held->sides(arguments.round, number);
    std::vector<std::size_t> near;
    for (const auto& side : {upper, lower})
      if (side && !held->line(*side).player.empty()) near.push_back(*side);
    const auto line = choose_line(*held, arguments.winner, near);
    if (!line) return fail(line.error());
    const auto end = choice_from<EndOfMatch>(arguments.end);
    if (!end || *end == EndOfMatch::unsaid) return no_choice(arguments.end, "end", {"played", "walkover", "retired", "disqualified"});
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
    if (!*after) return Ending::needs_answer;
    said.after = **after;
  }
  return store_draws(context, *event, set_play(*held, arguments.round, number, said));
}

Outcome<Ending> line(Context& context, const EventDrawArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto chosen = choose_draw(context, *event, arguments.draw);
  if (!chosen) return fail(chosen.error());
  if (!*chosen) return Ending::needs_answer;
  const HeldDraw* held = &**chosen;
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

void add_event(CLI::App& command, EventDrawArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}
void draw_footer(CLI::App& command) {
  command.footer(
      "Where several draws are called so, nothing is done, it ends with 3 and tells their numbers: {asked, choices [{number, draw, name, lines,\n"
      "results, made}]}.\n"
      "--json: an array of draws: [{number, draw, name, kind, lines, places: [{line, player, second, bye, seed, rating, via, withdrawn}], matches:\n"
      "[{round, match, upper, lower ({line, name, bye, withdrawn}), winner (line), end, score, court, not_before, after}], troubles}].");
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
    command.add_option("DRAW", arguments.draw, "Its name, or its number in `draws`")->required();
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-line", "Somebody withdraws, or comes into a place of a draw", line, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("DRAW", arguments.draw, "Its name, or its number in `draws`")->required();
    command.add_option("LINE", arguments.winner, "The line's number, or who stands on it; a part of the name will do where it is clear")->required();
    auto* out = command.add_flag("--withdraws", arguments.withdraws, "Plays no match any more");
    command.add_option("--player", arguments.player, "Who comes in the place of one who withdrew, or where nobody was known")->excludes(out);
    command.add_option("--partner", arguments.partner, "Of a pair");
    add_event(command, arguments);
    draw_footer(command);
  });
  add_command<EventDrawArguments>(app, chosen, "draw-match", "Who won a match, or where and when it is played", match, [](CLI::App& command, EventDrawArguments& arguments) {
    command.add_option("DRAW", arguments.draw, "Its name, or its number in `draws`")->required();
    command.add_option("ROUND", arguments.round, "From 1")->required();
    command.add_option("MATCH", arguments.match, "In the round, from 1, from the top")->required();
    auto* winner = command.add_option("--winner", arguments.winner, "Name as in the draw, a part of it that is clear, or line");
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
}

}  // namespace weavelog::cli
