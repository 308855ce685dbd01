#include "core/desk/draws.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"
#include "core/log/derived_id.h"

namespace weavelog {
namespace {

constexpr std::size_t kLongestName = 120, kLongestWords = 60;  // bytes

EntityId part_id(const EntityId& draw, std::string_view what, std::int64_t one, std::int64_t other = 0) {
  return derived_id(draw, std::string(what) + " " + std::to_string(one) + " " + std::to_string(other));
}

EntityState part(const BookId& event, EntityKind kind, const EntityId& id) {
  EntityState out;
  out.book = event;
  out.kind = kind;
  out.id = id;
  return out;
}

DrawEntry entry_of(EntryVia via) {
  switch (via) {
    case EntryVia::qualifier: return DrawEntry::qualifier;
    case EntryVia::lucky_loser: return DrawEntry::lucky_loser;
    case EntryVia::wild_card: return DrawEntry::wild_card;
    case EntryVia::alternate: return DrawEntry::alternate;
    default: return DrawEntry::direct;
  }
}

EntryVia via_of(DrawEntry entry) {
  switch (entry) {
    case DrawEntry::qualifier: return EntryVia::qualifier;
    case DrawEntry::lucky_loser: return EntryVia::lucky_loser;
    case DrawEntry::wild_card: return EntryVia::wild_card;
    case DrawEntry::alternate: return EntryVia::alternate;
    case DrawEntry::direct: return EntryVia::unsaid;
  }
  return EntryVia::unsaid;
}

BracketLine line_of(const DrawPlace& place) {
  BracketLine out;
  out.player = place.player;
  out.bye = place.bye.value_or(false);
  if (place.rating) out.rating = static_cast<double>(*place.rating);
  out.seed = place.seed;
  out.partner = place.second;
  out.entry = entry_of(place.via);
  out.withdrawn = place.withdrawn.has_value();
  if (place.section && *place.section > 0) out.qualifier = static_cast<std::size_t>(*place.section);
  return out;
}

/// What the line says, in place of what stood there; what the draw does not say of the people stays if they are the same.
DrawPlace place_of(const EntityId& draw, std::size_t line, const BracketLine& said, const DrawPlace& before = {}) {
  DrawPlace out;
  out.draw = draw;
  out.line = static_cast<std::int64_t>(line) + 1;
  out.player = said.player;
  out.second = said.partner;
  if (said.player == before.player) out.book = before.book;
  if (said.partner == before.second) out.second_book = before.second_book;
  if (said.bye) out.bye = true;
  out.seed = said.seed;
  if (said.rating) out.rating = static_cast<std::int64_t>(*said.rating + (*said.rating < 0 ? -0.5 : 0.5));
  out.via = via_of(said.entry);
  if (said.withdrawn) out.withdrawn = before.withdrawn;
  if (said.qualifier > 0) out.section = static_cast<std::int64_t>(said.qualifier);
  return out;
}

MatchEnd end_of(EndOfMatch end) {
  switch (end) {
    case EndOfMatch::walkover: return MatchEnd::walkover;
    case EndOfMatch::retired:
    case EndOfMatch::disqualified: return MatchEnd::retired;
    default: return MatchEnd::played;
  }
}

std::string draw_name(const DrawSheet& sheet) { return sheet.name.empty() ? "draw" : sheet.name; }

/// Results one by one, in the order of the rounds: what does not fit is said and left out, and the rest stands.
void understand(HeldDraw& held) {
  const auto trouble = [&](Fault fault) {
    fault.where = draw_name(held.sheet.now) + (fault.where.empty() ? "" : ", " + fault.where);
    held.troubles.push_back(std::move(fault));
  };
  std::vector<BracketResult> results;
  for (const auto& match : held.matches) {
    if (!match.now.winner || *match.now.winner < 1) continue;
    BracketResult result;
    result.round = static_cast<int>(*match.now.round);
    result.winner = static_cast<std::size_t>(*match.now.winner - 1);
    result.end = end_of(match.now.end);
    results.push_back(result);
  }
  // As a whole, which is nearly always right; and not by record(), for who withdrew later won what they won.
  auto draw = Draw::make(held.lines, results);
  if (!draw) {
    std::vector<BracketResult> fitting;
    draw = Draw::make(held.lines);
    if (!draw) return trouble(draw.error());
    for (const BracketResult& result : results) {
      fitting.push_back(result);
      if (auto next = Draw::make(held.lines, fitting)) {
        draw = std::move(next);
      } else {
        trouble(next.error());
        fitting.pop_back();
      }
    }
  }
  held.draw = std::move(*draw);
}

/// The match of a group's round in which a line plays.
std::optional<std::size_t> group_match(std::size_t players, int round, std::size_t line) {
  const auto rounds = circle_rounds(players);
  if (round < 1 || static_cast<std::size_t>(round) > rounds.size()) return std::nullopt;
  const auto& matches = rounds[static_cast<std::size_t>(round) - 1];
  for (std::size_t match = 0; match < matches.size(); ++match)
    if (matches[match].one == line || matches[match].other == line) return match;
  return std::nullopt;
}

/// The same of a group.
void understand_group(HeldDraw& held) {
  const auto rounds = circle_rounds(held.lines.size());
  std::vector<RoundRobin::Result> results;
  for (const auto& match : held.matches) {
    const auto round = static_cast<std::size_t>(*match.now.round);
    if (!match.now.winner || *match.now.winner < 1 || round > rounds.size() || *match.now.match < 1 ||
        static_cast<std::size_t>(*match.now.match) > rounds[round - 1].size())
      continue;
    results.push_back({rounds[round - 1][static_cast<std::size_t>(*match.now.match) - 1], static_cast<std::size_t>(*match.now.winner - 1), {}});
    auto group = RoundRobin::make(held.lines, results);
    if (group) continue;
    Fault fault = group.error();
    fault.where = draw_name(held.sheet.now) + (fault.where.empty() ? "" : ", " + fault.where);
    held.troubles.push_back(std::move(fault));
    results.pop_back();
  }
  auto group = RoundRobin::make(held.lines, results);
  if (group) held.group = std::move(*group);
  else held.troubles.push_back(group.error());
}

Outcome<const Draw*> understood(const HeldDraw& held) {
  if (held.draw) return &*held.draw;
  return fail(held.troubles.empty() ? Fault{FaultCode::not_found, "the draw is empty", held.sheet.now.name, "bring its lines in"} : held.troubles.front());
}

Outcome<> check_match(const HeldDraw& held, int round, std::size_t match) {
  if (round >= 1 && round <= held.rounds() && match < held.matches_in(round)) return {};
  return fail(FaultCode::bad_input, "there is no match " + std::to_string(match + 1) + " in round " + std::to_string(round), draw_name(held.sheet.now),
              "look at the draw again");
}

/// The match as it is kept, or a new one under its id.
Loaded<MatchRecord> match_record(const HeldDraw& held, int round, std::size_t match) {
  if (const auto* known = held.match(round, match)) return *known;
  const auto number = static_cast<std::int64_t>(match) + 1;
  Loaded<MatchRecord> out(part(held.event, kMatch, part_id(held.sheet.id(), "match", round, number)));
  out.now.draw = held.sheet.id();
  out.now.round = round;
  out.now.match = number;
  return out;
}

}  // namespace

int HeldDraw::rounds() const {
  if (sheet.now.kind == DrawKind::round_robin) return static_cast<int>(circle_rounds(lines.size()).size());
  int out = 0;
  std::size_t size = lines.size();
  if (sheet.now.kind == DrawKind::qualifying && sheet.now.sections && *sheet.now.sections > 0) size /= static_cast<std::size_t>(*sheet.now.sections);
  for (; size > 1; size /= 2) ++out;
  return out;
}

std::size_t HeldDraw::matches_in(int round) const {
  if (round < 1 || round > rounds()) return 0;
  if (sheet.now.kind == DrawKind::round_robin) return circle_rounds(lines.size())[static_cast<std::size_t>(round) - 1].size();
  return lines.size() >> round;
}

std::pair<std::optional<std::size_t>, std::optional<std::size_t>> HeldDraw::sides(int round, std::size_t match) const {
  if (match >= matches_in(round)) return {};
  if (sheet.now.kind == DrawKind::round_robin) {
    const GroupMatch one = circle_rounds(lines.size())[static_cast<std::size_t>(round) - 1][match];
    return {one.one, one.other};
  }
  if (draw) return draw->bracket().sides(round, match);
  return round == 1 ? std::pair(std::optional(2 * match), std::optional(2 * match + 1)) : std::pair<std::optional<std::size_t>, std::optional<std::size_t>>{};
}

std::optional<std::size_t> HeldDraw::winner(int round, std::size_t match) const {
  if (match >= matches_in(round)) return std::nullopt;
  if (draw) return draw->bracket().winner(round, match);
  if (!group) return std::nullopt;
  const auto [one, other] = sides(round, match);
  return group->winner(*one, *other);
}

const BracketLine& HeldDraw::line(std::size_t at) const {
  if (draw) return draw->bracket().lines()[at];
  return group ? group->players()[at] : lines[at];
}

const Loaded<MatchRecord>* HeldDraw::match(int round, std::size_t match) const {
  const auto found = std::find_if(matches.begin(), matches.end(), [&](const auto& one) {
    return one.now.round == round && one.now.match == static_cast<std::int64_t>(match) + 1;
  });
  return found == matches.end() ? nullptr : &*found;
}

std::vector<HeldDraw> event_draws(const Ledger& ledger, const BookId& event) {
  std::vector<HeldDraw> out;
  std::map<EntityId, std::size_t> numbers;
  for (EntityState& state : ledger.entities(event, kDraw)) {
    Loaded<DrawSheet> sheet(std::move(state));
    if (sheet.now.off.value_or(false) || !sheet.now.lines || *sheet.now.lines < 2 || *sheet.now.lines > 256) continue;
    numbers[sheet.id()] = out.size();
    HeldDraw held;
    held.event = event;
    held.lines.resize(static_cast<std::size_t>(*sheet.now.lines));
    held.sheet = std::move(sheet);
    out.push_back(std::move(held));
  }
  if (out.empty()) return out;
  for (EntityState& state : ledger.entities(event, kDrawLine)) {
    Loaded<DrawPlace> place(std::move(state));
    const auto at = numbers.find(place.now.draw);
    if (at == numbers.end() || !place.now.line || *place.now.line < 1) continue;
    HeldDraw& held = out[at->second];
    const auto line = static_cast<std::size_t>(*place.now.line - 1);
    if (line >= held.lines.size()) continue;
    held.lines[line] = line_of(place.now);
    held.places.push_back(std::move(place));
  }
  for (EntityState& state : ledger.entities(event, kMatch)) {
    Loaded<MatchRecord> match(std::move(state));
    const auto at = numbers.find(match.now.draw);
    if (at == numbers.end() || !match.now.round || !match.now.match || *match.now.round < 1 || *match.now.round > 8) continue;
    out[at->second].matches.push_back(std::move(match));
  }
  for (HeldDraw& held : out) {
    std::sort(held.places.begin(), held.places.end(), [](const auto& a, const auto& b) { return a.now.line < b.now.line; });
    std::sort(held.matches.begin(), held.matches.end(),
              [](const auto& a, const auto& b) { return std::pair(a.now.round, a.now.match) < std::pair(b.now.round, b.now.match); });
    if (held.sheet.now.kind == DrawKind::round_robin) understand_group(held);
    else understand(held);
  }
  return out;
}

Outcome<Draft> add_draw(const BookId& event, std::span<const HeldDraw> held, const NewDraw& draw, UnixMs at) {
  const std::string name(trimmed(draw.name));
  if (name.empty() || name.size() > kLongestName)
    return fail(FaultCode::bad_input, name.empty() ? "the draw needs a name" : "the name of the draw is too long", "name", "name it as the order of play does");
  for (const HeldDraw& other : held)
    if (search_key(other.sheet.now.name) == search_key(name))
      return fail(FaultCode::bad_input, "there is a draw of that name already", name, "take the other one away first, or give this one another name");
  if (draw.kind == DrawKind::qualifying) {
    if (draw.sections < 1) return fail(FaultCode::bad_input, "qualifying needs the number of those who come through", name, "say how many");
    if (auto checked = Qualifying::make(draw.lines, static_cast<std::size_t>(draw.sections)); !checked) return fail(checked.error());
  }
  if (draw.kind == DrawKind::round_robin) {
    if (auto checked = RoundRobin::make(draw.lines); !checked) return fail(checked.error());
  } else if (auto checked = Draw::make(draw.lines); !checked) {
    return fail(checked.error());
  }
  Draft out(event, kEventBook, kActDraw);
  DrawSheet sheet;
  sheet.name = name;
  sheet.kind = draw.kind;
  sheet.lines = static_cast<std::int64_t>(draw.lines.size());
  sheet.feeds = draw.feeds;
  sheet.at = at;
  if (draw.kind == DrawKind::qualifying) sheet.sections = draw.sections;
  const EntityId id = put_new(out, sheet, at).id;
  for (std::size_t line = 0; line < draw.lines.size(); ++line) {
    DrawPlace place = place_of(id, line, draw.lines[line]);
    if (draw.lines[line].withdrawn) place.withdrawn = at;
    put_changes(out, part(event, kDrawLine, part_id(id, "line", static_cast<std::int64_t>(line))), place);
  }
  return out;
}

Draft remove_draw(const HeldDraw& held) {
  Draft out(held.event, kEventBook, kActDraw);
  DrawSheet sheet = held.sheet.now;
  sheet.off = true;
  put_changes(out, held.sheet.seen, sheet);
  return out;
}

Outcome<Draft> note_winner(const HeldDraw& held, const MatchSaid& said) {
  const bool group = held.sheet.now.kind == DrawKind::round_robin;
  std::size_t match = said.round >= 1 && said.round <= 8 ? Bracket::match_of(said.round, said.winner) : held.lines.size();
  if (group) {
    if (!held.group) return fail(held.troubles.front());
    const auto played = group_match(held.lines.size(), said.round, said.winner);
    if (!played)
      return fail(FaultCode::bad_input, "nobody of that line plays in round " + std::to_string(said.round), draw_name(held.sheet.now), "look at the group again");
    match = *played;
    if (held.line(said.winner).withdrawn)
      return fail(FaultCode::bad_input, line_name(held.line(said.winner)) + " withdrew and wins nothing", draw_name(held.sheet.now), "name the other one");
    if (const auto known = held.winner(said.round, match); known && *known != said.winner)
      return fail(FaultCode::bad_input, "this match has another winner already: " + line_name(held.line(*known)), draw_name(held.sheet.now),
                  "take that result back first");
  }
  if (auto checked = check_match(held, said.round, match); !checked) return fail(checked.error());
  if (said.score.size() > kLongestWords) return fail(FaultCode::bad_input, "the score is too long", "score", "write it as 6-4 7-5");
  if (!group) {
    const auto draw = understood(held);
    if (!draw) return fail(draw.error());
    Draw next = **draw;
    BracketResult result;
    result.round = said.round;
    result.winner = said.winner;
    result.end = end_of(said.end);
    if (auto taken = next.record(result); !taken) return fail(taken.error());
  }
  Loaded<MatchRecord> before = match_record(held, said.round, match);
  MatchRecord wanted = before.now;
  wanted.winner = static_cast<std::int64_t>(said.winner) + 1;
  wanted.end = said.end;
  wanted.score = said.score;
  wanted.by = said.by;
  wanted.ended = said.at;
  Draft out(held.event, kEventBook, kActMatch);
  put_changes(out, before.seen, wanted);
  return out;
}

Outcome<Draft> take_back_winner(const HeldDraw& held, int round, std::size_t match) {
  if (auto checked = check_match(held, round, match); !checked) return fail(checked.error());
  if (held.sheet.now.kind != DrawKind::round_robin) {
    const auto draw = understood(held);
    if (!draw) return fail(draw.error());
    Draw next = **draw;
    if (auto taken = next.take_back(round, match); !taken) return fail(taken.error());
  }
  const auto* before = held.match(round, match);
  if (before == nullptr || before->now.winner.value_or(0) < 1) return fail(FaultCode::not_found, "this match has no result", draw_name(held.sheet.now), "look at the draw again");
  MatchRecord wanted = before->now;
  wanted.winner = 0;
  wanted.end = EndOfMatch::unsaid;
  wanted.score.clear();
  wanted.ended.reset();
  Draft out(held.event, kEventBook, kActMatch);
  put_changes(out, before->seen, wanted);
  return out;
}

namespace {

Draft with_line(const HeldDraw& held, std::size_t line, const BracketLine& said, std::optional<UnixMs> withdrawn) {
  const auto known = std::find_if(held.places.begin(), held.places.end(), [&](const auto& one) { return one.now.line == static_cast<std::int64_t>(line) + 1; });
  const EntityState seen = known != held.places.end() ? known->seen : part(held.event, kDrawLine, part_id(held.sheet.id(), "line", static_cast<std::int64_t>(line)));
  DrawPlace wanted = place_of(held.sheet.id(), line, said, known != held.places.end() ? known->now : DrawPlace{});
  if (withdrawn) wanted.withdrawn = withdrawn;
  Draft out(held.event, kEventBook, kActDraw);
  put_changes(out, seen, wanted);
  return out;
}

}  // namespace

Outcome<Draft> withdraw_line(const HeldDraw& held, std::size_t line, UnixMs at) {
  if (held.group) {
    if (line >= held.lines.size() || held.line(line).withdrawn)
      return fail(FaultCode::bad_input, "nobody is there who could withdraw", draw_name(held.sheet.now) + ", line " + std::to_string(line + 1), "look at the group again");
    BracketLine out = held.line(line);
    out.withdrawn = true;
    return with_line(held, line, out, at);
  }
  const auto draw = understood(held);
  if (!draw) return fail(draw.error());
  Draw next = **draw;
  if (auto done = next.withdraw(line); !done) return fail(done.error());
  return with_line(held, line, next.bracket().lines()[line], at);
}

Outcome<Draft> put_on_line(const HeldDraw& held, std::size_t line, const BracketLine& by) {
  if (held.sheet.now.kind == DrawKind::round_robin)
    return fail(FaultCode::bad_input, "nobody comes into a group that is played", draw_name(held.sheet.now), "take the group away and bring it in anew");
  const auto draw = understood(held);
  if (!draw) return fail(draw.error());
  Draw next = **draw;
  const bool free = line < held.lines.size() && held.lines[line].player.empty();
  if (auto done = free ? next.fill(line, by) : next.replace(line, by); !done) return fail(done.error());
  return with_line(held, line, next.bracket().lines()[line], std::nullopt);
}

Outcome<EntityId> match_id(const HeldDraw& held, int round, std::size_t match) {
  if (auto checked = check_match(held, round, match); !checked) return fail(checked.error());
  return part_id(held.sheet.id(), "match", round, static_cast<std::int64_t>(match) + 1);
}

std::optional<std::pair<int, std::size_t>> match_of_id(const HeldDraw& held, const EntityId& id) {
  for (int round = 1; round <= held.rounds(); ++round)
    for (std::size_t match = 0; match < held.matches_in(round); ++match)
      if (part_id(held.sheet.id(), "match", round, static_cast<std::int64_t>(match) + 1) == id) return std::pair(round, match);
  return std::nullopt;
}

Outcome<Draft> set_play(const HeldDraw& held, int round, std::size_t match, const PlaySaid& said) {
  if (auto checked = check_match(held, round, match); !checked) return fail(checked.error());
  if (!said.court && !said.not_before && !said.any_time && !said.after)
    return fail(FaultCode::bad_input, "nothing is said of the match", draw_name(held.sheet.now), "say its court, its time, or who won");
  if (said.court && said.court->size() > kLongestWords) return fail(FaultCode::bad_input, "the court's name is too long", "court", "shorten it");
  Loaded<MatchRecord> before = match_record(held, round, match);
  MatchRecord wanted = before.now;
  if (said.court) wanted.court = *said.court;
  if (said.not_before) wanted.not_before = said.not_before;
  if (said.any_time) wanted.not_before.reset();
  if (said.after) {
    if (*said.after && *said.after == part_id(held.sheet.id(), "match", round, static_cast<std::int64_t>(match) + 1))
      return fail(FaultCode::bad_input, "a match can't follow itself", draw_name(held.sheet.now), "name the one before it on the court");
    wanted.after = *said.after;
  }
  Draft out(held.event, kEventBook, kActMatch);
  put_changes(out, before.seen, wanted);
  return out;
}

}  // namespace weavelog
