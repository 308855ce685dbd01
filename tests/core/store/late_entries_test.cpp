// An action's entry goes to disk by itself; what follows from it may be written later, and nobody can tell.

#include <catch2/catch.hpp>
#include <filesystem>
#include <thread>

#include "core/store/backup.h"
#include "core/store/database.h"
#include "core/store/late_entries.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A table of labels, as screens have theirs.
class Labels final : public Projection {
 public:
  explicit Labels(int version) : version_(version) {}
  [[nodiscard]] std::string_view name() const override { return "labels"; }
  [[nodiscard]] int version() const override { return version_; }
  void create(Connection& db) override {
    db.raw().exec("DROP TABLE IF EXISTS label; CREATE TABLE label(id BLOB PRIMARY KEY, book BLOB, word TEXT, " + column() + " INTEGER)");
  }
  void apply(Connection& db, std::span<const EntityChange> changes) override {
    for (const EntityChange& change : changes) {
      SQLite::Statement put(db.raw(), "INSERT OR REPLACE INTO label(id, book, word, " + column() + ") VALUES(?,?,?,1)");
      bind_blob(put, 1, change.state.id.bytes);
      bind_blob(put, 2, change.state.book.bytes);
      const Value* word = change.state.get(kLabel);
      put.bind(3, word != nullptr ? text_of(*word) : std::string());
      put.exec();
    }
  }
  void forget(Connection& db, const BookId& book) override {
    auto& none = db.statement("DELETE FROM label WHERE book=?");
    bind_blob(none, 1, book.bytes);
    none.exec();
  }
  [[nodiscard]] Digest digest(Connection& db) const override {
    Digester digester;
    SQLite::Statement query(db.raw(), "SELECT id, book, word FROM label ORDER BY id");
    while (query.executeStep())
      for (int i = 0; i < 3; ++i) digester.add(blob_of(query, i));
    return digester.finish();
  }

 private:
  std::string column() const { return "version" + std::to_string(version_); }
  int version_;
};

enum class Threads : std::uint8_t { one, more };

/// A device with one connection to its database, unless said.
struct Room {
  TemporaryFolder folder;
  DeviceKey key = DeviceKey::generate();
  ManualClock clock{kNoon};
  BookId book = make_id<BookId>(kNoon);

  std::unique_ptr<Ledger> open(Threads threads = Threads::one, int version = 1, const std::string& file = "a.db") {
    LedgerOptions options;
    options.file = folder / file;
    options.one_thread = threads == Threads::one;
    options.registry = &small_registry();
    options.clock = &clock;
    options.key = key;
    options.device_name = "alone";
    options.projections.push_back(std::make_shared<Labels>(version));
    auto opened = Ledger::open(std::move(options));
    if (!opened) FAIL(opened.error().message());
    return std::move(*opened);
  }

  /// As an action does: what is seen, changed and written.
  void say(Ledger& ledger, const EntityId& id, FieldTag tag, Value value) {
    clock.advance(1000);
    auto seen = ledger.entity(book, id);
    if (!seen) {
      seen.emplace();
      seen->book = book;
      seen->id = id;
      seen->kind = kBox;
    }
    Draft draft(book, kShelf, kEdit);
    draft.put(*seen, tag, std::move(value));
    const auto done = ledger.append(draft);
    if (!done) FAIL(done.error().message());
  }

  /// What the disk holds at this moment, as another program would find it after this one died.
  void copy_as(const std::string& file) {
    for (const char* suffix : {"", "-wal"})
      std::filesystem::copy_file((folder / "a.db").string() + suffix, (folder / file).string() + suffix);
  }
  int rows(const std::string& file, const std::string& table) {
    SQLite::Database db((folder / file).string(), SQLite::OPEN_READWRITE);
    return db.execAndGet("SELECT count(*) FROM " + table).getInt();
  }
};

std::string word_of(const Ledger& ledger, const BookId& book, const EntityId& id) {
  const auto state = ledger.entity(book, id);
  return state && state->get(kLabel) != nullptr ? text_of(*state->get(kLabel)) : "";
}

int labels(const Ledger& ledger) {
  int out = -1;
  ledger.read([&](Connection& db) {
    auto& query = db.statement("SELECT count(*) FROM label");
    query.executeStep();
    out = query.getColumn(0).getInt();
  });
  return out;
}

/// As "died.db": three entries with all that follows from them, and four without.
void die_late(Room& room) {
  auto ledger = room.open();
  for (int i = 0; i < 3; ++i) room.say(*ledger, kOne, kCount, std::int64_t{i});
  CHECK(labels(*ledger) == 1);
  for (int i = 0; i < 4; ++i) room.say(*ledger, kOne, kLabel, "word " + std::to_string(i));
  room.copy_as("died.db");
}

void check_sound(const Ledger& ledger) {
  const auto report = ledger.verify();
  for (const std::string& fault : report.faults) UNSCOPED_INFO(fault);
  CHECK(report.faults.empty());
}

}  // namespace

TEST_CASE("what actions left is seen at once, though only their entries are on disk; whoever reads finds all written") {
  Room room;
  auto ledger = room.open();
  std::vector<EntityId> boxes;
  for (int i = 0; i < 20; ++i) boxes.push_back(make_id<EntityId>(kNoon + i));
  for (int turn = 0; turn < 3; ++turn)
    for (const EntityId& box : boxes) {
      room.say(*ledger, box, kLabel, "turn " + std::to_string(turn));
      CHECK(word_of(*ledger, room.book, box) == "turn " + std::to_string(turn));
    }
  room.copy_as("died.db");
  CHECK(room.rows("died.db", "entry") == 60);
  CHECK(room.rows("died.db", "link") == 0);
  CHECK(room.rows("died.db", "entity") == 0);
  CHECK(room.rows("died.db", "label") == 0);

  CHECK(ledger->position() == 60);
  REQUIRE(ledger->heads(room.book).size() == 1);
  CHECK(ledger->heads(room.book)[0].seq == 60);
  CHECK(labels(*ledger) == 20);
  check_sound(*ledger);
  room.copy_as("read.db");
  CHECK(room.rows("read.db", "link") == 60);
  CHECK(room.rows("read.db", "entity") == 20);
}

TEST_CASE("of many actions without a look, or long ones, all but the last are written") {
  const auto [actions, letters] = GENERATE(table<int, std::size_t>({{4200, 10}, {30, 200'000}}));
  Room room;
  auto ledger = room.open();
  for (int i = 0; i < actions; ++i) room.say(*ledger, make_id<EntityId>(kNoon + i), kLabel, std::string(letters, 'x'));
  room.copy_as("died.db");
  CHECK(room.rows("died.db", "entry") == actions);
  const int written = room.rows("died.db", "link");
  CHECK(written > actions / 2);
  CHECK(written < actions);
  CHECK(room.rows("died.db", "entity") == written);
  check_sound(*ledger);
}

TEST_CASE("one thread acts while another looks: each look finds all layers as of one entry") {
  Room room;
  auto ledger = room.open();
  room.say(*ledger, kOne, kCount, std::int64_t{0});
  constexpr int kTimes = 400;
  std::thread acting([&] {
    for (int i = 1; i <= kTimes; ++i) room.say(*ledger, i % 5 == 0 ? make_id<EntityId>(kNoon + i) : kOne, kCount, std::int64_t{i});
  });
  std::uint64_t seen = 0;
  int looks = 0;
  for (; seen <= kTimes; ++looks) {
    ledger->read([&](Connection& db) {
      auto& query = db.statement("SELECT (SELECT count(*) FROM entry), (SELECT count(*) FROM link), (SELECT count(*) FROM entity), (SELECT count(*) FROM label)");
      REQUIRE(query.executeStep());
      const auto entries = static_cast<std::uint64_t>(query.getColumn(0).getInt64());
      REQUIRE(entries >= seen);
      seen = entries;
      REQUIRE(query.getColumn(1).getInt64() == query.getColumn(0).getInt64());
      REQUIRE(query.getColumn(2).getInt64() == query.getColumn(3).getInt64());
    });
    const auto box = ledger->entity(room.book, kOne);
    REQUIRE(box);
    REQUIRE(ledger->heads(room.book).at(0).seq >= seen);
  }
  acting.join();
  CHECK(looks > 1);
  check_sound(*ledger);
}

TEST_CASE("a program that died before it wrote what follows: the next one does, whatever it is") {
  const bool told_before = GENERATE(false, true);
  const auto threads = GENERATE(Threads::one, Threads::more);
  const int version = GENERATE(1, 2);  // of the projection: made anew with the second
  Room room;
  Digest heads{};
  {
    auto ledger = room.open();
    if (told_before) {
      for (int i = 0; i < 5; ++i) room.say(*ledger, kOne, kCount, std::int64_t{i});
      CHECK(labels(*ledger) == 1);
    }
    for (int i = 0; i < 7; ++i) room.say(*ledger, make_id<EntityId>(kNoon + i), kLabel, "box " + std::to_string(i));
    room.say(*ledger, kOne, kLabel, std::string("last word"));
    room.copy_as("died.db");
    heads = ledger->book(room.book).value().heads;
  }
  CHECK(room.rows("died.db", "link") == (told_before ? 5 : 0));
  for (int start = 0; start < 2; ++start) {
    auto ledger = room.open(threads, version, "died.db");
    CHECK(ledger->book(room.book).value().heads == heads);
    CHECK(word_of(*ledger, room.book, kOne) == "last word");
    CHECK(labels(*ledger) == 8);
    check_sound(*ledger);
    // Stamps go on from the last that was given.
    const auto before = ledger->entity(room.book, kOne)->find(kLabel)->values[0].stamp;
    room.say(*ledger, kOne, kLabel, std::string("last word"));
    CHECK(ledger->entity(room.book, kOne)->find(kLabel)->values[0].stamp > before);
    heads = ledger->book(room.book).value().heads;
  }
}

TEST_CASE("one program after the other, of one connection and of two: nothing is applied twice") {
  Room room;
  const BookId other_book = make_id<BookId>(kNoon + 5);
  Device other("other");
  for (int i = 0; i < 3; ++i) {
    {
      auto ledger = room.open(Threads::one);
      room.say(*ledger, kOne, kCount, std::int64_t{i});
      other.put(other_book, kOne, kCount, std::int64_t{i});
      REQUIRE(ledger->ingest(other.ledger->missing(other_book, ledger->heads(other_book), 1 << 20), 1));
      room.say(*ledger, kOne, kLabel, std::string("one"));
    }
    {
      auto ledger = room.open(Threads::more);
      room.say(*ledger, kOne, kLabel, std::string("two"));
      other.put(other_book, kOne, kCount, std::int64_t{10 * i});
      REQUIRE(ledger->ingest(other.ledger->missing(other_book, ledger->heads(other_book), 1 << 20), 1));
      check_sound(*ledger);
    }
  }
  auto ledger = room.open(Threads::one);
  check_sound(*ledger);
  CHECK(ledger->heads(room.book)[0].seq == 9);
  CHECK(ledger->heads(other_book)[0].seq == 6);
  REQUIRE(ledger->rebuild());
  check_sound(*ledger);
}

TEST_CASE("an action that is refused takes nothing of those before it with it") {
  Room room;
  auto ledger = room.open();
  for (int i = 0; i < 4; ++i) room.say(*ledger, kOne, kLabel, "word " + std::to_string(i));
  Draft large(room.book, kShelf, kEdit);
  for (int i = 0; i < 5; ++i) {
    EntityState box;
    box.book = room.book;
    box.id = make_id<EntityId>(kNoon + i);
    box.kind = kBox;
    large.put(box, kLabel, std::string(60'000, 'x'));
  }
  const auto refused = ledger->append(large);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::bad_input);
  CHECK(word_of(*ledger, room.book, kOne) == "word 3");
  room.say(*ledger, kOne, kLabel, std::string("word 4"));
  Draft of_another_kind(room.book, BookKind{7}, kEdit);
  EntityState box = ledger->entity(room.book, kOne).value();
  of_another_kind.put(box, kLabel, std::string("of another kind"));
  CHECK_FALSE(ledger->append(of_another_kind));
  room.say(*ledger, kOne, kLabel, std::string("word 5"));
  CHECK(word_of(*ledger, room.book, kOne) == "word 5");
  CHECK(ledger->heads(room.book)[0].seq == 6);
  check_sound(*ledger);
}

TEST_CASE("what is forgotten is gone, also what was about to be written of it") {
  Room room;
  auto ledger = room.open();
  room.say(*ledger, kOne, kLabel, std::string("somebody who withdraws"));
  REQUIRE(ledger->forget(room.book));
  CHECK_FALSE(ledger->entity(room.book, kOne));
  CHECK(labels(*ledger) == 0);
  check_sound(*ledger);
  ledger.reset();
  CHECK(room.rows("a.db", "entry") == 0);
  CHECK(room.rows("a.db", "entity") == 0);
}

TEST_CASE("a backup of what a program left as it died is sealed to its end, and others take it all") {
  Room room;
  die_late(room);
  REQUIRE(back_up(room.folder / "died.db", room.folder / "backup.db", &room.key));
  room.key = DeviceKey::generate();  // another device takes its place
  const auto ledger = room.open(GENERATE(Threads::one, Threads::more), 1, "backup.db");
  CHECK(word_of(*ledger, room.book, kOne) == "word 3");
  check_sound(*ledger);
  Device other("other");
  const auto taken = other.ledger->ingest(ledger->missing(room.book, {}, 1 << 20), 1);
  REQUIRE(taken);
  CHECK(taken->applied == 7);
  CHECK(taken->quarantined == 0);
  CHECK(word_of(*other.ledger, room.book, kOne) == "word 3");
}

TEST_CASE("late entries that do not go on from what is linked are damage, and told as such") {
  const std::string damage = GENERATE("DELETE FROM entry WHERE seq=4", "UPDATE entry SET body=x'00' WHERE seq=5", "DELETE FROM link WHERE seq=3");
  Room room;
  die_late(room);
  SQLite::Database((room.folder / "died.db").string(), SQLite::OPEN_READWRITE).exec(damage);
  LedgerOptions options;
  options.file = room.folder / "died.db";
  options.one_thread = true;
  options.registry = &small_registry();
  options.key = room.key;
  const auto opened = Ledger::open(std::move(options));
  REQUIRE_FALSE(opened);
  CHECK(opened.error().code == FaultCode::damaged);
}

TEST_CASE("tables for screens that are not what the entries give are found by verify, which changes nothing") {
  Room room;
  const Threads threads = GENERATE(Threads::one, Threads::more);
  {
    const auto ledger = room.open(threads);
    for (int i = 0; i < 20; ++i) room.say(*ledger, make_id<EntityId>(kNoon + i), kLabel, "word " + std::to_string(i));
    CHECK(ledger->verify().faults.empty());
  }
  for (const std::string damage : {"UPDATE label SET word='other' WHERE word='word 7'", "DELETE FROM label WHERE word='word 8'"}) {
    SQLite::Database((room.folder / "a.db").string(), SQLite::OPEN_READWRITE).exec(damage);
    const auto ledger = room.open(threads);
    const auto report = ledger->verify();
    REQUIRE(report.faults.size() == 1);
    CHECK(report.faults[0].find("\"labels\"") != std::string::npos);
    CHECK(ledger->verify().faults.size() == 1);
    REQUIRE(ledger->rebuild());
    CHECK(ledger->verify().faults.empty());
  }
}
