// Ledger::verify finds every kind of damage that a file can have.

#include <catch2/catch.hpp>
#include <fstream>

#include "core/store/database.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {


/// A ledger with entries of its own and of another, an open question and a forgotten book; then damaged by
/// that SQL.
VerifyReport after(const std::string& damage) {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key), other("other");
    device.put(book, kOne, kLabel, std::string("label"));
    pour(device, other, book);
    other.put(book, kOne, kGuarded, std::string("50"));
    other.put(book, kOne, kCount, std::int64_t{1});
    device.put(book, kOne, kGuarded, std::string("51"));
    pour(other, device, book);
    REQUIRE(device.ledger->open_questions().size() == 1);
    const BookId gone = make_id<BookId>(kNoon + 1);
    device.put(gone, kOne, kLabel, std::string("gone"));
    REQUIRE(device.ledger->forget(gone));
    CHECK(device.ledger->verify().faults.empty());
    CHECK(device.ledger->verify().stubs == 1);
  }
  SQLite::Database((folder / "a.db").string(), SQLite::OPEN_READWRITE).exec(damage);
  return Device("one", folder / "a.db", key).ledger->verify();
}

bool names(const VerifyReport& report, const std::string& what) {
  for (const std::string& fault : report.faults) {
    UNSCOPED_INFO(fault);
    if (fault.find(what) != std::string::npos) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("a sound ledger passes, and each kind of damage is found and named") {
  CHECK(after("SELECT 1").faults.empty());
  CHECK(names(
      after(
          "UPDATE entry SET body=CAST(replace(body, CAST('label' AS BLOB), CAST('lapel' AS BLOB)) AS BLOB)"),
      "is not what its chain gives"));
  CHECK(names(after("UPDATE entry SET body=x'00' WHERE position=1"), "entry 1"));
  CHECK(names(after("DELETE FROM entry WHERE seq=1 AND author<>1"), "gap"));
  CHECK(names(after("UPDATE link SET hash=zeroblob(32) WHERE author=1"), "is not what its chain gives"));
  CHECK(names(after("DELETE FROM link WHERE author=1"), "without a link"));
  CHECK(names(after("UPDATE chain SET signature=zeroblob(64) WHERE signature IS NOT NULL"),
              "signature of \"other\""));
  CHECK(names(after("UPDATE chain SET tail=zeroblob(32) WHERE signature IS NOT NULL"),
              "signature of \"other\""));
  CHECK(names(after("UPDATE author SET key=zeroblob(32) WHERE device='other'"), "signature of \"other\""));
  CHECK(names(after("UPDATE entity SET state=CAST(replace(state, CAST('label' AS BLOB), CAST('lapel' AS "
                    "BLOB)) AS BLOB)"),
              "is not what its entries give"));
  CHECK(names(after("DELETE FROM entity"), "rows missing"));
  CHECK(names(after("DELETE FROM question"), "open questions"));
  CHECK(names(after("UPDATE question SET tag=2"), "open questions"));
  CHECK(names(after("UPDATE stub SET signature=zeroblob(64)"), "stub"));
  CHECK(names(after("UPDATE stub SET device='somebody else'"), "stub"));
}

TEST_CASE("a signature in the middle of a chain that does not hold is found") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  {
    Device device("one", folder / "a.db", key);
    const BookId book = make_id<BookId>(kNoon);
    for (int i = 0; i < 1030; ++i) device.put(book, kOne, kCount, std::int64_t{i});
    CHECK(device.ledger->verify().faults.empty());
  }
  SQLite::Database raw((folder / "a.db").string(), SQLite::OPEN_READWRITE);
  CHECK(raw.exec("UPDATE waypoint SET signature=zeroblob(64)") == 1);
  CHECK(names(Device("one", folder / "a.db", key).ledger->verify(), "middle of a chain"));
}

TEST_CASE("a page that was overwritten is found by SQLite's own check, which verify asks") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key);
    for (int i = 0; i < 400; ++i)
      device.put(book, make_id<EntityId>(kNoon + i), kLabel, std::string(100, 'x'));
  }
  {
    // A leaf page in the middle of the file: its cells are told to lie outside of it.
    std::fstream raw(folder / "a.db", std::ios::in | std::ios::out | std::ios::binary);
    const auto pages = std::filesystem::file_size(folder / "a.db") / 4096;
    raw.seekp(static_cast<std::streamoff>((pages - 3) * 4096 + 8));
    raw.write("\xff\xff\xff\xff\xff\xff", 6);
  }
  Device device("one", folder / "a.db", key);
  const VerifyReport report = device.ledger->verify();
  CHECK_FALSE(report.faults.empty());
}

TEST_CASE("while somebody else writes, verify says that it could not compare, which is no fault of the ledger") {
  TemporaryFolder folder;
  Device device("one", folder / "a.db");
  device.put(make_id<BookId>(kNoon), kOne, kLabel, std::string("label"));
  SQLite::Database other((folder / "a.db").string(), SQLite::OPEN_READWRITE);
  other.exec("BEGIN IMMEDIATE");
  const VerifyReport meanwhile = device.ledger->verify();
  CHECK(meanwhile.faults.empty());
  CHECK_FALSE(meanwhile.not_compared.empty());
  other.exec("ROLLBACK");
  const VerifyReport after = device.ledger->verify();
  CHECK(after.faults.empty());
  CHECK(after.not_compared.empty());
}
