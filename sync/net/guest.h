#pragma once
// WebGuest: a tablet's side of the network. Keeps one pipe to one host.

#include <chrono>
#include <functional>
#include <memory>
#include <optional>

#include "sync/net/pipe.h"
#include "sync/trust/address.h"

namespace weavelog {

struct WebGuestOptions {
  Address address;
  /// The certificate that the host must show; another one is `untrusted`, and nothing is sent to it. Without
  /// a pin (for pairing by spoken words) any is taken, and Pipe::host_fingerprint() says which.
  std::optional<Fingerprint> pin;
  bool reconnect = false;                          ///< try again after every end, until stop()
  std::chrono::milliseconds first_wait{500};       ///< doubles with every failure, with jitter
  std::chrono::milliseconds longest_wait{30'000};  ///< also the wait after a wrong certificate
  PipeLimits limits;
};

/// One I/O thread and one worker thread. Not to be destroyed on its own worker thread.
class WebGuest {
 public:
  /// Returns at once; `opened` or `failed` tell how it went.
  WebGuest(WebGuestOptions options, PipeHandlers handlers);
  /// stop(), and waits for it.
  ~WebGuest();
  WebGuest(const WebGuest&) = delete;
  WebGuest& operator=(const WebGuest&) = delete;

  /// Runs the task on the worker thread, after what waits there. False once the guest has stopped.
  bool post(std::function<void()> task);
  /// Cuts the pause before the next attempt short (the network came back, the person asked). Otherwise does
  /// nothing.
  void retry_now();
  /// Ends the pipe in order (within PipeLimits::close), runs what waits on the worker, and returns when all
  /// is done. Any thread, any number of times; on the worker thread it only begins and does not wait.
  void stop();

 private:
  class Impl;
  std::shared_ptr<Impl> impl_;
};

}  // namespace weavelog
