#include <sodium.h>

#include <algorithm>
#include <array>
#include <boost/asio/ip/udp.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <deque>
#include <mutex>
#include <optional>

#include "sync/net/dns_sd.h"
#include "sync/net/interfaces.h"
#include "sync/net/io_thread.h"
#include "sync/net/nearby.h"
#include "sync/net/per_second.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
using asio::ip::udp;
using Error = boost::system::error_code;
using Clock = std::chrono::steady_clock;

constexpr std::size_t kPorts = 16;
constexpr std::size_t kInterfaces = 16;
/// An answer may be late by this many queries.
constexpr std::size_t kNonces = 4;
/// A datagram is easily lost on a radio: the first query is soon repeated.
constexpr std::chrono::milliseconds kRepeat{300};
constexpr std::chrono::milliseconds kSearchPause{100};
/// Answers come together: they are shown so too.
constexpr std::chrono::milliseconds kGather{50};
constexpr int kAnswersPerSecond = 1000;

}  // namespace

class NearbySearch::Impl : public std::enable_shared_from_this<NearbySearch::Impl> {
 public:
  explicit Impl(NearbySearchOptions options) : options_(std::move(options)), list_(options_.life) {
    ports_.push_back(kDefaultPort);
    for (const std::uint16_t port : options_.ports)
      if (port != 0 && ports_.size() < kPorts &&
          std::find(ports_.begin(), ports_.end(), port) == ports_.end())
        ports_.push_back(port);
  }

  void begin() {
    if (options_.dns_sd)
      browser_.emplace([this] {
        // Held weakly: what is posted after the end is never run, and must not keep this alive.
        asio::post(*io_, [here = weak_from_this()] {
          const auto self = here.lock();
          if (!self) return;
          self->hear_found();
          self->show_soon();
        });
      });
    asio::post(*io_, [self = shared_from_this()] { self->ask(); });
    thread_.emplace(io_);
  }

  void stop() {
    asio::post(*io_, [self = shared_from_this()] {
      self->stopping_ = true;
      Error ignored;
      self->socket_.close(ignored);
      self->next_.cancel();
      self->pause_.cancel();
      self->gather_.cancel();
    });
    thread_.reset();  // it looks at what the browser has found
    browser_.reset();
  }

  [[nodiscard]] std::vector<NearbyServer> servers() const {
    const std::lock_guard guard(mutex_);
    return shown_;
  }

 private:
  void ask() {
    if (stopping_) return;
    if (open()) {
      NearbyNonce nonce{};
      randombytes_buf(nonce.data(), nonce.size());
      nonces_.push_back(nonce);
      if (nonces_.size() > kNonces) nonces_.pop_front();
      send(nearby_query(nonce));
    }
    hear_found();
    list_.expire(Clock::now());
    show();
    next_.expires_after(std::exchange(first_, false) ? std::min(kRepeat, options_.pace) : options_.pace);
    next_.async_wait([self = shared_from_this()](Error cancelled) {
      if (!cancelled) self->ask();
    });
  }

  /// What is published counts as heard for as long as it is. The browser is there from before the first query to after the last.
  void hear_found() {
    if (stopping_ || !browser_) return;
    for (const auto& [offer, host] : browser_->found()) list_.hear(offer, host, Clock::now());
  }

  bool open() {
    if (socket_.is_open()) return true;
    Error error, ignored;
    socket_.open(udp::v4(), error);
    if (!error) socket_.set_option(asio::socket_base::broadcast(true), error);
    if (!error) socket_.bind({udp::v4(), 0}, error);
    if (!error) socket_.non_blocking(true, error);
    if (error) {
      socket_.close(ignored);
      return false;
    }
    receive();
    return true;
  }

  /// What an interface does not take (it has just gone, it is full) is not sent there; the next query comes
  /// soon.
  void send(const Bytes& query) {
    std::vector<asio::ip::address_v4> to{asio::ip::address_v4::loopback()};
    for (const Interface& one : up_interfaces())
      if (one.broadcast && to.size() < kInterfaces &&
          std::find(to.begin(), to.end(), *one.broadcast) == to.end())
        to.push_back(*one.broadcast);
    for (const auto& address : to) {
      for (const std::uint16_t port : ports_) {
        Error ignored;
        socket_.send_to(asio::buffer(query), {address, port}, 0, ignored);
      }
    }
  }

  void receive() {
    socket_.async_receive_from(asio::buffer(buffer_), from_,
                               [self = shared_from_this()](Error error, std::size_t size) {
                                 if (self->stopping_ || error == asio::error::operation_aborted) return;
                                 if (error) return self->receive_after(kSearchPause);
                                 self->heard(size);
                               });
  }

  void receive_after(Clock::duration time) {
    pause_.expires_after(time);
    pause_.async_wait([self = shared_from_this()](Error cancelled) {
      if (!cancelled && !self->stopping_) self->receive();
    });
  }

  void heard(std::size_t size) {
    const auto now = Clock::now();
    (void)reads_.take(now);
    const auto answer = read_nearby_answer(ByteView(buffer_).first(size));
    if (answer && std::find(nonces_.begin(), nonces_.end(), answer->nonce) != nonces_.end()) {
      list_.hear(answer->offer, from_.address().to_string(), now);
      show_soon();
    }
    if (!reads_.none_left()) return receive();
    receive_after(reads_.end() - now);
  }

  void show_soon() {
    if (std::exchange(gathering_, true)) return;
    gather_.expires_after(kGather);
    gather_.async_wait([self = shared_from_this()](Error cancelled) {
      self->gathering_ = false;
      if (!cancelled) self->show();
    });
  }

  void show() {
    auto servers = list_.servers();
    {
      const std::lock_guard guard(mutex_);
      if (servers == shown_) return;
      shown_ = std::move(servers);
    }
    if (options_.on_change) options_.on_change();
  }

  const NearbySearchOptions options_;
  std::vector<std::uint16_t> ports_;
  const std::shared_ptr<asio::io_context> io_ = std::make_shared<asio::io_context>(1);
  udp::socket socket_{*io_};
  asio::steady_timer next_{*io_}, pause_{*io_}, gather_{*io_};
  udp::endpoint from_;
  std::array<std::uint8_t, kNearbyBytes + 1> buffer_{};  // one more, by which an oversized datagram shows
  std::deque<NearbyNonce> nonces_;                       ///< of the last queries, newest last
  PerSecond reads_{kAnswersPerSecond};
  bool first_ = true, gathering_ = false, stopping_ = false;
  NearbyList list_;
  mutable std::mutex mutex_;
  std::vector<NearbyServer> shown_;
  std::optional<DnsSdBrowser> browser_;
  std::optional<IoThread> thread_;
};

NearbySearch::NearbySearch(NearbySearchOptions options) : impl_(std::make_shared<Impl>(std::move(options))) {
  impl_->begin();
}
NearbySearch::~NearbySearch() {
  impl_->stop();
}

std::vector<NearbyServer> NearbySearch::servers() const {
  return impl_->servers();
}

}  // namespace weavelog
