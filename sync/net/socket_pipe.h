#pragma once
// Private to sync/net: a pipe over one TCP socket. Only socket_pipe.cpp knows Beast.

#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/ssl/context.hpp>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "sync/net/pipe.h"
#include "sync/net/worker.h"
#include "sync/trust/address.h"

namespace weavelog {

class SocketPipe;

/// What all pipes of one host or guest share.
struct PipeShare {
  /// Run by one thread only, which so is the strand of every pipe. Owned by the pipes too, which may outlive
  /// the host.
  std::shared_ptr<boost::asio::io_context> io;
  std::shared_ptr<boost::asio::ssl::context> tls;
  std::shared_ptr<Worker> worker;
  PipeLimits limits;
  PipeHandlers handlers;
  std::function<std::string()> health;  ///< hosts only
  Fingerprint own_fingerprint{};        ///< hosts only
  /// On the I/O thread, once for each pipe that was started, when its connection is gone; it may never have
  /// opened.
  std::function<void(const std::shared_ptr<SocketPipe>&, bool was_open, const std::optional<Fault>&)> gone;
};

/// All but Pipe's own methods: on the I/O thread.
class SocketPipe : public Pipe {
 public:
  virtual void start() = 0;
  /// An orderly end if the pipe is open, else the connection is cut.
  virtual void end() = 0;
  /// At once, without a word to the peer.
  virtual void cut(const Fault& why) = 0;
  /// Whether trust() was called, or it is a guest's.
  [[nodiscard]] virtual bool trusted() const = 0;
};

/// For a connection that a host accepted.
[[nodiscard]] std::shared_ptr<SocketPipe> make_host_pipe(boost::asio::ip::tcp::socket socket,
                                                         std::shared_ptr<const PipeShare> share);
/// For a connection that a guest made.
[[nodiscard]] std::shared_ptr<SocketPipe> make_guest_pipe(boost::asio::ip::tcp::socket socket,
                                                          std::shared_ptr<const PipeShare> share,
                                                          const Address& address,
                                                          const std::optional<Fingerprint>& pin);

/// What an error of the network means to a person.
[[nodiscard]] Fault network_fault(const boost::system::error_code& error, const std::string& where);

}  // namespace weavelog
