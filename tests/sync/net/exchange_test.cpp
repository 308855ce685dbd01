// Stations with files of their own, over real TLS on loopback.

#include <catch2/catch.hpp>
#include <atomic>
#include <chrono>
#include <future>
#include <thread>

#include "sync/net/exchange_guest.h"
#include "sync/net/exchange_host.h"
#include "sync/trust/proquint.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"
#include "tests/sync/net/stations.h"

using namespace weavelog;
using namespace weavelog::testing;
using namespace std::chrono_literals;

namespace {


void put(Station& at, const BookId& book, FieldTag tag, Value value) {
  EntityState seen;
  seen.book = book;
  seen.id = kOne;
  seen.kind = kBox;
  if (auto held = at.ledger().entity(book, kOne)) seen = *held;
  Draft draft(book, kShelf, kEdit);
  draft.put(seen, tag, std::move(value));
  REQUIRE(at.ledger().append(draft));
}

struct Room {
  TemporaryFolder folder;
  std::unique_ptr<Station> desk = station(folder / "host", "Event server");
  ServerCertificate certificate = *load_or_create_certificate(folder / "server.pem");
  std::unique_ptr<ExchangeHost> host = open(0);

  std::unique_ptr<ExchangeHost> open(std::uint16_t port) {
    ExchangeHostOptions options;
    options.address = "127.0.0.1";
    options.port = port;
    options.certificate = certificate;
    auto started = ExchangeHost::start(*desk, std::move(options));
    if (!started) FAIL(started.error().message());
    return std::move(*started);
  }

  ExchangeGuestOptions pairing(Role role) {
    return ExchangeGuest::to_pair({{"127.0.0.1", host->port()}, host->fingerprint(), desk->devices().invite(role)->secret});
  }
};

bool agreed(const GuestStatus& status) { return status.session.state == SessionState::agreed; }
bool ended(const GuestStatus& status) { return status.fault.has_value(); }

/// Waits for a value to arrive; how long it took.
std::chrono::milliseconds arrival(Station& at, const BookId& book, FieldTag tag, const Value& wanted) {
  const auto begin = std::chrono::steady_clock::now();
  while (std::chrono::steady_clock::now() - begin < 60s) {
    const auto state = at.ledger().entity(book, kOne);
    if (state && state->get(tag) && *state->get(tag) == wanted)
      return std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - begin);
    std::this_thread::sleep_for(1ms);
  }
  FAIL("never arrived");
  return {};
}

}  // namespace

TEST_CASE("who is connected is told while a session works, however long that takes") {
  Room room;
  room.host.reset();
  std::atomic<bool> working{false}, go_on{false};
  ExchangeHostOptions options;
  options.address = "127.0.0.1";
  options.port = 0;
  options.certificate = room.certificate;
  options.may_leave = [&](const BookId&, BookKind) {
    working = true;
    while (!go_on) std::this_thread::sleep_for(1ms);
    return true;
  };
  put(*room.desk, make_id<BookId>(kNoon), kLabel, std::string("held"));
  room.host = std::move(*ExchangeHost::start(*room.desk, std::move(options)));
  const auto tablet = station(room.folder / "tablet", "Tablet 1");
  ExchangeGuest guest(*tablet, room.pairing(Role::desk), {});
  for (int i = 0; i < 10'000 && !working; ++i) std::this_thread::sleep_for(1ms);
  REQUIRE(working);
  auto asked = std::async(std::launch::async, [&] { return room.host->connected(); });
  const bool told = asked.wait_for(5s) == std::future_status::ready;
  go_on = true;
  CHECK(told);
  CHECK(asked.get().size() == 1);
  CHECK(guest.wait(30s, agreed));
  const auto connected = room.host->connected();
  REQUIRE(connected.size() == 1);
  CHECK(connected[0].device == "Tablet 1");
  CHECK(connected[0].role == Role::desk);
}

TEST_CASE("a tablet pairs over TLS, comes back as a member, and sees another's change at once") {
  Room room;
  auto one = station(room.folder / "one", "one");
  auto two = station(room.folder / "two", "two");
  const BookId book = make_id<BookId>(WallClock::system().now());
  put(*room.desk, book, kLabel, std::string("from the desk"));
  {
    ExchangeGuest pairing(*one, room.pairing(Role::stringer), {});
    REQUIRE(pairing.wait(60s, agreed));
    CHECK(pairing.status().session.role == Role::stringer);
  }
  REQUIRE(one->devices().hosts().size() == 1);
  CHECK(one->devices().hosts()[0].name == "Event server");

  ExchangeGuest first(*one, ExchangeGuest::to_return(one->devices().hosts()[0]), {});
  ExchangeGuest second(*two, room.pairing(Role::desk), {});
  REQUIRE(first.wait(60s, agreed));
  REQUIRE(second.wait(60s, agreed));
  CHECK(agreement_words(first.status().session.agreed->digest) == agreement_words(second.status().session.agreed->digest));
  CHECK(room.host->connected().size() == 2);

  put(*two, book, kLabel, std::string("live"));
  const auto took = arrival(*one, book, kLabel, std::string("live"));
  CHECK(took < 2s);  // measured in weavelog-bench; here only that it comes by itself
}

TEST_CASE("a tablet that was offline brings its changes when the server is back") {
  Room room;
  auto one = station(room.folder / "one", "one");
  const BookId book = make_id<BookId>(WallClock::system().now());
  put(*room.desk, book, kLabel, std::string("x"));
  {
    ExchangeGuest pairing(*one, room.pairing(Role::stringer), {});
    REQUIRE(pairing.wait(60s, agreed));
  }
  ExchangeGuest guest(*one, ExchangeGuest::to_return(one->devices().hosts()[0]), {});
  REQUIRE(guest.wait(60s, agreed));
  const std::uint16_t port = room.host->port();
  room.host.reset();
  REQUIRE(guest.wait(60s, [](const GuestStatus& status) { return !status.connected; }));
  put(*one, book, kLabel, std::string("while away"));
  room.host = room.open(port);
  guest.retry_now();
  static_cast<void>(arrival(*room.desk, book, kLabel, std::string("while away")));
}

TEST_CASE("a wrong code, an unknown device, a revoked one and another certificate are refused, each with what to do") {
  Room room;
  auto one = station(room.folder / "one", "one");
  ExchangeGuestOptions wrong = room.pairing(Role::stringer);
  wrong.secret = make_pairing_secret();
  ExchangeGuest stranger(*one, wrong, {});
  REQUIRE(stranger.wait(60s, ended));
  CHECK(stranger.status().fault->code == FaultCode::untrusted);
  CHECK_FALSE(stranger.status().fault->what_to_do.empty());

  const KnownHost unknown{room.desk->ledger().self().key, "Event server", {"127.0.0.1", room.host->port()}, room.host->fingerprint(),
                          Role::stringer, 0};
  ExchangeGuest uninvited(*one, ExchangeGuest::to_return(unknown), {});
  REQUIRE(uninvited.wait(60s, ended));
  CHECK(uninvited.status().fault->code == FaultCode::untrusted);

  {
    ExchangeGuest pairing(*one, room.pairing(Role::stringer), {});
    REQUIRE(pairing.wait(60s, agreed));
  }
  KnownHost known = one->devices().hosts()[0];
  REQUIRE(room.desk->devices().revoke(one->ledger().self().key));
  ExchangeGuest revoked(*one, ExchangeGuest::to_return(known), {});
  REQUIRE(revoked.wait(60s, ended));
  CHECK(revoked.status().fault->code == FaultCode::refused);

  known.fingerprint[0] ^= 1;
  ExchangeGuest pinned(*one, ExchangeGuest::to_return(known), {});
  REQUIRE(pinned.wait(60s, ended));
  CHECK(pinned.status().fault->code == FaultCode::untrusted);
}

TEST_CASE("of many connections under one key the oldest end, the newest is served, and others come in") {
  Room room;
  const auto greedy = station(room.folder / "greedy", "greedy"), other = station(room.folder / "other", "other");
  {
    ExchangeGuest pairs(*greedy, room.pairing(Role::reader), nullptr);
    REQUIRE(pairs.wait(60s, agreed));
  }
  // They try again, but not at once: else each would go on taking the place of another.
  const ExchangeGuestOptions returns = ExchangeGuest::to_return(greedy->devices().hosts().front());
  std::vector<std::unique_ptr<ExchangeGuest>> guests;
  for (int i = 0; i < 11; ++i) {
    guests.push_back(std::make_unique<ExchangeGuest>(*greedy, returns, nullptr));
    REQUIRE(guests.back()->wait(60s, agreed));
  }
  for (std::size_t i = 0; i < 3; ++i) {
    REQUIRE(guests[i]->wait(60s, ended));
    CHECK(guests[i]->status().fault->code == FaultCode::refused);
    CHECK(guests[i]->status().fault->what == "this device came anew, and of its connections the oldest ends");
  }
  std::this_thread::sleep_for(2s);
  for (std::size_t i = 0; i < guests.size(); ++i) CHECK(guests[i]->status().connected == (i >= 3));
  ExchangeGuest honest(*other, room.pairing(Role::stringer), nullptr);
  CHECK(honest.wait(60s, agreed));
  const BookId book = make_id<BookId>(WallClock::system().now());
  put(*room.desk, book, kLabel, std::string("x"));
  arrival(*greedy, book, kLabel, std::string("x"));
  arrival(*other, book, kLabel, std::string("x"));
}

TEST_CASE("twenty tablets push at the same time and all end with the same words") {
  Room room;
  const BookId book = make_id<BookId>(WallClock::system().now());
  put(*room.desk, book, kLabel, std::string("x"));
  std::vector<std::unique_ptr<Station>> stations;
  std::vector<std::unique_ptr<ExchangeGuest>> guests;
  for (int i = 0; i < 20; ++i) {
    stations.push_back(station(room.folder / ("t" + std::to_string(i)), "tablet " + std::to_string(i)));
    guests.push_back(std::make_unique<ExchangeGuest>(*stations.back(), room.pairing(Role::stringer), nullptr));
  }
  for (auto& guest : guests) REQUIRE(guest->wait(60s, agreed));
  for (auto& tablet : stations) put(*tablet, book, kGuarded, tablet->ledger().self().device);
  // Each has seen its own and perhaps some others: every answer stays until somebody closes it.
  const auto everyone_has_all = [&] {
    const Heads heads = room.desk->ledger().heads(book);
    if (heads.size() != 21) return false;
    for (auto& tablet : stations)
      if (tablet->ledger().heads(book) != heads) return false;
    return true;
  };
  const auto begin = std::chrono::steady_clock::now();
  while (!everyone_has_all() && std::chrono::steady_clock::now() - begin < 120s) std::this_thread::sleep_for(20ms);
  CHECK(everyone_has_all());
  for (auto& guest : guests) CHECK(guest->wait(60s, agreed));
}
