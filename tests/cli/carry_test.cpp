// Bundles and player cards, from the command line with the real program and no network at all.

#include <iterator>

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

std::string content_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// A desk that knows one player with four rackets.
struct CarryDesk : CliDevice {
  CarryDesk() : CliDevice("Desk 1") { (void)ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over()); }
};

std::string path_of(const CliDevice& device, const std::string& name) { return (device.home / name).string(); }

}  // namespace

TEST_CASE("a player is handed to a colleague in a file, who sends back a receipt") {
  const CarryDesk desk;
  const CliDevice tablet("Tablet");
  const auto key = text_at(tablet.ask({"bundle", "key"}), "/key");
  const std::string file = path_of(desk, "ilse.bundle");
  const auto estimate = desk.ask({"bundle", "make", "--player", "wendel", "--estimate"});
  CHECK(text_at(estimate, "/books") == "1");
  CHECK_FALSE(std::filesystem::exists(file));
  const auto made = desk.ask({"bundle", "make", file, "--player", "wendel", "--to", key, "--note", "for the final"});
  CHECK(text_at(made, "/books") == "1");
  CHECK(text_at(made, "/bytes") == std::to_string(std::filesystem::file_size(file)));
  CHECK(content_of(file).find("Wendelmoor") == std::string::npos);
  CHECK(text_at(desk.ask({"bundle", "make", file, "--player", "wendel", "--to", key}, 1), "/error/code") == "conflict");
  CHECK(text_at(desk.ask({"bundle", "show", file}), "/for_this_device") == "false");

  const auto shown = tablet.ask({"bundle", "show", file});
  CHECK(text_at(shown, "/whole") == "true");
  CHECK(text_at(shown, "/note") == "for the final");
  CHECK(text_at(shown, "/maker/device") == "Desk 1");
  (void)tablet.ask({"find", "wendel"}, 4);
  CHECK(text_at(tablet.ask({"bundle", "read", file}, 1), "/error/code") == "untrusted");
  const std::string back = path_of(tablet, "receipt");
  const auto read = tablet.ask({"bundle", "read", file, "--from-stranger", "--receipt", back});
  CHECK(text_at(read, "/complete") == "true");
  CHECK(text_at(read, "/applied") == text_at(made, "/entries"));
  CHECK(text_at(tablet.ask({"bundle", "read", file}), "/applied") == "0");
  CHECK(size_at(tablet.ask({"find", "wendel"}), "") == 1);
  CHECK(text_at(tablet.ask({"verify"}), "/well") == "true");

  const auto receipt = desk.ask({"bundle", "receipt", back});
  CHECK(text_at(receipt, "/device") == "Tablet");
  CHECK(text_at(receipt, "/complete") == "true");
  CHECK(size_at(receipt, "/lacking") == 0);
  const auto list = desk.ask({"bundle", "list"});
  REQUIRE(size_at(list, "") == 1);
  CHECK(text_at(list, "/0/taken/0/device") == "Tablet");
  CHECK(text_at(tablet.ask({"bundle", "receipt", back}, 1), "/error/code") == "untrusted");
}

TEST_CASE("everything goes into a file that opens with words, and half of the file gives half") {
  const CarryDesk desk;
  const CliDevice tablet("Tablet");
  const std::string file = path_of(desk, "all.bundle");
  const auto made = desk.ask({"bundle", "make", file, "--all", "--words"});
  const std::string words = tablet.file("words", text_at(made, "/words") + "\n");
  CHECK(text_at(tablet.ask({"bundle", "read", file}, 1), "/error/code") == "bad_input");
  CHECK(text_at(tablet.ask({"bundle", "read", file, "--passphrase-from", "-"}, 1, "not these words\n"), "/error/code") == "untrusted");
  const std::string half = tablet.file("half.bundle", content_of(file).substr(0, std::filesystem::file_size(file) - 100));
  const auto part = tablet.ask({"bundle", "read", half, "--passphrase-from", words}, 1);
  CHECK(text_at(part, "/complete") == "false");
  CHECK(text_at(part, "/fault/what").find("ends early") != std::string::npos);
  CHECK(text_at(tablet.ask({"bundle", "show", half, "--passphrase-from", words}, 1), "/whole") == "false");
  CHECK(text_at(tablet.ask({"bundle", "read", file, "--passphrase-from", words}), "/complete") == "true");
  CHECK(size_at(tablet.ask({"find", "wendel"}), "") == 1);
  CHECK(text_at(tablet.ask({"bundle", "read", tablet.file("none.bundle", "no bundle")}, 1), "/error/code") == "malformed");
  (void)tablet.ask({"bundle", "read", path_of(tablet, "missing")}, 4);
  CHECK(text_at(desk.ask({"bundle", "make", path_of(desk, "x"), "--all"}, 1), "/error/where") == "bundle");
  (void)desk.ask({"bundle", "make", path_of(desk, "x"), "--all", "--words", "--to", "somebody"}, 2);
  CHECK_FALSE(std::filesystem::exists(desk.home / "x"));
}

TEST_CASE("an event goes along with its players, and who agreed to one room only goes to that room only") {
  const CliDevice desk("Desk 1"), tablet("Tablet");
  (void)desk.ask({"new-event", "Harbour Open"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"consent", "wendel", "this_room", "--confirm"});
  const std::string key = text_at(tablet.ask({"bundle", "key"}), "/key");
  const std::string anybody = path_of(desk, "anybody"), room = path_of(desk, "room");
  const auto without = desk.ask({"bundle", "make", anybody, "--event", ".", "--to", key});
  CHECK(text_at(without, "/books") == "1");
  CHECK(size_at(without, "/left_out") == 1);
  CHECK(text_at(desk.ask({"bundle", "make", anybody, "--replace", "--player", "wendel", "--to", key}, 1), "/error/code") == "refused");
  CHECK(text_at(desk.ask({"bundle", "make", room, "--event", ".", "--for-event", ".", "--to", key}), "/books") == "2");
  CHECK(text_at(tablet.ask({"bundle", "read", room, "--from-stranger"}, 1), "/error/code") == "refused");
  CHECK(text_at(tablet.ask({"bundle", "read", room, "--from-stranger", "--in-its-room"}), "/complete") == "true");
  CHECK(size_at(tablet.ask({"events"}), "") == 1);
  CHECK(size_at(tablet.ask({"find", "wendel"}), "") == 1);
}

TEST_CASE("a player who was forgotten comes back neither by bundle nor by card") {
  const CarryDesk desk;
  const CliDevice tablet("Tablet");
  const std::string file = path_of(desk, "all.bundle");
  const auto made = desk.ask({"bundle", "make", file, "--all", "--words"});
  const std::string words = tablet.file("words", text_at(made, "/words"));
  const std::string card = tablet.file("card", text_at(desk.ask({"card", "make", "wendel"}), "/text"));
  (void)tablet.ask({"bundle", "read", file, "--passphrase-from", words});
  (void)tablet.ask({"forget", "wendel", "--confirm"});
  const auto again = tablet.ask({"bundle", "read", file, "--passphrase-from", words});
  CHECK(size_at(again, "/forgotten") == 1);
  CHECK(text_at(again, "/applied") == "0");
  CHECK(text_at(tablet.ask({"card", "read", "--from", card, "--confirm"}, 1), "/error/code") == "refused");
  (void)tablet.ask({"find", "wendel"}, 4);
}

TEST_CASE("a card brings a player whom this device never met, and says who signed it") {
  const CarryDesk desk;
  const CliDevice bench("Bench 2");
  const std::string svg = path_of(desk, "card.svg");
  const auto made = desk.ask({"card", "make", "wendel", "--svg", svg});
  CHECK(text_at(made, "/setups") == "2");
  CHECK(std::stoi(text_at(made, "/version")) <= 25);
  CHECK(content_of(svg).starts_with("<svg xmlns"));
  const std::string text = text_at(made, "/text");
  CHECK(text.size() <= 1451);
  const auto shown = bench.ask({"card", "show", text});
  CHECK(text_at(shown, "/player/family_name") == "Wendelmoor");
  CHECK(text_at(shown, "/setups/0/mains_tension/amount") == "25");
  CHECK(text_at(shown, "/known_as") == "stranger");
  CHECK(text_at(bench.ask({"card", "read", text}, 3), "/stored") == "false");
  (void)bench.ask({"find", "wendel"}, 4);
  CHECK(text_at(bench.ask({"card", "read", "--from", "-", "--confirm"}, 0, text + "\n"), "/stored") == "true");
  CHECK(size_at(bench.ask({"find", "wendel"}), "") == 1);
  CHECK(text_at(bench.ask({"export", "player", "wendel"}), "/cards/0/device") == "Desk 1");
  CHECK(text_at(bench.ask({"card", "read", text, "--confirm"}), "/stored") == "false");
  // Newer there: waits until a person says so.
  (void)desk.ask({"setup", "wendel", "--mains", "24.5kg"});
  const std::string fresh = text_at(desk.ask({"card", "make", "wendel"}), "/text");
  const auto offered = bench.ask({"card", "read", fresh, "--confirm"});
  CHECK(text_at(offered, "/waiting") == "1");
  CHECK(text_at(offered, "/lines/0/card") == "24.5 kg");
  CHECK(text_at(bench.ask({"card", "read", fresh, "--confirm", "--accept-newer"}), "/waiting") == "0");
  CHECK(text_at(bench.ask({"card", "show", fresh}), "/setups/0/mains_tension/amount") == "24.5");

  CHECK(text_at(bench.ask({"card", "show", "WEAVELOG:CARD:ABC"}, 1), "/error/code") == "malformed");
  CHECK(text_at(bench.ask({"card", "show", "something else"}, 1), "/error/code") == "bad_input");
  CHECK(text_at(bench.ask({"card", "show"}, 1), "/error/code") == "bad_input");
  CHECK(bench.run({"card", "show", text}).out.find("Ask the player before stringing") != std::string::npos);
}

TEST_CASE("every command of bundle and card explains itself, and says what it prints with --json") {
  const CliDevice device("desk");
  for (const auto& [family, command] : std::vector<std::pair<std::string, std::string>>{
           {"bundle", "make"}, {"bundle", "read"}, {"bundle", "show"}, {"bundle", "receipt"}, {"bundle", "list"}, {"bundle", "key"},
           {"card", "make"}, {"card", "show"}, {"card", "read"}}) {
    const auto help = device.run({family, command, "--help"});
    INFO(family << " " << command);
    CHECK(help.status == 0);
    CHECK(help.out.find("--json:") != std::string::npos);
  }
  CHECK(device.run({"bundle"}).status == 2);
  CHECK(device.run({"card", "dance"}).status == 2);
}
