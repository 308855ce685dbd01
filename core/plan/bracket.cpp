#include "core/plan/bracket.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

#include "core/base/text.h"

namespace weavelog {
namespace {

constexpr std::size_t kMostLines = 256;

std::string name_of(std::span<const BracketLine> lines, std::size_t line) {
  std::string out = "line " + std::to_string(line + 1);
  if (lines[line].bye) return out + " (bye)";
  return lines[line].player.empty() ? out : out + " (" + lines[line].player + ")";
}

Outcome<> check_lines(std::span<const BracketLine> lines) {
  if (lines.size() < 2 || lines.size() > kMostLines || (lines.size() & (lines.size() - 1)) != 0)
    return fail(FaultCode::bad_input, "a draw has 2, 4, 8, ... 256 lines, and this one has " + std::to_string(lines.size()), {},
                "fill it up with byes");
  std::set<std::string> players;
  std::set<std::int64_t> seeds;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    const BracketLine& one = lines[line];
    if (!one.bye && !one.player.empty() && !players.insert(one.player).second)
      return fail(FaultCode::bad_input, "this player is in the draw twice", name_of(lines, line), "leave one of the two places to somebody else");
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

int Bracket::meeting_round(std::size_t one, std::size_t other) {
  int round = 0;
  for (; one != other; ++round) one >>= 1, other >>= 1;
  return round;
}

std::optional<std::size_t> Bracket::winner(int round, std::size_t match) const {
  return winners_.at(static_cast<std::size_t>(round) - 1).at(match);
}

Outcome<Bracket> Bracket::make(std::vector<BracketLine> lines, std::span<const BracketResult> results) {
  if (auto checked = check_lines(lines); !checked) return fail(checked.error());
  Bracket out;
  out.lines_ = std::move(lines);
  for (std::size_t size = out.lines_.size(); size > 1; size /= 2) {
    out.winners_.emplace_back(size / 2);
    ++out.rounds_;
  }
  for (std::size_t line = 0; line < out.lines_.size(); ++line)
    if (out.lines_[line].bye) out.winners_[0][line / 2] = line ^ 1;

  // In the order of the rounds, however they were written down.
  std::vector<BracketResult> sorted(results.begin(), results.end());
  std::stable_sort(sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.round < b.round; });
  for (const BracketResult& result : sorted) {
    if (result.round < 1 || result.round > out.rounds_)
      return fail(FaultCode::bad_input, "there is no round " + std::to_string(result.round) + " in a draw of " + std::to_string(out.lines_.size()), {},
                  "rounds count from 1 to " + std::to_string(out.rounds_));
    if (result.winner >= out.lines_.size())
      return fail(FaultCode::bad_input, "there is no line " + std::to_string(result.winner + 1) + " in a draw of " + std::to_string(out.lines_.size()), {},
                  "correct the result");
    const std::string place = "round " + std::to_string(result.round) + ", " + name_of(out.lines_, result.winner);
    if (out.lines_[result.winner].bye) return fail(FaultCode::bad_input, "a bye wins no match", place, "name the player who went on");
    const std::size_t match = match_of(result.round, result.winner);
    if (result.round > 1) {
      for (const std::size_t feeder : {2 * match, 2 * match + 1}) {
        const auto came = out.winner(result.round - 1, feeder);
        if (!came)
          return fail(FaultCode::bad_input, "a match that leads to this one is not decided yet", place,
                      "enter the result of round " + std::to_string(result.round - 1) + ", match " + std::to_string(feeder + 1) + " first");
      }
      if (out.winner(result.round - 1, result.winner >> (result.round - 1)) != result.winner)
        return fail(FaultCode::bad_input, "this player lost in an earlier round", place, "correct one of the two results");
    }
    auto& winner = out.winners_[static_cast<std::size_t>(result.round) - 1][match];
    if (winner && *winner != result.winner)
      return fail(FaultCode::bad_input, "this match has another winner already: " + name_of(out.lines_, *winner), place, "correct one of the two results");
    winner = result.winner;
  }
  return out;
}

std::string round_name(int rounds, int round) {
  switch (rounds - round) {
    case 0: return "final";
    case 1: return "semi-final";
    case 2: return "quarter-final";
    default: return "round of " + std::to_string(std::size_t{1} << (rounds - round + 1));
  }
}

namespace {

/// Where a column stands in the header, by its name; npos if it is not there.
std::size_t column(const CsvTable& table, std::string_view name) {
  for (std::size_t i = 0; i < table.header.size(); ++i)
    if (search_key(table.header[i]) == name) return i;
  return std::string::npos;
}

template <class Number>
std::optional<Number> number_in(std::string_view text) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

Outcome<CsvTable> table_with(std::string_view bytes, std::string_view source, std::initializer_list<const char*> needed) {
  auto table = read_csv(bytes, {}, source);
  if (!table) return fail(table.error());
  if (!table->faults.empty()) return fail(table->faults.front());
  for (const char* name : needed)
    if (column(*table, name) == std::string::npos)
      return fail(FaultCode::bad_input, std::string("the column ") + name + " is missing", csv_place(source, 1), "name it in the first line of the table");
  return table;
}

}  // namespace

Outcome<std::vector<BracketLine>> read_bracket(std::string_view bytes, std::string_view source) {
  const auto table = table_with(bytes, source, {"line", "player"});
  if (!table) return fail(table.error());
  const std::size_t at = column(*table, "line"), player = column(*table, "player"), seed = column(*table, "seed"), rating = column(*table, "rating");
  const std::size_t size = table->rows.size();
  if (size > kMostLines)
    return fail(FaultCode::bad_input, "a draw has at most 256 lines, and this table has " + std::to_string(size), std::string(source), "give one draw a file");
  std::vector<BracketLine> out(size);
  std::vector<bool> seen(size);
  for (const CsvRow& row : table->rows) {
    const auto line = number_in<std::size_t>(row.fields[at]);
    if (!line || *line < 1 || *line > size)
      return fail(FaultCode::bad_input, "'" + row.fields[at] + "' is no line of a draw of " + std::to_string(size), csv_place(source, row.line, at + 1, "line"),
                  "number the lines from 1, each once");
    if (seen[*line - 1])
      return fail(FaultCode::bad_input, "line " + std::to_string(*line) + " comes twice", csv_place(source, row.line, at + 1, "line"),
                  "number the lines from 1, each once");
    seen[*line - 1] = true;
    BracketLine& one = out[*line - 1];
    one.player = row.fields[player];
    one.bye = search_key(one.player) == "bye";
    if (one.bye) one.player.clear();
    if (seed != std::string::npos && !row.fields[seed].empty()) {
      one.seed = number_in<std::int64_t>(row.fields[seed]);
      if (!one.seed)
        return fail(FaultCode::bad_input, "'" + row.fields[seed] + "' is no seed", csv_place(source, row.line, seed + 1, "seed"), "write a whole number, or nothing");
    }
    if (rating != std::string::npos && !row.fields[rating].empty()) {
      one.rating = number_in<double>(row.fields[rating]);
      if (!one.rating || !std::isfinite(*one.rating))
        return fail(FaultCode::bad_input, "'" + row.fields[rating] + "' is no rating", csv_place(source, row.line, rating + 1, "rating"),
                    "write a number such as 1850, or nothing");
    }
  }
  return out;
}

Outcome<std::vector<BracketResult>> read_results(std::string_view bytes, std::span<const BracketLine> lines, std::string_view source) {
  const auto table = table_with(bytes, source, {"round", "winner"});
  if (!table) return fail(table.error());
  const std::size_t round = column(*table, "round"), winner = column(*table, "winner");
  std::vector<BracketResult> out;
  for (const CsvRow& row : table->rows) {
    BracketResult result;
    const auto number = number_in<int>(row.fields[round]);
    if (!number)
      return fail(FaultCode::bad_input, "'" + row.fields[round] + "' is no round", csv_place(source, row.line, round + 1, "round"), "count rounds from 1");
    result.round = *number;
    const std::string& who = row.fields[winner];
    if (const auto line = number_in<std::size_t>(who); line && *line >= 1 && *line <= lines.size()) {
      result.winner = *line - 1;
    } else {
      const auto found = std::find_if(lines.begin(), lines.end(), [&](const BracketLine& one) { return !one.bye && !who.empty() && one.player == who; });
      if (found == lines.end())
        return fail(FaultCode::bad_input, "'" + who + "' is no player and no line of this draw", csv_place(source, row.line, winner + 1, "winner"),
                    "write the name as in the draw, or the line's number");
      result.winner = static_cast<std::size_t>(found - lines.begin());
    }
    out.push_back(result);
  }
  return out;
}

}  // namespace weavelog
