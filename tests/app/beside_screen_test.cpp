#include "app-qml/view/beside_screen.h"

#include <SQLiteCpp/Database.h>

#include <atomic>
#include <thread>

#include "app-qml/view/day_model.h"
#include "app-qml/view/team_model.h"
#include "core/store/database.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("of what is asked while something is worked out beside the screen only the newest is worked out, on another thread") {
  needApplication();
  QObject owner;
  BesideScreen beside(owner);
  std::atomic<bool> go = false;
  const auto here = std::this_thread::get_id();
  std::atomic<bool> elsewhere = false;
  std::vector<int> taken;
  const auto ask = [&](int what) {
    beside.work(
        [&, what] {
          while (!go) std::this_thread::yield();
          elsewhere = std::this_thread::get_id() != here;
          return what;
        },
        [&](int made) {
          CHECK(std::this_thread::get_id() == here);
          taken.push_back(made);
        });
  };
  for (int what = 1; what <= 4; ++what) ask(what);
  CHECK(beside.busy());
  go = true;
  REQUIRE(waitUntil([&] { return !beside.busy() && taken.size() == 2; }));
  CHECK(taken == std::vector<int>{1, 4});
  CHECK(elsewhere);
}

TEST_CASE("a database that fails while something is worked out beside the screen becomes the one fault, and the app goes on") {
  RoomOfJobs room;
  TeamModel team(room.device->work());
  REQUIRE(team.setMember("Merrin", 3, "en", "", "Kept"));
  GuardedApplication& application = needApplication();
  std::vector<Fault> told;
  application.onFault([&](const Fault& fault) { told.push_back(fault); });
  const auto behind = [&](const char* sql) {
    SQLite::Database database((room.folder / "device" / "ledger.db").string(), SQLite::OPEN_READWRITE);
    database.exec(sql);
  };
  DayModel day(room.device->work(), QString::fromStdString((room.folder / "").string()));
  behind("ALTER TABLE model_job RENAME TO model_lost");
  day.setWatched(true);
  REQUIRE(waitUntil([&] { return !told.empty(); }));
  CHECK(told.size() == 1);
  CHECK(told[0].where == "ledger.db");
  CHECK_FALSE(day.ready());
  behind("ALTER TABLE model_lost RENAME TO model_job");
  room.device->work().refresh();
  CHECK(waitUntil([&] { return day.ready() && !day.busy(); }));
  CHECK(told.size() == 1);
  application.onFault({});
}
