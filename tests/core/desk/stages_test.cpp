#include "core/desk/stages.h"

#include <catch2/catch.hpp>

#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a racket goes through the room one tap at a time") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const EntityId job = desk.load(book).jobs.at(0).id();
  std::vector<Stage> seen;
  for (;;) {
    const auto next = advance(desk.load(book), job, "Mara", desk.clock.now());
    if (!next) {
      CHECK(next.error().code == FaultCode::refused);
      break;
    }
    CHECK(next->action() == kActStage);
    desk.append(next);
    seen.push_back(desk.load(book).stage_of(job).stage);
    REQUIRE(seen.size() < 20);
  }
  CHECK(seen == std::vector{Stage::inspected, Stage::cut_out, Stage::on_machine, Stage::strung,
                            Stage::checked, Stage::stencilled, Stage::ready, Stage::collected});
  CHECK(marks_of(desk.load(book), job).size() == 9);
  CHECK(find_job(*desk.ledger, book, job)->stage == Stage::collected);
}

TEST_CASE("a step out of order needs a reason, which stays") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const EntityId job = desk.load(book).jobs.at(0).id();
  const auto step = [&](Stage to, std::string reason) {
    return take_step(desk.load(book), std::span(&job, 1), {to, "Mara", std::move(reason), desk.clock.now()});
  };
  CHECK_FALSE(step(Stage::ready, ""));
  CHECK_FALSE(step(Stage::received, "again"));
  CHECK_FALSE(step(Stage::none, "nowhere"));
  CHECK_FALSE(step(static_cast<Stage>(99), "newer"));
  CHECK_FALSE(step(Stage::aside, ""));
  desk.append(step(Stage::cut_out, ""));
  desk.append(step(Stage::on_machine, ""));
  desk.append(step(Stage::strung, ""));
  const auto back = step(Stage::cut_out, "clamp mark, string again");
  REQUIRE(back);
  CHECK(back->action() == kActStepBack);
  desk.append(back);
  CHECK(desk.load(book).stage_of(job).reason == "clamp mark, string again");
  desk.append(step(Stage::aside, "frame cracked"));
  CHECK_FALSE(advance(desk.load(book), job, "Mara", desk.clock.now()));
  desk.append(step(Stage::collected, ""));
  CHECK_FALSE(take_step(desk.load(book), {}, {Stage::ready, "Mara", "", 1}));
  const EntityId nobody{{1}};
  CHECK(take_step(desk.load(book), std::span(&nobody, 1), {Stage::ready, "Mara", "", 1}).error().code ==
        FaultCode::not_found);
}

TEST_CASE("two people who take one racket while apart become a question, not a lost stage") {
  Desk desk;
  Desk bench("bench");
  const BookId book = desk.first_drop_off(1);
  const EntityId job = desk.load(book).jobs.at(0).id();
  meet(desk, bench, book);
  const auto take = [&](Desk& where, const char* who, Stage to, const char* reason) {
    return take_step(where.load(book), std::span(&job, 1), {to, who, reason, where.clock.now()});
  };
  desk.append(take(desk, "Mara", Stage::on_machine, ""));
  bench.append(take(bench, "Jonas", Stage::on_machine, ""));
  bench.append(take(bench, "Jonas", Stage::strung, ""));
  meet(desk, bench, book);
  for (Desk* device : {&desk, &bench}) {
    CHECK(device->load(book).stage_of(job).clash);
    CHECK(clashing_jobs(device->load(book)) == std::vector{job});
    CHECK(clashing_jobs(*device->ledger, desk.event).size() == 1);
    CHECK(marks_of(device->load(book), job).size() == 4);
  }
  const auto unsettled = take(desk, "Mara", Stage::checked, "");
  REQUIRE_FALSE(unsettled);
  CHECK(unsettled.error().code == FaultCode::conflict);
  desk.append(take(desk, "Mara", Stage::strung, "Jonas has it"));
  meet(desk, bench, book);
  for (Desk* device : {&desk, &bench}) {
    CHECK_FALSE(device->load(book).stage_of(job).clash);
    CHECK(find_job(*device->ledger, book, job)->stage == Stage::strung);
    CHECK_FALSE(find_job(*device->ledger, book, job)->clash);
  }
}

TEST_CASE("every stage but the last ones leads on") {
  for (const auto& choice : choices(Stage{})) {
    CAPTURE(choice.name);
    CHECK(next_steps(choice.value).empty() == (choice.value == Stage::collected));
  }
  CHECK(is_open(Stage::ready));
  CHECK_FALSE(is_open(Stage::aside));
}
