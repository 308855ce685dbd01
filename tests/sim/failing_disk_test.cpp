// The ledger on a disk that is full or that loses what it could not sync.

#include <catch2/catch.hpp>
#include <set>

#include "core/model/fields.h"
#include "core/model/tables.h"
#include "tests/sim/device.h"
#include "tests/sim/disk.h"

using namespace weavelog;
using namespace weavelog::sim;

namespace {

/// A ledger on a simulated disk, with a player to speak of.
struct DiskLedger {
  Time time{1'900'000'000'000};
  DeviceClock clock{time};
  Disk disk;
  std::unique_ptr<Ledger> ledger;
  EntityState person;

  DiskLedger(const std::string& name, std::uint64_t seed, bool one_thread) : disk(name, seed, 512) {
    ledger = open(one_thread).value();
    person.book = ledger->create_book_id();
    person.id = make_id<EntityId>(time.now);
    person.kind = kPerson;
  }
  Outcome<std::unique_ptr<Ledger>> open(bool one_thread) {
    LedgerOptions options;
    options.file = "/ledger.db";
    options.vfs = disk.vfs();
    options.one_thread = one_thread;
    options.registry = &registry_of(Program::newer);
    options.clock = &clock;
    options.key = key_of(1);
    options.projections.push_back(std::make_shared<ModelTables>());
    return Ledger::open(std::move(options));
  }
  Outcome<Committed> say(const std::string& word) {
    Draft draft(person.book, kPlayerBook, ActionKind{1});
    draft.put(ledger->entity(person.book, person.id).value_or(person), kNewerNote, word);
    return ledger->append(draft);
  }
  std::string word() {
    const auto held = ledger->entity(person.book, person.id);
    const Value* note = held ? held->get(kNewerNote) : nullptr;
    return note != nullptr ? text_of(*note) : "";
  }
};

}  // namespace

TEST_CASE("what is acknowledged after a sync that was left out and one that failed is there after a power cut, or was not acknowledged") {
  int refused = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    CAPTURE(seed);
    DiskLedger device("lost sync " + std::to_string(seed), seed, true);
    for (int i = 0; i < 20; ++i) REQUIRE(device.say("word " + std::to_string(i)));
    REQUIRE(device.ledger->books().size() == 1);  // a look: what follows from them is written, and its sync left out
    device.disk.fail_after(1 + seed % 3, 1);
    std::vector<Dot> acknowledged;
    std::set<std::string> may_stand{"word 19"};  // the last acknowledged; one that was refused may have reached the disk all the same
    for (int i = 0; i < 8; ++i) {
      const std::string next = "more " + std::to_string(i);
      if (const auto said = device.say(next)) {
        acknowledged.push_back(said->dot);
        may_stand = {next};
      } else {
        may_stand.insert(next);
        ++refused;
      }
    }
    device.disk.stop(Stop::power);
    device.ledger.reset();
    device.disk.start();
    auto opened = device.open(true);
    if (!opened) FAIL(opened.error().message());
    device.ledger = std::move(*opened);
    for (const Dot& dot : acknowledged) CHECK(device.ledger->entry(device.person.book, dot.author, dot.seq));
    CHECK(may_stand.contains(device.word()));
    CHECK(device.ledger->heads(device.person.book).at(0).seq >= 20 + acknowledged.size());
    CHECK(device.ledger->verify().faults.empty());
  }
  CHECK(refused >= 40);
  CHECK(refused < 80);  // once the disk is well again so is the device
}

TEST_CASE("a program that only looks opens what one with two connections left on a full disk") {
  DiskLedger device("left by two", 1, false);
  REQUIRE(device.say("first"));
  for (const bool one_thread : {true, false, true}) {
    device.ledger.reset();
    device.disk.set_capacity(device.disk.bytes());
    auto opened = device.open(one_thread);
    if (!opened) FAIL(opened.error().message());
    device.ledger = std::move(*opened);
    CHECK(device.word() == "first");
    CHECK(device.ledger->verify().faults.empty());
    CHECK(device.say("second").error().code == FaultCode::no_space);
    device.disk.set_capacity({});
  }
  CHECK(device.say("third"));
  CHECK(device.word() == "third");
}

TEST_CASE("what is late and more than the cache holds is shown on a full disk too") {
  DiskLedger device("much is late", 1, true);
  std::vector<EntityState> many;
  for (int i = 0; i < 4000; ++i) {
    EntityState one = device.person;
    one.id = make_id<EntityId>(device.time.now + i);
    Draft draft(one.book, kPlayerBook, ActionKind{1});
    draft.put(one, kNewerNote, std::string(3000, 'x'));
    REQUIRE(device.ledger->append(draft));
    many.push_back(std::move(one));
  }
  REQUIRE(device.ledger->books().size() == 1);
  for (const EntityState& one : many) {
    Draft draft(one.book, kPlayerBook, ActionKind{1});
    draft.put(*device.ledger->entity(one.book, one.id), kNewerNote, std::string("short"));
    REQUIRE(device.ledger->append(draft));
  }
  device.disk.stop(Stop::kill);
  device.ledger.reset();
  device.disk.start();
  for (const bool one_thread : {true, false}) {
    device.disk.set_capacity(device.disk.bytes());
    auto opened = device.open(one_thread);
    if (!opened) FAIL(opened.error().message());
    device.ledger = std::move(*opened);
    CHECK(text_of(*device.ledger->entity(many[3].book, many[3].id)->get(kNewerNote)) == "short");
    device.ledger.reset();
    device.disk.set_capacity({});
  }
}
