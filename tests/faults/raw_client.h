#pragma once
// A client without manners: a TCP connection, TLS on it if wanted, and whatever bytes one likes.

#include <openssl/ssl.h>

#include <chrono>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace weavelog::testing {

class RawClient {
 public:
  /// TCP alone. Throws std::runtime_error if nobody takes it within five seconds. A small window makes a slow
  /// reader slower.
  RawClient(const std::string& address, std::uint16_t port, bool small_window = false);
  ~RawClient();
  RawClient(RawClient&& other) noexcept;
  RawClient& operator=(RawClient&&) = delete;
  RawClient(const RawClient&) = delete;
  RawClient& operator=(const RawClient&) = delete;

  /// The handshake of TLS; false if the other side ends it.
  bool secure();
  /// Asks for the exchange's WebSocket; false if it is not granted.
  bool upgrade();
  /// All of it, or false. Waits at most five seconds for room.
  bool send(std::string_view bytes);
  /// One WebSocket message, masked as RFC 6455, section 5.3 has it.
  bool send_message(std::string_view bytes);
  /// What has come when the other side closes, or when the time is over.
  std::string read_all(std::chrono::milliseconds time);
  /// Takes a few bytes off the connection, at most so many, and keeps them for message(). How many came within the time; nothing at the end.
  std::optional<std::size_t> take(std::size_t most, std::chrono::milliseconds time);
  /// The next whole WebSocket message of what was taken. A ping is answered when it is come upon, which is late where much lies before it.
  std::optional<std::string> message();
  /// The other side has closed, or does so within the time; what comes before is thrown away.
  bool closes_within(std::chrono::milliseconds time);

 private:
  /// Bytes got; 0 at the end, -1 when nothing came in that time.
  long read_some(char* buffer, std::size_t size, std::chrono::milliseconds time);
  bool send_frame(char first, std::string_view bytes);

  struct Free {
    void operator()(SSL_CTX* context) const { SSL_CTX_free(context); }
    void operator()(SSL* ssl) const { SSL_free(ssl); }
  };
  int socket_ = -1;
  std::string taken_, message_;
  std::unique_ptr<SSL_CTX, Free> context_;
  std::unique_ptr<SSL, Free> ssl_;
};

/// The body of GET /health, "" if none came within ten seconds.
[[nodiscard]] std::string health_of(const std::string& address, std::uint16_t port);

}  // namespace weavelog::testing
