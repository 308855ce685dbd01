#include "sync/net/host.h"

#include <openssl/ssl.h>
#include <spdlog/spdlog.h>

#include <atomic>
#include <boost/asio/executor_work_guard.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <list>
#include <mutex>
#include <thread>
#include <unordered_set>

#include "sync/net/io_thread.h"
#include "sync/net/listener.h"
#include "sync/net/socket_pipe.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
using asio::ip::tcp;
using Error = boost::system::error_code;

constexpr std::chrono::milliseconds kExchangeAcceptPause{100};

Outcome<std::shared_ptr<asio::ssl::context>> host_tls(const ServerCertificate& certificate) {
  auto tls = std::make_shared<asio::ssl::context>(asio::ssl::context::tls_server);
  SSL_CTX* const native = tls->native_handle();
  SSL_CTX_set_min_proto_version(native, TLS1_3_VERSION);
  // Nobody resumes: a guest that comes back does the whole handshake, which is what pins it. Saves memory
  // too.
  SSL_CTX_set_num_tickets(native, 0);
  SSL_CTX_set_session_cache_mode(native, SSL_SESS_CACHE_OFF);
  SSL_CTX_set_mode(native, SSL_MODE_RELEASE_BUFFERS);
  Error error;
  tls->use_certificate(asio::buffer(certificate.certificate_pem), asio::ssl::context::pem, error);
  if (!error) tls->use_private_key(asio::buffer(certificate.key_pem), asio::ssl::context::pem, error);
  if (error) {
    return fail(FaultCode::untrusted, "the server's certificate can't be used (" + error.message() + ")", "",
                "put the certificate file back from a backup");
  }
  return tls;
}

}  // namespace

class WebHost::Impl : public std::enable_shared_from_this<WebHost::Impl> {
 public:
  Impl(std::size_t max_connections, std::size_t max_strangers)
      : max_connections_(max_connections), max_strangers_(max_strangers) {}

  Outcome<> begin(WebHostOptions options, PipeHandlers handlers) {
    auto tls = host_tls(options.certificate);
    if (!tls) return fail(tls.error());
    if (auto listening = listen_on(acceptor_, options.address, options.port); !listening) return fail(listening.error());
    Error error;
    port_ = acceptor_.local_endpoint(error).port();

    auto share = std::make_shared<PipeShare>();
    share->io = io_;
    share->tls = *tls;
    share->worker = worker_;
    share->limits = options.limits;
    share->handlers = std::move(handlers);
    share->health = std::move(options.health);
    share->own_fingerprint = options.certificate.fingerprint;
    share->gone = [weak = weak_from_this()](const std::shared_ptr<SocketPipe>& pipe, bool, const auto&) {
      if (const auto self = weak.lock()) self->forget(pipe);
    };
    share_ = std::move(share);
    accept_next();
    thread_.emplace(io_);
    return {};
  }

  void stop() {
    if (!stopping_.exchange(true)) {
      asio::post(*io_, [self = shared_from_this()] { self->end_all(); });
    }
    if (worker_->on_this_thread()) return;
    const std::lock_guard lock(join_mutex_);
    thread_.reset();
    worker_->stop();
  }

  [[nodiscard]] std::uint16_t port() const { return port_; }
  [[nodiscard]] const Fingerprint& fingerprint() const { return share_->own_fingerprint; }
  [[nodiscard]] std::size_t connections() const { return connections_; }
  bool post(std::function<void()> task) { return worker_->post(std::move(task)); }

 private:
  void accept_next() {
    acceptor_.async_accept([self = shared_from_this()](Error error, tcp::socket socket) {
      if (self->stopping_ || error == asio::error::operation_aborted) return;
      if (error) {
        // Out of descriptors or memory: the listener would report it again at once, and for ever.
        spdlog::warn("can't take a connection: {}", error.message());
        self->pause_.expires_after(kExchangeAcceptPause);
        self->pause_.async_wait([self](Error cancelled) {
          if (!cancelled && !self->stopping_) self->accept_next();
        });
        return;
      }
      // Over the limit the socket simply goes out of scope.
      if (self->make_room()) self->take(std::move(socket));
      self->accept_next();
    });
  }

  /// False if all places are taken by those who proved who they are.
  bool make_room() {
    strangers_.remove_if([](const auto& pipe) { return pipe->trusted(); });
    while (!strangers_.empty() &&
           (strangers_.size() >= max_strangers_ || pipes_.size() >= max_connections_)) {
      const auto oldest = strangers_.front();  // cut() may take it off the list at once
      oldest->cut(Fault{FaultCode::refused, "too many connect at once that do not say who they are",
                        oldest->remote(), "try again"});
      strangers_.remove(oldest);
      // It may take a moment until it is gone; its place counts as free now.
      pipes_.erase(oldest);
    }
    return pipes_.size() < max_connections_;
  }

  void take(tcp::socket socket) {
    auto pipe = make_host_pipe(std::move(socket), share_);
    pipes_.insert(pipe);
    strangers_.push_back(pipe);
    connections_ = pipes_.size();
    pipe->start();
  }

  void forget(const std::shared_ptr<SocketPipe>& pipe) {
    pipes_.erase(pipe);
    strangers_.remove(pipe);
    connections_ = pipes_.size();
  }

  void end_all() {
    Error ignored;
    acceptor_.close(ignored);
    pause_.cancel();
    const auto pipes = pipes_;  // end() may take some out of the set
    for (const auto& pipe : pipes) pipe->end();
    thread_guard_.reset();
  }

  const std::shared_ptr<asio::io_context> io_ = std::make_shared<asio::io_context>(1);
  const std::shared_ptr<Worker> worker_ = std::make_shared<Worker>();
  asio::executor_work_guard<asio::io_context::executor_type> thread_guard_{io_->get_executor()};
  std::shared_ptr<const PipeShare> share_;
  tcp::acceptor acceptor_{*io_};
  asio::steady_timer pause_{*io_};
  std::unordered_set<std::shared_ptr<SocketPipe>> pipes_;  ///< I/O thread only
  std::list<std::shared_ptr<SocketPipe>> strangers_;  ///< those of them not known to be trusted, oldest first
  const std::size_t max_connections_;
  const std::size_t max_strangers_;
  std::atomic<std::size_t> connections_{0};
  std::uint16_t port_ = 0;
  std::atomic<bool> stopping_{false};
  std::mutex join_mutex_;
  std::optional<IoThread> thread_;
};

WebHost::WebHost(std::shared_ptr<Impl> impl) : impl_(std::move(impl)) {}
WebHost::~WebHost() {
  stop();
}

Outcome<std::unique_ptr<WebHost>> WebHost::start(WebHostOptions options, PipeHandlers handlers) {
  auto impl = std::make_shared<Impl>(options.max_connections, options.max_strangers);
  if (const auto begun = impl->begin(std::move(options), std::move(handlers)); !begun)
    return fail(begun.error());
  return std::unique_ptr<WebHost>(new WebHost(std::move(impl)));
}

std::uint16_t WebHost::port() const {
  return impl_->port();
}
const Fingerprint& WebHost::fingerprint() const {
  return impl_->fingerprint();
}
std::size_t WebHost::connections() const {
  return impl_->connections();
}
bool WebHost::post(std::function<void()> task) {
  return impl_->post(std::move(task));
}
void WebHost::stop() {
  impl_->stop();
}

}  // namespace weavelog
