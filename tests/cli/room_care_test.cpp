// Machines, team, shifts and the numbers of the room by commands alone.

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

struct Room {
  CliDevice desk{"Desk 1"};
  Room() {
    (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon", "--currency", "EUR"});
    (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  }
};

}  // namespace

TEST_CASE("machines are kept clean, calibrated, and out of the run while they are out of order") {
  const Room room;
  const CliDevice& desk = room.desk;
  (void)desk.ask({"machine-add", "by the window", "constant_pull", "--max", "40 kg", "--pre-stretch", "0 10 20", "--clean-every", "1"});
  (void)desk.ask({"machine-add", "2", "lockout", "--max", "24 kg"});
  (void)desk.ask({"machine-add", "BY the window", "lockout"}, 1);
  (void)desk.ask({"machine-add", "3", "steam"}, 1);
  const auto doubted = desk.ask({"stage", "1", "on_machine", "--machine", "2"});  // 25 kg is above its maker's 24
  CHECK(text_at(doubted, "/machine_doubts/0").find("24") != std::string::npos);
  (void)desk.ask({"undo", "Wendelmoor"});
  (void)desk.ask({"stage", "1", "on_machine", "--machine", "by the window", "--by", "Mara"});
  const auto used = desk.ask({"machines"});
  CHECK(text_at(used, "/0/strung_since_cleaning") == "1");
  CHECK(text_at(used, "/0/cleaning_due") == "true");
  CHECK(text_at(desk.ask({"machine-care", "1", "clamps_cleaned"}), "/0/cleaning_due") == "false");
  (void)desk.ask({"machine-care", "1", "calibrated", "--asked", "25 kg"}, 1);
  CHECK(text_at(desk.ask({"machine-care", "1", "calibrated", "--asked", "25 kg", "--read", "24.5 kg"}), "/0/off_per_mille") == "-20");
  (void)desk.ask({"machine-care", "1", "out_of_order"}, 1);
  CHECK(text_at(desk.ask({"machine-care", "1", "out_of_order", "--note", "a clamp slips"}), "/0/reason") == "a clamp slips");
  const auto refused = desk.run({"stage", "2", "on_machine", "--machine", "1"});
  CHECK(refused.status == 1);
  CHECK(refused.err.find("a clamp slips") != std::string::npos);
  CHECK(text_at(desk.ask({"machine-care", "1", "back_in_order"}), "/0/out_of_order") == "false");
  CHECK(text_at(desk.ask({"machine-set", "2", "--max", "30 kg", "--name", "by the door"}), "/1/name") == "by the door");
  (void)desk.ask({"stage", "2", "on_machine", "--machine", "by the door"});
  (void)desk.ask({"machine-care", "9", "clamps_cleaned"}, 4);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("shifts say who is here, and whose days are too long") {
  const Room room;
  const CliDevice& desk = room.desk;
  (void)desk.ask({"team-set", "Mara", "--role", "stringer", "--languages", "en pt", "--skills", "natural gut, left-handed"});
  (void)desk.ask({"team-set", "Joren", "--role", "desk"});
  CHECK(text_at(desk.ask({"team"}), "/0/skills") == "natural gut, left-handed");
  (void)desk.ask({"team-set", "Joren", "--role", "cook"}, 1);
  (void)desk.ask({"shift-add", "mara", "2031-05-26T08:00", "21:30"});
  (void)desk.ask({"shift-add", "Mara", "2031-05-27T07:00", "12:00"});
  (void)desk.ask({"shift-add", "Wilmot", "08:00", "12:00"}, 4);
  const auto planned = desk.ask({"shifts"});
  REQUIRE(size_at(planned, "/shifts") == 2);
  CHECK(text_at(planned, "/shifts/0/until") == "2031-05-26T20:30:00Z");  // Lisbon is an hour ahead of UTC in summer
  REQUIRE(size_at(planned, "/warnings") == 2);
  CHECK(text_at(planned, "/warnings/0/kind") == "long_day");
  CHECK(text_at(planned, "/warnings/0/minutes") == "810");
  CHECK(text_at(planned, "/warnings/1/kind") == "short_rest");
  CHECK(size_at(desk.ask({"shift-remove", "1"}), "/warnings") == 0);
  (void)desk.ask({"shift-remove", "5"}, 4);
}

TEST_CASE("the numbers of the room count what was done") {
  const Room room;
  const CliDevice& desk = room.desk;
  for (const char* stage : {"on_machine", "strung", "ready"}) (void)desk.ask({"stage", "1", stage, "--by", "Mara"});
  (void)desk.ask({"stage", "2", "waiting"});
  const auto numbers = desk.ask({"numbers"});
  CHECK(text_at(numbers, "/jobs") == "4");
  CHECK(text_at(numbers, "/strung") == "1");
  CHECK(text_at(numbers, "/on_time") == "1");
  CHECK(text_at(numbers, "/waiting") == "1");
  CHECK(text_at(numbers, "/by_stringer/0/key") == "Mara");
  CHECK(text_at(numbers, "/by_string/0/key") == "Tarnbrook Silk / Velmora Round");
  CHECK(text_at(numbers, "/by_tension_kg/0/key") == "25");
  CHECK(desk.run({"numbers", "--csv"}).out.starts_with("by,key,taken_in,strung,ready,on_time,late,turnaround_minutes\r\n"));
  CHECK(text_at(desk.ask({"numbers", "--day", "2001-01-01"}), "/jobs") == "0");
  (void)desk.ask({"numbers", "--day", "yesterday"}, 1);
}
