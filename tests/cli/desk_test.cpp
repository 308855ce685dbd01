// The work of one device from the first hand-over to the next event, by commands alone.

#include <cstdio>

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

struct Desk : CliDevice {
  Desk() : CliDevice("Desk 1") { (void)ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"}); }
  json::value take_in() const { return ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over()); }
};

}  // namespace

TEST_CASE("a first hand-over is shown first, read back in the player's language, and stored once confirmed") {
  const Desk desk;
  const auto shown = desk.ask({"drop-off", "--stdin"}, 0, first_hand_over());
  CHECK(text_at(shown, "/stored") == "false");
  CHECK(text_at(shown, "/language") == "fr");
  (void)desk.ask({"find", "Wendelmoor"}, 4);

  const auto stored = desk.take_in();
  CHECK(text_at(stored, "/stored") == "true");
  CHECK(text_at(stored, "/read_back").find("25\xC2\xA0kg") != std::string::npos);
  CHECK(text_at(stored, "/read_back").find("23,5\xC2\xA0kg") != std::string::npos);
  REQUIRE(size_at(stored, "/jobs") == 4);
  CHECK(text_at(stored, "/jobs/0/tag_number") == "1");
  CHECK(text_at(stored, "/jobs/3/stage") == "received");

  const auto player = desk.ask({"show", "wendelmoor ilse"});
  CHECK(text_at(player, "/last_tensions") == "25 / 24 kg");
  CHECK(size_at(player, "/rackets") == 4);
  CHECK(size_at(player, "/setups") == 2);  // one name, two wishes
  CHECK(text_at(player, "/rackets/2/maker") == "Orrin");
  CHECK(text_at(player, "/drop_offs/0/confirmed_language") == "fr");
  CHECK(text_at(player, "/drop_offs/0/confirmed_text") == text_at(stored, "/read_back"));
  CHECK(text_at(player, "/setups/0/mains_gauge/amount") == "1.25");
  CHECK(size_at(desk.ask({"history", "Wendelmoor"}), "") == 4);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("what is needed and not said is asked, what cannot be is refused") {
  const Desk desk;
  const auto asked = desk.ask(
      {"drop-off", "--person", "family_name=Okonjo", "--rackets", "1", "--mains", "25kg", "--confirm"}, 3);
  CHECK(text_at(asked, "/stored") == "false");
  CHECK(json::serialize(asked.at("needed")).find("crosses_tension") != std::string::npos);

  const std::vector<std::string> typed{
      "drop-off",  "--person", "family_name=Okonjo",          "--rackets", "2",
      "--confirm", "--set",    "mains_string=Tarnbrook Silk", "--set",     "crosses_string=Tarnbrook Silk"};
  auto slip = typed;
  slip.insert(slip.end(), {"--both", "55kg"});
  CHECK(text_at(desk.ask(slip, 1), "/error/where").find("tension") != std::string::npos);
  auto unitless = typed;
  unitless.insert(unitless.end(), {"--both", "55"});
  CHECK(text_at(desk.ask(unitless, 1), "/error/what").find("no unit") != std::string::npos);
  auto wrong = typed;
  wrong.insert(wrong.end(), {"--set", "colour=red"});
  CHECK(text_at(desk.ask(wrong, 1), "/error/where") == "colour");
  auto good = typed;
  good.insert(good.end(), {"--both", "55lb"});
  CHECK(text_at(desk.ask(good), "/jobs/1/mains_tension/unit") == "lb");
  CHECK(text_at(desk.ask({"drop-off", "--stdin"}, 1, "{\"rackets\": 3"), "/error/where") == "standard input");
}

TEST_CASE("a player who may be known already does not get a second book by a slip") {
  const Desk desk;
  (void)desk.take_in();
  const auto asked = desk.ask({"drop-off", "--stdin", "--confirm"}, 3, first_hand_over());
  CHECK(size_at(asked, "/candidates") == 1);
  CHECK(size_at(desk.ask({"find"}), "") == 1);
  (void)desk.ask({"drop-off", "--stdin", "--confirm", "--new"}, 0, first_hand_over());
  CHECK(size_at(desk.ask({"find"}), "") == 2);
  CHECK(text_at(desk.ask({"show", "Wendelmoor"}, 1), "/error/what").find("2 are meant") != std::string::npos);
}

TEST_CASE("stages, the board and the next racket") {
  const Desk desk;
  const auto stored = desk.take_in();
  CHECK(text_at(desk.ask({"next"}), "/0/agreed/note") == "knots to the outside");
  for (const char* stage : {"inspected", "cut_out", "on_machine", "strung", "checked", "stencilled", "ready"})
    CHECK(text_at(desk.ask({"stage", "1", stage}), "/stage") == stage);
  CHECK(text_at(desk.ask({"stage", "2", "ready"}, 1), "/error/where") == "tag 2");
  CHECK(text_at(desk.ask({"stage", "2", "aside", "--reason", "a crack at the throat"}), "/from") ==
        "received");
  CHECK(text_at(desk.ask({"stage", text_at(stored, "/jobs/2/job"), "cut_out"}), "/cautions/0").find("eyes") !=
        std::string::npos);
  (void)desk.ask({"stage", "99", "ready"}, 4);

  const auto board = desk.ask({"board"});
  REQUIRE(size_at(board, "/stages") == 4);
  CHECK(text_at(board, "/stages/0/stage") == "received");
  CHECK(text_at(board, "/stages/0/count") == "1");
  CHECK(size_at(board, "/clashes") == 0);
  CHECK(text_at(desk.ask({"undo", "Wendelmoor"}), "/undone") == "stage");
  CHECK(text_at(desk.ask({"board"}), "/stages/0/count") == "2");
}

TEST_CASE("same as last time, one kilo less on the mains, for three rackets") {
  const Desk desk;
  (void)desk.take_in();
  CHECK(text_at(desk.ask({"same", "Wendelmoor", "--rackets", "3"}, 1), "/error/code") == "conflict");
  for (const char* tag : {"1", "2", "3", "4"})
    (void)desk.ask({"stage", tag, "collected", "--reason", "strung overnight"});

  const auto shown =
      desk.ask({"same", "Wendelmoor", "--rackets", "3", "--mains", "-1kg", "--ready-by", "+90"});
  CHECK(text_at(shown, "/stored") == "false");
  REQUIRE(size_at(shown, "/rackets") == 3);
  CHECK(text_at(shown, "/rackets/0/changes/0/field") == "mains_tension");
  CHECK(text_at(shown, "/rackets/0/changes/0/before") == "25\xC2\xA0kg");
  CHECK(text_at(shown, "/rackets/0/changes/0/after") == "24\xC2\xA0kg");
  CHECK(text_at(shown, "/read_back").find("25\xC2\xA0kg → 24\xC2\xA0kg") != std::string::npos);
  CHECK(text_at(desk.ask({"same", "Wendelmoor", "--mains", "-2lb"}, 1), "/error/where") == "mains_tension");

  const auto stored =
      desk.ask({"same", "Wendelmoor", "--rackets", "3", "--mains=-1kg", "--ready-by", "+90", "--confirm"});
  CHECK(size_at(stored, "/jobs") == 3);
  CHECK(text_at(stored, "/jobs/0/mains_tension/amount") == "24");
  CHECK(text_at(stored, "/jobs/0/tag_number") == "5");
  CHECK(text_at(desk.ask({"show", "Wendelmoor"}), "/last_tensions") == "24 / 24 kg");
  CHECK(text_at(desk.ask({"same", "Nobody"}, 4), "/error/code") == "not_found");
}

TEST_CASE("a setup is changed, a consent recorded, everything exported") {
  const Desk desk;
  (void)desk.take_in();
  CHECK(text_at(desk.ask({"setup", "Wendelmoor", "--set", "mains_gauge=3"}, 1), "/error/code") ==
        "bad_input");
  const auto changed = desk.ask({"setup", "Wendelmoor", "--mains", "24kg", "--set", "pieces=1"});
  CHECK(text_at(changed, "/changes/0/after") == "24\xC2\xA0kg");
  CHECK(json::serialize(changed.at("findings")).find("hybrid_one_piece") != std::string::npos);
  CHECK(text_at(desk.ask({"setup", "Wendelmoor", "--mains", "24kg"}), "/stored") == "false");
  CHECK(text_at(desk.ask({"consent", "Wendelmoor", "any_room"}), "/stored") == "false");
  CHECK(text_at(desk.ask({"consent", "Wendelmoor", "any_room", "--confirm"}), "/language") == "fr");
  CHECK(text_at(desk.ask({"find", "ilse"}), "/0/consent") == "any_room");
  (void)desk.ask({"consent", "Wendelmoor", "maybe"}, 1);

  CHECK(text_at(desk.ask({"export", "player", "Wendelmoor"}), "/format") == "weavelog-player");
  const auto history = desk.run({"export", "player", "Wendelmoor", "--csv"});
  CHECK(history.out.find("Tarnbrook Silk") != std::string::npos);
  const auto out = (desk.home / "jobs.csv").string();
  CHECK(desk.run({"export", "jobs", "--csv", "--out", out}).status == 0);
  std::ifstream file(out);
  const std::string content{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  CHECK(content.find("Harbour Open") != std::string::npos);
  CHECK(size_at(desk.ask({"export", "jobs"}), "") == 4);
  CHECK(text_at(desk.ask({"rebuild"}), "/rebuilt") == "true");
  CHECK(size_at(desk.ask({"quarantine"}), "") == 0);
  CHECK(size_at(desk.ask({"questions"}), "") == 0);
}

TEST_CASE("people get lines instead of JSON") {
  const Desk desk;
  (void)desk.take_in();
  const auto shown = desk.run({"show", "Wendelmoor", "--language", "de"});
  CHECK(shown.status == 0);
  CHECK(shown.out.starts_with("Wendelmoor"));
  CHECK(desk.run({"board"}).out.find("received: 4") != std::string::npos);
  CHECK(desk.run({"find", "wen"}).out.find("Ilse") != std::string::npos);
}

TEST_CASE("a time that has passed, or lies far ahead, is promised to nobody") {
  const Desk desk;
  (void)desk.take_in();
  for (const char* tag : {"1", "2", "3", "4"}) (void)desk.ask({"stage", tag, "collected", "--reason", "strung overnight"});
  const auto refused = [&](std::vector<std::string> words, const char* time) {
    words.insert(words.end(), {"--ready-by", time, "--confirm"});
    const auto fault = desk.ask(words, 1);
    CHECK(text_at(fault, "/error/where") == "ready by");
    return text_at(fault, "/error/what");
  };
  CHECK(refused({"same", "Wendelmoor"}, "2020-01-01T10:00").find("has passed") != std::string::npos);
  CHECK(refused({"same", "Wendelmoor"}, "2190-01-01T10:00").find("30 days") != std::string::npos);
  CHECK(refused({"drop-off", "--player", "Wendelmoor", "--rackets", "#1"}, "2020-01-01T10:00").find("has passed") != std::string::npos);
  CHECK(size_at(desk.ask({"history", "Wendelmoor"}), "") == 4);
}

TEST_CASE("people are told the clock of the event, JSON is told UTC") {
  const CliDevice desk("Desk 1");
  // Kathmandu is five hours and three quarters ahead of UTC all the year (IANA time zone database, Asia/Kathmandu).
  (void)desk.ask({"new-event", "Harbour Open", "--time-zone", "Asia/Kathmandu", "--currency", "EUR"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"price", "overgrip", "3.50"});
  (void)desk.ask({"sell", "Wendelmoor", "overgrip"});
  const auto job = desk.ask({"job", "1"});
  const std::string ready = text_at(job, "/ready_by"), taken = text_at(job, "/at");
  // Of its own, because it comes a moment after the rackets, perhaps in the next minute.
  const std::string charged = text_at(desk.ask({"statement", "Wendelmoor"}), "/lines/0/at");
  for (const std::string& utc : {ready, taken, charged}) CHECK(utc.ends_with("Z"));
  const auto there = [](const std::string& utc) {
    const int minutes = (std::stoi(utc.substr(11, 2)) * 60 + std::stoi(utc.substr(14, 2)) + 345) % 1440;
    char text[16];
    std::snprintf(text, sizeof text, "%02d:%02d", minutes / 60, minutes % 60);
    return std::string(text);
  };
  const auto said = [&](std::vector<std::string> words) {
    words.insert(words.end(), {"--language", "de"});  // whose hours run from 0 to 23
    const auto done = desk.run(words);
    INFO(words.front() << ": " << done.out);
    CHECK(done.out.find("Z  ") == std::string::npos);
    CHECK(done.out.find("Z\n") == std::string::npos);
    CHECK(done.out.find("UTC") == std::string::npos);
    return done.out;
  };
  for (const auto& words : {std::vector<std::string>{"board"}, {"next"}, {"job", "1"}, {"history", "Wendelmoor"}}) {
    INFO(words.front());
    CHECK(said(words).find(there(ready)) != std::string::npos);
  }
  for (const auto& words : {std::vector<std::string>{"job", "1"}, {"history", "Wendelmoor"}, {"show", "Wendelmoor"}, {"find"}}) {
    INFO(words.front());
    CHECK(said(words).find(there(taken)) != std::string::npos);
  }
  CHECK(said({"statement", "Wendelmoor"}).find(there(charged)) != std::string::npos);
}

TEST_CASE("without an event's clock a time says that it is UTC") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  CHECK(desk.run({"history", "Wendelmoor"}).out.find(" UTC") != std::string::npos);
}
