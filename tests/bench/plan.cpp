// Plans out of draws: odds and home benches, as draws grow.

#include <cmath>
#include <random>

#include "core/plan/home_benches.h"
#include "tests/bench/benches.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

const std::string kPlanBench = "plan";
constexpr std::size_t kBenches = 12;

Bracket made_up(std::size_t lines) {
  std::mt19937_64 random(17);
  std::vector<BracketLine> out(lines);
  for (std::size_t i = 0; i < lines; ++i) {
    out[i].player = "Player " + std::to_string(i + 1);
    // Without the library's distributions, so that every machine has the same draw.
    out[i].rating = 1200 + static_cast<double>(random() % 800);
  }
  return must(Bracket::make(std::move(out)));
}

/// The reference of odds: the same chances with nothing left out, every line against every other in every round.
double plain_odds(const Bracket& bracket, const WinChance& chance) {
  const std::size_t n = bracket.lines().size();
  std::vector<double> here(n, 1.0), next(n);
  for (int round = 1; round <= bracket.rounds(); ++round) {
    for (std::size_t one = 0; one < n; ++one) {
      double wins = 0;
      for (std::size_t other = 0; other < n; ++other) {
        const double beats = one == other ? 0 : chance(one, other);
        if (Bracket::meeting_round(one, other) == round) wins += here[other] * beats;
      }
      next[one] = here[one] * wins;
    }
    here = next;
  }
  return here[0];
}

constexpr int kSums = 1'000;

/// The reference of plans: so many times all costs of a plan, summed plainly.
double plain_sums(const BenchProblem& problem, const BenchChoice& choice) {
  double out = 0;
  for (int sum = 0; sum < kSums; ++sum) out += cost_of(problem, choice).total();
  return out / kSums;
}

void odds_of(Report& report, const Bracket& bracket, std::size_t lines, int runs) {
  const auto chance = must(chances_by_rating(bracket));
  Figure figure{kPlanBench, "odds of a draw of " + std::to_string(lines), "ms", {}, {}, lines == 128 ? "under 5 ms" : "", "plain sums"};
  for (int run = 0; run < runs; ++run) {
    const Stopwatch watch;
    const MeetingOdds odds(bracket, chance);
    figure.runs.values.push_back(watch.milliseconds());
    const Stopwatch beside;
    const double same = plain_odds(bracket, chance);
    figure.reference.values.push_back(beside.milliseconds());
    if (std::abs(same - odds.reaches(0, bracket.rounds() + 1)) > 1e-9) throw std::runtime_error("the odds differ from the plain ones");
  }
  report.say(figure);
}

void benches_of(Report& report, const Bracket& bracket, std::size_t lines, int runs) {
  const MeetingOdds odds(bracket, must(chances_by_rating(bracket)));
  BenchCase given;
  given.draws.push_back({&bracket, &odds, {}, {}, 0});
  std::mt19937_64 random(5);
  for (const BracketLine& line : bracket.lines()) {
    given.draws[0].people.push_back(people_of(line));
    // Every second one was at one of the stringers before.
    if (random() % 2 == 0) given.people.push_back({line.player, 2, {}, {}, "Stringer " + std::to_string(random() % kBenches + 1)});
  }
  for (std::size_t bench = 1; bench <= kBenches; ++bench) {
    HomeBench one;
    one.name = one.stringer = "Stringer " + std::to_string(bench);
    given.benches.push_back(one);
  }
  const HomeBenches room = must(HomeBenches::make(given));
  const std::string metric = std::to_string(lines) + " players on " + std::to_string(kBenches) + " benches";
  Figure time{kPlanBench, metric, "ms", {}, {}, lines == 128 ? "under 2,000 ms" : "", std::to_string(kSums) + " plain sums"};
  Figure cost{kPlanBench, metric + ": cost", "points", {}, {}, lines == 128 ? "ratio under 1.03" : "", "proven least"};
  for (int run = 0; run < runs; ++run) {
    const Stopwatch watch;
    const BenchPlan plan = must(room.plan());
    time.runs.values.push_back(watch.milliseconds());
    const Stopwatch beside;
    if (std::abs(plain_sums(room.problem(), plan.choice()) - plan.solution.cost.total()) > 1e-6)
      throw std::runtime_error("a plan does not cost what it says");
    time.reference.values.push_back(beside.milliseconds());
    cost.runs.values.push_back(plan.solution.cost.total());
    cost.reference.values.push_back(plan.solution.floor);
  }
  report.say(time);
  report.say(cost);

  // Somebody withdraws, and the first half has played: as few as can be move.
  const BenchPlan first = must(room.plan());
  BenchCase again = given;
  for (std::size_t who = 0; who < room.people().size(); ++who) again.last[room.people()[who].name] = room.benches()[first.choice()[who]].name;
  std::vector<BracketLine> lines_after(bracket.lines().begin(), bracket.lines().end());
  lines_after[lines - 1].withdrawn = true;
  std::vector<BracketResult> results;
  for (std::size_t match = 0; match < lines / 4; ++match) {
    BracketResult result;
    result.round = 1;
    result.winner = 2 * match + match % 2;
    results.push_back(result);
  }
  const Bracket after = must(Bracket::make(std::move(lines_after), results));
  const MeetingOdds odds_after(after, must(chances_by_rating(after)));
  again.draws[0].bracket = &after;
  again.draws[0].odds = &odds_after;
  const Stopwatch watch;
  const BenchPlan second = must(must(HomeBenches::make(again)).plan());
  report.say(kPlanBench, metric + ": again after results and a withdrawal", "ms", watch.milliseconds());
  report.say(kPlanBench, metric + ": players who move then", "players", static_cast<double>(second.moved.size()));
}

}  // namespace

void plan(Report& report, const Setting& setting) {
  const int runs = setting.full ? 15 : 5;
  for (const std::size_t lines : {32U, 64U, 128U, 256U}) odds_of(report, made_up(lines), lines, runs * 4);
  for (const std::size_t lines : {32U, 64U, 128U, 256U}) benches_of(report, made_up(lines), lines, runs);
}

}  // namespace weavelog::bench
