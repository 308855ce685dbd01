#include "sync/exchange/session.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/store/database.h"
#include "sync/trust/proquint.h"
#include "tests/sync/exchange/meeting.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a stranger with the right code is enrolled with its role, and one with a wrong code is not") {
  SyncDevice host("host"), guest("guest"), stranger("stranger");
  const auto invitation = host.devices->invite(Role::desk);
  SessionOptions options;
  options.secret = invitation->secret;
  Loopback pairing(guest, host, options);
  pairing.deliver();
  CHECK(agreed(pairing));
  CHECK(pairing.guest.status().role == Role::desk);
  CHECK(host.devices->member(guest.ledger->self().key)->role == Role::desk);

  options.secret = make_pairing_secret();
  Loopback wrong(stranger, host, options);
  wrong.deliver();
  REQUIRE(wrong.guest.status().fault);
  CHECK(wrong.guest.status().fault->code == FaultCode::untrusted);
  CHECK_FALSE(wrong.guest.status().fault->what_to_do.empty());
  CHECK_FALSE(host.devices->member(stranger.ledger->self().key));
}

TEST_CASE("somebody in between with another certificate can't pair") {
  SyncDevice host("host"), guest("guest");
  const auto invitation = host.devices->invite(Role::desk);
  SessionOptions options;
  options.secret = invitation->secret;
  options.certificate = Fingerprint{1};
  Loopback pairing(guest, host, options);
  pairing.deliver();
  CHECK(pairing.guest.status().fault->code == FaultCode::untrusted);
}

TEST_CASE("an unknown device and a host with another key are refused, each with what to do") {
  SyncDevice host("host"), guest("guest");
  Loopback unknown(guest, host);
  unknown.deliver();
  REQUIRE(unknown.guest.status().fault);
  CHECK(unknown.guest.status().fault->code == FaultCode::untrusted);
  CHECK_FALSE(unknown.guest.status().fault->what_to_do.empty());

  enrol(host, guest);
  SessionOptions options;
  options.expected = DeviceKey::generate().public_key();
  Loopback wrong(guest, host, options);
  wrong.deliver();
  CHECK(wrong.guest.status().fault->code == FaultCode::untrusted);
}

TEST_CASE("only what was ticked crosses, and what the host has comes over") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId ticked = make_id<BookId>(kNoon), kept = make_id<BookId>(kNoon + 1), theirs = make_id<BookId>(kNoon + 2);
  guest.put(ticked, kOne, kLabel, std::string("ticked"));
  guest.put(kept, kOne, kLabel, std::string("kept"));
  host.put(theirs, kOne, kLabel, std::string("theirs"));
  guest.share(host, ticked);
  Loopback loopback(guest, host);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(host.ledger->book(ticked));
  CHECK_FALSE(host.ledger->book(kept));
  CHECK(guest.ledger->book(theirs));
  CHECK(guest.ledger->book(theirs)->heads == host.ledger->book(theirs)->heads);
}

TEST_CASE("the second exchange moves only what came since") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  std::vector<BookId> books;
  for (int i = 0; i < 300; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    host.put(books.back(), kOne, kLabel, std::string("a label of some length, as people write them"));
  }
  {
    Loopback first(guest, host);
    first.deliver();
    REQUIRE(agreed(first));
    CHECK(first.guest.status().entries_received == 300);
  }
  for (int i = 0; i < 5; ++i) guest.put(books[static_cast<std::size_t>(i)], kOne, kGuarded, std::string("52"));
  Loopback second(guest, host);
  second.deliver();
  CHECK(agreed(second));
  CHECK(second.host.status().entries_received == 5);
  CHECK(second.guest.status().entries_received == 0);
  CHECK(second.bytes < 4000);
}

TEST_CASE("frames may be opened before their turn: all the same comes of it, also where another frame comes then") {
  SyncDevice host("host");
  for (int i = 0; i < 400; ++i)
    host.put(make_id<BookId>(kNoon + i), kOne, kLabel, std::string("a label of some length, number ") + std::to_string(i * i));
  SessionOptions small, at_once;
  small.batch_bytes = 8 * 1024;  // many frames
  at_once.worth_opening_ahead = 1;
  const auto exchange = [&](SyncDevice& guest, const std::function<ByteView(const std::deque<Bytes>&)>& next) {
    enrol(host, guest);
    Loopback loopback(guest, host, at_once, small);
    std::size_t most_waiting = 0;
    while (!loopback.to_host.empty() || !loopback.to_guest.empty()) {
      if (!loopback.to_host.empty()) {
        const Bytes frame = std::move(loopback.to_host.front());
        loopback.to_host.pop_front();
        loopback.push(loopback.to_guest, loopback.host.receive(frame));
        continue;
      }
      most_waiting = std::max(most_waiting, loopback.to_guest.size());
      const Bytes frame = std::move(loopback.to_guest.front());
      loopback.to_guest.pop_front();
      loopback.push(loopback.to_host, loopback.guest.receive(frame, next(loopback.to_guest)));
    }
    CHECK(most_waiting > 2);
    CHECK(agreed(loopback));
    CHECK(loopback.guest.status().entries_received == 400);
    CHECK(guest.ledger->verify().faults.empty());
  };
  SyncDevice in_turn("in turn"), ahead("ahead"), misled("misled"), noise("noise");
  exchange(in_turn, [](const auto&) { return ByteView{}; });
  exchange(ahead, [](const auto& queue) { return Loopback::front(queue); });
  exchange(misled, [](const auto& queue) { return queue.empty() ? ByteView{} : ByteView{queue.back()}; });
  const Bytes nothing(10'000, 0xff);
  exchange(noise, [&](const auto&) { return ByteView{nothing}; });
  for (const SyncDevice* one : {&ahead, &misled, &noise}) {
    REQUIRE(one->ledger->books().size() == 400);
    for (const BookInfo& book : in_turn.ledger->books()) CHECK(one->ledger->heads(book.id) == in_turn.ledger->heads(book.id));
  }
}

TEST_CASE("sessions that take turns and each know what comes next, more than may open it ahead at a time, all get it") {
  SyncDevice host("host");
  for (int i = 0; i < 200; ++i) host.put(make_id<BookId>(kNoon + i), kOne, kLabel, "a label, number " + std::to_string(i * i));
  SessionOptions small, at_once;
  small.batch_bytes = 2 * 1024;
  at_once.worth_opening_ahead = 1;
  std::vector<std::unique_ptr<SyncDevice>> devices;
  std::vector<std::unique_ptr<Loopback>> loopbacks;
  for (int i = 0; i < 12; ++i) {
    devices.push_back(std::make_unique<SyncDevice>("guest " + std::to_string(i)));
    enrol(host, *devices.back());
    loopbacks.push_back(std::make_unique<Loopback>(*devices.back(), host, at_once, small));
  }
  // By turns, so that every session waits with what it opened while the others have theirs.
  std::ptrdiff_t most_opened = 0;
  for (bool any = true; any;) {
    any = false;
    for (const auto& loopback : loopbacks) {
      any = loopback->deliver(1) || any;
      most_opened = std::max(most_opened, std::count_if(loopbacks.begin(), loopbacks.end(), [](const auto& one) { return one->guest.status().next_opened; }));
    }
  }
  CHECK(most_opened == 4);
  for (std::size_t i = 0; i < devices.size(); ++i) {
    CHECK(agreed(*loopbacks[i]));
    CHECK(devices[i]->ledger->books().size() == 200);
    CHECK(devices[i]->ledger->verify().faults.empty());
  }
}

TEST_CASE("two that have met, one of which forgot, reconcile") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  std::vector<BookId> books;
  for (int i = 0; i < 200; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    host.put(books.back(), kOne, kLabel, std::string("x"));
  }
  {
    Loopback first(guest, host);
    first.deliver();
    REQUIRE(agreed(first));
  }
  guest.put(books[3], kOne, kLabel, std::string("from guest"));
  host.put(books[4], kOne, kLabel, std::string("from host"));
  host.put(books[3], kOne, kGuarded, std::string("52"));
  REQUIRE(guest.peers->agree(guest.peer_number(host), Agreement{}));
  Loopback second(guest, host);
  second.deliver();
  CHECK(agreed(second));
  CHECK(second.host.status().entries_received == 1);
  CHECK(second.guest.status().entries_received == 2);
}

TEST_CASE("more books that both changed than one message holds cross once each") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  constexpr int kBooks = 2300;
  std::vector<BookId> books;
  for (int i = 0; i < kBooks; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    host.put(books.back(), kOne, kLabel, std::string("x"));
  }
  {
    Loopback first(guest, host);
    first.deliver();
    REQUIRE(agreed(first));
  }
  for (const BookId& book : books) {
    host.put(book, kOne, kCount, std::int64_t{1});
    guest.put(book, kOne, kGuarded, std::string("52"));
  }
  REQUIRE(guest.peers->agree(guest.peer_number(host), Agreement{}));
  Loopback second(guest, host);
  second.deliver();
  CHECK(agreed(second));
  CHECK(second.host.status().entries_sent == kBooks);
  CHECK(second.guest.status().entries_sent == kBooks);
  CHECK(second.host.status().entries_received == kBooks);
  CHECK(second.guest.status().entries_received == kBooks);
}

TEST_CASE("a wrong memory of where both agreed is noticed by the digest and mended") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("x"));
  {
    Loopback first(guest, host);
    first.deliver();
    REQUIRE(agreed(first));
  }
  host.put(book, kOne, kLabel, std::string("y"));
  host.put(book, kOne, kLabel, std::string("z"));
  auto wrong = *host.peers->agreement(host.peer_number(guest));
  wrong.position = host.ledger->position();  // as if y and z had gone over already
  REQUIRE(host.peers->agree(host.peer_number(guest), wrong));
  Loopback second(guest, host);
  second.deliver();
  CHECK(agreed(second));
  CHECK(text_of(*guest.ledger->entity(book, kOne)->get(kLabel)) == "z");
}

TEST_CASE("while connected a change of either side goes over at once, to third devices too") {
  SyncDevice host("host"), one("one"), two("two");
  enrol(host, one);
  enrol(host, two);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("x"));
  Loopback first(one, host), second(two, host);
  first.deliver();
  second.deliver();
  REQUIRE(agreed(first));
  REQUIRE(agreed(second));
  one.put(book, kOne, kLabel, std::string("from one"));
  first.changed();
  second.changed();
  CHECK(text_of(*two.ledger->entity(book, kOne)->get(kLabel)) == "from one");
  two.put(book, kOne, kLabel, std::string("from two"));
  second.changed();
  first.changed();
  CHECK(text_of(*one.ledger->entity(book, kOne)->get(kLabel)) == "from two");
  CHECK(agreed(first));
  CHECK(agreed(second));
}

TEST_CASE("a second gap while the first is being mended does not start a second reconciliation") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  for (std::int64_t i = 0; i < 4; ++i) host.put(book, kOne, kCount, i);
  const auto all = [](const BookId&) { return true; };
  for (std::uint64_t number = 1; number <= 2; ++number) {
    const auto newest = host.ledger->since(host.ledger->position() - 1, all, 0, 1 << 20);
    loopback.push(loopback.to_host, loopback.guest.receive(encode_frame(Entries{number, newest.batch})));
  }
  std::size_t reconciles = 0;
  for (const Bytes& frame : loopback.to_host) reconciles += std::holds_alternative<Reconcile>(*decode_frame(frame)) ? 1 : 0;
  CHECK(reconciles == 1);
}

TEST_CASE("a book ticked while connected goes over") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  guest.put(book, kOne, kLabel, std::string("late"));
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  CHECK_FALSE(host.ledger->book(book));
  guest.share(host, book);
  loopback.changed();
  CHECK(host.ledger->book(book));
  CHECK(agreed(loopback));
}

TEST_CASE("how much is to be sent is known before it is sent, and what was answered is counted up to that") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  std::vector<BookId> books;
  for (int i = 0; i < 40; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    for (int turn = 0; turn < 10; ++turn) guest.put(books.back(), kOne, kLabel, std::string(60, static_cast<char>('a' + turn)));
  }
  SessionOptions small;
  small.batch_bytes = 2000;
  Loopback loopback(guest, host, small);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  CHECK(loopback.guest.status().entries_to_send == 0);
  // One of the books is known there in part: that part is not counted.
  REQUIRE(host.ledger->ingest(guest.ledger->missing(books[0], {}, 1), 0));
  const std::uint64_t there = host.ledger->heads(books[0]).at(0).seq;
  REQUIRE(there < 10);
  for (const BookId& book : books) guest.share(host, book);
  loopback.push(loopback.to_host, loopback.guest.changed());
  std::uint64_t before = 0;
  bool partly = false;
  for (bool more = true; more;) {
    more = loopback.deliver(1);
    const auto& status = loopback.guest.status();
    CHECK(status.entries_confirmed <= status.entries_sent);
    CHECK(status.entries_sent <= status.entries_to_send);
    CHECK(status.entries_confirmed >= before);
    before = status.entries_confirmed;
    if (status.entries_to_send > 0) CHECK(status.entries_to_send == 400 - there);
    partly = partly || (status.entries_confirmed > 0 && status.entries_confirmed < status.entries_to_send);
  }
  CHECK(partly);
  CHECK(before == 400 - there);
  loopback.changed();
  CHECK(agreed(loopback));
  // The next session counts anew.
  Loopback again(guest, host, small);
  again.deliver();
  CHECK(agreed(again));
  CHECK(again.guest.status().entries_to_send == 0);
}

TEST_CASE("a change that may not go to the peer leaves the agreement as it is") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  const std::size_t before = loopback.frames;
  guest.put(make_id<BookId>(kNoon), kOne, kLabel, std::string("private"));
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(loopback.frames == before);
}

TEST_CASE("a reader's changes are refused") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest, Role::reader);
  const BookId book = make_id<BookId>(kNoon);
  guest.put(book, kOne, kLabel, std::string("x"));
  guest.share(host, book);
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(loopback.guest.status().fault);
  CHECK(loopback.guest.status().fault->code == FaultCode::refused);
  CHECK_FALSE(host.ledger->book(book));
}

TEST_CASE("a transfer that breaks at any frame goes on from there and ends the same") {
  std::mt19937 random(20261);
  for (int round = 0; round < 12; ++round) {
    SyncDevice host("host"), guest("guest");
    enrol(host, guest);
    std::vector<BookId> books;
    for (int i = 0; i < 30; ++i) {
      books.push_back(make_id<BookId>(kNoon + i));
      SyncDevice& maker = i % 2 == 0 ? host : guest;
      for (int j = 0; j < 20; ++j) maker.put(books.back(), kOne, kCount, std::int64_t{j});
      if (i % 2 == 1) guest.share(host, books.back());
    }
    SessionOptions small;
    small.batch_bytes = 700;
    std::uint64_t received = 0;
    int breaks = 0;
    for (;; ++breaks) {
      REQUIRE(breaks < 100);
      Loopback loopback(guest, host, small, small);
      const bool cut = breaks < 15 && loopback.deliver(5 + random() % 30);
      if (!cut) loopback.deliver();
      received += loopback.guest.status().entries_received + loopback.host.status().entries_received;
      if (!cut && agreed(loopback)) break;
    }
    CHECK(received == 600);
    for (const BookId& book : books) CHECK(host.ledger->book(book)->heads == guest.ledger->book(book)->heads);
    CHECK(host.ledger->verify().faults.empty());
    CHECK(guest.ledger->verify().faults.empty());
  }
}

TEST_CASE("messages out of turn and garbage close the session with a fault and nothing else") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const std::vector<Message> early{Entries{}, Ack{3}, Agree{}, Offer{}, Holding{}, Reconcile{}, Standing{}, Welcome{}, InvitationWish{1, 5}};
  for (const Message& message : early) {
    Loopback loopback(guest, host);
    loopback.to_host.clear();
    static_cast<void>(loopback.host.receive(encode_frame(message)));
    REQUIRE(loopback.host.status().fault);
    CHECK(loopback.host.status().fault->code == FaultCode::malformed);
  }
  std::mt19937 random(7);
  for (int i = 0; i < 500; ++i) {
    Bytes noise(random() % 200);
    for (auto& byte : noise) byte = static_cast<std::uint8_t>(random());
    Loopback loopback(guest, host);
    static_cast<void>(loopback.host.receive(noise));
    CHECK(loopback.host.status().state == SessionState::closed);
  }
}

TEST_CASE("a server of a newer protocol is told apart from a broken one") {
  SyncDevice host("host"), guest("guest");
  Loopback loopback(guest, host);
  Hello hello;
  hello.oldest = kNewestProtocol + 1;
  hello.newest = kNewestProtocol + 3;
  hello.card.device = "new server";
  static_cast<void>(loopback.guest.receive(encode_frame(hello)));
  REQUIRE(loopback.guest.status().fault);
  CHECK(loopback.guest.status().fault->code == FaultCode::newer);
  CHECK(loopback.guest.status().fault->what_to_do.find("update") != std::string::npos);
}

TEST_CASE("the peer's wrong clock is seen at the greeting and does not stop the exchange") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  guest.clock.set(0);
  const BookId book = make_id<BookId>(kNoon);
  guest.put(book, kOne, kLabel, std::string("from 1970"));
  guest.share(host, book);
  Loopback loopback(guest, host);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(loopback.guest.status().clock_ahead_ms > 24 * 3600 * 1000LL);
  CHECK(text_of(*host.ledger->entity(book, kOne)->get(kLabel)) == "from 1970");
}

TEST_CASE("a head is granted an invitation and others are not") {
  SyncDevice host("host"), head("head"), desk("desk"), fresh("fresh");
  enrol(host, head, Role::head);
  enrol(host, desk, Role::desk);
  Loopback loopback(head, host);
  loopback.deliver();
  loopback.push(loopback.to_host, loopback.guest.wish_invitation(Role::stringer, 60'000));
  loopback.deliver();
  REQUIRE(loopback.guest.status().invitation);
  SessionOptions options;
  options.secret = loopback.guest.status().invitation->secret;
  Loopback pairing(fresh, host, options);
  pairing.deliver();
  CHECK(pairing.guest.status().role == Role::stringer);

  Loopback refused(desk, host);
  refused.deliver();
  refused.push(refused.to_host, refused.guest.wish_invitation(Role::head, 60'000));
  refused.deliver();
  CHECK(refused.guest.status().fault->code == FaultCode::refused);
}

TEST_CASE("two copies of one tablet that both wrote do not hold up the rest") {
  const TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  SyncDevice host("host");
  {
    SyncDevice tablet("tablet", folder / "first.db", key);
    enrol(host, tablet);
    tablet.put(book, kOne, kLabel, std::string("before"));
    tablet.share(host, book);
  }
  std::filesystem::copy_file(folder / "first.db", folder / "second.db");
  // As the image of a whole disk, which does not show that it is a copy (more of this in fork_test.cpp).
  SQLite::Database((folder / "second.db").string(), SQLite::OPEN_READWRITE).exec("DELETE FROM meta WHERE key='place'");
  SyncDevice first("tablet", folder / "first.db", key), second("tablet", folder / "second.db", key);
  first.put(book, kOne, kLabel, std::string("by the first"));
  second.put(book, kOne, kLabel, std::string("by the second"));
  Loopback one(first, host);
  one.deliver();
  REQUIRE(agreed(one));

  const BookId other = make_id<BookId>(kNoon + 1);
  second.put(other, kOne, kLabel, std::string("of another player"));
  second.share(host, other);
  Loopback two(second, host);
  two.deliver();
  two.changed();
  CHECK(agreed(two));
  CHECK_FALSE(two.guest.status().at_odds);
  CHECK(text_of(*host.ledger->entity(other, kOne)->get(kLabel)) == "of another player");
  // And goes on crossing while they are connected.
  host.put(other, kOne, kCount, std::int64_t{3});
  two.changed();
  CHECK(second.ledger->entity(other, kOne)->get(kCount) != nullptr);
}

TEST_CASE("a player who is forgotten between what both say of where they stand takes nothing else away") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon), withdrawn = make_id<BookId>(kNoon + 1);
  for (const BookId& one : {book, withdrawn}) host.put(one, kOne, kLabel, std::string("x"));
  REQUIRE(meet(guest, host));
  guest.put(book, kOne, kLabel, std::string("y"));
  host.put(book, kOne, kCount, std::int64_t{1});
  Loopback again(guest, host);
  while (again.host.status().state != SessionState::comparing) REQUIRE(again.deliver(1));
  REQUIRE(host.ledger->forget(withdrawn));
  again.deliver();
  again.changed();
  CHECK(agreed(again));
  CHECK(text_of(*host.ledger->entity(book, kOne)->get(kLabel)) == "y");
  CHECK(guest.ledger->entity(book, kOne)->get(kCount) != nullptr);
  CHECK_FALSE(guest.ledger->book(withdrawn));
}

TEST_CASE("a book ticked while both find out what is lacking goes over in this session") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId differs = make_id<BookId>(kNoon), ticked = make_id<BookId>(kNoon + 1);
  guest.put(differs, kOne, kLabel, std::string("x"));
  guest.put(ticked, kOne, kLabel, std::string("y"));
  guest.share(host, differs);
  SessionOptions kept;
  kept.leaves_by = [] { return LeaveRule{}; };
  Loopback loopback(guest, host, kept, kept);
  while (loopback.guest.status().state != SessionState::exchanging) REQUIRE(loopback.deliver(1));
  guest.share(host, ticked);
  loopback.push(loopback.to_host, loopback.guest.changed());
  loopback.deliver();
  for (int quiet = 0; quiet < 2; ++quiet) {
    loopback.push(loopback.to_host, loopback.guest.tick());
    loopback.push(loopback.to_guest, loopback.host.tick());
    loopback.deliver();
  }
  CHECK(host.ledger->book(ticked));
  CHECK(agreed(loopback));
}

TEST_CASE("a book ticked while offers wait for their answers is offered once in a message") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  std::vector<BookId> books;
  for (int i = 0; i < 1001; ++i) {
    books.push_back(make_id<BookId>(kNoon + i));
    guest.put(books.back(), kOne, kLabel, std::string("x"));
    guest.share(host, books.back());
  }
  const BookId ticked = make_id<BookId>(kNoon + 5000);
  guest.put(ticked, kOne, kLabel, std::string("y"));
  Loopback loopback(guest, host);
  while (loopback.guest.status().state != SessionState::comparing) REQUIRE(loopback.deliver(1));
  guest.share(host, ticked);
  const auto offers = [&] {
    return !loopback.to_host.empty() && std::holds_alternative<Offer>(*decode_frame(loopback.to_host.back()));
  };
  while (!offers()) REQUIRE(loopback.deliver(1));
  loopback.push(loopback.to_host, loopback.guest.changed());
  loopback.deliver();
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(host.ledger->book(ticked));
  CHECK(host.ledger->book(books.back()));
}
