#include "app-qml/view/stock_model.h"

#include <QAbstractItemModelTester>

#include "core/desk/stock.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

QVariantMap item(const QString& name, bool reel, int owner, const QString& amount, const QString& low = {}) {
  return {{"name", name}, {"reel", reel}, {"owner", owner}, {"amount", amount}, {"low", low}};
}

struct StockRoom : RoomOfJobs {
  StockModel stock{device->work()};
  QStringList faults;
  StockRoom() {
    QObject::connect(&device->work(), &Work::failed, [this](const QString& what) { faults.append(what); });
  }
};

}  // namespace

TEST_CASE("stock is listed by whose it is, with what is left in metres or sets") {
  StockRoom room;
  const QAbstractItemModelTester tester(&room.stock, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  (void)room.receive(player, {}, 14);
  auto own = item("Velmora Round", false, StockModel::Player, "3");
  own["player"] = hex(player);
  CHECK(room.stock.players().size() == 1);
  CHECK(room.stock.add(own, "Kept"));
  auto bag = item("Tarnbrook Silk", true, StockModel::Stringer, "100");
  bag["whose"] = "Bo";
  CHECK(room.stock.add(bag, "Kept"));
  auto reel = item("Tarnbrook Silk", true, StockModel::Room, "62,5", "20");
  reel["gauge"] = "1.25";
  CHECK(room.stock.add(reel, "Kept"));
  REQUIRE(room.stock.count() == 3);
  CHECK(role(room.stock, 0, "owner").toInt() == StockModel::Room);
  CHECK(role(room.stock, 0, "remains") == "62.5");
  CHECK(role(room.stock, 0, "gauge").toString() == QStringLiteral("1.25\u00a0mm"));
  CHECK(role(room.stock, 0, "lowMark") == "20");
  CHECK(role(room.stock, 1, "whose") == "Bo");
  CHECK(role(room.stock, 2, "whose") == "Okafor Sade");
  CHECK(role(room.stock, 2, "remains") == "3");
  CHECK(role(room.stock, 2, "reel").toBool() == false);
  // One action each: taking it back takes the item back with what came of it.
  CHECK(room.device->work().undo());
  CHECK(room.stock.count() == 2);
}

TEST_CASE("what comes, is counted and goes changes what is left, and low is told") {
  StockRoom room;
  auto silk = item("Tarnbrook Silk", true, StockModel::Room, "100", "20");
  silk["material"] = static_cast<int>(StringMaterial::natural_gut);
  CHECK(room.stock.add(silk, "Kept"));
  const auto held = room.ledger().entities(room.event, kStockItem);
  REQUIRE(held.size() == 1);
  CHECK(from_state<StockItem>(held[0]).material == StringMaterial::natural_gut);
  const auto id = role(room.stock, 0, "item").toString();
  CHECK(room.stock.move(id, static_cast<int>(StockWhy::received), "200", "", "Kept"));
  CHECK(role(room.stock, 0, "remains") == "300");
  CHECK(room.stock.move(id, static_cast<int>(StockWhy::counted), "21", "", "Kept"));
  CHECK(room.stock.low() == 0);
  CHECK(room.stock.move(id, static_cast<int>(StockWhy::taken_away), "1.5", "to court 3", "Kept"));
  CHECK(role(room.stock, 0, "remains") == "19.5");
  CHECK(role(room.stock, 0, "low").toBool() == true);
  CHECK(room.stock.low() == 1);
  CHECK_FALSE(room.stock.move(id, static_cast<int>(StockWhy::used), "1", "", "Kept"));
  CHECK_FALSE(room.stock.move(id, static_cast<int>(StockWhy::received), "x", "", "Kept"));
  CHECK_FALSE(room.stock.add(item("", true, StockModel::Room, "1"), "Kept"));
  CHECK_FALSE(room.stock.add(item("A", true, StockModel::Player, "1"), "Kept"));
  CHECK(room.faults.size() == 4);
  CHECK(room.stock.count() == 1);
  CHECK(room.stock.wrongWith("1.5", true).isEmpty());
  CHECK_FALSE(room.stock.wrongWith("1.5", false).isEmpty());
  CHECK_FALSE(room.stock.wrongGauge("17").isEmpty());
}

TEST_CASE("when a string is gone is told by the clock, by the weekday, or by the day") {
  StockRoom room;
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  const auto made = room.receive(player, {}, 14);
  const auto use = [&](const char* name, std::int64_t left_mm, std::int64_t used_mm) {
    CHECK(room.stock.add(item(name, true, StockModel::Room, QString::number((left_mm + used_mm) / 1000)), "Kept"));
    for (int i = 0; i < room.stock.count(); ++i)
      if (role(room.stock, i, "name") == name) {
        const StockUse uses[] = {{EntityId::from_hex(role(room.stock, i, "item").toString().toStdString()).value(), name, used_mm}};
        room.append(must(use_for_job(room.event, made.job, uses, "Bo", room.clock.now())));
      }
  };
  use("A", 12'000, 12'000);    // as much again in an hour
  use("B", 600'000, 12'000);   // in fifty hours
  use("C", 6'000'000, 12'000); // in five hundred
  room.device->work().refresh();
  REQUIRE(room.stock.count() == 3);
  // kMonday is a Monday morning in Lisbon.
  CHECK(role(room.stock, 0, "gone").toInt() == StockModel::AtTime);
  CHECK(role(room.stock, 1, "gone").toInt() == StockModel::OnWeekday);
  CHECK(role(room.stock, 1, "goneWhen") == "Wednesday");
  CHECK(role(room.stock, 2, "gone").toInt() == StockModel::OnDay);
  CHECK(role(room.stock, 0, "used") == "12");
  room.device->work().setLanguage("de");
  CHECK(role(room.stock, 1, "goneWhen") == "Mittwoch");
}
