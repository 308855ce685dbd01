#pragma once
// BoardHost: pages for everybody on the local network, over plain HTTP (RFC 9110, 9112). Read only: GET and HEAD of / and /board.json; what
// they say is made by whoever starts it. It holds no secret and takes nothing in.

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/language.h"
#include "core/base/outcome.h"

namespace weavelog {

/// The board in one language, UTF-8.
struct BoardPages {
  std::string html;
  std::string json;
  std::string etag;  ///< of the JSON, in quotes (RFC 9110, 8.8.3)
};

struct BoardLimits {
  std::size_t connections = 1024;              ///< a further one takes the place of the one that has been waiting longest
  std::chrono::milliseconds request{30'000};   ///< from one answer to the whole header of the next request
  std::chrono::milliseconds answer{10'000};    ///< for taking an answer
  std::chrono::milliseconds render{4'000};     ///< for making one; then 503
  std::chrono::milliseconds keep{1'000};       ///< as long is a page served as it is
  int requests_per_second = 2'000;             ///< of all; what is more waits
  int requests_per_connection = 20;            ///< a second; what is more waits
  int connections_per_second = 1'000;          ///< what is more waits
};

struct BoardHostOptions {
  std::string address = "0.0.0.0";  ///< an IPv4 or IPv6 address of this machine; "::" listens on both kinds
  std::uint16_t port = 0;           ///< 0: any free one
  std::vector<Language> languages;  ///< that there are, the first for who asks for none of them
  std::string policy;               ///< Content-Security-Policy of the page
  /// Called on the worker thread, for each language at most once in BoardLimits::keep, and only if somebody asks.
  std::function<Outcome<BoardPages>(const Language&)> render;
  BoardLimits limits;
};

/// One I/O thread and one worker thread of its own, so that the exchange does not wait for who looks, nor they for it.
class BoardHost {
 public:
  /// Listens when this returns. Faults: locked (the port is taken), bad_input (address), refused (rights), io.
  [[nodiscard]] static Outcome<std::unique_ptr<BoardHost>> start(BoardHostOptions options);
  /// Ends all connections and waits for both threads. Not on its own worker thread.
  ~BoardHost();
  BoardHost(const BoardHost&) = delete;
  BoardHost& operator=(const BoardHost&) = delete;

  [[nodiscard]] std::uint16_t port() const;
  [[nodiscard]] std::size_t connections() const;
  /// How often a page was made so far.
  [[nodiscard]] std::uint64_t renders() const;

 private:
  class Impl;
  explicit BoardHost(std::shared_ptr<Impl> impl);
  std::shared_ptr<Impl> impl_;
};

}  // namespace weavelog
