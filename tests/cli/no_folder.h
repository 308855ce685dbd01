#pragma once
// Commands that work on files alone: no folder of a device, no database.

#include "tests/cli/device.h"

namespace weavelog::testing {

struct NoFolder {
  TemporaryFolder home;

  [[nodiscard]] std::string file(const std::string& called, const std::string& content) const {
    std::ofstream(home / called, std::ios::binary) << content;
    return (home / called).string();
  }
  [[nodiscard]] static Finished run(std::vector<std::string> words) {
    words.insert(words.begin(), WEAVELOG_CLI_PROGRAM);
    return run_program(words);
  }
  /// With --json; it has to end so.
  static json::value ask(std::vector<std::string> words, int ending = 0) {
    words.emplace_back("--json");
    const Finished finished = run(words);
    INFO(finished.out << finished.err);
    REQUIRE(finished.status == ending);
    return json::parse(finished.out);
  }
};

}  // namespace weavelog::testing
