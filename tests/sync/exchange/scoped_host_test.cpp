// A tablet that plays the host: what it shares crosses, what the guest brings crosses, and nothing else is told.

#include <catch2/catch.hpp>

#include "sync/exchange/session.h"
#include "sync/trust/proquint.h"
#include "tests/support/loopback.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {


BookId shelf(SyncDevice& device, const std::string& label) {
  const BookId book = device.ledger->create_book_id();
  device.put(book, kOne, kLabel, label);
  return book;
}

struct Rooms {
  SyncDevice host{"Ilse's tablet"}, guest{"Bo's tablet"};
  std::vector<BookId> shared;
  std::set<BookId> stays;  ///< consent, here
  bool kept = GENERATE(false, true);  ///< answers about books are kept from one session to the next

  Rooms() { enrol(host, guest); }
  [[nodiscard]] SessionOptions options() {
    SessionOptions out;
    out.shares = [this](const PublicKey&) { return shared; };
    out.may_leave = [this](const BookId& book, BookKind) { return !stays.contains(book); };
    if (kept) out.leaves_by = [] { return LeaveRule{}; };
    return out;
  }
  [[nodiscard]] SessionOptions guest_options() const {
    SessionOptions out;
    if (kept) out.leaves_by = [] { return LeaveRule{}; };
    return out;
  }
  [[nodiscard]] bool agree(const Loopback& session) const {
    const auto& here = session.host.status();
    const auto& there = session.guest.status();
    for (const auto* status : {&here, &there})
      if (status->fault) UNSCOPED_INFO(status->fault->message());
    return here.state == SessionState::agreed && there.state == SessionState::agreed && !here.at_odds && !there.at_odds &&
           agreement_words(here.agreed->digest) == agreement_words(there.agreed->digest);
  }
};

}  // namespace

TEST_CASE("a tablet that plays the host gives what it shares and gets what the guest ticked, and both agree on that") {
  Rooms rooms;
  const BookId one = shelf(rooms.host, "one"), two = shelf(rooms.host, "two"), own = shelf(rooms.host, "not shared");
  const BookId brought = shelf(rooms.guest, "brought"), kept = shelf(rooms.guest, "kept");
  rooms.shared = {one, two};
  rooms.guest.share(rooms.host, brought);
  Loopback session(rooms.guest, rooms.host, rooms.guest_options(), rooms.options());
  session.deliver();
  CHECK(rooms.agree(session));
  CHECK(rooms.guest.ledger->book(one));
  CHECK(rooms.guest.ledger->book(two));
  CHECK_FALSE(rooms.guest.ledger->book(own));
  CHECK(rooms.host.ledger->book(brought));
  CHECK_FALSE(rooms.host.ledger->book(kept));
  CHECK(session.host.status().agreed->books == 3);

  // Live, both ways: what changes in what they have in common, and what is shared from now on.
  rooms.host.put(brought, kOne, kLabel, std::string("changed by the host"));
  rooms.guest.put(one, kOne, kLabel, std::string("changed by the guest"));
  rooms.shared.push_back(own);
  rooms.host.put(own, kOne, kLabel, std::string("shared later"));
  session.changed();
  CHECK(rooms.agree(session));
  CHECK(rooms.guest.ledger->entity(brought, kOne)->get_as<std::string>(kLabel) == "changed by the host");
  CHECK(rooms.host.ledger->entity(one, kOne)->get_as<std::string>(kLabel) == "changed by the guest");
  CHECK(rooms.guest.ledger->entity(own, kOne)->get_as<std::string>(kLabel) == "shared later");

  // Met before: the next time a little is enough.
  Loopback again(rooms.guest, rooms.host, rooms.guest_options(), rooms.options());
  again.deliver();
  CHECK(rooms.agree(again));
  CHECK(again.bytes < 2000);
}

TEST_CASE("consent at the host holds back what is shared, and the guest's holds back what it brings") {
  Rooms rooms;
  const BookId yes = shelf(rooms.host, "yes"), no = shelf(rooms.host, "no"), brought = shelf(rooms.guest, "brought");
  rooms.shared = {yes, no};
  rooms.stays = {no};
  rooms.guest.share(rooms.host, brought);
  auto guest = rooms.guest_options();
  guest.may_leave = [&](const BookId& book, BookKind) { return book != brought; };
  Loopback session(rooms.guest, rooms.host, guest, rooms.options());
  session.deliver();
  CHECK(rooms.agree(session));
  CHECK(rooms.guest.ledger->book(yes));
  CHECK_FALSE(rooms.guest.ledger->book(no));
  CHECK_FALSE(rooms.host.ledger->book(brought));
}

TEST_CASE("a book that both hold is brought together when the guest ticks it, whichever side is ahead") {
  Rooms rooms;
  const BookId book = shelf(rooms.host, "common");
  (void)rooms.guest.ledger->ingest(rooms.host.ledger->missing(book, {}, 1 << 20), 0);
  SECTION("the host is ahead") { rooms.host.put(book, kOne, kLabel, std::string("newer")); }
  SECTION("the guest is ahead") { rooms.guest.put(book, kOne, kLabel, std::string("newer")); }
  SECTION("both are") {
    rooms.host.put(book, kOne, kLabel, std::string("newer"));
    rooms.guest.put(book, kOne, kCount, std::int64_t{3});
  }
  SECTION("only what a third wrote is new to the host") {
    SyncDevice third("third");
    (void)third.ledger->ingest(rooms.host.ledger->missing(book, {}, 1 << 20), 0);
    third.put(book, kOne, kLabel, std::string("newer"));
    (void)rooms.guest.ledger->ingest(third.ledger->missing(book, rooms.guest.ledger->heads(book), 1 << 20), 0);
  }
  SECTION("neither is") {}
  rooms.guest.share(rooms.host, book);
  Loopback session(rooms.guest, rooms.host, rooms.guest_options(), rooms.options());
  session.deliver();
  CHECK(rooms.agree(session));
  CHECK(rooms.host.ledger->book(book)->heads == rooms.guest.ledger->book(book)->heads);
}

TEST_CASE("who only knows the number of a book gets nothing of it, also in a second meeting") {
  Rooms rooms;
  const BookId book = shelf(rooms.host, "somebody's");
  // The entry list named its number, and the guest writes into a book of that number.
  rooms.guest.put(book, kOne, kCount, std::int64_t{1});
  rooms.guest.share(rooms.host, book);
  for (int meeting = 0; meeting < 2; ++meeting) {
    Loopback session(rooms.guest, rooms.host, rooms.guest_options(), rooms.options());
    session.deliver();
    session.changed();
    CHECK(rooms.guest.ledger->heads(book).size() == 1);
    CHECK_FALSE(rooms.guest.ledger->entity(book, kOne)->get_as<std::string>(kLabel));
    rooms.guest.put(book, kOne, kCount, std::int64_t{2 + meeting});
  }
}

TEST_CASE("a reader of a tablet that plays the host gets what is shared and brings nothing") {
  SyncDevice host("host"), reader("reader");
  enrol(host, reader, Role::reader);
  const BookId book = shelf(host, "one"), brought = shelf(reader, "brought");
  reader.share(host, brought);
  SessionOptions options;
  options.shares = [&](const PublicKey&) { return std::vector<BookId>{book}; };
  Loopback session(reader, host, {}, options);
  session.deliver();
  CHECK_FALSE(host.ledger->book(brought));
}
