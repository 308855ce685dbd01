// Hosts and guests that look for each other over real sockets of this machine. Others may answer too (a
// server that runs here, at the default port): they are left out by their key.

#include "sync/net/nearby.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <functional>
#include <thread>

#include "sync/net/host.h"
#include "tests/sync/net/udp_socket.h"

using namespace weavelog;
using namespace weavelog::test;
using namespace std::chrono_literals;

namespace {

NearbyOffer offer(std::uint16_t port, const std::string& name = "Harbour desk") {
  NearbyOffer out;
  out.key = DeviceKey::generate().public_key();
  out.fingerprint.fill(0xc0);
  out.port = port;
  out.name = name;
  out.event = "Harbour Open";
  return out;
}

std::unique_ptr<NearbyHost> answering(const NearbyOffer& offer, const std::string& address = "127.0.0.1") {
  NearbyHostOptions options;
  options.address = address;
  options.offer = offer;
  auto started = NearbyHost::start(std::move(options));
  if (!started) FAIL(started.error().message());
  return std::move(*started);
}

NearbySearchOptions quick(std::uint16_t port) {
  NearbySearchOptions options;
  options.ports = {port};
  options.pace = 50ms;
  options.life = 400ms;
  return options;
}

std::optional<NearbyServer> found(const NearbySearch& search, const PublicKey& key) {
  for (const NearbyServer& one : search.servers())
    if (one.offer.key == key) return one;
  return {};
}

bool wait(const std::function<bool()>& holds) {
  for (int i = 0; i < 1000; ++i) {
    if (holds()) return true;
    std::this_thread::sleep_for(10ms);
  }
  return false;
}

}  // namespace

TEST_CASE("near: a guest sees a host come, change its event's name, and go", "[near]") {
  const NearbyOffer own = offer(free_udp_port());
  std::atomic<int> changes{0};
  auto options = quick(own.port);
  options.on_change = [&] { ++changes; };
  const NearbySearch search(std::move(options));
  auto host = answering(own);
  REQUIRE(wait([&] { return found(search, own.key).has_value(); }));
  CHECK(found(search, own.key)->offer == own);
  CHECK(found(search, own.key)->address == Address{"127.0.0.1", own.port});
  host->set_event("Lakeside Cup");
  CHECK(wait([&] { return found(search, own.key)->offer.event == "Lakeside Cup"; }));
  const int before = changes;
  CHECK(before >= 2);
  host.reset();
  CHECK(wait([&] { return !found(search, own.key); }));
  CHECK(wait([&] { return changes > before; }));
}

TEST_CASE("near: a host on all addresses, asked by broadcast and on loopback, is one row", "[near]") {
  const NearbyOffer own = offer(free_udp_port());
  for (const char* everywhere : {"0.0.0.0", "::"}) {
    INFO(everywhere);
    if (everywhere == std::string("::") && !has_ipv6()) continue;  // some machines are set up without
    const auto host = answering(own, everywhere);
    const NearbySearch search(quick(own.port));
    REQUIRE(wait([&] { return found(search, own.key).has_value(); }));
    CHECK(wait([&] { return host->answered() >= 3; }));
    const auto servers = search.servers();
    CHECK(std::count_if(servers.begin(), servers.end(),
                        [&](const NearbyServer& one) { return one.offer.key == own.key; }) == 1);
    CHECK(found(search, own.key)->address.host.find(':') == std::string::npos);
  }
}

TEST_CASE("near: a host on one address of a network hears that network's broadcasts", "[near]") {
  const auto address = own_network_address();
  if (!address) {
    WARN("this machine has no network with broadcasts");
    return;
  }
  const NearbyOffer own = offer(free_udp_port());
  const auto host = answering(own, *address);
  const NearbySearch search(quick(own.port));
  REQUIRE(wait([&] { return found(search, own.key).has_value(); }));
  CHECK(found(search, own.key)->address.host == *address);
}

TEST_CASE("near: a taken port and a wrong address are clear faults; TCP on the same number is none",
          "[near]") {
  const NearbyOffer own = offer(free_udp_port());
  const auto first = answering(own);
  NearbyHostOptions options;
  options.address = "127.0.0.1";
  options.offer = own;
  CHECK(NearbyHost::start(options).error().code == FaultCode::locked);
  options.address = "desk";
  CHECK(NearbyHost::start(options).error().code == FaultCode::bad_input);
  options.address = "192.0.2.254";  // RFC 5737: nobody's
  CHECK(NearbyHost::start(options).error().code == FaultCode::io);

  // The page's port first, then the datagrams on the same number: a number that is free for datagrams may
  // have been lent to somebody's connection, and then TCP would fail for a reason of its own.
  WebHostOptions web;
  web.address = "127.0.0.1";
  web.certificate = *make_certificate();
  auto page = WebHost::start(web, {});
  if (!page) FAIL(page.error().message());
  options.address = "127.0.0.1";
  options.offer = offer((*page)->port());
  const auto beside = NearbyHost::start(options);
  if (!beside) FAIL(beside.error().message());
}

TEST_CASE("near: a host answers what is a query, in no more bytes, and nothing else", "[near]") {
  const NearbyOffer own = offer(free_udp_port());
  const auto host = answering(own);
  UdpSocket asker;
  NearbyNonce nonce;
  nonce.fill(7);
  const Bytes query = nearby_query(nonce);
  const Bytes oversized = [&] {
    Bytes out = query;
    out.resize(9000);
    return out;
  }();
  for (const Bytes& wrong : {Bytes{}, Bytes{1}, Bytes(kNearbyBytes, 0), Bytes(query.begin(), query.end() - 1),
                             oversized, nearby_answer(nonce, own)})
    asker.send(own.port, wrong);
  CHECK_FALSE(asker.receive(200ms));
  CHECK(host->answered() == 0);
  asker.send(own.port, query);
  const auto answer = asker.receive(5s);
  REQUIRE(answer);
  CHECK(answer->size() <= query.size());
  CHECK(read_nearby_answer(*answer)->nonce == nonce);
  CHECK(read_nearby_answer(*answer)->offer == own);
}

TEST_CASE("near: a flood gets few answers, and the host answers again afterwards", "[near]") {
  const NearbyOffer own = offer(free_udp_port());
  const auto host = answering(own);
  UdpSocket asker;
  const Bytes query = nearby_query({});
  const auto end = std::chrono::steady_clock::now() + 500ms;
  int sent = 0;
  for (; std::chrono::steady_clock::now() < end; ++sent) asker.send(own.port, query);
  REQUIRE(sent > 100);
  CHECK(wait([&] { return host->answered() > 0; }));
  CHECK(host->answered() <= 16);  // what one asker gets in the one or two seconds that it lasted
  CHECK(wait([&] {
    const auto before = host->answered();
    asker.send(own.port, query);
    std::this_thread::sleep_for(50ms);
    return host->answered() > before;
  }));
}

TEST_CASE("near: answers that nobody asked for are not believed", "[near]") {
  // A stranger at the port answers each query with a nonce of its own choice, then with the one asked for.
  UdpSocket stranger;
  const NearbyOffer own = offer(stranger.port());
  const NearbySearch search(quick(own.port));
  std::optional<NearbyNonce> asked;
  REQUIRE(wait([&] {
    const auto query = stranger.receive(100ms);
    if (query) asked = read_nearby_query(*query);
    return asked.has_value();
  }));
  NearbyNonce other = *asked;
  other[0] ^= 1;
  stranger.reply(nearby_answer(other, own));
  stranger.reply(Bytes(70, 0xff));
  std::this_thread::sleep_for(200ms);
  CHECK_FALSE(found(search, own.key));
  CHECK(wait([&] {
    if (const auto query = stranger.receive(100ms))
      stranger.reply(nearby_answer(*read_nearby_query(*query), own));
    return found(search, own.key).has_value();
  }));
}
