#pragma once
// Private to sync/net: the one thread that runs an I/O context.

#include <spdlog/spdlog.h>

#include <boost/asio/io_context.hpp>
#include <exception>
#include <memory>
#include <thread>

namespace weavelog {

/// Runs the context until it has nothing left to do; the destructor waits for that.
class IoThread {
 public:
  explicit IoThread(std::shared_ptr<boost::asio::io_context> io)
      : thread_([io = std::move(io)] {
          for (;;) {
            try {
              io->run();
              return;
            } catch (const std::exception& error) {
              // Out of memory in one connection must not end the others.
              spdlog::error("the network thread goes on after: {}", error.what());
            }
          }
        }) {}
  ~IoThread() { thread_.join(); }
  IoThread(const IoThread&) = delete;
  IoThread& operator=(const IoThread&) = delete;

 private:
  std::thread thread_;
};

}  // namespace weavelog
