#include "core/desk/room_order.h"

#include <catch2/catch.hpp>

#include "core/base/text.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Order : DayRoom {
  Order() {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now()));
    clock.set(at("08:00"));
    for (const char* name : {"Singles", "Doubles"}) {
      NewDraw wanted;
      wanted.name = name;
      for (int i = 1; i <= 4; ++i) {
        BracketLine line;
        line.player = "Ilse Player" + std::to_string(i);
        if (wanted.name == "Doubles") line.partner = "Bela Partner" + std::to_string(i);
        wanted.lines.push_back(line);
      }
      append(add_draw(event, draws(), wanted, clock.now()));
    }
  }
  [[nodiscard]] std::vector<HeldDraw> draws() const { return event_draws(*ledger, event); }
  void place(std::size_t draw, int round, std::size_t match, const PlaySaid& said) { append(set_play(draws()[draw], round, match, said)); }
  [[nodiscard]] RoomOrder order() const { return room_order(draws(), "Europe/Lisbon"); }
};

}  // namespace

TEST_CASE("a match that follows another one is expected when that one ends, and who plays twice rests between") {
  Order room;
  PlaySaid said;
  said.court = "Centre";
  said.not_before = room.at("11:00");
  room.place(0, 1, 0, said);
  PlaySaid next;
  next.court = "Centre";
  next.after = must(match_id(room.draws()[0], 1, 0));
  room.place(0, 1, 1, next);
  PlaySaid pairs;
  pairs.court = "Court 2";
  pairs.not_before = room.at("12:00");
  room.place(1, 1, 0, pairs);  // whose first players are in the singles at 11
  const RoomOrder order = room.order();
  REQUIRE_FALSE(order.trouble);
  REQUIRE(order.matches.size() == 3);
  CHECK(order.matches[0].begin == room.at("11:00"));
  CHECK(order.matches[0].estimated);  // "not before" is no promise
  const auto follows = std::find_if(order.matches.begin(), order.matches.end(), [](const auto& one) { return one.match == 1; });
  CHECK(follows->begin == room.at("12:30"));  // ninety minutes, our own assumption
  CHECK(follows->estimated);
  const auto doubles = std::find_if(order.matches.begin(), order.matches.end(), [](const auto& one) { return one.draw_name == "Doubles"; });
  CHECK(doubles->begin == room.at("13:30"));  // an hour's rest after the singles
  CHECK(doubles->players.size() == 4);
  CHECK(next_matches(order, room.at("10:00")).at(search_key("Ilse Player1")) == room.at("11:00"));
  CHECK(next_matches(order, room.at("11:30")).at(search_key("Ilse Player1")) == room.at("13:30"));
  CHECK(match_of_id(room.draws()[0], *next.after) == std::pair(1, std::size_t{0}));
  CHECK_FALSE(match_of_id(room.draws()[1], *next.after));
}

TEST_CASE("a final that is told before its semi-final is expected after it; who follow each other in a ring are not expected at all") {
  Order room;
  PlaySaid said;
  said.not_before = room.at("15:00");
  room.place(0, 1, 0, said);
  said.not_before = room.at("11:00");
  room.place(0, 2, 0, said);
  RoomOrder order = room.order();
  REQUIRE(order.matches.size() == 2);
  CHECK(order.matches[0].round == 1);
  CHECK(order.matches[1].begin == room.at("17:30"));
  // On one court it can't be at all: that is said, and the times that were said still count.
  PlaySaid court;
  court.court = "Centre";
  room.place(0, 1, 0, court);
  room.place(0, 2, 0, court);
  order = room.order();
  REQUIRE(order.trouble);
  CHECK(order.matches[0].begin == room.at("11:00"));
  court.court = "";
  room.place(0, 2, 0, court);
  PlaySaid ring;
  ring.after = must(match_id(room.draws()[1], 1, 1));
  room.place(1, 1, 0, ring);
  ring.after = must(match_id(room.draws()[1], 1, 0));
  room.place(1, 1, 1, ring);
  order = room.order();
  CHECK_FALSE(order.trouble);
  CHECK(order.matches.size() == 2);
  PlaySaid self;
  self.after = must(match_id(room.draws()[0], 1, 0));
  CHECK(set_play(room.draws()[0], 1, 0, self).error().code == FaultCode::bad_input);
  CHECK(match_id(room.draws()[0], 3, 0).error().code == FaultCode::bad_input);
}

TEST_CASE("a racket without a promise is wanted before its player's next match") {
  Order room;
  TeamMember one;
  one.name = "Merrin";
  one.role = TeamRole::stringer;
  room.append(put_team_member(must(load_event(*room.ledger, room.event)), one, room.clock.now()));
  PlaySaid said;
  said.not_before = room.at("14:00");
  room.place(0, 1, 0, said);
  (void)room.bring("Player1", std::nullopt);
  (void)room.bring("Player2", room.at("12:00"));
  (void)room.bring("Player3", std::nullopt);
  const RoomDay day = room.day();
  REQUIRE(day.input().jobs.size() == 3);
  CHECK(day.input().jobs[0].due == room.at("13:00") - day.finishing());
  CHECK(day.input().jobs[1].due == room.at("12:00") - day.finishing());
  CHECK_FALSE(day.input().jobs[2].due);
}
