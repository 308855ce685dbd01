#include "app-qml/view/lists_model.h"

#include <QSignalSpy>

#include "app-qml/view/bench_model.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

QString textAt(const QVariantList& list, int index) { return list.at(index).toMap().value("text").toString(); }
QString nameAt(const QVariantList& list, int index) { return list.at(index).toMap().value("name").toString(); }

}  // namespace

TEST_CASE("a list is added to, reworded, moved and taken from on the screen, and each can be taken back") {
  RoomOfJobs room;
  ListsModel lists(room.device->work());
  REQUIRE(lists.steps().size() == 9);
  CHECK(lists.usual());
  const QVariantList practice = lists.steps();
  CHECK(lists.add(" Wipe the frame ", "Added"));
  REQUIRE(lists.steps().size() == 10);
  CHECK(textAt(lists.steps(), 9) == "Wipe the frame");
  CHECK_FALSE(lists.usual());
  CHECK(lists.reword(nameAt(practice, 0), "Cut first", "Changed"));
  CHECK(textAt(lists.steps(), 0) == "Cut first");
  CHECK(lists.reword(nameAt(practice, 0), "", "Changed"));  // common practice's words again
  CHECK(textAt(lists.steps(), 0) == textAt(practice, 0));
  CHECK(lists.move("Wipe the frame", -1));
  CHECK(textAt(lists.steps(), 8) == "Wipe the frame");
  CHECK_FALSE(lists.move(nameAt(lists.steps(), 0), -1));  // there is no place above
  CHECK_FALSE(lists.move(nameAt(lists.steps(), 9), 1));
  CHECK(lists.remove(nameAt(practice, 1), "Off"));
  CHECK(lists.steps().size() == 9);
  REQUIRE(lists.removed().size() == 1);
  // Past what is turned off: one tap, one place.
  CHECK(lists.move(nameAt(practice, 2), -1));
  CHECK(nameAt(lists.steps(), 0) == nameAt(practice, 2));
  CHECK(room.device->work().undo());
  CHECK(nameAt(lists.steps(), 0) == nameAt(practice, 0));
  CHECK(lists.putBack(nameAt(practice, 1), "On"));
  CHECK(lists.removed().isEmpty());
  CHECK(lists.backToUsual("Usual"));
  CHECK(lists.steps() == practice);
  CHECK(lists.usual());
  CHECK(room.device->work().undo());
  CHECK(lists.steps().size() == 10);
  // The bench has it at once.
  (void)room.receive(room.addPlayer(named("Okafor")), day_wish(), 1);
  CHECK(BenchModel(room.device->work()).work()->steps().size() == 10);
  lists.setList(2);
  CHECK(lists.steps().size() == 8);
  CHECK(lists.usual());
}

TEST_CASE("words that can't be a step's are refused in words before they are stored, and by the core after") {
  RoomOfJobs room;
  ListsModel lists(room.device->work());
  CHECK(lists.wrongWords({}, "Wipe the frame").isEmpty());
  CHECK_FALSE(lists.wrongWords({}, "  ").isEmpty());
  CHECK(lists.wrongWords({}, QString(301, 'x')).contains("1"));
  CHECK_FALSE(lists.wrongWords({}, "=x").isEmpty());
  CHECK_FALSE(lists.wrongWords({}, textAt(lists.steps(), 3)).isEmpty());
  CHECK(lists.wrongWords(nameAt(lists.steps(), 3), textAt(lists.steps(), 3)).isEmpty());
  CHECK(lists.wrongWords(nameAt(lists.steps(), 3), "").isEmpty());  // the usual words again
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK_FALSE(lists.add("", {}));
  CHECK_FALSE(lists.add(QString(301, 'x'), {}));
  CHECK_FALSE(lists.add(QStringLiteral("a\nb"), {}));
  CHECK_FALSE(lists.remove("no such step", {}));
  CHECK(failed.count() == 4);
  CHECK(lists.usual());
}

TEST_CASE("two tablets change one list while apart, and both show one list of what both did") {
  RoomOfJobs room;
  ListsModel lists(room.device->work());
  const QString first = nameAt(lists.steps(), 0), last = nameAt(lists.steps(), 8);
  Tablet other("Bench tablet");
  bringTo(other, room, room.event);
  other.append(add_step(room.event, list_steps(*other.ledger, room.event), WorkList::bench, "Wipe the frame", 1, kMonday));
  other.append(change_step(room.event, list_steps(*other.ledger, room.event), WorkList::bench, first.toStdString(), {.text = "Cut first"}));
  CHECK(lists.move(last, -1));
  CHECK(lists.remove(first, {}));
  bringFrom(other, room, room.event);
  bringTo(other, room, room.event);
  room.device->work().refresh();
  CHECK(lists.steps().size() == 9);  // nine, one more, one off
  QStringList here, there;
  for (const auto& step : lists.steps()) here.append(step.toMap().value("name").toString());
  for (const auto& step : work_list(list_steps(*other.ledger, room.event), WorkList::bench)) there.append(QString::fromStdString(step.name));
  CHECK(here == there);
  CHECK(here.contains("Wipe the frame"));
  CHECK(textAt(lists.removed(), 0) == "Cut first");
  // It can be changed on as before.
  CHECK(lists.move("Wipe the frame", here.indexOf("Wipe the frame") > 0 ? -1 : 1));
  CHECK(lists.backToUsual({}));
}
