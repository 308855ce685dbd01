#include "app-qml/view/job_brief.h"

#include "app-qml/view/check_model.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/player_card.h"
#include "app-qml/view/room_model.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("what a racket in the hand is compared with: strings, tensions, pattern, stencils, promise") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor", "Sade")), day_wish(), 33, room.clock.now() + kHour);
  const auto brief = [&] { return jobBrief(room.device->work(), must(load_player(room.ledger(), made.book)), made.job); };
  CHECK(brief().value("mains") == QString::fromUtf8("Tarnbrook Silk, 1.25\u00a0mm, 25\u00a0kg"));
  CHECK(brief().value("crosses") == QString::fromUtf8("Velmora Round, 1.23\u00a0mm, 24\u00a0kg"));
  CHECK(brief().value("racketStencil") == "open ring, red");
  CHECK(brief().value("stringStencil") == "bar, black");
  CHECK(brief().value("pattern").toString().isEmpty());  // nobody counted it
  CHECK(brief().value("readyBy") == room.device->work().timeText(room.clock.now() + kHour - 1000));
  CHECK(brief().value("due").toInt() == static_cast<int>(JobCard::Due::calm));

  auto record = must(load_player(room.ledger(), made.book));
  Draft draft(made.book, kPlayerBook, kActEdit);
  auto racket = record.rackets.front().now;
  racket.mains_count = 16;
  racket.crosses_count = 19;
  put_changes(draft, record.rackets.front().seen, racket);
  room.append(draft);
  CHECK(brief().value("pattern") == QString::fromUtf8("16 × 19"));
  // The check and the sheet of a racket show the same.
  CheckModel check(room.device->work());
  check.show(hex(made.book), hex(made.job));
  CHECK(check.brief() == brief());
  const RoomModel board(room.device->work());
  CHECK(board.stepsOf(hex(made.book), hex(made.job)).value("brief").toMap() == brief());
  CHECK(jobBrief(room.device->work(), record, {}).isEmpty());
}

TEST_CASE("a wish that says nothing leaves the lines empty") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), Agreed{}, 33);
  const auto brief = jobBrief(room.device->work(), must(load_player(room.ledger(), made.book)), made.job);
  for (const char* line : {"mains", "crosses", "pattern", "racketStencil", "stringStencil", "readyBy"}) CHECK(brief.value(line).toString().isEmpty());
}

TEST_CASE("a player's card says taken in, until the racket is strung") {
  RoomOfJobs room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), day_wish(), 33);
  const auto takenIn = [&] {
    ::PlayerCard card(room.device->work());
    card.show(hex(made.book));
    REQUIRE(card.agreed().size() == 1);
    return card.agreed().front().toMap().value("takenIn").toBool();
  };
  CHECK(takenIn());
  room.step(made, Stage::on_machine, "Ines");
  CHECK(takenIn());
  room.step(made, Stage::strung, "Ines");
  CHECK_FALSE(takenIn());
}
