#include "app-qml/view/room_model.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <limits>

#include "core/desk/inspection.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

StageColumn& column(const RoomModel& room, Stage stage) {
  for (const QVariant& one : room.columns()) {
    auto* held = qobject_cast<StageColumn*>(one.value<QObject*>());
    if (held->stage() == static_cast<int>(stage)) return *held;
  }
  throw std::logic_error("no such column");
}

}  // namespace

TEST_CASE("the board shows each racket under its stage, late and soon ones told apart") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Varga", "Ilka"));
  room.receive(player, day_wish(), 11, room.clock.now() - kMinute);
  room.receive(player, day_wish(), 12, room.clock.now() + 10 * kMinute, Rush::rush);
  const auto strung = room.receive(player, day_wish(), 13, room.clock.now() + 5 * kHour);
  room.step(strung, Stage::cut_out, "Bo");
  RoomModel model(room.device->work());
  CHECK(model.open() == 3);
  CHECK(model.late() == 1);
  auto& received = column(model, Stage::received);
  REQUIRE(received.count() == 2);
  CHECK(role(received, 0, "tag") == "11");
  CHECK(role(received, 0, "due").toInt() == static_cast<int>(JobCard::Due::late));
  CHECK(role(received, 1, "due").toInt() == static_cast<int>(JobCard::Due::soon));
  CHECK(role(received, 1, "rush").toInt() == 1);
  CHECK(role(received, 0, "player") == "Varga Ilka");
  CHECK(role(received, 0, "tension").toString() == QString::fromUtf8("25 / 24\u00a0kg"));
  CHECK(role(column(model, Stage::cut_out), 0, "stageBy") == "Bo");
}

TEST_CASE("one tap moves a racket on, is written down with who did it, and can be taken back") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga", "Ilka")), day_wish(), 11);
  RoomModel model(room.device->work());
  const QAbstractItemModelTester from(&column(model, Stage::received),
                                      QAbstractItemModelTester::FailureReportingMode::Fatal);
  const QAbstractItemModelTester to(&column(model, Stage::inspected),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
  QSignalSpy done(&room.device->work(), &Work::done);
  CHECK(model.advance(hex(made.book), hex(made.job), "Tag 11: Inspected"));
  CHECK(room.stageOf(made) == Stage::inspected);
  CHECK(column(model, Stage::received).count() == 0);
  REQUIRE(column(model, Stage::inspected).count() == 1);
  CHECK(role(column(model, Stage::inspected), 0, "stageBy") == "Ines");
  CHECK(done.count() == 1);
  CHECK(room.device->work().undo());
  CHECK(room.stageOf(made) == Stage::received);
  CHECK(column(model, Stage::received).count() == 1);
}

TEST_CASE("a step that does not follow needs a reason, and nothing is written without one") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  RoomModel model(room.device->work());
  QSignalSpy failed(&room.device->work(), &Work::failed);
  const auto before = room.ledger().position();
  CHECK_FALSE(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::aside), "  ", "done"));
  CHECK(failed.count() == 1);
  CHECK(room.ledger().position() == before);
  CHECK(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::aside), "no string here", "done"));
  CHECK(room.stageOf(made) == Stage::aside);
  CHECK(model.open() == 0);
  const auto ways = model.stepsOf(hex(made.book), hex(made.job));
  CHECK(ways.value("marks").toList().first().toMap().value("reason") == "no string here");
  CHECK(model.stepsOf(hex(made.book), "00").isEmpty());
  CHECK_FALSE(model.advance("zz", hex(made.job), "done"));
}

TEST_CASE("another tablet's step reaches the board within 200 ms of reaching the ledger") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  RoomModel model(room.device->work());
  Tablet other("Bench tablet");
  bringTo(other, room, made.book);
  // The quickest of several: others may be busy on the machine.
  qint64 quickest = std::numeric_limits<qint64>::max();
  for (const Stage stage : {Stage::cut_out, Stage::on_machine, Stage::strung, Stage::checked, Stage::stencilled}) {
    const auto record = must(load_player(*other.ledger, made.book));
    other.append(must(take_step(record, std::span(&made.job, 1), StageStep{stage, "Bo", {}, kMonday})));
    QElapsedTimer since;
    since.start();
    bringFrom(other, room, made.book);
    REQUIRE(waitUntil([&] { return column(model, stage).count() == 1; }));
    quickest = std::min(quickest, since.elapsed());
  }
  CHECK(quickest < 200);
}

TEST_CASE("a racket that two people took while apart is marked, and its clash is settled with a reason") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  RoomModel model(room.device->work());
  room.stepApart(made, Stage::cut_out, Stage::on_machine);
  REQUIRE(waitUntil([&] { return model.clashes() == 1; }));
  CHECK_FALSE(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::cut_out), "", "done"));
  CHECK(
      model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::cut_out), "lies on bench 2", "done"));
  CHECK(model.clashes() == 0);
}

TEST_CASE("the usual step stands first among those that can be taken") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.step(made, Stage::inspected, "Ines");
  RoomModel model(room.device->work());
  const auto ways = model.stepsOf(hex(made.book), hex(made.job));
  CHECK(ways.value("steps").toList().value(0).toInt() == static_cast<int>(Stage::cut_out));
  CHECK_FALSE(ways.value("others").toList().contains(static_cast<int>(Stage::inspected)));
  CHECK(ways.value("others").toList().contains(static_cast<int>(Stage::aside)));
}

TEST_CASE("one tap on the board puts a racket on the usual machine, and the sheet on the one chosen there") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Varga"));
  const auto first = room.receive(player, day_wish(), 11);
  const auto second = room.receive(player, day_wish(), 12);
  for (const char* name : {"1", "2"}) {
    Machine machine;
    machine.name = name;
    machine.kind = MachineKind::lockout;
    machine.max_tension = kg(*name == '1' ? "20" : "40");
    room.append(must(add_machine(room.event, load_machines(room.ledger(), room.event), machine, room.clock.now())));
  }
  const auto machines = load_machines(room.ledger(), room.event);
  room.step(first, Stage::cut_out, "Ines");
  room.step(second, Stage::cut_out, "Ines");
  RoomModel model(room.device->work());
  const auto machineOf = [&](const MadeJob& made) { return machine_of(must(load_player(room.ledger(), player)), made.job); };
  CHECK(model.machineDoubts(hex(player), hex(first.job)).isEmpty());
  model.lookAt(hex(player), hex(first.job));
  CHECK(model.machine()->machines().size() == 2);
  CHECK(model.machine()->choose(hex(machines[0].id()), {}));
  CHECK(model.machine()->doubts().size() == 1);
  CHECK(model.take(hex(player), hex(first.job), static_cast<int>(Stage::on_machine), {}, {}));
  CHECK(machineOf(first).machine == machines[0].id());
  CHECK(machineOf(first).name == "1");
  CHECK(model.stepsOf(hex(player), hex(first.job)).value("marks").toList().front().toMap().value("machine") == "1");
  model.lookAt({}, {});
  CHECK(model.machine()->machines().isEmpty());
  // The usual one is too weak for this setup, so the screen asks; whoever still takes it, takes it.
  CHECK(model.machineDoubts(hex(player), hex(second.job)).size() == 1);
  CHECK(model.advance(hex(player), hex(second.job), {}));
  CHECK(machineOf(second).machine == machines[0].id());
}

TEST_CASE("a finger that taps twice moves one racket") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Varga"));
  const auto made = room.receive(player, day_wish(), 11);
  RoomModel model(room.device->work());
  QElapsedTimer since;
  const auto rest = [&](qint64 until) { REQUIRE(waitUntil([&] { return since.hasExpired(until); })); };
  since.start();
  CHECK(model.tapCounts());
  CHECK_FALSE(model.tapCounts());
  // A tap that did not count begins the time anew.
  rest(300);
  CHECK_FALSE(model.tapCounts());
  since.start();
  rest(510);
  CHECK(model.tapCounts());
  since.start();
  rest(510);
  // So does whatever was done otherwise, in a sheet over the board.
  CHECK(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::inspected), {}, "Tag 11: Inspected"));
  CHECK_FALSE(model.tapCounts());
}

TEST_CASE("a racket that waits for its player's answer is moved on by the answer, not by the button of its card") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  FoundOnFrame crack;
  crack.fault = FrameFault::crack;
  crack.part = FramePart::throat;
  crack.proposal = FrameRemedy::do_not_string;
  room.append(must(inspect(must(load_player(room.ledger(), made.book)), made.job, std::span(&crack, 1), "Ines", room.clock.now())));
  REQUIRE(room.stageOf(made) == Stage::waiting);
  RoomModel model(room.device->work());
  CHECK(role(column(model, Stage::waiting), 0, "nextStage").toInt() == 0);
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK_FALSE(model.advance(hex(made.book), hex(made.job), "done"));
  CHECK(failed.count() == 1);
  CHECK(room.stageOf(made) == Stage::waiting);
  CHECK(model.stepsOf(hex(made.book), hex(made.job)).value("awaits").toBool());
  const auto record = must(load_player(room.ledger(), made.book));
  room.append(must(override_finding(record, record.findings.front().id(), "Ines", "looked at by the maker", room.clock.now())));
  CHECK_FALSE(model.stepsOf(hex(made.book), hex(made.job)).value("awaits").toBool());
}

TEST_CASE("what was asked without a finding goes on by what is written down of the answer") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.step(made, Stage::waiting, "Ines", "which of the two strings?");
  RoomModel model(room.device->work());
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK_FALSE(model.stepsOf(hex(made.book), hex(made.job)).value("awaits").toBool());
  CHECK_FALSE(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::inspected), " ", "done"));
  CHECK(failed.count() == 1);
  CHECK(room.stageOf(made) == Stage::waiting);
  CHECK(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::inspected), "the silk one", "done"));
  CHECK(room.stageOf(made) == Stage::inspected);
  CHECK(model.stepsOf(hex(made.book), hex(made.job)).value("marks").toList().front().toMap().value("reason") == "the silk one");
}

TEST_CASE("what is written for a racket as it stood is not written where it has moved on since") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Varga")), day_wish(), 11);
  room.step(made, Stage::waiting, "Ines", "which of the two strings?");
  RoomModel model(room.device->work());
  QSignalSpy failed(&room.device->work(), &Work::failed);
  const QString seen = model.stepsOf(hex(made.book), hex(made.job)).value("seen").toString();
  REQUIRE_FALSE(seen.isEmpty());
  // Another bench took the answer and went on by it.
  room.step(made, Stage::inspected, "Corvin", "the silk one");
  room.step(made, Stage::cut_out, "Corvin");
  CHECK_FALSE(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::inspected), "the round one", "done", seen));
  CHECK(failed.count() == 1);
  CHECK(room.stageOf(made) == Stage::cut_out);
  const QString now = model.stepsOf(hex(made.book), hex(made.job)).value("seen").toString();
  CHECK(now != seen);
  CHECK(model.take(hex(made.book), hex(made.job), static_cast<int>(Stage::aside), "the round one after all", "done", now));
  CHECK(room.stageOf(made) == Stage::aside);
}
