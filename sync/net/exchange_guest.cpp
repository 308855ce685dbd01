#include "sync/net/exchange_guest.h"

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <set>
#include <utility>

#include "sync/exchange/workplace.h"
#include "sync/net/ticker.h"

namespace weavelog {

class ExchangeGuest::Impl {
 public:
  Impl(Station& station, ExchangeGuestOptions options, std::function<void(const GuestStatus&)> on_status)
      : station_(station), options_(std::move(options)), on_status_(std::move(on_status)) {
    WebGuestOptions web;
    web.address = options_.address;
    web.pin = options_.pin;
    // A pairing's secret is good once: its owner goes on with the host that was remembered.
    web.reconnect = options_.keep_trying && !options_.secret;
    PipeHandlers handlers;
    handlers.opened = [this](const std::shared_ptr<Pipe>& pipe) { open(pipe); };
    handlers.message = [this](const std::shared_ptr<Pipe>& pipe, Bytes frame) {
      if (pipe == pipe_) step([&](Session& session) { return session.receive(frame, pipe->next_message()); });
    };
    handlers.closed = [this](const std::shared_ptr<Pipe>& pipe, const std::optional<Fault>& why) { closed(pipe, why); };
    handlers.failed = [this](const Fault& why) {
      update([&](GuestStatus& status) {
        status.connected = false;
        status.fault = why;
      });
    };
    web_ = std::make_unique<WebGuest>(std::move(web), std::move(handlers));
    subscription_ = station_.ledger().subscribe([this](std::int64_t) { changed(); });
    ticker_ = std::make_unique<Ticker>(std::chrono::milliseconds(500), [this] {
      web_->post([this] {
        if (pipe_ && pipe_->writable()) step([](Session& session) { return session.tick(); });
      });
    });
  }

  ~Impl() {
    ticker_.reset();
    station_.ledger().unsubscribe(subscription_);
    web_->stop();
  }

  void changed() {
    if (waiting_.exchange(true)) return;
    web_->post([this] {
      waiting_ = false;
      step([](Session& session) { return session.changed(); });
    });
  }

  void wish_invitation(Role role, UnixMs life) {
    web_->post([this, role, life] { step([&](Session& session) { return session.wish_invitation(role, life); }); });
  }

  void wish_devices() {
    web_->post([this] { step([](Session& session) { return session.wish_devices(); }); });
  }

  void wish_revocation(const PublicKey& device) {
    web_->post([this, device] { step([&](Session& session) { return session.wish_revocation(device); }); });
  }

  void wish_change(const PublicKey& device, const std::string& name, std::optional<Role> role) {
    web_->post([this, device, name, role] { step([&](Session& session) { return session.wish_change(device, name, role); }); });
  }

  void fetch_content(const BookId& book, const Digest& hash) {
    {
      const std::lock_guard guard(mutex_);
      status_.wanted.emplace(book, hash);  // seen at once by whoever asked
    }
    web_->post([this, book, hash] {
      wishes_.emplace(book, hash);
      step([&](Session& session) { return session.fetch(book, hash); });
    });
  }

  void retry_now() { web_->retry_now(); }

  [[nodiscard]] GuestStatus status() const {
    const std::lock_guard guard(mutex_);
    return status_;
  }

  bool wait(std::chrono::milliseconds time, const std::function<bool(const GuestStatus&)>& until) const {
    std::unique_lock lock(mutex_);
    return changed_.wait_for(lock, time, [&] { return until(status_); });
  }

 private:
  void open(const std::shared_ptr<Pipe>& pipe) {
    SessionOptions options;
    options.ledger = &station_.ledger();
    options.devices = &station_.devices();
    options.peers = &station_.peers();
    options.side = Side::guest;
    options.certificate = pipe->host_fingerprint();
    options.secret = options_.secret;
    options.expected = options_.expected;
    options.may_leave = options_.may_leave;
    options.leaves_by = options_.leaves_by;
    options.may_stay = options_.may_stay;
    if (options_.names_content) options.contents = {&station_.contents(), options_.names_content, {}};
    pipe_ = pipe;
    session_ = std::make_unique<Session>(std::move(options));
    update([&](GuestStatus& status) {
      status.connected = true;
      status.fault.reset();
      status.session = session_->status();
    });
    step([](Session& session) { return session.start(); });
    // What was wanted while there was no connection, or when the last one was cut.
    for (const auto& wish : std::set(wishes_)) step([&](Session& session) { return session.fetch(wish.first, wish.second); });
  }

  template <class Work>
  void step(Work work) {
    if (!session_) return;
    for (Bytes& frame : work(*session_)) pipe_->send(std::move(frame));
    const SessionStatus& now = session_->status();
    const bool proved = now.state >= SessionState::comparing && now.state != SessionState::closed;
    if (proved && !trusted_) {
      trusted_ = true;
      pipe_->trust();
      // A host that is known already is remembered under its present name, address and our present role.
      const auto kept = station_.devices().remember_host({now.peer.key, now.peer.device, options_.address, pipe_->host_fingerprint(),
                                                          now.role, station_.ledger().wall().now()});
      if (!kept) update([&](GuestStatus& status) { status.fault = kept.error(); });
      if (const auto noted = remember_event_of_host(station_.ledger(), now.peer.key, now.event); !noted)
        update([&](GuestStatus& status) { status.fault = noted.error(); });
    }
    for (const ContentFetch& one : now.fetches)
      if (one.state >= FetchState::here) wishes_.erase({one.book, one.hash});
    update([&](GuestStatus& status) {
      status.session = now;
      status.wanted = wishes_;
    });
    if (now.state == SessionState::closed) pipe_->close();
  }

  void closed(const std::shared_ptr<Pipe>& pipe, const std::optional<Fault>& why) {
    if (pipe != pipe_) return;
    const std::optional<Fault> own = session_ ? session_->status().fault : std::nullopt;
    session_.reset();
    pipe_.reset();
    trusted_ = false;
    update([&](GuestStatus& status) {
      status.connected = false;
      status.fault = own ? own : why;
    });
  }

  template <class Change>
  void update(Change change) {
    GuestStatus now;
    {
      const std::lock_guard guard(mutex_);
      change(status_);
      now = status_;
    }
    changed_.notify_all();
    if (on_status_) on_status_(now);
  }

  Station& station_;
  ExchangeGuestOptions options_;
  std::function<void(const GuestStatus&)> on_status_;
  mutable std::mutex mutex_;
  mutable std::condition_variable changed_;
  GuestStatus status_;
  std::atomic<bool> waiting_{false};
  int subscription_ = 0;
  // On the worker thread only.
  std::shared_ptr<Pipe> pipe_;
  std::unique_ptr<Session> session_;
  bool trusted_ = false;
  std::set<std::pair<BookId, Digest>> wishes_;  ///< contents that are wanted and have not come

  std::unique_ptr<WebGuest> web_;
  std::unique_ptr<Ticker> ticker_;
};

ExchangeGuestOptions ExchangeGuest::to_pair(const PairingCode& code) {
  ExchangeGuestOptions options;
  options.address = code.address;
  options.pin = code.fingerprint;
  options.secret = code.secret;
  return options;
}

ExchangeGuestOptions ExchangeGuest::to_return(const KnownHost& host) {
  ExchangeGuestOptions options;
  options.address = host.address;
  options.pin = host.fingerprint;
  options.expected = host.key;
  options.keep_trying = true;
  return options;
}

ExchangeGuest::ExchangeGuest(Station& station, ExchangeGuestOptions options, std::function<void(const GuestStatus&)> on_status)
    : impl_(std::make_unique<Impl>(station, std::move(options), std::move(on_status))) {}
ExchangeGuest::~ExchangeGuest() = default;

GuestStatus ExchangeGuest::status() const { return impl_->status(); }
bool ExchangeGuest::wait(std::chrono::milliseconds time, const std::function<bool(const GuestStatus&)>& until) const {
  return impl_->wait(time, until);
}
void ExchangeGuest::scope_changed() { impl_->changed(); }
void ExchangeGuest::wish_invitation(Role role, UnixMs life) { impl_->wish_invitation(role, life); }
void ExchangeGuest::wish_devices() { impl_->wish_devices(); }
void ExchangeGuest::wish_revocation(const PublicKey& device) { impl_->wish_revocation(device); }
void ExchangeGuest::wish_change(const PublicKey& device, const std::string& name, std::optional<Role> role) { impl_->wish_change(device, name, role); }
void ExchangeGuest::fetch_content(const BookId& book, const Digest& hash) { impl_->fetch_content(book, hash); }
void ExchangeGuest::retry_now() { impl_->retry_now(); }

}  // namespace weavelog
