#pragma once
// Counts what crosses between a guest and a host on loopback: TCP in the middle, TLS passes through
// untouched.

#include <atomic>
#include <cstdint>
#include <thread>

namespace weavelog::bench {

class Relay {
 public:
  /// Listens on a free port of 127.0.0.1 and passes every connection on to `port`.
  explicit Relay(std::uint16_t port);
  ~Relay();
  Relay(const Relay&) = delete;
  Relay& operator=(const Relay&) = delete;

  [[nodiscard]] std::uint16_t port() const { return port_; }
  /// Payload bytes both ways since the last call, TLS handshake included.
  [[nodiscard]] std::uint64_t take_bytes() { return bytes_.exchange(0); }

 private:
  void serve();

  std::uint16_t target_;
  std::uint16_t port_ = 0;
  int listener_ = -1;
  std::atomic<std::uint64_t> bytes_{0};
  std::atomic<bool> ends_{false};
  std::thread thread_;
};

}  // namespace weavelog::bench
