#include "sync/net/guest.h"

#include <openssl/ssl.h>

#include <algorithm>
#include <atomic>
#include <boost/asio/connect.hpp>
#include <boost/asio/executor_work_guard.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <mutex>
#include <random>
#include <thread>
#include <vector>

#include "sync/net/io_thread.h"
#include "sync/net/socket_pipe.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
using asio::ip::tcp;
using Error = boost::system::error_code;
using Clock = std::chrono::steady_clock;

/// A pipe that held this long counts as a success, and the next pause starts small again.
constexpr std::chrono::seconds kHeld{10};

std::shared_ptr<asio::ssl::context> guest_tls() {
  auto tls = std::make_shared<asio::ssl::context>(asio::ssl::context::tls_client);
  SSL_CTX* const native = tls->native_handle();
  SSL_CTX_set_min_proto_version(native, TLS1_3_VERSION);
  SSL_CTX_set_session_cache_mode(native, SSL_SESS_CACHE_OFF);
  // The pipe checks the pin itself: no authority vouches for an event server, and its dates do not matter.
  tls->set_verify_mode(asio::ssl::verify_none);
  return tls;
}

}  // namespace

class WebGuest::Impl : public std::enable_shared_from_this<WebGuest::Impl> {
 public:
  explicit Impl(WebGuestOptions options) : options_(std::move(options)) {}

  void begin(PipeHandlers handlers) {
    auto share = std::make_shared<PipeShare>();
    share->io = io_;
    share->tls = guest_tls();
    share->worker = worker_;
    share->limits = options_.limits;
    share->handlers = std::move(handlers);
    share->gone = [weak = weak_from_this()](const std::shared_ptr<SocketPipe>&, bool was_open,
                                            const auto& fault) {
      if (const auto self = weak.lock()) self->gone(was_open, fault);
    };
    share_ = std::move(share);
    asio::post(*io_, [self = shared_from_this()] { self->attempt(); });
    thread_.emplace(io_);
  }

  void stop() {
    if (!stopping_.exchange(true)) {
      asio::post(*io_, [self = shared_from_this()] { self->end(); });
    }
    if (worker_->on_this_thread()) return;
    const std::lock_guard lock(join_mutex_);
    thread_.reset();
    worker_->stop();
  }

  void retry_now() {
    if (stopping_) return;
    asio::post(*io_, [self = shared_from_this()] {
      if (!self->pausing_ || self->stopping_) return;
      self->pausing_ = false;
      self->timer_.cancel();
      self->attempt();
    });
  }

  bool post(std::function<void()> task) { return worker_->post(std::move(task)); }

 private:
  // All on the I/O thread. `round_` tells late completions of an attempt that was given up.

  void attempt() {
    if (stopping_) return;
    const auto round = ++round_;
    timer_.expires_after(options_.limits.handshake);
    timer_.async_wait([self = shared_from_this(), round](Error error) {
      if (error || round != self->round_ || self->pipe_) return;
      self->give_up(network_fault(asio::error::timed_out, self->options_.address.text()));
    });
    Error error;
    const auto literal = asio::ip::make_address(options_.address.host, error);
    if (!error) return connect({tcp::endpoint(literal, options_.address.port)});
    look_up(round);
  }

  /// On a thread of its own that nobody waits for: the system's look-up can block for many seconds and can't
  /// be cancelled, and stop() must not wait for it.
  void look_up(std::uint64_t round) {
    std::thread([weak = weak_from_this(), io = io_, round, address = options_.address] {
      Error error;
      std::vector<tcp::endpoint> found;
      {
        asio::io_context own;
        tcp::resolver resolver(own);
        for (const auto& entry : resolver.resolve(address.host, std::to_string(address.port), error)) {
          found.push_back(entry.endpoint());
        }
      }
      asio::post(*io, [weak, round, found = std::move(found)] {
        const auto self = weak.lock();
        if (!self || self->stopping_ || round != self->round_) return;
        if (!found.empty()) return self->connect(found);
        self->give_up(Fault{FaultCode::not_found, "no machine of that name is known here",
                            self->options_.address.text(),
                            "check the name and the network, or use the number address"});
      });
    }).detach();
  }

  void connect(std::vector<tcp::endpoint> endpoints) {
    const auto round = round_;
    const auto kept = std::make_shared<std::vector<tcp::endpoint>>(std::move(endpoints));
    socket_.emplace(*io_);
    asio::async_connect(*socket_, *kept,
                        [self = shared_from_this(), kept, round](Error error, const tcp::endpoint&) {
                          if (round != self->round_ || self->stopping_) return;
                          if (error)
                            return self->give_up(network_fault(error, self->options_.address.text()));
                          self->timer_.cancel();
                          self->since_ = Clock::now();
                          self->pipe_ = make_guest_pipe(std::move(*self->socket_), self->share_,
                                                        self->options_.address, self->options_.pin);
                          self->socket_.reset();
                          self->pipe_->start();
                        });
  }

  /// Before there is a pipe.
  void give_up(const Fault& fault) {
    ++round_;
    socket_.reset();
    gone(false, fault);
  }

  void gone(bool was_open, const std::optional<Fault>& fault) {
    pipe_.reset();
    if (!was_open && fault && !stopping_) {
      worker_->post([share = share_, told = *fault] {
        if (share->handlers.failed) share->handlers.failed(told);
      });
    }
    if (stopping_ || !options_.reconnect) return;
    failures_ = was_open && Clock::now() - since_ >= kHeld ? 0 : failures_ + 1;
    // Whom the host turns away comes back late: two copies of one device would else go on taking each other's place.
    pause(fault && (fault->code == FaultCode::untrusted || (was_open && fault->code == FaultCode::refused)));
  }

  void pause(bool longest) {
    auto wait = options_.longest_wait;
    for (unsigned i = 0; !longest && i < 16; ++i) {
      if (options_.first_wait * (1 << i) >= options_.longest_wait) break;
      if (i + 1 < failures_) continue;
      wait = options_.first_wait * (1 << i);
      break;
    }
    // Half of it by chance, so that fifty tablets do not come back in one instant after a server's restart.
    std::uniform_int_distribution<std::int64_t> jitter(wait.count() / 2,
                                                       std::max<std::int64_t>(wait.count(), 1));
    pausing_ = true;
    timer_.expires_after(std::chrono::milliseconds(jitter(random_)));
    timer_.async_wait([self = shared_from_this()](Error error) {
      if (error || !self->pausing_) return;
      self->pausing_ = false;
      self->attempt();
    });
  }

  void end() {
    ++round_;
    pausing_ = false;
    timer_.cancel();
    socket_.reset();
    if (const auto pipe = pipe_) pipe->end();
    guard_.reset();
  }

  const WebGuestOptions options_;
  const std::shared_ptr<asio::io_context> io_ = std::make_shared<asio::io_context>(1);
  const std::shared_ptr<Worker> worker_ = std::make_shared<Worker>();
  asio::executor_work_guard<asio::io_context::executor_type> guard_{io_->get_executor()};
  std::shared_ptr<const PipeShare> share_;
  asio::steady_timer timer_{*io_};
  std::optional<tcp::socket> socket_;
  std::shared_ptr<SocketPipe> pipe_;
  std::uint64_t round_ = 0;
  unsigned failures_ = 0;
  bool pausing_ = false;
  Clock::time_point since_;
  std::minstd_rand random_{std::random_device{}()};
  std::atomic<bool> stopping_{false};
  std::mutex join_mutex_;
  std::optional<IoThread> thread_;
};

WebGuest::WebGuest(WebGuestOptions options, PipeHandlers handlers)
    : impl_(std::make_shared<Impl>(std::move(options))) {
  impl_->begin(std::move(handlers));
}
WebGuest::~WebGuest() {
  stop();
}
bool WebGuest::post(std::function<void()> task) {
  return impl_->post(std::move(task));
}
void WebGuest::retry_now() {
  impl_->retry_now();
}
void WebGuest::stop() {
  impl_->stop();
}

}  // namespace weavelog
