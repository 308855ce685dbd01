#include <spdlog/spdlog.h>

#include <array>
#include <atomic>
#include <boost/asio/ip/udp.hpp>
#include <boost/asio/ip/v6_only.hpp>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <map>
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

constexpr std::chrono::milliseconds kErrorPause{100};
/// Askers that are told apart; when there are more, all are forgotten.
constexpr std::size_t kAskers = 256;

tl::unexpected<Fault> bind_fault(const Error& error, const std::string& where) {
  const bool taken = error == asio::error::address_in_use;
  return fail(
      taken ? FaultCode::locked : FaultCode::io,
      taken ? "the UDP port is taken by another program" : "can't answer on UDP (" + error.message() + ")",
      where, "tablets will not see this server by themselves; type its address there");
}

}  // namespace

class NearbyHost::Impl : public std::enable_shared_from_this<NearbyHost::Impl> {
 public:
  explicit Impl(NearbyHostOptions options) : options_(std::move(options)) {}

  Outcome<> begin() {
    Error error;
    const auto address = asio::ip::make_address(options_.address, error);
    if (error)
      return fail(FaultCode::bad_input,
                  "\"" + options_.address.substr(0, 60) + "\" is no address of a machine", "address",
                  "write an IPv4 or IPv6 address, or 0.0.0.0 for all");
    const udp::endpoint endpoint(address, options_.offer.port);
    main_.socket.open(endpoint.protocol(), error);
    if (!error && address.is_v6())
      main_.socket.set_option(asio::ip::v6_only(!address.is_unspecified()), error);
    if (!error) main_.socket.bind(endpoint, error);
    if (!error) main_.socket.non_blocking(true, error);
    if (error) return bind_fault(error, Address{options_.address, options_.offer.port}.text());
    if (address.is_v4() && !address.is_unspecified()) hear_broadcasts(address.to_v4());
    receive(main_);
    if (broadcast_.socket.is_open()) receive(broadcast_);
    thread_.emplace(io_);
    if (options_.dns_sd && !address.is_loopback()) published_.emplace(options_.offer);
    return {};
  }

  void stop() {
    published_.reset();
    asio::post(*io_, [self = shared_from_this()] {
      self->stopping_ = true;
      Error ignored;
      self->main_.socket.close(ignored);
      self->broadcast_.socket.close(ignored);
      self->main_.pause.cancel();
      self->broadcast_.pause.cancel();
    });
    thread_.reset();
  }

  void set_event(std::string event) {
    const std::lock_guard guard(mutex_);
    options_.offer.event = event;
    if (published_) published_->set_event(event);
  }
  [[nodiscard]] std::uint64_t answered() const { return answered_; }

 private:
  struct Ear {
    explicit Ear(asio::io_context& io) : socket(io), pause(io) {}
    udp::socket socket;
    asio::steady_timer pause;
    udp::endpoint asker;
    std::array<std::uint8_t, kNearbyBytes + 1> buffer{};  // one more, by which an oversized datagram shows
  };

  /// A socket that is bound to one address of this machine does not get what is sent to that network's
  /// broadcast address. Without this one the server is only found from the machine itself.
  void hear_broadcasts(const asio::ip::address_v4& own) {
    for (const Interface& one : up_interfaces()) {
      if (one.address != own || !one.broadcast) continue;
      Error error;
      broadcast_.socket.open(udp::v4(), error);
      // Two servers on two addresses of one network both hear its broadcasts.
      if (!error) broadcast_.socket.set_option(asio::socket_base::reuse_address(true), error);
      if (!error) broadcast_.socket.bind({*one.broadcast, options_.offer.port}, error);
      if (!error) return;
      spdlog::warn("can't hear tablets that ask who is near: {}", error.message());
      broadcast_.socket.close(error);
    }
  }

  void receive(Ear& ear) {
    ear.socket.async_receive_from(asio::buffer(ear.buffer), ear.asker,
                                  [self = shared_from_this(), &ear](Error error, std::size_t size) {
                                    if (self->stopping_ || error == asio::error::operation_aborted) return;
                                    if (error) return self->receive_after(ear, kErrorPause);
                                    self->heard(ear, size);
                                  });
  }

  void receive_after(Ear& ear, Clock::duration time) {
    ear.pause.expires_after(time);
    ear.pause.async_wait([self = shared_from_this(), &ear](Error cancelled) {
      if (!cancelled && !self->stopping_) self->receive(ear);
    });
  }

  void heard(Ear& ear, std::size_t size) {
    const auto now = Clock::now();
    (void)reads_.take(now);
    const auto nonce = read_nearby_query(ByteView(ear.buffer).first(size));
    if (nonce && may_answer(ear.asker.address(), now)) answer(*nonce, ear.asker);
    if (!reads_.none_left()) return receive(ear);
    receive_after(ear, reads_.end() - now);
  }

  bool may_answer(const asio::ip::address& asker, Clock::time_point now) {
    if (askers_.size() >= kAskers && !askers_.contains(asker)) askers_.clear();
    return askers_.try_emplace(asker, options_.answers_per_asker).first->second.take(now) &&
           answers_.take(now);
  }

  /// What the network does not take at once is dropped: the asker asks again.
  void answer(const NearbyNonce& nonce, const udp::endpoint& asker) {
    Bytes bytes;
    {
      const std::lock_guard guard(mutex_);
      bytes = nearby_answer(nonce, options_.offer);
    }
    Error error;
    main_.socket.send_to(asio::buffer(bytes), asker, 0, error);
    if (!error) ++answered_;
  }

  NearbyHostOptions options_;  ///< the offer's event: under the lock
  mutable std::mutex mutex_;
  const std::shared_ptr<asio::io_context> io_ = std::make_shared<asio::io_context>(1);
  Ear main_{*io_}, broadcast_{*io_};
  PerSecond reads_{options_.datagrams_per_second}, answers_{options_.answers_per_second};
  std::map<asio::ip::address, PerSecond> askers_;
  std::atomic<std::uint64_t> answered_{0};
  bool stopping_ = false;
  std::optional<DnsSdPublisher> published_;
  std::optional<IoThread> thread_;
};

NearbyHost::NearbyHost(std::shared_ptr<Impl> impl) : impl_(std::move(impl)) {}
NearbyHost::~NearbyHost() {
  impl_->stop();
}

Outcome<std::unique_ptr<NearbyHost>> NearbyHost::start(NearbyHostOptions options) {
  auto impl = std::make_shared<Impl>(std::move(options));
  if (const auto begun = impl->begin(); !begun) return fail(begun.error());
  return std::unique_ptr<NearbyHost>(new NearbyHost(std::move(impl)));
}

void NearbyHost::set_event(std::string event) {
  impl_->set_event(std::move(event));
}
std::uint64_t NearbyHost::answered() const {
  return impl_->answered();
}

}  // namespace weavelog
