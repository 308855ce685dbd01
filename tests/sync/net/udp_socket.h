#pragma once
// A plain UDP socket on loopback, beside the code that is tested.

#include <arpa/inet.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <chrono>
#include <optional>
#include <stdexcept>
#include <string>

#include "core/base/bytes.h"

namespace weavelog::test {

class UdpSocket {
 public:
  UdpSocket() : fd_(socket(AF_INET, SOCK_DGRAM | SOCK_CLOEXEC, 0)) {
    sockaddr_in own = loopback(0);
    socklen_t size = sizeof own;
    if (fd_ < 0 || bind(fd_, reinterpret_cast<sockaddr*>(&own), size) != 0 ||
        getsockname(fd_, reinterpret_cast<sockaddr*>(&own), &size) != 0)
      throw std::runtime_error("no UDP socket");
    port_ = ntohs(own.sin_port);
  }
  ~UdpSocket() { close(fd_); }
  UdpSocket(const UdpSocket&) = delete;
  UdpSocket& operator=(const UdpSocket&) = delete;

  [[nodiscard]] std::uint16_t port() const { return port_; }
  void send(std::uint16_t port, ByteView bytes) { send_to(loopback(port), bytes); }
  /// To whom the last datagram came from.
  void reply(ByteView bytes) { send_to(from_, bytes); }
  [[nodiscard]] std::optional<Bytes> receive(std::chrono::milliseconds time) {
    timeval limit{time.count() / 1000, (time.count() % 1000) * 1000};
    setsockopt(fd_, SOL_SOCKET, SO_RCVTIMEO, &limit, sizeof limit);
    Bytes out(2048);
    socklen_t size = sizeof from_;
    const auto got = recvfrom(fd_, out.data(), out.size(), 0, reinterpret_cast<sockaddr*>(&from_), &size);
    if (got < 0) return {};
    out.resize(static_cast<std::size_t>(got));
    return out;
  }

 private:
  static sockaddr_in loopback(std::uint16_t port) {
    sockaddr_in out{};
    out.sin_family = AF_INET;
    out.sin_port = htons(port);
    out.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    return out;
  }
  void send_to(const sockaddr_in& to, ByteView bytes) {
    (void)sendto(fd_, bytes.data(), bytes.size(), 0, reinterpret_cast<const sockaddr*>(&to), sizeof to);
  }

  int fd_;
  std::uint16_t port_ = 0;
  sockaddr_in from_{};
};

/// A number that no UDP socket of this machine has just now.
[[nodiscard]] inline std::uint16_t free_udp_port() {
  return UdpSocket().port();
}

[[nodiscard]] inline bool has_ipv6() {
  const int fd = socket(AF_INET6, SOCK_DGRAM | SOCK_CLOEXEC, 0);
  if (fd >= 0) close(fd);
  return fd >= 0;
}

/// An IPv4 address of this machine on a network that has broadcasts.
[[nodiscard]] inline std::optional<std::string> own_network_address() {
  ifaddrs* first = nullptr;
  if (getifaddrs(&first) != 0) return {};
  std::optional<std::string> out;
  for (const ifaddrs* one = first; one != nullptr && !out; one = one->ifa_next) {
    const unsigned wanted = IFF_UP | IFF_BROADCAST;
    if (one->ifa_addr == nullptr || one->ifa_addr->sa_family != AF_INET ||
        (one->ifa_flags & wanted) != wanted)
      continue;
    char text[INET_ADDRSTRLEN] = {};
    const auto* address = reinterpret_cast<const sockaddr_in*>(one->ifa_addr);
    if (inet_ntop(AF_INET, &address->sin_addr, text, sizeof text) != nullptr) out = text;
  }
  freeifaddrs(first);
  return out;
}

}  // namespace weavelog::test
