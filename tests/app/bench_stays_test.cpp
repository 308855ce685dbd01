// What a person looks at on the bench stays there while other tablets work on.

#include "app-qml/view/bench_model.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Another person's tablet, that exchanges with this one when it is told to.
struct OtherBench {
  RoomOfJobs& room;
  Tablet tablet{"Bench tablet"};

  void step(const MadeJob& made, Stage to, const std::string& by, const std::string& reason = {}) {
    bringTo(tablet, room, made.book);
    const auto record = must(load_player(*tablet.ledger, made.book));
    tablet.append(must(take_step(record, std::span(&made.job, 1), StageStep{to, by, reason, room.clock.now()})));
    bringFrom(tablet, room, made.book);
  }
};
BenchModel::Away howAway(const BenchModel& bench) {
  return static_cast<BenchModel::Away>(bench.away().value("how").toInt());
}

}  // namespace

TEST_CASE("a racket that somebody looks at is not exchanged when another tablet takes it on: it says so, and waits for a tap") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  const auto first = room.receive(player, day_wish(), 33, room.clock.now() + kHour);
  const auto second = room.receive(room.addPlayer(named("Varga")), day_wish(), 40, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  REQUIRE(bench.tag() == "33");
  REQUIRE(bench.nextStage() == static_cast<int>(Stage::cut_out));
  CHECK(bench.away().isEmpty());

  OtherBench corvin{room};
  corvin.step(first, Stage::cut_out, "Corvin");
  REQUIRE(waitUntil([&] { return !bench.away().isEmpty(); }));
  CHECK(howAway(bench) == BenchModel::Away::Taken);
  CHECK(bench.away().value("by") == "Corvin");
  CHECK(bench.away().value("tag") == "33");
  CHECK(bench.tag() == "33");
  CHECK(bench.player() == "Okafor Sade");
  CHECK(bench.nextStage() == 0);
  const auto before = room.ledger().position();
  CHECK_FALSE(bench.step("under the finger"));
  CHECK(bench.work()->steps().isEmpty());
  CHECK(room.ledger().position() == before);
  // However far it goes over there.
  corvin.step(first, Stage::on_machine, "Corvin");
  REQUIRE(waitUntil([&] { return bench.stage() == static_cast<int>(Stage::on_machine); }));
  CHECK(bench.tag() == "33");
  bench.next();
  CHECK(bench.away().isEmpty());
  CHECK(bench.tag() == "40");
  CHECK(bench.step("cut out"));
  CHECK(room.stageOf(second) == Stage::cut_out);
}

TEST_CASE("another tablet that gives a racket back leaves it where it is looked at") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), day_wish(), 33, room.clock.now() + kHour);
  room.receive(room.addPlayer(named("Varga")), day_wish(), 40, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  OtherBench corvin{room};
  corvin.step(made, Stage::cut_out, "Corvin");
  REQUIRE(waitUntil([&] { return howAway(bench) == BenchModel::Away::Taken; }));
  corvin.step(made, Stage::received, "Corvin", "the wrong one");
  REQUIRE(waitUntil([&] { return bench.away().isEmpty(); }));
  CHECK(bench.tag() == "33");
  CHECK(bench.nextStage() == static_cast<int>(Stage::cut_out));
}

TEST_CASE("why a racket left the bench is told: put aside, collected, waiting, strung elsewhere, taken back, forgotten") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  const auto made = room.receive(player, day_wish(), 33, room.clock.now() + kHour);
  room.receive(room.addPlayer(named("Varga")), day_wish(), 40, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  OtherBench desk{room};
  const auto becomes = [&](BenchModel::Away wanted) { return waitUntil([&] { return howAway(bench) == wanted; }); };
  SECTION("stages") {
    desk.step(made, Stage::waiting, "Bo", "hairline");
    CHECK(becomes(BenchModel::Away::Waits));
    desk.step(made, Stage::aside, "Bo", "cracked");
    CHECK(becomes(BenchModel::Away::PutAside));
    desk.step(made, Stage::collected, "Bo", "as it is");
    CHECK(becomes(BenchModel::Away::Collected));
    desk.step(made, Stage::strung, "Bo", "it was strung after all");
    CHECK(becomes(BenchModel::Away::MovedOn));
    CHECK(bench.away().value("stage").toInt() == static_cast<int>(Stage::strung));
  }
  SECTION("two took it while apart") {
    REQUIRE(bench.step("cut out"));
    // Corvin had not heard of it.
    Tablet corvin("Corvin's tablet");
    room.device->work().undo();
    bringTo(corvin, room, player);
    const auto record = must(load_player(*corvin.ledger, player));
    corvin.append(must(take_step(record, std::span(&made.job, 1), StageStep{Stage::cut_out, "Corvin", {}, room.clock.now()})));
    REQUIRE(bench.step("cut out again"));
    bringFrom(corvin, room, player);
    CHECK(becomes(BenchModel::Away::TwoTook));
    CHECK(bench.nextStage() == 0);
  }
  SECTION("the book is forgotten: nothing but the number is left") {
    REQUIRE(room.ledger().forget(player));
    room.device->work().refresh();
    CHECK(becomes(BenchModel::Away::Forgotten));
    CHECK(bench.away().value("player").toString().isEmpty());
    CHECK(bench.away().value("tag") == "33");
    CHECK_FALSE(bench.hasJob());
    CHECK(bench.mains().isEmpty());
  }
  bench.next();
  CHECK(bench.away().isEmpty());
  CHECK(bench.tag() == "40");
}

TEST_CASE("while nobody looks at the bench it follows what the room needs; what was begun here stays") {
  RoomOfJobs room;
  const auto first = room.receive(room.addPlayer(named("Okafor")), day_wish(), 33, room.clock.now() + kHour);
  room.receive(room.addPlayer(named("Varga")), day_wish(), 40, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  bench.setOnScreen(false);
  OtherBench corvin{room};
  corvin.step(first, Stage::cut_out, "Corvin");
  REQUIRE(waitUntil([&] { return bench.tag() == "40"; }));
  CHECK(bench.away().isEmpty());
  REQUIRE(bench.step("begun"));
  room.receive(room.addPlayer(named("Adler")), day_wish(), 41, room.clock.now() + kMinute);
  room.device->work().refresh();
  CHECK(bench.tag() == "40");
}

TEST_CASE("a rush that comes in does not push away what somebody looks at; taking back a strung one brings it back") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  const auto first = room.receive(player, day_wish(), 1, room.clock.now() + kHour);
  room.receive(player, day_wish(), 2, room.clock.now() + 2 * kHour);
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  room.receive(room.addPlayer(named("Varga")), day_wish(), 3, {}, Rush::on_court);
  room.device->work().refresh();
  CHECK(bench.tag() == "1");
  CHECK(bench.onCourt().value("tag") == "3");
  for (const char* say : {"a", "b", "c"}) {
    room.clock.advance(kMinute);
    REQUIRE(bench.step(say));
  }
  CHECK(bench.tag() == "3");
  CHECK(bench.away().isEmpty());
  CHECK(room.device->work().undo());
  CHECK(bench.tag() == "1");
  CHECK(bench.nextStage() == static_cast<int>(Stage::strung));
  CHECK(room.stageOf(first) == Stage::on_machine);
}

TEST_CASE("which string goes in at which tension stands beside the figures") {
  RoomOfJobs room;
  auto wish = day_wish();
  wish.crosses_string.clear();
  wish.crosses_gauge.reset();
  room.receive(room.addPlayer(named("Okafor")), wish, 1);
  BenchModel bench(room.device->work());
  CHECK(bench.mainsString() == QString::fromStdString(wish.mains_string));
  CHECK(bench.mainsGauge() == QString::fromUtf8("1.25\u00a0mm"));
  CHECK(bench.crossesString().isEmpty());
  CHECK(bench.crossesGauge().isEmpty());
  CHECK(bench.tension() == QString::fromUtf8("25 / 24\u00a0kg"));
}

TEST_CASE("a step that is taken back here is nobody else's: the racket lies where whoever began it had it") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor", "Sade")), day_wish(), 33, room.clock.now() + kHour);
  room.step(made, Stage::cut_out, "Corvin");
  BenchModel bench(room.device->work());
  bench.setOnScreen(true);
  bench.choose(hex(made.book), hex(made.job));
  REQUIRE(bench.nextStage() == static_cast<int>(Stage::on_machine));
  SECTION("one") {
    REQUIRE(bench.step("on the machine"));
  }
  SECTION("after he had it once more") {
    OtherBench corvin{room};
    REQUIRE(bench.step("on the machine"));
    REQUIRE(room.device->work().undo());
    corvin.step(made, Stage::on_machine, "Corvin");
    REQUIRE(waitUntil([&] { return howAway(bench) == BenchModel::Away::Taken; }));
    corvin.step(made, Stage::cut_out, "Corvin", "after all not");
    REQUIRE(waitUntil([&] { return bench.away().isEmpty() && bench.stage() == static_cast<int>(Stage::cut_out); }));
    room.clock.advance(kMinute);
    REQUIRE(bench.step("on the machine"));
  }
  CHECK(bench.away().isEmpty());
  REQUIRE(room.device->work().undo());
  CHECK(bench.away().isEmpty());
  CHECK(bench.tag() == "33");
  CHECK(bench.stage() == static_cast<int>(Stage::cut_out));
  CHECK(bench.nextStage() == static_cast<int>(Stage::on_machine));
  CHECK(bench.step("on the machine after all"));
}
