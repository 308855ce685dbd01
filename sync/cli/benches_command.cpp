// plan benches: which stringer and machine each player keeps, why, and what another place would cost.

#include <algorithm>
#include <cstdio>

#include "core/base/csv.h"
#include "core/base/text.h"
#include "core/plan/bench_tables.h"
#include "core/plan/plan_words.h"
#include "sync/cli/plan_commands.h"

namespace weavelog::cli {
namespace {

constexpr std::size_t kMostMeetings = 50;

struct BenchesArguments {
  std::vector<std::string> draws, results;
  DrawFiles first;  // of which the qualifying counts
  std::string by, people, players, wishes, pins, last, move, hard_from = "quarter-final", out;
  std::vector<double> rounds;
  BenchWeights weights;
};

std::string decimals(double value, int places = 1) {
  char text[48];
  std::snprintf(text, sizeof text, "%.*f", places, value);
  return text;
}

/// A table that may be left out: "" gives nothing.
template <class T>
Outcome<std::vector<T>> table(const std::string& path, Outcome<std::vector<T>> (*read)(std::string_view, std::string_view)) {
  if (path.empty()) return std::vector<T>();
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  return read(*bytes, path);
}

Outcome<int> places_from(const std::string& typed) {
  const std::string key = search_key(typed);
  if (key == "never") return 0;
  if (key == "final") return 2;
  if (key == "semi final") return 4;
  if (key == "quarter final") return 8;
  if (key == "round of 16") return 16;
  if (key == "round of 32") return 32;
  return fail(FaultCode::bad_input, "\"" + shortened(typed, 40) + "\" is no round", "--hard-from",
              "write final, semi-final, quarter-final, round of 16, round of 32 or never");
}

json::object cost_json(const BenchCost& cost) {
  return {{"total", cost.total()}, {"hard", cost.hard}, {"clash", cost.clash}, {"own", cost.own}, {"over", cost.over}};
}

json::object reason_json(const HomeBenches& room, const BenchReason& reason) {
  json::object out{{"kind", std::string(name_of(reason.kind))}, {"cheaper", reason.cheaper}, {"breaks_rule", reason.rule}};
  if (reason.kind != BenchReason::Kind::pinned && reason.kind != BenchReason::Kind::wished && reason.kind != BenchReason::Kind::only_one)
    out["instead_of"] = room.benches()[reason.other_bench].name;
  if (reason.meeting) {
    out["meets"] = room.people()[reason.meeting->other].name;
    out["odds"] = reason.meeting->odds;
  }
  return out;
}

/// "PLAYER=BENCH": what it costs to have it so.
Outcome<json::object> proposed(const HomeBenches& room, const BenchPlan& plan, const std::string& typed, std::string& text) {
  const auto sign = typed.rfind('=');
  if (sign == std::string::npos) return fail(FaultCode::bad_input, "this names no bench", "--move " + shortened(typed, 60), "write PLAYER=BENCH");
  const auto who = room.person(typed.substr(0, sign));
  const auto bench = room.bench(typed.substr(sign + 1));
  if (!who || !bench)
    return fail(FaultCode::not_found, who ? "no such bench" : "no such player who is still in", "--move " + shortened(typed, 60),
                "write the names as in the files");
  const BenchCost now = plan.solution.cost, moved = room.with_move(plan.choice(), *who, *bench);
  const std::string& name = room.people()[*who].name;
  json::object out{{"player", name}, {"bench", room.benches()[*bench].name}, {"allowed", moved.own < kNever && moved.beyond <= now.beyond + 1e-9}};
  const bool rule = now.hard == 0 && moved.hard > 0;
  out["breaks_rule"] = rule;
  if (moved.own == kNever) {
    text = name + " may not be on " + room.benches()[*bench].name + ": a wish, a pin or a shift forbids it\n";
    return out;
  }
  out["more"] = json::object{{"total", moved.total() - now.total()}, {"hard", moved.hard - now.hard}, {"clash", moved.clash - now.clash},
                             {"own", moved.own - now.own},           {"over", moved.over - now.over}, {"beyond_limits", moved.beyond - now.beyond}};
  text = name + " on " + room.benches()[*bench].name + " would cost " + decimals(moved.total() - now.total(), 2) + " points more" +
         (moved.beyond > now.beyond + 1e-9 ? ", and " + decimals(moved.beyond - now.beyond) + " rackets beyond a limit" : "") +
         (rule ? "; somebody could be met there in a late round, which this plan avoids" : "") + "\n";
  return out;
}

struct Told {
  json::object document;
  std::string text;
};

Told tell(const HomeBenches& room, const BenchPlan& plan, const Language& language, const BenchCase& given) {
  const BenchSolution& solution = plan.solution;
  json::array benches, players, meetings, moved;
  std::string text;
  std::vector<BenchReason> reasons;
  std::vector<std::string> words;
  for (std::size_t who = 0; who < room.people().size(); ++who) {
    reasons.push_back(room.why(plan.choice(), who));
    words.push_back(reason_words(language, room, plan.choice(), who, reasons.back()));
  }
  for (std::size_t bench = 0; bench < room.benches().size(); ++bench) {
    json::array names, rackets, shares;
    text += room.benches()[bench].name + ":";
    for (std::size_t day = 0; day < room.days(); ++day) {
      rackets.push_back(room.rackets(plan.choice(), bench, day));
      shares.push_back(room.even_share(bench, day));
      text += " " + decimals(room.rackets(plan.choice(), bench, day));
    }
    text += " rackets by day\n";
    for (std::size_t who = 0; who < room.people().size(); ++who)
      if (plan.choice()[who] == bench) {
        names.push_back(json::string(room.people()[who].name));
        text += "    " + words[who] + "\n";
      }
    benches.push_back(json::object{{"bench", room.benches()[bench].name},
                                   {"stringer", room.benches()[bench].stringer},
                                   {"machine", room.benches()[bench].machine},
                                   {"players", std::move(names)},
                                   {"rackets", std::move(rackets)},
                                   {"even_share", std::move(shares)}});
  }
  for (std::size_t who = 0; who < room.people().size(); ++who) {
    players.push_back(json::object{{"player", room.people()[who].name},
                                   {"bench", room.benches()[plan.choice()[who]].name},
                                   {"reason", reason_json(room, reasons[who])},
                                   {"why", words[who]}});
  }
  double late = 0, early = 0;  // meetings on one bench that are to be expected
  for (const BenchMeeting& one : room.meetings(plan.choice())) {
    (one.hard ? late : early) += one.odds;
    if (meetings.size() == kMostMeetings) continue;
    meetings.push_back(json::object{{"player", room.people()[one.one].name},
                                    {"other", room.people()[one.other].name},
                                    {"bench", room.benches()[plan.choice()[one.one]].name},
                                    {"round", round_words(language, room, one)},
                                    {"odds", one.odds},
                                    {"hard", one.hard}});
  }
  for (const std::size_t who : plan.moved) {
    const auto before = std::find_if(given.last.begin(), given.last.end(),
                                     [&](const auto& last) { return search_key(last.first) == search_key(room.people()[who].name); });
    moved.push_back(json::object{{"player", room.people()[who].name},
                                 {"from", before == given.last.end() ? "" : before->second},
                                 {"to", room.benches()[plan.choice()[who]].name}});
    text += "moves: " + room.people()[who].name + " to " + room.benches()[plan.choice()[who]].name + "\n";
  }
  const double gap = solution.gap();
  text += "cost " + decimals(solution.cost.total(), 2) + ", proven to be at least " + decimals(solution.floor, 2) +
          (gap < kNever ? " (gap " + decimals(100 * gap, 2) + " %)" : "") + "\n";
  if (solution.rule == BenchSolution::Rule::impossible)
    text += "meetings in late rounds can't all be kept off one bench; they are as few as could be found\n";
  if (solution.rule == BenchSolution::Rule::not_found) text += "no way was found to keep all meetings in late rounds off one bench\n";
  Told out{json::object{{"cost", cost_json(solution.cost)},
                        {"floor", solution.floor},
                        {"rule", std::string(name_of(solution.rule))},
                        {"days", room.days()},
                        {"benches", std::move(benches)},
                        {"players", std::move(players)},
                        {"meetings", std::move(meetings)},
                        {"expected_meetings", json::object{{"early", early}, {"late", late}}},
                        {"moved", std::move(moved)}},
           std::move(text)};
  if (gap < kNever) out.document["gap"] = gap;
  return out;
}

/// Qualifying first, a round a day, then the draws, with their finals on the last day.
void days_in_turn(std::vector<DrawnPeople>& draws) {
  int before = 0, longest = 0;
  for (const DrawnPeople& draw : draws) (draw.further > 0 ? before : longest) = std::max(draw.further > 0 ? before : longest, draw.bracket->rounds());
  for (DrawnPeople& draw : draws) {
    const int rounds = draw.bracket->rounds(), from = draw.further > 0 ? before - rounds : before + longest - rounds;
    for (int round = 1; round <= rounds; ++round) draw.days.push_back(from + round);
  }
}

Outcome<Ending> benches(const Settings& settings, const BenchesArguments& arguments) {
  if (arguments.results.size() > arguments.draws.size())
    return fail(FaultCode::bad_input, "there are more results than draws", "--results", "give them in the order of the draws");
  std::vector<Bracket> brackets;
  for (std::size_t at = 0; at < arguments.draws.size(); ++at) {
    DrawFiles files = at == 0 ? arguments.first : DrawFiles{};
    files.draw = arguments.draws[at];
    if (at < arguments.results.size()) files.results = arguments.results[at];
    auto bracket = plan_bracket(files);
    if (!bracket) return fail(bracket.error());
    brackets.push_back(std::move(*bracket));
  }
  const std::size_t main_draws = brackets.size();
  const auto qualifying = plan_qualifying(arguments.first);
  if (!qualifying) return fail(qualifying.error());
  if (*qualifying) brackets.insert(brackets.end(), (*qualifying)->sections().begin(), (*qualifying)->sections().end());
  BenchCase given;
  std::vector<MeetingOdds> odds;
  for (const Bracket& bracket : brackets) {
    const auto chance = plan_chances(bracket, arguments.by.empty() ? best_basis(bracket) : arguments.by);
    if (!chance) return fail(chance.error());
    odds.emplace_back(bracket, *chance);
  }
  for (std::size_t at = 0; at < brackets.size(); ++at) {
    given.draws.push_back({&brackets[at], &odds[at], {}, {}, at < main_draws ? 0 : brackets[0].rounds()});
    for (const BracketLine& line : brackets[at].lines()) given.draws.back().people.push_back(people_of(line));
  }
  if (*qualifying) days_in_turn(given.draws);
  auto people = table<HomeBench>(arguments.people, read_benches);
  if (!people) return fail(people.error());
  auto players = table<BenchPerson>(arguments.players, read_bench_people);
  if (!players) return fail(players.error());
  auto wishes = table<BenchWish>(arguments.wishes, read_bench_wishes);
  if (!wishes) return fail(wishes.error());
  auto pins = table<BenchPin>(arguments.pins, read_bench_pins);
  if (!pins) return fail(pins.error());
  auto last = benches_of_plan(arguments.last);
  if (!last) return fail(last.error());
  const auto places = places_from(arguments.hard_from);
  if (!places) return fail(places.error());
  given.benches = std::move(*people);
  given.people = std::move(*players);
  given.wishes = std::move(*wishes);
  given.pins = std::move(*pins);
  given.last = std::move(*last);
  given.weights = arguments.weights;
  given.weights.hard_places = *places;
  if (!arguments.rounds.empty()) given.weights.rounds = arguments.rounds;
  const BenchCase kept = given;
  const auto room = HomeBenches::make(std::move(given));
  if (!room) return fail(room.error());
  const auto plan = room->plan();
  if (!plan) return fail(plan.error());
  const Context context(settings);
  Told told = tell(*room, *plan, context.language(), kept);
  if (!arguments.move.empty()) {
    std::string text;
    auto move = proposed(*room, *plan, arguments.move, text);
    if (!move) return fail(move.error());
    told.document["proposed"] = std::move(*move);
    told.text += text;
  }
  if (!arguments.out.empty())
    if (auto written = context.deliver(json::serialize(told.document) + "\n", arguments.out); !written) return fail(written.error());
  context.answer(told.document, told.text);
  return Ending::done;
}

}  // namespace

void add_benches_command(CLI::App& plan, FolderWork& chosen) {
  add_plan_command<BenchesArguments>(
      plan, chosen, "benches", "Which stringer and machine each player keeps, and why", benches, [](CLI::App& command, BenchesArguments& arguments) {
        command.add_option("--draw", arguments.draws, "CSV as for `plan odds`; several draws of one event each with --draw")->required();
        command.add_option("--results", arguments.results, "CSV as for `plan odds`, in the order of the draws");
        auto* qualifying = command.add_option("--qualifying", arguments.first.qualifying,
                                              "As for `plan odds`, of the first draw: who plays there gets a bench too; its days come first");
        auto* qualifiers =
            command.add_option("--qualifiers", arguments.first.qualifiers, "How many qualify")->check(CLI::Range(1, 128))->needs(qualifying);
        qualifying->needs(qualifiers);
        command.add_option("--qualifying-results", arguments.first.qualifying_results, "CSV as --results")->needs(qualifying);
        command.add_option("--by", arguments.by, "Reckon by rating, seed or even; default: the first of these that a draw has")
            ->check(CLI::IsMember({"rating", "seed", "even"}));
        command.add_option("--people", arguments.people, "CSV with the columns stringer, and bench, machine, skills, languages, most, days")
            ->required();
        command.add_option("--players", arguments.players, "CSV with the columns player, and rackets, skills, languages, before");
        command.add_option("--wishes", arguments.wishes, "CSV with the columns player, wish (only, never), with");
        command.add_option("--pins", arguments.pins, "CSV with the columns player, bench");
        command.add_option("--last", arguments.last, "The plan so far, as --json or --out gave it: as few as can be leave their bench");
        command.add_option("--move", arguments.move, "PLAYER=BENCH: what that would cost");
        command.add_option("--out", arguments.out, "Writes the plan there too, if there is one; what is there stays otherwise");
        command.option_defaults()->always_capture_default();
        command.add_option("--hard-from", arguments.hard_from, "From this round on no two on one bench who may meet, if that can be; or never");
        const auto weight = [&](const char* name, double& value, const char* what) {
          command.add_option(name, value, what)->check(CLI::Range(0.0, 1e4));
        };
        command
            .add_option("--round-weights", arguments.rounds,
                        "Points of a meeting in the final, the semi-final, ...; the last for all before; default 16,8,4,2,1")
            ->delimiter(',')
            ->check(CLI::Range(0.0, 1e4));
        weight("--hard-weight", arguments.weights.hard, "Times of these points where such meetings can't be avoided");
        weight("--over-weight", arguments.weights.over, "Points per racket and day beyond an even share");
        weight("--even-within", arguments.weights.even_within, "Rackets a day that are even enough");
        weight("--before-weight", arguments.weights.continuity, "Points of another stringer than at earlier events");
        weight("--skill-weight", arguments.weights.skill, "Points of a skill that is asked for and lacks");
        weight("--language-weight", arguments.weights.language, "Points of no language in common");
        weight("--move-weight", arguments.weights.move, "Points of leaving the bench of the last plan");
        command.footer(
            "--json: one object: cost {total, hard, clash, own, over} in points, floor (no plan costs less), gap (a part of the floor), rule (kept,\n"
            "impossible, not_found, none: of --hard-from), days, benches [{bench, stringer, machine, players, rackets [expected by day],\n"
            "even_share}], players [{player, bench, reason {kind, cheaper, breaks_rule, instead_of, meets, odds}, why}], meetings [{player, other,\n"
            "bench, round, odds, hard}] of two on one bench, at most 50, expected_meetings {early, late}, moved [{player, from, to}]; with --move\n"
            "also proposed {player, bench, allowed, breaks_rule, more {total, ...}}.");
      });
}

}  // namespace weavelog::cli
