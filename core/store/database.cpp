#include "core/store/database.h"

#include <fcntl.h>
#include <sqlite3.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include "core/store/schema.h"

namespace weavelog {
namespace {

constexpr int kApplicationId = 0x57564c47;  // "WVLG"

bool in_memory(const std::filesystem::path& file) { return file == ":memory:"; }

int pragma_number(Connection& connection, const char* sql) {
  SQLite::Statement& query = connection.statement(sql);
  query.executeStep();
  return query.getColumn(0).getInt();
}

/// Tables on a new file; a fault on one that is not ours or is newer.
Outcome<> settle(Connection& writer, const std::filesystem::path& file) {
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
  writer.raw().exec("PRAGMA wal_autocheckpoint=2000; PRAGMA cache_size=-16000; PRAGMA temp_store=MEMORY;");
  if (tables > 0) return {};
  SQLite::Transaction transaction(writer.raw());
  writer.raw().exec(kSchema);
  writer.raw().exec("PRAGMA application_id=" + std::to_string(kApplicationId));
  writer.raw().exec("PRAGMA user_version=" + std::to_string(kSchemaVersion));
  transaction.commit();
  return {};
}

}  // namespace

Connection::Connection(const std::string& path, int flags, const std::string& vfs) : db_(path, flags, 5000, vfs) {}

SQLite::Statement& Connection::statement(const char* sql) {
  auto found = statements_.find(sql);
  if (found == statements_.end()) {
    found = statements_.emplace(sql, SQLite::Statement(db_, sql)).first;
  } else {
    found->second.tryReset();
    found->second.clearBindings();
  }
  in_use_.push_back(&found->second);
  return found->second;
}

void Connection::reset_statements() {
  for (SQLite::Statement* statement : in_use_) statement->tryReset();
  in_use_.clear();
}

void Connection::drop_statements() {
  in_use_.clear();
  statements_.clear();
}

/// Held for as long as the database is open; the kernel lets go of it when the process dies, however it dies.
class Database::FileLock {
 public:
  static Outcome<std::unique_ptr<FileLock>> take(const std::filesystem::path& file) {
    const std::string path = file.string() + ".lock";
    const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (descriptor < 0)
      return fail(errno == ENOSPC ? FaultCode::no_space : FaultCode::io, std::string("cannot be created: ") + std::strerror(errno),
                  path, "check that the folder exists and can be written");
    auto lock = std::make_unique<FileLock>(descriptor);
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0)
      return fail(FaultCode::locked, "another program has this database open", file.string(),
                  "close the other Weavelog that uses it, or choose another folder");
    return lock;
  }
  explicit FileLock(int descriptor) : descriptor_(descriptor) {}
  ~FileLock() { ::close(descriptor_); }
  FileLock(const FileLock&) = delete;
  FileLock& operator=(const FileLock&) = delete;

 private:
  int descriptor_;
};

Database::Database(std::filesystem::path file, std::unique_ptr<FileLock> lock, std::unique_ptr<Connection> writer,
                   std::unique_ptr<Connection> reader)
    : file_(std::move(file)), lock_(std::move(lock)), writer_(std::move(writer)), reader_(std::move(reader)) {}

Database::~Database() = default;

Outcome<std::unique_ptr<Database>> Database::open(const std::filesystem::path& file, const std::string& vfs) {
  std::unique_ptr<FileLock> lock;
  if (!in_memory(file) && vfs.empty()) {
    auto taken = FileLock::take(file);
    if (!taken) return fail(taken.error());
    lock = std::move(*taken);
  }
  try {
    auto writer = std::make_unique<Connection>(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, vfs);
    if (auto settled = settle(*writer, file); !settled) return fail(settled.error());
    std::unique_ptr<Connection> reader;
    if (!in_memory(file)) {
      reader = std::make_unique<Connection>(file.string(), SQLite::OPEN_READONLY, vfs);
      reader->raw().exec("PRAGMA cache_size=-16000; PRAGMA temp_store=MEMORY;");
    }
    return std::unique_ptr<Database>(new Database(file, std::move(lock), std::move(writer), std::move(reader)));
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, file));
  }
}

Outcome<> Database::write(const std::function<void(Connection&)>& work) {
  const std::lock_guard guard(write_mutex_);
  struct EndStatements {
    Connection& connection;
    ~EndStatements() { connection.reset_statements(); }
  };
  try {
    SQLite::Transaction transaction(writer_->raw(), SQLite::TransactionBehavior::IMMEDIATE);
    const EndStatements end{*writer_};
    work(*writer_);
    writer_->reset_statements();
    transaction.commit();
    return {};
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, file_));
  }
}

void Database::read(const std::function<void(Connection&)>& work) const {
  if (!reader_) {
    const std::lock_guard guard(write_mutex_);
    work(*writer_);
    return;
  }
  const std::lock_guard guard(read_mutex_);
  if (read_depth_ > 0) {
    work(*reader_);
    return;
  }
  struct Snapshot {
    Connection& connection;
    int& depth;
    Snapshot(Connection& held, int& level) : connection(held), depth(level) {
      connection.raw().exec("BEGIN");
      ++depth;
    }
    ~Snapshot() {
      --depth;
      connection.reset_statements();
      connection.raw().tryExec("ROLLBACK");
    }
  } snapshot(*reader_, read_depth_);
  work(*reader_);
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
              "keep the file, restore a backup or pair again with the event server, and run `weavelog-cli verify`"};
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
