#include "app-qml/guarded_application.h"

#include <SQLiteCpp/Database.h>

#include <QTimer>

#include "core/store/database.h"
#include "tests/app/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE(
    "a database that fails while a screen asks it becomes the fault on the screen, and the app goes on") {
  DeskRoom room;
  room.addPlayer(named("Wendelmoor"));
  room.settle();
  GuardedApplication& application = needApplication();
  std::vector<Fault> told;
  application.onFault([&](const Fault& fault) {
    told.push_back(fault);
    room.device->work().tell(fault);
  });
  {
    // As damage does it: what every search reads is gone from under the open ledger.
    SQLite::Database behind((room.folder / "device" / "ledger.db").string(), SQLite::OPEN_READWRITE);
    behind.exec("ALTER TABLE model_player RENAME TO model_lost");
  }
  QTimer::singleShot(0, room.desk->finder(), [&room] { room.desk->finder()->setTyped("wendel"); });
  CHECK(waitUntil([&] { return !told.empty(); }));
  REQUIRE(told.size() == 1);
  CHECK(told[0].where == "ledger.db");
  CHECK_FALSE(told[0].what_to_do.empty());
  REQUIRE(room.faults.size() == 1);
  CHECK(room.faults[0].contains("ledger.db"));

  {
    SQLite::Database behind((room.folder / "device" / "ledger.db").string(), SQLite::OPEN_READWRITE);
    behind.exec("ALTER TABLE model_lost RENAME TO model_player");
  }
  QTimer::singleShot(0, room.desk->finder(), [&room] { room.desk->finder()->setTyped("wende"); });
  CHECK(waitUntil([&] { return room.desk->finder()->count() == 1; }));
  CHECK(told.size() == 1);
  application.onFault({});
}
