// Beginnings and ends: ports, stops, restarts, strangers at the door.

#include <openssl/ssl.h>

#include <catch2/catch.hpp>

#include "tests/sync/net/recorder.h"

using namespace weavelog;
using namespace weavelog::test;
using namespace std::chrono_literals;

namespace {

/// One HTTP/1.1 request over TLS; the whole answer.
std::string request(std::uint16_t port, const std::string& text) {
  const RawSocket socket(port);
  SSL_CTX* const tls = SSL_CTX_new(TLS_client_method());
  SSL* const ssl = SSL_new(tls);
  SSL_set_fd(ssl, socket.fd());
  std::string out;
  if (SSL_connect(ssl) == 1 && SSL_write(ssl, text.data(), static_cast<int>(text.size())) > 0) {
    char buffer[1024];
    for (int n = SSL_read(ssl, buffer, sizeof buffer); n > 0; n = SSL_read(ssl, buffer, sizeof buffer)) {
      out.append(buffer, static_cast<std::size_t>(n));
    }
  }
  SSL_free(ssl);
  SSL_CTX_free(tls);
  return out;
}

std::string get(std::uint16_t port, const std::string& path) {
  return request(port, "GET " + path + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
}

std::chrono::milliseconds time_of(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - begin);
}

}  // namespace

TEST_CASE("host: a taken port is a clear fault", "[net]") {
  const auto first = WebHost::start(loopback_host(), {}).value();
  const auto second = WebHost::start(loopback_host(first->port()), {});
  REQUIRE_FALSE(second);
  CHECK(second.error().code == FaultCode::locked);
  CHECK(second.error().what.find(std::to_string(first->port())) != std::string::npos);
  CHECK(second.error().what_to_do.find("another port") != std::string::npos);
}

TEST_CASE("host: wrong addresses and certificates are clear faults", "[net]") {
  auto options = loopback_host();
  options.address = "desk";
  CHECK(WebHost::start(options, {}).error().code == FaultCode::bad_input);
  options.address = "192.0.2.1";  // RFC 5737: nobody's
  CHECK(WebHost::start(options, {}).error().code == FaultCode::bad_input);
  options = loopback_host();
  options.certificate.key_pem = make_certificate()->key_pem;
  CHECK(WebHost::start(options, {}).error().code == FaultCode::untrusted);
  options.certificate = {};
  CHECK(WebHost::start(options, {}).error().code == FaultCode::untrusted);
}

TEST_CASE("host: tells its health, and nothing else", "[net]") {
  auto options = loopback_host();
  options.health = [] { return std::string("{\"status\":\"ok\"}\n"); };
  const auto host = WebHost::start(options, {}).value();
  const std::string health = get(host->port(), "/health");
  CHECK(health.starts_with("HTTP/1.1 200"));
  CHECK(health.find("application/json") != std::string::npos);
  CHECK(health.ends_with("{\"status\":\"ok\"}\n"));
  CHECK(get(host->port(), "/").starts_with("HTTP/1.1 404"));
  CHECK(get(host->port(), "/exchange").starts_with("HTTP/1.1 404"));
  CHECK(get(host->port(), "/health/../etc/passwd").starts_with("HTTP/1.1 404"));
  CHECK(request(host->port(), "POST /health HTTP/1.1\r\nHost: a\r\nContent-Length: 0\r\n\r\n")
            .starts_with("HTTP/1.1 404"));
  CHECK(request(host->port(), "nonsense\r\n\r\n").empty());
  CHECK(request(host->port(), "GET / HTTP/1.1\r\nX: " + std::string(20'000, 'x') + "\r\n\r\n").empty());
  CHECK(get(host->port(), "/health").starts_with("HTTP/1.1 200"));
}

TEST_CASE("host: an older TLS is refused", "[net]") {
  const auto host = WebHost::start(loopback_host(), {}).value();
  const RawSocket socket(host->port());
  SSL_CTX* const tls = SSL_CTX_new(TLS_client_method());
  SSL_CTX_set_max_proto_version(tls, TLS1_2_VERSION);
  SSL* const ssl = SSL_new(tls);
  SSL_set_fd(ssl, socket.fd());
  CHECK(SSL_connect(ssl) != 1);
  SSL_free(ssl);
  SSL_CTX_free(tls);
}

TEST_CASE("host: garbage and half-open connections cost nothing", "[net]") {
  Recorder at_host, at_guest;
  auto options = loopback_host();
  options.limits.handshake = 500ms;
  options.max_connections = 40;
  const auto host = WebHost::start(options, at_host.handlers()).value();
  {
    std::vector<std::unique_ptr<RawSocket>> silent;
    for (int i = 0; i < 30; ++i) silent.push_back(std::make_unique<RawSocket>(host->port()));
    for (int i = 0; i < 5; ++i) {
      const RawSocket garbage(host->port());
      garbage.write("GET / HTTP/1.1\r\nHost: plain\r\n\r\n");
      garbage.write(std::string(100'000, '\xff'));
      CHECK(garbage.read_to_end());
    }
    // Somebody honest comes in meanwhile, and the silent ones are let go in time.
    WebGuest guest(guest_of(*host), at_guest.handlers());
    CHECK(at_guest.pipe() != nullptr);
    for (const auto& socket : silent) CHECK(socket->read_to_end());
  }
  CHECK(at_host.wait([&] { return at_host.opened == 1; }));
}

TEST_CASE("host: who connects and keeps silent shuts nobody out", "[net]") {
  Recorder at_host, at_guest;
  auto options = loopback_host();
  options.max_strangers = 8;
  const auto host = WebHost::start(options, at_host.handlers()).value();
  // Far from the time limits of the silent ones, of which only the last few may stay.
  std::vector<std::unique_ptr<RawSocket>> silent;
  for (int i = 0; i < 40; ++i) silent.push_back(std::make_unique<RawSocket>(host->port()));
  for (std::size_t i = 0; i < 32; ++i) CHECK(silent[i]->read_to_end());
  CHECK(host->connections() <= 8);
  WebGuest guest(guest_of(*host), at_guest.handlers());
  const auto pipe = at_guest.pipe();
  at_host.pipe()->trust();
  // Who proved who it is stays, however many come.
  for (int i = 0; i < 40; ++i) silent.push_back(std::make_unique<RawSocket>(host->port()));
  CHECK(silent[60]->read_to_end());
  pipe->send(Bytes(5));
  CHECK(at_host.wait([&] { return at_host.messages.size() == 1; }));
  CHECK(at_guest.wait([&] { return at_guest.ends.empty(); }, 0s));
}

TEST_CASE("host: over its number of connections it cuts the new ones, not those known", "[net]") {
  Recorder at_host, at_first, at_second;
  at_host.echo = true;
  auto options = loopback_host();
  options.max_connections = 1;
  const auto host = WebHost::start(options, at_host.handlers()).value();
  WebGuest first(guest_of(*host), at_first.handlers());
  const auto pipe = at_first.pipe();
  at_host.pipe()->trust();
  WebGuest second(guest_of(*host), at_second.handlers());
  REQUIRE(at_second.wait([&] { return at_second.failures.size() == 1; }));
  CHECK(at_second.failures[0].code == FaultCode::io);
  pipe->send(Bytes(5));
  CHECK(at_first.wait([&] { return at_first.messages.size() == 1; }));
}

TEST_CASE("host: stops while busy, tells its guests, and pipes outlive it", "[net]") {
  Recorder at_host, at_guest;
  at_host.echo = true;
  auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  const auto pipe = at_guest.pipe();
  const auto pipe_of_host = at_host.pipe();
  std::atomic<bool> done{false};
  std::thread sender([&] {
    while (!done) {
      if (pipe->writable()) pipe->send(Bytes(20'000));
      std::this_thread::sleep_for(100us);
    }
  });
  REQUIRE(at_guest.wait([&] { return at_guest.messages.size() > 50; }));
  CHECK(time_of([&] { host->stop(); }) < 10s);
  CHECK_FALSE(host->post([] {}));
  host->stop();
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  done = true;
  sender.join();
  CHECK(at_host.wait([&] { return at_host.ends.size() == 1; }, 0s));
  host.reset();
  pipe_of_host->send(Bytes(10));
  pipe_of_host->close();
  CHECK_FALSE(pipe_of_host->writable());
}

TEST_CASE("host and guest: stop from their own worker, and from several threads at once", "[net]") {
  Recorder at_host, at_guest;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  REQUIRE(at_guest.pipe());
  REQUIRE(at_host.pipe());
  REQUIRE(host->post([&] { host->stop(); }));
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  std::vector<std::thread> threads;
  for (int i = 0; i < 4; ++i) {
    threads.emplace_back([&] {
      guest.stop();
      host->stop();
    });
  }
  for (auto& thread : threads) thread.join();
  CHECK(at_host.wait([&] { return at_host.ends.size() == 1; }, 0s));
}

TEST_CASE("guest: nobody there is a clear fault, and stop does not wait for it", "[net]") {
  std::uint16_t port = 0;
  {
    const auto host = WebHost::start(loopback_host(), {}).value();
    port = host->port();
  }
  Recorder at_guest;
  WebGuestOptions options;
  options.address = {"127.0.0.1", port};
  options.reconnect = true;
  options.first_wait = 20s;
  options.longest_wait = 20s;
  WebGuest guest(options, at_guest.handlers());
  REQUIRE(at_guest.wait([&] { return at_guest.failures.size() == 1; }));
  CHECK(at_guest.failures[0].code == FaultCode::io);
  CHECK(at_guest.failures[0].what == "nothing listens there");
  guest.retry_now();
  REQUIRE(at_guest.wait([&] { return at_guest.failures.size() == 2; }));
  CHECK(time_of([&] { guest.stop(); }) < 5s);
}

TEST_CASE("guest: a server that is silent after the connection is given up", "[net]") {
  // A listener that never answers: the kernel accepts for it.
  const int fd = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
  sockaddr_in at{};
  at.sin_family = AF_INET;
  at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof at;
  REQUIRE(::bind(fd, reinterpret_cast<const sockaddr*>(&at), size) == 0);
  REQUIRE(::listen(fd, 5) == 0);
  REQUIRE(::getsockname(fd, reinterpret_cast<sockaddr*>(&at), &size) == 0);
  Recorder at_guest;
  WebGuestOptions options;
  options.address = {"127.0.0.1", ntohs(at.sin_port)};
  options.limits.handshake = 200ms;
  WebGuest guest(options, at_guest.handlers());
  CHECK(at_guest.wait([&] { return at_guest.failures.size() == 1; }));
  Recorder at_other;
  WebGuest other(options, at_other.handlers());
  other.stop();  // in the middle of it
  ::close(fd);
}

TEST_CASE("guest: comes back by itself when the host was restarted", "[net]") {
  Recorder at_guest, at_host;
  at_host.echo = true;
  auto host = WebHost::start(loopback_host(), {}).value();
  const std::uint16_t port = host->port();
  auto options = guest_of(*host);
  options.reconnect = true;
  options.first_wait = 20ms;
  options.longest_wait = 100ms;
  WebGuest guest(options, at_guest.handlers());
  REQUIRE(at_guest.wait([&] { return at_guest.opened == 1; }));
  host.reset();
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  REQUIRE(at_guest.wait([&] { return !at_guest.failures.empty(); }));
  host = WebHost::start(loopback_host(port), at_host.handlers()).value();
  REQUIRE(at_guest.wait([&] { return at_guest.opened == 2; }));
  at_guest.pipe()->send(Bytes(7));
  CHECK(at_guest.wait([&] { return at_guest.messages.size() == 1; }));
}

TEST_CASE("guest: an unknown name is a clear fault", "[net]") {
  Recorder at_guest;
  WebGuestOptions options;
  options.address = {"no-such-machine.invalid", 1};  // RFC 2606: never exists
  WebGuest guest(options, at_guest.handlers());
  REQUIRE(at_guest.wait([&] { return at_guest.failures.size() == 1; }));
  CHECK_FALSE(at_guest.failures[0].what_to_do.empty());
}
