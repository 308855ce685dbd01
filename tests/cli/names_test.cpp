// The name of a device: given once, kept in its folder.

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

struct Folder {
  TemporaryFolder home;

  [[nodiscard]] Finished run(std::vector<std::string> words) const {
    words.insert(words.begin(), {WEAVELOG_CLI_PROGRAM, "--data", (home / "data").string()});
    return run_program(words);
  }
  /// By whose name a racket is taken in now.
  [[nodiscard]] std::string signs(const char* family) const {
    const auto done = run({"--json", "drop-off", "--person", std::string("family_name=") + family, "--rackets", "1", "--both", "24kg", "--set",
                           "mains_string=Tarnbrook Silk", "--set", "crosses_string=Tarnbrook Silk", "--confirm"});
    INFO(done.out << done.err);
    REQUIRE(done.status == 0);
    CHECK(done.err.empty());
    return text_at(json::parse(done.out), "/jobs/0/stage_by");
  }
};

}  // namespace

TEST_CASE("the name given with --device stays, until another one is given, and that is said") {
  const Folder tablet;
  const auto first = tablet.run({"--device", "Desk 1", "new-event", "Harbour Open"});
  CHECK(first.status == 0);
  CHECK(first.err.empty());
  CHECK(tablet.signs("Okonjo") == "Desk 1");
  CHECK(tablet.run({"--device", "Desk 1", "board"}).err.empty());
  const auto renamed = tablet.run({"--device", "Table by the door", "--json", "board"});
  CHECK(renamed.status == 0);
  CHECK(renamed.err.find("\"Desk 1\"") != std::string::npos);
  CHECK(renamed.err.find("\"Table by the door\" from now on") != std::string::npos);
  CHECK(json::parse(renamed.out).is_object());
  CHECK(tablet.signs("Lindgrove") == "Table by the door");
  CHECK(tablet.run({"--device", "  ", "board"}).status == 2);
  // A copy of the folder is a device of its own, but called as the one it was copied from until it gets a name.
  const Folder copied;
  std::filesystem::copy(tablet.home / "data", copied.home / "data", std::filesystem::copy_options::recursive);
  CHECK(copied.signs("Vantreel") == "Table by the door");
}

TEST_CASE("a folder without a name is called after its machine, and stays so") {
  const Folder tablet;
  CHECK(tablet.run({"new-event", "Harbour Open"}).err.empty());
  const std::string name = tablet.signs("Okonjo");
  CHECK_FALSE(name.empty());
  CHECK(tablet.signs("Lindgrove") == name);
}

TEST_CASE("the server keeps its name too") {
  const TemporaryFolder home;
  const auto called = [&](std::vector<std::string> more) {
    std::vector<std::string> words{WEAVELOG_SERVER_PROGRAM, "--data", (home / "data").string(), "--listen", "127.0.0.1:0", "--unlisted", "--quiet",
                                   "--event", "Harbour Open", "--invite", "desk"};
    words.insert(words.end(), more.begin(), more.end());
    Running program(words);
    const auto line = program.line();
    REQUIRE(line);
    CHECK(program.stop() == 0);
    return line->substr(0, line->find(" listens on"));
  };
  CHECK(called({}) == "Event server");
  CHECK(called({"--name", "Harbour desk"}) == "Harbour desk");
  CHECK(called({}) == "Harbour desk");
}
