#pragma once
// One device of a test: a folder, and the real program run on it.

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <fstream>
#include <string>
#include <vector>

#include "tests/support/process.h"
#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

namespace json = boost::json;

struct CliDevice {
  TemporaryFolder home;
  std::string name;

  explicit CliDevice(std::string called) : name(std::move(called)) {}

  [[nodiscard]] std::string data() const { return (home / "data").string(); }

  /// Runs a command as it stands.
  [[nodiscard]] Finished run(const std::vector<std::string>& words, const std::string& input = {}) const {
    std::vector<std::string> command{WEAVELOG_CLI_PROGRAM, "--data", data(), "--device", name};
    command.insert(command.end(), words.begin(), words.end());
    return run_program(command, input);
  }
  /// Runs a command with --json, which has to end so, and gives its document.
  [[nodiscard]] json::value ask(const std::vector<std::string>& words, int ending = 0,
                                const std::string& input = {}) const {
    std::vector<std::string> command{"--json"};
    command.insert(command.end(), words.begin(), words.end());
    const Finished finished = run(command, input);
    INFO(name << ": " << words.front() << ": " << finished.out << finished.err);
    REQUIRE(finished.status == ending);
    boost::system::error_code error;
    json::value document = json::parse(finished.out, error);
    REQUIRE_FALSE(error);
    return document;
  }
  [[nodiscard]] std::string file(const std::string& called, const std::string& content) const {
    std::ofstream(home / called, std::ios::binary) << content;
    return (home / called).string();
  }
};

[[nodiscard]] inline std::string text_at(const json::value& document, const std::string& pointer) {
  boost::system::error_code error;
  const json::value* found = document.find_pointer(pointer, error);
  if (found == nullptr) FAIL("no " << pointer << " in " << json::serialize(document));
  return found->is_string() ? std::string(found->get_string()) : json::serialize(*found);
}
[[nodiscard]] inline std::size_t size_at(const json::value& document, const std::string& pointer) {
  boost::system::error_code error;
  const json::value* found = pointer.empty() ? &document : document.find_pointer(pointer, error);
  if (found == nullptr || !found->is_array())
    FAIL("no list " << pointer << " in " << json::serialize(document));
  return found->get_array().size();
}

/// Four rackets of a player who is new to the desk, everything asked.
[[nodiscard]] inline std::string first_hand_over() {
  return R"({"player": {"family_name": "Wendelmoor", "given_name": "Ilse", "country": "NED", "birth_year": 2002,
    "language": "fr", "tension_unit": "kg"},
    "agreed": {"mains_string": "Tarnbrook Silk", "mains_gauge": "1.25", "mains_supply": "reel", "mains_owner": "player",
      "mains_tension": "25 kg", "mains_prestretch": "10", "crosses_string": "Velmora Round",
      "crosses_gauge": {"amount": "1.23", "unit": "mm"}, "crosses_supply": "set", "crosses_owner": "room",
      "crosses_tension": "24", "pieces": 2, "knots": 4, "racket_stencil": "open ring", "racket_ink": "red",
      "string_stencil": "bar", "string_ink": "black", "dampener": "round", "note": "knots to the outside"},
    "keep_as": "day", "ready_by": "+180",
    "rackets": ["1", "2", {"label": "3", "maker": "Orrin"}, {"label": "4", "agreed": {"crosses_tension": "23.5 kg"}}]})";
}

}  // namespace weavelog::testing
