#include "app-qml/view/machines_model.h"
#include "app-qml/view/numbers_model.h"
#include "app-qml/view/team_model.h"
#include "core/desk/shifts.h"
#include "tests/app/room_jobs.h"
#include "tests/app/rows.h"

#include <fstream>

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("the team is listed with who is here, and a day that is too long is told before it begins") {
  RoomOfJobs room;
  TeamModel team(room.device->work());
  CHECK(team.setMember("Mara", 3, "en pt", "natural gut", "Kept"));
  REQUIRE(team.members().size() == 1);
  CHECK(at(team.members(), 0)["skills"] == "natural gut");
  CHECK_FALSE(at(team.members(), 0)["here"].toBool());
  const auto mara = at(team.members(), 0)["id"].toString();
  CHECK(team.addShift(mara, 1, "8:00", "16:00", "Planned"));
  CHECK(team.warnings().isEmpty());
  CHECK(team.addShift(mara, 1, "17:00", "22:30", "Planned"));
  REQUIRE(team.warnings().size() == 1);
  CHECK(at(team.warnings(), 0)["length"] == "13 h 30 min");
  CHECK(team.shifts().size() == 2);
  CHECK(team.removeShift(at(team.shifts(), 1)["id"].toString(), "Removed"));
  CHECK(team.warnings().isEmpty());
  CHECK(team.addShift(mara, 2, "20:00", "2:00", "Planned"));  // past midnight
  CHECK(team.shifts().size() == 2);
  CHECK_FALSE(team.wrongTime("25:00").isEmpty());
  CHECK_FALSE(team.wrongTime("eight").isEmpty());
  CHECK(team.wrongTime("8:00").isEmpty());
  CHECK_FALSE(team.addShift(mara, 0, "x", "8:00", "Planned"));
  CHECK_FALSE(team.setMember(" ", 3, {}, {}, "Kept"));
  // Whoever has begun is here.
  room.clock.set(load_shifts(room.ledger(), room.device->work().event()).front().now.from.value() + kHour);
  room.device->work().refresh();
  CHECK(at(team.members(), 0)["here"].toBool());
}

TEST_CASE("a machine is cleaned, calibrated, taken out of order and mended by one tap each, and it can be taken back") {
  RoomOfJobs room;
  MachinesModel model(room.device->work());
  CHECK(model.add({{"name", "1"}, {"kind", 1}, {"most", "40"}, {"prestretch", "0 10"}, {"every", "25"}}, "Listed"));
  CHECK_FALSE(model.add({{"name", "1"}, {"kind", 1}}, "Listed"));
  CHECK_FALSE(model.add({{"name", "2"}, {"kind", 2}, {"most", "fast"}}, "Listed"));
  REQUIRE(model.machines().size() == 1);
  const auto id = at(model.machines(), 0)["id"].toString();
  CHECK(model.breakDown(id, "a clamp slips", "Noted"));
  CHECK(model.needing() == 1);
  CHECK(at(model.machines(), 0)["reason"] == "a clamp slips");
  CHECK(at(model.machines(), 0)["by"] == "Ines");
  room.clock.advance(kMinute);
  CHECK(model.mend(id, "Mended"));
  CHECK(model.needing() == 0);
  CHECK(room.device->work().undo());
  CHECK(model.needing() == 1);
  CHECK(model.calibrate(id, "25", "24,5", "Kept"));
  CHECK(at(model.machines(), 0)["off"] == "-2.0");
  CHECK(model.calibrate(id, "55 lb", "25 kg", "Kept"));
  CHECK_FALSE(model.calibrate(id, "55 apples", "25", "Kept"));
  CHECK_FALSE(model.breakDown(id, " ", "Noted"));
  CHECK(model.wrongTension("").isEmpty());
  CHECK_FALSE(model.wrongTension("0").isEmpty());
}

TEST_CASE("the numbers are those of the whole event or of today, and can be saved") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Varga", "Ilka"));
  const auto made = room.receive(player, day_wish(), 11, room.clock.now() + kHour);
  (void)room.receive(player, day_wish(), 12, room.clock.now() + kHour);
  NumbersModel model(room.device->work());
  CHECK(model.sums().isEmpty());  // nobody looks
  model.setWatched(true);
  CHECK(model.sums()["jobs"] == 2);
  for (const Stage stage : {Stage::cut_out, Stage::on_machine, Stage::strung, Stage::checked, Stage::ready}) room.step(made, stage, "Bo");
  room.device->work().refresh();
  CHECK(model.sums()["ready"] == 1);
  CHECK(model.sums()["onTime"] == "100 %");
  CHECK(at(model.stringers(), 0)["key"] == "Bo");
  CHECK(at(model.tensions(), 0)["key"] == "25 kg");
  const auto file = (room.folder / "numbers.csv").string();
  CHECK(model.save(QUrl::fromLocalFile(QString::fromStdString(file))));
  CHECK(model.saved()->text() == QString::fromStdString("Saved as " + file));
  std::string first;
  std::getline(std::ifstream(file), first);
  CHECK(first == "by,key,taken_in,strung,ready,on_time,late,turnaround_minutes\r");
  CHECK_FALSE(model.save(QUrl::fromLocalFile(QStringLiteral("/nowhere/numbers.csv"))));
  CHECK_FALSE(model.save(QUrl::fromLocalFile(QString::fromStdString(room.folder.path().string()))));  // a folder stays one
  CHECK(model.saved()->text().contains("is no file"));
  room.clock.advance(2 * kDay);
  model.setToday(true);
  CHECK(model.sums()["jobs"] == 0);
  CHECK(model.growth().isEmpty());
}
