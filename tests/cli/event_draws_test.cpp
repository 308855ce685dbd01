// Draws and home benches of an event by commands alone.

#include <fstream>

#include "tests/cli/device.h"

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
