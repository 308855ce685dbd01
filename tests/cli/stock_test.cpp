// Reels and sets by commands alone.

#include "tests/cli/device.h"

using namespace weavelog::testing;

TEST_CASE("string comes in, is used by jobs, counted, and told before it is gone") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon", "--currency", "EUR"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"stock-add", "Velmora Round", "set", "--gauge", "1.23", "--material", "polyester", "--low", "2"});
  (void)desk.ask({"stock-add", "Tarnbrook Silk", "reel", "--gauge", "1.25 mm", "--player", "Wendelmoor"});
  (void)desk.ask({"stock-move", "1", "received", "3"});
  const auto came = desk.ask({"stock-move", "2", "received", "62.5"});
  CHECK(text_at(came, "/1/left") == "62500");
  CHECK(text_at(came, "/0/low") == "false");
  CHECK(text_at(came, "/0/material") == "polyester");

  const auto used = desk.ask({"stock-use", "1"});  // mains from the player's reel, crosses from a set of the room
  CHECK(text_at(used, "/0/left") == "2");
  CHECK(text_at(used, "/0/low") == "true");
  CHECK(text_at(used, "/1/used_today") != "0");
  CHECK(text_at(desk.ask({"stock-use", "1"}), "/0/left") == "2");  // noted twice, used once
  const auto said = desk.ask({"stock-use", "2", "--item", "2", "--amount", "6.1", "--part", "mains"});
  CHECK(std::stoll(text_at(used, "/1/left")) - std::stoll(text_at(said, "/1/left")) == 6100);
  CHECK(text_at(desk.ask({"stock-move", "2", "counted", "40"}), "/1/left") == "40000");

  (void)desk.ask({"stock-move", "2", "counted", "x"}, 1);
  (void)desk.ask({"stock-move", "1", "received", "1.5"}, 1);
  (void)desk.ask({"stock-move", "9", "received", "1"}, 4);
  (void)desk.ask({"stock-move", "1", "eaten", "1"}, 1);
  (void)desk.ask({"stock-add", "Velmora Round", "box"}, 1);
  CHECK(text_at(desk.ask({"stock-add", "Velmora Round", "set", "--material", "steel"}, 1), "/error/where") == "material");
  CHECK(desk.run({"stock"}).out.find("40.0\xC2\xA0m left") != std::string::npos);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}
