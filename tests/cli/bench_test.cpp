// The bench and the check by commands alone.

#include "tests/cli/event_server.h"

using namespace weavelog::testing;

namespace {

struct BenchDevice : CliDevice {
  BenchDevice() : CliDevice("Bench 1") {
    (void)ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
    (void)ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  }
};

}  // namespace

TEST_CASE("a racket is strung by the room's list, measured, checked, done again, and all of it is shown with the job") {
  const BenchDevice bench;
  CHECK(size_at(bench.ask({"steps", "bench"}), "") == 9);
  const auto own = bench.ask({"step-add", "bench", "Wipe the frame", "--place", "2"});
  CHECK(text_at(own, "/1/words") == "Wipe the frame");
  CHECK(text_at(own, "/1/own") == "true");
  CHECK(text_at(bench.ask({"step-set", "bench", "2", "--text", "Rahmen abwischen", "--in", "de"}), "/1/text_de") == "Rahmen abwischen");
  CHECK(text_at(bench.ask({"step-set", "bench", "marks", "--off"}), "/9/off") == "true");
  CHECK(bench.run({"--language", "de", "steps", "bench"}).out.find("2  Rahmen abwischen") != std::string::npos);
  CHECK(size_at(bench.ask({"steps"}), "") == 18);

  (void)bench.ask({"machine-add", "by the window", "constant_pull"});
  (void)bench.ask({"stage", "1", "cut_out"});
  (void)bench.ask({"machine-add", "by the door", "constant_pull"});
  (void)bench.ask({"bench", "1", "--done", "1", "--machine", "by the window"}, 1);  // it is on none yet
  (void)bench.ask({"bench", "1", "--done", "1", "--done", "Wipe the frame", "--by", "Ruud"});
  CHECK(text_at(bench.ask({"job", "1"}), "/bench/0/steps_done/1") == "Wipe the frame");
  (void)bench.ask({"stage", "1", "on_machine", "--machine", "by the door", "--by", "Ruud"});
  CHECK(text_at(bench.ask({"job", "1"}), "/bench/0/machine_name") == "by the door");
  (void)bench.ask({"bench", "1", "--machine", "by the window", "--by", "Ruud"});
  CHECK(text_at(bench.ask({"machines"}), "/0/strung_since_cleaning") == "1");
  CHECK(text_at(bench.ask({"machines"}), "/1/strung_since_cleaning") == "0");
  const auto noted = bench.ask({"bench", "1", "--not-done", "1", "--note", "grommet at 2 is tight"});
  CHECK(text_at(noted, "/bench/0/steps_done/0") == "Wipe the frame");
  CHECK(text_at(noted, "/bench/0/machine_name") == "by the window");
  CHECK(text_at(noted, "/on_machine/minutes") == "0");
  (void)bench.ask({"stage", "1", "strung"});
  (void)bench.ask({"reading", "1", "bed_stiffness", "34.50 kg/cm"});
  (void)bench.ask({"reading", "1", "tension_head", "24.2 kg", "--set-to", "25 kg", "--machine", "by the window"});
  CHECK(text_at(bench.ask({"reading", "1", "tone", "522"}), "/readings/0/value/unit") == "Hz");
  const auto failed = bench.ask({"check", "1", "--not", "knots", "--reason", "a knot slipped", "--back-to", "cut_out", "--by", "Mara"});
  CHECK(text_at(failed, "/stage") == "cut_out");
  CHECK(text_at(failed, "/redos") == "1");
  CHECK(text_at(failed, "/checks/0/items/3/ok") == "false");
  for (const char* stage : {"on_machine", "strung"}) (void)bench.ask({"stage", "1", stage});
  CHECK(text_at(bench.ask({"check", "1", "--ok"}), "/stage") == "checked");
  const auto job = bench.ask({"job", "1"});
  CHECK(size_at(job, "/checks") == 2);
  CHECK(size_at(job, "/readings") == 3);
  CHECK(text_at(job, "/readings/2/value/amount") == "34.50");
  CHECK(text_at(job, "/agreed/mains_tension/amount") == "25");
  const std::string shown = bench.run({"job", "1"}).out;
  CHECK(shown.find("not in order: Knots tight, ends short (a knot slipped)") != std::string::npos);
  CHECK(shown.find("34.50\xC2\xA0kg/cm") != std::string::npos);
  CHECK(shown.find("done again: 1") != std::string::npos);
  CHECK(text_at(bench.ask({"verify"}), "/well") == "true");
}

TEST_CASE("what is wrong with a step, a reading or a check is one clear fault, and nothing is stored") {
  const BenchDevice bench;
  (void)bench.ask({"bench", "1", "--done", "99"}, 4);
  (void)bench.ask({"bench", "1", "--done", "1", "--done", "none of it"}, 4);
  CHECK(size_at(bench.ask({"job", "1"}), "/bench") == 0);
  (void)bench.ask({"bench", "1", "--done", "1", "--machine", "none of ours"}, 4);
  CHECK(size_at(bench.ask({"job", "1"}), "/bench") == 0);
  (void)bench.ask({"reading", "1", "tone", "fast"}, 1);
  (void)bench.ask({"reading", "1", "weight", "3 g"}, 1);
  for (const auto& [what, value, unit] : {std::tuple("bed_stiffness", "1e400 kg/cm", "kg/cm"), {"tension_head", "24 stone", "lb"}, {"tone", "500 beats", "Hz"}}) {
    const auto told = text_at(bench.ask({"reading", "1", what, value}, 1), "/error/what_to_do");
    CHECK(told.find(unit) != std::string::npos);
    CHECK((told.find("Hz") != std::string::npos) == (std::string(what) == "tone"));
  }
  (void)bench.ask({"reading", "1", "tension_head", "24"}, 1);
  CHECK(size_at(bench.ask({"job", "1"}), "/readings") == 0);
  (void)bench.ask({"check", "1", "--ok"}, 1);
  (void)bench.ask({"check", "1"}, 1);
  (void)bench.ask({"check", "1", "--ok", "--not", "1"}, 2);
  (void)bench.ask({"job", "77"}, 4);
  (void)bench.ask({"steps", "kitchen"}, 1);
  (void)bench.ask({"step-set", "bench", "knots"}, 1);
  (void)bench.ask({"step-set", "bench", "knots", "--text", "x", "--in", "it"}, 1);
}

TEST_CASE("a picture of a racket is kept beside the book, shown with the job, and erased with the player") {
  const BenchDevice bench;
  std::string png("\x89PNG\r\n\x1a\n", 8);
  png += std::string(5000, 'p');
  const std::string file = bench.file("crack.png", png), other = bench.file("note.txt", "no picture");
  (void)bench.ask({"inspect", "1", "--found", "crack@2:30"});
  const auto added = bench.ask({"photo-add", "1", file, "--finding", "1", "--note", "hairline"});
  CHECK(text_at(added, "/photos/0/media_type") == "image/png");
  CHECK(text_at(added, "/photos/0/size") == "5008");
  CHECK(text_at(added, "/photos/0/here") == "true");
  const std::string back = (bench.home / "back.png").string();
  CHECK(text_at(bench.ask({"photo-get", "1", back}), "/bytes") == "5008");
  std::ifstream in(back, std::ios::binary);
  CHECK(std::string(std::istreambuf_iterator<char>(in), {}) == png);
  (void)bench.ask({"photo-get", "1", back}, 1);  // never over a file that is there
  (void)bench.ask({"photo-get", "1", back, "--replace"});
  (void)bench.ask({"photo-get", "1", back, "--photo", "2"}, 4);
  (void)bench.ask({"photo-add", "1", other}, 1);
  (void)bench.ask({"photo-add", "1", file, "--finding", "7"}, 4);
  (void)bench.ask({"photo-add", "1", (bench.home / "none.png").string()}, 4);
  (void)bench.ask({"forget", "Wendelmoor", "--confirm"});
  CHECK(std::filesystem::is_empty(std::filesystem::path(bench.data()) / "photos"));
}

TEST_CASE("a picture taken at the desk is fetched at the bench from the event server, and kept") {
  EventServer server("Harbour Open", {"desk", "stringer"});
  const CliDevice desk("Desk 1"), bench("Bench 2");
  (void)desk.ask({"pair", server.codes[0]});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  std::string png("\x89PNG\r\n\x1a\n", 8);
  for (int i = 0; i < 200'000; ++i) png += static_cast<char>(i * 7 + i / 251);
  (void)desk.ask({"photo-add", "1", desk.file("grip.png", png)});
  (void)desk.ask({"exchange"});
  (void)bench.ask({"pair", server.codes[1]});
  CHECK(text_at(bench.ask({"job", "1"}), "/photos/0/here") == "false");
  const std::string back = (bench.home / "back.png").string();
  CHECK(text_at(bench.ask({"photo-get", "1", back, "--offline"}, 4), "/error/code") == "not_found");
  const auto got = bench.ask({"photo-get", "1", back});
  CHECK(text_at(got, "/bytes") == "200008");
  CHECK(text_at(got, "/fetched") == "true");
  std::ifstream in(back, std::ios::binary);
  CHECK(std::string(std::istreambuf_iterator<char>(in), {}) == png);
  CHECK(text_at(bench.ask({"job", "1"}), "/photos/0/here") == "true");
  CHECK(text_at(bench.ask({"photo-get", "1", back, "--replace"}), "/fetched") == "false");
  // Forgotten at the desk, it is gone at the bench and at the server.
  (void)desk.ask({"forget", "Wendelmoor", "--confirm"});
  (void)desk.ask({"exchange"});
  (void)bench.ask({"exchange"});
  CHECK(std::filesystem::is_empty(std::filesystem::path(bench.data()) / "photos"));
  CHECK(std::filesystem::is_empty(server.folder / "data" / "photos"));
}
