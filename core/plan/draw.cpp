#include "core/plan/draw.h"

#include <algorithm>
#include <bit>
#include <set>

namespace weavelog {
namespace {

std::string place_of(const Bracket& bracket, std::size_t line) {
  std::string out = "line " + std::to_string(line + 1);
  if (line >= bracket.lines().size()) return out;
  const std::string name = line_name(bracket.lines()[line]);
  return name.empty() ? out : out + " (" + name + ")";
}

std::string match_place(int round, std::size_t match) { return "round " + std::to_string(round) + ", match " + std::to_string(match + 1); }

Outcome<> check_line(const Bracket& bracket, std::size_t line) {
  if (line >= bracket.lines().size())
    return fail(FaultCode::bad_input, "there is no such line in a draw of " + std::to_string(bracket.lines().size()), place_of(bracket, line),
                "correct the number");
  if (bracket.lines()[line].bye) return fail(FaultCode::bad_input, "a bye stands here", place_of(bracket, line), "choose the line of a player");
  return {};
}

}  // namespace

Outcome<Qualifying> Qualifying::make(const std::vector<BracketLine>& lines, std::size_t qualifiers, std::span<const BracketResult> results) {
  const std::size_t size = qualifiers == 0 ? 0 : lines.size() / qualifiers;
  if (qualifiers == 0 || lines.size() % qualifiers != 0 || size < 2 || !std::has_single_bit(size))
    return fail(FaultCode::bad_input,
                std::to_string(lines.size()) + " lines can't be " + std::to_string(qualifiers) + " sections of 2, 4, 8, ... lines", {},
                "fill them up with byes, or correct the number of qualifiers");
  std::vector<std::vector<BracketResult>> sorted(qualifiers);
  for (BracketResult result : results) {
    if (result.winner >= lines.size())
      return fail(FaultCode::bad_input, "there is no line " + std::to_string(result.winner + 1) + " in this qualifying", result.place,
                  "correct the result");
    const std::size_t section = result.winner / size;
    result.winner %= size;
    sorted[section].push_back(std::move(result));
  }
  Qualifying out;
  std::set<std::string> people;
  for (std::size_t section = 0; section < qualifiers; ++section) {
    const auto from = lines.begin() + static_cast<std::ptrdiff_t>(section * size);
    auto bracket = Bracket::make({from, from + static_cast<std::ptrdiff_t>(size)}, sorted[section]);
    const std::string place = "qualifying, section " + std::to_string(section + 1);
    if (!bracket) {
      Fault fault = bracket.error();
      fault.where = place + (fault.where.empty() ? "" : ", " + fault.where);
      return fail(std::move(fault));
    }
    for (const BracketLine& line : bracket->lines())
      for (const std::string& one : people_of(line))
        if (!people.insert(one).second)
          return fail(FaultCode::bad_input, one + " is in qualifying twice", place, "leave one of the two places to somebody else");
    out.sections_.push_back(std::move(*bracket));
  }
  return out;
}

std::optional<BracketLine> Qualifying::qualifier(std::size_t section) const {
  const Bracket& bracket = sections_.at(section);
  const auto winner = bracket.winner(bracket.rounds(), 0);
  if (!winner || bracket.lines()[*winner].withdrawn || bracket.lines()[*winner].player.empty()) return std::nullopt;
  BracketLine out = bracket.lines()[*winner];
  out.seed.reset();  // of qualifying
  out.entry = DrawEntry::qualifier;
  return out;
}

std::vector<BracketLine> Qualifying::lucky_losers() const {
  std::vector<BracketLine> out;
  for (const Bracket& bracket : sections_) {
    const auto winner = bracket.winner(bracket.rounds(), 0);
    const auto [upper, lower] = bracket.sides(bracket.rounds(), 0);
    if (!winner || !upper || !lower) continue;
    BracketLine loser = bracket.lines()[*winner == *upper ? *lower : *upper];
    if (loser.bye || loser.withdrawn || loser.player.empty()) continue;
    loser.seed.reset();
    loser.entry = DrawEntry::lucky_loser;
    out.push_back(std::move(loser));
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const BracketLine& a, const BracketLine& b) { return a.rating.value_or(-1e9) > b.rating.value_or(-1e9); });
  return out;
}

Outcome<Draw> Draw::make(std::vector<BracketLine> lines, std::vector<BracketResult> results) {
  auto bracket = Bracket::make(std::move(lines), results);
  if (!bracket) return fail(bracket.error());
  Draw out(std::move(*bracket));
  out.results_ = std::move(results);
  return out;
}

Outcome<> Draw::become(std::vector<BracketLine> lines, std::vector<BracketResult> results) {
  auto next = make(std::move(lines), std::move(results));
  if (!next) return fail(next.error());
  *this = std::move(*next);
  return {};
}

Outcome<> Draw::withdraw(std::size_t line) {
  if (auto checked = check_line(bracket_, line); !checked) return checked;
  const BracketLine& one = bracket_.lines()[line];
  const std::string place = place_of(bracket_, line);
  if (one.player.empty()) return fail(FaultCode::bad_input, "nobody is known here yet", place, "wait for qualifying");
  if (one.withdrawn) return fail(FaultCode::bad_input, "this player has withdrawn already", place, "nothing more is to be done");
  for (int round = 1; round <= bracket_.rounds(); ++round) {
    const auto winner = bracket_.winner(round, Bracket::match_of(round, line));
    if (winner && *winner != line) return fail(FaultCode::bad_input, "this player is out already", place, "nothing more is to be done");
  }
  std::vector<BracketLine> lines(bracket_.lines().begin(), bracket_.lines().end());
  lines[line].withdrawn = true;
  return become(std::move(lines), results_);
}

Outcome<> Draw::replace(std::size_t line, BracketLine by) {
  if (auto checked = check_line(bracket_, line); !checked) return checked;
  const std::string place = place_of(bracket_, line);
  if (!bracket_.lines()[line].withdrawn) return fail(FaultCode::bad_input, "the player here has not withdrawn", place, "let them withdraw first");
  if (by.player.empty() || by.bye) return fail(FaultCode::bad_input, "nobody is named for this place", place, "name a lucky loser or an alternate");
  for (const BracketResult& result : results_)
    if (Bracket::match_of(result.round, result.winner) == Bracket::match_of(result.round, line))
      return fail(FaultCode::bad_input, "a match of this line has a result already", place,
                  "only before the first match somebody else can take a place");
  std::vector<BracketLine> lines(bracket_.lines().begin(), bracket_.lines().end());
  by.seed.reset();
  by.withdrawn = false;
  lines[line] = std::move(by);
  return become(std::move(lines), results_);
}

Outcome<> Draw::fill(std::size_t line, BracketLine by) {
  if (auto checked = check_line(bracket_, line); !checked) return checked;
  if (!bracket_.lines()[line].player.empty())
    return fail(FaultCode::bad_input, "somebody stands here already", place_of(bracket_, line), "choose a place that waits for a qualifier");
  if (by.player.empty() || by.bye)
    return fail(FaultCode::bad_input, "nobody is named for this place", place_of(bracket_, line), "name who qualified");
  std::vector<BracketLine> lines(bracket_.lines().begin(), bracket_.lines().end());
  lines[line] = std::move(by);
  return become(std::move(lines), results_);
}

Outcome<> Draw::record(const BracketResult& result) {
  if (result.winner < bracket_.lines().size()) {
    const BracketLine& line = bracket_.lines()[result.winner];
    if (line.withdrawn)
      return fail(FaultCode::bad_input, "who withdrew wins no match", place_of(bracket_, result.winner),
                  "name the other player, or take the withdrawal back");
    if (!line.bye && line.player.empty())
      return fail(FaultCode::bad_input, "nobody is known here yet", place_of(bracket_, result.winner), "fill the place first");
  }
  auto results = results_;
  results.push_back(result);
  return become({bracket_.lines().begin(), bracket_.lines().end()}, std::move(results));
}

Outcome<> Draw::take_back(int round, std::size_t match) {
  auto results = results_;
  const auto gone =
      std::erase_if(results, [&](const BracketResult& one) { return one.round == round && Bracket::match_of(one.round, one.winner) == match; });
  if (gone == 0) return fail(FaultCode::bad_input, "this match has no result", match_place(round, match), "choose one that has");
  for (const BracketResult& one : results)
    if (one.round > round && Bracket::match_of(one.round, one.winner) == match >> (one.round - round))
      return fail(FaultCode::bad_input, "a later result is built on this one: " + match_place(one.round, Bracket::match_of(one.round, one.winner)),
                  match_place(round, match), "take that one back first");
  return become({bracket_.lines().begin(), bracket_.lines().end()}, std::move(results));
}

Outcome<std::vector<BracketLine>> fed_by(std::vector<BracketLine> lines, const Qualifying& qualifying) {
  std::set<std::size_t> used;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    if (lines[line].qualifier == 0) continue;
    const std::size_t section = lines[line].qualifier - 1;
    const std::string place = "line " + std::to_string(line + 1) + ", qualifier " + std::to_string(section + 1);
    if (section >= qualifying.sections().size())
      return fail(FaultCode::bad_input, "qualifying has " + std::to_string(qualifying.sections().size()) + " sections only", place,
                  "correct the number");
    if (!used.insert(section).second) return fail(FaultCode::bad_input, "this qualifier has two places", place, "give one of them another number");
    const auto known = qualifying.qualifier(section);
    if (lines[line].bye || (!lines[line].player.empty() && !(known && known->player == lines[line].player)))
      return fail(FaultCode::bad_input, "somebody else stands here", place, "leave the player empty, or correct the number");
    if (known) {
      const bool withdrawn = lines[line].withdrawn;
      lines[line] = *known;
      lines[line].withdrawn = withdrawn;
      lines[line].qualifier = section + 1;
      continue;
    }
    lines[line].entry = DrawEntry::qualifier;
    const Bracket& bracket = qualifying.sections()[section];
    const auto chance = chances_by_rating(bracket);
    if (!chance) continue;
    const MeetingOdds odds(bracket, *chance);
    double rating = 0, rated = 0;
    for (std::size_t at = 0; at < bracket.lines().size(); ++at)
      if (const auto& one = bracket.lines()[at]; one.rating) {
        const double comes = odds.reaches(at, bracket.rounds() + 1);
        rating += comes * *one.rating, rated += comes;
      }
    if (rated > 0) lines[line].rating = rating / rated;
  }
  return lines;
}

}  // namespace weavelog
