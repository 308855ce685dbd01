#include "app-qml/view/bench_work.h"

#include <QSignalSpy>

#include "app-qml/view/bench_model.h"
#include "core/desk/check.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Bench : RoomOfJobs {
  BookId player = addPlayer(named("Okafor"));
  MadeJob made = receive(player, day_wish(), 1);
  BenchModel bench{device->work()};
  [[nodiscard]] BenchWork& work() { return *bench.work(); }
  [[nodiscard]] QVariantMap step(int row) { return work().steps().at(row).toMap(); }
};

}  // namespace

TEST_CASE("the room's steps stand at the bench, and a tick is stored at once and outlives a restart") {
  Bench room;
  REQUIRE(room.work().steps().size() == 9);
  CHECK(room.step(0).value("text").toString().contains("centre"));
  CHECK_FALSE(room.step(0).value("done").toBool());
  QSignalSpy said(&room.device->work(), &Work::done);
  CHECK(room.work().tick(room.step(0).value("name").toString(), true));
  CHECK(said.isEmpty());  // nobody wants a toast for each step
  CHECK(room.step(0).value("done").toBool());
  CHECK(room.work().stepsDone() == 1);
  BenchModel again(room.device->work());
  CHECK(again.work()->stepsDone() == 1);
  CHECK(room.work().tick(room.step(0).value("name").toString(), false));
  CHECK(room.work().stepsDone() == 0);
  room.device->work().setLanguage("de");
  CHECK(room.step(0).value("text").toString().contains("Mitte"));
}

TEST_CASE("the time on the machine runs from the stage mark, also after a restart") {
  Bench room;
  CHECK(room.work().seconds() == -1);
  REQUIRE(room.bench.step("cut out"));
  CHECK(room.work().seconds() == -1);
  REQUIRE(room.bench.step("on the machine"));
  room.clock.advance(754'000);
  CHECK(room.work().seconds() == 754);
  BenchModel again(room.device->work());
  CHECK(again.work()->seconds() == 754);
  CHECK(must(load_player(room.ledger(), room.player)).benches.size() == 1);
  REQUIRE(room.bench.step("strung"));
  CHECK(must(load_player(room.ledger(), room.player)).benches.at(0).now.finished_at == room.clock.now());
}

TEST_CASE("what the stock has of the string is suggested, and one tap takes it") {
  Bench room;
  CHECK(room.work().suggested().isEmpty());
  StockItem reel;
  reel.name = "Tarnbrook Silk";
  reel.gauge = mm("1.25");
  reel.supply = Supply::reel;
  reel.owner = StringOwner::player;
  reel.player = room.player;
  room.append(must(add_stock_item(room.event, reel, room.clock.now())));
  const auto item = stock_levels(room.ledger(), room.event, 0).at(0).item.id();
  room.append(must(move_stock(room.event, {item, StockWhy::received, 60'000, "", "Ines", room.clock.now()})));
  room.device->work().refresh();
  REQUIRE(room.work().suggested().size() == 1);  // no stock of the crosses
  const auto row = room.work().suggested().at(0).toMap();
  CHECK(row.value("part").toString() == "mains");
  CHECK(row.value("name").toString().startsWith("Tarnbrook Silk"));
  CHECK(row.value("amount").toString().endsWith("m"));
  CHECK(room.work().takeString("taken"));
  CHECK(room.work().suggested().isEmpty());
  CHECK(room.work().taken().size() == 1);
  CHECK(stock_levels(room.ledger(), room.event, 0).at(0).left < 60'000);
  CHECK_FALSE(room.work().takeString("again"));
}

TEST_CASE("a reading is kept as it was typed, a wrong one is told") {
  Bench room;
  QSignalSpy failed(&room.device->work(), &Work::failed);
  const auto units = BenchWork::unitsOf(static_cast<int>(BenchWork::Measure::BedStiffness));
  REQUIRE(units.size() > 1);
  CHECK(units.at(0).toMap().value("text").toString() == "kg/cm");
  CHECK(room.work().measure(2, "34.50", units.at(0).toMap().value("value").toInt(), " meter 2 ", "measured"));
  CHECK_FALSE(room.work().measure(2, "", units.at(0).toMap().value("value").toInt(), "", "measured"));
  CHECK_FALSE(room.work().measure(3, "5", static_cast<int>(Unit::hertz), "", "measured"));
  CHECK(failed.size() == 2);
  REQUIRE(room.work().readings().size() == 1);
  CHECK(room.work().readings().at(0).toMap().value("value").toString().startsWith("34.50"));
  const QStringList detail{"Ines", room.device->work().timeText(room.clock.now()), "meter 2"};
  CHECK(room.work().readings().at(0).toMap().value("detail").toStringList() == detail);
  // A tension head also says what it was set to; nothing else does.
  const int kilograms = static_cast<int>(Unit::kilogram_force);
  CHECK(room.work().measure(1, "24.2", kilograms, "", "measured", "25"));
  CHECK_FALSE(room.work().measure(1, "24.2", kilograms, "", "measured", "x"));
  CHECK_FALSE(room.work().measure(2, "34.50", units.at(0).toMap().value("value").toInt(), "", "measured", "25"));
  const auto record = must(load_player(room.ledger(), room.player));
  CHECK(std::count_if(record.readings.begin(), record.readings.end(), [](const auto& one) { return one.now.set_to == Quantity{{25, 0}, Unit::kilogram_force}; }) == 1);
}

TEST_CASE("a racket that comes back from the check says how often and why, with a clean list") {
  Bench room;
  for (int i = 0; i < 3; ++i) {
    CHECK(room.work().tick(room.step(i).value("name").toString(), true));
    REQUIRE(room.bench.step("on"));
  }
  CHECK(room.work().steps().isEmpty());  // strung: it has left the bench
  room.append(must(check_racket(must(load_player(room.ledger(), room.player)), room.made.job,
                                {{{"=check.knots", false}}, "a knot slipped", Stage::cut_out, "Ines", room.clock.now()})));
  room.bench.choose(hex(room.made.book), hex(room.made.job));
  CHECK(room.work().redos() == 1);
  CHECK(room.work().lastCheck().contains("a knot slipped"));
  CHECK(room.work().stepsDone() == 0);
}

TEST_CASE("a reading goes to the racket for which it was begun, whatever lies on the bench by then") {
  Bench room;
  const auto other = room.receive(room.addPlayer(named("Varga")), day_wish(), 2);
  const int unit = BenchWork::unitsOf(static_cast<int>(BenchWork::Measure::BedStiffness)).at(0).toMap().value("value").toInt();
  room.work().beginReading();
  room.bench.choose(hex(other.book), hex(other.job));
  REQUIRE(room.bench.tag() == "2");
  CHECK(room.work().measure(2, "34.5", unit, "", "measured"));
  CHECK(must(load_player(room.ledger(), other.book)).readings.empty());
  const auto record = must(load_player(room.ledger(), room.player));
  REQUIRE(record.readings.size() == 1);
  // The next one is of what lies there.
  CHECK(room.work().measure(2, "35", unit, "", "measured"));
  CHECK(must(load_player(room.ledger(), other.book)).readings.size() == 1);
}
