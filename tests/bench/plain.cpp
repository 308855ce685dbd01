#include "tests/bench/plain.h"

#include <stdexcept>

namespace weavelog::bench {

PlainStore::PlainStore(const std::filesystem::path& file) {
  check(sqlite3_open(file.c_str(), &db_));
  run("PRAGMA journal_mode=WAL");
  run("PRAGMA synchronous=FULL");
  run("PRAGMA wal_autocheckpoint=2000");
  run("PRAGMA cache_size=-16000");
  // Clustered by book, so that what is written together lies together.
  run("CREATE TABLE field(book BLOB NOT NULL, entity BLOB NOT NULL, kind INTEGER NOT NULL, tag INTEGER NOT "
      "NULL, value, "
      "stamp INTEGER NOT NULL, PRIMARY KEY(book, entity, tag)) WITHOUT ROWID");
  check(sqlite3_prepare_v2(db_, "INSERT OR REPLACE INTO field VALUES(?,?,?,?,?,?)", -1, &put_, nullptr));
  check(sqlite3_prepare_v2(db_, "BEGIN IMMEDIATE", -1, &begin_, nullptr));
  check(sqlite3_prepare_v2(db_, "COMMIT", -1, &commit_, nullptr));
}

PlainStore::~PlainStore() {
  for (sqlite3_stmt* statement : {put_, begin_, commit_}) sqlite3_finalize(statement);
  sqlite3_close(db_);
}

void PlainStore::check(int result) const {
  if (result != SQLITE_OK && result != SQLITE_DONE && result != SQLITE_ROW)
    throw std::runtime_error(sqlite3_errmsg(db_));
}

void PlainStore::run(const char* sql) const {
  check(sqlite3_exec(db_, sql, nullptr, nullptr, nullptr));
}

void PlainStore::bind(int index, const Value& value) {
  const auto blob = [&](ByteView bytes) {
    check(sqlite3_bind_blob(put_, index, bytes.data(), static_cast<int>(bytes.size()), SQLITE_TRANSIENT));
  };
  if (const auto* number = std::get_if<std::int64_t>(&value)) {
    check(sqlite3_bind_int64(put_, index, *number));
  } else if (const auto* flag = std::get_if<bool>(&value)) {
    check(sqlite3_bind_int(put_, index, *flag));
  } else if (const auto* text = std::get_if<std::string>(&value)) {
    check(sqlite3_bind_text(put_, index, text->data(), static_cast<int>(text->size()), SQLITE_TRANSIENT));
  } else if (const auto* said = std::get_if<Quantity>(&value)) {
    const std::string held = text_of(*said);
    check(sqlite3_bind_text(put_, index, held.data(), static_cast<int>(held.size()), SQLITE_TRANSIENT));
  } else if (const auto* bytes = std::get_if<Bytes>(&value)) {
    blob(*bytes);
  } else if (const auto* entity = std::get_if<EntityId>(&value)) {
    blob(entity->view());
  } else if (const auto* book = std::get_if<BookId>(&value)) {
    blob(book->view());
  } else {
    check(sqlite3_bind_null(put_, index));
  }
}

void PlainStore::store(const BookId& book, std::span<const Write> writes, Stamp stamp) {
  check(sqlite3_step(begin_));
  check(sqlite3_reset(begin_));
  for (const Write& write : writes) {
    check(sqlite3_bind_blob(put_, 1, book.bytes.data(), 16, SQLITE_TRANSIENT));
    check(sqlite3_bind_blob(put_, 2, write.entity.bytes.data(), 16, SQLITE_TRANSIENT));
    check(sqlite3_bind_int(put_, 3, static_cast<int>(write.kind)));
    check(sqlite3_bind_int64(put_, 4, static_cast<std::int64_t>(write.tag)));
    bind(5, write.value);
    check(sqlite3_bind_int64(put_, 6, static_cast<std::int64_t>(stamp.raw)));
    check(sqlite3_step(put_));
    check(sqlite3_reset(put_));
  }
  check(sqlite3_step(commit_));
  check(sqlite3_reset(commit_));
}

}  // namespace weavelog::bench
