#include "core/store/joined_writes.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>
#include <filesystem>

#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Joined {
  TemporaryFolder folder;
  JoinedWrites joined{""};
  SQLite::Database db{(folder / "a.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 5000,
                      joined.name()};

  Joined() {
    db.exec(
        "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA wal_autocheckpoint=40; CREATE TABLE t(n "
        "INTEGER PRIMARY KEY, b)");
  }

  /// What is found if the program dies now: the files as they are, opened without any layer.
  std::int64_t rows_if_killed() const {
    const auto copy = folder / "copy.db";
    for (const char* suffix : {"", "-wal"})
      std::filesystem::copy_file((folder / "a.db").string() + suffix, copy.string() + suffix,
                                 std::filesystem::copy_options::overwrite_existing);
    SQLite::Database found(copy.string(), SQLite::OPEN_READWRITE);
    CHECK(found.execAndGet("PRAGMA integrity_check").getString() == "ok");
    const std::int64_t rows = found.execAndGet("SELECT count(*) FROM t").getInt64();
    CHECK(found.execAndGet("SELECT coalesce(sum(length(b)), 0) FROM t").getInt64() == rows * 3000);
    return rows;
  }
};

}  // namespace

TEST_CASE("what was committed through joined writes is in the files, through checkpoints and new logs") {
  Joined one;
  SQLite::Database reader((one.folder / "a.db").string(), SQLite::OPEN_READONLY, 5000);
  for (int i = 1; i <= 120; ++i) {
    one.db.exec("INSERT INTO t(b) VALUES(randomblob(3000))");
    CHECK(reader.execAndGet("SELECT count(*) FROM t").getInt64() == i);
    REQUIRE(one.rows_if_killed() == i);
  }
}

TEST_CASE(
    "a transaction of more pages than the cache holds is read within, undone and committed as a whole") {
  Joined one;
  one.db.exec("PRAGMA cache_size=8");
  const auto fill = [&] {
    one.db.exec(
        "WITH RECURSIVE c(i) AS (SELECT 1 UNION ALL SELECT i+1 FROM c WHERE i<700) INSERT INTO t(b) SELECT "
        "randomblob(3000) FROM c");
    // Pages that were spilled to the log are changed again, in another order.
    one.db.exec("UPDATE t SET b=randomblob(3000) WHERE n%7=0");
    CHECK(one.db.execAndGet("SELECT count(*) FROM t WHERE length(b)=3000").getInt64() == 700);
  };
  one.db.exec("BEGIN");
  fill();
  CHECK(one.rows_if_killed() == 0);
  one.db.exec("ROLLBACK");
  CHECK(one.rows_if_killed() == 0);
  one.db.exec("BEGIN");
  fill();
  one.db.exec("COMMIT");
  CHECK(one.rows_if_killed() == 700);
}

TEST_CASE("a transaction of megabytes reaches the log in pieces that the file system underneath takes") {
  Joined one;
  for (int times = 0; times < 3; ++times) {
    one.db.exec(
        "WITH RECURSIVE c(i) AS (SELECT 1 UNION ALL SELECT i+1 FROM c WHERE i<700) INSERT INTO t(b) SELECT "
        "randomblob(3000) FROM c");
    CHECK(one.rows_if_killed() == 700 * (times + 1));
  }
}

TEST_CASE("what may reach the disk with the next sync is in the file all the same, through checkpoints and new logs") {
  Joined one;
  SQLite::Database reader((one.folder / "a.db").string(), SQLite::OPEN_READONLY, 5000);
  for (int i = 1; i <= 120; ++i) {
    if (i % 3 != 0) one.joined.leave_next_sync();
    one.db.exec("INSERT INTO t(b) VALUES(randomblob(3000))");
    one.joined.sync_again();
    CHECK(reader.execAndGet("SELECT count(*) FROM t").getInt64() == i);
    REQUIRE(one.rows_if_killed() == i);
  }
}

TEST_CASE("joined writes over a file system that SQLite does not know are refused") {
  CHECK_THROWS(JoinedWrites("no such file system"));
}
