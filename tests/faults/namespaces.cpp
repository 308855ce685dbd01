#include "tests/faults/namespaces.h"

#include <fcntl.h>
#include <sched.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <sstream>
#include <stdexcept>

#include "tests/support/process.h"

namespace weavelog::testing {
namespace {

constexpr const char* kOwnSpace = "/proc/thread-self/ns/net";
/// A station that nobody has: frames to it reach the other end, which drops them.
constexpr const char* kNobody = "02:00:00:00:00:77";

int opened(const char* file) {
  const int descriptor = ::open(file, O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) throw std::runtime_error(std::string(file) + ": " + std::strerror(errno));
  return descriptor;
}

int new_space(int home) {
  if (::unshare(CLONE_NEWNET) != 0)
    throw std::runtime_error(std::string("no network namespace: ") + std::strerror(errno));
  const int made = opened(kOwnSpace);
  if (::setns(home, CLONE_NEWNET) != 0) throw std::runtime_error("no way back from a network namespace");
  return made;
}

/// A command of words parted by spaces, without a shell.
void tool(const std::string& program, const std::string& words) {
  std::vector<std::string> command{program};
  std::istringstream in(words);
  for (std::string word; in >> word;) command.push_back(word);
  const Finished finished = run_program(command);
  if (finished.status != 0) throw std::runtime_error(program + " " + words + ": " + finished.err);
}
void ip(const std::string& words) {
  tool("/usr/sbin/ip", words);
}

}  // namespace

TwoRooms::Inside::Inside(int space) : back_(opened(kOwnSpace)) {
  if (::setns(space, CLONE_NEWNET) != 0) throw std::runtime_error("a network namespace is gone");
}
TwoRooms::Inside::~Inside() {
  ::setns(back_, CLONE_NEWNET);
  ::close(back_);
}

TwoRooms::TwoRooms() : home_(opened(kOwnSpace)) {
  server_ = new_space(home_);
  tablet_ = new_space(home_);
  {
    const Inside here = at_server();
    ip("link set lo up");
    ip("link add desk type veth peer name bench");
    ip("link set bench netns /proc/" + std::to_string(::getpid()) + "/fd/" + std::to_string(tablet_));
    ip(std::string("addr add ") + kServerAddress + "/24 dev desk");
    ip("link set desk up");
  }
  const Inside there = at_tablet();
  ip("link set lo up");
  ip(std::string("addr add ") + kTabletAddress + "/24 dev bench");
  ip("link set bench up");
}

TwoRooms::~TwoRooms() {
  for (const int descriptor : {server_, tablet_, home_})
    if (descriptor >= 0) ::close(descriptor);
}

void TwoRooms::cut() const {
  const Inside here = at_server();
  ip("link set desk down");
}
void TwoRooms::mend() const {
  const Inside here = at_server();
  ip("link set desk up");
}
void TwoRooms::deafen_server(bool deaf) const {
  const Inside here = at_tablet();
  if (deaf) {
    ip(std::string("neigh replace ") + kServerAddress + " lladdr " + kNobody + " dev bench nud permanent");
  } else {
    ip(std::string("neigh del ") + kServerAddress + " dev bench");
  }
}
void TwoRooms::deafen_tablet(bool deaf) const {
  const Inside here = at_server();
  if (deaf) {
    ip(std::string("neigh replace ") + kTabletAddress + " lladdr " + kNobody + " dev desk nud permanent");
  } else {
    ip(std::string("neigh del ") + kTabletAddress + " dev desk");
  }
}
void TwoRooms::slow(int kilobits) const {
  const Inside here = at_server();
  tool("/usr/sbin/tc",
       "qdisc replace dev desk root tbf rate " + std::to_string(kilobits) + "kbit burst 16k latency 200ms");
}

}  // namespace weavelog::testing
