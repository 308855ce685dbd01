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
  const auto moved = room.one.ask({"stage", first, "inspected"});
  CHECK(text_at(moved, "/stage") == "inspected");
  CHECK(text_at(moved, "/tag_doubled") == "true");

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

TEST_CASE("of many that are meant four are named, and the advice fits what was typed") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  auto six = bring("Okonjo");
  six[4] = "6";
  const auto taken = desk.ask(six);
  // Jobs of one hand-over begin alike.
  std::string alike = text_at(taken, "/jobs/0/job");
  for (int job = 1; job < 6; ++job) {
    const std::string other = text_at(taken, "/jobs/" + std::to_string(job) + "/job");
    while (!other.starts_with(alike)) alike.pop_back();
  }
  REQUIRE(alike.size() >= 6);
  const auto jobs = desk.ask({"job", alike}, 1);
  const std::string what = text_at(jobs, "/error/what");
  CHECK(what.starts_with("6 are meant: "));
  CHECK(what.ends_with(" and 2 more"));
  std::size_t named = 0;
  for (int job = 0; job < 6; ++job) named += what.find(text_at(taken, "/jobs/" + std::to_string(job) + "/job")) != std::string::npos ? 1 : 0;
  CHECK(named == 4);
  CHECK(text_at(jobs, "/error/what_to_do").find("more of the job's number") != std::string::npos);
  CHECK(text_at(jobs, "/error/what_to_do").find("new-tag") == std::string::npos);
  CHECK(text_at(desk.ask({"new-tag", text_at(taken, "/jobs/2/job"), "31"}), "/tag_number") == "31");

  for (const char* given : {"Ada", "Bea", "Cleo", "Dora", "Edda", "Fay", "Gita"}) {
    auto one = bring("Lindgrove", {"--new"});
    one.insert(one.begin() + 3, {"--person", std::string("given_name=") + given});
    (void)desk.ask(one);
  }
  const auto players = desk.ask({"show", "Lindgrove"}, 1);
  CHECK(text_at(players, "/error/what").starts_with("7 are meant: "));
  CHECK(text_at(players, "/error/what").ends_with(" and 3 more"));
  CHECK(text_at(players, "/error/what_to_do").find("more of the name") != std::string::npos);
}

TEST_CASE("behind the last number that can be typed come those that are free") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  CHECK(desk.run(bring("Okonjo", {"--tag", "100000"})).status == 2);
  (void)desk.ask(bring("Okonjo", {"--tag", "99999"}));
  auto two = bring("Lindgrove");
  two[4] = "2";
  const auto taken = desk.ask(two);
  CHECK(text_at(taken, "/jobs/0/tag_number") == "1");
  CHECK(text_at(taken, "/jobs/1/tag_number") == "2");
  CHECK(text_at(desk.ask({"new-tag", "99999"}), "/tag_number") == "3");
  CHECK(text_at(desk.ask(bring("Vantreel")), "/jobs/0/tag_number") == "4");
  const char* said = R"({"player": {"family_name": "Ostrel"}, "agreed": {"mains_string": "Tarnbrook Silk", "crosses_string": "Tarnbrook Silk",
    "mains_tension": "24 kg", "crosses_tension": "24 kg"}, "rackets": [{"label": "1"}, {"label": "2", "tag_number": 5}]})";
  CHECK(text_at(desk.ask({"drop-off", "--stdin", "--confirm"}, 0, said), "/jobs/0/tag_number") == "6");
}
