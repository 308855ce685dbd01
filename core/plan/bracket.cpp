#include "core/plan/bracket.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/text.h"
#include "core/plan/plan_table.h"

namespace weavelog {
namespace {

constexpr std::size_t kMostLines = 256;

std::string name_of(std::span<const BracketLine> lines, std::size_t line) {
  std::string out = "line " + std::to_string(line + 1);
  const std::string name = line_name(lines[line]);
  return name.empty() ? out : out + " (" + name + ")";
}

Outcome<> check_lines(std::span<const BracketLine> lines) {
  if (lines.size() < 2 || lines.size() > kMostLines || (lines.size() & (lines.size() - 1)) != 0)
    return fail(FaultCode::bad_input, "a draw has 2, 4, 8, ... 256 lines, and this one has " + std::to_string(lines.size()), {},
                "fill it up with byes");
  std::set<std::string> players;
  std::set<std::int64_t> seeds;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    const BracketLine& one = lines[line];
    for (const std::string& player : people_of(one))
      if (!players.insert(search_key(player)).second)
        return fail(FaultCode::bad_input, player + " is in the draw twice", name_of(lines, line), "leave one of the two places to somebody else");
    if (one.seed && *one.seed < 1) return fail(FaultCode::bad_input, "a seed is 1 or more", name_of(lines, line), "correct it, or leave it out");
    if (one.seed && !seeds.insert(*one.seed).second)
      return fail(FaultCode::bad_input, "two players have seed " + std::to_string(*one.seed), name_of(lines, line), "give one of them another");
    if (one.rating && !std::isfinite(*one.rating))
      return fail(FaultCode::bad_input, "this rating is no number", name_of(lines, line), "correct it, or leave it out");
    if (line % 2 == 1 && one.bye && lines[line - 1].bye)
      return fail(FaultCode::bad_input, "two byes meet", name_of(lines, line), "put them beside players");
  }
  return {};
}

}  // namespace

std::string line_name(const BracketLine& line) {
  if (line.bye) return "bye";
  return line.partner.empty() ? line.player : line.player + " / " + line.partner;
}

std::vector<std::string> people_of(const BracketLine& line) {
  std::vector<std::string> out;
  if (line.bye) return out;
  for (const std::string& one : {line.player, line.partner})
    if (!one.empty()) out.push_back(one);
  return out;
}

int Bracket::meeting_round(std::size_t one, std::size_t other) {
  int round = 0;
  for (; one != other; ++round) one >>= 1, other >>= 1;
  return round;
}

std::optional<std::size_t> Bracket::winner(int round, std::size_t match) const {
  return winners_.at(static_cast<std::size_t>(round) - 1).at(match);
}

std::pair<std::optional<std::size_t>, std::optional<std::size_t>> Bracket::sides(int round, std::size_t match) const {
  if (round == 1) return {2 * match, 2 * match + 1};
  return {winner(round - 1, 2 * match), winner(round - 1, 2 * match + 1)};
}

bool Bracket::played(int round, std::size_t match) const { return played_.at(static_cast<std::size_t>(round) - 1).at(match); }

Outcome<Bracket> Bracket::make(std::vector<BracketLine> lines, std::span<const BracketResult> results) {
  if (auto checked = check_lines(lines); !checked) return fail(checked.error());
  Bracket out;
  out.lines_ = std::move(lines);
  for (std::size_t size = out.lines_.size(); size > 1; size /= 2) {
    out.winners_.emplace_back(size / 2);
    out.played_.emplace_back(size / 2);
    ++out.rounds_;
  }
  for (std::size_t line = 0; line < out.lines_.size(); ++line)
    if (out.lines_[line].bye) out.winners_[0][line / 2] = line ^ 1;

  // In the order of the rounds, however they were written down; walkovers of a round before the next, because that is built on them.
  std::vector<BracketResult> sorted(results.begin(), results.end());
  std::stable_sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.round < b.round; });
  int settled = 0;
  for (const BracketResult& result : sorted) {
    while (settled + 1 < std::min(result.round, out.rounds_ + 1)) out.walk_over(++settled);
    if (auto taken = out.take(result); !taken) return fail(taken.error());
  }
  while (settled < out.rounds_) out.walk_over(++settled);
  return out;
}

Outcome<> Bracket::take(const BracketResult& result) {
  const std::string size = std::to_string(lines_.size());
  if (result.round < 1 || result.round > rounds_)
    return fail(FaultCode::bad_input, "there is no round " + std::to_string(result.round) + " in a draw of " + size, result.place,
                "rounds count from 1 to " + std::to_string(rounds_));
  if (result.winner >= lines_.size())
    return fail(FaultCode::bad_input, "there is no line " + std::to_string(result.winner + 1) + " in a draw of " + size, result.place,
                "correct the result");
  const std::string place =
      (result.place.empty() ? "" : result.place + ", ") + "round " + std::to_string(result.round) + ", " + name_of(lines_, result.winner);
  if (lines_[result.winner].bye) return fail(FaultCode::bad_input, "a bye wins no match", place, "name the player who went on");
  const std::size_t match = match_of(result.round, result.winner);
  if (result.round > 1) {
    for (const std::size_t feeder : {2 * match, 2 * match + 1})
      if (!winner(result.round - 1, feeder))
        return fail(FaultCode::bad_input, "a match that leads to this one is not decided yet", place,
                    "enter the result of round " + std::to_string(result.round - 1) + ", match " + std::to_string(feeder + 1) + " first");
    if (winner(result.round - 1, result.winner >> (result.round - 1)) != result.winner)
      return fail(FaultCode::bad_input, "this player lost in an earlier round", place, "correct one of the two results");
  }
  auto& known = winners_[static_cast<std::size_t>(result.round) - 1][match];
  if (known && *known != result.winner)
    return fail(FaultCode::bad_input, "this match has another winner already: " + name_of(lines_, *known), place, "correct one of the two results");
  if (!known) played_[static_cast<std::size_t>(result.round) - 1][match] = result.end != MatchEnd::walkover;
  known = result.winner;
  return {};
}

void Bracket::walk_over(int round) {
  auto& winners = winners_[static_cast<std::size_t>(round) - 1];
  for (std::size_t match = 0; match < winners.size(); ++match) {
    const auto [upper, lower] = sides(round, match);
    if (winners[match] || !upper || !lower) continue;
    // Nobody goes on by a walkover before it is known who that is.
    const auto someone = [&](std::size_t line) { return lines_[line].withdrawn || !lines_[line].player.empty(); };
    if (lines_[*upper].withdrawn && someone(*lower)) winners[match] = lines_[*lower].withdrawn ? *upper : *lower;
    else if (lines_[*lower].withdrawn && someone(*upper)) winners[match] = *upper;
  }
}

namespace {

Outcome<DrawEntry> entry_in(const PlanTable& table, const CsvRow& row) {
  const std::string key = search_key(table.cell(row, "entry"));
  if (key.empty() || key == "da" || key == "direct" || key == "direct acceptance") return DrawEntry::direct;
  if (key == "wc" || key == "wild card" || key == "wildcard") return DrawEntry::wild_card;
  if (key == "q" || key == "qualifier") return DrawEntry::qualifier;
  if (key == "ll" || key == "lucky loser") return DrawEntry::lucky_loser;
  if (key == "alt" || key == "alternate") return DrawEntry::alternate;
  return table.wrong(row, "entry", "'" + table.cell(row, "entry") + "' is no way into a draw", "write WC, Q, LL, ALT, or nothing");
}

Outcome<bool> yes_in(const PlanTable& table, const CsvRow& row, std::string_view column) {
  const std::string key = search_key(table.cell(row, column));
  if (key.empty() || key == "no") return false;
  if (key == "yes") return true;
  return table.wrong(row, column, "'" + table.cell(row, column) + "' is neither yes nor no", "write yes, no, or nothing");
}

Outcome<BracketLine> line_in(const PlanTable& table, const CsvRow& row, std::string player) {
  BracketLine out;
  out.player = std::move(player);
  out.partner = table.cell(row, "partner");
  out.bye = search_key(out.player) == "bye";
  if (out.bye) out.player.clear();
  if (!out.partner.empty() && out.player.empty())
    return table.wrong(row, "partner", "a partner of nobody", "write the first of the pair under player");
  if (const std::string text = table.cell(row, "seed"); !text.empty()) {
    out.seed = PlanTable::number<std::int64_t>(text);
    if (!out.seed) return table.wrong(row, "seed", "'" + text + "' is no seed", "write a whole number, or nothing");
  }
  if (const std::string text = table.cell(row, "rating"); !text.empty()) {
    out.rating = PlanTable::number<double>(text);
    if (!out.rating) return table.wrong(row, "rating", "'" + text + "' is no rating", "write a number such as 1850, or nothing");
  }
  const auto entry = entry_in(table, row);
  if (!entry) return fail(entry.error());
  out.entry = *entry;
  const auto withdrawn = yes_in(table, row, "withdrawn");
  if (!withdrawn) return fail(withdrawn.error());
  out.withdrawn = *withdrawn;
  if (const std::string text = table.cell(row, "qualifier"); !text.empty()) {
    const auto section = PlanTable::number<std::size_t>(text);
    if (!section || *section < 1 || *section > kMostLines)
      return table.wrong(row, "qualifier", "'" + text + "' is no section of qualifying", "count sections from 1, or write nothing");
    out.qualifier = *section;
  }
  return out;
}

}  // namespace

Outcome<std::vector<BracketLine>> read_bracket(std::string_view bytes, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"line", "player"});
  if (!table) return fail(table.error());
  const std::size_t size = table->rows().size();
  if (size > kMostLines)
    return fail(FaultCode::bad_input, "a draw has at most 256 lines, and this table has " + std::to_string(size), std::string(source),
                "give one draw a file");
  std::vector<BracketLine> out(size);
  std::vector<bool> seen(size);
  for (const CsvRow& row : table->rows()) {
    const std::string text = table->cell(row, "line");
    const auto line = PlanTable::number<std::size_t>(text);
    if (!line || *line < 1 || *line > size)
      return table->wrong(row, "line", "'" + text + "' is no line of a draw of " + std::to_string(size), "number the lines from 1, each once");
    if (seen[*line - 1]) return table->wrong(row, "line", "line " + std::to_string(*line) + " comes twice", "number the lines from 1, each once");
    seen[*line - 1] = true;
    auto one = line_in(*table, row, table->cell(row, "player"));
    if (!one) return fail(one.error());
    out[*line - 1] = std::move(*one);
  }
  return out;
}

namespace {

/// Draws that an entry list tells of, each once, as it writes them first.
std::vector<std::string> draws_in(const PlanTable& table) {
  std::vector<std::string> out;
  for (const CsvRow& row : table.rows()) {
    const std::string name = table.cell(row, "draw");
    if (!name.empty() && std::none_of(out.begin(), out.end(), [&](const std::string& known) { return search_key(known) == search_key(name); })) out.push_back(name);
  }
  return out;
}

}  // namespace

Outcome<std::vector<BracketLine>> read_entries(std::string_view bytes, std::string_view source, std::string_view draw) {
  auto table = PlanTable::read(bytes, source, {});
  const bool list = table && !table->has("player") && table->has("family_name");
  if (table && !list) table = PlanTable::read(bytes, source, {"player"});
  if (!table) return fail(table.error());
  const auto draws = list ? draws_in(*table) : std::vector<std::string>();
  std::string names;
  for (const std::string& name : draws) names += (names.empty() ? "" : ", ") + name;
  if (draw.empty() && draws.size() > 1)
    return fail(FaultCode::bad_input, "the list has " + std::to_string(draws.size()) + " draws: " + names, std::string(source), "say which of them is meant");
  if (!draw.empty() && std::none_of(draws.begin(), draws.end(), [&](const std::string& name) { return search_key(name) == search_key(draw); }))
    return fail(FaultCode::not_found, "the table has no draw \"" + shortened(draw, 40) + "\"", std::string(source),
                draws.empty() ? "leave it out: the table tells of no draws" : "choose among " + names);
  std::vector<BracketLine> out;
  for (const CsvRow& row : table->rows()) {
    if (!draw.empty() && search_key(table->cell(row, "draw")) != search_key(draw)) continue;
    if (out.size() == kMostLines)
      return fail(FaultCode::bad_input, "a draw has at most 256 entries, and this table has " + std::to_string(table->rows().size()),
                  std::string(source), "give one draw a file");
    std::string player = table->cell(row, "player");
    if (list) {
      player = table->cell(row, "family_name");
      if (player.empty()) return table->wrong(row, "family_name", "nobody is named", "write a family name, or take the row out");
      if (const std::string given = table->cell(row, "given_name"); !given.empty()) player += " " + given;
    }
    auto one = line_in(*table, row, std::move(player));
    if (!one) return fail(one.error());
    out.push_back(std::move(*one));
  }
  return out;
}

Outcome<std::vector<BracketResult>> read_results(std::string_view bytes, std::span<const BracketLine> lines, std::string_view source) {
  const auto table = PlanTable::read(bytes, source, {"round", "winner"});
  if (!table) return fail(table.error());
  std::vector<BracketResult> out;
  for (const CsvRow& row : table->rows()) {
    BracketResult result;
    const auto number = PlanTable::number<int>(table->cell(row, "round"));
    if (!number) return table->wrong(row, "round", "'" + table->cell(row, "round") + "' is no round", "count rounds from 1");
    result.round = *number;
    const std::string who = table->cell(row, "winner");
    if (const auto line = PlanTable::number<std::size_t>(who); line && *line >= 1 && *line <= lines.size()) {
      result.winner = *line - 1;
    } else {
      const std::string key = search_key(who);
      const auto found = std::find_if(lines.begin(), lines.end(), [&](const BracketLine& one) {
        return !one.bye && !key.empty() &&
               (search_key(one.player) == key || search_key(line_name(one)) == key || (!one.partner.empty() && search_key(one.partner) == key));
      });
      if (found == lines.end())
        return table->wrong(row, "winner", "'" + who + "' is no player and no line of this draw",
                            "write the name as in the draw, or the line's number");
      result.winner = static_cast<std::size_t>(found - lines.begin());
    }
    result.place = table->place(row);
    const std::string end = search_key(table->cell(row, "end"));
    if (end == "walkover") result.end = MatchEnd::walkover;
    else if (end == "retired") result.end = MatchEnd::retired;
    else if (!end.empty() && end != "played")
      return table->wrong(row, "end", "'" + table->cell(row, "end") + "' is no end of a match", "write played, retired, walkover, or nothing");
    out.push_back(result);
  }
  return out;
}

}  // namespace weavelog
