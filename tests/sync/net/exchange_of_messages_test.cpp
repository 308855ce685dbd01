// A host and its guests on the loopback: messages both ways, pins, limits, ends in order.

#include <catch2/catch.hpp>

#include "tests/sync/net/recorder.h"

using namespace weavelog;
using namespace weavelog::test;
using namespace std::chrono_literals;

namespace {
Bytes numbered(std::size_t number, std::size_t size) {
  Bytes out(size, static_cast<std::uint8_t>(number * 31));
  for (std::size_t i = 0; i < std::min<std::size_t>(size, 4); ++i)
    out[i] = static_cast<std::uint8_t>(number >> (8 * i));
  return out;
}
}  // namespace

TEST_CASE("pipe: a thousand messages there and back, in order, on the worker", "[net]") {
  Recorder at_host, at_guest;
  at_host.echo = true;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  const auto pipe = at_guest.pipe();
  CHECK(pipe->host_fingerprint() == host->fingerprint());
  CHECK(at_host.pipe()->host_fingerprint() == host->fingerprint());
  CHECK(pipe->remote() == "127.0.0.1:" + std::to_string(host->port()));
  for (std::size_t i = 0; i < 1000; ++i) pipe->send(numbered(i, i % 50 == 0 ? 60'000 : i % 900));
  REQUIRE(at_guest.wait([&] { return at_guest.messages.size() == 1000; }));
  bool same = true;
  for (std::size_t i = 0; i < 1000; ++i) {
    same = same && at_guest.messages[i] == numbered(i, i % 50 == 0 ? 60'000 : i % 900);
  }
  CHECK(same);
  CHECK(at_guest.thread != std::this_thread::get_id());
  CHECK(at_guest.thread != at_host.thread);
  pipe->close();
  REQUIRE(at_host.wait([&] { return at_host.ends.size() == 1; }));
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  CHECK_FALSE(at_host.ends[0]);
  CHECK_FALSE(at_guest.ends[0]);
}

TEST_CASE("pipe: what was queued before the close arrives, and the reason after it", "[net]") {
  Recorder at_host, at_guest;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  const auto pipe = at_host.pipe();
  for (std::size_t i = 0; i < 20; ++i) pipe->send(numbered(i, 50'000));
  pipe->close(Fault{FaultCode::refused, "this device was revoked", "Tablet 2", "ask for a new code"});
  pipe->send(numbered(99, 10));  // too late: dropped
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  REQUIRE(at_host.wait([&] { return at_host.ends.size() == 1; }));
  CHECK(at_guest.messages.size() == 20);
  REQUIRE(at_guest.ends[0]);
  CHECK(at_guest.ends[0]->code == FaultCode::refused);
  CHECK(at_guest.ends[0]->what == "this device was revoked");
  CHECK(at_guest.ends[0]->what_to_do == "ask for a new code");
  REQUIRE(at_host.ends[0]);
  CHECK(at_host.ends[0]->where == "Tablet 2");
}

TEST_CASE("pipe: of a reason for closing that does not fit the hint goes first, and then whole words", "[net]") {
  Recorder at_host, at_guest;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  std::string what = "every", hint = "ask the head of the room for another role, and then exchange with this event server again";
  const bool long_words = GENERATE(false, true);
  for (int i = 0; i < (long_words ? 40 : 8); ++i) what += " grüner";
  at_host.pipe()->close(Fault{FaultCode::refused, what, "Tablet 2", hint});
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  REQUIRE(at_guest.ends[0]);
  CHECK(at_guest.ends[0]->what_to_do.empty());
  if (!long_words) {
    CHECK(at_guest.ends[0]->what == what);
    return;
  }
  const std::string told = at_guest.ends[0]->what;
  REQUIRE(told.ends_with(" grüner ..."));
  CHECK(told.size() > 90);
  CHECK(what.starts_with(told.substr(0, told.size() - 4)));
}

TEST_CASE("pipe: another certificate than the pinned one is untrusted", "[net]") {
  Recorder at_host, at_guest;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  auto options = guest_of(*host);
  (*options.pin)[31] ^= 1;
  WebGuest guest(options, at_guest.handlers());
  REQUIRE(at_guest.wait([&] { return at_guest.failures.size() == 1; }));
  CHECK(at_guest.failures[0].code == FaultCode::untrusted);
  CHECK_FALSE(at_guest.failures[0].what_to_do.empty());
  CHECK(at_guest.wait([&] { return at_guest.opened == 0; }, 0s));
  CHECK(at_host.wait([&] { return at_host.opened == 0; }, 0s));
}

TEST_CASE("pipe: without a pin the fingerprint is told", "[net]") {
  Recorder at_host, at_guest;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  auto options = guest_of(*host);
  options.pin.reset();
  WebGuest guest(options, at_guest.handlers());
  CHECK(at_guest.pipe()->host_fingerprint() == host->fingerprint());
}

TEST_CASE("pipe: a message over the limit ends that pipe with a reason, and the host lives", "[net]") {
  Recorder at_host, at_guest, at_next;
  at_host.echo = true;
  auto host_options = loopback_host();
  host_options.limits.untrusted_message = 1000;
  const auto host = WebHost::start(host_options, at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  at_guest.pipe()->send(Bytes(1001));
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  REQUIRE(at_guest.ends[0]);
  CHECK(at_guest.ends[0]->code == FaultCode::malformed);
  CHECK(at_guest.ends[0]->what == "a message is larger than is allowed");
  REQUIRE(at_host.wait([&] { return at_host.ends.size() == 1; }));
  REQUIRE(at_host.ends[0]);
  CHECK(at_host.ends[0]->code == FaultCode::malformed);
  CHECK(at_host.wait([&] { return at_host.messages.empty(); }, 0s));

  // Trusted, the same message passes, and so does one of full size.
  WebGuest next(guest_of(*host), at_next.handlers());
  const auto pipe = at_next.pipe();
  at_host.pipe()->trust();
  pipe->send(Bytes(1000));
  REQUIRE(at_next.wait([&] { return at_next.messages.size() == 1; }));
  pipe->send(Bytes(host_options.limits.message));
  REQUIRE(at_next.wait([&] { return at_next.messages.size() == 2; }));
  CHECK(at_next.messages[1].size() == host_options.limits.message);
  CHECK_THROWS_AS(pipe->send(Bytes(host_options.limits.message + 1)), std::logic_error);
}

TEST_CASE("pipe: a device that never proves itself is let go", "[net]") {
  Recorder at_host, at_guest;
  auto options = loopback_host();
  options.limits.proof = 100ms;
  const auto host = WebHost::start(options, at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  REQUIRE(at_host.wait([&] { return at_host.ends.size() == 1; }));
  REQUIRE(at_host.ends[0]);
  CHECK(at_host.ends[0]->code == FaultCode::untrusted);
}

TEST_CASE("pipe: who sends more than the other side takes is told, and cut in the end", "[net]") {
  Recorder at_host, at_guest;
  std::atomic<bool> go{false};
  auto handlers = at_guest.handlers();
  handlers.message = [&](const std::shared_ptr<Pipe>&, const Bytes&) {
    while (!go) std::this_thread::sleep_for(1ms);
    const std::lock_guard lock(at_guest.mutex);
    at_guest.messages.emplace_back();
    at_guest.changed.notify_all();
  };
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), handlers);
  const auto pipe = at_host.pipe();
  CHECK(pipe->writable());
  // The guest's worker stands still: the sockets fill, then the queue.
  int sent = 0;
  for (; sent < 2000 && pipe->writable(); ++sent) {
    pipe->send(Bytes(100'000));
    std::this_thread::sleep_for(1ms);
  }
  REQUIRE_FALSE(pipe->writable());
  go = true;
  REQUIRE(at_host.wait([&] { return at_host.drained == 1; }));
  CHECK(pipe->writable());
  REQUIRE(at_guest.wait([&] { return static_cast<int>(at_guest.messages.size()) == sent; }));

  go = false;
  for (int i = 0; i < 2000 && at_host.wait([&] { return at_host.ends.empty(); }, 0s); ++i)
    pipe->send(Bytes(100'000));
  REQUIRE(at_host.wait([&] { return at_host.ends.size() == 1; }));
  REQUIRE(at_host.ends[0]);
  CHECK(at_host.ends[0]->what.find("too slowly") != std::string::npos);
  go = true;
}

TEST_CASE("pipe: while a message is worked on the one after it can be seen", "[net]") {
  Recorder at_host, at_guest;
  auto handlers = at_guest.handlers();
  std::atomic<bool> go{false};
  std::vector<Bytes> seen;
  handlers.message = [&](const std::shared_ptr<Pipe>& pipe, const Bytes& message) {
    while (!go) std::this_thread::sleep_for(1ms);
    // The last one has none after it; the others have all come by now or come soon.
    for (int i = 0; i < 60'000 && message[0] < 4 && pipe->next_message().empty(); ++i) std::this_thread::sleep_for(1ms);
    const ByteView next = pipe->next_message();
    const std::lock_guard lock(at_guest.mutex);
    seen.emplace_back(next.begin(), next.end());
    at_guest.messages.push_back(message);
    at_guest.changed.notify_all();
  };
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  WebGuest guest(guest_of(*host), handlers);
  const auto pipe = at_host.pipe();
  for (std::size_t i = 0; i < 5; ++i) pipe->send(numbered(i, 1000));
  go = true;
  REQUIRE(at_guest.wait([&] { return at_guest.messages.size() == 5; }));
  for (std::size_t i = 0; i < 5; ++i) {
    CHECK(at_guest.messages[i] == numbered(i, 1000));
    CHECK(seen[i] == (i < 4 ? numbered(i + 1, 1000) : Bytes{}));
  }
}

TEST_CASE("pipe: an exception out of a handler ends its pipe only", "[net]") {
  Recorder at_host, at_guest;
  auto handlers = at_host.handlers();
  handlers.message = [](const std::shared_ptr<Pipe>&, const Bytes&) {
    throw std::runtime_error("thrown by the test");
  };
  const auto host = WebHost::start(loopback_host(), handlers).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  at_guest.pipe()->send(Bytes(3));
  REQUIRE(at_guest.wait([&] { return at_guest.ends.size() == 1; }));
  REQUIRE(at_guest.ends[0]);
  CHECK(at_guest.ends[0]->code == FaultCode::io);
  Recorder at_next;
  WebGuest next(guest_of(*host), at_next.handlers());
  CHECK(at_next.pipe() != nullptr);
}

TEST_CASE("pipe: pings keep a silent one open", "[net]") {
  Recorder at_host, at_guest;
  auto options = loopback_host();
  options.limits.idle = 1200ms;
  const auto host = WebHost::start(options, at_host.handlers()).value();
  WebGuest guest(guest_of(*host), at_guest.handlers());
  REQUIRE(at_guest.pipe());
  std::this_thread::sleep_for(3s);
  CHECK(at_host.wait([&] { return at_host.ends.empty(); }, 0s));
}

TEST_CASE("host: fifty guests at once, each with its own messages in order", "[net]") {
  Recorder at_host;
  at_host.echo = true;
  const auto host = WebHost::start(loopback_host(), at_host.handlers()).value();
  constexpr std::size_t kGuests = 50;
  constexpr std::size_t kMessages = 40;
  std::vector<std::unique_ptr<Recorder>> recorders;
  std::vector<std::unique_ptr<WebGuest>> guests;
  for (std::size_t i = 0; i < kGuests; ++i) {
    recorders.push_back(std::make_unique<Recorder>());
    guests.push_back(std::make_unique<WebGuest>(guest_of(*host), recorders.back()->handlers()));
  }
  for (std::size_t i = 0; i < kGuests; ++i) {
    const auto pipe = recorders[i]->pipe();
    for (std::size_t k = 0; k < kMessages; ++k) pipe->send(numbered(i * 1000 + k, 500));
  }
  for (std::size_t i = 0; i < kGuests; ++i) {
    REQUIRE(recorders[i]->wait([&] { return recorders[i]->messages.size() == kMessages; }));
    bool same = true;
    for (std::size_t k = 0; k < kMessages; ++k) {
      same = same && recorders[i]->messages[k] == numbered(i * 1000 + k, 500);
    }
    CHECK(same);
  }
  CHECK(host->connections() == kGuests);
}
