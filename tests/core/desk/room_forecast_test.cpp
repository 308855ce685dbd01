#include "core/desk/room_forecast.h"

#include <catch2/catch.hpp>
#include <numeric>

#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

void add_singles(DayRoom& room, int size) {
  NewDraw wanted;
  wanted.name = "Singles";
  for (int i = 0; i < size; ++i) {
    BracketLine line;
    line.player = "Ilse Player" + std::to_string(i + 1);
    wanted.lines.push_back(line);
  }
  room.append(add_draw(room.event, event_draws(*room.ledger, room.event), wanted, room.clock.now()));
}

}  // namespace

TEST_CASE("rackets are forecast for the days on which a draw is still played, by who is still in") {
  DayRoom room;
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-05-28", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  room.clock.set(room.at("08:30"));
  add_singles(room, 8);
  for (int i = 1; i <= 4; ++i) (void)room.bring(("Player" + std::to_string(i)).c_str(), room.at("12:00"));
  const ForecastInput input = must(room_forecast_input(*room.ledger, room.event, room.clock.now()));
  CHECK(input.days == std::vector<std::string>{"2031-05-26", "2031-05-27", "2031-05-28"});
  REQUIRE(input.players.size() == 8);
  for (std::size_t day = 0; day < 3; ++day) {
    double players = 0;
    for (const ForecastPlayer& player : input.players) players += player.chances[day];
    CHECK(players == Approx(8 >> day));  // a round a day, the final on the last
  }
  CHECK(input.players[0].rackets == 1);
  CHECK(input.players[0].string == "Tarnbrook Silk");
  CHECK(input.players[7].rackets == 0);
  CHECK(std::accumulate(input.taken_in.begin(), input.taken_in.end(), 0.0) == 4);
  const Forecast made = must(forecast_of(input));
  CHECK(made.days[0].rackets.mean > made.days[2].rackets.mean);

  // Once it is past the morning, today is over for a forecast; and who lost comes no more.
  const auto draws = event_draws(*room.ledger, room.event);
  room.append(note_winner(draws[0], {1, 0, EndOfMatch::played, "6-4 6-4", "Mara", room.clock.now()}));
  room.clock.set(room.at("11:00"));
  const ForecastInput later = must(room_forecast_input(*room.ledger, room.event, room.clock.now()));
  CHECK(later.days.size() == 2);
  CHECK(later.players[0].chances[0] == Approx(1));
  CHECK(later.players[1].chances[0] == Approx(0));
  // The order of play has the last word on when a round is played.
  PlaySaid said;
  said.not_before = room.at("15:00") + 2 * kDay;
  room.append(set_play(event_draws(*room.ledger, room.event)[0], 2, 0, said));
  CHECK(must(room_forecast_input(*room.ledger, room.event, room.clock.now())).players[0].chances[1] > 1 - 1e-9);
}

TEST_CASE("of a group everybody plays every round that is left, on its day") {
  DayRoom room;
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-05-28", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  room.clock.set(room.at("08:30"));
  NewDraw wanted;
  wanted.name = "Group A";
  wanted.kind = DrawKind::round_robin;
  for (int i = 0; i < 4; ++i) {
    BracketLine line;
    line.player = "Ilse Player" + std::to_string(i + 1);
    wanted.lines.push_back(line);
  }
  room.append(add_draw(room.event, event_draws(*room.ledger, room.event), wanted, room.clock.now()));
  const auto input = [&] { return must(room_forecast_input(*room.ledger, room.event, room.clock.now())); };
  const auto group = [&] { return event_draws(*room.ledger, room.event).at(0); };
  REQUIRE(input().players.size() == 4);
  for (const ForecastPlayer& player : input().players) CHECK(player.chances == std::vector<double>{1, 1, 1});  // three rounds, three days
  CHECK(must(forecast_of(input())).rackets.mean == Approx(4 * 3 * 2).epsilon(0.05));  // two rackets a match where nothing is known
  // The first round is played; a match of the second is put off to the last day, on which its two play twice and count once.
  for (std::size_t match = 0; match < 2; ++match)
    room.append(note_winner(group(), {1, *group().sides(1, match).first, EndOfMatch::played, "6-4 6-4", "Mara", room.clock.now()}));
  const auto [one, other] = group().sides(2, 0);
  PlaySaid said;
  said.not_before = room.at("15:00") + 2 * kDay;
  room.append(set_play(group(), 2, 0, said));
  room.clock.set(room.at("18:00"));  // the day is over for a forecast
  const ForecastInput later = input();
  CHECK(later.days.size() == 2);
  CHECK(later.players[*one].matches == 1);
  // Whichever day the round is thought to be on, the match itself says its own.
  CHECK(later.players[*one].chances == std::vector<double>{0, 1});
  CHECK(later.players[*other].chances == std::vector<double>{0, 1});
  // Who withdraws plays no more, and nobody plays against them.
  room.append(withdraw_line(group(), *one, room.clock.now()));
  CHECK(input().players[*one].chances == std::vector<double>{0, 0});
}

TEST_CASE("without a draw, or after the event, there is nothing to forecast, and that is said") {
  DayRoom room;
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-05-28", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  CHECK(room_forecast_input(*room.ledger, room.event, room.at("08:00")).error().code == FaultCode::not_found);
  CHECK(room_forecast_input(*room.ledger, room.event, room.at("08:00") + 5 * kDay).error().code == FaultCode::refused);
}
