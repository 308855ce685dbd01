#include "sync/net/exchange_host.h"

#include <spdlog/spdlog.h>

#include <algorithm>
#include <atomic>
#include <boost/json.hpp>
#include <mutex>
#include <unordered_map>

#include "sync/net/ticker.h"

namespace weavelog {
namespace {

/// A device needs one, and perhaps some more: several programs on its folder, one that broke off unseen, a copy of it.
constexpr std::size_t kConnectionsOfOne = 8;

}  // namespace

class ExchangeHost::Impl {
 public:
  Impl(Station& station, ExchangeHostOptions options) : station_(station), options_(std::move(options)) {}

  ~Impl() {
    ticker_.reset();
    if (subscription_ != 0) station_.ledger().unsubscribe(subscription_);
    if (web_) web_->stop();
  }

  Outcome<> start() {
    WebHostOptions web;
    web.address = options_.address;
    web.port = options_.port;
    web.certificate = options_.certificate;
    web.health = [this] { return health(); };
    PipeHandlers handlers;
    handlers.opened = [this](const std::shared_ptr<Pipe>& pipe) { open(pipe); };
    handlers.message = [this](const std::shared_ptr<Pipe>& pipe, Bytes frame) {
      step(pipe, [&](Session& session) { return session.receive(frame, pipe->next_message()); });
    };
    handlers.closed = [this](const std::shared_ptr<Pipe>& pipe, const std::optional<Fault>& why) { closed(pipe, why); };
    auto started = WebHost::start(std::move(web), std::move(handlers));
    if (!started) return fail(started.error());
    web_ = std::move(*started);
    subscription_ = station_.ledger().subscribe([this](std::int64_t) { ledger_changed(); });
    ticker_ = std::make_unique<Ticker>(std::chrono::milliseconds(500), [this] {
      web_->post([this] {
        // What a session says at a tick can wait until what it said before is on its way.
        std::vector<std::shared_ptr<Pipe>> pipes;
        for (const auto& [key, live] : live_)
          if (live.pipe->writable()) pipes.push_back(live.pipe);
        for (const auto& pipe : pipes) step(pipe, [](Session& session) { return session.tick(); });
      });
    });
    return {};
  }

  [[nodiscard]] const WebHost& web() const { return *web_; }

  [[nodiscard]] std::vector<Connected> connected() const {
    const std::lock_guard guard(mutex_);
    std::vector<Connected> out;
    for (const auto& [pipe, one] : shown_) out.push_back(one);
    return out;
  }

 private:
  struct Live {
    std::shared_ptr<Pipe> pipe;
    std::unique_ptr<Session> session;
    std::uint64_t number = 0;  ///< in the order in which they came
    bool trusted = false;
    bool ending = false;
  };

  void open(const std::shared_ptr<Pipe>& pipe) {
    SessionOptions options;
    options.ledger = &station_.ledger();
    options.devices = &station_.devices();
    options.peers = &station_.peers();
    options.side = Side::host;
    options.certificate = pipe->host_fingerprint();
    options.event = options_.event;
    options.may_leave = options_.may_leave;
    options.leaves_by = options_.leaves_by;
    options.may_stay = options_.may_stay;
    options.over = options_.over;
    options.rights = options_.rights;
    if (const auto from = Address::parse(pipe->remote())) options.remote = from->host;
    options.shares = options_.shares;
    if (options_.names_content)
      options.contents = {&station_.contents(), options_.names_content,
                          [this, asker = pipe.get()](const BookId& book, const Digest& hash) { return ask_others(asker, book, hash); }};
    live_.emplace(pipe.get(), Live{pipe, std::make_unique<Session>(std::move(options)), ++came_});
    show(pipe, {});
  }

  /// What others see of it: not the session itself, which may work for a while.
  void show(const std::shared_ptr<Pipe>& pipe, const SessionStatus& status) {
    const std::lock_guard guard(mutex_);
    shown_[pipe.get()] = {status.peer.device, pipe->remote(), status.role, status.state};
  }

  template <class Work>
  void step(const std::shared_ptr<Pipe>& pipe, Work work) {
    const auto found = live_.find(pipe.get());
    if (found == live_.end()) return;
    Live& live = found->second;
    const SessionState before = live.session->status().state;
    const Role role = live.session->status().role;
    Session::Frames frames = work(*live.session);
    const SessionStatus status = live.session->status();
    // Before the welcome goes out: the guest may answer it at once with a frame too large for a stranger.
    if (!live.trusted && status.state >= SessionState::comparing && status.state != SessionState::closed) {
      live.trusted = true;
      pipe->trust();
      end_oldest_of(status.peer.key);
    }
    for (Bytes& frame : frames) pipe->send(std::move(frame));
    if (status.state != before || status.role != role) show(pipe, status);
    if (status.state == before) return;
    if (status.state == SessionState::closed) {
      // Anybody can send what is no exchange: that is not worth a warning each.
      spdlog::log(live.trusted ? spdlog::level::warn : spdlog::level::info, "exchange with {} ({}) ends: {}", status.peer.device, pipe->remote(), status.fault ? status.fault->message() : "");
      pipe->close();
    }
    if (options_.on_status) options_.on_status(status);
  }

  /// Of more connections than one device may have the oldest ends: so nobody takes the places of all others, and who comes back while old ones hang is let in.
  void end_oldest_of(const PublicKey& key) {
    Live* oldest = nullptr;
    std::size_t held = 0;
    for (auto& [pipe, live] : live_) {
      if (!live.trusted || live.ending || live.session->status().peer.key != key) continue;
      ++held;
      if (oldest == nullptr || live.number < oldest->number) oldest = &live;
    }
    if (held <= kConnectionsOfOne) return;
    oldest->ending = true;
    oldest->pipe->close(Fault{FaultCode::refused, "this device came anew, and of its connections the oldest ends", oldest->pipe->remote(),
                              "end copies of the program"});
  }

  template <class Work>
  void each(Work work) {
    std::vector<std::shared_ptr<Pipe>> pipes;
    for (const auto& [key, live] : live_) pipes.push_back(live.pipe);
    for (const auto& pipe : pipes) step(pipe, work);
  }

  /// A guest wants what is not held here: whoever else is connected may have it. Inside a step, so the others' turn comes after it. Only those guests count that may bring something.
  bool ask_others(const Pipe* asker, const BookId& book, const Digest& hash) {
    const bool anybody = std::any_of(live_.begin(), live_.end(), [&](const auto& one) {
      const SessionStatus& status = one.second.session->status();
      return one.first != asker && status.state >= SessionState::exchanging && status.state != SessionState::closed && status.role != Role::reader;
    });
    if (anybody)
      web_->post([this, asker, book, hash] {
        std::vector<std::shared_ptr<Pipe>> others;
        for (const auto& [key, live] : live_)
          if (key != asker) others.push_back(live.pipe);
        for (const auto& pipe : others) step(pipe, [&](Session& session) { return session.fetch(book, hash); });
      });
    return anybody;
  }

  void closed(const std::shared_ptr<Pipe>& pipe, const std::optional<Fault>& why) {
    if (why) spdlog::info("connection from {} ended: {}", pipe->remote(), why->message());
    live_.erase(pipe.get());
    const std::lock_guard guard(mutex_);
    shown_.erase(pipe.get());
  }

  /// From whichever thread committed. Commits that come while one is waiting are served by it.
  void ledger_changed() {
    if (waiting_.exchange(true)) return;
    web_->post([this] {
      waiting_ = false;
      each([](Session& session) { return session.changed(); });
    });
  }

  std::string health() const {
    boost::json::array devices;
    for (const Connected& one : connected()) devices.emplace_back(one.device);
    return boost::json::serialize(boost::json::object{{"status", "ok"},
                                                      {"server", station_.ledger().self().device},
                                                      {"position", station_.ledger().position()},
                                                      {"connected", std::move(devices)}});
  }

  Station& station_;
  ExchangeHostOptions options_;
  std::unique_ptr<WebHost> web_;
  int subscription_ = 0;
  std::atomic<bool> waiting_{false};
  std::unordered_map<Pipe*, Live> live_;  // on the worker thread only, as is:
  std::uint64_t came_ = 0;
  mutable std::mutex mutex_;
  std::unordered_map<Pipe*, Connected> shown_;  // behind the mutex
  std::unique_ptr<Ticker> ticker_;
};

ExchangeHost::ExchangeHost(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
ExchangeHost::~ExchangeHost() = default;

Outcome<std::unique_ptr<ExchangeHost>> ExchangeHost::start(Station& station, ExchangeHostOptions options) {
  auto impl = std::make_unique<Impl>(station, std::move(options));
  if (auto started = impl->start(); !started) return fail(started.error());
  return std::unique_ptr<ExchangeHost>(new ExchangeHost(std::move(impl)));
}

std::uint16_t ExchangeHost::port() const { return impl_->web().port(); }
const Fingerprint& ExchangeHost::fingerprint() const { return impl_->web().fingerprint(); }
std::vector<Connected> ExchangeHost::connected() const { return impl_->connected(); }

}  // namespace weavelog
