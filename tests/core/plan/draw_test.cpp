#include "core/plan/draw.h"

#include <catch2/catch.hpp>

#include "tests/core/plan/lines.h"
#include "tests/support/words.h"

using namespace weavelog;
using weavelog::test::named;

namespace {

BracketLine player(const std::string& name, double rating = 1500) {
  BracketLine out;
  out.player = name;
  out.rating = rating;
  return out;
}

}  // namespace

TEST_CASE("who withdraws before the first match is walked over, or replaced", "[plan]") {
  auto draw = Draw::make(named(8)).value();
  REQUIRE(draw.withdraw(2));
  CHECK(draw.bracket().winner(1, 1) == 3U);
  CHECK_FALSE(draw.bracket().played(1, 1));
  const MeetingOdds gone(draw.bracket(), even_chances());
  CHECK(gone.meet(2, 3) == 0);
  CHECK(gone.reaches(3, 2) == 1);
  CHECK(gone.matches_left(2) == 0);
  CHECK(gone.matches_left(3) == Approx(1.5));

  BracketLine loser = player("L1");
  loser.seed = 3;  // of qualifying: not a seed here
  REQUIRE(draw.replace(2, loser));
  CHECK_FALSE(draw.bracket().winner(1, 1));
  CHECK(draw.bracket().lines()[2].player == "L1");
  CHECK_FALSE(draw.bracket().lines()[2].seed);
  CHECK(holds(fault_of(draw.replace(2, player("L2"))), "has not withdrawn"));
}

TEST_CASE("who withdraws later keeps what was won; the next opponent goes on", "[plan]") {
  auto draw = Draw::make(named(8)).value();
  REQUIRE(draw.record({1, 0}));
  REQUIRE(draw.withdraw(0));
  CHECK(draw.bracket().winner(1, 0) == 0U);
  CHECK(draw.bracket().played(1, 0));
  CHECK_FALSE(draw.bracket().winner(2, 0));  // against whom is not known yet
  const MeetingOdds odds(draw.bracket(), even_chances());
  CHECK(odds.reaches(2, 3) == Approx(0.5));  // wins the first match, walks over in the second
  CHECK(odds.plays(2, 2) == Approx(0));
  REQUIRE(draw.record({1, 3}));
  CHECK(draw.bracket().winner(2, 0) == 3U);
  CHECK(holds(fault_of(draw.replace(0, player("L1"))), "has a result already"));
  CHECK(holds(fault_of(draw.withdraw(0)), "withdrawn already"));
  CHECK(holds(fault_of(draw.withdraw(2)), "out already"));
  CHECK(holds(fault_of(draw.record({2, 0})), "who withdrew wins no match"));
}

TEST_CASE("of two who withdrew nobody comes, and the next goes on alone", "[plan]") {
  auto draw = Draw::make(named(8)).value();
  REQUIRE(draw.withdraw(0));
  REQUIRE(draw.withdraw(1));
  const MeetingOdds odds(draw.bracket(), even_chances());
  CHECK(odds.reaches(2, 3) == Approx(0.5));
  CHECK(odds.reaches(0, 3) == 0);
  REQUIRE(draw.record({1, 2}));
  CHECK(draw.bracket().winner(2, 0) == 2U);
  double sum = 0;
  const MeetingOdds later(draw.bracket(), even_chances());
  for (std::size_t line = 0; line < 8; ++line) sum += later.reaches(line, 4);
  CHECK(sum == Approx(1));
}

TEST_CASE("results are tapped and taken back, never half", "[plan]") {
  auto draw = Draw::make(named(4)).value();
  REQUIRE(draw.record({1, 0}));
  CHECK(holds(fault_of(draw.record({2, 0})), "not decided yet"));
  CHECK(draw.results().size() == 1);
  REQUIRE(draw.record({1, 3, "", MatchEnd::walkover}));
  CHECK_FALSE(draw.bracket().played(1, 1));
  REQUIRE(draw.record({2, 3, "", MatchEnd::retired}));
  CHECK(draw.bracket().played(2, 0));
  CHECK(holds(fault_of(draw.take_back(1, 1)), "a later result is built on this one: round 2, match 1"));
  CHECK(holds(fault_of(draw.take_back(1, 7)), "no result"));
  REQUIRE(draw.take_back(2, 0));
  REQUIRE(draw.take_back(1, 1));
  CHECK_FALSE(draw.bracket().winner(1, 1));
  CHECK(holds(fault_of(draw.withdraw(9)), "no such line"));
  CHECK(holds(fault_of(draw.fill(0, player("X"))), "somebody stands here"));
}

TEST_CASE("qualifying feeds the main draw, with places kept until it is known", "[plan]") {
  auto lines = named(16, "Q");
  for (std::size_t i = 0; i < 16; ++i) lines[i].rating = 1500 + (i % 4 == 0 ? 100.0 : 0.0);
  const std::vector<BracketResult> results{{1, 0}, {1, 2}, {2, 2}, {1, 5}, {1, 6}};
  const auto qualifying = Qualifying::make(lines, 4, results);
  REQUIRE(qualifying);
  REQUIRE(qualifying->qualifier(0));
  CHECK(qualifying->qualifier(0)->player == "Q3");
  CHECK(qualifying->qualifier(0)->entry == DrawEntry::qualifier);
  CHECK_FALSE(qualifying->qualifier(1));
  REQUIRE(qualifying->lucky_losers().size() == 1);
  CHECK(qualifying->lucky_losers()[0].player == "Q1");

  auto main = named(8);
  main[3].player.clear();
  main[6].player.clear();
  main[7].player.clear();
  const auto feed = [&](const std::vector<std::pair<std::size_t, std::size_t>>& places) {
    auto places_of = main;
    for (const auto& [line, section] : places) places_of[line].qualifier = section;
    return fed_by(places_of, *qualifying);
  };
  const auto fed = feed({{3, 1}, {6, 2}, {7, 4}});
  REQUIRE(fed);
  CHECK(fed->at(3).player == "Q3");
  CHECK(fed->at(6).player.empty());
  CHECK(*fed->at(6).rating == Approx(1500));  // Q6 or Q7, both of 1500
  CHECK(*fed->at(7).rating > 1500);           // the best of section 4 may come
  REQUIRE(Bracket::make(*fed));
  CHECK(fed_by(*fed, *qualifying)->at(3).player == "Q3");  // again, once it is there
  CHECK(holds(fault_of(feed({{0, 1}})), "somebody else stands here"));
  CHECK(holds(fault_of(feed({{3, 5}})), "4 sections only"));
  CHECK(holds(fault_of(feed({{3, 2}, {6, 2}})), "two places"));
  CHECK(holds(fault_of(Qualifying::make(lines, 3)), "can't be 3 sections"));
  CHECK(holds(fault_of(Qualifying::make(lines, 4, std::vector<BracketResult>{{2, 4}})), "section 2, round 2"));
  auto twice = lines;
  twice[9].player = "Q1";
  CHECK(holds(fault_of(Qualifying::make(twice, 4)), "Q1 is in qualifying twice"));
}

TEST_CASE("pairs are two people on a line", "[plan]") {
  const auto lines = read_bracket(
      "line,player,partner,entry,withdrawn\n1,Ada Kestrel,Bo Lindham,WC,\n2,bye,,,\n3,Cleo Marsten,Dag Orsova,,yes\n4,Eva Pellin,Finn Quade,LL,\n",
      "pairs.csv");
  REQUIRE(lines);
  CHECK(line_name(lines->at(0)) == "Ada Kestrel / Bo Lindham");
  CHECK(people_of(lines->at(3)) == std::vector<std::string>{"Eva Pellin", "Finn Quade"});
  CHECK(lines->at(0).entry == DrawEntry::wild_card);
  CHECK(lines->at(2).withdrawn);
  CHECK(Bracket::make(*lines)->winner(2, 0) == std::nullopt);
  CHECK(Bracket::make(*lines)->winner(1, 1) == 3U);
  CHECK(read_results("round,winner,end\n2,eva pellin / finn quade,retired\n", *lines)->at(0).winner == 3);
  CHECK(read_results("round,winner,end\n2,Bo Lindham,\n", *lines)->at(0).winner == 0);
  const auto fault = [](const char* text) { return fault_of(read_bracket(text, "d.csv")); };
  CHECK(holds(fault("line,player,entry\n1,A,maybe\n2,B,\n"), "d.csv, line 2, column 3 (entry): 'maybe' is no way into a draw"));
  CHECK(holds(fault("line,player,withdrawn\n1,A,perhaps\n2,B,\n"), "neither yes nor no"));
  CHECK(holds(fault("line,player,partner\n1,,A\n2,B,\n"), "a partner of nobody"));
  CHECK(holds(fault_of(read_results("round,winner,end\n1,1,won\n", *lines, "r.csv")), "r.csv, line 2, column 3 (end): 'won' is no end"));
  auto twice = *lines;
  twice[3].partner = "ada kestrel";
  CHECK(holds(fault_of(Bracket::make(twice)), "is in the draw twice"));
}
