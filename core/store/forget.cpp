// Ledger::forget and Ledger::obey: a player withdraws. Erasing is one transaction; after it the file is
// rewritten and the write-ahead log emptied, because SQLite leaves old bytes in the slack of pages that it
// split, and in the log.

#include <sqlite3.h>

#include <algorithm>

#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

constexpr const char* kScrubDue = "scrub due";
constexpr std::size_t kLongestName = 256;
/// Stubs of books that were never held here, which a faulty device could make up without end.
constexpr std::int64_t kMostStubs = 200'000;

void run(Connection& db, const char* sql, std::int64_t book) {
  auto& statement = db.statement(sql);
  statement.bind(1, book);
  statement.exec();
}

/// What rooms remember of the book: elements of a list that name it, else values and keys that do.
void erase_remembered(Connection& db, const BookId& book) {
  const std::string hex = book.hex();
  auto& lists = db.statement(
      "UPDATE meta SET value=CAST((SELECT json_group_array(json(one.value)) FROM json_each(CAST(meta.value "
      "AS TEXT)) one WHERE "
      "instr(one.value, ?1)=0) AS BLOB) WHERE key GLOB 'room *' AND instr(CAST(value AS TEXT), ?1)>0 AND "
      "json_valid(CAST(value AS TEXT)) AND json_type(CAST(value AS TEXT))='array'");
  lists.bind(1, hex);
  lists.exec();
  auto& rest = db.statement(
      "DELETE FROM meta WHERE key GLOB 'room *' AND (instr(key, ?1)>0 OR instr(CAST(value AS TEXT), ?1)>0 OR "
      "instr(value, ?2)>0)");
  rest.bind(1, hex);
  bind_blob(rest, 2, book.bytes);
  rest.exec();
}

void keep_stub(Connection& db, const Stub& stub, UnixMs heard, const PublicKey& from) {
  auto& add = db.statement(
      "INSERT OR IGNORE INTO stub(book, kind, at, key, device, signature, heard, heard_from) "
      "VALUES(?,?,?,?,?,?,?,?)");
  bind_blob(add, 1, stub.book.bytes);
  add.bind(2, static_cast<int>(stub.kind));
  add.bind(3, stub.at);
  bind_blob(add, 4, stub.key);
  add.bind(5, stub.device);
  bind_blob(add, 6, stub.signature);
  add.bind(7, heard);
  bind_blob(add, 8, from);
  add.exec();
}

std::int64_t count_stubs(Connection& db) {
  auto& count = db.statement("SELECT count(*) FROM stub");
  count.executeStep();
  return count.getColumn(0).getInt64();
}

/// Asked within the transaction: once that is done, nothing that can't be read may make it look as if it were not.
std::int64_t newest_position(Connection& db) {
  auto& query = db.statement("SELECT coalesce(max(position), 0) FROM entry");
  return query.executeStep() ? query.getColumn(0).getInt64() : 0;
}

void mark_scrub_due(Connection& db) {
  auto& put = db.statement("INSERT OR REPLACE INTO meta(key, value) VALUES(?, x'01')");
  put.bind(1, kScrubDue);
  put.exec();
}

template <std::size_t N>
void copy_blob(std::array<std::uint8_t, N>& out, SQLite::Statement& row, int column) {
  const ByteView held = blob_of(row, column);
  if (held.size() != N) throw SQLite::Exception("a stub with a part of the wrong length", SQLITE_CORRUPT);
  std::copy(held.begin(), held.end(), out.begin());
}

/// A row of n, book, kind, at, key, device, signature, heard, heard_from.
Forgotten stub_in(SQLite::Statement& row) {
  Forgotten one;
  one.number = row.getColumn(0).getInt64();
  copy_blob(one.stub.book.bytes, row, 1);
  one.stub.kind = static_cast<BookKind>(row.getColumn(2).getInt());
  one.stub.at = row.getColumn(3).getInt64();
  copy_blob(one.stub.key, row, 4);
  one.stub.device = row.getColumn(5).getString();
  copy_blob(one.stub.signature, row, 6);
  one.heard = row.getColumn(7).getInt64();
  copy_blob(one.heard_from, row, 8);
  return one;
}

bool known(Connection& db, const BookId& book) {
  auto& query = db.statement("SELECT 1 FROM stub WHERE book=?");
  bind_blob(query, 1, book.bytes);
  return query.executeStep();
}

}  // namespace

bool Ledger::Impl::erase(Connection& db, const Stub& stub, const PublicKey& from) {
  keep_stub(db, stub, options.clock->now(), from);
  const auto book = find_book(db, stub.book);
  auto& row = db.statement("INSERT INTO book(id, kind, forgotten) VALUES(?,?,1) ON CONFLICT(id) DO UPDATE SET forgotten=1");
  bind_blob(row, 1, stub.book.bytes);
  row.bind(2, static_cast<int>(stub.kind));
  row.exec();
  const bool put_aside = wipe_traces(db, stub.book, book);
  if (!book) {
    if (put_aside) mark_scrub_due(db);
    return false;
  }
  wipe(db, stub.book, *book);
  return true;
}

bool Ledger::Impl::wipe_traces(Connection& db, const BookId& id, std::optional<std::int64_t> book) {
  erase_remembered(db, id);
  // Also what came under another book's name, garbled or forged, and speaks of the same rackets and setups.
  auto& quarantined = db.statement(
      "DELETE FROM quarantine WHERE book=?1 OR EXISTS(SELECT 1 FROM entity e WHERE e.book=?2 AND instr(quarantine.body, e.id)>0)");
  bind_blob(quarantined, 1, id.bytes);
  quarantined.bind(2, book.value_or(-1));
  const bool put_aside = quarantined.exec() > 0;
  const std::lock_guard guard(erasers_mutex);
  for (const auto& eraser : erasers) eraser(db, id);
  return put_aside;
}

void Ledger::Impl::wipe(Connection& db, const BookId& id, std::int64_t book) {
  run(db, "DELETE FROM entry WHERE position IN (SELECT position FROM link WHERE book=?)", book);
  run(db, "DELETE FROM chain WHERE book=?", book);
  run(db, "DELETE FROM fork WHERE book=?", book);
  run(db, "DELETE FROM awaited WHERE book=?", book);
  run(db, "DELETE FROM question WHERE book=?", book);
  run(db, "DELETE FROM entity WHERE book=?", book);
  for (const auto& projection : options.projections) projection->forget(db, id);
  mark_scrub_due(db);
}

std::vector<Forgotten> Ledger::Impl::to_sweep(Connection& db) const {
  std::vector<Forgotten> left;
  auto& query = db.statement(
      "SELECT s.n, s.book, s.kind, s.at, s.key, s.device, s.signature, s.heard, s.heard_from FROM stub s "
      "LEFT JOIN book b ON b.id=s.book "
      "WHERE b.forgotten IS NOT 1");
  while (query.executeStep()) left.push_back(stub_in(query));
  return left;
}

void Ledger::Impl::sweep_forgotten(Connection& db) {
  for (const Forgotten& one : to_sweep(db)) (void)erase(db, one.stub, one.heard_from);
}

void Ledger::Impl::drop_idle_forks(Connection& db) {
  // A chain of which one branch was taken back and the other is not taken yet stays known as parted.
  db.statement(
        "DELETE FROM fork WHERE NOT EXISTS(SELECT 1 FROM chain c WHERE c.book=fork.book) AND NOT EXISTS(SELECT 1 FROM quarantine q JOIN book b ON "
        "b.id=q.book WHERE b.n=fork.book)")
      .exec();
}

Outcome<> Ledger::Impl::sweep_late() {
  if (auto settled = settle(); !settled) {
    bool left = false;
    try {
      database->read([&](Connection& db) { left = !to_sweep(db).empty(); });
    } catch (const SQLite::Exception& error) {
      return fail(fault_of(error, database->file()));
    }
    return left ? settled : Outcome<>();
  }
  return write([&](Connection& db) { sweep_forgotten(db); });
}

Outcome<> Ledger::Impl::scrub_if_due() {
  bool due = false;
  try {
    database->read([&](Connection& db) {
      auto& query = db.statement("SELECT 1 FROM meta WHERE key=?");
      query.bind(1, kScrubDue);
      due = query.executeStep();
    });
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, database->file()));
  }
  if (!due) return {};
  if (auto scrubbed = database->scrub(); !scrubbed) return scrubbed;
  return write([&](Connection& db) {
    auto& done = db.statement("DELETE FROM meta WHERE key=?");
    done.bind(1, kScrubDue);
    done.exec();
  });
}

Outcome<ForgetReport> Ledger::forget(const BookId& book, std::optional<BookKind> kind) {
  ForgetReport report;
  std::int64_t newest = 0;
  auto written = impl_->write([&](Connection& db) {
    if (known(db, book)) {
      newest = newest_position(db);
      return;
    }
    auto& query = db.statement("SELECT kind FROM book WHERE id=?");
    bind_blob(query, 1, book.bytes);
    if (query.executeStep()) kind = static_cast<BookKind>(query.getColumn(0).getInt());
    if (!kind)
      throw Abort{{FaultCode::not_found, "this device does not hold the book", "book " + book.hex(), ""}};
    if (*kind != impl_->options.registry->personal())
      throw Abort{{FaultCode::refused, "only what is held about a person can be forgotten",
                   "book " + book.hex(), ""}};
    const Stub stub =
        sign_stub(impl_->options.key, impl_->options.device_name, book, *kind, impl_->options.clock->now());
    if (impl_->erase(db, stub, PublicKey{})) report.erased.push_back(book);
    newest = newest_position(db);
  });
  if (!written) return fail(written.error());
  if (auto gone = impl_->scrub_if_due(); !gone) report.not_yet_gone = gone.error();
  impl_->announce(newest);
  return report;
}

Outcome<ForgetReport> Ledger::obey(std::span<const Stub> stubs, const PublicKey& from) {
  ForgetReport report;
  bool changed = false;
  std::int64_t newest = 0;
  auto written = impl_->write([&](Connection& db) {
    std::int64_t kept = count_stubs(db);
    for (const Stub& stub : stubs) {
      const bool held = impl_->find_book(db, stub.book).has_value();
      if (stub.kind != impl_->options.registry->personal() || stub.device.size() > kLongestName ||
          !proves_itself(stub) || (!held && kept >= kMostStubs)) {
        ++report.refused;
        continue;
      }
      if (known(db, stub.book)) continue;
      if (held) {
        auto& kind = db.statement("SELECT kind FROM book WHERE id=?");
        bind_blob(kind, 1, stub.book.bytes);
        if (kind.executeStep() && kind.getColumn(0).getInt() != static_cast<int>(stub.kind)) {
          ++report.refused;
          continue;
        }
      }
      changed = true;
      ++kept;
      if (impl_->erase(db, stub, from)) report.erased.push_back(stub.book);
    }
    newest = newest_position(db);
  });
  if (!written) return fail(written.error());
  if (auto gone = impl_->scrub_if_due(); !gone) report.not_yet_gone = gone.error();
  if (changed) impl_->announce(newest);
  return report;
}

Outcome<ForgetReport> Ledger::shed(std::span<const BookId> books) {
  ForgetReport report;
  std::int64_t newest = 0;
  auto written = impl_->write([&](Connection& db) {
    for (const BookId& id : books) {
      const auto book = impl_->find_book(db, id);
      if (!book) continue;
      auto& query = db.statement(
          "SELECT kind, EXISTS(SELECT 1 FROM chain c JOIN author a ON a.n=c.author WHERE c.book=book.n AND a.key=?2) FROM book WHERE n=?1");
      query.bind(1, *book);
      bind_blob(query, 2, impl_->options.key.public_key());
      if (!query.executeStep()) continue;
      const bool about_somebody = static_cast<BookKind>(query.getColumn(0).getInt()) == impl_->options.registry->personal();
      const bool own_words = query.getColumn(1).getInt() != 0;
      query.reset();
      if (!about_somebody) throw Abort{{FaultCode::refused, "only what is held about a person is let go", "book " + id.hex(), ""}};
      if (own_words)
        throw Abort{{FaultCode::refused, "this device wrote into the book itself", "book " + id.hex(), "have it forgotten if the player wishes that"}};
      (void)impl_->wipe_traces(db, id, book);
      impl_->wipe(db, id, *book);
      run(db, "DELETE FROM book WHERE n=?", *book);
      report.erased.push_back(id);
    }
    newest = newest_position(db);
  });
  if (!written) return fail(written.error());
  if (auto gone = impl_->scrub_if_due(); !gone) report.not_yet_gone = gone.error();
  if (!report.erased.empty()) impl_->announce(newest);
  return report;
}

std::vector<Forgotten> Ledger::forgotten(std::int64_t after, std::size_t most) const {
  std::vector<Forgotten> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT n, book, kind, at, key, device, signature, heard, heard_from FROM stub WHERE n>? ORDER BY n "
        "LIMIT ?");
    query.bind(1, after);
    query.bind(2, static_cast<std::int64_t>(most));
    while (query.executeStep()) out.push_back(stub_in(query));
  });
  return out;
}

bool Ledger::is_forgotten(const BookId& book) const {
  bool held = false;
  impl_->database->read([&](Connection& db) { held = known(db, book); });
  return held;
}

void Ledger::erase_with(std::function<void(Connection&, const BookId&)> erase) {
  const std::lock_guard guard(impl_->erasers_mutex);
  impl_->erasers.push_back(std::move(erase));
}

}  // namespace weavelog
