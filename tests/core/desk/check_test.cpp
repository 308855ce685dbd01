#include "core/desk/check.h"

#include <catch2/catch.hpp>

#include "core/desk/bench.h"
#include "core/desk/inspection.h"
#include "core/desk/undo.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Checker : Desk {
  BookId book = first_drop_off(1);
  EntityId job = load(book).jobs.at(0).id();

  Checker() { string_it(); }
  void string_it() {
    for (const Stage to : {Stage::cut_out, Stage::on_machine, Stage::strung}) {
      if (stage() >= to) continue;
      append(step_at_bench(load(book), job, {to, "Ruud", "", clock.now()}));
    }
  }
  [[nodiscard]] Outcome<Draft> check(bool ok, Stage back_to = Stage::none, const std::string& reason = "") const {
    return check_racket(load(book), job, {{{"=check.weave", true}, {"=check.knots", ok}}, reason, back_to, "Mara", clock.now()});
  }
  [[nodiscard]] Stage stage() const { return load(book).stage_of(job).stage; }
};

}  // namespace

TEST_CASE("a racket in order is checked in one action, with every item that was looked at") {
  Checker room;
  room.append(room.check(true));
  CHECK(room.stage() == Stage::checked);
  const PlayerRecord record = room.load(room.book);
  REQUIRE(checks_of(record, room.job).size() == 1);
  const CheckResult& held = checks_of(record, room.job)[0]->now;
  CHECK(held.passed == true);
  CHECK(held.by == "Mara");
  CHECK(checked_items(held) == std::vector<CheckedItem>{{"=check.weave", true}, {"=check.knots", true}});
  CHECK(redos_of(record, room.job) == 0);
  CHECK(check_words(Language{}, held) == "all in order");
  // A second look leaves it where it is.
  room.append(room.check(true));
  CHECK(room.stage() == Stage::checked);
}

TEST_CASE("a racket not in order goes back with the reason, is strung again under a record of its own, and the redo is counted") {
  Checker room;
  room.append(room.check(false, Stage::cut_out, "a knot slipped"));
  CHECK(room.stage() == Stage::cut_out);
  CHECK(room.load(room.book).stage_of(room.job).reason == "a knot slipped");
  CHECK(redos_of(room.load(room.book), room.job) == 1);
  CHECK_FALSE(bench_now(room.load(room.book), room.job));
  const CheckResult held = checks_of(room.load(room.book), room.job)[0]->now;
  CHECK(held.passed == false);
  CHECK(held.back_to == Stage::cut_out);
  CHECK(check_words(Language::from("de").value(), held) == "nicht in Ordnung: Knoten fest, Enden kurz (a knot slipped)");
  room.string_it();
  CHECK(benches_of(room.load(room.book), room.job).size() == 2);
  room.append(room.check(false, Stage::on_machine, "again"));
  room.string_it();
  room.append(room.check(true));
  CHECK(room.stage() == Stage::checked);
  CHECK(redos_of(room.load(room.book), room.job) == 2);
  // Found later, before it is collected.
  room.append(room.check(false, Stage::strung, "look at the weave again"));
  CHECK(room.stage() == Stage::strung);
  CHECK(redos_of(room.load(room.book), room.job) == 3);
  CHECK(find_job(*room.ledger, room.book, room.job)->stage == Stage::strung);
}

TEST_CASE("a racket that goes back to the machine goes to the one on which it was strung") {
  Checker room;
  const EntityId machine{{7}};
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::on_machine, "Ruud", "put on again", room.clock.now(), machine, "by the window"}));
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::strung, "Ruud", "", room.clock.now()}));
  room.append(room.check(false, Stage::on_machine, "the last cross is loose"));
  CHECK(room.stage() == Stage::on_machine);
  CHECK(machine_of(room.load(room.book), room.job).machine == machine);
  room.append(step_at_bench(room.load(room.book), room.job, {Stage::strung, "Ruud", "", room.clock.now()}));
  room.append(room.check(false, Stage::cut_out, "strung anew"));
  CHECK_FALSE(marks_of(room.load(room.book), room.job).back().mark.machine);
}

TEST_CASE("what a check needs is said, and nothing is half stored") {
  Checker room;
  const auto code = [](const Outcome<Draft>& draft) { return draft ? std::string("done") : std::string(name_of(draft.error().code)); };
  const auto check = [&](std::vector<CheckedItem> items) {
    return code(check_racket(room.load(room.book), room.job, {std::move(items), "", Stage::none, "Mara", 1}));
  };
  CHECK(code(room.check(false)) == "bad_input");
  CHECK(code(room.check(false, Stage::cut_out, " ")) == "bad_input");
  CHECK(code(room.check(false, Stage::none, "why")) == "bad_input");
  CHECK(code(room.check(false, Stage::strung, "why")) == "bad_input");
  CHECK(code(room.check(false, Stage::aside, "why")) == "bad_input");
  CHECK(code(room.check(true, Stage::none, "why")) == "bad_input");
  CHECK(code(room.check(true, Stage::cut_out)) == "bad_input");
  CHECK(check({}) == "bad_input");
  CHECK(check({{"", true}}) == "bad_input");
  CHECK(check({{"a", true}, {"a", true}}) == "bad_input");
  CHECK(code(check_racket(room.load(room.book), EntityId{{1}}, {})) == "not_found");
  CHECK(room.load(room.book).checks.empty());
  CHECK(redo_stages(Stage::on_machine).empty());
  room.append(take_step(room.load(room.book), std::span(&room.job, 1), {Stage::on_machine, "Ruud", "not done", 1}));
  CHECK(code(room.check(true)) == "refused");
}

TEST_CASE("a doubtful frame goes back to no machine by way of a failed check") {
  Checker room;
  room.append(take_step(room.load(room.book), std::span(&room.job, 1), {Stage::inspected, "Ruud", "a noise", room.clock.now()}));
  const std::vector<FoundOnFrame> crack{{FrameFault::crack, FramePart::head, 75, FrameRemedy::string_anyway, ""}};
  room.append(inspect(room.load(room.book), room.job, crack, "Mara", room.clock.now()));
  room.append(take_step(room.load(room.book), std::span(&room.job, 1), {Stage::strung, "Ruud", "it was strung before", room.clock.now()}));
  CHECK(room.check(false, Stage::cut_out, "weave").error().code == FaultCode::refused);
  room.append(room.check(false, Stage::inspected, "ask about the crack"));
}

TEST_CASE("a check is taken back whole") {
  Checker room;
  const Committed done = room.append(room.check(false, Stage::cut_out, "the wrong racket"));
  room.append(undo(*room.ledger, room.book, done.dot.seq));
  CHECK(room.stage() == Stage::strung);
  CHECK(redos_of(room.load(room.book), room.job) == 0);
}
