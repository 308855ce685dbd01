// What devices tell each other beside entries: forgotten books, forks, revocation.

#include <catch2/catch.hpp>
#include <tuple>

#include "core/store/backup.h"
#include "tests/sync/exchange/meeting.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE(
    "a player forgotten on one tablet is erased on the server and, at its next visit, on a tablet that was "
    "away") {
  SyncDevice host("host"), desk("desk"), away("away");
  enrol(host, desk, Role::desk);
  enrol(host, away);
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  desk.put(book, kOne, kLabel, std::string("withdraws"));
  desk.put(other, kOne, kLabel, std::string("stays"));
  desk.share(host, book);
  desk.share(host, other);
  CHECK(meet(desk, host));
  CHECK(meet(away, host));
  REQUIRE(away.ledger->book(book));
  away.put(book, kOne, kCount, std::int64_t{3});  // written while away, not handed over yet

  REQUIRE(desk.ledger->forget(book));
  CHECK(desk.peers->scope(desk.peer_number(host)) == std::set<BookId>{other});
  Loopback first(desk, host);
  first.deliver();
  CHECK(agreed(first));
  CHECK(first.host.status().forgotten == 1);
  CHECK_FALSE(host.ledger->book(book));
  CHECK(host.ledger->book(other));

  Loopback second(away, host);
  second.deliver();
  CHECK(agreed(second));
  CHECK(second.guest.status().forgotten == 1);
  CHECK_FALSE(away.ledger->book(book));
  CHECK(away.ledger->book(other));
  CHECK_FALSE(host.ledger->book(book));
  CHECK(away.ledger->forgotten()[0].stub.device == "desk");
  CHECK(away.ledger->forgotten()[0].heard_from == host.ledger->self().key);

  // Told once: the next exchange says nothing of it.
  CHECK(host.peers->told(host.peer_number(away)) == 1);
  Loopback third(away, host);
  third.deliver();
  CHECK(agreed(third));
  CHECK(third.guest.status().forgotten == 0);
  for (const SyncDevice* device : {&host, &desk, &away}) CHECK(device->ledger->verify().faults.empty());
}

TEST_CASE("while connected a player is forgotten at once, and both agree anew") {
  SyncDevice host("host"), desk("desk"), bench("bench");
  enrol(host, desk, Role::desk);
  enrol(host, bench);
  const BookId book = make_id<BookId>(kNoon);
  desk.put(book, kOne, kLabel, std::string("withdraws"));
  desk.share(host, book);
  Loopback first(desk, host), second(bench, host);
  first.deliver();
  second.deliver();
  REQUIRE(bench.ledger->book(book));
  REQUIRE(desk.ledger->forget(book));
  first.changed();
  second.changed();
  CHECK_FALSE(host.ledger->book(book));
  CHECK_FALSE(bench.ledger->book(book));
  first.changed();
  second.changed();
  CHECK(agreed(first));
  CHECK(agreed(second));
  CHECK(second.guest.status().agreed->books == 0);
}

TEST_CASE("a stub travels on to a server that never met who ordered it, by a tablet that was there") {
  SyncDevice harbour("harbour"), lakeside("lakeside"), desk("desk"), traveller("traveller");
  enrol(harbour, desk, Role::desk);
  enrol(harbour, traveller);
  enrol(lakeside, traveller);
  const BookId book = make_id<BookId>(kNoon);
  desk.put(book, kOne, kLabel, std::string("withdraws"));
  desk.share(harbour, book);
  CHECK(meet(desk, harbour));
  CHECK(meet(traveller, harbour));
  traveller.share(lakeside, book);
  CHECK(meet(traveller, lakeside));
  REQUIRE(lakeside.ledger->book(book));
  REQUIRE(desk.ledger->forget(book));
  CHECK(meet(desk, harbour));
  CHECK(meet(traveller, harbour));
  CHECK(meet(traveller, lakeside));
  CHECK_FALSE(lakeside.ledger->book(book));
  REQUIRE(lakeside.ledger->forgotten().size() == 1);
  CHECK(lakeside.ledger->forgotten()[0].stub.key == desk.ledger->self().key);
  CHECK(lakeside.ledger->forgotten()[0].heard_from == traveller.ledger->self().key);
}

TEST_CASE("a device that went on from an old copy of its files hears again of what was forgotten, from either side") {
  for (const bool host_knows : {true, false}) {
    SyncDevice host("host"), desk("desk");
    enrol(host, desk, Role::desk);
    const BookId book = make_id<BookId>(kNoon);
    desk.put(book, kOne, kLabel, std::string("withdraws"));
    desk.share(host, book);
    CHECK(meet(desk, host));
    SyncDevice& knows = host_knows ? host : desk;
    SyncDevice& other = host_knows ? desk : host;
    REQUIRE(knows.ledger->forget(book));
    // As if it had been told already and then been put back.
    REQUIRE(knows.peers->tell(knows.peer_number(other), 1'000));
    CHECK(meet(desk, host));
    CHECK_FALSE(other.ledger->book(book));
    CHECK(other.ledger->is_forgotten(book));
    CHECK(meet(desk, host));
  }
}

TEST_CASE("a batch of which the peer held a part back is not counted as being there") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  Loopback loopback(guest, host);
  loopback.deliver();
  REQUIRE(agreed(loopback));
  const auto answer = [&](const Message& message) { loopback.push(loopback.to_guest, loopback.host.receive(encode_frame(message))); };
  host.put(book, kOne, kLabel, std::string("first"));
  loopback.push(loopback.to_guest, loopback.host.changed());
  REQUIRE(loopback.to_guest.size() == 1);
  answer(HeldBack{1});
  CHECK_FALSE(loopback.host.status().all_sent);
  host.put(book, kOne, kLabel, std::string("second"));
  loopback.push(loopback.to_guest, loopback.host.changed());
  answer(Ack{2});
  CHECK(loopback.host.status().all_sent);
  answer(HeldBack{2});  // answered already
  CHECK(loopback.host.status().state == SessionState::closed);
}

TEST_CASE("programs of every protocol exchange with today's, as guests and as hosts") {
  for (std::uint32_t protocol = kOldestProtocol; protocol <= kNewestProtocol; ++protocol)
    for (const bool old_host : {false, true}) {
      INFO("protocol " << protocol << (old_host ? ", host" : ", guest"));
      SyncDevice host("host"), guest("guest");
      enrol(host, guest);
      const BookId ours = make_id<BookId>(kNoon), theirs = make_id<BookId>(kNoon + 1);
      guest.put(ours, kOne, kLabel, std::string("from the guest"));
      host.put(theirs, kOne, kLabel, std::string("from the host"));
      guest.share(host, ours);
      SessionOptions old;
      old.newest_protocol = protocol;
      Loopback loopback(guest, host, old_host ? SessionOptions{} : old, old_host ? old : SessionOptions{});
      loopback.deliver();
      CHECK(agreed(loopback));
      CHECK(answers(host, ours, kLabel) == std::set<std::string>{"from the guest"});
      CHECK(answers(guest, theirs, kLabel) == std::set<std::string>{"from the host"});
      host.put(theirs, kOne, kLabel, std::string("live"));
      loopback.changed();
      CHECK(answers(guest, theirs, kLabel) == std::set<std::string>{"live"});
      CHECK(agreed(loopback));
    }
}

TEST_CASE("what may leave goes by the room of the moment, also in a session that goes on") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId here = make_id<BookId>(kNoon), there = make_id<BookId>(kNoon + 1), book = make_id<BookId>(kNoon + 2);
  guest.put(book, kOne, kLabel, std::string("said here"));
  guest.share(host, book);
  BookId room = here;
  SessionOptions options;
  options.may_leave = [&](const BookId& id, BookKind) { return id != book || room == here; };
  options.leaves_by = [&] { return LeaveRule{room, 0}; };
  Loopback loopback(guest, host, options);
  loopback.deliver();
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"said here"});
  room = there;
  guest.put(book, kOne, kLabel, std::string("said elsewhere"));
  loopback.changed();
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"said here"});
  room = here;
  guest.put(book, kOne, kCount, std::int64_t{1});
  loopback.changed();
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"said elsewhere"});
}

TEST_CASE(
    "neither a reader nor a stub of an unknown key that a reader hands over erases anything, and nobody is "
    "held up") {
  SyncDevice host("host"), desk("desk"), reader("reader");
  enrol(host, desk, Role::desk);
  enrol(host, reader, Role::reader);
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  desk.put(book, kOne, kLabel, std::string("stays"));
  desk.put(other, kOne, kLabel, std::string("stays too"));
  desk.share(host, book);
  desk.share(host, other);
  CHECK(meet(desk, host));
  CHECK(meet(reader, host));
  REQUIRE(reader.ledger->forget(book));
  CHECK(reader.ledger->obey(
      std::vector<Stub>{sign_stub(DeviceKey::generate(), "nobody", other, kShelf, kNoon)}, PublicKey{1}));
  CHECK(reader.ledger->books().empty());
  Loopback loopback(reader, host);
  loopback.deliver();
  loopback.changed();
  CHECK(agreed(loopback));
  CHECK(loopback.host.status().forgotten == 0);
  CHECK(host.ledger->book(book));
  CHECK(host.ledger->book(other));
  CHECK(host.ledger->forgotten().empty());
  CHECK(reader.ledger->books().empty());  // and what it forgot does not come back to it
  CHECK(meet(reader, host));
  host.put(book, kOne, kLabel, std::string("goes on"));
  CHECK(meet(desk, host));
  CHECK(answers(desk, book, kLabel) == std::set<std::string>{"goes on"});
  // An enrolled writer's own stub counts whoever carries it.
  REQUIRE(desk.ledger->forget(book));
  REQUIRE(reader.ledger->obey(std::vector<Stub>{desk.ledger->forgotten()[0].stub}, desk.ledger->self().key));
  CHECK(host.devices->may_order_forgetting(desk.ledger->self().key));
  CHECK_FALSE(host.devices->may_order_forgetting(reader.ledger->self().key));
}

TEST_CASE("a device that does not know stubs is served as before") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  host.put(book, kOne, kLabel, std::string("x"));
  REQUIRE(host.ledger->forget(make_id<BookId>(kNoon + 5), kShelf));
  // A guest whose hello says that it speaks protocol 1 only: every frame after it is the same.
  Session session(Loopback::fill(host, {}, Side::host));
  Hello old;
  old.newest = 1;
  old.card = guest.ledger->self();
  const auto hello = session.receive(encode_frame(old));
  REQUIRE(hello.size() == 1);
  const auto theirs = decode_frame(hello[0]);
  CHECK(std::get<Hello>(*theirs).oldest == 1);
  CHECK(std::get<Hello>(*theirs).newest == kNewestProtocol);
  const Digest handshake = handshake_digest(encode_frame(old), hello[0], Fingerprint{});
  Bytes proof;
  for (const ByteView part : {as_bytes("weavelog guest proof 1"), ByteView(handshake)})
    proof.insert(proof.end(), part.begin(), part.end());
  const auto answer = session.receive(encode_frame(MemberProof{guest.ledger->key().sign(proof)}));
  REQUIRE(answer.size() == 2);
  CHECK(std::holds_alternative<Welcome>(*decode_frame(answer[0])));
  CHECK(std::holds_alternative<Standing>(*decode_frame(answer[1])));
}

TEST_CASE("a device whose protocols all lie below or above ours is told which of the two to update") {
  SyncDevice host("host");
  for (const auto& [oldest, newest, which] :
       {std::tuple(0U, 0U, "on that device"), std::tuple(kNewestProtocol + 1, kNewestProtocol + 9, "on this device")}) {
    Session session(Loopback::fill(host, {}, Side::host));
    Hello hello;
    hello.oldest = oldest;
    hello.newest = newest;
    hello.extra = {1, 2, 3};  // what a newer version adds
    static_cast<void>(session.receive(encode_frame(hello)));
    REQUIRE(session.status().fault);
    CHECK(session.status().fault->code == FaultCode::newer);
    CHECK(session.status().fault->what_to_do.find(which) != std::string::npos);
  }
  // A range that reaches beyond ours is spoken with.
  Session session(Loopback::fill(host, {}, Side::host));
  Hello hello;
  hello.newest = kNewestProtocol + 9;
  CHECK(session.receive(encode_frame(hello)).size() == 1);
  CHECK_FALSE(session.status().fault);
}

TEST_CASE("a head revokes a device: its live session ends, its next hello is refused, what it wrote stays") {
  SyncDevice host("host"), head("head"), lost("lost"), desk("desk");
  enrol(host, head, Role::head);
  enrol(host, lost);
  enrol(host, desk, Role::desk);
  const BookId book = make_id<BookId>(kNoon);
  lost.put(book, kOne, kLabel, std::string("before"));
  lost.share(host, book);
  Loopback live(lost, host), room(head, host), other(desk, host);
  live.deliver();
  room.deliver();
  other.deliver();
  REQUIRE(agreed(live));

  room.push(room.to_host, room.guest.wish_devices());
  room.deliver();
  REQUIRE(room.guest.status().devices);
  CHECK(room.guest.status().devices->size() == 3);
  room.push(room.to_host, room.guest.wish_revocation(lost.ledger->self().key));
  room.deliver();
  const auto& listed = *room.guest.status().devices;
  CHECK(std::count_if(listed.begin(), listed.end(),
                      [](const EnrolledDevice& device) { return device.revoked.has_value(); }) == 1);

  live.push(live.to_guest, live.host.tick());  // what the host does twice a second
  live.deliver();
  REQUIRE(live.host.status().fault);
  CHECK(live.host.status().state == SessionState::closed);
  REQUIRE(live.guest.status().fault);
  CHECK(live.guest.status().fault->what.find("revoked") != std::string::npos);
  other.changed();
  CHECK(agreed(other));

  Loopback again(lost, host);
  again.deliver();
  CHECK(again.guest.status().fault->code == FaultCode::refused);
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"before"});

  // Only a head, and not itself.
  other.push(other.to_host, other.guest.wish_revocation(head.ledger->self().key));
  other.deliver();
  CHECK(other.guest.status().fault->code == FaultCode::refused);
  room.push(room.to_host, room.guest.wish_revocation(head.ledger->self().key));
  room.deliver();
  CHECK(room.guest.status().fault->code == FaultCode::refused);
}

TEST_CASE("a head gives a device another name and role from afar: it holds at once") {
  SyncDevice host("host"), head("head"), bench("bench");
  enrol(host, head, Role::head);
  enrol(host, bench, Role::reader);
  const PublicKey key = bench.ledger->self().key;
  Loopback room(head, host), live(bench, host);
  room.deliver();
  live.deliver();
  room.push(room.to_host, room.guest.wish_change(key, "bench by the window", Role::stringer));
  room.deliver();
  REQUIRE(room.guest.status().devices);
  const auto& listed = *room.guest.status().devices;
  const auto changed = std::find_if(listed.begin(), listed.end(), [&](const EnrolledDevice& device) { return device.key == key; });
  REQUIRE(changed != listed.end());
  CHECK(changed->name == "bench by the window");
  CHECK(changed->role == Role::stringer);

  // As a reader it would be refused for this.
  const BookId book = make_id<BookId>(kNoon);
  live.push(live.to_guest, live.host.tick());
  bench.put(book, kOne, kLabel, std::string("strung"));
  bench.share(host, book);
  live.changed();
  CHECK(agreed(live));
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"strung"});

  // Only a head; and no role that there is not.
  live.push(live.to_host, live.guest.wish_change(head.ledger->self().key, {}, Role::reader));
  live.deliver();
  REQUIRE(live.guest.status().fault);
  CHECK(live.guest.status().fault->code == FaultCode::refused);
  CHECK(host.devices->member(head.ledger->self().key)->role == Role::head);
  room.push(room.to_host, {encode_frame(DeviceChange{key, {}, 9})});
  room.deliver();
  REQUIRE(room.guest.status().fault);
  CHECK(host.devices->member(key)->role == Role::stringer);
}

// Found by fuzzing the greeting.
TEST_CASE("an invitation from who has not proved to be the host is not shown") {
  SyncDevice guest("guest");
  Session session(Loopback::fill(guest, {}, Side::guest));
  CHECK(session.start().size() == 1);
  static_cast<void>(session.receive(encode_frame(InvitationGrant{static_cast<std::uint64_t>(Role::head), {2}, kNoon})));
  CHECK_FALSE(session.status().invitation);
  REQUIRE(session.status().fault);
  CHECK(session.status().fault->code == FaultCode::malformed);
}

TEST_CASE("a host of an earlier version is not asked to change devices") {
  SyncDevice host("host"), head("head");
  enrol(host, head, Role::head);
  SessionOptions earlier;
  earlier.newest_protocol = kProtocolWithDeviceChanges - 1;
  Loopback room(head, host, {}, earlier);
  room.deliver();
  room.push(room.to_host, room.guest.wish_change(head.ledger->self().key, "another", {}));
  room.deliver();
  REQUIRE(room.guest.status().fault);
  CHECK(room.guest.status().fault->code == FaultCode::newer);
  CHECK(room.guest.status().state == SessionState::agreed);
}

TEST_CASE("what a device's role does not allow is refused by the host, and what it carries of others is not") {
  SyncDevice host("host"), bench("bench"), other("other");
  enrol(host, bench, Role::stringer);
  enrol(host, other, Role::desk);
  SessionOptions strict;
  std::vector<std::tuple<Role, BookId, ActionKind>> asked;
  const BookId free = make_id<BookId>(kNoon), closed = make_id<BookId>(kNoon + 1);
  strict.rights.may_write = [&](Role role, const BatchBook& book, ActionKind action) {
    asked.emplace_back(role, book.id, action);
    return book.id != closed;
  };
  bench.put(free, kOne, kLabel, std::string("strung"));
  bench.share(host, free);
  {
    Loopback loopback(bench, host, {}, strict);
    loopback.deliver();
    CHECK(agreed(loopback));
    REQUIRE(asked.size() == 1);
    const auto [role, book, action] = asked.front();
    CHECK(std::string(name_of(role)) == "stringer");
    CHECK(book == free);
    CHECK(action == kEdit);
  }
  // Somebody else's word in the closed book, carried here.
  other.put(closed, kOne, kLabel, std::string("said by another"));
  REQUIRE(bench.ledger->ingest(other.ledger->missing(closed, {}, 1 << 20), 1));
  bench.share(host, closed);
  {
    Loopback loopback(bench, host, {}, strict);
    loopback.deliver();
    CHECK(agreed(loopback));
    CHECK(answers(host, closed, kLabel) == std::set<std::string>{"said by another"});
  }
  bench.put(closed, kOne, kLabel, std::string("said by the bench"));
  Loopback refused(bench, host, {}, strict);
  refused.deliver();
  REQUIRE(refused.guest.status().fault);
  CHECK(refused.guest.status().fault->code == FaultCode::refused);
  CHECK(refused.guest.status().fault->what.find("stringer") != std::string::npos);
  CHECK(answers(host, closed, kLabel) == std::set<std::string>{"said by another"});
  // As head it may.
  REQUIRE(host.devices->set_role(bench.ledger->self().key, Role::head));
  Loopback again(bench, host, {}, strict);
  again.deliver();
  CHECK(agreed(again));
  CHECK(answers(host, closed, kLabel) == std::set<std::string>{"said by the bench"});
}

TEST_CASE("a host whose event is over says so and takes nothing") {
  SyncDevice host("host"), guest("guest");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  guest.put(book, kOne, kLabel, std::string("late"));
  guest.share(host, book);
  SessionOptions options;
  bool over = true;
  options.over = [&]() -> std::optional<Fault> {
    return over ? std::optional(Fault{FaultCode::expired, "the event is over", "exchange", "pair with the next one"}) : std::nullopt;
  };
  Loopback late(guest, host, {}, options);
  late.deliver();
  REQUIRE(late.guest.status().fault);
  CHECK(late.guest.status().fault->code == FaultCode::expired);
  CHECK_FALSE(host.ledger->book(book));
  over = false;
  Loopback again(guest, host, {}, options);
  again.deliver();
  CHECK(agreed(again));
}

TEST_CASE("which books crossed to which device is written down on both sides, and erased with the book") {
  SyncDevice host("host"), guest("guest"), other("other");
  enrol(host, guest);
  enrol(host, other);
  const BookId book = make_id<BookId>(kNoon), kept = make_id<BookId>(kNoon + 1);
  for (const BookId& one : {book, kept}) {
    guest.put(one, kOne, kLabel, std::string("said"));
    guest.put(one, kOne, kCount, std::int64_t{1});
    guest.share(host, one);
  }
  CHECK(meet(guest, host));
  CHECK(meet(other, host));
  const auto sent = guest.peers->exchanged(book);
  REQUIRE(sent.size() == 1);
  CHECK(sent.front().peer == host.ledger->self().key);
  CHECK(sent.front().entries.sent == 2);
  CHECK(sent.front().entries.received == 0);
  const auto both = host.peers->exchanged(book);
  REQUIRE(both.size() == 2);
  for (const Exchanged& one : both) {
    CHECK(one.entries.received == (one.peer == guest.ledger->self().key ? 2 : 0));
    CHECK(one.entries.sent == (one.peer == other.ledger->self().key ? 2 : 0));
    CHECK(one.last >= one.first);
  }
  CHECK(host.peers->exchanged().size() == 4);
  guest.put(book, kOne, kCount, std::int64_t{2});
  CHECK(meet(guest, host));
  CHECK(guest.peers->exchanged(book).front().entries.sent == 3);
  REQUIRE(host.ledger->forget(book));
  CHECK(host.peers->exchanged(book).empty());
  CHECK(host.peers->exchanged(kept).size() == 2);
}

TEST_CASE("what a revoked device wrote later and others bring is taken, counted and told") {
  SyncDevice host("host"), lost("lost"), bench("bench");
  enrol(host, lost);
  enrol(host, bench);
  const BookId book = make_id<BookId>(kNoon);
  lost.put(book, kOne, kLabel, std::string("before"));
  REQUIRE(host.devices->revoke(lost.ledger->self().key));
  lost.put(book, kOne, kLabel, std::string("after"));
  pour(lost, bench, book);  // a bundle, or another event's server
  bench.share(host, book);
  CHECK(meet(bench, host));
  CHECK(answers(host, book, kLabel) == std::set<std::string>{"after"});
  const auto devices = host.devices->devices();
  const auto found = std::find_if(devices.begin(), devices.end(),
                                  [](const EnrolledDevice& device) { return device.revoked.has_value(); });
  REQUIRE(found != devices.end());
  CHECK(found->late_entries == 2);
}

TEST_CASE(
    "entries with stamps far ahead are kept, and the device is named in the exchange and the list of "
    "authors") {
  SyncDevice host("host"), guest("ahead");
  enrol(host, guest);
  const BookId book = make_id<BookId>(kNoon);
  guest.clock.advance(2 * 24 * 3600 * 1000LL);
  guest.put(book, kOne, kGuarded, std::string("52"));
  guest.share(host, book);
  Loopback loopback(guest, host);
  loopback.deliver();
  CHECK(agreed(loopback));
  CHECK(loopback.host.status().wrong_clocks == std::vector<std::string>{"ahead"});
  CHECK(answers(host, book, kGuarded) == std::set<std::string>{"52"});
  bool flagged = false;
  for (const KnownAuthor& author : host.ledger->authors())
    if (author.card.device == "ahead") flagged = author.wrong_clock;
  CHECK(flagged);
  // Ours stays our own.
  CHECK(host.put(book, kOne, kLabel, std::string("now")).stamp.wall_ms() < kNoon + 60'000);
}

TEST_CASE("a closing that did not see a third answer does not cover it, over a server and back") {
  SyncDevice host("host"), a("a"), b("b"), c("c");
  for (SyncDevice* device : {&a, &b, &c}) enrol(host, *device);
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kGuarded, std::string("52"));
  a.share(host, book);
  CHECK(meet(a, host));
  CHECK(meet(b, host));
  CHECK(meet(c, host));
  a.put(book, kOne, kGuarded, std::string("51"));
  b.put(book, kOne, kGuarded, std::string("50"));
  c.put(book, kOne, kGuarded, std::string("49"));
  CHECK(meet(a, host));
  CHECK(meet(b, host));
  CHECK(meet(a, host));
  REQUIRE(a.ledger->open_questions().size() == 1);
  a.put(book, kOne, kGuarded, std::string("51"));  // closes 51 against 50
  CHECK(meet(a, host));
  CHECK(host.ledger->open_questions().empty());
  CHECK(meet(c, host));
  REQUIRE(host.ledger->open_questions().size() == 1);
  CHECK(answers(host, book, kGuarded) == std::set<std::string>{"49", "51"});
  CHECK(meet(b, host));
  CHECK(meet(a, host));
  for (SyncDevice* device : {&a, &b, &c}) {
    REQUIRE(device->ledger->open_questions().size() == 1);
    const Cell cell = device->ledger->open_questions()[0].cell;
    CHECK(cell.values.size() == 2);
    for (const CellValue& value : cell.values) {
      const auto origin = device->ledger->origin(book, value.dot);
      REQUIRE(origin);
      CHECK(origin->author.device == (text_of(value.value) == "49" ? "c" : "a"));
      CHECK(origin->stamp == value.stamp);
    }
  }
}

TEST_CASE("of a player forgotten since the backup was made, a restored device keeps no note of whom it went to either") {
  const TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon), kept = make_id<BookId>(kNoon + 1);
  SyncDevice host("host");
  {
    SyncDevice guest("guest", folder / "a.db", key);
    enrol(host, guest);
    for (const BookId& one : {book, kept}) {
      guest.put(one, kOne, kLabel, std::string("x"));
      guest.share(host, one);
    }
    REQUIRE(meet(guest, host));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &key));
    REQUIRE(guest.ledger->forget(book));
  }
  REQUIRE(restore(folder / "backup.db", folder / "a.db", true));
  SyncDevice guest("guest", folder / "a.db", key);
  CHECK(guest.peers->exchanged(book).empty());
  CHECK(guest.peers->scope(guest.peer_number(host)) == std::set<BookId>{kept});
  CHECK_FALSE(guest.peers->agreement(guest.peer_number(host)));  // its digest was over the forgotten book too
  CHECK(guest.peers->exchanged(kept).size() == 1);
  REQUIRE(meet(guest, host));
  CHECK_FALSE(host.ledger->book(book));
}
