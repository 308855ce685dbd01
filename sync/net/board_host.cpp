#include "sync/net/board_host.h"

#include <spdlog/spdlog.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <boost/asio/post.hpp>
#include <boost/asio/steady_timer.hpp>
#include <boost/beast/core/flat_buffer.hpp>
#include <boost/beast/core/tcp_stream.hpp>
#include <boost/beast/http.hpp>
#include <boost/beast/http/span_body.hpp>
#include <cctype>
#include <ctime>
#include <list>
#include <optional>
#include <stdexcept>
#include <string_view>

#include "sync/net/io_thread.h"
#include "sync/net/listener.h"
#include "sync/net/per_second.h"
#include "sync/net/preferred_language.h"
#include "sync/net/worker.h"

namespace weavelog {
namespace {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using asio::ip::tcp;
using Error = boost::system::error_code;
using Clock = std::chrono::steady_clock;
using Request = http::request<http::empty_body>;
using Answer = http::response<http::span_body<const char>>;
using Pages = std::shared_ptr<const BoardPages>;

constexpr std::uint32_t kMaxBoardHeader = 8 * 1024;
constexpr std::chrono::milliseconds kAcceptPause{100};
/// What is still on its way from who is told no is taken in for so long, and so much of it: a connection that is closed with bytes unread
/// takes its last answer with it (RFC 9112, 9.6).
constexpr std::chrono::milliseconds kLinger{1'000};
constexpr std::size_t kLingerBytes = 64 * 1024;
/// An answer that is not taken lies in the system's memory.
constexpr int kSendBuffer = 64 * 1024;
std::string_view view(beast::string_view text) { return {text.data(), text.size()}; }

/// IMF-fixdate (RFC 9110, 5.6.7), independent of the process's locale.
std::string http_date(std::time_t now) {
  constexpr std::array kDays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
  constexpr std::array kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  std::tm at{};
  ::gmtime_r(&now, &at);
  const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::string(kDays[static_cast<std::size_t>(at.tm_wday)]) + ", " + two(at.tm_mday) + " " +
         kMonths[static_cast<std::size_t>(at.tm_mon)] + " " + std::to_string(at.tm_year + 1900) + " " + two(at.tm_hour) + ":" + two(at.tm_min) +
         ":" + two(at.tm_sec) + " GMT";
}

/// The path of a request's target, in origin or absolute form (RFC 9112, 3.2).
std::string_view path_of(std::string_view target) {
  constexpr std::string_view kScheme = "http://";
  if (target.starts_with(kScheme)) {
    const auto slash = target.find('/', kScheme.size());
    target = slash == std::string_view::npos ? std::string_view("/") : target.substr(slash);
  }
  return target.substr(0, target.find('?'));
}

}  // namespace

class BoardHost::Impl : public std::enable_shared_from_this<BoardHost::Impl> {
 public:
  explicit Impl(BoardHostOptions options) : options_(std::move(options)), copies_(options_.languages.size()) {
    if (options_.languages.empty() || !options_.render) throw std::logic_error("BoardHost: languages and render are needed");
  }

  Outcome<> begin() {
    if (auto listening = listen_on(acceptor_, options_.address, options_.port); !listening) return listening;
    Error ignored;
    port_ = acceptor_.local_endpoint(ignored).port();
    accept_next();
    thread_.emplace(io_);
    return {};
  }

  void stop() {
    // The worker first: what it posts must find the I/O thread, or it would lie in the context and own us for ever.
    worker_.stop();
    asio::post(*io_, [self = shared_from_this()] { self->end_all(); });
    thread_.reset();
  }

  [[nodiscard]] std::uint16_t port() const { return port_; }
  [[nodiscard]] std::size_t connections() const { return connections_; }
  [[nodiscard]] std::uint64_t renders() const { return renders_; }

 private:
  class Visit;
  using Visits = std::list<std::shared_ptr<Visit>>;
  using Taker = std::function<void(const Pages&)>;

  /// The page of one language.
  struct Copy {
    Pages pages;  ///< none if making it failed
    std::optional<Clock::time_point> made;
    bool under_way = false;
    std::vector<Taker> takers;
  };

  // --- the I/O thread, as is everything below

  void accept_next() {
    acceptor_.async_accept([self = shared_from_this()](Error error, tcp::socket socket) {
      if (self->stopping_ || error == asio::error::operation_aborted) return;
      if (error) {
        // Out of descriptors or memory: the listener would report it again at once, and for ever.
        spdlog::warn("the board can't take a connection: {}", error.message());
        return self->accept_after(kAcceptPause);
      }
      self->make_room();
      self->take(std::move(socket));
      const auto now = Clock::now();
      (void)self->accepts_.take(now);
      if (!self->accepts_.none_left()) return self->accept_next();
      self->accept_after(self->accepts_.end() - now);
    });
  }
  void accept_after(Clock::duration time) {
    pause_.expires_after(time);
    pause_.async_wait([self = shared_from_this()](Error cancelled) {
      if (!cancelled && !self->stopping_) self->accept_next();
    });
  }

  void make_room();
  void take(tcp::socket socket);
  void end_all();

  /// Gives the page at once or as soon as it is made; none if that fails.
  void pages(std::size_t language, Taker taker) {
    Copy& copy = copies_[language];
    if (copy.made && Clock::now() - *copy.made < options_.limits.keep) return taker(copy.pages);
    copy.takers.push_back(std::move(taker));
    if (copy.under_way) return;
    copy.under_way = worker_.post([self = shared_from_this(), language] { self->render(language); });
    if (!copy.under_way) made(language, nullptr);
  }

  /// On the worker thread.
  void render(std::size_t language) {
    Pages fresh;
    std::string trouble;
    try {
      ++renders_;
      if (auto rendered = options_.render(options_.languages[language])) {
        fresh = std::make_shared<const BoardPages>(std::move(*rendered));
      } else {
        trouble = rendered.error().message();
      }
    } catch (const std::exception& error) {
      trouble = error.what();
    }
    asio::post(*io_, [self = shared_from_this(), language, fresh = std::move(fresh), trouble = std::move(trouble)] {
      // Once, not every second.
      if (!trouble.empty() && !self->in_trouble_) spdlog::warn("the board can't be made: {}", trouble);
      self->in_trouble_ = !trouble.empty();
      self->made(language, fresh);
    });
  }

  void made(std::size_t language, const Pages& fresh) {
    Copy& copy = copies_[language];
    copy.under_way = false;
    copy.pages = fresh;
    copy.made = Clock::now();
    const auto takers = std::exchange(copy.takers, {});
    for (const Taker& taker : takers) taker(fresh);
  }

  const BoardHostOptions options_;
  const std::shared_ptr<asio::io_context> io_ = std::make_shared<asio::io_context>(1);
  tcp::acceptor acceptor_{*io_};
  asio::steady_timer pause_{*io_};
  PerSecond accepts_{options_.limits.connections_per_second}, requests_{options_.limits.requests_per_second};
  Visits visits_;  ///< who has been waiting for a request longest stands first
  std::vector<Copy> copies_;  ///< by language
  bool stopping_ = false;
  bool in_trouble_ = false;
  std::uint16_t port_ = 0;
  std::atomic<std::size_t> connections_{0};
  std::atomic<std::uint64_t> renders_{0};
  Worker worker_;
  std::optional<IoThread> thread_;
};

/// One connection: a request, its answer, the next request. Every operation under way keeps it alive.
class BoardHost::Impl::Visit : public std::enable_shared_from_this<Visit> {
 public:
  Visit(tcp::socket socket, std::shared_ptr<Impl> host)
      : host_(std::move(host)), stream_(std::move(socket)), timer_(*host_->io_), own_requests_(host_->options_.limits.requests_per_connection) {
    Error ignored;
    stream_.socket().set_option(tcp::no_delay(true), ignored);
    stream_.socket().set_option(asio::socket_base::send_buffer_size(kSendBuffer), ignored);
  }

  [[nodiscard]] bool waits() const { return waits_; }
  void place(Visits::iterator place) { place_ = place; }

  void read_next() {
    waits_ = true;
    host_->visits_.splice(host_->visits_.end(), host_->visits_, place_);
    parser_.emplace();
    parser_->header_limit(kMaxBoardHeader);
    stream_.expires_after(host_->options_.limits.request);
    http::async_read_header(stream_, buffer_, *parser_, [self = shared_from_this()](Error error, std::size_t) {
      if (self->gone_) return;
      self->waits_ = false;
      if (!error) return self->read();
      if (error == http::error::header_limit || error == http::error::buffer_overflow)
        return self->refuse(http::status::request_header_fields_too_large, "The request is too large.\n");
      const bool no_http = error.category() == http::make_error_code(http::error::bad_method).category();
      const bool closed = error == http::error::end_of_stream || error == http::error::partial_message;
      if (no_http && !closed) return self->refuse(http::status::bad_request, "That is no request.\n");
      self->end();  // or too slow
    });
  }

  /// Ends it at once.
  void end() {
    if (gone_) return;
    gone_ = true;
    timer_.cancel();
    stream_.close();
    host_->visits_.erase(place_);
    host_->connections_ = host_->visits_.size();
  }

 private:
  void read() {
    const Request& request = parser_->get();
    keep_ = request.keep_alive();
    head_ = request.method() == http::verb::head;
    if (!head_ && request.method() != http::verb::get) return refuse(http::status::method_not_allowed, "Only GET and HEAD.\n");
    // RFC 9112, 3.2; and nobody sends a body to be shown a page.
    if (request.version() >= 11 && request.count(http::field::host) != 1) return refuse(http::status::bad_request, "A Host is needed.\n");
    if (parser_->chunked() || parser_->content_length().value_or(0) > 0) return refuse(http::status::bad_request, "No body is taken.\n");
    const auto now = Clock::now();
    for (PerSecond* rate : {&own_requests_, &host_->requests_}) {
      if (rate->take(now)) continue;
      timer_.expires_at(rate->end());
      return timer_.async_wait([self = shared_from_this()](Error cancelled) {
        if (!cancelled && !self->gone_) self->read();
      });
    }
    const std::string_view path = path_of(view(request.target()));
    if (path != "/" && path != "/board.json") return say(http::status::not_found, "There is nothing here.\n");
    ask_for_pages(path == "/");
  }

  void ask_for_pages(bool page) {
    const auto round = ++round_;
    timer_.expires_after(host_->options_.limits.render);
    timer_.async_wait([self = shared_from_this(), round](Error cancelled) {
      if (!cancelled && !self->gone_ && round == self->round_) self->answer(nullptr, false);
    });
    host_->pages(preferred_language(view(parser_->get()[http::field::accept_language]), host_->options_.languages),
                 [weak = weak_from_this(), round, page](const Pages& pages) {
                   const auto self = weak.lock();
                   if (self && !self->gone_ && round == self->round_) self->answer(pages, page);
                 });
  }

  void answer(const Pages& pages, bool page) {
    ++round_;
    timer_.cancel();
    if (!pages) return say(http::status::service_unavailable, "Not at the moment.\n");
    held_ = pages;
    prepare(http::status::ok);
    answer_->set(http::field::vary, "Accept-Language");
    if (page) {
      answer_->set("Content-Security-Policy", host_->options_.policy);
      return write("text/html; charset=utf-8", held_->html);
    }
    answer_->set(http::field::etag, held_->etag);
    // An entity tag holds no quote, so to find it with its quotes is to find it in the list (RFC 9110, 13.1.2).
    const std::string_view known = view(parser_->get()[http::field::if_none_match]);
    if (known != "*" && known.find(held_->etag) == std::string_view::npos) return write("application/json", held_->json);
    answer_->result(http::status::not_modified);
    write({}, {});
  }

  /// A word in plain text.
  void say(http::status status, std::string_view text) {
    prepare(status);
    if (status == http::status::method_not_allowed) answer_->set(http::field::allow, "GET, HEAD");
    if (status == http::status::service_unavailable) answer_->set(http::field::retry_after, "2");
    write("text/plain; charset=utf-8", text);
  }
  void refuse(http::status status, std::string_view text) {
    keep_ = false;
    say(status, text);
  }

  void prepare(http::status status) {
    answer_.emplace(status, 11);
    answer_->keep_alive(keep_);
    answer_->set(http::field::date, http_date(std::time(nullptr)));
    answer_->set(http::field::cache_control, "no-store");
    answer_->set("X-Content-Type-Options", "nosniff");
    answer_->set("Referrer-Policy", "no-referrer");
    answer_->set("Cross-Origin-Resource-Policy", "same-origin");
  }

  /// `body` has to live until it is written.
  void write(std::string_view type, std::string_view body) {
    if (!type.empty()) {
      answer_->set(http::field::content_type, beast::string_view(type.data(), type.size()));
      answer_->content_length(body.size());
      if (!head_) answer_->body() = {body.data(), body.size()};
    }
    stream_.expires_after(host_->options_.limits.answer);
    http::async_write(stream_, *answer_, [self = shared_from_this()](Error error, std::size_t) {
      if (self->gone_) return;
      self->held_.reset();
      if (error) return self->end();
      self->head_ = false;
      if (self->keep_) return self->read_next();
      self->stream_.socket().shutdown(tcp::socket::shutdown_send, error);
      self->stream_.expires_after(kLinger);
      self->buffer_.clear();
      self->linger(kLingerBytes);
    });
  }

  void linger(std::size_t left) {
    stream_.async_read_some(asio::buffer(rest_), [self = shared_from_this(), left](Error error, std::size_t size) {
      if (self->gone_) return;
      if (error || size >= left) return self->end();
      self->linger(left - size);
    });
  }

  const std::shared_ptr<Impl> host_;
  Visits::iterator place_;
  beast::tcp_stream stream_;
  beast::flat_buffer buffer_{kMaxBoardHeader};
  asio::steady_timer timer_;
  PerSecond own_requests_;
  std::optional<http::request_parser<http::empty_body>> parser_;
  std::optional<Answer> answer_;
  Pages held_;
  std::array<char, 512> rest_;
  std::uint64_t round_ = 0;
  bool keep_ = false;
  bool head_ = false;
  bool waits_ = true;
  bool gone_ = false;
};

void BoardHost::Impl::make_room() {
  while (visits_.size() >= options_.limits.connections && !visits_.empty()) {
    auto oldest = std::find_if(visits_.begin(), visits_.end(), [](const auto& visit) { return visit->waits(); });
    if (oldest == visits_.end()) oldest = visits_.begin();
    const auto visit = *oldest;
    visit->end();
  }
}

void BoardHost::Impl::take(tcp::socket socket) {
  const auto visit = std::make_shared<Visit>(std::move(socket), shared_from_this());
  visit->place(visits_.insert(visits_.end(), visit));
  connections_ = visits_.size();
  visit->read_next();
}

void BoardHost::Impl::end_all() {
  stopping_ = true;
  Error ignored;
  acceptor_.close(ignored);
  pause_.cancel();
  while (!visits_.empty()) {
    const auto visit = visits_.front();
    visit->end();
  }
  for (Copy& copy : copies_) copy.takers.clear();
}

BoardHost::BoardHost(std::shared_ptr<Impl> impl) : impl_(std::move(impl)) {}
BoardHost::~BoardHost() { impl_->stop(); }

Outcome<std::unique_ptr<BoardHost>> BoardHost::start(BoardHostOptions options) {
  auto impl = std::make_shared<Impl>(std::move(options));
  if (const auto begun = impl->begin(); !begun) return fail(begun.error());
  return std::unique_ptr<BoardHost>(new BoardHost(std::move(impl)));
}

std::uint16_t BoardHost::port() const { return impl_->port(); }
std::size_t BoardHost::connections() const { return impl_->connections(); }
std::uint64_t BoardHost::renders() const { return impl_->renders(); }

}  // namespace weavelog
