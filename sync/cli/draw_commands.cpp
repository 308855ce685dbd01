// plan draw, plan group, plan order: draws made and looked at.

#include <cstdio>

#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/plan/draw_places.h"
#include "core/plan/order_of_play.h"
#include "core/plan/plan_table.h"
#include "core/plan/plan_words.h"
#include "core/plan/round_robin.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {
namespace {

std::string_view name_of(DrawEntry entry) {
  switch (entry) {
    case DrawEntry::direct: return "";
    case DrawEntry::wild_card: return "WC";
    case DrawEntry::qualifier: return "Q";
    case DrawEntry::lucky_loser: return "LL";
    case DrawEntry::alternate: return "ALT";
  }
  return "";
}

// --------------------------------------------------------------------------------------------------------
// draw

struct DrawArguments {
  std::string entries, draw, out;
  std::uint64_t lot = 1;
};

Outcome<Ending> draw(const Settings& settings, const DrawArguments& arguments) {
  const auto bytes = plan_file(arguments.entries);
  if (!bytes) return fail(bytes.error());
  auto entries = read_entries(*bytes, arguments.entries, arguments.draw);
  if (!entries) return fail(entries.error());
  const auto made = make_draw(std::move(*entries), arguments.lot);
  if (!made) {
    Fault fault = made.error();
    fault.where = arguments.entries + (fault.where.empty() ? "" : ", " + fault.where);
    return fail(std::move(fault));
  }
  json::array lines;
  CsvWriter csv;
  csv.row({"line", "player", "partner", "seed", "rating", "entry", "withdrawn", "qualifier"});
  for (std::size_t at = 0; at < made->size(); ++at) {
    const BracketLine& line = (*made)[at];
    json::object one{{"line", at + 1}, {"player", line.bye ? "bye" : line.player}};
    if (!line.partner.empty()) one["partner"] = line.partner;
    if (line.seed) one["seed"] = *line.seed;
    if (line.rating) one["rating"] = *line.rating;
    if (line.entry != DrawEntry::direct) one["entry"] = std::string(name_of(line.entry));
    if (line.qualifier != 0) one["qualifier"] = line.qualifier;
    lines.push_back(std::move(one));
    char rating[32] = "";
    if (line.rating) std::snprintf(rating, sizeof rating, "%.10g", *line.rating);
    csv.row({std::to_string(at + 1), line.bye ? "bye" : line.player, line.partner, line.seed ? std::to_string(*line.seed) : "", rating,
             std::string(name_of(line.entry)), line.withdrawn ? "yes" : "", line.qualifier == 0 ? "" : std::to_string(line.qualifier)});
  }
  const Context context(settings);
  if (!arguments.out.empty()) {
    if (auto written = context.deliver(csv.text(), arguments.out); !written) return fail(written.error());
    context.answer(json::object{{"file", arguments.out}, {"lines", std::move(lines)}}, std::to_string(made->size()) + " lines in " + arguments.out);
  } else if (settings.json) {
    context.answer(json::object{{"lines", std::move(lines)}}, {});
  } else if (auto written = context.deliver(csv.text(), {}); !written) {
    return fail(written.error());
  }
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// group

struct GroupArguments {
  std::string players, results, by;
};

Outcome<std::vector<RoundRobin::Result>> group_results(const std::string& path, const std::vector<BracketLine>& players) {
  std::vector<RoundRobin::Result> out;
  if (path.empty()) return out;
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  const auto table = PlanTable::read(*bytes, path, {"winner", "loser"});
  if (!table) return fail(table.error());
  const auto find = [&](const CsvRow& row, const char* column) -> Outcome<std::size_t> {
    const std::string key = search_key(table->cell(row, column));
    for (std::size_t at = 0; at < players.size(); ++at)
      if (!key.empty() && (search_key(players[at].player) == key || search_key(line_name(players[at])) == key)) return at;
    return table->wrong(row, column, "'" + table->cell(row, column) + "' is not in this group", "write the name as in the group");
  };
  for (const CsvRow& row : table->rows()) {
    const auto winner = find(row, "winner");
    if (!winner) return fail(winner.error());
    const auto loser = find(row, "loser");
    if (!loser) return fail(loser.error());
    out.push_back({{*winner, *loser}, *winner, table->place(row)});
  }
  return out;
}

Outcome<Ending> group(const Settings& settings, const GroupArguments& arguments) {
  const auto bytes = plan_file(arguments.players);
  if (!bytes) return fail(bytes.error());
  const auto players = read_entries(*bytes, arguments.players);
  if (!players) return fail(players.error());
  const auto results = group_results(arguments.results, *players);
  if (!results) return fail(results.error());
  const auto made = RoundRobin::make(*players, *results);
  if (!made) return fail(made.error());
  const bool rated = std::any_of(players->begin(), players->end(), [](const BracketLine& one) { return one.rating.has_value(); });
  const std::string by = arguments.by.empty() ? (rated ? "rating" : "even") : arguments.by;
  WinChance chance = even_chances();
  if (by == "rating") {
    auto rating = chances_by_rating(*players);
    if (!rating) return fail(rating.error());
    chance = *rating;
  }
  const auto first = made->first_chances(chance);
  json::array standing, rounds;
  std::string text;
  for (const std::size_t at : made->standing()) {
    json::object one{{"player", line_name((*players)[at])}, {"wins", made->wins(at)}, {"matches_left", made->matches_left(at)}};
    text += line_name((*players)[at]) + ": " + std::to_string(made->wins(at)) + " won, " + std::to_string(made->matches_left(at)) + " to come";
    if (first) {
      one["first"] = (*first)[at];
      char part[32];
      std::snprintf(part, sizeof part, ", first %.1f%%", 100 * (*first)[at]);
      text += part;
    }
    text += "\n";
    standing.push_back(std::move(one));
  }
  for (const auto& round : circle_rounds(players->size())) {
    json::array matches;
    for (const GroupMatch& match : round) {
      json::object one{{"player", line_name((*players)[match.one])}, {"other", line_name((*players)[match.other])}};
      if (const auto winner = made->winner(match.one, match.other)) one["winner"] = line_name((*players)[*winner]);
      matches.push_back(std::move(one));
    }
    rounds.push_back(std::move(matches));
  }
  Context(settings).answer(json::object{{"by", by}, {"standing", std::move(standing)}, {"rounds", std::move(rounds)}}, text);
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// order

struct OrderArguments {
  std::string order, zone;
  std::vector<std::string> draws, results;
  double minutes = 90, rest = 60;
};

Outcome<Ending> order(const Settings& settings, const OrderArguments& arguments) {
  std::map<std::string, Bracket> brackets;
  std::map<std::string, const Bracket*> draws;
  std::vector<std::string> names;
  for (std::size_t at = 0; at < arguments.draws.size(); ++at) {
    // NAME=FILE, or a file alone if there is but one draw.
    const auto sign = arguments.draws[at].find('=');
    const std::string name = sign == std::string::npos ? "" : arguments.draws[at].substr(0, sign);
    const std::string file = sign == std::string::npos ? arguments.draws[at] : arguments.draws[at].substr(sign + 1);
    auto bracket = plan_bracket({file, at < arguments.results.size() ? arguments.results[at] : "", "", "", 0});
    if (!bracket) return fail(bracket.error());
    if (!brackets.emplace(name, std::move(*bracket)).second)
      return fail(FaultCode::bad_input, "two draws have one name", "--draw " + shortened(arguments.draws[at], 60), "write NAME=FILE, each name once");
  }
  for (const auto& [name, bracket] : brackets) draws[name] = &bracket;
  const auto bytes = plan_file(arguments.order);
  if (!bytes) return fail(bytes.error());
  const auto entries = read_order(*bytes, arguments.zone, arguments.order);
  if (!entries) return fail(entries.error());
  OrderOptions options;
  options.match_length = static_cast<UnixMs>(arguments.minutes * 60'000);
  options.rest = static_cast<UnixMs>(arguments.rest * 60'000);
  const auto times = expected_times(*entries, draws, options);
  if (!times) return fail(times.error());
  const Language language = Context(settings).language();
  json::array matches;
  std::string text;
  for (const OrderEntry& entry : *entries) {
    const MatchTime& time = times->at(entry.match);
    const Bracket& bracket = *draws.at(entry.match.draw);
    const auto sides = bracket.sides(entry.match.round, entry.match.match);
    json::array players;
    std::string who;
    for (const auto& side : {sides.first, sides.second}) {
      const std::string name = side ? line_name(bracket.lines()[*side]) : std::string();
      players.push_back(json::string(name));
      who += (who.empty() ? "" : " - ") + (name.empty() ? std::string("(not known yet)") : name);
    }
    const std::string round = round_words(language, bracket.rounds(), entry.match.round);
    matches.push_back(json::object{{"draw", entry.match.draw},
                                   {"round", entry.match.round},
                                   {"match", entry.match.match + 1},
                                   {"round_name", round},
                                   {"court", entry.court},
                                   {"players", std::move(players)},
                                   {"begin", iso_utc(time.begin)},
                                   {"end", iso_utc(time.end)},
                                   {"estimated", time.estimated}});
    text += iso_utc(time.begin) + (time.estimated ? "~ " : "  ") + entry.court + ": " + who + " (" + round + ")\n";
  }
  Context(settings).answer(matches, text);
  return Ending::done;
}

}  // namespace

void add_draw_commands(CLI::App& plan, FolderWork& chosen) {
  add_plan_command<DrawArguments>(
      plan, chosen, "draw", "Make a draw of 4 to 256 entries: seeds and byes by the rules, the rest by lot", draw,
      [](CLI::App& command, DrawArguments& arguments) {
        command.add_option("--entries", arguments.entries,
                           "CSV with the columns player, and partner, seed, rating, entry, qualifier; or an event's entry list as for `import entries`")
            ->required();
        command.add_option("--draw", arguments.draw, "Which draw of an entry list that has several");
        command.add_option("--lot", arguments.lot, "Another number draws another lot")->capture_default_str();
        command.add_option("--out", arguments.out, "Where the draw is written as CSV; default: standard output");
        command.footer("--json: {lines [{line, player (or bye), partner, seed, rating, entry, qualifier}]}, with --out also file.");
      });
  add_plan_command<GroupArguments>(
      plan, chosen, "group", "A round-robin group: standing, who meets whom, chances to come first", group,
      [](CLI::App& command, GroupArguments& arguments) {
        command.add_option("--players", arguments.players, "CSV as the entries of `plan draw`, with withdrawn")->required();
        command.add_option("--results", arguments.results, "CSV with the columns winner, loser");
        command.add_option("--by", arguments.by, "Reckon by rating or even")->check(CLI::IsMember({"rating", "even"}));
        command.footer(
            "--json: {by, standing [{player, wins, matches_left, first (chance; left out if there are too many ways)}], rounds [[{player, other, "
            "winner}]]}.");
      });
  add_plan_command<OrderArguments>(
      plan, chosen, "order", "When the matches of an order of play are expected", order, [](CLI::App& command, OrderArguments& arguments) {
        command.add_option("--order", arguments.order, "CSV with the columns day, court, round, match, and draw, at, not_before, follows")
            ->required();
        command.add_option("--draw", arguments.draws, "CSV as for `plan odds`; several draws as NAME=FILE each")->required();
        command.add_option("--results", arguments.results, "CSV as for `plan odds`, in the order of the draws");
        command.add_option("--time-zone", arguments.zone, "In which the times are told, such as Europe/Lisbon")->required();
        command.add_option("--minutes", arguments.minutes, "How long a match takes")->capture_default_str()->check(CLI::Range(10.0, 600.0));
        command.add_option("--rest", arguments.rest, "Minutes between two matches of a player")
            ->capture_default_str()
            ->check(CLI::Range(0.0, 1440.0));
        command.footer("--json: an array in the order of the file: [{draw, round, match, round_name, court, players, begin, end (UTC), estimated}].");
      });
}

}  // namespace weavelog::cli
