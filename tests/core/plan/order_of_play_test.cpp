#include "core/plan/order_of_play.h"

#include <catch2/catch.hpp>

#include "core/base/iso_time.h"
#include "tests/support/words.h"

using namespace weavelog;

namespace {

Bracket eight(std::vector<BracketResult> results = {}) {
  std::vector<BracketLine> lines(8);
  for (std::size_t i = 0; i < 8; ++i) lines[i].player = "P" + std::to_string(i + 1);
  return Bracket::make(lines, results).value();
}

const std::string kHeader = "day,court,round,match,at,not_before,follows\n";

/// Times as "round/match begin", or the fault.
std::string told(const std::string& rows, const Bracket& bracket = eight(), const std::string& zone = "Europe/Lisbon") {
  const auto order = read_order(kHeader + rows, zone, "order.csv");
  if (!order) return order.error().message();
  const auto times = expected_times(*order, {{"", &bracket}});
  if (!times) return times.error().message();
  std::string out;
  for (const auto& [match, time] : *times)
    out +=
        std::to_string(match.round) + "/" + std::to_string(match.match + 1) + (time.estimated ? "~" : " ") + iso_utc(time.begin).substr(11, 5) + " ";
  return out;
}

}  // namespace

TEST_CASE("courts, not before, follows: matches begin when they can", "[plan]") {
  // Lisbon is an hour ahead of UTC in summer: 11:00 is 10:00Z. A match takes 90 minutes, a player rests 60 at least.
  CHECK(told("2031-06-02,Centre,1,1,11:00,,\n2031-06-02,Centre,1,2,,,\n2031-06-02,Centre,1,3,,14:30,\n2031-06-02,Court 2,1,4,,,\n") ==
        "1/1 10:00 1/2~11:30 1/3~13:30 1/4~10:00 ");
  // The second round waits for both matches that lead to it (11:30 + 90 min + rest), or for another court's match.
  CHECK(told("2031-06-02,Centre,1,1,11:00,,\n2031-06-02,Centre,1,2,,,\n2031-06-02,Court 2,2,1,,,\n") == "1/1 10:00 1/2~11:30 2/1~14:00 ");
  CHECK(told("2031-06-02,Centre,1,1,11:00,,\n2031-06-02,Court 2,1,2,,,1/1\n") == "1/1 10:00 1/2~11:30 ");
  CHECK(told("2031-06-02,Centre,1,1,11:00,,\n", eight(), "America/New_York") == "1/1 15:00 ");
  CHECK(told("2031-06-02,Centre,2,1,11:00,,\n", eight({{1, 0}, {1, 2}})) == "2/1 10:00 ");
}

TEST_CASE("an order of play that can't be is named and located", "[plan]") {
  CHECK(holds(told("2031-06-02,Centre,2,1,11:00,,\n2031-06-03,Centre,1,1,11:00,,\n"),
             "order.csv, line 2, round 2, match 1: this match is before one that leads to it"));
  CHECK(holds(told("2031-06-02,Court 2,2,1,12:00,,\n2031-06-02,Centre,1,1,11:00,,\n"), "round 1, match 1 is not over by then"));
  CHECK(holds(told("2031-06-02,Centre,2,1,,,\n2031-06-02,Centre,1,1,11:00,,\n"),
             "before one that leads to it: round 1, match 1 is on 2031-06-02, later on this court"));
  CHECK(holds(told("2031-06-02,Centre,1,1,,,1/2\n2031-06-02,Court 2,1,2,,,1/1\n"), "waits for one that waits for it"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,\n2031-06-02,Centre,1,1,,,\n"), "comes twice"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,\n2031-06-02,Centre,1,2,10:00,,\n"), "before that of the match ahead"));
  CHECK(holds(told("2031-06-02,Centre,4,1,11:00,,\n"), "no such match in a draw of 8"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,\n", eight({{1, 0}})), "decided already"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,1/4\n"), "which is not in the order of play"));
  CHECK(holds(told("2031-06-02,Centre,1,1,,,\n"), "no time is said on this day"));
  CHECK(holds(told("2031-02-30,Centre,1,1,11:00,,\n"), "order.csv, line 2, column 1 (day)"));
  CHECK(holds(told("2031-06-02,Centre,1,1,25:00,,\n"), "(at): '25:00' is no time of day"));
  CHECK(holds(told("2031-06-02,Centre,1,1,+90,,\n"), "no time of day"));
  CHECK(holds(told("2031-06-02,Centre,1,0,11:00,,\n"), "(match)"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,later\n"), "'later' is no match"));
  CHECK(holds(told("2031-06-02,,1,1,11:00,,\n"), "no court"));
  CHECK(holds(told("2031-06-02,Centre,1,1,11:00,,\n", eight(), "Lisbon/Nowhere"), "no time zone"));
  const auto order = read_order("day,court,draw,round,match,at\n2031-06-02,Centre,Doubles,1,1,11:00\n", "UTC");
  const Bracket bracket = eight();
  CHECK(holds(expected_times(*order, {{"", &bracket}}).error().message(), "no draw of this name"));
}
