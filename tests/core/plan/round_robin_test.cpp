#include "core/plan/round_robin.h"

#include <catch2/catch.hpp>
#include <set>

#include "tests/core/plan/lines.h"

using namespace weavelog;
using weavelog::test::named;

namespace {

RoundRobin group(std::size_t size, std::vector<RoundRobin::Result> results = {}) { return RoundRobin::make(named(size), results).value(); }
RoundRobin::Result won(std::size_t winner, std::size_t loser) { return {{winner, loser}, winner}; }

}  // namespace

TEST_CASE("everybody meets everybody once, nobody twice in a round", "[plan]") {
  for (std::size_t players = 3; players <= 8; ++players) {
    std::set<std::pair<std::size_t, std::size_t>> all;
    const auto rounds = circle_rounds(players);
    CHECK(rounds.size() == players - 1 + players % 2);
    for (const auto& round : rounds) {
      std::set<std::size_t> busy;
      for (const GroupMatch& match : round) {
        CHECK(all.insert({match.one, match.other}).second);
        CHECK(busy.insert(match.one).second);
        CHECK(busy.insert(match.other).second);
      }
    }
    CHECK(all.size() == players * (players - 1) / 2);
  }
}

TEST_CASE("a group's standing goes by wins, then by wins among those level", "[plan]") {
  // P1 and P2 have two wins, P1 lost to P2; P3 and P4 have one, P4 won between them.
  const auto done = group(4, {won(1, 0), won(0, 2), won(0, 3), won(2, 1), won(1, 3), won(3, 2)});
  CHECK(done.standing() == std::vector<std::size_t>{1, 0, 3, 2});
  CHECK(done.matches_left(0) == 0);
  const auto chances = done.first_chances(even_chances());
  REQUIRE(chances);
  CHECK(*chances == std::vector<double>{0, 1, 0, 0});
}

TEST_CASE("chances to come first are those of all ways", "[plan]") {
  const auto three = group(3).first_chances(even_chances());
  REQUIRE(three);
  for (const double one : *three) CHECK(one == Approx(1.0 / 3));
  // Three matches, each won by the first of two with 3/4: P1 first unless P2 or P3 beat it; round-the-table ties are shared.
  const auto better = group(3).first_chances([](std::size_t one, std::size_t other) { return one < other ? 0.75 : 0.25; });
  REQUIRE(better);
  // P1 wins both: 9/16. A circle (P1 > P2 > P3 > P1 or the other way): 3/4 x 3/4 x 1/4 + 1/4 x 1/4 x 3/4 = 12/64, a third each.
  CHECK(better->at(0) == Approx(9.0 / 16 + 12.0 / 64 / 3));
  CHECK(better->at(0) + better->at(1) + better->at(2) == Approx(1));
  CHECK_FALSE(group(8).first_chances(even_chances()));  // 2^28 ways
  CHECK(group(6).first_chances(even_chances()));
}

TEST_CASE("who withdraws from a group is walked over", "[plan]") {
  auto players = named(4);
  players[0].withdrawn = true;
  const std::vector<RoundRobin::Result> results{won(0, 1)};
  const auto left = RoundRobin::make(players, results).value();
  CHECK(left.winner(0, 1) == 0U);
  CHECK(left.winner(0, 2) == 2U);
  CHECK_FALSE(left.meets(0, 3));
  CHECK(left.matches_left(1) == 2);
  CHECK(left.first_chances(even_chances())->at(0) == 0);
}

TEST_CASE("what a group can't be is named", "[plan]") {
  const auto said = [](std::vector<BracketLine> players, std::vector<RoundRobin::Result> results = {}) {
    const auto made = RoundRobin::make(std::move(players), results);
    return made ? std::string("no fault") : made.error().message();
  };
  CHECK(said(named(2)).find("3 to 8 players") != std::string::npos);
  CHECK(said(named(9)).find("here are 9") != std::string::npos);
  auto twice = named(4);
  twice[2].player = "p1";
  CHECK(said(twice).find("p1 is in the group twice") != std::string::npos);
  auto empty = named(4);
  empty[1].player.clear();
  CHECK(said(empty).find("place 2 of the group: nobody is here") != std::string::npos);
  CHECK(said(named(4), {{{0, 0}, 0}}).find("do not meet") != std::string::npos);
  CHECK(said(named(4), {{{0, 1}, 2}}).find("did not play") != std::string::npos);
  CHECK(said(named(4), {won(0, 1), won(1, 0)}).find("another winner already: P1") != std::string::npos);
}
