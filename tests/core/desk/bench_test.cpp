#include "core/desk/bench.h"

#include <catch2/catch.hpp>

#include "core/desk/undo.h"
#include "core/desk/work_list.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Bench : Desk {
  BookId book = first_drop_off(2);
  EntityId job = load(book).jobs.at(0).id();
  EntityId other = load(book).jobs.at(1).id();

  void step(Stage to, const std::string& by = "Ruud") { append(step_at_bench(load(book), job, {to, by, "", clock.now()})); }
  [[nodiscard]] Outcome<Draft> tick(const std::string& name, bool done = true) const {
    return tick_step(load(book), job, name, done, {"Ruud", clock.now()});
  }
  [[nodiscard]] BenchRecord now() const {
    const PlayerRecord record = load(book);
    const auto* held = bench_now(record, job);
    return held ? held->now : BenchRecord{};
  }
};

Reading reading(ReadingKind what, const char* amount, Unit unit, UnixMs at = kMonday) {
  Reading out;
  out.what = what;
  out.value = said(amount, unit);
  out.by = "Ruud";
  out.at = at;
  return out;
}

}  // namespace

TEST_CASE("a step to the bench that was taken back and made once more can be taken back again") {
  Bench room;
  for (int time = 0; time < 3; ++time) {
    const Committed begun = room.append(step_at_bench(room.load(room.book), room.job, {Stage::cut_out, "Ruud", "", room.clock.now()}));
    CHECK(room.now().by == "Ruud");
    room.clock.advance(kMinute);
    const auto back = undo(*room.ledger, room.book, begun.dot.seq);
    if (!back) FAIL(back.error().message());
    room.append(*back);
    CHECK(room.now().by.empty());
    room.clock.advance(kMinute);
  }
  // What somebody else said of it since stands.
  const Committed begun = room.append(step_at_bench(room.load(room.book), room.job, {Stage::cut_out, "Ruud", "", room.clock.now()}));
  room.append(note_bench(room.load(room.book), room.job, "a grommet is loose", {"Ines", room.clock.now()}));
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ines", "", room.clock.now()}));
  CHECK_FALSE(undo(*room.ledger, room.book, begun.dot.seq));
}

TEST_CASE("the bench notes who worked from when to when with which steps, in the same action as the stage") {
  Bench room;
  const UnixMs begun = room.clock.now();
  room.step(Stage::cut_out);
  CHECK(room.now().started_at == begun);
  CHECK(room.now().by == "Ruud");
  room.append(room.tick("=bench.release"));
  room.append(room.tick("=bench.supports"));
  room.append(room.tick("=bench.release", false));
  room.append(room.tick("our own step"));
  CHECK(split_names(room.now().steps_done) == std::vector<std::string>{"=bench.supports", "our own step"});
  room.step(Stage::on_machine);
  CHECK(room.now().started_at == begun);
  CHECK_FALSE(room.now().finished_at);
  room.clock.advance(20 * kMinute);
  const UnixMs strung = room.clock.now();
  room.step(Stage::strung);
  CHECK(room.now().finished_at == strung);
  CHECK(room.load(room.book).benches.size() == 1);
  CHECK_FALSE(bench_now(room.load(room.book), room.other));
}

TEST_CASE("the time on the machine comes from the marks and goes on while nobody looks") {
  Bench room;
  CHECK_FALSE(time_on_machine(room.load(room.book), room.job));
  room.step(Stage::cut_out);
  CHECK_FALSE(time_on_machine(room.load(room.book), room.job));
  const UnixMs mounted = room.clock.now();
  room.step(Stage::on_machine);
  CHECK(time_on_machine(room.load(room.book), room.job)->since == mounted);
  CHECK_FALSE(time_on_machine(room.load(room.book), room.job)->until);
  room.clock.advance(25 * kMinute);
  const UnixMs strung = room.clock.now();
  room.step(Stage::strung);
  CHECK(time_on_machine(room.load(room.book), room.job)->until == strung);
  // Done again it counts from the new mark; a clock that was set back gives no time below nothing.
  room.append(take_step(room.load(room.book), std::span(&room.job, 1), {Stage::on_machine, "Ruud", "a knot slipped", strung + kHour}));
  CHECK(time_on_machine(room.load(room.book), room.job)->since == strung + kHour);
  room.append(take_step(room.load(room.book), std::span(&room.job, 1), {Stage::strung, "Ruud", "", strung}));
  CHECK(time_on_machine(room.load(room.book), room.job)->until == strung + kHour);
}

TEST_CASE("steps noted on two tablets while apart fold into one record") {
  Bench desk;
  Desk tablet("bench");
  desk.step(Stage::cut_out);
  meet(desk, tablet, desk.book);
  desk.append(note_bench(desk.load(desk.book), desk.job, "tight grommet at 2", {"Ruud", desk.clock.now()}));
  tablet.append(tick_step(tablet.load(desk.book), desk.job, "=bench.release", true, {"Ruud", tablet.clock.now()}));
  meet(desk, tablet, desk.book);
  for (Desk* device : {static_cast<Desk*>(&desk), &tablet}) {
    const PlayerRecord record = device->load(desk.book);
    REQUIRE(record.benches.size() == 1);
    CHECK(record.benches[0].now.note == "tight grommet at 2");
    CHECK(record.benches[0].now.steps_done == "=bench.release");
    CHECK(record.questions.empty());
  }
}

TEST_CASE("a machine stands in the stage mark and in the record by one entry, and goes from both by one undo") {
  Bench room;
  const EntityId machine{{7}};
  room.step(Stage::cut_out);
  const Committed mounted =
      room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ruud", "", room.clock.now(), machine, "by the window"}));
  CHECK(marks_of(room.load(room.book), room.job).back().mark.machine == machine);
  CHECK(room.now().machine == machine);
  CHECK(room.now().machine_name == "by the window");
  CHECK(machine_of(room.load(room.book), room.job).name == "by the window");
  room.append(undo(*room.ledger, room.book, mounted.dot.seq));
  CHECK_FALSE(room.now().machine);
  CHECK_FALSE(machine_of(room.load(room.book), room.job).machine);
  // Put on again without a word: the mark is what tells, and the record has no other.
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ruud", "", room.clock.now(), machine, "by the window"}));
  room.step(Stage::strung);
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ruud", "a knot", room.clock.now()}));
  CHECK_FALSE(machine_of(room.load(room.book), room.job).machine);
  CHECK_FALSE(room.now().machine);
  CHECK(room.now().machine_name.empty());
}

TEST_CASE("a machine that was said wrong is changed in mark and record, and the time on it goes on") {
  Bench room;
  const EntityId wrong{{7}}, right{{8}};
  const auto change = [&](const MachineSaid& said) { return change_machine_of(room.load(room.book), room.job, said, {"Ruud", room.clock.now()}); };
  CHECK(change({right, "by the door"}).error().code == FaultCode::refused);  // on none yet
  const UnixMs mounted = room.clock.now();
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ruud", "", mounted, wrong, "by the window"}));
  room.clock.advance(kHour);
  CHECK(change({wrong, "by the window"}).error().code == FaultCode::bad_input);
  CHECK(change({right, " "}).error().code == FaultCode::bad_input);
  CHECK(change({{}, "by the door"}).error().code == FaultCode::bad_input);
  room.append(change({right, "by the door"}));
  CHECK(machine_of(room.load(room.book), room.job).machine == right);
  CHECK(machine_of(room.load(room.book), room.job).name == "by the door");
  CHECK(room.now().machine == right);
  CHECK(time_on_machine(room.load(room.book), room.job)->since == mounted);
  CHECK(change_machine_of(room.load(room.book), EntityId{{1}}, {right, "x"}, {}).error().code == FaultCode::not_found);
}

TEST_CASE("two tablets put one racket on two machines while apart: mark and record agree before and after it is settled") {
  Bench here;
  Tablet there("Bench tablet");
  (void)there.ledger->ingest(here.ledger->missing(here.book, there.ledger->heads(here.book), 1 << 30), 0);
  const auto mount = [](Tablet& at, const Bench& room, const EntityId& machine, const std::string& name) {
    const auto record = load_player(*at.ledger, room.book);
    REQUIRE(record);
    at.append(step_at_bench(*record, room.job, {Stage::on_machine, at.ledger->self().device, "", room.clock.now(), machine, name}));
  };
  mount(here, here, EntityId{{7}}, "by the window");
  mount(there, here, EntityId{{8}}, "by the door");
  (void)here.ledger->ingest(there.ledger->missing(here.book, here.ledger->heads(here.book), 1 << 30), 0);
  const auto agree = [&] {
    const PlayerRecord record = here.load(here.book);
    return machine_of(record, here.job).machine == here.now().machine && !machine_of(record, here.job).name.empty();
  };
  REQUIRE(clashing_jobs(here.load(here.book)).size() == 1);
  CHECK(agree());
  here.append(step_at_bench(here.load(here.book), here.job, {Stage::on_machine, "Mara", "I looked", here.clock.now()}));
  CHECK(clashing_jobs(here.load(here.book)).empty());
  CHECK(agree());
}

TEST_CASE("a tick can be taken back, and what can't be ticked is said") {
  Bench room;
  CHECK(room.tick("").error().code == FaultCode::bad_input);
  CHECK(room.tick("a\nb").error().code == FaultCode::bad_input);
  CHECK(room.tick("=bench.release", false).error().code == FaultCode::bad_input);
  const Committed done = room.append(room.tick("=bench.release"));
  CHECK(room.tick("=bench.release").error().code == FaultCode::bad_input);
  room.append(undo(*room.ledger, room.book, done.dot.seq));
  CHECK(room.now().steps_done.empty());
  CHECK(tick_step(room.load(room.book), EntityId{{1}}, "x", true, {}).error().code == FaultCode::not_found);
  CHECK(note_bench(room.load(room.book), EntityId{{1}}, "x", {}).error().code == FaultCode::not_found);
  for (std::size_t i = 0; i < kMostSteps; ++i) room.append(room.tick("step " + std::to_string(i)));
  CHECK(room.tick("one more").error().code == FaultCode::bad_input);
  // Rules of the stages hold at the bench too.
  CHECK(step_at_bench(room.load(room.book), room.job, {Stage::ready, "Ruud", "", 1}).error().code == FaultCode::bad_input);
}

TEST_CASE("a reading is stored as the instrument said it, once") {
  Bench room;
  const auto put = [&](const Reading& measured) { return put_reading(room.load(room.book), room.job, measured); };
  room.append(put(reading(ReadingKind::bed_stiffness, "34.50", Unit::kilogram_force_per_centimetre, kMonday)));
  room.append(put(reading(ReadingKind::tone, "522", Unit::hertz, kMonday + kHour)));
  Reading head = reading(ReadingKind::tension_head, "24.2", Unit::kilogram_force, kMonday + 2 * kHour);
  head.set_to = kg("25");
  room.append(put(head));
  const PlayerRecord record = room.load(room.book);
  const auto own = readings_of(record, room.job);
  REQUIRE(own.size() == 3);
  CHECK(own[0]->now.set_to == kg("25"));
  CHECK(text_of(*own[2]->now.value) == "34.50 kg/cm");
  CHECK(readings_of(record, room.other).empty());

  const auto code = [&](const Reading& measured) { return put(measured).error().code; };
  CHECK(code({}) == FaultCode::bad_input);
  CHECK(code(reading(ReadingKind::tone, "522", Unit::kilogram_force)) == FaultCode::bad_input);
  CHECK(code(reading(ReadingKind::tone, "0", Unit::hertz)) == FaultCode::bad_input);
  CHECK(code(reading(ReadingKind::tension_head, "250", Unit::kilogram_force)) == FaultCode::bad_input);
  CHECK(code(reading(ReadingKind::tension_head, "24", Unit::none)) == FaultCode::bad_input);
  CHECK(code(reading(ReadingKind::bed_stiffness, "-3", Unit::none)) == FaultCode::bad_input);
  Reading set = reading(ReadingKind::tone, "522", Unit::hertz);
  set.set_to = said("500", Unit::hertz);
  CHECK(code(set) == FaultCode::bad_input);
  Reading nothing = reading(ReadingKind::tone, "522", Unit::hertz);
  nothing.value.reset();
  CHECK(code(nothing) == FaultCode::bad_input);
  CHECK(put_reading(room.load(room.book), EntityId{{1}}, head).error().code == FaultCode::not_found);
}

TEST_CASE("a machine's tension head is measured without a racket, into the event's book") {
  Bench room;
  Reading head = reading(ReadingKind::tension_head, "241", Unit::newton);
  CHECK(put_reading(room.event, head).error().code == FaultCode::bad_input);
  head.machine = EntityId{{7}};
  const auto draft = put_reading(room.event, head);
  REQUIRE(draft);
  CHECK(draft->kind() == kEventBook);
  room.append(draft);
  CHECK(room.ledger->entities(room.event, kReading).size() == 1);
  Reading tone = reading(ReadingKind::tone, "522", Unit::hertz);
  tone.machine = head.machine;
  CHECK(put_reading(room.event, tone).error().code == FaultCode::bad_input);
}
