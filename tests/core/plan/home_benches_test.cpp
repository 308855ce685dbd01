#include "core/plan/home_benches.h"

#include <catch2/catch.hpp>

#include "core/plan/bench_tables.h"
#include "core/plan/plan_words.h"
#include "tests/core/plan/lines.h"
#include "tests/support/words.h"

using namespace weavelog;
using weavelog::test::named;

namespace {

/// A draw that lives as long as what is made of it.
struct Drawn {
  explicit Drawn(std::vector<BracketLine> lines, std::vector<BracketResult> results = {})
      : bracket(Bracket::make(std::move(lines), results).value()), odds(bracket, even_chances()) {}

  [[nodiscard]] DrawnPeople people() const {
    DrawnPeople out;
    out.bracket = &bracket;
    out.odds = &odds;
    for (const BracketLine& line : bracket.lines()) out.people.push_back(people_of(line));
    return out;
  }

  Bracket bracket;
  MeetingOdds odds;
};

std::vector<HomeBench> benches(std::size_t count) {
  std::vector<HomeBench> out(count);
  for (std::size_t i = 0; i < count; ++i) out[i].name = out[i].stringer = "S" + std::to_string(i + 1);
  return out;
}

BenchCase case_of(const Drawn& drawn, std::size_t count) {
  BenchCase out;
  out.draws.push_back(drawn.people());
  out.benches = benches(count);
  return out;
}

std::string fault(BenchCase given) {
  const auto made = HomeBenches::make(std::move(given));
  if (!made) return made.error().message();
  const auto plan = made->plan();
  return plan ? "no fault" : plan.error().message();
}

}  // namespace

TEST_CASE("who may meet late is kept on different benches", "[plan]") {
  const Drawn drawn(named(16));
  auto given = case_of(drawn, 4);
  given.weights.hard_places = 4;  // four quarters, four benches
  const auto room = HomeBenches::make(given);
  REQUIRE(room);
  const auto plan = room->plan();
  REQUIRE(plan);
  CHECK(plan->solution.rule == BenchSolution::Rule::kept);
  for (std::size_t i = 0; i < 16; ++i)
    for (std::size_t j = 0; j < 16; ++j) CHECK((plan->choice()[i] == plan->choice()[j]) == (i / 4 == j / 4));
  for (const BenchMeeting& one : room->meetings(plan->choice())) CHECK_FALSE(one.hard);
  // Two rackets a match: 8 on each bench on the first day, and with even odds half of it on each day after.
  CHECK(room->rackets(plan->choice(), 0, 0) == Approx(8));
  CHECK(room->rackets(plan->choice(), 3, 1) == Approx(4));
  CHECK(room->even_share(0, 0) == Approx(8));
  const BenchReason reason = room->why(plan->choice(), 0);
  CHECK(reason.kind == BenchReason::Kind::apart);
  REQUIRE(reason.meeting);
  const std::string words = reason_words(Language{}, *room, plan->choice(), 0, reason);
  CHECK(holds(words, "P1 could meet P"));
  // What it costs: four possible meetings on the other bench, of an eighth... each weighed by its round.
  const BenchCost moved = room->with_move(plan->choice(), 0, reason.other_bench);
  CHECK(moved.total() - plan->solution.cost.total() == Approx(reason.cheaper));
  CHECK(moved.hard > 0);
  // What a move costs is what the whole plan then costs.
  for (std::size_t who = 0; who < 16; ++who)
    for (std::size_t bench = 0; bench < 4; ++bench) {
      BenchChoice whole = plan->choice();
      whole[who] = bench;
      const BenchCost one = room->with_move(plan->choice(), who, bench), all = cost_of(room->problem(), whole);
      CHECK(one.total() == Approx(all.total()));
      CHECK(one.over == Approx(all.over).margin(1e-9));
    }
}

TEST_CASE("after results and a withdrawal nobody moves without need", "[plan]") {
  const Drawn before(named(32));
  auto given = case_of(before, 8);
  given.weights.hard_places = 4;
  const auto room = HomeBenches::make(given);
  const auto first = room->plan();
  REQUIRE(first);
  for (std::size_t i = 0; i < 32; ++i) given.last["P" + std::to_string(i + 1)] = given.benches[first->choice()[i]].name;
  const auto same = HomeBenches::make(given)->plan();
  REQUIRE(same);
  CHECK(same->moved.empty());
  CHECK(same->choice() == first->choice());

  auto lines = named(32);
  lines[9].withdrawn = true;
  std::vector<BracketResult> results;
  for (std::size_t match = 0; match < 16; ++match) results.push_back({1, 2 * match + match % 2});
  const Drawn after(lines, results);
  given.draws = {after.people()};
  const auto later = HomeBenches::make(given);
  REQUIRE(later);
  CHECK_FALSE(later->person("P2"));   // lost
  CHECK_FALSE(later->person("P10"));  // withdrew
  CHECK(later->people().size() == 16);
  const auto again = later->plan();
  REQUIRE(again);
  CHECK(again->moved.empty());

  // A bench that is gone moves its players alone.
  const std::string gone = given.last["P1"];
  std::size_t on_it = 0;
  for (const BenchPerson& person : later->people()) on_it += given.last[person.name] == gone;
  std::erase_if(given.benches, [&](const HomeBench& bench) { return bench.name == gone; });
  const auto fewer = HomeBenches::make(given)->plan();
  REQUIRE(fewer);
  CHECK(fewer->moved.size() <= on_it);
}

TEST_CASE("wishes, pins, skills, languages and earlier events count", "[plan]") {
  const Drawn drawn(named(8));
  auto given = case_of(drawn, 4);
  given.weights.hard_places = 0;
  given.benches[2].machine = "Table 7";
  given.benches[1].skills = {"natural gut"};
  given.benches[3].languages = {"fr"};
  for (const std::size_t other : {0U, 1U, 2U}) given.benches[other].languages = {"de"};
  given.wishes = {{"P1", false, "table 7", ""}, {"P2", true, "S1", ""}, {"P2", true, "S3", ""}, {"P2", true, "S4", ""}};
  given.pins = {{"P3", "S1", ""}};
  given.people = {{"P4", 2, {"natural gut"}, {}, ""}, {"P5", 2, {}, {"fr"}, ""}, {"P6", 2, {}, {}, "S3"}};
  const auto room = HomeBenches::make(given);
  REQUIRE(room);
  const auto plan = room->plan();
  REQUIRE(plan);
  const auto at = [&](const char* name) { return room->benches()[plan->choice()[*room->person(name)]].name; };
  const auto why = [&](const char* name) { return room->why(plan->choice(), *room->person(name)).kind; };
  CHECK(at("P1") == "S3");
  CHECK(why("P1") == BenchReason::Kind::wished);
  CHECK(at("P2") == "S2");
  CHECK(at("P3") == "S1");
  CHECK(why("P3") == BenchReason::Kind::pinned);
  CHECK(at("P4") == "S2");
  CHECK(why("P4") == BenchReason::Kind::skill);
  CHECK(at("P5") == "S4");
  CHECK(at("P6") == "S3");
  CHECK(room->with_move(plan->choice(), *room->person("P2"), 0).own == kNever);
}

TEST_CASE("shifts and limits are kept", "[plan]") {
  const Drawn drawn(named(8));
  auto given = case_of(drawn, 3);
  given.weights.hard_places = 0;
  given.benches[0].days = {1};  // whoever is likely to play on the second day can't be here
  given.benches[1].most = 8;
  const auto room = HomeBenches::make(given);
  REQUIRE(room);
  const auto plan = room->plan();
  REQUIRE(plan);
  CHECK(room->rackets(plan->choice(), 0, 1) == Approx(0));
  CHECK(room->rackets(plan->choice(), 1, 0) <= 8 + 1e-9);
}

TEST_CASE("pairs and two draws: a player counts in both", "[plan]") {
  auto singles = named(8);
  std::vector<BracketLine> doubles(4);
  doubles[0].player = "P1", doubles[0].partner = "Q1";
  doubles[1].player = "P5", doubles[1].partner = "P2";
  doubles[2].player = "Q3", doubles[2].partner = "Q4";
  doubles[3].player = "Q5", doubles[3].partner = "Q6";
  const Drawn one(singles), two(doubles);
  auto given = case_of(one, 4);
  given.draws.push_back(two.people());
  given.weights.hard_places = 0;
  const auto room = HomeBenches::make(given);
  REQUIRE(room);
  CHECK(room->people().size() == 13);  // eight, and five who only play doubles
  CHECK(room->days() == 3);
  const auto p1 = *room->person("P1");
  double first = room->problem().load[p1 * 3], second = room->problem().load[p1 * 3 + 1];
  CHECK(first == Approx(2));       // singles alone; the finals of both are on the last day
  CHECK(second == Approx(1 + 2));  // half a match of singles, a whole one of doubles
  const auto plan = room->plan();
  REQUIRE(plan);
  CHECK(plan->choice()[p1] != plan->choice()[*room->person("P5")]);  // meet for certain in doubles
}

TEST_CASE("meetings in qualifying weigh as early ones", "[plan]") {
  const Drawn main(named(8));
  std::vector<BracketLine> lines(4);
  for (std::size_t i = 0; i < 4; ++i) lines[i].player = "Q" + std::to_string(i + 1);
  const Drawn section(lines);
  auto given = case_of(main, 8);
  given.draws.push_back(section.people());
  given.draws[1].further = 3;
  given.weights.hard_places = 4;
  const auto room = HomeBenches::make(given);
  REQUIRE(room);
  const auto q1 = *room->person("Q1"), q3 = *room->person("Q3"), p1 = *room->person("P1"), p8 = *room->person("P8");
  const auto& p = room->problem();
  CHECK(p.hard[q1 * p.players + q3] == 0);
  CHECK(p.clash[q1 * p.players + q3] == Approx(0.5));  // a quarter; four rounds from the title weigh 2
  CHECK(p.hard[p1 * p.players + p8] > 0);
}

TEST_CASE("what can't be planned is named", "[plan]") {
  const Drawn drawn(named(8));
  const auto given = case_of(drawn, 2);
  auto one = given;
  one.benches.clear();
  CHECK(holds(fault(one), "no bench"));
  one = given;
  one.benches[1].name = "s1";
  CHECK(holds(fault(one), "two benches"));
  one = given;
  one.wishes = {{"P1", false, "S1", "wishes.csv, line 2"}, {"P1", true, "S1", "wishes.csv, line 3"}};
  CHECK(holds(fault(one), "wishes.csv, line 3: no bench is left for P1: this contradicts only with S1 (wishes.csv, line 2)"));
  one = given;
  one.wishes = {{"P1", false, "S1", "wishes.csv, line 2"}};
  one.pins = {{"P1", "S2", "pins.csv, line 2"}};
  CHECK(holds(fault(one), "pins.csv, line 2: no bench is left for P1: this contradicts only with S1"));
  one = given;
  one.wishes = {{"P9", false, "S1", "wishes.csv, line 2"}};
  CHECK(holds(fault(one), "no player of the draw is called \"P9\""));
  one = given;
  one.wishes = {{"P1", false, "S9", "wishes.csv, line 2"}};
  CHECK(holds(fault(one), "no bench, stringer or machine is called \"S9\""));
  one = given;
  one.benches[0].most = one.benches[1].most = 7;  // 16 rackets on the first day
  CHECK(holds(fault(one), "the shifts can't carry what is expected: 16.0 rackets, room for 14.0"));
  one = given;
  one.benches[0].days = one.benches[1].days = {1, 2};
  CHECK(holds(fault(one), "has a shift and room on all days"));
  one = given;
  one.benches = benches(3);  // 20 rackets, room for 21, but only two players of 2.5 fit on a bench
  for (HomeBench& bench : one.benches) bench.most = 7;
  for (int i = 1; i <= 8; ++i) one.people.push_back({"P" + std::to_string(i), 2.5, {}, {}, ""});
  CHECK(holds(fault(one), "no plan was found that keeps all limits"));
}

TEST_CASE("benches, people, wishes and pins are read from tables", "[plan]") {
  const auto read =
      read_benches("stringer,machine,skills,most,days\nMaren Oldvik,Table 2,natural gut|one-piece,24,1-3|5\nPio Castellane,,,,\n", "people.csv");
  REQUIRE(read);
  CHECK(read->at(0).name == "Maren Oldvik / Table 2");
  CHECK(read->at(0).skills == std::vector<std::string>{"natural gut", "one-piece"});
  CHECK(read->at(0).days == std::vector<int>{1, 2, 3, 5});
  CHECK(read->at(0).most == 24);
  CHECK(read->at(1).name == "Pio Castellane");
  const auto people = read_bench_people("player,rackets,before\nA,3,Maren Oldvik\n");
  REQUIRE(people);
  CHECK(people->at(0).rackets == 3);
  const auto wishes = read_bench_wishes("player,wish,with\nA,Only,Table 2\n", "wishes.csv");
  REQUIRE(wishes);
  CHECK(wishes->at(0).place == "wishes.csv, line 2");
  const auto said = [](const auto& outcome) { return outcome ? std::string("no fault") : outcome.error().message(); };
  CHECK(holds(said(read_benches("stringer,days\nA,4-2\n", "people.csv")), "people.csv, line 2, column 2 (days): '4-2' are no days"));
  CHECK(holds(said(read_benches("stringer,days\nA,1-4000000000\n", "people.csv")), "are no days"));
  CHECK(holds(said(read_benches("stringer,most\nA,none\n", "people.csv")), "no number of rackets"));
  CHECK(holds(said(read_benches("stringer\nA\nA\n", "people.csv")), "two benches are called"));
  CHECK(holds(said(read_bench_people("player,rackets\nA,-1\n", "p.csv")), "no number of rackets"));
  CHECK(holds(said(read_bench_people("player\nA\na\n", "p.csv")), "comes twice"));
  CHECK(holds(said(read_bench_wishes("player,wish,with\nA,maybe,B\n", "w.csv")), "'maybe' is no wish"));
  CHECK(holds(said(read_bench_pins("player,bench\nA,\n", "pins.csv")), "nobody is named"));
}

TEST_CASE("a plan speaks all four languages", "[plan]") { CHECK(plan_words().gaps().empty()); }
