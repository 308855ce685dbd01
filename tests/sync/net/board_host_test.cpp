// The board's host over loopback: what it answers, what it refuses, what crowds and slow clients cost it. Rules: RFC 9110 (HTTP
// semantics) and RFC 9112 (HTTP/1.1), by section.
#include "sync/net/board_host.h"

#include <arpa/inet.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <unistd.h>

#include <atomic>
#include <catch2/catch.hpp>
#include <ctime>
#include <map>
#include <mutex>
#include <thread>

using namespace weavelog;
using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;

namespace {

struct Got {
  int status = 0;  ///< 0: the connection ended without an answer
  std::map<std::string, std::string> fields;  ///< names in lower case
  std::string body;
  [[nodiscard]] std::string field(const std::string& name) const {
    const auto found = fields.find(name);
    return found == fields.end() ? std::string() : found->second;
  }
};

/// A browser's connection, and one without manners.
class Client {
 public:
  explicit Client(std::uint16_t port, int window = 0) : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
    if (window > 0) ::setsockopt(socket_, SOL_SOCKET, SO_RCVBUF, &window, sizeof window);
    sockaddr_in to{};
    to.sin_family = AF_INET;
    to.sin_port = htons(port);
    to.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    connected_ = ::connect(socket_, reinterpret_cast<sockaddr*>(&to), sizeof to) == 0;
  }
  ~Client() { ::close(socket_); }
  Client(Client&& other) noexcept : socket_(std::exchange(other.socket_, -1)), connected_(other.connected_), held_(std::move(other.held_)) {}
  Client(const Client&) = delete;
  Client& operator=(const Client&) = delete;
  Client& operator=(Client&&) = delete;

  [[nodiscard]] bool connected() const { return connected_; }
  bool send(std::string_view text) const { return ::send(socket_, text.data(), text.size(), MSG_NOSIGNAL) == static_cast<ssize_t>(text.size()); }

  /// The next answer; `head`: to a HEAD request, which has no body.
  Got answer(bool head = false, std::chrono::milliseconds time = 10s) {
    Got got;
    const auto end = Clock::now() + time;
    while (held_.find("\r\n\r\n") == std::string::npos)
      if (!more(end)) return got;
    const auto parted = held_.find("\r\n\r\n");
    const std::string top = held_.substr(0, parted);
    held_.erase(0, parted + 4);
    got.status = std::stoi(top.substr(9, 3));
    for (auto at = top.find("\r\n"); at != std::string::npos; at = top.find("\r\n", at + 2)) {
      const std::string line = top.substr(at + 2, top.find("\r\n", at + 2) - at - 2);
      std::string name = line.substr(0, line.find(':'));
      for (char& c : name) c = static_cast<char>(std::tolower(c));
      got.fields[name] = line.substr(line.find(':') + 2);
    }
    if (head || got.field("content-length").empty()) return got;
    const auto size = std::stoul(got.field("content-length"));
    while (held_.size() < size)
      if (!more(end)) return got;
    got.body = held_.substr(0, size);
    held_.erase(0, size);
    return got;
  }
  Got get(const std::string& path, const std::string& more_fields = {}, const std::string& method = "GET") {
    if (!send(method + " " + path + " HTTP/1.1\r\nHost: board.test\r\n" + more_fields + "\r\n")) return {};
    return answer(method == "HEAD");
  }
  /// The host ended it, or does within the time.
  bool ends_within(std::chrono::milliseconds time) {
    const auto end = Clock::now() + time;
    while (more(end)) held_.clear();
    return ended_;
  }

 private:
  bool more(Clock::time_point end) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - Clock::now()).count();
    pollfd wait{socket_, POLLIN, 0};
    if (left <= 0 || ::poll(&wait, 1, static_cast<int>(left)) <= 0) return false;
    char buffer[65536];
    const auto n = ::recv(socket_, buffer, sizeof buffer, 0);
    if (n <= 0) {
      ended_ = true;
      return false;
    }
    held_.append(buffer, static_cast<std::size_t>(n));
    return true;
  }
  int socket_;
  bool connected_ = false;
  bool ended_ = false;
  std::string held_;
};

/// A board that says what it is told.
struct Board {
  std::mutex mutex;
  std::string word = "first";
  std::atomic<bool> broken{false};
  std::atomic<int> slow_ms{0};
  std::atomic<int> at_once{0}, most_at_once{0};
  std::unique_ptr<BoardHost> host;

  explicit Board(BoardLimits limits = {}, std::size_t page = 100) {
    BoardHostOptions options;
    options.address = "127.0.0.1";
    options.languages = {Language(), *Language::from("de"), *Language::from("fr"), *Language::from("es")};
    options.policy = "default-src 'none'";
    options.limits = limits;
    options.render = [this, page](const Language& language) -> Outcome<BoardPages> {
      most_at_once = std::max(most_at_once.load(), ++at_once);
      std::this_thread::sleep_for(std::chrono::milliseconds(slow_ms));
      --at_once;
      if (broken) throw std::runtime_error("the disk is gone");
      const std::lock_guard guard(mutex);
      const std::string said = word + " " + language.tag();
      return BoardPages{"<p>" + said + std::string(page, '.'), "{\"" + said + "\"}", "\"" + word + language.tag() + "\""};
    };
    auto started = BoardHost::start(std::move(options));
    if (!started) FAIL(started.error().message());
    host = std::move(*started);
  }
  void say(const std::string& text) {
    const std::lock_guard guard(mutex);
    word = text;
  }
  [[nodiscard]] std::uint16_t port() const { return host->port(); }
};

}  // namespace

TEST_CASE("board host: page and JSON come with what keeps them to themselves", "[net]") {
  const Board board;
  Client client(board.port());
  const Got page = client.get("/");
  CHECK(page.status == 200);
  CHECK(page.field("content-type") == "text/html; charset=utf-8");
  CHECK(page.field("content-security-policy") == "default-src 'none'");
  CHECK(page.body.starts_with("<p>first en"));
  const Got json = client.get("/board.json");  // on the same connection
  CHECK(json.status == 200);
  CHECK(json.field("content-type") == "application/json");
  CHECK(json.body == "{\"first en\"}");
  CHECK(json.field("etag") == "\"firsten\"");
  for (const Got* got : {&page, &json}) {
    CHECK(got->field("x-content-type-options") == "nosniff");
    CHECK(got->field("cache-control") == "no-store");
    CHECK(got->field("referrer-policy") == "no-referrer");
    CHECK(got->field("vary") == "Accept-Language");
    std::tm at{};
    CHECK(::strptime(got->field("date").c_str(), "%a, %d %b %Y %H:%M:%S GMT", &at) != nullptr);  // RFC 9110, 5.6.7
    CHECK(std::abs(std::difftime(::timegm(&at), std::time(nullptr))) < 5);
    CHECK(got->field("server").empty());
    CHECK(got->field("set-cookie").empty());
  }
}

TEST_CASE("board host: HEAD says what GET would, without it", "[net]") {
  const Board board;
  Client client(board.port());
  const Got whole = client.get("/"), head = client.get("/", {}, "HEAD");
  CHECK(head.status == 200);
  CHECK(head.field("content-length") == std::to_string(whole.body.size()));  // RFC 9110, 9.3.2
  CHECK(head.field("content-type") == whole.field("content-type"));
  CHECK(client.get("/board.json").status == 200);  // nothing of a body lies between
}

TEST_CASE("board host: who has the newest is told so in a few bytes", "[net]") {
  BoardLimits limits;
  limits.keep = 0ms;
  Board board(limits);
  Client client(board.port());
  const std::string tag = client.get("/board.json").field("etag");
  const Got same = client.get("/board.json", "If-None-Match: " + tag + "\r\n");
  CHECK(same.status == 304);
  CHECK(same.body.empty());
  CHECK(same.field("etag") == tag);
  CHECK_FALSE(same.field("date").empty());
  CHECK(client.get("/board.json", "If-None-Match: \"old\", W/" + tag + "\r\n").status == 304);  // RFC 9110, 13.1.2: a list, compared weakly
  CHECK(client.get("/board.json", "If-None-Match: *\r\n").status == 304);
  CHECK(client.get("/board.json", "If-None-Match: \"firs\"\r\n").status == 200);
  CHECK(client.get("/board.json", "If-None-Match: " + tag + "\r\n", "HEAD").status == 304);
  board.say("second");
  const Got other = client.get("/board.json", "If-None-Match: " + tag + "\r\n");
  CHECK(other.status == 200);
  CHECK(other.body == "{\"second en\"}");
}

TEST_CASE("board host: the language is the one preferred most of those that there are", "[net]") {
  const Board board;
  Client client(board.port());
  const auto language_for = [&](const std::string& accepted) {
    const std::string body = client.get("/board.json", "Accept-Language: " + accepted + "\r\n").body;
    return body.size() > 10 ? body.substr(8, 2) : body;
  };
  // RFC 9110, 12.5.4 and 12.4.2: weights from 0 to 1, none is 1, 0 is "not acceptable".
  CHECK(language_for("de") == "de");
  CHECK(language_for("DE-at") == "de");
  CHECK(language_for("da, en-gb;q=0.8, en;q=0.7") == "en");
  CHECK(language_for("en;q=0.2, fr;q=0.9") == "fr");
  CHECK(language_for("fr-CH, fr;q=0.9, en;q=0.8, de;q=0.7, *;q=0.5") == "fr");
  CHECK(language_for("es;q=0, de;q=0.001") == "de");
  CHECK(language_for("ja, *;q=0.1") == "en");
  CHECK(language_for("zh") == "en");
  CHECK(language_for("fr;q=oops, es;q=0.5") == "es");
  CHECK(language_for(";;;,,,=") == "en");
  CHECK(language_for("") == "en");
}

TEST_CASE("board host: what is no GET or HEAD of its two paths is refused", "[net]") {
  const Board board;
  for (const char* method : {"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "BREW"}) {
    CAPTURE(method);
    Client client(board.port());
    const Got got = client.get("/", "Content-Length: 3\r\n", method);
    CHECK(got.status == 405);
    CHECK(got.field("allow") == "GET, HEAD");  // RFC 9110, 15.5.6
    CHECK(client.ends_within(5s));
  }
  Client client(board.port());
  for (const char* path : {"/nothing", "/board.json/", "/../etc/passwd", "//", "*", "/favicon.ico", "/board.jsonx"}) {
    CAPTURE(path);
    const Got got = client.get(path);
    CHECK(got.status == 404);
    CHECK(got.body.find(path) == std::string::npos);
  }
  CHECK(client.get("/?from=wall").status == 200);
  CHECK(client.get("http://board.test/board.json").status == 200);  // RFC 9112, 3.2.2
  CHECK(client.get("http://board.test").status == 200);
}

TEST_CASE("board host: what is no request, has no Host, or brings a body, is refused and ended", "[net]") {
  const Board board;
  const auto refused = [&](const std::string& bytes) {
    Client client(board.port());
    (void)client.send(bytes);
    const int status = client.answer().status;
    return client.ends_within(5s) ? status : -1;
  };
  CHECK(refused("hello\r\n\r\n") == 400);
  CHECK(refused("GET / HTTP/9.9\r\n\r\n") == 400);
  CHECK(refused("GET / HTTP/1.1\r\n\r\n") == 400);                          // RFC 9112, 3.2
  CHECK(refused("GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n") == 400);
  CHECK(refused("GET / HTTP/1.1\r\nHost: a\r\nContent-Length: 5\r\n\r\nhello") == 400);
  CHECK(refused("GET / HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n") == 400);
  CHECK(refused("GET / HTTP/1.1\r\nHost: a\r\nContent-Length: 0\r\nContent-Length: 9\r\n\r\n") == 400);
  CHECK(refused(std::string("\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03", 11) + std::string(200, 'x') + "\r\n\r\n") == 400);  // TLS
  CHECK(refused("GET / HTTP/1.1\r\nHost: a\r\nX: " + std::string(20'000, 'x') + "\r\n\r\n") == 431);  // RFC 6585, 5
  CHECK(refused("GET /" + std::string(20'000, 'x') + " HTTP/1.1\r\nHost: a\r\n\r\n") == 431);
  Client after(board.port());
  CHECK(after.get("/").status == 200);
}

TEST_CASE("board host: an old browser is answered, and requests sent ahead are answered in order", "[net]") {
  const Board board;
  Client old(board.port());
  (void)old.send("GET / HTTP/1.0\r\n\r\n");
  CHECK(old.answer().status == 200);
  CHECK(old.ends_within(5s));
  Client client(board.port());
  (void)client.send("GET /board.json HTTP/1.1\r\nHost: a\r\n\r\nGET /nothing HTTP/1.1\r\nHost: a\r\n\r\nGET / HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n");
  CHECK(client.answer().field("content-type") == "application/json");
  CHECK(client.answer().status == 404);
  CHECK(client.answer().body.starts_with("<p>"));
  CHECK(client.ends_within(5s));
}

TEST_CASE("board host: whoever is slow to ask, or to take the answer, is ended", "[net]") {
  BoardLimits limits;
  limits.request = 600ms;
  limits.answer = 600ms;
  const Board board(limits, 8'000'000);
  Client silent(board.port()), dripping(board.port()), deaf(board.port(), 4096);
  (void)deaf.send("GET / HTTP/1.1\r\nHost: a\r\n\r\n");
  const auto begin = Clock::now();
  std::string request = "GET / HTTP/1.1\r\nX: ";
  while (Clock::now() - begin < 20s && dripping.send(std::string_view(request).substr(0, 1))) {
    request = request.size() > 1 ? request.substr(1) : std::string("x");
    if (dripping.ends_within(40ms)) break;
  }
  CHECK(Clock::now() - begin < 15s);  // the limit and a moment on a quiet machine
  CHECK(silent.ends_within(10s));
  while (board.host->connections() > 0 && Clock::now() - begin < 30s) std::this_thread::sleep_for(20ms);
  CHECK(board.host->connections() == 0);
}

TEST_CASE("board host: over the limit the one that has been waiting longest makes room", "[net]") {
  BoardLimits limits;
  limits.connections = 8;
  const Board board(limits);
  std::vector<Client> crowd;
  for (int i = 0; i < 8; ++i) {
    crowd.emplace_back(board.port());
    REQUIRE(crowd.back().get("/board.json").status == 200);
  }
  REQUIRE(crowd[0].get("/board.json").status == 200);  // now the second has waited longest
  Client one_more(board.port());
  CHECK(one_more.get("/").status == 200);
  CHECK(crowd[1].ends_within(10s));
  CHECK(crowd[0].get("/board.json").status == 200);
  CHECK(board.host->connections() == 8);
}

TEST_CASE("board host: a flood of connections that say nothing shuts nobody out", "[net]") {
  BoardLimits limits;
  limits.connections = 32;
  const Board board(limits);
  std::atomic<bool> over{false};
  std::thread flood([&] {
    std::vector<Client> held;
    while (!over) {
      held.emplace_back(board.port());
      if (held.size() > 200) held.clear();
      std::this_thread::sleep_for(1ms);
    }
  });
  int answered = 0;
  for (int i = 0; i < 20; ++i) {
    Client client(board.port());
    if (client.get("/board.json").status == 200) ++answered;
  }
  over = true;
  flood.join();
  CHECK(answered >= 18);
  CHECK(board.host->connections() <= 32);
}

TEST_CASE("board host: however many ask, a page is made at most once a second in each language", "[net]") {
  Board board;
  const auto begin = Clock::now();
  std::vector<Client> clients;
  for (int i = 0; i < 40; ++i) clients.emplace_back(board.port());
  int answered = 0;
  while (Clock::now() - begin < 1500ms)
    for (Client& client : clients) answered += client.get("/board.json").status == 200 ? 1 : 0;
  const auto seconds = std::chrono::duration<double>(Clock::now() - begin).count();
  CHECK(answered >= 100);
  CHECK(static_cast<double>(board.host->renders()) <= seconds + 1);
  // Nobody asked for the other languages, so they were not made.
  CHECK(clients.front().get("/", "Accept-Language: es\r\n").body.starts_with("<p>first es"));
}

TEST_CASE("board host: one client that asks without a pause is slowed down, the others are not", "[net]") {
  BoardLimits limits;
  limits.requests_per_connection = 20;
  const Board board(limits);
  std::string many;
  for (int i = 0; i < 60; ++i) many += "GET /board.json HTTP/1.1\r\nHost: a\r\n\r\n";
  Client greedy(board.port()), patient(board.port());
  const auto begin = Clock::now();
  REQUIRE(greedy.send(many));
  for (int i = 0; i < 3; ++i) {
    const auto asked = Clock::now();
    CHECK(patient.get("/board.json").status == 200);
    CHECK(Clock::now() - asked < 500ms);
  }
  for (int i = 0; i < 60; ++i) REQUIRE(greedy.answer().status == 200);
  CHECK(Clock::now() - begin >= 1s);
}

TEST_CASE("board host: what can't be made is said, logged once, and made again when it can be", "[net]") {
  BoardLimits limits;
  limits.keep = 50ms;
  limits.render = 300ms;
  Board board(limits);
  Client client(board.port());
  REQUIRE(client.get("/board.json").status == 200);
  board.broken = true;
  std::this_thread::sleep_for(60ms);
  const Got failed = client.get("/board.json");
  CHECK(failed.status == 503);
  CHECK_FALSE(failed.field("retry-after").empty());
  CHECK(failed.body.find("disk") == std::string::npos);
  board.broken = false;
  board.slow_ms = 1000;
  std::this_thread::sleep_for(60ms);
  const auto begin = Clock::now();
  CHECK(client.get("/board.json").status == 503);  // too long
  CHECK(Clock::now() - begin < 900ms);
  board.slow_ms = 0;
  std::this_thread::sleep_for(1200ms);
  CHECK(client.get("/board.json").status == 200);
  CHECK(board.most_at_once == 1);
}

TEST_CASE("board host: ends at once with clients connected and a page in the making", "[net]") {
  auto board = std::make_unique<Board>();
  board->slow_ms = 300;
  std::vector<Client> clients;
  for (int i = 0; i < 5; ++i) {
    clients.emplace_back(board->port());
    (void)clients.back().send("GET / HTTP/1.1\r\nHost: a\r\n\r\n");
  }
  Client silent(board->port());
  std::this_thread::sleep_for(50ms);
  const auto begin = Clock::now();
  board->host.reset();
  CHECK(Clock::now() - begin < 10s);
  CHECK(silent.ends_within(10s));
}

TEST_CASE("board host: a taken port and an address that is none are clear faults", "[net]") {
  const Board board;
  BoardHostOptions options;
  options.languages = {Language()};
  options.render = [](const Language&) -> Outcome<BoardPages> { return BoardPages{}; };
  options.address = "127.0.0.1";
  options.port = board.port();
  const auto taken = BoardHost::start(options);
  REQUIRE_FALSE(taken);
  CHECK(taken.error().code == FaultCode::locked);
  options.address = "lounge";
  const auto none = BoardHost::start(options);
  REQUIRE_FALSE(none);
  CHECK(none.error().code == FaultCode::bad_input);
}

TEST_CASE("board host: five hundred phones poll at once, and each sees a change", "[net]") {
  // Both ends are in this process.
  rlimit limit{};
  REQUIRE(::getrlimit(RLIMIT_NOFILE, &limit) == 0);
  limit.rlim_cur = std::max<rlim_t>(limit.rlim_cur, std::min<rlim_t>(limit.rlim_max, 4096));
  REQUIRE(::setrlimit(RLIMIT_NOFILE, &limit) == 0);
  Board board;
  std::vector<Client> phones;
  for (int i = 0; i < 500; ++i) {
    phones.emplace_back(board.port());
    REQUIRE(phones.back().connected());
  }
  const std::string ask = "GET /board.json HTTP/1.1\r\nHost: a\r\nIf-None-Match: ";
  const auto round = [&](const std::string& tag, int status) {
    const auto begin = Clock::now();
    for (Client& phone : phones) REQUIRE(phone.send(ask + tag + "\r\n\r\n"));
    int good = 0;
    for (Client& phone : phones) good += phone.answer().status == status ? 1 : 0;
    CHECK(good == 500);
    return std::chrono::duration<double>(Clock::now() - begin).count();
  };
  const auto since = Clock::now();
  round("\"none\"", 200);
  CHECK(round("\"firsten\"", 304) < 15);  // a tenth of a second on a quiet machine
  board.say("second");
  std::this_thread::sleep_for(1100ms);
  round("\"firsten\"", 200);
  CHECK(board.host->connections() == 500);
  // One a second, however many ask: three or four on a quiet machine.
  CHECK(static_cast<double>(board.host->renders()) <= std::chrono::duration<double>(Clock::now() - since).count() + 2);
}
