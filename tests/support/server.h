#pragma once
// The real event server, which can be killed and started again on the same folder and port.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "tests/support/process.h"

namespace weavelog::testing {

class Server {
 public:
  /// Starts it with an invitation for each role. Throws std::runtime_error if it does not come up.
  Server(std::filesystem::path folder, const std::vector<std::string>& roles,
         std::string address = "127.0.0.1");

  /// On the same port, with further invitations, whose codes are then the only ones in codes(). Does nothing
  /// while it runs.
  void start(const std::vector<std::string>& roles = {});
  /// SIGKILL; false if it did not run.
  bool kill();
  /// SIGTERM, and waits; its exit code.
  int stop();

  [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
  [[nodiscard]] const std::vector<std::string>& codes() const { return codes_; }
  [[nodiscard]] std::uint16_t port() const { return port_; }
  [[nodiscard]] pid_t pid() const { return program_ ? program_->pid() : -1; }

 private:
  void run(const std::vector<std::string>& roles);

  std::filesystem::path folder_;
  std::string address_;
  std::uint16_t port_ = 0;
  std::vector<std::string> codes_;
  std::optional<Running> program_;
};

}  // namespace weavelog::testing
