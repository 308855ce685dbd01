#pragma once
// What the handlers of a host or guest were told, to wait for and to look at from the test's thread; and raw
// sockets.

#include <arpa/inet.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <stdexcept>
#include <thread>
#include <vector>

#include "sync/net/guest.h"
#include "sync/net/host.h"

namespace weavelog::test {

/// Handlers that record. Everything below the lock; `pipes` are dropped when closed.
class Recorder {
 public:
  [[nodiscard]] PipeHandlers handlers() {
    PipeHandlers out;
    out.opened = [this](const std::shared_ptr<Pipe>& pipe) {
      record([&] {
        pipes.push_back(pipe);
        ++opened;
      });
    };
    out.message = [this](const std::shared_ptr<Pipe>& pipe, Bytes message) {
      record([&] {
        thread = std::this_thread::get_id();
        messages.push_back(message);
      });
      if (echo) pipe->send(std::move(message));
    };
    out.drained = [this](const std::shared_ptr<Pipe>&) { record([&] { ++drained; }); };
    out.closed = [this](const std::shared_ptr<Pipe>& pipe, const std::optional<Fault>& why) {
      record([&] {
        std::erase(pipes, pipe);
        ends.push_back(why);
      });
    };
    out.failed = [this](const Fault& fault) { record([&] { failures.push_back(fault); }); };
    return out;
  }

  /// False if it did not become true in time.
  template <class Condition>
  [[nodiscard]] bool wait(Condition condition, std::chrono::seconds limit = std::chrono::seconds(20)) {
    std::unique_lock lock(mutex);
    return changed.wait_for(lock, limit, condition);
  }
  [[nodiscard]] std::shared_ptr<Pipe> pipe() {
    if (!wait([&] { return !pipes.empty(); })) throw std::runtime_error("no pipe opened");
    const std::lock_guard lock(mutex);
    return pipes.front();
  }

  bool echo = false;
  std::mutex mutex;
  std::condition_variable changed;
  std::vector<std::shared_ptr<Pipe>> pipes;
  std::vector<Bytes> messages;
  std::vector<std::optional<Fault>> ends;
  std::vector<Fault> failures;
  int opened = 0;
  int drained = 0;
  std::thread::id thread;

 private:
  template <class Change>
  void record(Change change) {
    {
      const std::lock_guard lock(mutex);
      change();
    }
    changed.notify_all();
  }
};

/// One certificate for all tests of the program: making one costs.
[[nodiscard]] inline const ServerCertificate& test_certificate() {
  static const ServerCertificate certificate = make_certificate().value();
  return certificate;
}

[[nodiscard]] inline WebHostOptions loopback_host(std::uint16_t port = 0) {
  WebHostOptions out;
  out.address = "127.0.0.1";
  out.port = port;
  out.certificate = test_certificate();
  return out;
}

[[nodiscard]] inline WebGuestOptions guest_of(const WebHost& host) {
  WebGuestOptions out;
  out.address = {"127.0.0.1", host.port()};
  out.pin = host.fingerprint();
  return out;
}

/// A plain TCP connection to a port of this machine; reads give up after ten seconds.
class RawSocket {
 public:
  explicit RawSocket(std::uint16_t port) : fd_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    const timeval patience{10, 0};
    ::setsockopt(fd_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    sockaddr_in to{};
    to.sin_family = AF_INET;
    to.sin_port = htons(port);
    to.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    connected_ = ::connect(fd_, reinterpret_cast<const sockaddr*>(&to), sizeof to) == 0;
  }
  ~RawSocket() { ::close(fd_); }
  RawSocket(const RawSocket&) = delete;
  RawSocket& operator=(const RawSocket&) = delete;

  [[nodiscard]] bool connected() const { return connected_; }
  [[nodiscard]] int fd() const { return fd_; }
  void write(std::string_view bytes) const { (void)!::send(fd_, bytes.data(), bytes.size(), MSG_NOSIGNAL); }
  /// Everything until the other side ends or the patience does; true if it ended.
  [[nodiscard]] bool read_to_end() const {
    char buffer[4096];
    for (;;) {
      const ssize_t n = ::recv(fd_, buffer, sizeof buffer, 0);
      if (n == 0 || (n < 0 && errno == ECONNRESET)) return true;
      if (n < 0) return false;
    }
  }

 private:
  int fd_;
  bool connected_ = false;
};

}  // namespace weavelog::test
