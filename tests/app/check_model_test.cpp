#include "app-qml/view/check_model.h"

#include <QSignalSpy>

#include "core/desk/bench.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Check : RoomOfJobs {
  BookId player = addPlayer(named("Okafor", "Sade"));
  MadeJob made = receive(player, day_wish(), 12);
  CheckModel check{device->work()};

  Check() {
    step(made, Stage::on_machine, "Bo");
    step(made, Stage::strung, "Bo");
    check.show(hex(made.book), hex(made.job));
  }
  [[nodiscard]] int found(int row) const { return check.items().at(row).toMap().value("found").toInt(); }
};

constexpr int kRight = static_cast<int>(CheckModel::Found::Right), kWrong = static_cast<int>(CheckModel::Found::Wrong);

}  // namespace

TEST_CASE("nothing is checked before every item was looked at") {
  Check room;
  REQUIRE(room.check.items().size() == 8);
  CHECK(room.check.player() == "Okafor Sade");
  CHECK(room.check.tag() == "12");
  CHECK(room.check.isOpen());
  CHECK_FALSE(room.check.isBegun());
  CHECK_FALSE(room.check.isComplete());
  room.check.find(0, kRight);
  CHECK(room.check.isBegun());
  CHECK_FALSE(room.check.isComplete());
  room.check.find(0, kRight);  // found again it is unseen
  CHECK(room.check.unseen() == 8);
  room.check.restIsRight();
  CHECK(room.check.isComplete());
  CHECK(room.check.store("checked"));
  CHECK(room.stageOf(room.made) == Stage::checked);
  CHECK(room.check.history().size() == 1);
  CHECK(room.check.unseen() == 8);
  CHECK(must(load_player(room.ledger(), room.player)).checks.at(0).now.by == "Ines");
}

TEST_CASE("what is not in order needs a reason, and the racket goes back with it") {
  Check room;
  room.check.find(3, kWrong);
  CHECK(room.check.backTo() == static_cast<int>(Stage::cut_out));
  room.check.restIsRight();
  CHECK(room.found(3) == kWrong);
  CHECK_FALSE(room.check.isComplete());
  room.check.setReason("a knot slipped");
  room.check.setBackTo(static_cast<int>(Stage::on_machine));
  REQUIRE(room.check.isComplete());
  CHECK(room.check.store("back"));
  CHECK(room.stageOf(room.made) == Stage::on_machine);
  CHECK(room.check.redos() == 1);
  CHECK_FALSE(room.check.isOpen());
  CHECK(room.check.reason().isEmpty());
}

TEST_CASE("what was found stays while others write, and is thrown away with a word") {
  Check room;
  room.check.find(1, kWrong);
  room.receive(room.player, day_wish(), 13);
  room.device->work().refresh();
  CHECK(room.found(1) == kWrong);
  room.check.startAgain();
  CHECK_FALSE(room.check.isBegun());
}

TEST_CASE("the stencils are shown with the caution about ink, once a racket, before they are on") {
  Check room;
  QSignalSpy asked(&room.check, &CheckModel::stencilsAsked);
  room.check.showStencils(hex(room.made.book), hex(room.made.job));
  CHECK(asked.size() == 1);
  REQUIRE(room.check.stencils().size() == 2);
  CHECK(room.check.stencils().at(0).toMap().value("mark").toString() == "open ring");
  CHECK(room.check.stencils().at(0).toMap().value("ink").toString() == "red");
  CHECK(room.check.stencils().at(1).toMap().value("ofString").toBool());
  CHECK(room.check.caution() == QString::fromStdString(caution_text({}, Caution::stencil_ink)));
  CHECK(room.check.stencilled("on"));
  CHECK(room.stageOf(room.made) == Stage::stencilled);
  CHECK(room.check.caution().isEmpty());
  room.device->work().undo();
  CHECK(room.check.caution().isEmpty());
  CHECK(room.stageOf(room.made) == Stage::strung);
}

TEST_CASE("a racket that is not strung is not checked") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), day_wish(), 1);
  CheckModel check(room.device->work());
  CHECK_FALSE(check.hasJob());
  check.show(hex(made.book), hex(made.job));
  CHECK(check.hasJob());
  CHECK_FALSE(check.isOpen());
  check.restIsRight();
  CHECK_FALSE(check.isComplete());
  CHECK_FALSE(check.store("checked"));
  CHECK(room.stageOf(made) == Stage::received);
}
