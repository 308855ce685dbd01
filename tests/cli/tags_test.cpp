// Tag numbers: none is given twice, and where two desks did so apart, both rackets can be told apart and one gets another.

#include "tests/cli/apart.h"

using namespace weavelog::testing;

namespace {

std::vector<std::string> bring(const char* family, std::initializer_list<const char*> more = {}) {
  std::vector<std::string> words{"drop-off", "--person", std::string("family_name=") + family, "--rackets", "1",         "--both",
                                 "24kg",     "--set",    "mains_string=Tarnbrook Silk",        "--set",     "crosses_string=Tarnbrook Silk",
                                 "--confirm"};
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

}  // namespace

TEST_CASE("a number in use is refused with the racket that has it, and is free again once that was collected") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  (void)desk.ask(bring("Okonjo", {"--tag", "7"}));
  const auto refused = desk.ask(bring("Lindgrove", {"--tag", "7"}), 1);
  CHECK(text_at(refused, "/error/code") == "conflict");
  CHECK(text_at(refused, "/error/where") == "tag 7");
  CHECK(text_at(refused, "/error/what").find("Okonjo") != std::string::npos);
  CHECK(text_at(refused, "/error/what_to_do").find("8") != std::string::npos);
  auto three = bring("Lindgrove", {"--tag", "5"});
  three[4] = "3";  // 5, 6, and 7
  CHECK(text_at(desk.ask(three, 1), "/error/where") == "tag 7");
  (void)desk.ask({"find", "Lindgrove"}, 4);
  const char* twice = R"({"player": {"family_name": "Lindgrove"}, "agreed": {"mains_string": "Tarnbrook Silk", "crosses_string": "Tarnbrook Silk",
    "mains_tension": "24 kg", "crosses_tension": "24 kg"}, "rackets": [{"label": "1", "tag_number": 9}, {"label": "2", "tag_number": 9}]})";
  CHECK(text_at(desk.ask({"drop-off", "--stdin", "--confirm"}, 1, twice), "/error/where") == "tag 9");
  const char* none = R"({"player": {"family_name": "Lindgrove"}, "agreed": {"mains_string": "Tarnbrook Silk", "crosses_string": "Tarnbrook Silk",
    "mains_tension": "24 kg", "crosses_tension": "24 kg"}, "rackets": [{"label": "1", "tag_number": -2}]})";
  CHECK(text_at(desk.ask({"drop-off", "--stdin", "--confirm"}, 1, none), "/error/code") == "bad_input");
  (void)desk.ask({"stage", "7", "collected", "--reason", "on court"});
  CHECK(text_at(desk.ask(bring("Lindgrove", {"--tag", "7"})), "/jobs/0/tag_number") == "7");
}

TEST_CASE("a number that two desks gave out apart is marked, both rackets are named, and one gets another") {
  const Apart room;
  const auto first = text_at(room.one.ask(bring("Okonjo")), "/jobs/0/job"), second = text_at(room.other.ask(bring("Lindgrove")), "/jobs/0/job");
  room.meet();
  const auto board = room.one.ask({"board"});
  REQUIRE(size_at(board, "/stages/0/jobs") == 2);
  CHECK(text_at(board, "/stages/0/jobs/0/tag_number") == "1");
  CHECK(text_at(board, "/stages/0/jobs/1/tag_doubled") == "true");
  const auto shown = room.one.run({"board"}).out;
  CHECK(shown.find("tag 1 DOUBLED (job " + first + ")") != std::string::npos);
  CHECK(shown.find("tag 1 DOUBLED (job " + second + ")") != std::string::npos);
  CHECK(room.one.run({"next"}).out.starts_with("tag 1 DOUBLED (job "));

  const auto several = room.one.ask({"stage", "1", "inspected"}, 1);
  const std::string meant = text_at(several, "/error/what");
  for (const std::string& word : {std::string("2 are meant"), std::string("Okonjo"), std::string("Lindgrove"), first, second}) {
    INFO(word);
    CHECK(meant.find(word) != std::string::npos);
  }
  CHECK(text_at(several, "/error/what_to_do").find("new-tag") != std::string::npos);
  CHECK(text_at(room.one.ask({"stage", first, "inspected"}), "/stage") == "inspected");

  CHECK(text_at(room.one.ask({"new-tag", "1"}, 1), "/error/what").find("2 are meant") != std::string::npos);
  (void)room.one.ask(bring("Vantreel"));  // 2
  CHECK(text_at(room.one.ask({"new-tag", second, "2"}, 1), "/error/what").find("Vantreel") != std::string::npos);
  const auto given = room.one.ask({"new-tag", second});
  CHECK(text_at(given, "/tag_number") == "3");
  CHECK(text_at(given, "/before") == "1");
  CHECK(text_at(given, "/tag_doubled") == "false");
  CHECK(room.one.run({"board"}).out.find("DOUBLED") == std::string::npos);
  CHECK(text_at(room.one.ask({"stage", "1", "cut_out"}), "/job") == first);
  CHECK(text_at(room.one.ask({"undo", "Lindgrove"}), "/undone") == "edit");
  CHECK(room.one.run({"board"}).out.find("DOUBLED") != std::string::npos);
  CHECK(text_at(room.one.ask({"new-tag", second, "30"}), "/tag_number") == "30");
  CHECK(text_at(room.one.ask({"new-tag", "30", "30"}), "/stored") == "false");
  room.meet();
  CHECK(text_at(room.other.ask({"job", "30"}), "/job") == second);
  (void)room.one.ask({"stage", "30", "collected", "--reason", "on court"});
  CHECK(text_at(room.one.ask({"new-tag", second, "31"}, 1), "/error/code") == "refused");
  CHECK(room.one.run({"new-tag", second, "0"}).status == 2);
}
