#include "core/store/database.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <fstream>

#include "core/store/schema.h"

namespace weavelog {
namespace {

/// Of each connection: 8 MB of pages, more of which saved no time in imports of a season (weavelog-bench, workload M).
constexpr const char* kCaches = "PRAGMA cache_size=-8000; PRAGMA temp_store=MEMORY;";
constexpr std::int64_t kLargestInMemory = 16 * 1024 * 1024;
constexpr int kBusyMs = 5000;
/// A log that can't be emptied now is tried again after so many writes.
constexpr unsigned kWritesBetweenTries = 64;

bool in_memory(const std::filesystem::path& file) { return file == ":memory:"; }

int pragma_number(Connection& connection, const char* sql) {
  SQLite::Statement& query = connection.statement(sql);
  query.executeStep();
  return query.getColumn(0).getInt();
}

/// False while somebody reads, or where the disk does not let it be done.
bool empty_log(Connection& writer) {
  sqlite3* const handle = writer.raw().getHandle();
  sqlite3_busy_timeout(handle, 0);  // whoever reads may do so for long
  const int result = sqlite3_wal_checkpoint_v2(handle, nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
  sqlite3_busy_timeout(handle, kBusyMs);
  return result == SQLITE_OK;
}

/// A program that was killed between writing and syncing left transactions that the system holds and the disk may not. Whoever reads them
/// builds on them, and tells other devices: so they reach the disk first. And it left half of one that nothing ever reads or erases, though
/// it may hold words of somebody who withdraws: so the log is emptied. False if that could not be done, such as on a full disk.
bool settle_log(Connection& writer) {
  sqlite3_file* log = nullptr;
  sqlite3_file_control(writer.raw().getHandle(), nullptr, SQLITE_FCNTL_JOURNAL_POINTER, &log);
  if (log == nullptr || log->pMethods == nullptr) return true;
  sqlite3_int64 size = 0;
  int result = log->pMethods->xFileSize(log, &size);
  if (result == SQLITE_OK && size > 0) result = log->pMethods->xSync(log, SQLITE_SYNC_NORMAL);
  if (result != SQLITE_OK) throw SQLite::Exception("the log of the last program does not reach the disk", result);
  return size == 0 || empty_log(writer);
}

/// True if pages of the transaction that was just undone, or of one before it, were too many for memory and went to the log.
bool spilled(Connection& writer) {
  int pages = 0, most = 0;
  return sqlite3_db_status(writer.raw().getHandle(), SQLITE_DBSTATUS_CACHE_SPILL, &pages, &most, 1) == SQLITE_OK && pages > 0;
}

/// Tables on a new file; a fault on one that is not ours or is newer. `log_emptied` says what settle_log does.
Outcome<> settle(Connection& writer, const std::filesystem::path& file, Connections connections, bool& log_emptied) {
  // Before the first look at the file, so that the index of its log is this connection's own memory.
  if (connections == Connections::one) writer.raw().exec("PRAGMA locking_mode=EXCLUSIVE");
  const int version = pragma_number(writer, "PRAGMA user_version");
  const int application = pragma_number(writer, "PRAGMA application_id");
  const int tables = pragma_number(writer, "SELECT count(*) FROM sqlite_master");
  writer.drop_statements();
  if (tables > 0 && application != kApplicationId)
    return fail(FaultCode::bad_input, "this is not a Weavelog database", file.string(), "choose another file or folder");
  if (version > kSchemaVersion)
    return fail(FaultCode::newer,
                "this database was written by a newer version of Weavelog (" + std::to_string(version) + ", this one knows " +
                    std::to_string(kSchemaVersion) + ")",
                file.string(), "update Weavelog on this device; nothing was changed");
  // The journal mode and the page size of deleted data are properties of the file; the rest of the connection.
  writer.raw().exec("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=OFF;");
  // What is deleted is overwritten, so that nothing of a forgotten player stays in free space (forget.cpp does the rest).
  writer.raw().exec("PRAGMA secure_delete=ON");
  writer.raw().exec("PRAGMA wal_autocheckpoint=2000");
  writer.raw().exec(kCaches);
  if (tables > 0) log_emptied = settle_log(writer);
  if (tables > 0 && version == kSchemaVersion) {
    writer.raw().exec(kCareSchema);
    return {};
  }
  SQLite::Transaction transaction(writer.raw());
  if (tables == 0) writer.raw().exec(kSchema);
  // It names links, which a database from before there were any can have heard of by a restore; then SQLite would rename no table.
  writer.raw().exec("DROP VIEW IF EXISTS head");
  if (tables > 0 && version < 2) writer.raw().exec(kFromVersion1);
  if (tables > 0 && version < 3) writer.raw().exec(kFromVersion2);
  if (tables > 0 && version < 4) writer.raw().exec(kFromVersion3);
  writer.raw().exec(kCareSchema);
  writer.raw().exec("PRAGMA application_id=" + std::to_string(kApplicationId));
  writer.raw().exec("PRAGMA user_version=" + std::to_string(kSchemaVersion));
  transaction.commit();
  return {};
}

}  // namespace

// Whoever has a connection holds its lock: SQLite need not lock it once more at every call.
Connection::Connection(const std::string& path, int flags, const std::string& vfs)
    : db_(path, flags | SQLite::OPEN_NOMUTEX, kBusyMs, vfs) {}

Connection::Named& Connection::find(const char* sql) {
  Named*& near = by_address_[sql];
  if (near != nullptr && near->text == sql) return *near;
  auto& held = statements_[sql];
  if (!held) held = std::make_unique<Named>(Named{sql, SQLite::Statement(db_, sql)});
  near = held.get();
  return *near;
}

SQLite::Statement& Connection::statement(const char* sql) {
  SQLite::Statement& statement = find(sql).statement;
  statement.tryReset();
  statement.clearBindings();
  in_use_.push_back(&statement);
  return statement;
}

void Connection::reset_statements(std::size_t from) {
  for (; in_use_.size() > from; in_use_.pop_back()) in_use_.back()->tryReset();
}

void Connection::drop_statements() {
  in_use_.clear();
  by_address_.clear();
  statements_.clear();
}

Database::Database(std::filesystem::path file, std::unique_ptr<FileLock> lock, std::unique_ptr<JoinedWrites> joined,
                   std::unique_ptr<Connection> writer, std::unique_ptr<Connection> reader)
    : file_(std::move(file)),
      lock_(std::move(lock)),
      joined_(std::move(joined)),
      writer_(std::move(writer)),
      reader_(std::move(reader)) {}

Database::~Database() = default;

Outcome<std::unique_ptr<Database>> Database::open(const std::filesystem::path& file, const std::string& vfs,
                                                  Connections connections) {
  std::unique_ptr<FileLock> lock;
  if (!in_memory(file) && vfs.empty()) {
    auto taken = FileLock::take(file);
    if (!taken) return fail(taken.error());
    lock = std::move(*taken);
  }
  try {
    auto joined = in_memory(file) ? nullptr : std::make_unique<JoinedWrites>(vfs);
    auto writer = std::make_unique<Connection>(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE,
                                               joined ? joined->name() : vfs);
    bool log_emptied = true;
    if (auto settled = settle(*writer, file, connections, log_emptied); !settled) return fail(settled.error());
    std::unique_ptr<Connection> reader;
    if (!in_memory(file) && connections == Connections::two) {
      reader = std::make_unique<Connection>(file.string(), SQLite::OPEN_READONLY, vfs);
      reader->raw().exec(kCaches);
    }
    std::unique_ptr<Database> out(new Database(file, std::move(lock), std::move(joined), std::move(writer), std::move(reader)));
    out->log_holds_remains_ = !log_emptied;
    return out;
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, file));
  }
}

/// Nothing would ever read or erase them, though they may hold words of somebody who withdraws meanwhile.
void Database::empty_log_if_due() {
  if (!log_holds_remains_ || writes_until_emptied_-- > 0) return;
  writes_until_emptied_ = kWritesBetweenTries;
  log_holds_remains_ = !empty_log(*writer_);
}

Outcome<> Database::write(const std::function<void(Connection&)>& work, Durable durable) {
  const std::lock_guard guard(write_mutex_);
  if (refuses_writes_ != nullptr) return fail(*refuses_writes_);
  // Undoes what was not committed, and leaves no statement that would keep a snapshot open.
  struct Transaction {
    Database& database;
    Connection& connection = *database.writer_;
    const std::size_t others = connection.in_use();  ///< of somebody who reads around it
    bool open = false;
    ~Transaction() {
      connection.reset_statements(others);
      if (open) {
        connection.raw().tryExec("ROLLBACK");
        if (spilled(connection)) {
          database.log_holds_remains_ = true;
          database.writes_until_emptied_ = 0;
        }
      }
      database.empty_log_if_due();
    }
  };
  try {
    Transaction transaction{*this};
    writer_->statement("BEGIN IMMEDIATE").exec();
    transaction.open = true;
    work(*writer_);
    writer_->reset_statements(transaction.others);
    struct Unsynced {
      JoinedWrites* log;
      ~Unsynced() {
        if (log != nullptr) log->sync_again();
      }
    } const unsynced{durable == Durable::later ? joined_.get() : nullptr};
    if (unsynced.log != nullptr) unsynced.log->leave_next_sync();
    writer_->statement("COMMIT").exec();
    transaction.open = false;
    return {};
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, file_));
  }
}

void Database::read(const std::function<void(Connection&)>& work) const {
  if (reader_) return read_unsettled(work);
  const std::lock_guard guard(write_mutex_);
  if (unsettled_ && sqlite3_get_autocommit(writer_->raw().getHandle()) != 0)
    if (const auto settled = settle_(); !settled) return read_undone(work, settled.error());
  read_unsettled(work);
}

void Database::read_undone(const std::function<void(Connection&)>& work, const Fault& why) const {
  // Whatever fails below: a statement that was left in the middle would keep the error of a disk that has long been well again.
  struct Undone {
    const Database& database;
    const std::size_t others = database.writer_->in_use();
    ~Undone() {
      database.refuses_writes_ = nullptr;
      database.writer_->reset_statements(others);
      database.writer_->raw().tryExec("ROLLBACK");
      database.writer_->raw().tryExec("PRAGMA cache_spill=ON");
    }
  };
  const Undone undone{*this};
  // More pages than the cache has would go to the log, for which there is no room either, and hold what is going to be undone.
  writer_->raw().tryExec("PRAGMA cache_spill=OFF");
  writer_->statement("BEGIN IMMEDIATE").exec();
  refuses_writes_ = &why;
  show_(*writer_);
  writer_->reset_statements(undone.others);
  read_unsettled(work);
}

void Database::read_unsettled(const std::function<void(Connection&)>& work) const {
  if (!reader_) {
    const std::lock_guard guard(write_mutex_);
    // Nobody else writes: without BEGIN, too, this sees one state. Nothing may keep it open afterwards.
    struct Reading {
      Connection& connection;
      const std::size_t others = connection.in_use();
      ~Reading() { connection.reset_statements(others); }
    } reading{*writer_};
    work(*writer_);
    return;
  }
  const std::lock_guard guard(read_mutex_);
  if (read_depth_ > 0) {
    work(*reader_);
    return;
  }
  struct Snapshot {
    const Database& database;
    explicit Snapshot(const Database& held) : database(held) {
      database.reader_->statement("BEGIN").exec();
      ++database.read_depth_;
      database.snapshot_of_ = std::this_thread::get_id();
    }
    ~Snapshot() {
      database.snapshot_of_ = std::thread::id();
      --database.read_depth_;
      database.reader_->reset_statements();
      database.reader_->statement("ROLLBACK").tryExecuteStep();
      database.reader_->reset_statements();
    }
  } snapshot(*this);
  work(*reader_);
}

Outcome<> Database::scrub() {
  if (in_memory(file_)) return {};
  const std::lock_guard writing(write_mutex_);
  const std::lock_guard reading(read_mutex_);
  try {
    writer_->drop_statements();
    SQLite::Database& raw = writer_->raw();
    // Zeros over what was deleted reach the file first, so that what VACUUM cuts off its end holds nothing either.
    const auto checkpoint = [&] {
      SQLite::Statement truncate(raw, "PRAGMA wal_checkpoint(TRUNCATE)");
      return truncate.executeStep() && truncate.getColumn(0).getInt() == 0;
    };
    bool done = checkpoint();
    const auto pages = raw.execAndGet("PRAGMA page_count").getInt64();
    // The copy that VACUUM makes would be held in memory.
    const bool large = pages * raw.execAndGet("PRAGMA page_size").getInt64() > kLargestInMemory;
    if (large) raw.exec("PRAGMA temp_store=FILE");
    raw.exec("VACUUM");
    if (large) raw.exec("PRAGMA temp_store=MEMORY");
    done = checkpoint() && done;
    if (!done)
      return fail(FaultCode::locked, "another program reads the database, so that old pages of it can't be overwritten yet",
                  file_.string(), "this is done at the next start");
    return {};
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, file_));
  }
}

std::string Database::place() const {
  struct statx found {};
  if (in_memory(file_) || ::statx(AT_FDCWD, file_.c_str(), 0, STATX_INO | STATX_BTIME, &found) != 0) return {};
  std::string machine;
  std::getline(std::ifstream("/etc/machine-id"), machine);
  std::string out = machine + " " + std::to_string(found.stx_ino);
  if ((found.stx_mask & STATX_BTIME) != 0)
    out += " " + std::to_string(found.stx_btime.tv_sec) + "." + std::to_string(found.stx_btime.tv_nsec);
  return out;
}

Fault fault_of(const SQLite::Exception& error, const std::filesystem::path& file) {
  const std::string where = file.string();
  switch (error.getErrorCode()) {
    case SQLITE_FULL:
      return {FaultCode::no_space, "the disk is full; what was confirmed before is safe, this last change is not stored", where,
              "free some space and do it again"};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
      return {FaultCode::damaged, std::string("the database is damaged (") + error.getErrorStr() + ")", where,
              "keep the file, restore a backup or pair again with the event server, and run `weavelog-cli "
              "verify`"};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return {FaultCode::locked, "another program holds the database", where, "close it and try again"};
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
      return {FaultCode::io, std::string("the database cannot be opened for writing (") + error.getErrorStr() + ")", where,
              "check that the folder exists and belongs to you"};
    default:
      return {FaultCode::io, error.what(), where, "check the disk, then try again"};
  }
}

void damaged(const std::string& what) { throw SQLite::Exception(what, SQLITE_CORRUPT); }

void bind_blob(SQLite::Statement& statement, int index, std::span<const std::uint8_t> bytes) {
  // An empty span may have a null pointer, which SQLite would store as NULL.
  statement.bindNoCopy(index, bytes.empty() ? "" : static_cast<const void*>(bytes.data()), static_cast<int>(bytes.size()));
}

std::span<const std::uint8_t> blob_of(SQLite::Statement& statement, int column) {
  const SQLite::Column held = statement.getColumn(column);
  return {static_cast<const std::uint8_t*>(held.getBlob()), static_cast<std::size_t>(held.getBytes())};
}

}  // namespace weavelog
