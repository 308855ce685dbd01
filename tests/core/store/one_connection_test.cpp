// A database with one connection for reading and writing.

#include <sqlite3.h>

#include <catch2/catch.hpp>
#include <filesystem>
#include <thread>

#include "core/store/database.h"
#include "core/store/ledger.h"
#include "tests/support/small_registry.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct OneConnection {
  TemporaryFolder folder;
  std::unique_ptr<Database> db = open();

  std::unique_ptr<Database> open() const { return Database::open(folder / "a.db", {}, Connections::one).value(); }
  void add(const std::string& key) {
    REQUIRE(db->write([&](Connection& writer) { put(writer, key); }));
  }
  static void put(Connection& writer, const std::string& key) {
    auto& statement = writer.statement("INSERT INTO meta VALUES(?, x'01')");
    statement.bind(1, key);
    statement.exec();
  }
  std::string keys() const {
    std::string out;
    db->read([&](Connection& reader) {
      auto& query = reader.statement("SELECT key FROM meta ORDER BY key");
      while (query.executeStep()) out += query.getColumn(0).getString();
    });
    return out;
  }
};

}  // namespace

TEST_CASE("with one connection who reads inside of a write sees what was written so far, and nothing of what was undone") {
  OneConnection one;
  one.add("a");
  struct Stop {};
  std::string seen;
  const auto write = [&] {
    (void)one.db->write([&](Connection& writer) {
      OneConnection::put(writer, "b");
      seen = one.keys();
      throw Stop{};
    });
  };
  CHECK_THROWS_AS(write(), Stop);
  CHECK(seen == "ab");
  CHECK(one.keys() == "a");
}

TEST_CASE("with one connection who writes or reads inside of a read does not disturb it") {
  OneConnection one;
  for (const char* key : {"a", "b", "c"}) one.add(key);
  std::string seen;
  one.db->read([&](Connection& reader) {
    auto& query = reader.statement("SELECT key FROM meta WHERE key<'d' ORDER BY key");
    while (query.executeStep()) {
      seen += query.getColumn(0).getString();
      one.add("x" + std::to_string(seen.size()));
      CHECK(one.keys().size() == 3 + 2 * seen.size());
    }
  });
  CHECK(seen == "abc");
  CHECK(one.keys() == "abcx1x2x3");
}

TEST_CASE("with one connection nothing keeps the log open, and another program finds all when this one dies") {
  OneConnection one;
  for (int i = 0; i < 30; ++i) {
    one.add(std::to_string(100 + i));
    CHECK(one.keys().size() == 3 * static_cast<std::size_t>(i + 1));
  }
  const auto copy = one.folder / "copy.db";
  for (const char* suffix : {"", "-wal"}) std::filesystem::copy_file((one.folder / "a.db").string() + suffix, copy.string() + suffix);
  CHECK(Database::open(copy).value()->file() == copy);
  SQLite::Database found(copy.string(), SQLite::OPEN_READONLY);
  CHECK(found.execAndGet("SELECT count(*) FROM meta").getInt() == 30);
  CHECK_FALSE(std::filesystem::exists((one.folder / "a.db").string() + "-shm"));
  REQUIRE(one.db->scrub());
  CHECK(std::filesystem::file_size((one.folder / "a.db").string() + "-wal") == 0);
  // Its own alone: not for a second of this program either.
  CHECK(Database::open(one.folder / "a.db").error().code == FaultCode::locked);
  one.db.reset();
  one.db = one.open();
  CHECK(one.keys().size() == 90);
}

TEST_CASE("with one connection threads that write inside of a read and threads that write do not wait for each other for ever") {
  // The command line has one that exchanges beside the one that shows how it goes.
  TemporaryFolder folder;
  LedgerOptions options;
  options.file = folder / "a.db";
  options.registry = &small_registry();
  options.one_thread = true;
  const auto ledger = Ledger::open(std::move(options)).value();
  constexpr int kTimes = 300;
  const auto say = [&](const std::string& key, int i) { return ledger->remember(key, as_bytes(std::to_string(i))).has_value(); };
  int outside = 0, inside = 0;
  std::thread other([&] {
    for (int i = 0; i < kTimes; ++i) outside += say("outside", i) ? 1 : 0;
  });
  for (int i = 0; i < kTimes; ++i) ledger->read([&](Connection&) { inside += say("inside", i) ? 1 : 0; });
  other.join();
  CHECK(outside == kTimes);
  CHECK(inside == kTimes);
}

TEST_CASE("with one connection nothing stays in the middle where showing what could not be written fails, on a disk that can't be read") {
  OneConnection one;
  one.add("a");
  one.add("b");
  sqlite3* handle = nullptr;
  const auto busy = [&] {
    int out = 0;
    for (sqlite3_stmt* each = sqlite3_next_stmt(handle, nullptr); each != nullptr; each = sqlite3_next_stmt(handle, each)) out += sqlite3_stmt_busy(each) != 0;
    return out;
  };
  one.db->settle_with([]() -> Outcome<> { return fail(FaultCode::no_space, "full", "", ""); },
                      [&](Connection& writer) {
                        handle = writer.raw().getHandle();
                        (void)writer.statement("SELECT key FROM meta").executeStep();  // one row of several
                        throw SQLite::Exception("disk I/O error", SQLITE_IOERR);
                      });
  one.db->set_unsettled(true);
  CHECK_THROWS_AS(one.keys(), SQLite::Exception);
  REQUIRE(handle != nullptr);
  CHECK(busy() == 0);
  CHECK(sqlite3_txn_state(handle, nullptr) == SQLITE_TXN_NONE);
  one.db->set_unsettled(false);
  CHECK(one.keys().find("ab") != std::string::npos);
  one.add("c");
}
