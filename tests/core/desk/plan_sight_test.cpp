#include "core/desk/plan_sight.h"

#include <catch2/catch.hpp>

#include "core/desk/room_benches.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

PlanSight look(const DayRoom& room) {
  const RoomDay day = room.day();
  return plan_sight(*room.ledger, room.event, day, must(plan_day(day.input())));
}

std::size_t count(const std::vector<PlanNews>& news, PlanNews::Kind kind) {
  return static_cast<std::size_t>(std::count_if(news.begin(), news.end(), [&](const auto& one) { return one.kind == kind; }));
}

}  // namespace

TEST_CASE("what happened to the plan since the last look is told, what matters most first") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "18:00");
  NewDraw wanted;
  wanted.name = "Singles";
  for (const char* name : {"Ilse Quillon", "Ilse Vantreel", "Ilse Osmer", "Ilse Tarn"}) {
    BracketLine line;
    line.player = name;
    wanted.lines.push_back(line);
  }
  room.append(add_draw(room.event, {}, wanted, room.clock.now()));
  (void)room.bring("Quillon", room.at("09:40"));
  (void)room.bring("Vantreel", room.at("10:30"));
  const PlanSight before = look(room);
  CHECK(before.rackets.size() == 2);
  CHECK(news_since(before, before).empty());
  CHECK(news_since(before, look(room)).empty());  // a second look is no news

  const auto rush = room.bring("Osmer", room.at("09:35"), Rush::on_court);
  room.append(note_winner(event_draws(*room.ledger, room.event)[0], {1, 0, EndOfMatch::played, "", "Mara", room.clock.now()}));
  room.append(withdraw_line(event_draws(*room.ledger, room.event)[0], 3, room.clock.now()));
  const auto news = news_since(before, look(room));
  CHECK(count(news, PlanNews::Kind::came) == 1);
  CHECK(count(news, PlanNews::Kind::withdrew) == 1);
  CHECK(count(news, PlanNews::Kind::played) == 1);
  CHECK(count(news, PlanNews::Kind::now_late) == 1);
  CHECK(count(news, PlanNews::Kind::later) == 1);
  CHECK(news.front().kind == PlanNews::Kind::now_late);
  CHECK(news.front().who == "1 Quillon Ilse");
  const auto came = std::find_if(news.begin(), news.end(), [](const auto& item) { return item.kind == PlanNews::Kind::came; });
  CHECK(came->who == "3 Osmer Ilse");
  CHECK(came->after == "Merrin");

  room.step(rush, Stage::on_machine, "Merrin");
  room.step(rush, Stage::strung, "Merrin");
  const auto after = news_since(before, look(room));
  CHECK(count(after, PlanNews::Kind::came) == 0);
  CHECK(count(after, PlanNews::Kind::off_the_list) == 0);
}

TEST_CASE("a sight is kept as text and read back, and anything else is refused") {
  PlanSight sight;
  sight.at = kMonday;
  sight.rackets["ab"] = {"12 Ilse \"Osmer\"", "Merrin", kMonday + kHour, true};
  sight.homes["Ilse Osmer"] = "Merrin";
  sight.withdrawn.insert("Ilse Tarn");
  sight.results["Singles"] = 3;
  const PlanSight back = must(sight_from(sight_text(sight)));
  CHECK(back.rackets == sight.rackets);
  CHECK(back.homes == sight.homes);
  CHECK(back.withdrawn == sight.withdrawn);
  CHECK(back.results == sight.results);
  CHECK(back.at == sight.at);
  for (const char* bad : {"", "{}", "[]", R"({"version":2})", R"({"version":1,"at":1,"rackets":[],"homes":{},"results":{},"withdrawn":[]})",
                          R"({"version":1,"at":"x","rackets":{},"homes":{},"results":{},"withdrawn":[]})"})
    CHECK(sight_from(bad).error().code == FaultCode::bad_input);
}
