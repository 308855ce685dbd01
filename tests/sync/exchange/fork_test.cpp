// A tablet's folder was copied, key and all, and both copies write on as one author.

#include <catch2/catch.hpp>

#include "core/store/database.h"
#include "tests/sync/exchange/meeting.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Copies {
  TemporaryFolder folder;
  DeviceKey key = DeviceKey::generate();
  std::unique_ptr<SyncDevice> original, copy;

  /// `prepare` gets the one tablet before it is copied.
  template <class Prepare>
  explicit Copies(Prepare prepare) {
    {
      SyncDevice before("tablet", folder / "original.db", key);
      prepare(before);
    }
    std::filesystem::copy_file(folder / "original.db", folder / "copy.db");
    // As an image of the whole disk would be: even the file's number and time are the same.
    SQLite::Database(file("copy"), SQLite::OPEN_READWRITE).exec("DELETE FROM meta WHERE key='place'");
    original = std::make_unique<SyncDevice>("tablet", folder / "original.db", key);
    copy = std::make_unique<SyncDevice>("tablet", folder / "copy.db", key);
    copy->clock.advance(30'000);
  }
  [[nodiscard]] std::string file(const std::string& name) const { return (folder / (name + ".db")).string(); }
};

}  // namespace

TEST_CASE("a copied file goes on under an incarnation of its own from its first moment") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  AuthorId first;
  {
    Device device("tablet", folder / "a.db", key);
    first = device.ledger->self().id();
  }
  std::filesystem::copy_file(folder / "a.db", folder / "b.db");
  CHECK(Device("tablet", folder / "b.db", key).ledger->self().id() != first);
  CHECK(Device("tablet", folder / "a.db", key).ledger->self().id() == first);
  std::filesystem::create_directory(folder / "moved");
  std::filesystem::rename(folder / "a.db", folder / "moved" / "a.db");
  CHECK(Device("tablet", folder / "moved" / "a.db", key).ledger->self().id() == first);
}

TEST_CASE(
    "two copies that wrote apart: both words reach everybody, side by side, and a person closes the "
    "question") {
  SyncDevice host("host");
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  Copies copies([&](SyncDevice& tablet) {
    enrol(host, tablet);
    tablet.put(book, kOne, kGuarded, std::string("52"));
    tablet.put(other, kOne, kLabel, std::string("untouched"));
    tablet.share(host, book);
    tablet.share(host, other);
    REQUIRE(meet(tablet, host));
  });
  SyncDevice &original = *copies.original, &copy = *copies.copy;
  REQUIRE(original.ledger->self() == copy.ledger->self());
  const AuthorId author = copy.ledger->self().id();
  original.put(book, kOne, kGuarded, std::string("51"));
  original.put(book, kOne, kLabel, std::string("of the original"));
  copy.put(book, kOne, kGuarded, std::string("50"));
  copy.put(book, kOne, kCount, std::int64_t{7});
  copy.put(book, kOne, kGuarded,
           std::string("50.5"));  // the copy's own second thought takes the place of its first

  CHECK(meet(original, host));
  host.put(book, kOne, kLabel,
           std::string("built on by the host"));  // replaces a number of which the copy holds another entry
  CHECK(meet(copy, host));
  CHECK(copy.ledger->self().id() != author);
  REQUIRE(copy.ledger->forks().size() == 1);
  CHECK(copy.ledger->forks()[0].seq == 2);
  CHECK(copy.ledger->forks()[0].author.id() == author);
  for (const SyncDevice* device : {&host, &copy}) {
    CHECK(answers(*device, book, kGuarded) == std::set<std::string>{"50.5", "51"});
    CHECK(answers(*device, book, kCount) == std::set<std::string>{"7"});
    CHECK(answers(*device, book, kLabel) == std::set<std::string>{"built on by the host"});
    CHECK(device->ledger->open_questions().size() == 1);
  }
  // The copy took the other branch in place of its own, which it keeps.
  CHECK(copy.ledger->book(book)->heads == host.ledger->book(book)->heads);
  CHECK(copy.ledger->quarantine().size() == 3);
  CHECK(meet(original, host));
  CHECK(original.ledger->self().id() == author);
  CHECK(answers(original, book, kGuarded) == std::set<std::string>{"50.5", "51"});

  host.put(book, kOne, kGuarded, std::string("51"));
  CHECK(meet(copy, host));
  CHECK(meet(original, host));
  for (const SyncDevice* device : {&host, &original, &copy}) {
    CHECK(device->ledger->open_questions().empty());
    CHECK(answers(*device, book, kGuarded) == std::set<std::string>{"51"});
    CHECK(device->ledger->verify().faults.empty());
    CHECK(device->ledger->book(book)->heads == host.ledger->book(book)->heads);
    CHECK(device->ledger->entity(book, kOne) == host.ledger->entity(book, kOne));
  }
  // Both go on as before, as two authors.
  original.put(book, kOne, kCount, std::int64_t{8});
  copy.put(other, kOne, kLabel, std::string("of the copy"));
  CHECK(meet(original, host));
  CHECK(meet(copy, host));
  CHECK(meet(original, host));
  CHECK(answers(original, other, kLabel) == std::set<std::string>{"of the copy"});
  CHECK(answers(copy, book, kCount) == std::set<std::string>{"8"});
}

// Found by the simulator.
TEST_CASE("of a book that is kept apart what a server says that was put back to a copy of its files counts in place of what it said before") {
  SyncDevice tablet("tablet");
  const BookId book = make_id<BookId>(kNoon + 5);
  Copies servers([&](SyncDevice& server) { enrol(server, tablet, Role::desk); });
  SyncDevice &before = *servers.original, &after = *servers.copy;
  const std::int64_t peer = tablet.peer_number(before);
  tablet.put(book, kOne, kLabel, std::string("a whole career"));
  const auto says = [&](SyncDevice& server, const std::string& word, int times) {
    for (int i = 0; i < times; ++i) server.put(book, make_id<EntityId>(kNoon + i), kLabel, word + std::to_string(i));
  };
  const int more = GENERATE(1, 3, 5);  // fewer, as many and more than it had said
  says(before, "before ", 3);
  REQUIRE(meet(tablet, before));
  REQUIRE(tablet.peers->apart(peer).at(book) == before.ledger->heads(book));
  says(after, "after ", more);
  for (int meeting = 0; meeting < 3; ++meeting) {
    CHECK(meet(tablet, after));
    CHECK(tablet.peers->apart(peer).at(book) == after.ledger->heads(book));
    CHECK(after.ledger->heads(book).size() == 1);  // nothing of the tablet's own
  }
  // The tablet keeps the branch that it had, and the other aside.
  CHECK(tablet.ledger->entry(book, before.ledger->self().id(), 3).has_value());
  CHECK(tablet.ledger->forks().size() == 1);
  CHECK(tablet.ledger->quarantine().size() == static_cast<std::size_t>(more));
  // What it says after that is compared too.
  after.put(book, make_id<EntityId>(kNoon + 50), kLabel, std::string("and on"));
  CHECK(meet(tablet, after));
  CHECK(tablet.peers->apart(peer).at(book) == after.ledger->heads(book));
}

TEST_CASE("of a book that is kept apart nothing is compared once the server holds nothing of it, and it comes again as it did") {
  SyncDevice tablet("tablet");
  const BookId book = make_id<BookId>(kNoon + 5);
  Copies servers([&](SyncDevice& server) { enrol(server, tablet, Role::desk); });
  SyncDevice &before = *servers.original, &after = *servers.copy;
  const std::int64_t peer = tablet.peer_number(before);
  tablet.put(book, kOne, kLabel, std::string("a whole career"));
  for (int i = 0; i < 3; ++i) before.put(book, make_id<EntityId>(kNoon + i), kLabel, "before " + std::to_string(i));
  REQUIRE(meet(tablet, before));
  REQUIRE(tablet.peers->apart(peer).contains(book));
  // It was put back to what it was before it ever heard of the book.
  CHECK(meet(tablet, after));
  CHECK_FALSE(tablet.peers->apart(peer).contains(book));
  CHECK_FALSE(after.ledger->book(book));
  CHECK(meet(tablet, after));
  CHECK(meet(tablet, before));
  CHECK(tablet.peers->apart(peer).at(book) == before.ledger->heads(book));
  CHECK(before.ledger->heads(book).size() == 1);
}

TEST_CASE("a server that was put back does not get a book that is kept apart by telling less of a third device's words than before") {
  SyncDevice tablet("tablet"), third("third");
  const BookId book = make_id<BookId>(kNoon + 5);
  Copies servers([&](SyncDevice& server) {
    enrol(server, tablet, Role::desk);
    enrol(server, third, Role::desk);
    third.put(book, make_id<EntityId>(kNoon), kLabel, std::string("first"));
    third.share(server, book);
    REQUIRE(meet(third, server));
  });
  SyncDevice &before = *servers.original, &after = *servers.copy;
  tablet.put(book, kOne, kLabel, std::string("a whole career"));
  for (int i = 1; i < 3; ++i) third.put(book, make_id<EntityId>(kNoon + i), kLabel, "later " + std::to_string(i));
  REQUIRE(meet(third, before));
  REQUIRE(meet(tablet, before));
  REQUIRE(before.ledger->heads(book).size() == 1);
  for (int meeting = 0; meeting < 3; ++meeting) {
    CHECK(meet(tablet, after));
    CHECK(after.ledger->heads(book).size() == 1);
  }
  CHECK(tablet.peers->apart(tablet.peer_number(after)).at(book) == after.ledger->heads(book));
}

// Found by the simulator: to the host both copies are one device, to which it does not send back what came from it.
TEST_CASE("two copies at one host at the same time: what builds on a word of the one is not taken as held by the other before it is") {
  SyncDevice host("host");
  const BookId book = make_id<BookId>(kNoon);
  Copies copies([&](SyncDevice& tablet) {
    enrol(host, tablet);
    tablet.put(book, kOne, kGuarded, std::string("52"));
    tablet.share(host, book);
    REQUIRE(meet(tablet, host));
  });
  SyncDevice &original = *copies.original, &copy = *copies.copy;
  Loopback one(original, host), other(copy, host);
  one.deliver();
  other.deliver();
  original.put(book, kOne, kGuarded, std::string("51"));
  one.changed();
  CHECK(answers(host, book, kGuarded) == std::set<std::string>{"51"});
  host.put(book, kOne, kGuarded, std::string("50"));
  other.push(other.to_guest, other.host.changed());
  bool vouched = false;
  for (bool more = true; more;) {
    for (const Bytes& frame : other.to_host)
      if (const auto message = decode_frame(frame); message && std::holds_alternative<Ack>(*message))
        vouched = vouched || answers(copy, book, kGuarded) == std::set<std::string>{"52"};
    more = other.deliver(1);
  }
  other.changed();
  CHECK_FALSE(vouched);
  for (const Session* session : {&other.guest, &other.host}) CHECK(session->status().state == SessionState::agreed);
  CHECK(answers(copy, book, kGuarded) == std::set<std::string>{"50"});
  CHECK(copy.ledger->quarantine().empty());
  CHECK(copy.ledger->book(book)->heads == host.ledger->book(book)->heads);
}

TEST_CASE("a restored device that wrote before it met anybody loses neither its new words nor its old ones") {
  SyncDevice host("host");
  const BookId book = make_id<BookId>(kNoon);
  Copies copies([&](SyncDevice& tablet) {
    enrol(host, tablet);
    tablet.put(book, kOne, kGuarded, std::string("52"));
    tablet.share(host, book);
    REQUIRE(meet(tablet, host));
  });
  SyncDevice &lost = *copies.original, &restored = *copies.copy;
  for (int i = 0; i < 5; ++i) lost.put(book, kOne, kCount, std::int64_t{i});
  REQUIRE(meet(lost, host));
  // The copy knows no more than its first entry and writes another second one.
  restored.put(book, kOne, kLabel, std::string("new word"));
  CHECK(meet(restored, host));
  for (const SyncDevice* device : {&host, &restored}) {
    CHECK(answers(*device, book, kCount) == std::set<std::string>{"4"});
    CHECK(answers(*device, book, kLabel) == std::set<std::string>{"new word"});
    CHECK(device->ledger->verify().faults.empty());
  }
  CHECK(restored.ledger->entity(book, kOne) == host.ledger->entity(book, kOne));
}

TEST_CASE(
    "servers that hold different branches keep theirs, put the other aside, show it, and go on with "
    "everything else") {
  SyncDevice harbour("harbour"), lakeside("lakeside"), traveller("traveller");
  enrol(harbour, traveller);
  enrol(lakeside, traveller);
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  Copies copies([&](SyncDevice& tablet) {
    enrol(harbour, tablet);
    enrol(lakeside, tablet);
    tablet.put(book, kOne, kGuarded, std::string("52"));
    tablet.share(harbour, book);
    tablet.share(lakeside, book);
    REQUIRE(meet(tablet, harbour));
    REQUIRE(meet(tablet, lakeside));
  });
  SyncDevice &original = *copies.original, &copy = *copies.copy;
  original.put(book, kOne, kGuarded, std::string("51"));
  copy.put(book, kOne, kGuarded, std::string("50"));
  REQUIRE(meet(original, harbour));
  REQUIRE(meet(copy, lakeside));
  // A third tablet comes from one to the other.
  REQUIRE(meet(traveller, harbour));
  traveller.put(other, kOne, kLabel, std::string("from the traveller"));
  traveller.share(lakeside, book);
  traveller.share(lakeside, other);
  CHECK(meet(traveller, lakeside));
  CHECK(answers(lakeside, other, kLabel) == std::set<std::string>{"from the traveller"});
  for (const SyncDevice* device : {&lakeside, &traveller}) {
    REQUIRE(device->ledger->forks().size() == 1);
    REQUIRE(device->ledger->quarantine().size() == 1);
    CHECK(device->ledger->quarantine()[0].reason.find("fork") != std::string::npos);
    CHECK(device->ledger->quarantine()[0].device == "tablet");
    const auto entry = device->ledger->quarantined_entry(device->ledger->quarantine()[0].number);
    REQUIRE(entry);
    CHECK(text_of(entry->writes[0].value) == (device == &lakeside ? "51" : "50"));
  }
  CHECK(answers(lakeside, book, kGuarded) == std::set<std::string>{"50"});
  CHECK(answers(traveller, book, kGuarded) == std::set<std::string>{"51"});
  // Once the copy meets the other branch its word is said again and reaches everybody.
  CHECK(meet(copy, harbour));
  CHECK(meet(traveller, harbour));
  CHECK(meet(traveller, lakeside));
  CHECK(answers(harbour, book, kGuarded) == std::set<std::string>{"50", "51"});
  CHECK(answers(traveller, book, kGuarded) == std::set<std::string>{"50", "51"});
  // The other branch's word reaches the second server when one of the copies comes by again.
  CHECK(meet(copy, lakeside));
  CHECK(answers(lakeside, book, kGuarded) == std::set<std::string>{"50", "51"});
  for (const SyncDevice* device : {&harbour, &lakeside, &traveller, &copy})
    CHECK(device->ledger->verify().faults.empty());
}
