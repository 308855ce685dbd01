#include "app-qml/view/jobs_model.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>

#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Many jobs in few actions: what is tested is the list, not the desk.
void addJobs(RoomOfJobs& room, int count) {
  const auto player = room.addPlayer(named("Okafor", "Sade"));
  const int each = 250;
  for (int done = 0; done < count; done += each) {
    Draft draft(player, kPlayerBook, kActImportJobs);
    for (int i = done; i < std::min(count, done + each); ++i) {
      room.clock.advance(1000);
      Job job;
      job.event = room.event;
      job.at = room.clock.now();
      job.tag_number = i;
      (void)put_new(draft, job, room.clock.now());
    }
    room.append(draft);
  }
}

}  // namespace

TEST_CASE("the list of all jobs holds a few pages however long it is, and every row is the right one") {
  RoomOfJobs room;
  addJobs(room, 3000);
  JobsModel model(room.device->work());
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  REQUIRE(model.rowCount() == 3000);
  for (int row = 0; row < 3000; ++row) REQUIRE(role(model, row, "tag") == QString::number(2999 - row));
  CHECK(model.rowsHeld() <= JobsModel::pageRows * JobsModel::mostPages);
  // As a thumb on the scroll bar does it: anywhere, in any order.
  for (const int row : {2999, 0, 1500, 64, 63, 2, 2815})
    CHECK(role(model, row, "tag") == QString::number(2999 - row));
  CHECK(model.rowsHeld() <= JobsModel::pageRows * JobsModel::mostPages);
  CHECK_FALSE(model.data(model.index(3000, 0), Qt::DisplayRole).isValid());
}

TEST_CASE("50,000 jobs are scrolled end to end with 320 rows in memory", "[.slow]") {
  RoomOfJobs room;
  addJobs(room, 50'000);
  JobsModel model(room.device->work());
  REQUIRE(model.rowCount() == 50'000);
  QElapsedTimer since;
  since.start();
  for (int row = 0; row < 50'000; row += 10)
    REQUIRE(role(model, row, "tag") == QString::number(49'999 - row));
  WARN("end to end in " << since.elapsed() << " ms, rows held " << model.rowsHeld());
  since.restart();
  for (int i = 0; i < 100; ++i) CHECK(role(model, (i * 7919) % 50'000, "player").isValid());
  WARN("100 jumps in " << since.elapsed() << " ms");
  CHECK(model.rowsHeld() <= JobsModel::pageRows * JobsModel::mostPages);
}

TEST_CASE("a new job comes in at the top of the list while it is looked at") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  room.receive(player, day_wish(), 1);
  JobsModel model(room.device->work());
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  REQUIRE(model.rowCount() == 1);
  QSignalSpy inserted(&model, &JobsModel::rowsInserted);
  room.receive(player, day_wish(), 2);
  REQUIRE(waitUntil([&] { return model.rowCount() == 2; }));
  CHECK(inserted.count() == 1);
  CHECK(role(model, 0, "tag") == "2");
}

TEST_CASE("only this event's jobs, where that is asked for") {
  RoomOfJobs room;
  const auto player = room.addPlayer(named("Okafor"));
  room.receive(player, day_wish(), 1);
  room.device->chooseEvent(room.addEvent("Lakeside", "2031-06-10"));
  JobsModel model(room.device->work());
  CHECK(model.rowCount() == 1);
  model.setTodayOnly(true);
  CHECK(model.rowCount() == 0);
  model.setTodayOnly(false);
  CHECK(role(model, 0, "eventName") == "Harbour");
}
