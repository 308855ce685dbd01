#include "sync/net/socket_pipe.h"

#include <openssl/ssl.h>
#include <openssl/x509.h>
#include <spdlog/spdlog.h>

#include <algorithm>
#include <atomic>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/core/tcp_stream.hpp>
#include <boost/beast/http.hpp>
#include <boost/beast/ssl/ssl_stream.hpp>
#include <boost/beast/websocket.hpp>
#include <boost/beast/websocket/ssl.hpp>
#include <deque>
#include <mutex>
#include <stdexcept>

#include "core/base/utf8.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
namespace websocket = beast::websocket;
using Error = boost::system::error_code;
using Stream = websocket::stream<beast::ssl_stream<beast::tcp_stream>>;

constexpr std::string_view kExchangePath = "/exchange";
constexpr std::string_view kHealthPath = "/health";
constexpr std::uint32_t kMaxRequestHeader = 8 * 1024;
constexpr std::chrono::seconds kHealthPatience{5};
/// RFC 6455, section 5.5: a control frame carries 125 bytes, two of them the code.
constexpr std::size_t kMaxCloseReason = 123;
/// What a waiting message costs beside its bytes, so that a flood of empty ones is bounded too.
constexpr std::size_t kMessageCost = 256;
constexpr std::size_t kPiece = 64 * 1024;
/// Buffers that grew beyond this for a large message are given back after it.
constexpr std::size_t kKeptBuffer = 64 * 1024;

websocket::close_reason close_reason_of(const std::optional<Fault>& why) {
  if (!why) return websocket::close_code::normal;
  std::string text = name_of(why->code) + std::string(": ") + why->what;
  // A hint that fits only in part is none.
  if (!why->what_to_do.empty() && text.size() + 2 + why->what_to_do.size() <= kMaxCloseReason) text += "; " + why->what_to_do;
  if (text.size() > kMaxCloseReason) {
    constexpr std::string_view kMore = " ...";
    text.resize(std::min(text.rfind(' ', kMaxCloseReason - kMore.size()), kMaxCloseReason - kMore.size()));
    if (const auto bad = first_invalid_utf8(text)) text.resize(*bad);
    text += kMore;
  }
  return {websocket::close_code::policy_error, text};
}

std::optional<Fault> fault_in(const websocket::close_reason& reason, const std::string& remote) {
  switch (reason.code) {
    case websocket::close_code::normal:
    case websocket::close_code::going_away:
      return {};
    case websocket::close_code::policy_error:
      break;
    default:
      return Fault{FaultCode::io,
                   "the other side ended the connection with code " + std::to_string(reason.code), remote,
                   "try again"};
  }
  std::string text(reason.reason.data(), reason.reason.size());
  for (char& c : text) {
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
  }
  Fault out{FaultCode::refused, text, remote, ""};
  for (int code = 0; code <= static_cast<int>(FaultCode::clock); ++code) {
    const std::string prefix = std::string(name_of(static_cast<FaultCode>(code))) + ": ";
    if (!text.starts_with(prefix)) continue;
    out.code = static_cast<FaultCode>(code);
    out.what = text.substr(prefix.size());
  }
  if (const auto parted = out.what.find("; "); parted != std::string::npos) {
    out.what_to_do = out.what.substr(parted + 2);
    out.what.resize(parted);
  }
  return out;
}

class WebPipe final : public SocketPipe, public std::enable_shared_from_this<WebPipe> {
  /// Wraps the completion of an operation on the stream: keeps the pipe alive and counts, since the stream
  /// may only be destroyed when none is under way.
  template <class Completion>
  auto operation(Completion completion) {
    ++operations_;
    return [self = shared_from_this(), completion = std::move(completion)](auto&&... results) {
      --self->operations_;
      completion(results...);
      self->release_when_idle();
    };
  }

 public:
  WebPipe(asio::ip::tcp::socket socket, std::shared_ptr<const PipeShare> share, std::optional<Address> host,
          const std::optional<Fingerprint>& pin)
      : share_(std::move(share)), host_(std::move(host)), pin_(pin), deadline_(*share_->io) {
    Error ignored;
    const auto endpoint = socket.remote_endpoint(ignored);
    remote_ = Address{endpoint.address().to_string(), endpoint.port()}.text();
    fingerprint_ = share_->own_fingerprint;
    socket.set_option(asio::ip::tcp::no_delay(true), ignored);
    stream_.emplace(std::move(socket), *share_->tls);
  }

  // --- Pipe: any thread

  void send(Bytes message) override {
    if (message.size() > share_->limits.message)
      throw std::logic_error("Pipe::send: the message is over the limit");
    bool overrun = false;
    {
      const std::lock_guard lock(mutex_);
      if (closing_ || ended_) return;
      overrun = queued_ + message.size() > share_->limits.outbound;
      if (!overrun) {
        queued_ += message.size();
        if (queued_ > share_->limits.outbound_high) full_ = true;
        queue_.push_back(std::move(message));
        wake_writer();
        return;
      }
      for (const auto& waiting : queue_) queued_ -= waiting.size();
      queue_.clear();
    }
    close(Fault{FaultCode::io, "the other side takes messages too slowly", remote_, "check its network"});
  }

  [[nodiscard]] bool writable() const override {
    const std::lock_guard lock(mutex_);
    return !closing_ && !ended_ && queued_ <= share_->limits.outbound_high;
  }

  void trust() override {
    post([self = shared_from_this()] {
      if (self->done_ || self->trusted_) return;
      self->trusted_ = true;
      self->message_limit_ = self->share_->limits.message;
      if (self->open_ && !self->closing()) self->disarm();
    });
  }

  void close(std::optional<Fault> why) override {
    const std::lock_guard lock(mutex_);
    if (closing_ || ended_) return;
    closing_ = true;
    why_ = std::move(why);
    asio::post(*share_->io, [self = shared_from_this()] {
      if (self->done_) return;
      self->arm(self->share_->limits.close, std::nullopt);
    });
    wake_writer();
  }

  [[nodiscard]] ByteView next_message() const override {
    const std::lock_guard lock(mutex_);
    return inbox_.empty() ? ByteView{} : ByteView{inbox_.front()};
  }
  [[nodiscard]] const Fingerprint& host_fingerprint() const override { return fingerprint_; }
  [[nodiscard]] const std::string& remote() const override { return remote_; }

  // --- SocketPipe: the I/O thread, as is everything below

  void start() override {
    arm(share_->limits.handshake, Fault{FaultCode::io, "the connection did not open in time", remote_,
                                        "check the address and the network"});
    const auto side = host_ ? asio::ssl::stream_base::client : asio::ssl::stream_base::server;
    stream_->next_layer().async_handshake(side, operation([this](Error error) {
                                            if (done_) return;
                                            if (error) return finish(handshake_fault(error));
                                            if (host_) {
                                              greet_host();
                                            } else {
                                              read_request();
                                            }
                                          }));
  }

  void end() override {
    if (open_) return close({});
    cut(Fault{FaultCode::io, "the connection was ended before it opened", remote_, ""});
  }

  void cut(const Fault& why) override { finish(why); }

  [[nodiscard]] bool trusted() const override { return trusted_; }

 private:
  template <class Task>
  void post(Task task) {
    const std::lock_guard lock(mutex_);
    // Once it has ended, nobody may run the I/O context any more, and a task left in it would own us for
    // ever.
    if (!ended_) asio::post(*share_->io, std::move(task));
  }

  /// With the lock held.
  void wake_writer() {
    if (writing_) return;
    writing_ = true;
    asio::post(*share_->io, [self = shared_from_this()] { self->write_next(); });
  }

  [[nodiscard]] bool closing() const {
    const std::lock_guard lock(mutex_);
    return closing_;
  }

  [[nodiscard]] beast::tcp_stream& socket() { return beast::get_lowest_layer(*stream_); }

  // --- time limits

  void arm(std::chrono::milliseconds time, std::optional<Fault> fault) {
    const auto round = ++deadline_round_;
    deadline_.expires_after(time);
    deadline_.async_wait([self = shared_from_this(), round, fault = std::move(fault)](Error error) {
      if (!error && round == self->deadline_round_ && !self->done_) self->finish(fault);
    });
  }
  void disarm() {
    ++deadline_round_;
    deadline_.cancel();
  }

  // --- becoming open, as guest

  void greet_host() {
    X509* const shown = SSL_get1_peer_certificate(stream_->next_layer().native_handle());
    unsigned size = 0;
    const bool known = shown != nullptr && X509_digest(shown, EVP_sha256(), fingerprint_.data(), &size) == 1;
    X509_free(shown);
    // The chain and the dates mean nothing here; that the server holds the key, the TLS handshake has proved.
    if (!known || (pin_ && *pin_ != fingerprint_)) {
      return finish(Fault{
          FaultCode::untrusted, "the server shows another certificate than the one it was paired with",
          remote_,
          "check that this is the right server and network; if the server was set up anew, pair again"});
    }
    prepare_stream();
    stream_->async_handshake(
        host_->text(), std::string(kExchangePath), operation([this](Error error) {
          if (done_) return;
          if (error == websocket::error::upgrade_declined) {
            return finish(Fault{FaultCode::refused, "the server takes no exchange at this address", remote_,
                                "check the port, and that both run the same version"});
          }
          if (error) return finish(network_fault(error, remote_));
          opened();
        }));
  }

  // --- becoming open, as host

  void read_request() {
    parser_.emplace();
    parser_->header_limit(kMaxRequestHeader);
    http::async_read_header(
        stream_->next_layer(), buffer_, *parser_, operation([this](Error error, std::size_t) {
          if (done_) return;
          if (error) return finish(network_fault(error, remote_));
          const auto& request = parser_->get();
          const std::string_view target(request.target().data(), request.target().size());
          if (websocket::is_upgrade(request) && target == kExchangePath) return accept_exchange();
          if (request.method() == http::verb::get && target == kHealthPath && share_->health)
            return ask_health();
          respond(http::status::not_found, "text/plain", "There is nothing here.\n");
        }));
  }

  void accept_exchange() {
    prepare_stream();
    buffer_.consume(buffer_.size());
    stream_->async_accept(parser_->get(), operation([this](Error error) {
                            if (done_) return;
                            parser_.reset();
                            if (error) return finish(network_fault(error, remote_));
                            opened();
                          }));
  }

  void ask_health() {
    // The worker may be busy for long: then that is the answer.
    const auto round = ++deadline_round_;
    deadline_.expires_after(kHealthPatience);
    deadline_.async_wait([self = shared_from_this(), round](Error error) {
      if (error || round != self->deadline_round_ || self->done_) return;
      self->respond(http::status::service_unavailable, "application/json", "{\"status\":\"busy\"}\n");
    });
    share_->worker->post([self = shared_from_this(), round] {
      std::string body = self->share_->health();
      self->post([self, round, body = std::move(body)]() mutable {
        if (round != self->deadline_round_ || self->done_) return;
        self->respond(http::status::ok, "application/json", std::move(body));
      });
    });
  }

  void respond(http::status status, const char* type, std::string body) {
    arm(share_->limits.handshake, std::nullopt);
    response_.emplace(status, 11);
    response_->set(http::field::content_type, type);
    response_->set(http::field::cache_control, "no-store");
    response_->keep_alive(false);
    response_->body() = std::move(body);
    response_->prepare_payload();
    http::async_write(
        stream_->next_layer(), *response_, operation([this](Error error, std::size_t) {
          if (done_) return;
          if (error) return finish(std::nullopt);
          stream_->next_layer().async_shutdown(operation([this](Error) { finish(std::nullopt); }));
        }));
  }

  void prepare_stream() {
    trusted_ = host_.has_value();
    stream_->set_option(websocket::stream_base::timeout{share_->limits.handshake, share_->limits.idle, true});
    stream_->read_message_max(0);  // see read_some()
    message_limit_ = trusted_ ? share_->limits.message : share_->limits.untrusted_message;
    stream_->write_buffer_bytes(16 * 1024);
    stream_->binary(true);
  }

  void opened() {
    open_ = true;
    if (trusted_) {
      disarm();
    } else {
      arm(share_->limits.proof,
          Fault{FaultCode::untrusted, "the device did not prove who it is in time", remote_, ""});
    }
    tell([](WebPipe& pipe) {
      if (pipe.share_->handlers.opened) pipe.share_->handlers.opened(pipe.shared_from_this());
    });
    read_next();
  }

  // --- reading

  void read_next() {
    if (done_ || reading_) return;
    if (unhandled_ >= share_->limits.unhandled) {
      paused_ = true;
      // The worker may have caught up between the two lines above, and then does not wake us.
      if (unhandled_ >= share_->limits.unhandled || !paused_.exchange(false)) return;
    }
    read_some();
  }

  /// Piece by piece, with our own eye on the size: Beast's limit would end the connection without a word of
  /// why.
  void read_some() {
    reading_ = true;
    stream_->async_read_some(
        buffer_, kPiece, operation([this](Error error, std::size_t) {
          reading_ = false;
          if (done_ || (error && close_sent_)) return;
          if (error) return finish(reading_fault(error));
          if (buffer_.size() > message_limit_) {
            close(Fault{FaultCode::malformed, "a message is larger than is allowed", remote_, ""});
          } else if (!stream_->got_binary()) {
            close(Fault{FaultCode::malformed, "a text message came where only binary ones are", remote_, ""});
          } else if (!stream_->is_message_done()) {
            return read_some();
          } else if (!closing()) {
            hand_over();
          }
          buffer_.consume(buffer_.size());
          if (buffer_.capacity() > kKeptBuffer) buffer_.shrink_to_fit();
          read_next();
        }));
  }

  void hand_over() {
    const auto* const data = static_cast<const std::uint8_t*>(buffer_.cdata().data());
    const std::size_t cost = buffer_.size() + kMessageCost;
    unhandled_ += cost;
    {
      const std::lock_guard lock(mutex_);
      inbox_.emplace_back(data, data + buffer_.size());
    }
    tell([cost](WebPipe& pipe) {
      Bytes message;
      {
        const std::lock_guard lock(pipe.mutex_);
        message = std::move(pipe.inbox_.front());
        pipe.inbox_.pop_front();
      }
      if (pipe.share_->handlers.message && !pipe.closing()) {
        pipe.share_->handlers.message(pipe.shared_from_this(), std::move(message));
      }
      if ((pipe.unhandled_ -= cost) < pipe.share_->limits.unhandled && pipe.paused_.exchange(false)) {
        pipe.post([self = pipe.shared_from_this()] { self->read_next(); });
      }
    });
  }

  [[nodiscard]] std::optional<Fault> reading_fault(Error error) const {
    // A close frame that came counts, however the connection went down after it.
    if (stream_->reason().code != websocket::close_code::none) return fault_in(stream_->reason(), remote_);
    return network_fault(error, remote_);
  }

  // --- writing

  void write_next() {
    if (done_) return;
    bool finished = false;
    {
      const std::lock_guard lock(mutex_);
      if (!queue_.empty()) {
        current_ = std::move(queue_.front());
        queue_.pop_front();
      } else {
        finished = closing_;
        // A closing writer stays: nothing is to be sent any more.
        writing_ = finished;
        if (!finished) return;
      }
    }
    if (finished) return send_close();
    stream_->async_write(asio::buffer(current_), operation([this](Error error, std::size_t) {
                           if (done_) return;
                           if (error) {
                             // The reader knows better why, if it hears of it soon.
                             if (reading_) return arm(share_->limits.close, network_fault(error, remote_));
                             return finish(network_fault(error, remote_));
                           }
                           bool drained = false;
                           {
                             const std::lock_guard lock(mutex_);
                             queued_ -= current_.size();
                             drained = full_ && queued_ <= share_->limits.outbound_low;
                             if (drained) full_ = false;
                           }
                           current_ = {};
                           if (drained) {
                             tell([](WebPipe& pipe) {
                               if (pipe.share_->handlers.drained && !pipe.closing())
                                 pipe.share_->handlers.drained(pipe.shared_from_this());
                             });
                           }
                           write_next();
                         }));
  }

  void send_close() {
    close_sent_ = true;
    std::optional<Fault> why;
    {
      const std::lock_guard lock(mutex_);
      why = why_;
    }
    stream_->async_close(close_reason_of(why), operation([this](Error) {
                           if (!done_) finish(std::nullopt);
                         }));
  }

  // --- the end

  /// Only the first call counts. Our own reason for closing goes before what the network says of it.
  void finish(std::optional<Fault> fault) {
    if (done_) return;
    done_ = true;
    disarm();
    socket().close();
    {
      const std::lock_guard lock(mutex_);
      ended_ = true;
      queue_.clear();
      end_ = closing_ ? why_ : std::move(fault);
    }
    release_when_idle();
  }

  void release_when_idle() {
    if (!done_ || operations_ != 0 || released_) return;
    released_ = true;
    if (open_) {
      tell([](WebPipe& pipe) {
        if (pipe.share_->handlers.closed) pipe.share_->handlers.closed(pipe.shared_from_this(), pipe.end_);
      });
    }
    if (share_->gone) share_->gone(shared_from_this(), open_, end_);
    // A ping of Beast's own may still be on its way back with an error: let it, before the stream goes.
    asio::post(*share_->io, [self = shared_from_this()] {
      asio::post(*self->share_->io, [self] { self->stream_.reset(); });
    });
  }

  /// Runs a handler on the worker.
  template <class Call>
  void tell(Call call) {
    share_->worker->post([self = shared_from_this(), call = std::move(call)]() mutable {
      try {
        call(*self);
      } catch (const std::exception& error) {
        spdlog::error("{}: {}", self->remote_, error.what());
        self->close(
            Fault{FaultCode::io, "an internal error ended the exchange", self->remote_, "see the log"});
      }
    });
  }

  [[nodiscard]] Fault handshake_fault(Error error) const {
    if (error.category() == asio::error::get_ssl_category()) {
      return {FaultCode::untrusted, "no TLS 1.3 connection comes about (" + error.message() + ")", remote_,
              "check that this is the address and port of an event server"};
    }
    return network_fault(error, remote_);
  }

  const std::shared_ptr<const PipeShare> share_;
  const std::optional<Address> host_;  ///< as guest: whom we call
  const std::optional<Fingerprint> pin_;
  std::string remote_;
  Fingerprint fingerprint_{};

  // I/O thread only
  std::optional<Stream> stream_;
  asio::steady_timer deadline_;
  std::uint64_t deadline_round_ = 0;
  beast::flat_buffer buffer_;
  std::optional<http::request_parser<http::empty_body>> parser_;
  std::optional<http::response<http::string_body>> response_;
  Bytes current_;
  std::size_t message_limit_ = 0;
  int operations_ = 0;
  bool open_ = false;
  bool trusted_ = false;
  bool reading_ = false;
  bool close_sent_ = false;
  bool done_ = false;
  bool released_ = false;

  // Shared between the I/O thread and the worker
  std::atomic<std::size_t> unhandled_{0};
  std::atomic<bool> paused_{false};

  mutable std::mutex mutex_;
  std::deque<Bytes> inbox_;  ///< for the worker; it alone takes out
  std::deque<Bytes> queue_;
  std::size_t queued_ = 0;  ///< bytes, those being written too
  bool full_ = false;
  bool writing_ = false;
  bool closing_ = false;
  bool ended_ = false;
  std::optional<Fault> why_;
  std::optional<Fault> end_;  ///< set once, before `closed` is told
};

}  // namespace

std::shared_ptr<SocketPipe> make_host_pipe(asio::ip::tcp::socket socket,
                                           std::shared_ptr<const PipeShare> share) {
  return std::make_shared<WebPipe>(std::move(socket), std::move(share), std::nullopt, std::nullopt);
}

std::shared_ptr<SocketPipe> make_guest_pipe(asio::ip::tcp::socket socket,
                                            std::shared_ptr<const PipeShare> share, const Address& address,
                                            const std::optional<Fingerprint>& pin) {
  return std::make_shared<WebPipe>(std::move(socket), std::move(share), address, pin);
}

Fault network_fault(const Error& error, const std::string& where) {
  const auto fault = [&](const char* what, const char* what_to_do) {
    return Fault{FaultCode::io, what, where, what_to_do};
  };
  if (error == asio::error::connection_refused) {
    return fault("nothing listens there", "check the address and port, and that the event server runs");
  }
  if (error == asio::error::host_unreachable || error == asio::error::network_unreachable) {
    return fault("there is no way to that address", "check that this device is on the server's network");
  }
  if (error == asio::error::timed_out || error == beast::error::timeout) {
    return fault("the other side does not answer", "check that this device is on the server's network");
  }
  if (error == asio::error::eof || error == asio::error::connection_reset ||
      error == asio::error::broken_pipe || error == asio::ssl::error::stream_truncated) {
    return fault("the connection was lost", "check the network; nothing confirmed is lost");
  }
  return {FaultCode::io, "the network failed (" + error.message() + ")", where,
          "check the network, then try again"};
}

}  // namespace weavelog
