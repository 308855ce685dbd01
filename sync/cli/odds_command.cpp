// plan odds: who gets how far, and who meets whom.

#include <algorithm>
#include <cstdio>

#include "core/base/text.h"
#include "core/plan/plan_words.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {
namespace {

struct OddsArguments {
  DrawFiles files;
  std::string by, player;
};

std::string wide_percent(double part) {
  char text[32];
  std::snprintf(text, sizeof text, "%6.1f%%", 100 * part);
  return text;
}

std::string wide_decimals(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%6.2f", value);
  return text;
}

/// The name, or what is there instead of one.
std::string shown(const BracketLine& line) {
  const std::string name = line_name(line);
  return name.empty() ? "(not known yet)" : name;
}

Outcome<std::size_t> line_of(const Bracket& bracket, const std::string& wanted) {
  const auto lines = bracket.lines();
  const std::string key = search_key(wanted);
  std::vector<std::size_t> exact, parts;
  for (std::size_t line = 0; line < lines.size(); ++line) {
    if (lines[line].player.empty()) continue;
    const std::string name = search_key(line_name(lines[line]));
    if (name == key || wanted == std::to_string(line + 1)) exact.push_back(line);
    if (!key.empty() && name.find(key) != std::string::npos) parts.push_back(line);
  }
  const auto& meant = exact.empty() ? parts : exact;
  if (meant.empty())
    return fail(FaultCode::not_found, "no such player in this draw", "\"" + shortened(wanted, 60) + "\"",
                "write the name as in the draw, or the line's number");
  if (meant.size() > 1)
    return fail(FaultCode::bad_input, std::to_string(meant.size()) + " players of this draw are meant", "\"" + shortened(wanted, 60) + "\"",
                "write the whole name, or the line's number");
  return meant.front();
}

json::object line_json(const Bracket& bracket, const MeetingOdds& odds, std::size_t line) {
  const BracketLine& one = bracket.lines()[line];
  json::object out{{"line", line + 1}, {"player", one.player}};
  if (!one.partner.empty()) out["partner"] = one.partner;
  if (one.withdrawn) out["withdrawn"] = true;
  if (one.seed) out["seed"] = *one.seed;
  if (one.rating) out["rating"] = *one.rating;
  json::array reaches;
  for (int round = 1; round <= bracket.rounds(); ++round) reaches.push_back(odds.reaches(line, round));
  out["reaches"] = std::move(reaches);
  out["wins"] = odds.reaches(line, bracket.rounds() + 1);
  out["matches_left"] = odds.matches_left(line);
  return out;
}

struct Opponent {
  std::size_t line;
  double meets;
};

/// Whom a line may still meet, the likeliest first.
std::vector<Opponent> opponents(const Bracket& bracket, const MeetingOdds& odds, std::size_t line) {
  std::vector<Opponent> out;
  for (std::size_t other = 0; other < bracket.lines().size(); ++other)
    if (const double meets = odds.meet(line, other); meets > 0 && !bracket.lines()[other].bye) out.push_back({other, meets});
  std::stable_sort(out.begin(), out.end(), [](const Opponent& a, const Opponent& b) { return a.meets > b.meets; });
  return out;
}

Outcome<Ending> odds(const Settings& settings, const OddsArguments& arguments) {
  const auto bracket = plan_bracket(arguments.files);
  if (!bracket) return fail(bracket.error());
  const std::string by = arguments.by.empty() ? best_basis(*bracket) : arguments.by;
  const auto chance = plan_chances(*bracket, by);
  if (!chance) return fail(chance.error());
  const MeetingOdds odds(*bracket, *chance);

  const Language language = Context(settings).language();
  const auto round_name = [&](int rounds, int round) { return round_words(language, rounds, round); };
  json::array rounds;
  for (int round = 1; round <= bracket->rounds(); ++round) rounds.push_back(json::string(round_name(bracket->rounds(), round)));
  json::object document{{"by", by}, {"lines", bracket->lines().size()}, {"rounds", std::move(rounds)}};
  std::string text;
  if (!arguments.player.empty()) {
    const auto line = line_of(*bracket, arguments.player);
    if (!line) return fail(line.error());
    json::object player = line_json(*bracket, odds, *line);
    json::array meets;
    text = shown(bracket->lines()[*line]) + ", line " + std::to_string(*line + 1) + ", odds by " + by + "\n";
    for (int round = 2; round <= bracket->rounds(); ++round)
      text += wide_percent(odds.reaches(*line, round)) + "  reaches: " + round_name(bracket->rounds(), round) + "\n";
    text += wide_percent(odds.reaches(*line, bracket->rounds() + 1)) + "  wins the draw\n" + wide_decimals(odds.matches_left(*line)) + "   matches to come\n";
    for (const Opponent& one : opponents(*bracket, odds, *line)) {
      const int round = Bracket::meeting_round(*line, one.line);
      const std::string name = round_name(bracket->rounds(), round);
      meets.push_back(json::object{
          {"line", one.line + 1}, {"player", line_name(bracket->lines()[one.line])}, {"round", round}, {"round_name", name}, {"odds", one.meets}});
      text += wide_percent(one.meets) + "  meets " + shown(bracket->lines()[one.line]) + " (" + name + ")\n";
    }
    player["meets"] = std::move(meets);
    document["player"] = std::move(player);
  } else {
    json::array players;
    text = "line  next rounds, wins, matches to come; odds by " + by + "\n";
    for (std::size_t line = 0; line < bracket->lines().size(); ++line) {
      if (bracket->lines()[line].bye) continue;
      players.push_back(line_json(*bracket, odds, line));
      const std::string number = std::to_string(line + 1);
      text += std::string(number.size() < 4 ? 4 - number.size() : 0, ' ') + number;
      for (int round = 2; round <= bracket->rounds() + 1; ++round) text += wide_percent(odds.reaches(line, round));
      text += wide_decimals(odds.matches_left(line)) + "  " + shown(bracket->lines()[line]) + "\n";
    }
    document["players"] = std::move(players);
  }
  Context(settings).answer(document, text);
  return Ending::done;
}

}  // namespace

void add_odds_command(CLI::App& plan, FolderWork& chosen) {
  add_plan_command<
      OddsArguments>(plan, chosen, "odds", "Who gets how far and who meets whom, exactly", odds, [](CLI::App& command, OddsArguments& arguments) {
    command.add_option("--draw", arguments.files.draw, "CSV with the columns line, player, and partner, seed, rating, entry, withdrawn, qualifier")
        ->required();
    command.add_option("--results", arguments.files.results, "CSV with the columns round, winner, and end");
    auto* qualifying = command.add_option("--qualifying", arguments.files.qualifying,
                                          "CSV as --draw, all sections from top to bottom, whose winners come to the lines with qualifier 1, 2, ...");
    auto* qualifiers =
        command.add_option("--qualifiers", arguments.files.qualifiers, "How many qualify")->check(CLI::Range(1, 128))->needs(qualifying);
    qualifying->needs(qualifiers);
    command.add_option("--qualifying-results", arguments.files.qualifying_results, "CSV as --results")->needs(qualifying);
    command.add_option("--by", arguments.by, "Reckon by rating, seed or even; default: the first of these that the draw has")
        ->check(CLI::IsMember({"rating", "seed", "even"}));
    command.add_option("--player", arguments.player, "NAME or line: this player alone, with whom it may meet");
    command.footer(
        "--json: one object: by, lines, rounds [name of each], players [{line, player, seed, rating, reaches [chance of being in each round], wins,\n"
        "matches_left}]; with --player instead player, an object like those with meets [{line, player, round, round_name, odds}], likeliest first.");
  });
}

}  // namespace weavelog::cli
