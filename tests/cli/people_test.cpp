// Whose books belong together, other names, what was strung before, and another time that is agreed.

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

void open_desk(const CliDevice& desk) {
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
}

}  // namespace

TEST_CASE("two books are linked by a command, shown with where they differ, settled and parted") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  const std::string other = desk.file("old.csv", "family_name,given_name,country,birth_year,date,string,tension\nWendelmore,Ilse,NED,2003,2030-05-26,Silk,24 kg\n");
  REQUIRE(text_at(desk.ask({"past-jobs", other, "--confirm", "--likely", "new"}), "/stored") == "true");
  CHECK(size_at(desk.ask({"linked"}), "") == 0);
  (void)desk.ask({"link", "Wendelmoor", "Nobody"}, 4);
  CHECK(text_at(desk.ask({"link", "Wendelmoor", "Wendelmoor"}, 1), "/error/code") == "bad_input");
  const auto linked = desk.ask({"link", "Wendelmoor", "Wendelmore", "--by", "Mara"}, 3);
  REQUIRE(size_at(linked, "/books") == 2);
  REQUIRE(size_at(linked, "/differences") == 1);
  CHECK(text_at(linked, "/differences/0/field") == "birth_year");
  CHECK(size_at(desk.ask({"linked"}), "") == 1);
  (void)desk.ask({"linked", "Wendelmoor", "--settle", "2", "--right", text_at(linked, "/books/0/book")}, 4);
  CHECK(text_at(desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", "nobody"}, 1), "/error/code") == "bad_input");
  CHECK(size_at(desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", text_at(linked, "/books/0/book")}), "/differences") == 0);
  CHECK(size_at(desk.ask({"unlink", "Wendelmore"}), "/books") == 1);
  CHECK(size_at(desk.ask({"linked"}), "") == 0);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("consent and forgetting are one answer for all books of a person that are linked") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  const std::string other = desk.file("old.csv", "family_name,given_name,date,string,tension\nWendelmore,Ilse,2030-05-26,Silk,24 kg\n");
  (void)desk.ask({"past-jobs", other, "--confirm", "--likely", "new"});
  (void)desk.ask({"link", "Wendelmoor", "Wendelmore", "--by", "Mara"});
  CHECK(text_at(desk.ask({"consent", "Wendelmore", "any_room", "--confirm"}), "/books") == "2");
  CHECK(text_at(desk.ask({"find", "Wendelmoor"}), "/0/consent") == "any_room");
  CHECK(text_at(desk.ask({"find", "Wendelmore"}), "/0/consent") == "any_room");
  CHECK(size_at(desk.ask({"forget", "Wendelmoor"}, 3), "/books") == 2);
  CHECK(desk.run({"forget", "Wendelmoor"}).out.find("All 2 books") != std::string::npos);
  CHECK(size_at(desk.ask({"forget", "Wendelmoor", "--confirm"}), "/books") == 2);
  (void)desk.ask({"find", "wendelmo"}, 4);
  CHECK(size_at(desk.ask({"forgotten"}), "") == 2);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("another name finds a player until it is taken back") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  CHECK(size_at(desk.ask({"also-known", "Wendelmoor"}), "") == 0);
  CHECK(size_at(desk.ask({"also-known", "Wendelmoor", "--family", "Ostrel", "--given", "Ilse", "--why", "former"}), "") == 1);
  CHECK(size_at(desk.ask({"find", "ostr"}), "") == 1);
  CHECK(text_at(desk.ask({"also-known", "Wendelmoor", "--family", "Ostrel", "--given", "Ilse"}, 1), "/error/code") == "refused");
  (void)desk.ask({"also-known", "Wendelmoor", "--family", "X", "--why", "whim"}, 2);
  (void)desk.ask({"also-known", "Wendelmoor", "--drop", "--number", "2"}, 4);
  CHECK(size_at(desk.ask({"also-known", "Wendelmoor", "--drop", "--number", "1"}), "") == 0);
  (void)desk.ask({"find", "ostr"}, 4);
}

TEST_CASE("a table of what was strung before is looked at, brought in once, and taken back as one") {
  const CliDevice desk("Desk 1");
  const std::string file = desk.file("old.csv", "Nachname;Vorname;Land;Datum;Saite;Spannung\nOkonjo;Ada;NGR;26.05.2030;Velmora Round;23/22\nLund;Jo;SWE;27.05.2030;Silk;24\n");
  const auto seen = desk.ask({"past-jobs", file}, 3);
  CHECK(text_at(seen, "/stored") == "false");
  CHECK(text_at(seen, "/unit") == "kg");
  CHECK(text_at(seen, "/unit_found") == "true");
  CHECK(text_at(seen, "/columns/0/ours") == "family_name");
  CHECK(size_at(seen, "/players") == 2);
  (void)desk.ask({"find", "okonjo"}, 4);
  CHECK(text_at(desk.ask({"past-jobs", file, "--confirm"}), "/actions") == "2");
  CHECK(size_at(desk.ask({"history", "Okonjo"}), "") == 1);
  CHECK(text_at(desk.ask({"past-jobs", file, "--confirm"}), "/actions") == "0");
  const auto back = desk.ask({"past-jobs", "--take-back"});
  CHECK(text_at(back, "/undone") == "2");
  (void)desk.ask({"find", "okonjo"}, 4);
  (void)desk.ask({"past-jobs", "--take-back"}, 4);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a table that can't be brought in says what, where and what to do") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"past-jobs", (desk.home / "missing.csv").string()}, 4);
  (void)desk.ask({"past-jobs"}, 4);
  const auto complaint = [&](const std::string& table, const std::vector<std::string>& more = {}) {
    std::vector<std::string> words{"past-jobs", desk.file("t.csv", table), "--confirm"};
    words.insert(words.end(), more.begin(), more.end());
    return text_at(desk.ask(words, 1), "/error/what");
  };
  CHECK(complaint("colour,tension\nred,25\n").find("names") != std::string::npos);
  CHECK(complaint("name,tension\nIlse,25\nAda,55\n").find("fit no single one") != std::string::npos);
  CHECK(complaint("name,tension\nIlse,25\n", {"--column", "tension"}).find("which column") != std::string::npos);
  CHECK(complaint("name,tension\nIlse,25\n", {"--encoding", "klingon"}).find("no encoding") != std::string::npos);
  const std::string broken = desk.file("b.csv", "name,string,tension\nIlse Wendelmoor,Silk,25 kg\nAda Okonjo,Silk,tight\n");
  const auto left = desk.ask({"past-jobs", broken, "--confirm"}, 1);
  CHECK(text_at(left, "/stored") == "false");
  CHECK(text_at(left, "/faults/0/where").find("line 3") != std::string::npos);
  CHECK(text_at(desk.ask({"past-jobs", broken, "--confirm", "--good-rows"}), "/stored") == "true");
}

TEST_CASE("rackets are promised for another time, all that were promised together or one") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  (void)desk.ask({"new-time", "1", "+240"}, 2);
  CHECK(text_at(desk.ask({"new-time", "1", "2001-01-01T10:00", "--with", "Ilse"}, 1), "/error/code") == "bad_input");
  CHECK(size_at(desk.ask({"new-time", "1", "+240", "--with", "Ilse", "--only"}), "/jobs") == 1);
  const auto rest = desk.ask({"new-time", "2", "+300", "--with", "coach"});
  CHECK(size_at(rest, "/jobs") == 3);
  CHECK(text_at(rest, "/agreed_with") == "coach");
  (void)desk.ask({"new-time", "77", "+300", "--with", "coach"}, 4);
  for (const char* stage : {"inspected", "cut_out", "on_machine", "strung", "checked", "ready"}) (void)desk.ask({"stage", "1", stage});
  CHECK(text_at(desk.ask({"new-time", "1", "+300", "--with", "coach"}, 1), "/error/code") == "refused");
}
