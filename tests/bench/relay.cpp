#include "tests/bench/relay.h"

#include <arpa/inet.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <map>
#include <stdexcept>
#include <vector>

namespace weavelog::bench {
namespace {

sockaddr_in loopback(std::uint16_t port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  return address;
}

/// The one place where the sockets' own address type is needed.
const sockaddr* as_address(const sockaddr_in& address) {
  return reinterpret_cast<const sockaddr*>(&address);
}

int no_delay(int socket) {
  const int on = 1;
  ::setsockopt(socket, IPPROTO_TCP, TCP_NODELAY, &on, sizeof on);
  return socket;
}

bool send_all(int to, const std::uint8_t* data, std::size_t size) {
  while (size > 0) {
    const ssize_t sent = ::send(to, data, size, MSG_NOSIGNAL);
    if (sent <= 0) return false;
    data += sent;
    size -= static_cast<std::size_t>(sent);
  }
  return true;
}

}  // namespace

Relay::Relay(std::uint16_t port) : target_(port), listener_(::socket(AF_INET, SOCK_STREAM, 0)) {
  sockaddr_in address = loopback(0);
  socklen_t size = sizeof address;
  if (listener_ < 0 || ::bind(listener_, as_address(address), size) != 0 || ::listen(listener_, 16) != 0 ||
      ::getsockname(listener_, reinterpret_cast<sockaddr*>(&address), &size) != 0)
    throw std::runtime_error("the relay can't listen");
  port_ = ntohs(address.sin_port);
  thread_ = std::thread([this] { serve(); });
}

Relay::~Relay() {
  ends_ = true;
  thread_.join();
  ::close(listener_);
}

void Relay::serve() {
  std::map<int, int> other;  // both ends of every connection
  std::array<std::uint8_t, 64 * 1024> buffer{};
  while (!ends_) {
    std::vector<pollfd> waiting{{listener_, POLLIN, 0}};
    for (const auto& [from, to] : other) waiting.push_back({from, POLLIN, 0});
    if (::poll(waiting.data(), waiting.size(), 50) <= 0) continue;
    for (const pollfd& one : waiting) {
      if (one.revents == 0) continue;
      if (one.fd == listener_) {
        const int from = no_delay(::accept(listener_, nullptr, nullptr));
        const int to = no_delay(::socket(AF_INET, SOCK_STREAM, 0));
        const sockaddr_in address = loopback(target_);
        if (from < 0 || ::connect(to, as_address(address), sizeof address) != 0) {
          ::close(from);
          ::close(to);
          continue;
        }
        other[from] = to;
        other[to] = from;
        continue;
      }
      const auto found = other.find(one.fd);
      if (found == other.end()) continue;
      const ssize_t got = ::recv(one.fd, buffer.data(), buffer.size(), 0);
      if (got > 0 && send_all(found->second, buffer.data(), static_cast<std::size_t>(got))) {
        bytes_ += static_cast<std::uint64_t>(got);
        continue;
      }
      const int to = found->second;
      other.erase(one.fd);
      other.erase(to);
      ::close(one.fd);
      ::close(to);
    }
  }
  for (const auto& [from, to] : other) ::close(from);
}

}  // namespace weavelog::bench
