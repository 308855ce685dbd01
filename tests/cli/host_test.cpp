// Tablets that exchange without an event server: one of them plays the host.

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

/// A tablet that plays the host on loopback, with an invitation for each role.
struct Hosting {
  Running program;
  std::string address;
  std::vector<std::string> codes, words;

  Hosting(const CliDevice& device, const std::vector<std::string>& what, const std::vector<std::string>& roles)
      : program(command(device, what, roles)) {
    address = text_at(next(), "/listening");
    for (std::size_t i = 0; i < roles.size(); ++i) {
      const auto invitation = next();
      codes.push_back(text_at(invitation, "/code"));
      words.push_back(text_at(invitation, "/words"));
    }
  }
  json::value next() {
    const auto line = program.line();
    REQUIRE(line);
    return json::parse(*line);
  }

 private:
  static std::vector<std::string> command(const CliDevice& device, const std::vector<std::string>& what, const std::vector<std::string>& roles) {
    std::vector<std::string> out{WEAVELOG_CLI_PROGRAM, "--json", "--data", device.data(), "--device", device.name, "host", "--listen", "127.0.0.1:0"};
    out.insert(out.end(), what.begin(), what.end());
    for (const auto& role : roles) out.insert(out.end(), {"--invite", role});
    return out;
  }
};

std::string hand_over(const std::string& family) {
  return R"({"player": {"family_name": ")" + family + R"(", "given_name": "Ilse", "country": "NED", "birth_year": 2002, "language": "en", "tension_unit": "kg"},
    "agreed": {"mains_string": "Tarnbrook Silk", "mains_gauge": "1.25", "mains_supply": "reel", "mains_owner": "player",
      "mains_tension": "25 kg", "mains_prestretch": "10", "crosses_string": "Velmora Round", "crosses_gauge": "1.23", "crosses_supply": "set",
      "crosses_owner": "room", "crosses_tension": "24", "pieces": 2, "knots": 4, "racket_stencil": "open ring", "racket_ink": "red",
      "string_stencil": "bar", "string_ink": "black"}, "keep_as": "day", "ready_by": "+180", "rackets": ["1"]})";
}

void take_in(const CliDevice& device, const std::string& family) {
  (void)device.ask({"drop-off", "--stdin", "--confirm"}, 0, hand_over(family));
}

}  // namespace

TEST_CASE("two tablets work at one event without a server: one plays the host, and what either writes the other has") {
  const CliDevice ilse("Ilse's tablet"), bo("Bo's tablet");
  (void)ilse.ask({"new-event", "Harbour Open"});
  take_in(ilse, "Wendelmoor");
  {
    Hosting hosting(ilse, {"--event", "."}, {"stringer"});
    const auto paired = bo.ask({"pair", hosting.codes[0]});
    CHECK(text_at(paired, "/host") == "Ilse's tablet");
    CHECK(text_at(paired, "/agreed") == "true");
    CHECK(size_at(bo.ask({"find", "wendelmoor"}), "") == 1);
    take_in(bo, "Okafor");
    CHECK(text_at(bo.ask({"exchange"}), "/agreed") == "true");
    hosting.program.kill();
  }
  CHECK(size_at(ilse.ask({"find", "okafor"}), "") == 1);
  // The next day, the same two, without a code.
  take_in(ilse, "Kova");
  Hosting hosting(ilse, {"--event", "."}, {});
  CHECK(text_at(bo.ask({"near", "--seconds", "1", "--port", hosting.address.substr(hosting.address.find(':') + 1)}), "/0/known") == "true");
  CHECK(bo.run({"exchange"}).status != 0);  // the port of yesterday
  // Where it is now is told by who is near; words pair anew at an address.
  hosting.program.kill();
  Hosting again(ilse, {"--event", "."}, {"stringer"});
  CHECK(text_at(bo.ask({"pair", again.words[0], "--at", again.address}), "/agreed") == "true");
  CHECK(size_at(bo.ask({"find", "kova"}), "") == 1);
}

TEST_CASE("a colleague's tablet that is only met gets the players that were named, no others, and none without consent") {
  const CliDevice ilse("Ilse's tablet"), bo("Bo's tablet");
  for (const char* family : {"Wendelmoor", "Okafor", "Kova"}) take_in(ilse, family);
  Hosting hosting(ilse, {"--player", "wendelmoor"}, {"stringer"});
  CHECK(text_at(bo.ask({"pair", hosting.codes[0]}), "/agreed") == "true");
  CHECK(size_at(bo.ask({"find", "wendelmoor"}), "") == 1);
  CHECK(bo.run({"find", "okafor"}).status == 4);
  CHECK(bo.run({"find", "kova"}).status == 4);
  hosting.program.kill();

  (void)ilse.ask({"consent", "kova", "withdrawn", "--confirm"});
  const auto refused = ilse.run({"--json", "host", "--listen", "127.0.0.1:0", "--player", "kova", "--seconds", "1"});
  CHECK(refused.status == 1);
  CHECK(text_at(json::parse(refused.out), "/error/code") == "refused");
  CHECK(ilse.run({"host", "--listen", "127.0.0.1:0"}).status != 0);
}
