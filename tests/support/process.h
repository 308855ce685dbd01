#pragma once
// Real programs as children of a test: run to the end, or kept running; killed without mercy where the test says so, and
// when the test itself is killed.

#include <sys/types.h>

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace weavelog::testing {

struct Finished {
  int status = 0;  ///< exit code; 128 + number if a signal ended it
  std::string out;
  std::string err;
};

/// Runs a program with the text as its standard input. SIGKILL after `kill_after`, if given; otherwise after two minutes.
[[nodiscard]] Finished run_program(const std::vector<std::string>& command, const std::string& input = {},
                                   std::optional<std::chrono::milliseconds> kill_after = {});

/// A child that keeps running; SIGKILL when this goes, and when the thread that started it ends.
class Running {
 public:
  explicit Running(const std::vector<std::string>& command);
  ~Running();
  Running(const Running&) = delete;
  Running& operator=(const Running&) = delete;

  /// The next line of its standard output, without the line end; nothing after `time` or at its end.
  [[nodiscard]] std::optional<std::string> line(std::chrono::milliseconds time = std::chrono::seconds(20));
  /// SIGKILL, and waits.
  void kill();
  /// SIGTERM, and waits; its exit code.
  int stop();
  [[nodiscard]] pid_t pid() const { return pid_; }

 private:
  int reap(int signal);
  pid_t pid_ = -1;
  int out_ = -1;
  std::string pending_;
};

}  // namespace weavelog::testing
