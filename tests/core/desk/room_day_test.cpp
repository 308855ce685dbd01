#include "core/desk/room_day.h"

#include <catch2/catch.hpp>

#include "core/desk/room_benches.h"
#include "core/model/stock.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const PlannedJob& planned(const RoomDay& day, const DayPlan& plan, const DayRoom::Brought& one) {
  for (const PlannedJob& job : plan.jobs)
    if (day.racket(job.job).job == one.job) return job;
  FAIL("the racket is in no plan");
  throw 0;
}

}  // namespace

TEST_CASE("a room's own shifts, machines and rackets make a day, and what was told is found again on another tablet") {
  DayRoom room;
  room.open();
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "12:00");
  room.shift("Merrin", "13:00", "18:00");
  room.shift("Odalys", "11:00", "18:00");
  const auto late = room.bring("Quillon", room.at("16:00")), soon = room.bring("Vantreel", room.at("10:00"));
  const RoomDay day = room.day();
  REQUIRE(day.input().benches.size() == 2);
  CHECK(day.input().benches[0].open.size() == 2);  // the break of noon
  CHECK(day.input().benches[1].machine == "machine of Odalys");
  CHECK_FALSE(day.shifts_assumed());
  const DayPlan plan = must(plan_day(day.input()));
  CHECK(planned(day, plan, soon).bench == 0);  // nobody else is there by ten
  CHECK(planned(day, plan, soon).begin < planned(day, plan, late).begin);
  CHECK(planned(day, plan, soon).late == 0);
  // Wanted by what was promised less what is still done after the stringing.
  CHECK(day.input().jobs[planned(day, plan, soon).job].due == room.at("10:00") - day.finishing());
  for (const Draft& draft : day.tell(plan, "Mara", room.clock.now())) room.append(draft);
  CHECK(room.day().tell(plan, "Mara", room.clock.now()).empty());

  DayRoom other("bench");
  other.event = room.event;
  meet(room, other, room.event);
  CHECK(told_day(*other.ledger, room.event).size() == 2);
  for (const auto& place : told_day(*other.ledger, room.event))
    if (place.now.job == soon.job) CHECK(place.now.stringer == room.member("Merrin"));
  REQUIRE(room.day().input().told.size() == 2);
}

TEST_CASE("an on-court rush goes first, and what was told gives way by as little as can be") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "18:00");
  std::vector<DayRoom::Brought> all;
  for (const char* name : {"Quillon", "Vantreel", "Osmer"}) all.push_back(room.bring(name, room.at("12:00")));
  RoomDay day = room.day();
  const DayPlan before = must(plan_day(day.input()));
  for (const Draft& draft : day.tell(before, "Mara", room.clock.now())) room.append(draft);
  const auto rush = room.bring("Ilvane", room.at("09:40"), Rush::on_court);
  day = room.day();
  const DayPlan plan = must(plan_day(day.input(), PlanEffort::event));
  CHECK(plan.jobs.front().job == planned(day, plan, rush).job);
  CHECK(plan.jobs.front().fixed);
  const auto changes = changes_of(day.input(), plan);
  // There is one bench, so its time is missing somewhere; one gives way for all, because what was told changes for as few as can be.
  REQUIRE(changes.size() == 1);
  CHECK(*changes[0].ready_now > changes[0].ready_told);
  CHECK_FALSE(changes[0].late_now);
}

TEST_CASE("a machine out of order is left for a free one, and without one its stringer waits") {
  DayRoom room;
  room.open();
  room.clock.set(room.at("09:00"));
  (void)room.bring("Quillon", room.at("16:00"));
  MachineCare care;
  care.what = CareKind::out_of_order;
  care.at = room.clock.now();
  care.by = "Odalys";
  care.note = "the clamp slips";
  for (const auto& machine : load_machines(*room.ledger, room.event))
    if (machine.now.whose == "Odalys") care.machine = machine.id();
  room.append(note_care(room.event, care, room.clock.now()));
  RoomDay day = room.day();
  CHECK(day.shifts_assumed());  // nobody wrote shifts: the usual hours
  REQUIRE(day.doubts().size() == 1);
  CHECK(day.doubts()[0].kind == DayDoubt::Kind::machine_out);
  CHECK(day.input().benches[1].open.empty());
  CHECK_FALSE(day.input().benches[0].open.empty());
  Machine spare;
  spare.name = "by the door";
  spare.kind = MachineKind::lockout;
  room.append(add_machine(room.event, load_machines(*room.ledger, room.event), spare, room.clock.now()));
  day = room.day();
  REQUIRE(day.doubts().size() == 1);
  CHECK(day.doubts()[0].kind == DayDoubt::Kind::other_machine);
  CHECK(day.input().benches[1].machine == "by the door");
  CHECK_FALSE(day.input().benches[1].open.empty());
}

TEST_CASE("rackets in work stay where they are, those that wait for an answer are left out, and a forgotten tap is seen") {
  DayRoom room;
  room.open();
  room.clock.set(room.at("09:00"));
  const auto one = room.bring("Quillon", room.at("16:00")), two = room.bring("Vantreel", room.at("11:00")), asks = room.bring("Osmer", room.at("10:00"));
  room.step(one, Stage::on_machine, "Odalys");
  room.step(asks, Stage::waiting, "Mara");
  room.clock.set(room.at("09:30"));
  RoomDay day = room.day();
  REQUIRE(day.waiting().size() == 1);
  CHECK(day.open()[day.waiting()[0]].job == asks.job);
  const DayPlan plan = must(plan_day(day.input()));
  CHECK(planned(day, plan, one).bench == 1);
  CHECK(planned(day, plan, one).fixed);
  CHECK(planned(day, plan, two).bench == 0);
  room.step(two, Stage::on_machine, "Odalys");
  day = room.day();
  REQUIRE(day.doubts().size() == 1);
  CHECK(day.doubts()[0].kind == DayDoubt::Kind::two_at_once);
  CHECK(day.open()[day.doubts()[0].open_job].job == one.job);  // it came first
  REQUIRE(day.input().jobs.size() == 1);
  CHECK(must(plan_day(day.input())).jobs.front().fixed);
}

TEST_CASE("how long rackets take is learned from the marks of the room, by stringer and by what the stock says of the string") {
  DayRoom room;
  room.open();
  room.clock.set(room.at("08:00"));
  StockItem item;
  item.name = "Tarnbrook Silk";
  item.supply = Supply::reel;
  item.material = StringMaterial::natural_gut;
  (void)room.add(room.event, item, kEventBook);
  const RoomDay first = room.day();
  CHECK(first.work_kind("Tarnbrook Silk", "", "16x19", 0).material == "natural gut");
  CHECK(first.work_kind("tarnbrook  silk", "Velmora Round", "", 0).material == "hybrid");
  CHECK(first.work_kind("Velmora Round", "", "", 0).material.empty());
  const double before = first.times().of("Odalys", {}).mean();
  for (int i = 0; i < 30; ++i) {
    const auto one = room.bring(("Player" + std::to_string(i)).c_str(), room.clock.now() + 8 * kHour);
    room.step(one, Stage::on_machine, "Odalys");
    room.clock.advance(48 * kMinute);
    room.step(one, Stage::strung, "Odalys");
  }
  const RoomDay day = room.day();
  CHECK(before < 40);
  CHECK(day.times().of("Odalys", day.work_kind("Tarnbrook Silk", "Velmora Round", "", 0)).mean() > 44);
  CHECK(day.input().benches[1].pace > 1.1);
  CHECK(day.input().benches[0].pace < day.input().benches[1].pace);
}

TEST_CASE("a racket is wanted at its player's home bench") {
  DayRoom room;
  room.open();
  room.clock.set(room.at("09:00"));
  const auto one = room.bring("Quillon", room.at("16:00"));
  BenchPlace place;
  place.player = "Ilse Quillon";
  place.stringer = room.member("Odalys");
  (void)room.add(room.event, place, kEventBook);
  const RoomDay day = room.day();
  REQUIRE(day.input().jobs.size() == 1);
  CHECK(day.input().jobs[0].home == 1);
  CHECK(planned(day, must(plan_day(day.input())), one).bench == 1);
}

TEST_CASE("a day without a team, or of an event that is not here, says so") {
  DayRoom room;
  CHECK(RoomDay::make(*room.ledger, room.event, room.clock.now()).error().code == FaultCode::not_found);
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  const auto none = RoomDay::make(*room.ledger, room.event, room.clock.now());
  REQUIRE_FALSE(none);
  CHECK(none.error().where == "team");
}

TEST_CASE("where nobody wrote shifts the hours are those of the clock there, also when it is put forward") {
  // The last Sunday of March: clocks in Lisbon go from 1:00 to 2:00 (Directive 2000/84/EC).
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(must(moment_from("2031-03-30T00:30", "Europe/Lisbon", 0)));
  (void)room.bring("Quillon", std::nullopt);
  const RoomDay day = room.day();
  REQUIRE(day.shifts_assumed());
  REQUIRE(day.input().benches.size() == 1);
  REQUIRE_FALSE(day.input().benches[0].open.empty());
  CHECK(day.input().benches[0].open[0].from == must(moment_from("2031-03-30T08:00", "Europe/Lisbon", 0)));
  CHECK(day.input().benches[0].open[0].until == must(moment_from("2031-03-30T20:00", "Europe/Lisbon", 0)));
}

TEST_CASE("a racket whose time can't be is left out and named, and the others keep their day") {
  DayRoom room;
  room.open({"Merrin"});
  room.clock.set(room.at("09:00"));
  room.shift("Merrin", "09:00", "17:00");
  const auto good = room.bring("Quillon", room.at("11:00")), bad = room.bring("Vantreel", room.at("12:00"));
  // As an earlier version took it at the desk.
  const PlayerRecord record = room.load(bad.player);
  Job slip = record.job(bad.job)->now;
  slip.ready_by = must(moment_from("2020-01-01T10:00", "Europe/Lisbon", 0));
  Draft draft(bad.player, kPlayerBook, kActEdit);
  put_changes(draft, record.job(bad.job)->seen, slip);
  room.append(draft);
  const RoomDay day = room.day();
  REQUIRE(day.input().jobs.size() == 1);
  CHECK(day.racket(0).job == good.job);
  REQUIRE(day.doubts().size() == 1);
  CHECK(day.doubts()[0].kind == DayDoubt::Kind::no_such_time);
  CHECK(day.open()[day.doubts()[0].open_job].job == bad.job);
  CHECK(racket_words(day.open()[day.doubts()[0].open_job]) == "2 Vantreel Ilse");
  CHECK(must(plan_day(day.input())).jobs.size() == 1);
  // What was told more than 400 days ago is no reason to refuse a day either.
  DayPlace told{good.job, good.player, room.member("Merrin"), {}, *slip.ready_by, *slip.ready_by + kHour, *slip.ready_by, "Mara"};
  (void)room.add(room.event, told, kEventBook);
  CHECK(must(RoomDay::make(*room.ledger, room.event, room.clock.now())).input().told.empty());
}
