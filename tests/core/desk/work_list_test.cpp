#include "core/desk/work_list.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/desk/event_book.h"
#include "core/desk/undo.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const Language kInEnglish, kGerman = Language::from("de-AT").value();

struct Lists : Desk {
  explicit Lists(const std::string& name = "desk") : Desk(name) {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now()));
  }
  [[nodiscard]] std::vector<WorkStep> list(WorkList which, bool off_too = false) const {
    return work_list(list_steps(*ledger, event), which, off_too);
  }
  [[nodiscard]] std::vector<std::string> names(WorkList which) const {
    std::vector<std::string> out;
    for (const WorkStep& step : list(which)) out.push_back(step.name);
    return out;
  }
  [[nodiscard]] Outcome<Draft> changed(WorkList which, std::string_view name, const StepChange& change) const {
    return change_step(event, list_steps(*ledger, event), which, name, change);
  }
  [[nodiscard]] Outcome<Draft> added(WorkList which, const std::string& text, std::optional<std::size_t> place = {}) const {
    return add_step(event, list_steps(*ledger, event), which, text, place, clock.now());
  }
};

}  // namespace

TEST_CASE("a room that never changed a list has the common practice, told in every language") {
  const Lists room;
  for (const WorkList which : {WorkList::bench, WorkList::check}) {
    CHECK(room.list(which).size() >= 8);
    for (const WorkStep& step : room.list(which)) {
      std::set<std::string> said;
      for (const char* language : {"en", "de", "fr", "es"}) said.insert(step_words(Language::from(language).value(), step.step));
      INFO(step.name);
      CHECK(said.size() == 4);
      CHECK_FALSE(said.contains("step." + step.step.key));
      CHECK(step_words(kInEnglish, step.name) == step_words(kInEnglish, step.step));
    }
  }
  CHECK(room.list(WorkList::unsaid).empty());
  // Load off from the centre before anything is mounted; supports at head and throat before those at the sides.
  CHECK(room.names(WorkList::bench).at(0) == "=bench.release");
  CHECK(room.names(WorkList::bench).at(1) == "=bench.supports");
}

TEST_CASE("the first change writes the list down, and it is the room's own from then on") {
  Lists room;
  room.append(room.changed(WorkList::check, "=check.stencil", {.off = true}));
  CHECK(list_steps(*room.ledger, room.event).size() == 8);
  CHECK(room.list(WorkList::check).size() == 7);
  CHECK(room.list(WorkList::check, true).size() == 8);
  CHECK(room.list(WorkList::bench).size() == 9);  // the other list stays common practice
  room.append(room.added(WorkList::check, "Dampener back in", 1));
  CHECK(room.names(WorkList::check).at(0) == "Dampener back in");
  CHECK(room.list(WorkList::check).at(0).own);
  room.append(room.changed(WorkList::check, "Dampener back in", {.text = "Dämpfer wieder drin", .language = "de", .place = 3}));
  const WorkStep third = room.list(WorkList::check).at(2);
  CHECK(step_words(kGerman, third.step) == "Dämpfer wieder drin");
  CHECK(step_words(kInEnglish, third.step) == "Dampener back in");
  CHECK(third.name == "Dampener back in");
  // Common practice in the room's words, and back.
  room.append(room.changed(WorkList::check, "=check.knots", {.text = "Our knots, twice looked at"}));
  const auto knots = [&] {
    for (const WorkStep& step : room.list(WorkList::check))
      if (step.name == "=check.knots") return step_words(kGerman, step.step);
    return std::string();
  };
  CHECK(knots() == "Our knots, twice looked at");
  room.append(room.changed(WorkList::check, "=check.knots", {.text = ""}));
  CHECK(knots() == step_words(kGerman, "=check.knots"));
  room.append(room.changed(WorkList::check, "=check.stencil", {.off = false}));
  CHECK(room.list(WorkList::check).size() == 9);
}

TEST_CASE("two tablets that change a list while apart have one list afterwards") {
  Lists desk;
  Desk bench("bench");
  meet(desk, bench, desk.event);
  const auto change = [&](Desk& device, std::string_view name) {
    device.append(change_step(desk.event, list_steps(*device.ledger, desk.event), WorkList::bench, name, {.off = true}));
  };
  change(desk, "=bench.marks");
  change(bench, "=bench.knots");
  meet(desk, bench, desk.event);
  for (const Desk* device : {static_cast<Desk*>(&desk), &bench}) {
    CHECK(work_list(list_steps(*device->ledger, desk.event), WorkList::bench, true).size() == 9);
    CHECK(work_list(list_steps(*device->ledger, desk.event), WorkList::bench).size() == 7);
    CHECK(device->ledger->open_questions(desk.event).empty());
  }
}

TEST_CASE("the first change taken back gives the common practice back") {
  Lists room;
  const auto before = room.names(WorkList::bench);
  const Committed done = room.append(room.changed(WorkList::bench, "=bench.knots", {.place = 1}));
  CHECK(room.names(WorkList::bench).at(0) == "=bench.knots");
  room.append(undo(*room.ledger, room.event, done.dot.seq));
  CHECK(room.names(WorkList::bench) == before);
  CHECK(list_steps(*room.ledger, room.event).empty());
}

TEST_CASE("what can't be done to a list is said") {
  Lists room;
  const auto code = [&](std::string_view name, const StepChange& change) {
    const auto draft = room.changed(WorkList::bench, name, change);
    return draft ? std::string("done") : std::string(name_of(draft.error().code));
  };
  CHECK(code("=bench.nothing", {.off = true}) == "not_found");
  CHECK(code("=bench.knots", {}) == "bad_input");
  CHECK(code("=bench.knots", {.off = false}) == "bad_input");
  CHECK(code("=bench.knots", {.place = 0}) == "bad_input");
  CHECK(code("=bench.knots", {.place = 10}) == "bad_input");
  CHECK(code("=bench.knots", {.text = "x", .language = "it"}) == "bad_input");
  CHECK(code("=bench.knots", {.text = std::string(kLongestStep + 1, 'x')}) == "bad_input");
  CHECK(code("=bench.knots", {.text = "two\nlines"}) == "bad_input");
  CHECK(code("=bench.knots", {.text = "\xFF"}) == "bad_input");
  CHECK_FALSE(room.added(WorkList::bench, " "));
  CHECK_FALSE(room.added(WorkList::bench, "=bench.knots"));
  CHECK_FALSE(room.added(WorkList::unsaid, "x"));
  CHECK_FALSE(room.added(WorkList::bench, "x", 11));
  room.append(room.added(WorkList::bench, "Wipe the frame"));
  CHECK_FALSE(room.added(WorkList::bench, "Wipe the frame"));
  CHECK(code("Wipe the frame", {.text = ""}) == "bad_input");
  for (int i = 0; room.list(WorkList::bench).size() < kMostSteps; ++i) room.append(room.added(WorkList::bench, "step " + std::to_string(i)));
  CHECK_FALSE(room.added(WorkList::bench, "one more"));
}

TEST_CASE("names of steps come back from a record as they went in") {
  const std::vector<std::string> names{"=bench.knots", "Dämpfer", "a b"};
  CHECK(split_names(join_names(names)) == names);
  CHECK(split_names("").empty());
  CHECK(split_names("\n\na\n") == std::vector<std::string>{"a"});
}

TEST_CASE("a room goes back to the usual list, by one action that can be taken back") {
  Lists room;
  const auto usual = [&] { return usual_list(room.event, list_steps(*room.ledger, room.event), WorkList::bench); };
  const auto practice = room.names(WorkList::bench);
  CHECK(usual().error().code == FaultCode::bad_input);
  room.append(room.added(WorkList::bench, "Wipe the frame", 2));
  room.append(room.changed(WorkList::bench, practice[0], {.text = "Cut first"}));
  room.append(room.changed(WorkList::bench, practice[3], {.off = true}));
  room.append(room.changed(WorkList::bench, practice[5], {.place = 1}));
  const auto own = room.names(WorkList::bench);
  CHECK(own != practice);
  const Committed back = room.append(usual());
  CHECK(room.names(WorkList::bench) == practice);
  CHECK(step_words(kInEnglish, room.list(WorkList::bench)[0].step) == step_words(kInEnglish, practice[0]));
  CHECK(usual().error().code == FaultCode::bad_input);
  CHECK(usual_list(room.event, {}, WorkList::unsaid).error().code == FaultCode::bad_input);
  room.append(undo(*room.ledger, room.event, back.dot.seq));
  CHECK(room.names(WorkList::bench) == own);
  // What the room had added can be added again, and is the same step.
  room.append(usual());
  room.append(room.added(WorkList::bench, "Wipe the frame"));
  CHECK(room.names(WorkList::bench).back() == "Wipe the frame");
  CHECK(room.list(WorkList::bench, true).size() == practice.size() + 1);
}
