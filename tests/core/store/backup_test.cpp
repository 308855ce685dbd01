#include "core/store/backup.h"

#include <sqlite3.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <thread>

#include "core/base/iso_time.h"
#include "core/store/database.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {


std::string label(const Device& device, const BookId& book) {
  const auto state = device.ledger->entity(book, kOne);
  return state && state->get(kLabel) ? text_of(*state->get(kLabel)) : "";
}

}  // namespace

TEST_CASE(
    "a backup is taken while the ledger is open and being written, for its owner only, and never over "
    "another") {
  TemporaryFolder folder;
  Device device("one", folder / "a.db");
  const BookId book = make_id<BookId>(kNoon);
  device.put(book, kOne, kLabel, std::string("first"));
  std::thread writer([&] {
    for (int i = 0; i < 50; ++i) device.put(book, kOne, kCount, std::int64_t{i});
  });
  const auto done = back_up(folder / "a.db", folder / "backup.db");
  writer.join();
  if (!done) FAIL(done.error().message());
  CHECK((std::filesystem::status(folder / "backup.db").permissions() & std::filesystem::perms::mask) ==
        (std::filesystem::perms::owner_read | std::filesystem::perms::owner_write));
  CHECK_FALSE(std::filesystem::exists(folder / "backup.db.part"));
  CHECK_FALSE(std::filesystem::exists(folder / "backup.db-wal"));
  CHECK(back_up(folder / "a.db", folder / "backup.db").error().code == FaultCode::conflict);
  CHECK(back_up(folder / "none.db", folder / "other.db").error().code == FaultCode::not_found);
  CHECK_FALSE(std::filesystem::exists(folder / "other.db"));
  Device other("two", folder / "backup.db");
  CHECK(other.ledger->verify().faults.empty());
  CHECK(label(other, book) == "first");
}

TEST_CASE(
    "a restored device is a new incarnation at once and its old entries can be handed on by any device") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  AuthorId before;
  {
    Device device("one", folder / "a.db", key);
    before = device.ledger->self().id();
    device.put(book, kOne, kLabel, std::string("kept"));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &key));
    device.put(book, kOne, kLabel, std::string("later"));
    CHECK(restore(folder / "backup.db", folder / "a.db", false).error().code == FaultCode::conflict);
    CHECK(restore(folder / "backup.db", folder / "a.db", true).error().code == FaultCode::locked);
  }
  const auto done = restore(folder / "backup.db", folder / "a.db", true);
  if (!done) FAIL(done.error().message());
  {
    Device device("one", folder / "a.db", key);
    CHECK(device.ledger->self().id() != before);
    CHECK(label(device, book) == "kept");
    CHECK(device.ledger->verify().faults.empty());
  }
  REQUIRE(done->replaced);
  CHECK(label(Device("one", *done->replaced, key), book) == "later");
  // On a tablet with a key of its own.
  REQUIRE(restore(folder / "backup.db", folder / "fresh.db", false));
  Device fresh("fresh", folder / "fresh.db"), peer("peer");
  fresh.put(book, kOne, kCount, std::int64_t{1});
  CHECK(pour(fresh, peer, book).applied == 2);
  CHECK(label(peer, book) == "kept");
}

TEST_CASE("who was forgotten since the backup was made stays forgotten when it is restored") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("withdraws later"));
    device.put(other, kOne, kLabel, std::string("stays"));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &key));
    REQUIRE(device.ledger->forget(book));
  }
  REQUIRE(restore(folder / "backup.db", folder / "a.db", true));
  Device device("one", folder / "a.db", key);
  CHECK_FALSE(device.ledger->book(book));
  CHECK(device.ledger->is_forgotten(book));
  CHECK(label(device, other) == "stays");
  CHECK(device.ledger->verify().faults.empty());
  std::string bytes;
  for (const char* suffix : {"", "-wal"}) {
    std::ifstream in((folder / "a.db").string() + suffix, std::ios::binary);
    bytes.append(std::istreambuf_iterator<char>(in), {});
  }
  CHECK(bytes.find("withdraws later") == std::string::npos);
}

TEST_CASE("a restore that can't carry over who was forgotten changes nothing; where there is nothing to carry over it goes on") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("withdraws later"));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &key));
    REQUIRE(device.ledger->forget(book));
  }
  const auto fails_with = [&](int code) {
    return restore(folder / "backup.db", folder / "a.db", true, {[&](SQLite::Database&) { throw SQLite::Exception("no", code); }});
  };
  for (const int code : {SQLITE_FULL, SQLITE_IOERR_WRITE, SQLITE_CANTOPEN}) {
    CHECK(fails_with(code).error().what.find("forgotten players") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "a.db.part"));
    Device device("one", folder / "a.db", key);
    CHECK(device.ledger->is_forgotten(book));
  }
  REQUIRE(fails_with(SQLITE_ERROR));
  CHECK(Device("one", folder / "a.db", key).ledger->is_forgotten(book));
}

TEST_CASE("what was here before is kept under another name, over nothing that has that name already") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("before"));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &key));
    device.put(book, kOne, kLabel, std::string("after"));
  }
  std::vector<std::filesystem::path> in_the_way;
  const UnixMs now = WallClock::system().now();
  for (int seconds = 0; seconds < 20; ++seconds) {
    std::string day = iso_utc(now + seconds * 1000);
    std::erase(day, ':');
    in_the_way.push_back(folder / ("a.db.before-" + day));
    std::ofstream(in_the_way.back()) << "kept by a restore of this very second";
  }
  const auto restored = restore(folder / "backup.db", folder / "a.db", true);
  REQUIRE(restored);
  CHECK(label(Device("one", folder / "a.db", key), book) == "before");
  REQUIRE(restored->replaced);
  CHECK(label(Device("one", *restored->replaced, key), book) == "after");
  CHECK(std::filesystem::hard_link_count(folder / "a.db") == 1);
  for (const auto& path : in_the_way) CHECK(std::filesystem::file_size(path) == 37);
}

TEST_CASE("what is no backup, is damaged or comes from a newer version is refused and nothing is touched") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key);
    for (int i = 0; i < 300; ++i)
      device.put(book, make_id<EntityId>(kNoon + i), kLabel, std::string(100, 'x'));
    device.put(book, kOne, kLabel, std::string("here"));
    REQUIRE(back_up(folder / "a.db", folder / "newer.db"));
    REQUIRE(back_up(folder / "a.db", folder / "damaged.db"));
  }
  SQLite::Database((folder / "newer.db").string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version=99");
  {
    std::fstream raw(folder / "damaged.db", std::ios::in | std::ios::out | std::ios::binary);
    raw.seekp(4096 * 12);
    raw << std::string(4096, '\x7f');
  }
  std::ofstream(folder / "text.db") << std::string(9000, 'x');
  SQLite::Database((folder / "theirs.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
      .exec("CREATE TABLE theirs(x)");
  CHECK(restore(folder / "newer.db", folder / "a.db", true).error().code == FaultCode::newer);
  CHECK(restore(folder / "damaged.db", folder / "a.db", true).error().code == FaultCode::damaged);
  CHECK(restore(folder / "text.db", folder / "a.db", true).error().code == FaultCode::damaged);
  CHECK(restore(folder / "theirs.db", folder / "a.db", true).error().code == FaultCode::bad_input);
  CHECK(restore(folder / "none.db", folder / "a.db", true).error().code == FaultCode::not_found);
  CHECK(restore(folder / "a.db", folder / "a.db", true).error().code == FaultCode::bad_input);
  CHECK(label(Device("one", folder / "a.db", key), book) == "here");
  CHECK_FALSE(std::filesystem::exists(folder / "a.db.part"));
}
