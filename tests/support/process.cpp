#include "tests/support/process.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <stdexcept>
#include <thread>

#include "tests/support/temporary_folder.h"

namespace weavelog::testing {
namespace {

using Clock = std::chrono::steady_clock;

/// Starts the program with these descriptors; -1 leaves one as it is.
pid_t start(const std::vector<std::string>& command, int in, int out, int err) {
  std::vector<char*> arguments;
  for (const auto& word : command) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  const pid_t pid = ::fork();
  if (pid < 0) throw std::runtime_error("no child");
  if (pid == 0) {
    // A test that is killed itself leaves no children behind.
    ::prctl(PR_SET_PDEATHSIG, SIGKILL);
    if (in >= 0) ::dup2(in, 0);
    if (out >= 0) ::dup2(out, 1);
    if (err >= 0) ::dup2(err, 2);
    ::execv(arguments[0], arguments.data());
    ::_exit(127);
  }
  return pid;
}

std::string content(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

int exit_code(int status) { return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status); }

}  // namespace

Finished run_program(const std::vector<std::string>& command, const std::string& input,
                     std::optional<std::chrono::milliseconds> kill_after) {
  TemporaryFolder folder;
  std::ofstream(folder / "in", std::ios::binary) << input;
  const int in = ::open((folder / "in").c_str(), O_RDONLY | O_CLOEXEC);
  const int out = ::open((folder / "out").c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600);
  const int err = ::open((folder / "err").c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600);
  const pid_t pid = start(command, in, out, err);
  for (const int descriptor : {in, out, err}) ::close(descriptor);
  const auto end = Clock::now() + kill_after.value_or(std::chrono::minutes(2));
  int status = 0;
  while (::waitpid(pid, &status, WNOHANG) == 0) {
    if (Clock::now() >= end) {
      ::kill(pid, SIGKILL);
      ::waitpid(pid, &status, 0);
      break;
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  }
  return {exit_code(status), content(folder / "out"), content(folder / "err")};
}

Running::Running(const std::vector<std::string>& command) {
  int ends[2];
  if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
  pid_ = start(command, -1, ends[1], -1);
  ::close(ends[1]);
  out_ = ends[0];
}

Running::~Running() {
  kill();
  ::close(out_);
}

std::optional<std::string> Running::line(std::chrono::milliseconds time) {
  const auto end = Clock::now() + time;
  for (;;) {
    const auto at = pending_.find('\n');
    if (at != std::string::npos) {
      std::string found = pending_.substr(0, at);
      pending_.erase(0, at + 1);
      return found;
    }
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now()).count();
    if (left <= 0) return std::nullopt;
    pollfd wait{out_, POLLIN, 0};
    if (::poll(&wait, 1, static_cast<int>(left)) <= 0) continue;
    char buffer[4096];
    const ssize_t got = ::read(out_, buffer, sizeof buffer);
    if (got <= 0) return std::nullopt;
    pending_.append(buffer, static_cast<std::size_t>(got));
  }
}

int Running::reap(int signal) {
  if (pid_ < 0) return 0;
  ::kill(pid_, signal);
  int status = 0;
  ::waitpid(pid_, &status, 0);
  pid_ = -1;
  return exit_code(status);
}

void Running::kill() { reap(SIGKILL); }
int Running::stop() { return reap(SIGTERM); }

}  // namespace weavelog::testing
