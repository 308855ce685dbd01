#pragma once
// The real event server on loopback.

#include "tests/cli/device.h"

namespace weavelog::testing {

/// A server on a free port, with an invitation for each role named.
struct EventServer {
  TemporaryFolder folder;
  Running program;
  std::string address, port, fingerprint;

  explicit EventServer(const std::string& event, const std::vector<std::string>& roles,
                       const std::vector<std::string>& more = {})
      : program(command(folder, event, roles, more)) {
    const auto listening = next();
    port = text_at(listening, "/port");
    address = "127.0.0.1:" + port;
    fingerprint = text_at(listening, "/fingerprint");
    for (std::size_t i = 0; i < roles.size(); ++i) {
      const auto invitation = next();
      codes.push_back(text_at(invitation, "/code"));
      words.push_back(text_at(invitation, "/words"));
    }
  }
  std::vector<std::string> codes, words;

 private:
  static std::vector<std::string> command(const TemporaryFolder& folder, const std::string& event,
                                          const std::vector<std::string>& roles,
                                          const std::vector<std::string>& more) {
    std::vector<std::string> words{WEAVELOG_SERVER_PROGRAM,
                                   "--data",
                                   folder.path().string() + "/data",
                                   "--listen",
                                   "127.0.0.1:0",
                                   "--event",
                                   event,
                                   "--json",
                                   "--quiet"};
    for (const auto& role : roles) words.insert(words.end(), {"--invite", role});
    words.insert(words.end(), more.begin(), more.end());
    return words;
  }
  json::value next() {
    const auto line = program.line();
    REQUIRE(line);
    return json::parse(*line);
  }
};

}  // namespace weavelog::testing
