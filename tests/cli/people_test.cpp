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
  const std::string other = desk.file("old.csv", "family_name,given_name,country,birth_year,date,string,tension\nWendelmore,Ilse,NED,2003,2021-05-26,Silk,24 kg\n");
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
  const std::string other = desk.file("old.csv", "family_name,given_name,date,string,tension\nWendelmore,Ilse,2021-05-26,Silk,24 kg\n");
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
  const std::string file = desk.file("old.csv", "Nachname;Vorname;Land;Datum;Saite;Spannung\nOkonjo;Ada;NGR;26.05.2021;Velmora Round;23/22\nLund;Jo;SWE;27.05.2021;Silk;24\n");
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

TEST_CASE("linked books are told by names, words and numbers that tell them apart") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  // Books of one import begin alike for long.
  const std::string table = desk.file("old.csv", "family_name,given_name,birth_year,event,date,string,tension\nWendelmore,Ilse,2003,Lakeside,2021-05-26,Silk,24 kg\n"
                                                 "Wendelmare,Ilse,2004,Lakeside,2021-05-26,Silk,24 kg\n");
  (void)desk.ask({"past-jobs", table, "--confirm", "--likely", "new"});
  (void)desk.ask({"consent", "Wendelmoor", "any_room", "--confirm"});
  (void)desk.ask({"consent", "Wendelmore", "this_room", "--confirm"});
  (void)desk.ask({"link", "Wendelmoor", "Wendelmore"}, 3);
  (void)desk.ask({"link", "Wendelmore", "Wendelmare"}, 3);
  const auto told = desk.ask({"linked", "Wendelmoor"}, 3);
  REQUIRE(size_at(told, "/books") == 3);
  const auto text = desk.run({"linked", "Wendelmoor"}).out;
  CHECK(text.find("Wendelmore Ilse, last at Lakeside") != std::string::npos);
  CHECK(text.find("birth year") != std::string::npos);
  // Each line of a book begins with as much of its number as no other has.
  std::vector<std::string> numbers;
  std::size_t begin = 0;
  for (int line = 0; line < 3; ++line) {
    numbers.push_back(text.substr(begin, text.find("  ", begin) - begin));
    begin = text.find('\n', begin) + 1;
  }
  for (const auto& number : numbers) {
    std::size_t meant = 0;
    for (std::size_t book = 0; book < 3; ++book) meant += text_at(told, "/books/" + std::to_string(book) + "/book").starts_with(number) ? 1 : 0;
    CHECK(meant == 1);
    (void)desk.ask({"linked", number}, 3);
  }
  CHECK(desk.run({"linked"}).out.find("last at Lakeside") != std::string::npos);
  // A beginning that several books have is nobody's answer; the number of an answer is.
  const std::string one = text_at(told, "/books/1/book"), two = text_at(told, "/books/2/book");
  std::size_t alike = 0;
  while (one[alike] == two[alike]) ++alike;
  REQUIRE(alike >= 6);
  CHECK(text_at(desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", one.substr(0, alike)}, 1), "/error/what").find("several") != std::string::npos);
  (void)desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", "4"}, 1);
  const auto settled = desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", "2"}, 3);
  REQUIRE(size_at(settled, "/differences") == 1);
  CHECK(text_at(settled, "/differences/0/field") == "consent");
  CHECK(text_at(settled, "/differences/0/answers/0/value").size() > 5);  // words, no number
  CHECK(size_at(desk.ask({"linked", "Wendelmoor", "--settle", "1", "--right", "1"}), "/differences") == 0);
}

TEST_CASE("of who is on the entry list only it is said that they are no players yet, and what makes them so") {
  const CliDevice desk("Desk 1");
  open_desk(desk);
  const auto list = desk.file("entries.csv", "family_name,given_name,country,draw\nKova,Mira,CZE,Singles\nKovač,Ana,CRO,Singles\nWendelmore,Bea,NED,Singles\n");
  (void)desk.ask({"import", "entries", list});
  CHECK(size_at(desk.ask({"find", "kova", "mi"}, 4), "") == 0);
  const auto none = desk.run({"find", "kova", "mi"});
  CHECK(none.status == 4);
  CHECK(none.out.starts_with("nobody of that name on this device\nKova Mira (CZE)  is on the entry list, Singles, and no player here yet\n"));
  CHECK(none.out.find("drop-off") != std::string::npos);
  CHECK(none.out.find("Ana") == std::string::npos);
  // Beside players of that name too.
  const auto both = desk.run({"find", "wendelmo"});
  CHECK(both.status == 0);
  CHECK(both.out.find("Wendelmoor Ilse") < both.out.find("Wendelmore Bea (NED)  is on the entry list"));
  CHECK(desk.run({"find", "zorn"}).out == "nobody of that name on this device\n");
  CHECK(desk.run({"find"}).out.find("entry list") == std::string::npos);
}

TEST_CASE("a day that is still to come has no past jobs, and nothing new is not called brought in") {
  const CliDevice desk("Desk 1");
  const std::string file = desk.file("old.csv", "name,date,string,tension\nIlse Wendelmoor,2021-05-26,Silk,25 kg\nAda Okonjo,2099-05-26,Silk,24 kg\n");
  const auto refused = desk.ask({"past-jobs", file, "--confirm"}, 1);
  REQUIRE(size_at(refused, "/faults") == 1);
  CHECK(text_at(refused, "/faults/0/where").find("line 3, column 2 (date)") != std::string::npos);
  CHECK(text_at(refused, "/faults/0/what").find("2099-05-26") != std::string::npos);
  CHECK(desk.run({"past-jobs", file, "--confirm", "--good-rows"}).out.find("\nbrought in; ") != std::string::npos);
  const auto again = desk.run({"past-jobs", file, "--confirm", "--good-rows"});
  CHECK(again.status == 0);
  CHECK(again.out.find("\nbrought in") == std::string::npos);
  CHECK(again.out.find("nothing was brought in: all of it is here already") != std::string::npos);
  CHECK(text_at(desk.ask({"past-jobs", file, "--confirm", "--good-rows"}), "/stored") == "false");
  const std::string none = desk.file("none.csv", "name,string,tension\nAda Okonjo,Silk,tight\n");
  CHECK(desk.run({"past-jobs", none, "--confirm", "--good-rows"}).out.find("no good row") != std::string::npos);
}

TEST_CASE("who hands rackets over is that entry of the list from then on, in each of its draws") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  (void)desk.ask({"import", "entries",
                  desk.file("entries.csv",
                            "family_name,given_name,country,birth_year,draw\nKova,Mira,CZE,2003,Singles\nKova,Mira,CZE,2003,Doubles\n"
                            "Kovač,Ana,CRO,2001,Singles\nOstrel,Lena,SLO,1999,Singles\nOstrel,Lena,CRO,2004,Singles\nVantreel,Ida,BEL,2000,Singles\n")});
  const auto bring = [&](std::vector<std::string> person, const std::string& of = "--person") {
    std::vector<std::string> words{"drop-off", "--rackets", "1", "--both", "24kg", "--set", "mains_string=Tarnbrook Silk", "--set",
                                   "crosses_string=Tarnbrook Silk", "--confirm"};
    for (const std::string& one : person) words.insert(words.end(), {of, one});
    return words;
  };
  // As the line of `find` says: nothing but the name.
  CHECK(desk.run({"find", "kova", "mi"}).out.find("no player here yet") != std::string::npos);
  const auto kova = desk.ask(bring({"family_name=Kova", "given_name=Mira"}));
  CHECK(size_at(kova, "/entries") == 2);
  CHECK(desk.run({"find", "kova", "mi"}).out.find("entry list") == std::string::npos);
  const auto list = desk.ask({"arrival"});
  std::size_t linked = 0;
  for (const auto& entry : list.at("entries").as_array()) linked += entry.at("linked") == true ? 1 : 0;
  CHECK(linked == 2);
  // Once more changes nothing.
  CHECK(size_at(desk.ask(bring({"Kova Mira"}, "--player")), "/entries") == 0);
  const auto told = desk.run(bring({"family_name=Vantreel", "given_name=Ida", "country=BEL"})).out;
  CHECK(told.find("linked to the entry list: Vantreel Ida (BEL), Singles\n") != std::string::npos);
  // Which of two is left to a person; another name is nobody of the list.
  const auto two = desk.run(bring({"family_name=Ostrel", "given_name=Lena"})).out;
  CHECK(two.find("of the entry list 2 are meant: Ostrel Lena (SLO), Singles; Ostrel Lena (CRO), Singles; a country") != std::string::npos);
  CHECK(desk.run({"find", "ostrel"}).out.find("no player here yet") != std::string::npos);
  // One that is likely only is said by a person, without an event server too.
  const auto slip = desk.ask(bring({"family_name=Kovac", "given_name=Anna", "country=CRO"}));
  CHECK(size_at(slip, "/entries") == 0);
  CHECK(text_at(slip, "/stored") == "true");
  const auto ticked = desk.ask({"tick", text_at(slip, "/book")});
  CHECK(text_at(ticked, "/linked") == "1");
  CHECK(size_at(ticked, "/ticked") == 0);
  CHECK(desk.run({"find", "Ana"}).out.find("entry list") == std::string::npos);
  CHECK(size_at(desk.ask(bring({"family_name=Zorn", "given_name=Ute"})), "/entries") == 0);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a player known from before who hands rackets over is linked to the entry as well") {
  const CliDevice desk("Desk 1");
  open_desk(desk);  // the list comes after that
  (void)desk.ask({"import", "entries", desk.file("entries.csv", "family_name,given_name,country,birth_year,draw\nWendelmoor,Ilse,NED,2002,Singles\n")});
  CHECK(desk.run({"find", "wendel"}).out.find("no player here yet") != std::string::npos);
  for (const char* tag : {"1", "2", "3", "4"}) (void)desk.ask({"stage", tag, "collected", "--reason", "strung overnight"});
  CHECK(size_at(desk.ask({"same", "Wendelmoor", "--rackets", "1", "--confirm"}), "/entries") == 1);
  CHECK(desk.run({"find", "wendel"}).out.find("no player here yet") == std::string::npos);
}
