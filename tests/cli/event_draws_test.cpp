// Draws and home benches of an event by commands alone.

#include <fstream>

#include "tests/cli/event_server.h"

using namespace weavelog::testing;

TEST_CASE("a draw is brought in, played on, and everybody gets a bench, by commands") {
  const CliDevice desk{"Head"};
  const TemporaryFolder folder;
  const auto table = (folder / "draw.csv").string();
  {
    std::ofstream out(table);
    out << "line,player,seed,rating\n1,Okafor Ada,1,1900\n2,bye,,\n3,Nakagura Rin,,1800\n4,Velt Jana,,1750\n5,Tamsin Ilse,,1700\n6,Orrin Bea,,1690\n7,,,\n8,Quill Mo,,1600\n";
  }
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon", "--currency", "EUR"});
  (void)desk.ask({"home-benches"}, 4);
  (void)desk.ask({"draw-add", "Singles", table + "x"}, 4);
  const auto fresh = desk.ask({"draw-add", "Singles", table});
  CHECK(size_at(fresh, "/0/places") == 8);
  CHECK(size_at(fresh, "/0/matches") == 7);
  CHECK(text_at(fresh, "/0/matches/0/winner") == "1");  // by the bye
  (void)desk.ask({"draw-add", "singles", table}, 1);
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "2", "--winner", "velt jana", "--score", "6-4 6-4"}), "/0/matches/1/winner") == "4");
  (void)desk.ask({"draw-match", "Singles", "1", "2", "--winner", "Okafor Ada"}, 1);  // not in that match
  (void)desk.ask({"draw-match", "Singles", "3", "1", "--winner", "1"}, 1);           // the semi-finals are not played
  (void)desk.ask({"draw-match", "Singles", "1", "2", "--winner", "3", "--end", "drawn"}, 1);
  CHECK(text_at(desk.ask({"draw-match", "Singles", "2", "1", "--court", "Court 3", "--not-before", "2031-05-27T14:05"}), "/0/matches/4/court") == "Court 3");
  const auto moved_court = desk.ask({"draw-match", "Singles", "2", "1", "--court", "Court 4"});
  CHECK(text_at(moved_court, "/0/matches/4/court") == "Court 4");
  CHECK(text_at(moved_court, "/0/matches/4/not_before") != "null");
  (void)desk.ask({"draw-match", "Singles", "2", "1"}, 1);
  CHECK(text_at(desk.ask({"draw-line", "Singles", "7", "--player", "Sorley Pia"}), "/0/matches/3/upper/name") == "Sorley Pia");
  CHECK(text_at(desk.ask({"draw-line", "Singles", "Orrin Bea", "--withdraws"}), "/0/matches/2/winner") == "5");
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "2", "--take-back"}), "/0/matches/1/winner") == "null");

  (void)desk.ask({"home-benches"}, 4);  // nobody strings
  for (const char* name : {"Merrin", "Odalys"}) (void)desk.ask({"team-set", name, "--role", "stringer"});
  CHECK(text_at(desk.ask({"home-benches"}), "/planned") == "false");
  const auto planned = desk.ask({"home-benches", "--plan"});
  CHECK(text_at(planned, "/planned") == "true");
  CHECK(size_at(planned, "/players") == 6);
  const std::string to = text_at(planned, "/players/0/stringer") == "Merrin" ? "Odalys" : "Merrin";
  const auto moved = desk.ask({"home-benches", "--player", text_at(planned, "/players/0/player"), "--to", to});
  CHECK(text_at(moved, "/players/0/stringer") == to);
  CHECK(text_at(moved, "/players/0/pinned") == "true");
  CHECK(text_at(moved, "/players/0/reason") == "pinned");
  CHECK(text_at(desk.ask({"home-benches", "--plan"}), "/players/0/stringer") == to);
  CHECK(text_at(desk.ask({"home-benches", "--player", text_at(planned, "/players/0/player"), "--unpin"}), "/players/0/pinned") == "false");
  (void)desk.ask({"home-benches", "--player", "Nobody"}, 4);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
  CHECK(size_at(desk.ask({"draw-remove", "Singles"}), "") == 0);
}

TEST_CASE("where two draws are called alike nothing is done until it is said which") {
  EventServer server("Harbour Open", {"head", "head"});
  const CliDevice one("Head"), other("Second");
  (void)one.ask({"pair", server.codes[0]});
  (void)other.ask({"pair", server.codes[1]});
  const auto table = one.file("draw.csv", "line,player\n1,Kova Mira\n2,Okafor Ada\n3,Kova Lena\n4,Velt Jana\n");
  (void)one.ask({"draw-add", "Singles", table});
  (void)one.ask({"draw-match", "Singles", "1", "1", "--winner", "Kova Mira"});
  (void)other.ask({"draw-add", "Singles", table});
  (void)other.ask({"exchange"});
  (void)one.ask({"exchange"});
  const auto held = one.ask({"draws"});
  REQUIRE(size_at(held, "") == 2);

  for (const std::vector<std::string>& words :
       {std::vector<std::string>{"draw-match", "singles", "1", "2", "--winner", "4"}, {"draw-remove", "Singles"}, {"draw-line", "Singles", "4", "--withdraws"},
        {"draw-add", "Qualifying", table, "--qualifiers", "2", "--feeds", "Singles"}}) {
    const auto asked = one.ask(words, 3);
    INFO(words.front());
    REQUIRE(size_at(asked, "/choices") == 2);
    CHECK(text_at(asked, "/choices/0/number") == "1");
    CHECK(text_at(asked, "/choices/1/number") == "2");
  }
  const auto after = one.ask({"draws"});
  CHECK(json::serialize(after) == json::serialize(held));
  const std::size_t empty = text_at(held, "/0/matches/0/winner") == "null" ? 1 : 2;  // without the result
  const auto asked = one.ask({"draw-remove", "Singles"}, 3);
  CHECK(text_at(asked, "/choices/" + std::to_string(empty - 1) + "/results") == "0");
  CHECK(text_at(asked, "/choices/" + std::to_string(2 - empty) + "/results") == "1");
  const auto left = one.ask({"draw-remove", std::to_string(empty)});
  REQUIRE(size_at(left, "") == 1);
  CHECK(text_at(left, "/0/matches/0/winner") == "1");
  CHECK(text_at(one.ask({"draw-match", "Singles", "1", "2", "--winner", "4"}), "/0/matches/1/winner") == "4");
  (void)one.ask({"draw-remove", "2"}, 4);
}

TEST_CASE("draws tell where and when a match is played, and a part of a name names a winner where it is clear") {
  const CliDevice desk{"Head"};
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  const auto table = desk.file("draw.csv", "line,player\n1,Kova Mira\n2,Okafor Ada\n3,Kova Lena\n4,Velt Jana\n5,Quill Mo\n6,Sorley Pia\n7,Kova Ada\n8,Kova Bea\n");
  (void)desk.ask({"draw-add", "Singles", table});
  (void)desk.ask({"draw-match", "Singles", "1", "1", "--court", "1", "--not-before", "2031-05-27T14:05"});
  (void)desk.ask({"draw-match", "Singles", "1", "2", "--court", "Centre", "--follows", "1/1"});
  const auto text = desk.run({"draw-match", "Singles", "2", "1", "--court", "2"}).out;
  CHECK(text.find("court 1, not before ") != std::string::npos);
  CHECK(text.find("2:05") != std::string::npos);
  CHECK(text.find(", Centre, follows round 1, match 1\n") != std::string::npos);
  CHECK(text.find("round 2, match 1: (not known yet) - (not known yet), court 2\n") != std::string::npos);
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "1", "--winner", "kova"}), "/0/matches/0/winner") == "1");  // the other three do not play there
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "3", "--winner", "pi so"}), "/0/matches/2/winner") == "6");
  const auto two = desk.ask({"draw-match", "Singles", "1", "4", "--winner", "Kova"}, 1);
  CHECK(text_at(two, "/error/what").find("7 Kova Ada, 8 Kova Bea") != std::string::npos);
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "4", "--winner", "Velt"}, 1), "/error/what").find("not in this match") != std::string::npos);
  CHECK(text_at(desk.ask({"draw-match", "Singles", "1", "4", "--winner", "Zorn"}, 4), "/error/code") == "not_found");
  CHECK(text_at(desk.ask({"draw-line", "Singles", "Kova", "--withdraws"}, 1), "/error/code") == "bad_input");
  CHECK(text_at(desk.ask({"draw-line", "Singles", "velt", "--withdraws"}), "/0/matches/1/winner") == "3");
}

TEST_CASE("rules that no plan could keep and wishes of nobody are refused") {
  const CliDevice desk{"Head"};
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  (void)desk.ask({"draw-add", "Singles", desk.file("draw.csv", "line,player\n1,Kova Mira\n2,Okafor Ada\n3,Kova Lena\n4,Velt Jana\n")});
  for (const char* margin : {"-5", "1441", "99999999"})
    CHECK(text_at(desk.ask({"plan-rules", std::string("margin_min=") + margin}, 1), "/error/where") == "margin_min");
  CHECK(text_at(desk.ask({"plan-rules", "margin_min=1440"}), "/margin_min") == "1440");
  (void)desk.ask({"team-set", "Merrin", "--role", "stringer"});
  CHECK(text_at(desk.ask({"bench-wish", "Zorn Ute", "--stringer", "Merrin"}, 4), "/error/where") == "\"Zorn Ute\"");
  CHECK(size_at(desk.ask({"bench-wish"}), "") == 0);
  CHECK(size_at(desk.ask({"bench-wish", "okafor ada", "--stringer", "Merrin", "--never"}), "") == 1);
  // A pair is two persons, each with a wish of its own; and a name has letters.
  (void)desk.ask({"draw-add", "Doubles", desk.file("pairs.csv", "line,player,partner\n1,Kova Mira,Okafor Ada\n2,Velt Jana,Sorley Pia\n")});
  CHECK(text_at(desk.ask({"bench-wish", "Velt Jana / Sorley Pia", "--stringer", "Merrin"}, 4), "/error/code") == "not_found");
  CHECK(text_at(desk.ask({"bench-wish", "bye", "--stringer", "Merrin"}, 4), "/error/code") == "not_found");
  for (const auto& words : {std::vector<std::string>{"bench-wish", " ", "--stringer", "Merrin"}, {"bench-wish", " ", "--stringer", "Merrin", "--drop"}})
    CHECK(text_at(desk.ask(words, 1), "/error/what") == "this is no name");
  CHECK(size_at(desk.ask({"bench-wish"}), "") == 1);
  CHECK(size_at(desk.ask({"bench-wish", "sorley pia", "--stringer", "Merrin"}), "") == 2);
  CHECK(size_at(desk.ask({"bench-wish", "sorley pia", "--stringer", "Merrin", "--drop"}), "") == 1);
  // Who is entered may wish before there is a draw of it.
  (void)desk.ask({"import", "entries", desk.file("entries.csv", "family_name,given_name\nZorn,Ute\n")});
  CHECK(size_at(desk.ask({"bench-wish", "Zorn Ute", "--stringer", "Merrin"}), "") == 2);
  CHECK(size_at(desk.ask({"bench-wish", "Zorn Ute", "--stringer", "Merrin", "--drop"}), "") == 1);
}
