#include "core/desk/questions.h"

#include <catch2/catch.hpp>

#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct TwoAnswers {
  Desk desk{"desk tablet"};
  Desk bench{"bench tablet"};
  BookId book;
  EntityId setup;

  TwoAnswers() {
    book = desk.first_drop_off(1);
    setup = desk.load(book).setups.at(0).id();
    meet(desk, bench, book);
    say(desk, "26");
    bench.clock.advance(5 * kMinute);
    say(bench, "24");
    meet(desk, bench, book);
  }
  void say(Desk& device, const char* amount) {
    device.change<Setup>(book, setup, [&](Setup& now) { now.mains_tension = kg(amount); });
  }
  [[nodiscard]] std::vector<QuestionLine> lines(Desk& device) const {
    return question_lines(*device.ledger, device.load(book));
  }
};

}  // namespace

TEST_CASE("an open question shows each answer with who, where and when") {
  TwoAnswers two;
  for (Desk* device : {&two.desk, &two.bench}) {
    const auto lines = two.lines(*device);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].field == "mains_tension");
    CHECK(lines[0].subject == "day");
    REQUIRE(lines[0].answers.size() == 2);
    CHECK(lines[0].answers[0].value == Value{kg("24")});
    CHECK(lines[0].answers[0].device == "bench tablet");
    CHECK(lines[0].answers[1].value == Value{kg("26")});
    CHECK(lines[0].answers[1].device == "desk tablet");
    CHECK(lines[0].answers[1].event_name == "Harbour Open");
    CHECK(lines[0].answers[0].at > lines[0].answers[1].at);
    CHECK(lines[0].answers[0].action == kActEdit);
  }
}

TEST_CASE("closing a question replaces the answers that were seen, on every device") {
  TwoAnswers two;
  two.desk.append(close_question(two.lines(two.desk).at(0).question, Value{kg("24")}));
  meet(two.desk, two.bench, two.book);
  for (Desk* device : {&two.desk, &two.bench}) {
    CHECK(two.lines(*device).empty());
    CHECK(device->load(two.book).setups.at(0).now.mains_tension == kg("24"));
    CHECK(device->ledger->verify().faults.empty());
  }
}

TEST_CASE("an answer that arrives after the closing opens the question again") {
  TwoAnswers two;
  const OpenQuestion seen = two.lines(two.desk).at(0).question;
  two.say(two.bench, "23");  // the bench replaced both before it heard of the closing
  two.desk.append(close_question(seen, Value{kg("26")}));
  meet(two.desk, two.bench, two.book);
  for (Desk* device : {&two.desk, &two.bench}) {
    const auto lines = two.lines(*device);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].answers.size() == 2);
  }
}

TEST_CASE("an answer of another kind is refused") {
  TwoAnswers two;
  const OpenQuestion seen = two.lines(two.desk).at(0).question;
  const auto refused = close_question(seen, Value{std::string("about 25")});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().where == "mains_tension");
  CHECK(close_question(seen, Value{}));  // "neither": the field is empty again
}

TEST_CASE("an answer that no frame takes is a slip in its own field, and no other question's business") {
  TwoAnswers two;
  const OpenQuestion question = two.lines(two.desk).at(0).question;
  const auto slip = slip_in_answer(*two.desk.ledger, question, Value{kg("240")});
  REQUIRE(slip);
  CHECK(slip->field == "mains_tension");
  CHECK(slip->refused);
  CHECK_FALSE(slip_in_answer(*two.desk.ledger, question, Value{kg("24.5")}));
  // Whatever is wrong with the crosses is not asked here.
  two.desk.change<Setup>(two.book, two.setup, [&](Setup& now) { now.crosses_tension = kg("240"); });
  CHECK_FALSE(slip_in_answer(*two.desk.ledger, question, Value{kg("24.5")}));
}
