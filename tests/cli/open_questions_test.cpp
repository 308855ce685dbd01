// A setup that two desks changed apart: nothing goes by one of the two answers until somebody says which.

#include <set>

#include "tests/cli/apart.h"

using namespace weavelog::testing;

namespace {

/// The mains of the setup "day" are 22 kg at one desk and 25 kg at the other.
struct Questioned : Apart {
  Questioned() {
    (void)one.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
    meet();
    (void)one.ask({"setup", "Wendelmoor", "--name", "day", "--mains", "23kg"});
    (void)other.ask({"setup", "Wendelmoor", "--name", "day", "--mains", "22kg"});
    (void)one.ask({"setup", "Wendelmoor", "--name", "day", "--mains", "26kg"});
    meet();
  }
  [[nodiscard]] std::size_t open() const {
    const auto found = one.run({"--json", "questions"});
    return size_at(json::parse(found.out), "");
  }
};

std::vector<std::string> setup_of(std::initializer_list<const char*> more) {
  std::vector<std::string> words{"setup", "Wendelmoor", "--name", "day"};
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

}  // namespace

TEST_CASE("a setup with an open question is not changed by an amount, nor past the question") {
  const Questioned room;
  REQUIRE(room.open() == 1);
  for (const auto& words : {setup_of({"--mains=-1kg"}), setup_of({"--both=+1kg"}), setup_of({"--crosses", "23kg"}), setup_of({"--set", "pieces=1"})}) {
    const auto asked = room.one.ask(words, 3);
    CHECK(text_at(asked, "/stored") == "false");
    REQUIRE(size_at(asked, "/open_questions") == 1);
    CHECK(text_at(asked, "/open_questions/0/field") == "mains_tension");
    CHECK(size_at(asked, "/open_questions/0/answers") == 2);
    CHECK(room.open() == 1);
  }
  const auto said = room.one.run(setup_of({"--mains=-1kg"}));
  CHECK(said.status == 3);
  CHECK(said.out.find("22\xC2\xA0kg") != std::string::npos);
  CHECK(said.out.find("26\xC2\xA0kg") != std::string::npos);
  // Another setup of the player has nothing open.
  CHECK(size_at(room.one.ask({"show", "Wendelmoor"}), "/setups") == 2);
}

TEST_CASE("a value of its own closes the question, also the one that was shown, and says so") {
  for (const char* answer : {"24kg", "26kg"}) {
    const Questioned room;
    const auto closed = room.one.ask(setup_of({"--mains", answer}));
    REQUIRE(size_at(closed, "/closed") == 1);
    CHECK(text_at(closed, "/closed/0/field") == "mains_tension");
    CHECK(size_at(closed, "/closed/0/answers") == 2);
    CHECK(text_at(closed, "/closed/0/value") == std::string(answer).substr(0, 2) + "\xC2\xA0kg");
    CHECK(size_at(closed, "/changes") == 0);  // neither of the two was agreed
    CHECK(room.open() == 0);
    const auto player = room.one.ask({"export", "player", "Wendelmoor"});
    CHECK(text_at(player, "/setups/0/mains_tension/amount") == std::string(answer).substr(0, 2));
  }
  const Questioned room;
  const auto said = room.one.run(setup_of({"--both", "24kg", "--language", "en"}));
  CHECK(said.status == 0);
  CHECK(said.out.find("closes the open question: mains tension, ") != std::string::npos);
  CHECK(said.out.find("→ 24\xC2\xA0kg") != std::string::npos);
}

TEST_CASE("rackets are not taken in by a wish that is in question") {
  const Questioned room;
  for (const char* tag : {"1", "2", "3", "4"}) (void)room.one.ask({"stage", tag, "collected", "--reason", "strung overnight"});
  const std::vector<std::string> same{"same", "Wendelmoor", "--confirm"};
  const std::vector<std::string> taken{"drop-off", "--player", "Wendelmoor", "--rackets", "#1", "--confirm"};
  for (const auto& words : {same, taken}) {
    const auto asked = room.one.ask(words, 3);
    CHECK(text_at(asked, "/stored") == "false");
    CHECK(size_at(asked, "/open_questions") == 1);
  }
  CHECK(size_at(room.one.ask({"history", "Wendelmoor"}), "") == 4);
  (void)room.one.ask({"answer", "Wendelmoor", "1", "24kg"});
  CHECK(text_at(room.one.ask(taken), "/jobs/0/mains_tension/amount") == "24");
}

TEST_CASE("only what a command would build on is asked first, under the number by which it is answered") {
  const Questioned room;
  const std::string second = text_at(room.one.ask({"export", "player", "Wendelmoor"}), "/setups/1/id");  // both are called "day"
  const auto of_second = [&](const char* crosses) { return std::vector<std::string>{"setup", "Wendelmoor", "--name", second, crosses}; };
  (void)room.one.ask(of_second("--crosses=21kg"));
  (void)room.other.ask(of_second("--crosses=20kg"));
  room.meet();
  REQUIRE(room.open() == 2);
  std::set<std::string> numbers;
  for (const auto& [words, field] : {std::pair(setup_of({"--mains=-1kg"}), "mains_tension"), std::pair(of_second("--crosses=-1kg"), "crosses_tension")}) {
    const auto asked = room.one.ask(words, 3);
    REQUIRE(size_at(asked, "/open_questions") == 1);
    CHECK(text_at(asked, "/open_questions/0/field") == field);
    numbers.insert(text_at(asked, "/open_questions/0/number"));
  }
  CHECK(numbers == std::set<std::string>{"1", "2"});
  const std::string number = text_at(room.one.ask(of_second("--crosses=-1kg"), 3), "/open_questions/0/number");
  CHECK(text_at(room.one.ask({"answer", "Wendelmoor", number, "--pick", "1"}), "/field") == "crosses_tension");
  (void)room.one.ask(of_second("--crosses=-1kg"));
  CHECK(room.open() == 1);
}
