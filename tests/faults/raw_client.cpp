#include "tests/faults/raw_client.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <stdexcept>
#include <utility>

namespace weavelog::testing {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

/// Every blocking call ends after so long.
constexpr timeval kPatience{5, 0};

milliseconds left_until(Clock::time_point end) {
  return std::max(milliseconds(0), std::chrono::duration_cast<milliseconds>(end - Clock::now()));
}

}  // namespace

RawClient::RawClient(const std::string& address, std::uint16_t port, bool small_window)
    : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
  if (socket_ < 0) throw std::runtime_error("no socket");
  // OpenSSL writes to a socket that the other side has closed.
  std::signal(SIGPIPE, SIG_IGN);
  if (small_window) {
    const int bytes = 2048;
    ::setsockopt(socket_, SOL_SOCKET, SO_RCVBUF, &bytes, sizeof bytes);
  }
  for (const int option : {SO_RCVTIMEO, SO_SNDTIMEO})
    ::setsockopt(socket_, SOL_SOCKET, option, &kPatience, sizeof kPatience);
  sockaddr_in to{};
  to.sin_family = AF_INET;
  to.sin_port = htons(port);
  ::inet_pton(AF_INET, address.c_str(), &to.sin_addr);
  if (::connect(socket_, reinterpret_cast<const sockaddr*>(&to), sizeof to) != 0) {
    ::close(socket_);
    throw std::runtime_error("nobody takes a connection");
  }
}

RawClient::~RawClient() {
  ssl_.reset();
  if (socket_ >= 0) ::close(socket_);
}

RawClient::RawClient(RawClient&& other) noexcept
    : socket_(std::exchange(other.socket_, -1)),
      taken_(std::move(other.taken_)),
      message_(std::move(other.message_)),
      context_(std::move(other.context_)),
      ssl_(std::move(other.ssl_)) {}

bool RawClient::secure() {
  context_.reset(SSL_CTX_new(TLS_client_method()));
  SSL_CTX_set_mode(context_.get(), SSL_MODE_RELEASE_BUFFERS);
  ssl_.reset(SSL_new(context_.get()));
  SSL_set_fd(ssl_.get(), socket_);
  return SSL_connect(ssl_.get()) == 1;
}

bool RawClient::upgrade() {
  // The key is the example of RFC 6455, section 1.3.
  if (!send("GET /exchange HTTP/1.1\r\nHost: server\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
            "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\nSec-WebSocket-Version: 13\r\n\r\n"))
    return false;
  std::string answer;
  char byte = 0;
  while (!answer.ends_with("\r\n\r\n") && read_some(&byte, 1, milliseconds(5000)) == 1) answer += byte;
  return answer.starts_with("HTTP/1.1 101");
}

bool RawClient::send(std::string_view bytes) {
  while (!bytes.empty()) {
    const long sent = ssl_ ? SSL_write(ssl_.get(), bytes.data(), static_cast<int>(bytes.size()))
                           : ::send(socket_, bytes.data(), bytes.size(), MSG_NOSIGNAL);
    if (sent <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(sent));
  }
  return true;
}

bool RawClient::send_message(std::string_view bytes) {
  return send_frame('\x82', bytes);
}

bool RawClient::send_frame(char first, std::string_view bytes) {
  std::string frame(1, first);
  // The shortest form of the length, or it is malformed.
  const int wide = bytes.size() < 126 ? 0 : bytes.size() <= 0xffff ? 2 : 8;
  frame += static_cast<char>(0x80 | (wide == 0 ? bytes.size() : wide == 2 ? 126U : 127U));
  for (int shift = 8 * (wide - 1); shift >= 0; shift -= 8) frame += static_cast<char>(bytes.size() >> shift & 0xff);
  frame.append(4, '\0');  // a mask of zeros leaves the bytes as they are
  frame += bytes;
  return send(frame);
}

std::string RawClient::read_all(milliseconds time) {
  const auto end = Clock::now() + time;
  std::string out;
  char buffer[16384];
  while (Clock::now() < end) {
    const long got = read_some(buffer, sizeof buffer, left_until(end));
    if (got == 0) break;
    if (got > 0) out.append(buffer, static_cast<std::size_t>(got));
  }
  return out;
}

std::optional<std::size_t> RawClient::take(std::size_t most, milliseconds time) {
  std::string buffer(most, '\0');
  const long got = read_some(buffer.data(), most, time);
  if (got == 0) return std::nullopt;
  const std::size_t size = got < 0 ? 0 : static_cast<std::size_t>(got);
  taken_.append(buffer, 0, size);
  return size;
}

std::optional<std::string> RawClient::message() {
  constexpr int kBinary = 2, kPing = 9;
  for (;;) {  // RFC 6455, section 5.2; a server masks nothing
    if (taken_.size() < 2) return std::nullopt;
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(taken_[at]); };
    const int kind = byte(0) & 0x0f;
    std::size_t size = byte(1) & 0x7f, head = 2;
    const std::size_t wide = size == 126 ? 2 : size == 127 ? 8 : 0;
    if (taken_.size() < head + wide) return std::nullopt;
    if (wide > 0) size = 0;
    for (; wide > 0 && head < 2 + wide; ++head) size = size << 8 | byte(head);
    if (taken_.size() - head < size) return std::nullopt;
    const std::string part = taken_.substr(head, size);
    const bool last = (byte(0) & 0x80) != 0;
    taken_.erase(0, head + size);
    if (kind == kPing) (void)send_frame('\x8a', part);
    if (kind > kBinary) continue;
    message_ += part;
    if (last) return std::exchange(message_, {});
  }
}

bool RawClient::closes_within(milliseconds time) {
  const auto end = Clock::now() + time;
  char buffer[16384];
  do {
    if (read_some(buffer, sizeof buffer, left_until(end)) == 0) return true;
  } while (Clock::now() < end);
  return false;
}

long RawClient::read_some(char* buffer, std::size_t size, milliseconds time) {
  if (!ssl_ || SSL_pending(ssl_.get()) == 0) {
    pollfd wait{socket_, POLLIN, 0};
    if (::poll(&wait, 1, static_cast<int>(time.count())) <= 0) return -1;
  }
  const long got =
      ssl_ ? SSL_read(ssl_.get(), buffer, static_cast<int>(size)) : ::recv(socket_, buffer, size, 0);
  if (got > 0) return got;
  if (ssl_ && SSL_get_error(ssl_.get(), static_cast<int>(got)) == SSL_ERROR_WANT_READ) return -1;
  return 0;
}

std::string health_of(const std::string& address, std::uint16_t port) {
  try {
    RawClient client(address, port);
    if (!client.secure() || !client.send("GET /health HTTP/1.1\r\nHost: server\r\n\r\n")) return {};
    const std::string answer = client.read_all(milliseconds(10'000));
    const auto body = answer.find("\r\n\r\n");
    return body == std::string::npos ? std::string() : answer.substr(body + 4);
  } catch (const std::runtime_error&) {
    return {};
  }
}

}  // namespace weavelog::testing
