// Devices that were enrolled and mean harm, or that only seem to: what they can't do to others.

#include <catch2/catch.hpp>
#include <random>

#include "sync/exchange/session.h"
#include "tests/sync/exchange/meeting.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// What somebody with a key of their own can put into a batch.
struct Forger {
  Batch batch;

  explicit Forger(const BookId& book, BookKind kind = kShelf) { batch.books = {{book, kind}}; }
  /// One chain of so many entries, each of one value, sealed `tail` entries later.
  Forger& chain(const DeviceKey& key, const std::string& name, const std::vector<Value>& values, std::size_t tail = 0, ActionKind action = kEdit) {
    const auto author = static_cast<std::uint32_t>(batch.authors.size());
    batch.authors.push_back({key.public_key(), 1, name});
    const AuthorId id = batch.authors.back().id();
    Digest hash = chain_start(batch.books[0].id, batch.books[0].kind, id);
    std::uint64_t seq = 0;
    for (const Value& value : values) {
      Entry entry{++seq, Stamp::of(static_cast<std::uint64_t>(kNoon) + seq, 0), 1, action, {{make_id<EntityId>(kNoon), kBox, kLabel, value, {}}}};
      batch.entries.push_back({0, author, seq, encode_entry(entry, id)});
      hash = chain_next(hash, digest_of(batch.entries.back().body));
    }
    Seal seal{0, author, seq + std::uint64_t{tail}, {}, {}};
    for (std::size_t i = 0; i < tail; ++i) {
      Digest body = digest_of(as_bytes(std::to_string(i)));
      hash = chain_next(hash, body);
      seal.tail.push_back(body);
    }
    seal.signature = key.sign(seal_message(seal.seq, hash));
    batch.seals.push_back(std::move(seal));
    return *this;
  }
};

/// The batch as the guest's next one.
void bring(Loopback& loopback, Batch batch) {
  Session::Frames answer = loopback.host.receive(encode_frame(PackedEntries{{1, std::move(batch)}}));
  loopback.push(loopback.to_guest, std::move(answer));
}

Bytes noise(std::size_t size, std::uint32_t seed) {
  std::mt19937 draw(seed);
  Bytes out(size);
  for (auto& byte : out) byte = static_cast<std::uint8_t>(draw());
  return out;
}

std::set<std::string> labels(const SyncDevice& device, const BookId& book) {
  std::set<std::string> out;
  for (const EntityState& state : device.ledger->entities(book, kBox))
    if (const auto label = state.get_as<std::string>(kLabel)) out.insert(*label);
  return out;
}

}  // namespace

// ------------------------------------------------------------------------------------------------ before the proof

TEST_CASE("what a stranger sends instead of a proof is not taken apart", "[hostile]") {
  SyncDevice host("host"), guest("guest");
  Forger forger(make_id<BookId>(kNoon));
  for (int i = 0; i < 20; ++i) forger.chain(DeviceKey::generate(), "x", {std::string("y")});
  Session session(Loopback::fill(host, {}, Side::host));
  static_cast<void>(session.receive(encode_frame(PackedEntries{{1, forger.batch}})));
  REQUIRE(session.status().fault);
  CHECK(session.status().fault->what.find("has not proved") != std::string::npos);
  // Nor in place of the proof.
  Loopback loopback(guest, host);
  loopback.deliver(1);
  REQUIRE(loopback.host.status().state == SessionState::proving);
  static_cast<void>(loopback.host.receive(encode_frame(Standing{})));
  CHECK(loopback.host.status().fault->code == FaultCode::malformed);
}

// ------------------------------------------------------------------------------------------------ what fits a frame

TEST_CASE("a book of many chains whose proofs are long is handed on, in more batches", "[hostile]") {
  SyncDevice host("host"), fresh("fresh");
  enrol(host, fresh);
  const BookId book = make_id<BookId>(kNoon);
  // 64 devices whose newest seal lies a thousand entries on: two megabytes of digests.
  Forger forger(book);
  for (int i = 0; i < 64; ++i) forger.chain(DeviceKey::generate(), "Tablet " + std::to_string(i), {"racket " + std::to_string(i)}, 1000);
  REQUIRE(host.ledger->ingest(forger.batch, 99)->applied == 64);
  Loopback loopback(fresh, host);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(labels(fresh, book).size() == 64);
  // And on from there.
  SyncDevice next("next");
  enrol(fresh, next);
  Loopback onward(next, fresh);
  onward.deliver();
  CHECK(agreed(onward));
  CHECK(labels(next, book).size() == 64);
}

TEST_CASE("a batch that fits no frame is halved until it does, what was queued and what came since", "[hostile]") {
  SyncDevice host("host"), other("other"), fresh("fresh");
  enrol(host, fresh);
  const BookId book = make_id<BookId>(kNoon);
  SessionOptions large;
  large.batch_bytes = 16 * 1024 * 1024;
  const auto write = [&](int from) {
    for (int i = from; i < from + 12; ++i) {
      host.put(book, make_id<EntityId>(kNoon + i), kLabel, noise(100'000, static_cast<std::uint32_t>(i)));
      pour(host, other, book);
      other.put(book, make_id<EntityId>(kNoon + 100 + i), kLabel, noise(50'000, static_cast<std::uint32_t>(1000 + i)));
      pour(other, host, book);
    }
  };
  write(0);
  Loopback loopback(fresh, host, {}, large);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(fresh.ledger->heads(book) == host.ledger->heads(book));
  CHECK(loopback.host.status().entries_sent == 24);
  write(20);
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(fresh.ledger->heads(book) == host.ledger->heads(book));
  CHECK(loopback.host.status().entries_sent == 48);
  CHECK(fresh.ledger->verify().faults.empty());
}

TEST_CASE("a name that was taken in before names were bounded is cut where it is handed on", "[hostile]") {
  SyncDevice host("host"), fresh("fresh");
  enrol(host, fresh);
  const BookId book = make_id<BookId>(kNoon);
  Forger forger(book);
  for (int i = 0; i < 3; ++i) forger.chain(DeviceKey::generate(), std::string(2'000'000, 'n'), {"racket " + std::to_string(i)});
  REQUIRE(host.ledger->ingest(forger.batch, 99));
  Loopback loopback(fresh, host);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(labels(fresh, book).size() == 3);
  for (const KnownAuthor& author : fresh.ledger->authors()) CHECK(author.card.device.size() <= 64);
}

// ------------------------------------------------------------------------------------------------ a book's number alone

namespace {

struct Planted {
  SyncDevice server{"server"}, bad{"bad"}, tablet{"tablet"};
  BookId book = make_id<BookId>(kNoon + 5);
  bool kept = GENERATE(false, true);  ///< answers about books are kept from one session to the next

  Planted() {
    enrol(server, bad);
    enrol(server, tablet, Role::desk);
    tablet.put(book, kOne, kLabel, std::string("a whole career"));
  }
  [[nodiscard]] SessionOptions options() const {
    SessionOptions out;
    if (kept) out.leaves_by = [] { return LeaveRule{}; };
    return out;
  }
  void plant(const std::string& word) {
    bad.put(book, make_id<EntityId>(kNoon), kLabel, word);
    bad.share(server, book);
  }
};

}  // namespace

TEST_CASE("who writes into a book of which they know the number does not get what others hold of it, and all agree", "[hostile]") {
  Planted room;
  Loopback there(room.tablet, room.server, room.options(), room.options()), hostile(room.bad, room.server, room.options(), room.options());
  there.deliver();
  hostile.deliver();
  CHECK(agreed(there));
  for (int round = 0; round < 3; ++round) {
    room.plant("planted " + std::to_string(round));
    hostile.changed();
    there.changed();
    hostile.changed();
    CHECK(agreed(there));
    CHECK(agreed(hostile));
  }
  CHECK(labels(room.server, room.book).size() == 3);
  CHECK_FALSE(labels(room.server, room.book).contains("a whole career"));
  CHECK(labels(room.tablet, room.book).size() == 4);  // what was said of it is taken in
  // What is written on the tablet stays there too, and so it is when they meet again, planted to and untouched.
  room.tablet.put(room.book, kOne, kCount, std::int64_t{7});
  there.changed();
  CHECK(agreed(there));
  for (int meeting = 0; meeting < 3; ++meeting) {
    Loopback again(room.tablet, room.server, room.options(), room.options());
    again.deliver();
    CHECK(agreed(again));
    CHECK(again.bytes < 4000);
    CHECK(room.server.ledger->heads(room.book).size() == 1);
    if (meeting == 1) {
      room.plant("once more");
      Loopback more(room.bad, room.server, room.options(), room.options());
      more.deliver();
    }
  }
  CHECK(labels(room.tablet, room.book).size() == 5);
}

TEST_CASE("what was planted in one room does not count as held in another", "[hostile]") {
  Planted room;
  SyncDevice second("second server");
  enrol(second, room.bad);
  enrol(second, room.tablet, Role::desk);
  room.plant("planted");
  room.bad.share(second, room.book);
  for (SyncDevice* server : {&room.server, &second}) {
    Loopback hostile(room.bad, *server, room.options(), room.options());
    hostile.deliver();
    Loopback there(room.tablet, *server, room.options(), room.options());
    there.deliver();
    CHECK(agreed(there));
    CHECK(labels(*server, room.book) == std::set<std::string>{"planted"});
  }
}

TEST_CASE("a book that was kept apart is shared once a person ticks it, in the same session or the next", "[hostile]") {
  Planted room;
  room.plant("planted");
  Loopback hostile(room.bad, room.server, room.options(), room.options());
  hostile.deliver();
  Loopback there(room.tablet, room.server, room.options(), room.options());
  there.deliver();
  REQUIRE(agreed(there));
  REQUIRE(labels(room.server, room.book).size() == 1);
  room.tablet.share(room.server, room.book);
  std::optional<Loopback> again;
  if (GENERATE(false, true)) {
    there.changed();
    CHECK(agreed(there));
  } else {
    again.emplace(room.tablet, room.server, room.options(), room.options());
    again->deliver();
    CHECK(agreed(*again));
  }
  CHECK(labels(room.server, room.book) == std::set<std::string>{"planted", "a whole career"});
  CHECK(room.server.ledger->heads(room.book) == room.tablet.ledger->heads(room.book));
}

TEST_CASE("a book is kept apart also where the tablet is cut off between taking what came of it and noting what that was", "[hostile]") {
  Planted room;
  room.plant("planted");
  Loopback hostile(room.bad, room.server, room.options(), room.options());
  hostile.deliver();
  const AuthorId planter = room.bad.ledger->self().id();
  bool noted_before = false;
  const int heard = room.tablet.ledger->subscribe([&](std::int64_t) { noted_before = room.tablet.peers->apart_authors(room.book).contains(planter); });
  {
    Loopback there(room.tablet, room.server, room.options(), room.options());
    there.deliver();
    REQUIRE(labels(room.tablet, room.book).size() == 2);
  }
  room.tablet.ledger->unsubscribe(heard);
  CHECK(noted_before);
  // What the cut leaves: that it came this way is noted, what it was is not.
  REQUIRE(room.tablet.peers->forget_apart(room.tablet.peer_number(room.server), room.book, {planter}));
  for (int meeting = 0; meeting < 2; ++meeting) {
    Loopback again(room.tablet, room.server, room.options(), room.options());
    again.deliver();
    CHECK(agreed(again));
    CHECK_FALSE(labels(room.server, room.book).contains("a whole career"));
  }
}

TEST_CASE("what was put aside of a book that is kept apart leaves no trace of who said it there", "[hostile]") {
  SyncDevice tablet("tablet");
  const BookId book = make_id<BookId>(kNoon);
  tablet.put(book, kOne, kLabel, std::string("a whole career"));
  Forger forger(book);
  forger.chain(DeviceKey::generate(), "x", {std::string("y")});
  const auto peer = tablet.peers->number_of(DeviceKey::generate().public_key());
  REQUIRE(peer);
  const AuthorId author = forger.batch.authors.front().id();
  const auto begun = tablet.peers->begin_apart(*peer, forger.batch, {0});
  REQUIRE(begun);
  CHECK(tablet.peers->apart_authors(book).contains(author));
  CHECK(tablet.peers->apart(*peer).empty());
  forger.batch.seals.front().signature[0] ^= 1;
  CHECK(tablet.ledger->ingest(forger.batch, *peer)->quarantined == 1);
  REQUIRE(tablet.peers->keep_apart(*peer, forger.batch, {0}, *begun));
  CHECK_FALSE(tablet.peers->apart_authors(book).contains(author));
}

TEST_CASE("a forgery in the name of somebody whose chain is here does not keep that chain from showing who has it", "[hostile]") {
  SyncDevice tablet("tablet"), colleague("colleague"), bad("bad"), honest("honest");
  const BookId book = make_id<BookId>(kNoon);
  colleague.put(book, kOne, kLabel, std::string("a whole career"));
  pour(colleague, tablet, book);
  pour(colleague, honest, book);
  const AuthorId author = colleague.ledger->self().id();
  Forger forger(book);
  forger.chain(DeviceKey::generate(), "colleague", {std::string("a whole career"), std::string("forged")});
  forger.batch.authors.front() = colleague.ledger->self();
  enrol(tablet, bad);
  enrol(tablet, honest);
  SessionOptions as_tablet;
  as_tablet.shares = [](const PublicKey&) { return std::vector<BookId>{}; };
  {
    Loopback loopback(bad, tablet, {}, as_tablet);
    loopback.deliver();
    bring(loopback, forger.batch);
    CHECK(tablet.ledger->quarantine().size() + loopback.host.status().forks > 0);
  }
  CHECK_FALSE(tablet.peers->apart_authors(book).contains(author));
  {
    honest.share(tablet, book);
    Loopback loopback(honest, tablet, {}, as_tablet);
    loopback.deliver();
    CHECK(agreed(loopback));
    CHECK(tablet.peers->in_scope(tablet.peer_number(honest), book));
  }
  // What really came that way goes on showing nothing.
  colleague.put(book, kOne, kCount, std::int64_t{1});
  const Batch more = colleague.ledger->missing(book, tablet.ledger->heads(book), 1 << 20);
  const auto peer = tablet.peer_number(bad);
  const auto begun = tablet.peers->begin_apart(peer, more, {0});
  REQUIRE(begun);
  REQUIRE(tablet.ledger->ingest(more, peer)->applied == 1);
  REQUIRE(tablet.peers->keep_apart(peer, more, {0}, *begun));
  CHECK(tablet.peers->apart_authors(book).contains(author));
}

TEST_CASE("a book of which the room shows that it holds the same is shared as before, ticked or not", "[hostile]") {
  Planted room;
  SyncDevice third("third");
  enrol(room.server, third);
  pour(room.tablet, third, room.book);
  third.put(room.book, make_id<EntityId>(kNoon), kLabel, std::string("strung in another town"));
  third.share(room.server, room.book);
  Loopback brings(third, room.server, room.options(), room.options());
  brings.deliver();
  room.tablet.put(room.book, kOne, kCount, std::int64_t{7});
  Loopback there(room.tablet, room.server, room.options(), room.options());
  there.deliver();
  CHECK(agreed(there));
  CHECK(labels(room.tablet, room.book) == std::set<std::string>{"a whole career", "strung in another town"});
  CHECK(room.server.ledger->heads(room.book) == room.tablet.ledger->heads(room.book));
}

TEST_CASE("a book of which everything here is what the peer itself wrote is shared with it; with a word of somebody else in it it is not", "[hostile]") {
  SyncDevice server("server"), tablet("tablet"), third("third");
  enrol(server, tablet, Role::desk);
  const BookId book = make_id<BookId>(kNoon + 5);
  server.put(book, kOne, kLabel, std::string("the server's own"));
  pour(server, tablet, book);
  const bool more = GENERATE(false, true);
  if (more) {
    third.put(book, make_id<EntityId>(kNoon), kLabel, std::string("a third's"));
    pour(third, tablet, book);
  }
  server.put(book, make_id<EntityId>(kNoon), kLabel, std::string("and on"));
  Loopback there(tablet, server);
  there.deliver();
  CHECK(agreed(there));
  CHECK(labels(tablet, book).contains("and on"));
  tablet.put(book, make_id<EntityId>(kNoon), kLabel, std::string("the tablet's"));
  there.changed();
  CHECK(agreed(there));
  CHECK(labels(server, book).contains("the tablet's") == !more);
  CHECK_FALSE(labels(server, book).contains("a third's"));
}

TEST_CASE("who brings a book that the host was made to hold as one of another kind does not hear that it is there", "[hostile]") {
  SyncDevice server("server"), tablet("tablet");
  enrol(server, tablet, Role::desk);
  const BookId book = make_id<BookId>(kNoon + 5);
  const bool squatted = GENERATE(false, true);
  if (squatted) REQUIRE(server.ledger->ingest(Forger(book, BookKind{7}).chain(DeviceKey::generate(), "x", {std::string("mine")}).batch, 99)->applied == 1);
  tablet.put(book, kOne, kLabel, std::string("true"));
  tablet.share(server, book);
  Loopback there(tablet, server);
  there.deliver();
  CHECK(there.guest.status().entries_sent > 0);
  CHECK(there.guest.status().all_sent == !squatted);
  CHECK(labels(server, book).contains("true") == !squatted);
}

TEST_CASE("a guest of a tablet does not get a book by planting it under a key that it made up", "[hostile]") {
  Planted room;
  SessionOptions shares = room.options();
  shares.shares = [](const PublicKey&) { return std::vector<BookId>{}; };
  enrol(room.tablet, room.bad);
  room.bad.share(room.tablet, room.book);
  const Forger forger = Forger(room.book).chain(DeviceKey::generate(), "somebody", {std::string("planted")});
  REQUIRE(room.bad.ledger->ingest(forger.batch, 99));
  for (int meeting = 0; meeting < 3; ++meeting) {
    Loopback session(room.bad, room.tablet, room.options(), shares);
    session.deliver();
    session.changed();
    CHECK(agreed(session));
    CHECK(labels(room.bad, room.book) == std::set<std::string>{"planted"});
  }
}

TEST_CASE("nor by holding less of what it planted than it said before", "[hostile]") {
  Planted room;
  SessionOptions shares = room.options();
  shares.shares = [](const PublicKey&) { return std::vector<BookId>{}; };
  enrol(room.tablet, room.bad);
  SyncDevice less("bad", ":memory:", room.bad.ledger->key());
  const DeviceKey made_up = DeviceKey::generate();
  const Forger both = Forger(room.book).chain(made_up, "somebody", {std::string("planted"), std::string("and more")});
  const Forger one = Forger(room.book).chain(made_up, "somebody", {std::string("planted")});
  REQUIRE(room.bad.ledger->ingest(both.batch, 99)->applied == 2);
  REQUIRE(less.ledger->ingest(one.batch, 99)->applied == 1);
  for (SyncDevice* device : {&room.bad, &less, &less, &room.bad}) {
    device->share(room.tablet, room.book);
    Loopback session(*device, room.tablet, room.options(), shares);
    session.deliver();
    session.changed();
    CHECK_FALSE(labels(*device, room.book).contains("a whole career"));
  }
}

// ------------------------------------------------------------------------------------------------ how much can be asked for

TEST_CASE("who asks for the same again and again, and never answers, makes nobody keep more in mind than there is", "[hostile]") {
  SyncDevice host("host"), bad("bad");
  enrol(host, bad);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("x"));
  Loopback loopback(bad, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  Heads nobody(5000);
  for (std::size_t i = 0; i < nobody.size(); ++i) nobody[i].author.bytes[0] = static_cast<std::uint8_t>(i), nobody[i].author.bytes[1] = static_cast<std::uint8_t>(i >> 8);
  const Bytes frame = encode_frame(Offer{{{book, kShelf, nobody}}, {}});
  for (int i = 0; i < 3000; ++i) static_cast<void>(loopback.host.receive(frame));
  CHECK_FALSE(loopback.host.status().fault);
  CHECK(loopback.host.status().entries_to_send < 1100);
}

TEST_CASE("an offer of more books than one message holds, or of one book twice, is malformed", "[hostile]") {
  SyncDevice host("host"), bad("bad");
  enrol(host, bad);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("x"));
  Offer offer{{{book, kShelf, {}}, {book, kShelf, {}}}, {}};
  if (GENERATE(false, true)) {
    offer.books.clear();
    for (int i = 0; i < 1001; ++i) offer.books.push_back({make_id<BookId>(kNoon + i), kShelf, {}});
  }
  Loopback loopback(bad, host);
  loopback.deliver();
  static_cast<void>(loopback.host.receive(encode_frame(offer)));
  REQUIRE(loopback.host.status().fault);
  CHECK(loopback.host.status().fault->code == FaultCode::malformed);
}

TEST_CASE("a batch that names a book of which it has nothing is malformed, and the book does not come into the scope", "[hostile]") {
  SyncDevice host("host"), bad("bad");
  enrol(host, bad);
  Loopback loopback(bad, host);
  loopback.deliver();
  const BookId named = make_id<BookId>(kNoon + 7);
  Batch batch = Forger(make_id<BookId>(kNoon)).chain(DeviceKey::generate(), "x", {std::string("y")}).batch;
  batch.books.push_back({named, kShelf});
  loopback.push(loopback.to_host, loopback.guest.receive(encode_frame(PackedEntries{{1, batch}})));
  REQUIRE(loopback.guest.status().fault);
  CHECK(loopback.guest.status().fault->code == FaultCode::malformed);
  CHECK_FALSE(bad.peers->in_scope(bad.peer_number(host), named));
}

TEST_CASE("a book of more chains than a message can tell holds nothing up, its own entries included", "[hostile]") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  constexpr int kChains = 23'000;
  Forger forger(book);
  const DeviceKey key = DeviceKey::generate();
  for (int i = 0; i < kChains; ++i) forger.chain(i == 0 ? key : DeviceKey::generate(), "x", {std::string("y")});
  REQUIRE(guest.ledger->ingest(forger.batch, 99)->applied == kChains);
  // One of them has parted: both tell what else they hold.
  const bool parted = GENERATE(false, true);
  if (parted) REQUIRE(host.ledger->ingest(Forger(book).chain(key, "x", {std::string("another")}).batch, 99)->applied == 1);
  guest.put(other, kOne, kLabel, std::string("harmless"));
  for (const BookId& one : {book, other}) guest.share(host, one);
  host.put(book, kOne, kCount, std::int64_t{1});  // both have it, so that each tells what it holds
  Loopback loopback(guest, host);
  loopback.deliver();
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(loopback.guest.status().forks == (parted ? 1 : 0));
  CHECK(host.ledger->book(other));
  CHECK(host.ledger->heads(book).size() == kChains + 1);
  host.put(book, kOne, kCount, std::int64_t{2});
  loopback.changed();
  CHECK(agreed(loopback));
  // Neither remembers what both agreed on.
  Agreement none{};
  REQUIRE(guest.peers->agree(guest.peer_number(host), none));
  guest.put(book, kOne, kCount, std::int64_t{3});
  Loopback again(guest, host);
  again.deliver();
  again.changed();
  CHECK(agreed(again));
}

// ------------------------------------------------------------------------------------------------ roles and names

TEST_CASE("under a made-up key nobody may more than under their own, and no name is borrowed", "[hostile]") {
  SyncDevice host("server"), bad("bad"), desk("desk by the door");
  enrol(host, bad, Role::stringer);
  enrol(host, desk, Role::desk);
  REQUIRE(host.devices->rename(desk.ledger->self().key, "desk by the door"));
  constexpr ActionKind kHeadsOnly{9};
  SessionOptions strict;
  strict.rights.may_write = [](Role role, const BatchBook&, ActionKind action) { return role == Role::head || action != kHeadsOnly; };
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("Open"));
  const DeviceKey made_up = DeviceKey::generate();
  SECTION("what only a head may") {
    Loopback loopback(bad, host, {}, strict);
    loopback.deliver();
    bring(loopback, Forger(book).chain(made_up, "server", {std::string("Hijacked")}, 0, kHeadsOnly).batch);
    REQUIRE(loopback.host.status().fault);
    CHECK(loopback.host.status().fault->code == FaultCode::refused);
    CHECK(labels(host, book) == std::set<std::string>{"Open"});
  }
  SECTION("what only a head may, after something harmless") {
    const Forger harmless = Forger(book).chain(made_up, "x", {std::string("harmless")});
    REQUIRE(host.ledger->ingest(harmless.batch, 99));
    Forger worse = Forger(book).chain(made_up, "x", {std::string("harmless"), std::string("Hijacked")}, 0, kHeadsOnly);
    worse.batch.entries[0] = harmless.batch.entries[0];
    Loopback loopback(bad, host, {}, strict);
    loopback.deliver();
    bring(loopback, worse.batch);
    REQUIRE(loopback.host.status().fault);
    CHECK(loopback.host.status().fault->code == FaultCode::refused);
  }
  SECTION("a head brings it") {
    REQUIRE(host.devices->set_role(bad.ledger->self().key, Role::head));
    const Forger known = Forger(book).chain(made_up, "old tablet", {std::string("said before there was a server")}, 0, kHeadsOnly);
    {
      Loopback loopback(bad, host, {}, strict);
      loopback.deliver();
      bring(loopback, known.batch);
      CHECK_FALSE(loopback.host.status().fault);
      CHECK(labels(host, book).size() == 2);
    }
    // From then on others carry what that device says.
    REQUIRE(host.devices->set_role(desk.ledger->self().key, Role::head));
    REQUIRE(host.devices->set_role(bad.ledger->self().key, Role::stringer));
    Loopback loopback(bad, host, {}, strict);
    loopback.deliver();
    bring(loopback, known.batch);
    CHECK_FALSE(loopback.host.status().fault);
  }
  SECTION("names") {
    Loopback loopback(bad, host, {}, strict);
    loopback.deliver();
    bring(loopback, Forger(book).chain(made_up, "Server", {std::string("a")}).chain(DeviceKey::generate(), " desk by the door", {std::string("b")})
                        .chain(DeviceKey::generate(), "Bo's tablet", {std::string("c")}).batch);
    CHECK_FALSE(loopback.host.status().fault);
    std::set<std::string> names;
    for (const KnownAuthor& author : host.ledger->authors()) names.insert(author.card.device);
    CHECK(names.contains("Bo's tablet"));
    CHECK(names.contains("? " + to_hex(made_up.public_key()).substr(0, 8)));
    CHECK_FALSE(names.contains("Server"));
    CHECK_FALSE(names.contains(" desk by the door"));
    CHECK(names.contains("server"));
  }
}

TEST_CASE("a book that the room does not take from a guest is left out, everything else crosses", "[hostile]") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest, Role::stringer);
  const BookId squatted = make_id<BookId>(kNoon), good = make_id<BookId>(kNoon + 1);
  SessionOptions strict;
  strict.rights.may_begin = [&](Role role, const BatchBook& book) { return role == Role::head || book.id != squatted; };
  for (const BookId& book : {squatted, good}) {
    guest.put(book, kOne, kLabel, std::string("brought"));
    guest.share(host, book);
  }
  Loopback loopback(guest, host, {}, strict);
  loopback.deliver();
  loopback.changed();
  CHECK_FALSE(loopback.host.status().fault);
  CHECK_FALSE(host.ledger->book(squatted));
  CHECK(host.ledger->book(good));
  CHECK_FALSE(loopback.guest.status().all_sent);
  // Once it is here it is the room's.
  REQUIRE(host.devices->set_role(guest.ledger->self().key, Role::head));
  Loopback head(guest, host, {}, strict);
  head.deliver();
  CHECK(agreed(head));
  CHECK(host.ledger->book(squatted));
}

// ------------------------------------------------------------------------------------------------ codes and stubs

TEST_CASE("a head's device that was lost and asked for a code before does not come back with it", "[hostile]") {
  SyncDevice host("host"), lost("lost"), head("head");
  enrol(host, lost, Role::head);
  enrol(host, head, Role::head);
  Loopback kept(lost, host), room(head, host);
  kept.deliver();
  room.deliver();
  kept.push(kept.to_host, kept.guest.wish_invitation(Role::head, 6LL * 24 * 3600 * 1000));
  kept.deliver();
  REQUIRE(kept.guest.status().invitation);
  CHECK(host.devices->open_invitations().size() == 1);
  CHECK(host.devices->open_invitations()[0].asked_by == lost.ledger->self().key);
  if (GENERATE(false, true)) {
    room.push(room.to_host, room.guest.wish_revocation(lost.ledger->self().key));
  } else {
    room.push(room.to_host, room.guest.wish_change(lost.ledger->self().key, {}, Role::stringer));
  }
  room.deliver();
  CHECK(host.devices->open_invitations().empty());
  SessionOptions with_code;
  with_code.secret = kept.guest.status().invitation->secret;
  Loopback back(lost, host, with_code);
  back.deliver();
  REQUIRE(back.guest.status().fault);
  CHECK(back.guest.status().fault->code == FaultCode::untrusted);
}

TEST_CASE("so many forgotten books that they fit no connection are told piece by piece", "[hostile]") {
  SyncDevice host("host"), fresh("fresh");
  enrol(host, fresh);
  const DeviceKey key = DeviceKey::generate();
  constexpr int kMany = 9000;
  std::vector<Stub> stubs;
  for (int i = 0; i < kMany; ++i) {
    Bytes name = noise(250, static_cast<std::uint32_t>(i));  // which no compression makes smaller
    std::replace(name.begin(), name.end(), std::uint8_t{0}, std::uint8_t{1});
    stubs.push_back(sign_stub(key, std::string(name.begin(), name.end()), make_id<BookId>(kNoon + i), kShelf, kNoon));
  }
  REQUIRE(host.ledger->obey(stubs, PublicKey{}));
  const BookId held = make_id<BookId>(kNoon + kMany);
  host.put(held, kOne, kLabel, std::string("held"));
  Loopback loopback(fresh, host);
  loopback.deliver();
  const std::size_t told = fresh.ledger->forgotten(0, kMany).size();
  CHECK(told > 3000);
  CHECK(told < kMany);
  CHECK(loopback.bytes < 3'000'000);
  CHECK(labels(fresh, held).size() == 1);  // entries do not wait for it
  std::size_t most = 0;
  for (int tick = 0; tick < 20 && !agreed(loopback); ++tick) {
    const std::size_t before = loopback.bytes;
    loopback.push(loopback.to_guest, loopback.host.tick());
    loopback.push(loopback.to_host, loopback.guest.tick());
    loopback.deliver();
    most = std::max(most, loopback.bytes - before);
  }
  CHECK(agreed(loopback));
  CHECK(most < 3'000'000);
  CHECK(fresh.ledger->forgotten(0, kMany).size() == kMany);
  // Told once.
  Loopback again(fresh, host);
  again.deliver();
  CHECK(agreed(again));
  CHECK(again.bytes < 3000);
}

TEST_CASE("one device can't fill what is remembered of books that were never here", "[hostile]") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest, Role::stringer);
  const BookId held = make_id<BookId>(kNoon);
  host.put(held, kOne, kLabel, std::string("held"));
  REQUIRE(host.peers->note_unheld_stubs(host.peer_number(guest), 19'999));
  const DeviceKey key = DeviceKey::generate();
  const auto stub = [&](const BookId& book) { return sign_stub(key, "x", book, kShelf, kNoon); };
  Loopback loopback(guest, host);
  loopback.deliver();
  loopback.push(loopback.to_guest, loopback.host.receive(encode_frame(Stubs{{stub(make_id<BookId>(1)), stub(make_id<BookId>(2)), stub(make_id<BookId>(3)), stub(held)}})));
  CHECK_FALSE(loopback.host.status().fault);
  CHECK(host.ledger->forgotten(0, 100).size() == 2);
  CHECK(host.ledger->is_forgotten(held));  // what is here is always forgotten
  CHECK(host.peers->unheld_stubs(host.peer_number(guest)) == 20'000);
}
