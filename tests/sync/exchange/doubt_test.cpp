// What one side sends shows that it is wrong about what the other holds: both find out anew what is lacking, no oftener than that helps.

#include <catch2/catch.hpp>

#include "tests/sync/exchange/meeting.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Delivers all; how many of the frames hold an M. `seen` is called after each.
template <class M>
std::size_t deliver_counting(Loopback& loopback, const std::function<void()>& seen = [] {}) {
  std::size_t out = 0;
  const auto holds = [](const Bytes& frame) {
    const auto message = decode_frame(frame);
    return message && std::holds_alternative<M>(*message);
  };
  while (!loopback.to_host.empty() || !loopback.to_guest.empty()) {
    out += holds(loopback.to_host.empty() ? loopback.to_guest.front() : loopback.to_host.front()) ? 1 : 0;
    loopback.deliver(1);
    seen();
  }
  return out;
}

}  // namespace

TEST_CASE("a host that sees gaps in all that was under way doubts once") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  std::vector<BookId> books;
  for (int i = 0; i < 6; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    guest.put(books.back(), kOne, kLabel, std::string("before both met"));
  }
  REQUIRE(meet(guest, host));
  // Ticked since: what is new of them goes first, each in a batch of its own, and what is older than the agreement is lacking.
  for (const BookId& book : books) {
    guest.put(book, kOne, kCount, std::int64_t{1});
    guest.share(host, book);
  }
  SessionOptions options;
  options.batch_bytes = 1;
  Loopback again(guest, host, options);
  const std::size_t doubts = deliver_counting<Doubt>(again, [&] { CHECK_FALSE(again.host.status().at_odds); });
  CHECK(doubts == 1);
  again.changed();
  CHECK(agreed(again));
  for (const BookId& book : books) CHECK(host.ledger->heads(book) == guest.ledger->heads(book));
}

TEST_CASE("doubts that each bring what was lacking go on as long as there are any") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId common = make_id<BookId>(kNoon);
  host.put(common, kOne, kLabel, std::string("of both"));
  std::vector<BookId> books;
  for (int i = 0; i < 6; ++i) {
    books.push_back(make_id<BookId>(kNoon + 1 + i));
    guest.put(books.back(), kOne, kLabel, std::string("before both met"));
  }
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  std::size_t doubts = 0;
  for (std::size_t i = 0; i < books.size(); ++i) {
    // Ticked while something else comes in, which sends on what is new before the session hears that there is more to compare.
    guest.put(books[i], kOne, kCount, std::int64_t{1});
    guest.share(host, books[i]);
    host.put(common, kOne, kCount, static_cast<std::int64_t>(i));
    loopback.push(loopback.to_guest, loopback.host.changed());
    doubts += deliver_counting<Doubt>(loopback);
    CHECK_FALSE(loopback.guest.status().at_odds);
    CHECK_FALSE(loopback.host.status().at_odds);
    CHECK(host.ledger->heads(books[i]) == guest.ledger->heads(books[i]));
  }
  CHECK(doubts == books.size());
  loopback.changed();
  CHECK(agreed(loopback));
}

TEST_CASE("they go on too where only the host lacks something") {
  SyncDevice host("host"), guest("guest"), one("one"), two("two");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  constexpr int kWords = 6;
  std::vector<EntityId> entities;
  for (int i = 0; i < kWords; ++i) one.put(book, entities.emplace_back(make_id<EntityId>(kNoon + i)), kLabel, std::string("one"));
  REQUIRE(pour(one, two, book).applied == kWords);
  for (const EntityId& entity : entities) two.put(book, entity, kLabel, std::string("two"));
  // The guest has only what the second said, whose every word replaces one that nobody brings.
  const Batch later = two.ledger->missing(book, {{one.ledger->self().id(), 1000, {}}}, 1 << 20);
  for (int times = 0; times < kWords + 1; ++times) REQUIRE(guest.ledger->ingest(later, 99));
  REQUIRE(guest.ledger->heads(book).front().seq == kWords);
  guest.share(host, book);
  SessionOptions options;
  options.batch_bytes = 1;
  Loopback loopback(guest, host, options);
  CHECK(deliver_counting<Doubt>(loopback, [&] { CHECK_FALSE(loopback.guest.status().at_odds); }) >= kWords);
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(host.ledger->heads(book) == guest.ledger->heads(book));
}

TEST_CASE("what both are at odds about does not keep them from finding what comes into the exchange later") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId refused = make_id<BookId>(kNoon), old = make_id<BookId>(kNoon + 1), common = make_id<BookId>(kNoon + 2);
  guest.put(refused, kOne, kLabel, std::string("may not stay"));
  guest.share(host, refused);
  host.put(old, kOne, kLabel, std::string("of before"));
  host.put(common, kOne, kLabel, std::string("of both"));
  bool freed = false;
  std::uint64_t mark = 1;
  SessionOptions strict;
  strict.may_stay = [&](const BookId& book, BookKind, const BookId&, bool) { return book != refused; };
  strict.may_leave = [&](const BookId& book, BookKind) { return book != old || freed; };
  strict.leaves_by = [&] { return LeaveRule{{}, mark}; };
  Loopback loopback(guest, host, {}, strict);
  loopback.deliver();
  for (int quiet = 0; quiet < 6; ++quiet) loopback.changed();
  REQUIRE(loopback.host.status().at_odds);
  REQUIRE_FALSE(guest.ledger->book(old));
  // An entry elsewhere frees it, as when a player is entered.
  freed = true;
  ++mark;
  host.put(common, kOne, kCount, std::int64_t{1});
  for (int quiet = 0; quiet < 60; ++quiet) loopback.changed();
  CHECK(guest.ledger->book(old));
  CHECK(loopback.host.status().at_odds);
  CHECK(guest.ledger->entity(common, kOne)->get(kCount) != nullptr);
}

TEST_CASE("a guest that offered what it has says where both stand only when it knows what the host holds of it") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("of both"));
  REQUIRE(meet(guest, host));
  guest.put(book, kOne, kCount, std::int64_t{1});
  // The guest no longer knows what both agreed on.
  guest.peers = std::move(*PeerStore::open(*guest.ledger));
  auto forgotten = *guest.peers->agreement(guest.peer_number(host));
  forgotten.token = AgreementToken{7};
  REQUIRE(guest.peers->agree(guest.peer_number(host), forgotten));
  Loopback again(guest, host);
  CHECK(deliver_counting<Doubt>(again) == 0);
  CHECK(agreed(again));
  CHECK(host.ledger->heads(book) == guest.ledger->heads(book));
}

TEST_CASE("what a host holds of books that nobody offered is a message out of turn") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  loopback.push(loopback.to_host, loopback.guest.receive(encode_frame(Holding{{{make_id<BookId>(kNoon), BookKind{2}, {}}}})));
  REQUIRE(loopback.guest.status().fault);
  CHECK(loopback.guest.status().fault->code == FaultCode::malformed);
}
