#include "core/desk/room_benches.h"

#include <catch2/catch.hpp>

#include "core/desk/machines.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Room : Desk {
  explicit Room(const std::string& name = "head") : Desk(name) {}
  void open() {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now()));
    for (const char* name : {"Merrin", "Odalys", "Corvin"}) member(name, TeamRole::stringer);
    member("Ines", TeamRole::desk);
    Machine machine;
    machine.name = "by the window";
    machine.kind = MachineKind::constant_pull;
    machine.whose = "Odalys";
    append(add_machine(event, {}, machine, clock.now()));
  }
  void member(const char* name, TeamRole role) {
    TeamMember one;
    one.name = name;
    one.role = role;
    one.languages = "en fr";
    append(put_team_member(must(load_event(*ledger, event)), one, clock.now()));
  }
  void draw(int size) {
    NewDraw wanted;
    wanted.name = "Singles";
    for (int i = 0; i < size; ++i) {
      BracketLine line;
      line.player = "Player " + std::to_string(i + 1);
      line.rating = 1900 - 7 * i;
      wanted.lines.push_back(line);
    }
    append(add_draw(event, {}, wanted, clock.now()));
  }
  [[nodiscard]] std::unique_ptr<RoomBenches> benches() const { return must(RoomBenches::make(*ledger, event)); }
  void wish(const char* player, bool never, const char* with) {
    BenchAsk ask;
    ask.player = player;
    if (never) ask.never = true;
    for (const auto& one : must(load_event(*ledger, event)).team)
      if (one.now.name == with) ask.stringer = one.id();
    (void)add(event, ask, kEventBook);
  }
};

}  // namespace

TEST_CASE("a room's own team, machines and draw make a plan that its book keeps, and that is found again on another tablet") {
  Room room;
  room.open();
  room.draw(16);
  auto held = room.benches();
  REQUIRE(held->benches().benches().size() == 3);  // who takes rackets in strings none
  CHECK_FALSE(held->held());
  const BenchPlan plan = must(held->benches().plan());
  room.append(held->keep(plan.choice(), "Mara", room.clock.now()));
  held = room.benches();
  CHECK(held->held() == plan.choice());
  CHECK(held->keep(plan.choice(), "Mara", room.clock.now()).empty());
  for (const auto& place : held->book().places) {
    const bool odalys = place.now.stringer == held->hands(held->benches().bench("Odalys").value()).stringer;
    CHECK(static_cast<bool>(place.now.machine) == odalys);
  }
  Room other("desk");
  other.event = room.event;
  meet(room, other, room.event);
  CHECK(other.benches()->held() == plan.choice());
  CHECK(other.benches()->same_room(*room.benches()));
  // Nothing happened: nobody moves.
  const BenchPlan again = must(other.benches()->benches().plan());
  CHECK(again.choice() == plan.choice());
  CHECK(again.moved.empty());
}

TEST_CASE("who is moved by hand and pinned stays, a wish holds, and one that contradicts a pin is named") {
  Room room;
  room.open();
  room.draw(16);
  room.wish("player 3", true, "Corvin");
  auto held = room.benches();
  BenchPlan plan = must(held->benches().plan());
  const auto person = [&](const char* name) { return held->benches().person(name).value(); };
  const auto bench = [&](const char* name) { return held->benches().bench(name).value(); };
  CHECK(plan.choice()[person("Player 3")] != bench("Corvin"));
  room.append(held->keep(plan.choice(), "Mara", room.clock.now()));
  held = room.benches();
  const auto refused = held->move(person("Player 3"), bench("Corvin"), true, "Mara", room.clock.now());
  REQUIRE_FALSE(refused);
  CHECK(refused.error().message().find("Player 3") != std::string::npos);
  const std::size_t to = plan.choice()[person("Player 1")] == bench("Merrin") ? bench("Odalys") : bench("Merrin");
  room.append(held->move(person("Player 1"), to, true, "Mara", room.clock.now()));
  held = room.benches();
  plan = must(held->benches().plan());
  CHECK(plan.choice()[person("Player 1")] == to);
  CHECK(held->benches().why(plan.choice(), person("Player 1")).kind == BenchReason::Kind::pinned);
  room.wish("Player 1", true, to == bench("Merrin") ? "Merrin" : "Odalys");
  const auto contradiction = RoomBenches::make(*room.ledger, room.event);
  REQUIRE_FALSE(contradiction);
  CHECK(contradiction.error().message().find("Player 1") != std::string::npos);
}

TEST_CASE("after results only those who may still play are planned, and hardly anybody moves") {
  Room room;
  room.open();
  room.draw(16);
  auto held = room.benches();
  const BenchPlan plan = must(held->benches().plan());
  room.append(held->keep(plan.choice(), "Mara", room.clock.now()));
  const auto before = room.benches();
  for (std::size_t match = 0; match < 8; ++match)
    room.append(note_winner(event_draws(*room.ledger, room.event).at(0), {1, 2 * match, EndOfMatch::played, "", "Mara", room.clock.now()}));
  held = room.benches();
  CHECK(held->benches().people().size() == 8);
  CHECK_FALSE(held->same_room(*before));
  const BenchPlan next = must(held->benches().plan());
  CHECK(next.moved.size() <= 2);
}

TEST_CASE("a room chooses from which round on nobody shares a bench, and nonsense is refused") {
  Room room;
  room.open();
  room.draw(16);
  const auto set = [&](std::int64_t places, const char* chances = "") {
    PlanRules rules;
    rules.hard_places = places;
    rules.chances = chances;
    return set_plan_rules(room.event, room.benches()->book(), rules);
  };
  const auto weigh = [&](const char* weights) {
    PlanRules rules;
    rules.round_weights = weights;
    return set_plan_rules(room.event, room.benches()->book(), rules);
  };
  const auto margin = [&](std::int64_t minutes) {
    PlanRules rules;
    rules.margin_min = minutes;
    return set_plan_rules(room.event, room.benches()->book(), rules);
  };
  CHECK(margin(0));
  CHECK(margin(kMostMarginMin));
  CHECK(margin(-1).error().where == "margin_min");
  CHECK(margin(kMostMarginMin + 1).error().where == "margin_min");
  CHECK(weigh("16 x").error().where == "round weights");
  CHECK_FALSE(weigh("-1 2"));
  CHECK_FALSE(weigh("1 2 3 4 5 6 7 8 9"));
  CHECK(weigh("16; 8, 0.5"));
  // Three benches, and eight eighths of which all can meet: apart from the final on is possible, from the quarter-finals not.
  CHECK(must(room.benches()->benches().plan()).solution.rule == BenchSolution::Rule::impossible);
  room.append(set(2));
  CHECK(must(room.benches()->benches().plan()).solution.rule == BenchSolution::Rule::kept);
  room.append(set(0, "even"));
  CHECK(must(room.benches()->benches().plan()).solution.rule == BenchSolution::Rule::none);
  CHECK(room.benches()->book().rules.now.chances == "even");
  for (const std::int64_t wrong : {1, 3, -2, 512}) CHECK(set(wrong).error().code == FaultCode::bad_input);
  CHECK(set(8, "luck").error().code == FaultCode::bad_input);
}

TEST_CASE("what is missing for a plan of benches is said") {
  Room room;
  CHECK(RoomBenches::make(*room.ledger, room.event).error().code == FaultCode::not_found);
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  CHECK(RoomBenches::make(*room.ledger, room.event).error().message().find("team") != std::string::npos);
  room.member("Merrin", TeamRole::stringer);
  CHECK(RoomBenches::make(*room.ledger, room.event).error().message().find("draw") != std::string::npos);
}

TEST_CASE("a wish is written once, can be turned round and dropped, and binds the next plan") {
  Room room;
  room.open();
  room.draw(8);
  BenchAsk ask;
  ask.player = "Player 3";
  for (const auto& one : must(load_event(*room.ledger, room.event)).team)
    if (one.now.name == "Corvin") ask.stringer = one.id();
  room.append(add_wish(room.event, load_bench_book(*room.ledger, room.event), ask));
  CHECK(must(add_wish(room.event, load_bench_book(*room.ledger, room.event), ask)).empty());
  auto held = room.benches();
  const auto corvin = held->benches().bench("Corvin").value();
  CHECK(must(held->benches().plan()).choice()[held->benches().person("Player 3").value()] == corvin);
  ask.never = true;
  room.append(add_wish(room.event, load_bench_book(*room.ledger, room.event), ask));
  REQUIRE(load_bench_book(*room.ledger, room.event).asks.size() == 1);
  held = room.benches();
  CHECK(must(held->benches().plan()).choice()[held->benches().person("Player 3").value()] != corvin);
  room.append(remove_wish(room.event, load_bench_book(*room.ledger, room.event).asks[0]));
  CHECK(load_bench_book(*room.ledger, room.event).asks.empty());
  CHECK(add_wish(room.event, {}, {}).error().code == FaultCode::bad_input);
  ask.stringer = {};
  CHECK(add_wish(room.event, {}, ask).error().code == FaultCode::bad_input);
}
