#include "app-qml/view/bench_model.h"

#include <QSignalSpy>

#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

QStringList changedLines(const BenchModel& bench) {
  QStringList out;
  for (const QVariant& line : bench.lines())
    if (line.toMap().value("changed").toBool()) out.append(line.toMap().value("label").toString());
  return out;
}

}  // namespace

TEST_CASE("an empty room has nothing on the bench") {
  RoomOfJobs room;
  BenchModel bench(room.device->work());
  CHECK_FALSE(bench.hasJob());
  CHECK(bench.nextStage() == 0);
  CHECK_FALSE(bench.step("done"));
}

TEST_CASE("the racket that is promised first lies on the bench, with its figures as they were said") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  room.receive(player, day_wish(), 1, room.clock.now() + 3 * kHour);
  auto wish = day_wish();
  wish.mains_tension = lb("55");
  wish.crosses_tension = kg("24.5");
  room.receive(player, wish, 2, room.clock.now() + kHour);
  BenchModel bench(room.device->work());
  CHECK(bench.tag() == "2");
  CHECK(bench.mains() == "55");
  CHECK(bench.mainsUnit() == "lb");
  CHECK(bench.crosses() == "24.5");
  CHECK(bench.crossesUnit() == "kg");
  CHECK(bench.note() == "knots to the outside");
  CHECK(bench.waiting() == 1);
}

TEST_CASE("cut out, on the machine, strung: three taps, and the next racket is there") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto first = room.receive(player, day_wish(), 1, room.clock.now() + kHour);
  room.receive(player, day_wish(), 2, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  REQUIRE(bench.tag() == "1");
  CHECK(bench.step("a"));
  CHECK(room.stageOf(first) == Stage::cut_out);
  CHECK(bench.tag() == "1");
  CHECK(bench.step("b"));
  CHECK(bench.step("c"));
  CHECK(room.stageOf(first) == Stage::strung);
  CHECK(bench.tag() == "2");
}

TEST_CASE("what was begun here lies on the bench after a restart; what others began does not") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto mine = room.receive(player, day_wish(), 1, room.clock.now() + 9 * kHour);
  const auto theirs = room.receive(player, day_wish(), 2, room.clock.now() + kHour);
  room.receive(player, day_wish(), 3, room.clock.now() + kHour);
  room.step(mine, Stage::cut_out, "Ines");
  room.step(theirs, Stage::cut_out, "Bo");
  BenchModel bench(room.device->work());
  CHECK(bench.tag() == "1");
}

TEST_CASE("an on-court rush comes first, and is said while another racket has been begun") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  room.receive(player, day_wish(), 1, room.clock.now() + kHour);
  BenchModel bench(room.device->work());
  const auto rush = room.receive(player, day_wish(), 2, {}, Rush::on_court);
  REQUIRE(waitUntil([&] { return bench.tag() == "2"; }));
  CHECK(bench.onCourt().isEmpty());
  const auto one = room.receive(player, day_wish(), 3);
  room.device->work().refresh();
  bench.choose(hex(one.book), hex(one.job));
  CHECK(bench.step("begun"));
  REQUIRE(bench.onCourt().value("tag") == "2");
  CHECK(bench.onCourt().value("begun").toBool());
  bench.choose(bench.onCourt().value("book").toString(), bench.onCourt().value("job").toString());
  CHECK(bench.tag() == "2");
  CHECK(bench.rush() == 2);
  CHECK(room.stageOf(rush) == Stage::received);
}

TEST_CASE(
    "what differs from the player's last job is marked, rackets of the same drop-off are not the last job") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto before = room.receive(player, day_wish(), 1);
  room.step(before, Stage::on_machine, "Bo");
  room.step(before, Stage::strung, "Bo");
  room.clock.advance(20 * kDay);
  auto wish = day_wish();
  wish.mains_tension = kg("24");
  wish.dampener = "";
  room.receive(player, wish, 2);
  BenchModel bench(room.device->work());
  REQUIRE(bench.tag() == "2");
  CHECK(changedLines(bench) == QStringList{"Mains tension", "Dampener"});
  CHECK(bench.comparedWith().contains("Harbour"));
}

TEST_CASE("a first job has nothing to differ from") {
  RoomOfJobs room;
  room.receive(room.addPlayer(named("Okafor")), day_wish(), 1);
  BenchModel bench(room.device->work());
  CHECK(changedLines(bench).isEmpty());
  CHECK(bench.comparedWith().isEmpty());
  CHECK(bench.lines().size() > 10);
}

TEST_CASE("cautions are said before the step that they are about, once a racket") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto made = room.receive(player, day_wish(), 1);
  room.receive(player, day_wish(), 2);
  BenchModel bench(room.device->work());
  CHECK(bench.cautions() == QStringList{QString::fromStdString(caution_text({}, Caution::cut_out))});
  REQUIRE(bench.step("cut out"));
  CHECK(bench.cautions() == QStringList{QString::fromStdString(caution_text({}, Caution::under_tension))});
  room.device->work().undo();
  CHECK(room.stageOf(made) == Stage::received);
  CHECK(bench.cautions().isEmpty());
}

TEST_CASE("a racket that had to wait for its player is told with its reason and the caution about frames") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), day_wish(), 1);
  room.step(made, Stage::waiting, "Desk", "hairline at two o'clock");
  room.step(made, Stage::inspected, "Desk");
  BenchModel bench(room.device->work());
  CHECK(bench.reasons() == QStringList{"hairline at two o'clock"});
  CHECK(bench.cautions().contains(QString::fromStdString(caution_text({}, Caution::cracked_frame))));
}

TEST_CASE("a value with two answers is named before anything is strung") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto made = room.receive(player, day_wish(), 1);
  Tablet other("Bench tablet");
  bringTo(other, room, player);
  other.change<Job>(player, made.job, [](Job& job) { job.mains_tension = kg("24"); });
  const auto state = *room.ledger().entity(player, made.job);
  auto job = from_state<Job>(state);
  job.mains_tension = kg("26");
  Draft draft(player, kPlayerBook, kActEdit);
  put_changes(draft, state, job);
  room.append(draft);
  BenchModel bench(room.device->work());
  CHECK(bench.openFields().isEmpty());
  bringFrom(other, room, player);
  REQUIRE(waitUntil([&] { return !bench.openFields().isEmpty(); }));
  CHECK(bench.openFields() == QStringList{"mains tension"});
}

namespace {

EntityId addMachine(RoomOfJobs& room, const std::string& name, std::optional<Quantity> most = {}, const std::string& prestretch = {}) {
  Machine wanted;
  wanted.name = name;
  wanted.kind = MachineKind::constant_pull;
  wanted.max_tension = most;
  wanted.prestretch = prestretch;
  room.append(must(add_machine(room.event, load_machines(room.ledger(), room.event), wanted, room.clock.now())));
  room.device->work().refresh();
  return load_machines(room.ledger(), room.event).back().id();
}
void breakDown(RoomOfJobs& room, const EntityId& machine) {
  MachineCare care;
  care.machine = machine;
  care.what = CareKind::out_of_order;
  care.by = "Bo";
  care.note = "a clamp slips";
  room.append(must(note_care(room.event, care, room.clock.now())));
  room.device->work().refresh();
}

}  // namespace

TEST_CASE("the machine is said with the step that puts a racket on it, in mark and record") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto first = room.receive(player, day_wish(), 1);
  const auto second = room.receive(player, day_wish(), 2);
  BenchModel bench(room.device->work());
  bench.choose(hex(first.book), hex(first.job));
  REQUIRE(bench.step("cut out"));
  CHECK(bench.machine()->machines().isEmpty());  // the room lists none
  const auto window = addMachine(room, "by the window");
  const auto door = addMachine(room, "by the door");
  CHECK(bench.machine()->machines().size() == 2);
  CHECK(bench.machine()->chosen().isEmpty());  // nobody knows which
  CHECK(bench.machine()->choose(hex(door), "door"));
  CHECK(bench.machine()->name() == "by the door");
  QSignalSpy said(&room.device->work(), &Work::done);
  REQUIRE(bench.step("on the machine"));
  const auto record = [&] { return must(load_player(room.ledger(), player)); };
  CHECK(machine_of(record(), first.job).machine == door);
  CHECK(bench_now(record(), first.job)->now.machine == door);
  CHECK(bench_now(record(), first.job)->now.machine_name == "by the door");
  CHECK(bench.machine()->mounted());
  // It is on the other one after all.
  CHECK(bench.machine()->choose(hex(window), "window"));
  CHECK(said.back().front() == "window");
  CHECK(machine_of(record(), first.job).machine == window);
  CHECK(bench_now(record(), first.job)->now.machine == window);
  CHECK(room.device->work().undo());
  CHECK(machine_of(record(), first.job).machine == door);
  CHECK(bench_now(record(), first.job)->now.machine == door);
  REQUIRE(bench.step("strung"));
  // The next one goes on the same, without a tap.
  bench.choose(hex(second.book), hex(second.job));
  REQUIRE(bench.step("cut out"));
  CHECK(bench.machine()->chosen() == hex(door));
  // Until that one breaks down.
  breakDown(room, door);
  CHECK(bench.machine()->chosen().isEmpty());
  CHECK(bench.machine()->machines().at(1).toMap().value("broken").toBool());
  CHECK(bench.machine()->machines().at(1).toMap().value("detail").toString().contains("a clamp slips"));
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK_FALSE(bench.machine()->choose(hex(door), "door"));
  CHECK(failed.count() == 1);
  CHECK(bench.machine()->chosen().isEmpty());
}

TEST_CASE("what speaks against a machine for a setup is said, and nobody is stopped") {
  RoomOfJobs room;
  Agreed wish = day_wish();
  wish.mains_prestretch = Quantity{{15, 0}, Unit::percent};
  const auto made = room.receive(room.addPlayer(named("Okafor")), wish, 1);
  room.step(made, Stage::cut_out, "Ines");
  const auto weak = addMachine(room, "weak", kg("20"), "0 10 20");
  BenchModel bench(room.device->work());
  CHECK(bench.machine()->chosen() == hex(weak));  // the only one
  CHECK(bench.machine()->doubts().size() == 2);
  REQUIRE(bench.step("on the machine"));
  CHECK(room.stageOf(made) == Stage::on_machine);
}
