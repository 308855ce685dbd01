#pragma once
// The desk of a device of the app, and players with a past.

#include "app-qml/view/desk_model.h"
#include "core/desk/stages.h"
#include "tests/app/device_room.h"

namespace weavelog::testing {

struct DeskRoom : AppRoom {
  std::unique_ptr<DeskModel> desk;
  QStringList faults;

  DeskRoom() { sit(); }
  void sit() {
    desk = std::make_unique<DeskModel>(device->work(), *settings);
    QObject::connect(&device->work(), &Work::failed, [this](const QString& what) { faults.append(what); });
  }
  // As a kill does it: what is only in memory is gone.
  void startAgain() {
    desk.reset();
    stop();
    start();
    sit();
  }
  DropOffDraft& draft() { return *desk->draft(); }
  void settle() { device->work().refresh(); }
  void answerNeeded() {
    draft().set("mains_string", "Tarnbrook Silk");
    draft().set("crosses_string", "Velmora Round");
    draft().set("mains_tension", "25");
    draft().set("crosses_tension", "24");
  }
  // A player with so many rackets, taken in and collected.
  BookId pastPlayer(const QString& family, int rackets) {
    desk->finder()->setTyped(family);
    desk->addPlayer();
    draft().setPerson("given_name", "Ilse");
    draft().setPerson("language", "fr");
    answerNeeded();
    for (int i = 1; i < rackets; ++i) draft().addRacket();
    const BookId book = draft().book();
    desk->readBack();
    REQUIRE(desk->page() == DeskModel::Page::Confirm);
    desk->confirm(draft().readBack());
    REQUIRE(desk->page() == DeskModel::Page::Stored);
    const auto record = must(load_player(ledger(), book));
    std::vector<EntityId> jobs;
    for (const auto& job : record.jobs) jobs.push_back(job.id());
    StageStep away;
    away.to = Stage::collected;
    away.by = "Ines";
    away.reason = "handed over";
    away.at = clock.now();
    append(must(take_step(record, jobs, away)));
    settle();
    desk->next();
    clock.advance(14 * kDay);
    return book;
  }
};

}  // namespace weavelog::testing
