// Pictures between stations with files of their own, over real TLS on loopback.

#include <catch2/catch.hpp>
#include <chrono>
#include <random>
#include <thread>

#include "sync/net/exchange_guest.h"
#include "sync/net/exchange_host.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"
#include "tests/sync/net/stations.h"

using namespace weavelog;
using namespace weavelog::testing;
using namespace std::chrono_literals;

namespace {

Bytes picture(std::size_t size) {
  std::mt19937 random(7);
  Bytes out(size);
  for (auto& byte : out) byte = static_cast<std::uint8_t>(random());
  return out;
}

/// A box whose label is a hash names it.
auto names(Station& at) {
  return [&at](const BookId& book, const Digest& hash) {
    for (const EntityState& state : at.ledger().entities(book))
      if (state.get(kLabel) && *state.get(kLabel) == Value(to_hex(hash))) return true;
    return false;
  };
}

void name(Station& at, const BookId& book, const Digest& hash) {
  EntityState seen;
  seen.book = book;
  seen.id = make_id<EntityId>(WallClock::system().now());
  seen.kind = kBox;
  Draft draft(book, kShelf, kEdit);
  draft.put(seen, kLabel, to_hex(hash));
  REQUIRE(at.ledger().append(draft));
}

struct PictureRoom {
  TemporaryFolder folder;
  std::unique_ptr<Station> desk = station(folder / "host", "Event server");
  ServerCertificate certificate = *load_or_create_certificate(folder / "server.pem");
  std::unique_ptr<ExchangeHost> host = open(0);

  std::unique_ptr<ExchangeHost> open(std::uint16_t port) {
    ExchangeHostOptions options;
    options.address = "127.0.0.1";
    options.port = port;
    options.certificate = certificate;
    options.names_content = names(*desk);
    auto started = ExchangeHost::start(*desk, std::move(options));
    if (!started) FAIL(started.error().message());
    return std::move(*started);
  }

  /// Paired, and then as a member who keeps trying.
  std::unique_ptr<ExchangeGuest> join(Station& tablet) {
    {
      ExchangeGuest pairing(tablet, ExchangeGuest::to_pair({{"127.0.0.1", host->port()}, host->fingerprint(), desk->devices().invite(Role::stringer)->secret}), {});
      REQUIRE(pairing.wait(60s, [](const GuestStatus& status) { return status.session.state == SessionState::agreed; }));
    }
    ExchangeGuestOptions options = ExchangeGuest::to_return(tablet.devices().hosts()[0]);
    options.names_content = names(tablet);
    return std::make_unique<ExchangeGuest>(tablet, std::move(options), nullptr);
  }
};

bool here(const GuestStatus& status) { return !status.session.fetches.empty() && status.session.fetches[0].state == FetchState::here; }

bool comes_true(const std::function<bool()>& held) {
  for (int i = 0; i < 1000 && !held(); ++i) std::this_thread::sleep_for(10ms);
  return held();
}

}  // namespace

TEST_CASE("a picture taken on one tablet is fetched on another through the server", "[photo][net]") {
  PictureRoom room;
  auto one = station(room.folder / "one", "one"), two = station(room.folder / "two", "two");
  const auto first = room.join(*one), second = room.join(*two);
  const BookId book = make_id<BookId>(WallClock::system().now());
  const Bytes bytes = picture(1'000'000);
  const Digest hash = *one->contents().add(book, bytes);
  REQUIRE(one->peers().widen(*one->peers().number_of(room.desk->ledger().self().key), {book}));
  name(*one, book, hash);
  REQUIRE(comes_true([&] { return two->ledger().book(book) && room.desk->contents().holds(book, hash); }));
  CHECK_FALSE(two->contents().holds(book, hash));  // only when somebody wants to see it
  second->fetch_content(book, hash);
  REQUIRE(second->wait(60s, here));
  CHECK(*two->contents().read(book, hash) == bytes);
}

TEST_CASE("what the server does not hold it gets from a tablet that does, while somebody waits for it", "[photo][net]") {
  PictureRoom room;
  auto one = station(room.folder / "one", "one"), two = station(room.folder / "two", "two");
  const auto first = room.join(*one);
  const auto second = room.join(*two);
  const BookId book = make_id<BookId>(WallClock::system().now());
  const Bytes bytes = picture(300'000);
  // It came to the tablet elsewhere: nobody offers it.
  const Digest hash = *one->contents().add(book, bytes, ContentOrigin::fetched);
  REQUIRE(one->peers().widen(*one->peers().number_of(room.desk->ledger().self().key), {book}));
  name(*one, book, hash);
  REQUIRE(comes_true([&] { return two->ledger().book(book).has_value(); }));
  CHECK_FALSE(room.desk->contents().holds(book, hash));
  second->fetch_content(book, hash);
  REQUIRE(second->wait(60s, here));
  CHECK(*two->contents().read(book, hash) == bytes);
  CHECK(room.desk->contents().holds(book, hash));
}

TEST_CASE("a picture whose connection is cut by the server's restart comes whole after it", "[photo][net]") {
  PictureRoom room;
  auto tablet = station(room.folder / "one", "one");
  const BookId book = make_id<BookId>(WallClock::system().now());
  const Bytes bytes = picture(8'000'000);
  const Digest hash = *room.desk->contents().add(book, bytes);
  name(*room.desk, book, hash);
  const auto guest = room.join(*tablet);
  REQUIRE(comes_true([&] { return tablet->ledger().book(book).has_value(); }));
  guest->fetch_content(book, hash);
  REQUIRE(guest->wait(60s, [](const GuestStatus& status) { return !status.session.fetches.empty() && status.session.fetches[0].held > 0; }));
  const std::uint16_t port = room.host->port();
  room.host.reset();
  const std::uint64_t came = tablet->contents().part_held(book, hash);
  REQUIRE(came > 0);  // cut in the middle
  REQUIRE(came < bytes.size());
  room.host = room.open(port);
  guest->retry_now();
  REQUIRE(guest->wait(60s, here));
  CHECK(*tablet->contents().read(book, hash) == bytes);
}
