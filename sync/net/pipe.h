#pragma once
// A duplex pipe of whole messages between two devices: binary WebSocket messages over TLS 1.3.

#include <chrono>
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "core/base/bytes.h"
#include "core/base/outcome.h"
#include "sync/trust/certificate.h"

namespace weavelog {

struct PipeLimits {
  using Time = std::chrono::milliseconds;
  std::size_t message = 1 << 20;             ///< bytes of one message, both ways
  std::size_t untrusted_message = 64 << 10;  ///< the same on the way in until trust() is called
  std::size_t outbound = 8 << 20;            ///< bytes that wait to be sent; more than that closes the pipe
  std::size_t outbound_high = 1 << 20;       ///< writable() is false above this
  std::size_t outbound_low = 256 << 10;      ///< and `drained` is called when the queue falls to this
  std::size_t unhandled = 256 << 10;         ///< nothing more is read while this much waits for the worker
  Time handshake{10'000};                    ///< from connecting to open, and for one HTTP request
  Time proof{60'000};                        ///< from open to trust(); later the pipe is closed
  Time idle{60'000};                         ///< silence, pings unanswered; a ping is sent after half of it
  Time close{3'000};                         ///< for an orderly end; then the connection is cut
};

/// Thread-safe. Kept by whoever likes, even after its host or guest is gone.
class Pipe {
 public:
  virtual ~Pipe() = default;
  /// Queues a message. Dropped silently once the pipe is closing. A queue over PipeLimits::outbound closes
  /// the pipe. Throws std::logic_error for a message over PipeLimits::message.
  virtual void send(Bytes message) = 0;
  /// False while so much is queued that a well-behaved sender waits for `drained`.
  [[nodiscard]] virtual bool writable() const = 0;
  /// The peer has proved who it is: messages of full size are taken and the time limit for the proof ends. A
  /// guest's pipe to a pinned host is trusted from the start.
  virtual void trust() = 0;
  /// Sends what is queued, then ends in order. With a fault its code and message (about 100 bytes of it) go
  /// to the peer, whose `closed` gets them; ours gets the same fault. Nothing more is handed to `message`
  /// afterwards. Never blocks.
  virtual void close(std::optional<Fault> why = {}) = 0;
  /// The message that will be handed over after the present one, if it has come: for who can do some of its work before its turn. On the
  /// worker thread, inside PipeHandlers::message, and valid until that returns; empty if there is none.
  [[nodiscard]] virtual ByteView next_message() const = 0;
  /// SHA-256 of the host's certificate: as host our own, as guest the one that was shown to us.
  [[nodiscard]] virtual const Fingerprint& host_fingerprint() const = 0;
  /// The peer's address and port, for people.
  [[nodiscard]] virtual const std::string& remote() const = 0;
};

/// All are called on the worker thread of the host or guest, in order for each pipe. An exception out of one
/// closes its pipe. Any may be left empty.
struct PipeHandlers {
  std::function<void(const std::shared_ptr<Pipe>&)> opened;
  std::function<void(const std::shared_ptr<Pipe>&, Bytes)> message;
  /// The queue fell to PipeLimits::outbound_low after writable() had become false.
  std::function<void(const std::shared_ptr<Pipe>&)> drained;
  /// The last call for a pipe that was opened, exactly once. No fault: an orderly end by either side.
  std::function<void(const std::shared_ptr<Pipe>&, const std::optional<Fault>&)> closed;
  /// Guests only: an attempt to connect did not come to `opened`.
  std::function<void(const Fault&)> failed;
};

}  // namespace weavelog
