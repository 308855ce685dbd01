#include <QElapsedTimer>

#include "app-qml/view/players_model.h"
#include "fixtures/demo/demo.h"
#include "tests/app/device_room.h"

using namespace weavelog;
using namespace weavelog::testing;

// Filling the ledger takes a minute or two, so it is run by name: test_app "[.large]".
TEST_CASE("a player among 50,000 jobs is found within 50 ms a key", "[.large]") {
  AppRoom room;
  demo::DemoOptions wanted;
  wanted.players = 1000;
  wanted.jobs_per_player = 50;
  const auto scenario = demo::make_demo(wanted);
  const auto books = must(demo::fill_large(scenario, {room.ledger(), room.clock}));
  REQUIRE(books.size() == 1000);
  room.device->work().refresh();
  PlayersModel finder(room.device->work(), true);
  std::vector<qint64> times;
  for (const int at : {0, 17, 251, 640, 999}) {
    const QString name =
        QString::fromStdString(scenario.players[static_cast<std::size_t>(at)].person.family_name);
    for (int letters = 1; letters <= std::min<int>(5, static_cast<int>(name.size())); ++letters) {
      QElapsedTimer timer;
      timer.start();
      finder.setTyped(name.left(letters));
      times.push_back(timer.nsecsElapsed() / 1000);
      CHECK(finder.count() > 0);
    }
    finder.setTyped({});
  }
  std::sort(times.begin(), times.end());
  WARN("find as you type, microseconds: median " << times[times.size() / 2] << ", longest " << times.back());
  CHECK(times[times.size() / 2] < 50'000);
}
