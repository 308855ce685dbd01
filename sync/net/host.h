#pragma once
// WebHost: the event server's side of the network. TLS 1.3 only; pipes at WebSocket path /exchange; GET
// /health.

#include <cstdint>
#include <functional>
#include <memory>
#include <string>

#include "core/base/outcome.h"
#include "sync/net/pipe.h"
#include "sync/trust/address.h"
#include "sync/trust/certificate.h"

namespace weavelog {

struct WebHostOptions {
  std::string address = "0.0.0.0";    ///< an IPv4 or IPv6 address of this machine; "::" listens on both kinds
  std::uint16_t port = kDefaultPort;  ///< 0: any free one
  ServerCertificate certificate;
  PipeLimits limits;
  std::size_t max_connections = 1536;  ///< a further one takes the place of the oldest stranger, or is cut
  /// How many may be here that did not prove who they are: a further one takes the place of the oldest of them,
  /// so that who connects and keeps silent shuts nobody out.
  std::size_t max_strangers = 512;
  /// JSON for GET /health, called on the worker thread. While that is busy for over 5 s, /health says 503 and
  /// "busy".
  std::function<std::string()> health;
};

/// One I/O thread and one worker thread. Not to be destroyed on its own worker thread.
class WebHost {
 public:
  /// Listens when this returns. Faults: locked (the port is taken), bad_input (address), refused (rights),
  /// untrusted (certificate), io.
  [[nodiscard]] static Outcome<std::unique_ptr<WebHost>> start(WebHostOptions options, PipeHandlers handlers);
  /// stop(), and waits for it.
  ~WebHost();
  WebHost(const WebHost&) = delete;
  WebHost& operator=(const WebHost&) = delete;

  [[nodiscard]] std::uint16_t port() const;
  [[nodiscard]] const Fingerprint& fingerprint() const;
  /// Connections of every kind, those still in their handshake too.
  [[nodiscard]] std::size_t connections() const;
  /// Runs the task on the worker thread, after what waits there. False once the host has stopped.
  bool post(std::function<void()> task);
  /// Listens no more, ends all pipes in order (each within PipeLimits::close), runs what waits on the worker,
  /// and returns when all is done. Any thread, any number of times; on the worker thread it only begins and
  /// does not wait.
  void stop();

 private:
  class Impl;
  explicit WebHost(std::shared_ptr<Impl> impl);
  std::shared_ptr<Impl> impl_;
};

}  // namespace weavelog
