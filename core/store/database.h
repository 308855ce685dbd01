#pragma once
// One SQLite file: locked against a second program, checked, set up for durable writes; one writer and one
// reader connection.

#include <SQLiteCpp/SQLiteCpp.h>

#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <thread>
#include <unordered_map>
#include <vector>

#include "core/base/id.h"
#include "core/base/outcome.h"
#include "core/store/file_lock.h"
#include "core/store/joined_writes.h"

namespace weavelog {

/// A connection with the statements that were prepared on it. Statements are named by their text: pass
/// literals.
class Connection {
 public:
  Connection(const std::string& path, int flags, const std::string& vfs = {});

  /// The prepared statement, reset and without bindings. Valid until the same text is asked for again.
  SQLite::Statement& statement(const char* sql);
  /// Ends every statement in use, so that none keeps a snapshot open past its transaction; with a number, only those that were
  /// asked for since in_use() gave that.
  void reset_statements(std::size_t from = 0);
  [[nodiscard]] std::size_t in_use() const { return in_use_.size(); }
  SQLite::Database& raw() { return db_; }
  /// Forgets prepared statements, which would otherwise hold on to tables that are about to be dropped.
  void drop_statements();

 private:
  struct Named {
    std::string text;
    SQLite::Statement statement;
  };
  [[nodiscard]] Named& find(const char* sql);

  SQLite::Database db_;
  std::unordered_map<std::string, std::unique_ptr<Named>> statements_;
  /// By the address of the text, which for a literal is always the same; the text is compared all the same.
  std::unordered_map<const char*, Named*> by_address_;
  std::vector<SQLite::Statement*> in_use_;
};

/// How many connections a database has.
enum class Connections : std::uint8_t {
  two,  ///< readers see the state before while somebody writes
  /// For a program that reads and writes on one thread: half the statements to prepare, one schema to read, and the file is its own alone.
  /// Whoever reads inside of a write sees what was written so far.
  one,
};

/// When what was committed has to be on disk.
enum class Durable : std::uint8_t {
  now,
  later,  ///< with what is committed next: a crash may undo it, and nothing before it
};

class Database {
 public:
  /// Opens or creates. ":memory:" gives a private one whose reader is its writer.
  /// `vfs` names another file system of SQLite's than the machine's (a simulated disk, which has no lock file).
  /// Faults: locked, damaged, newer, no_space, io; each names the file.
  [[nodiscard]] static Outcome<std::unique_ptr<Database>> open(const std::filesystem::path& file, const std::string& vfs = {},
                                                               Connections connections = Connections::two);
  ~Database();
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;

  /// Runs `work` in one durable write transaction; a thrown exception undoes it. SQLite's become faults,
  /// others pass on.
  [[nodiscard]] Outcome<> write(const std::function<void(Connection&)>& work, Durable durable = Durable::now);
  /// Nobody else writes while this is held.
  [[nodiscard]] std::unique_lock<std::recursive_mutex> hold() const { return std::unique_lock(write_mutex_); }
  /// Runs `work` on one snapshot. May be nested.
  void read(const std::function<void(Connection&)>& work) const;
  /// The same for what does not ask whether the database is settled.
  void read_unsettled(const std::function<void(Connection&)>& work) const;

  /// How to write what is still to be written before anybody reads. Where `settle` can't, such as on a full disk, whoever reads does so in a
  /// transaction into which `show` writes it, and which is undone then.
  void settle_with(std::function<Outcome<>()> settle, std::function<void(Connection&)> show) {
    settle_ = std::move(settle);
    show_ = std::move(show);
  }
  /// Whether there is anything. For who holds the database, and has but one connection to it.
  void set_unsettled(bool unsettled) { unsettled_ = unsettled; }
  [[nodiscard]] bool unsettled() const { return unsettled_; }

  /// Rewrites the file and empties the write-ahead log, so that neither holds a byte of what was deleted. Takes about as long
  /// as copying the file, and its space again meanwhile. Faults: locked (another program reads), no_space, io.
  [[nodiscard]] Outcome<> scrub();

  /// Where the file is: machine, file number and the moment it came into being. A copy has another one, a renamed file the same.
  /// Empty where this can't be told.
  [[nodiscard]] std::string place() const;

  /// True within a read() of the calling thread.
  [[nodiscard]] bool in_snapshot() const { return snapshot_of_.load() == std::this_thread::get_id(); }

  [[nodiscard]] const std::filesystem::path& file() const { return file_; }

 private:
  Database(std::filesystem::path file, std::unique_ptr<FileLock> lock, std::unique_ptr<JoinedWrites> joined,
           std::unique_ptr<Connection> writer, std::unique_ptr<Connection> reader);
  void empty_log_if_due();
  void read_undone(const std::function<void(Connection&)>& work, const Fault& why) const;

  std::filesystem::path file_;
  std::unique_ptr<FileLock> lock_;
  std::unique_ptr<JoinedWrites> joined_;  ///< null for a database in memory
  mutable std::recursive_mutex write_mutex_;
  mutable std::recursive_mutex read_mutex_;
  mutable int read_depth_ = 0;
  bool log_holds_remains_ = false;     ///< of a transaction that never came to be
  unsigned writes_until_emptied_ = 0;  ///< or tried again
  mutable std::atomic<std::thread::id> snapshot_of_{};
  std::function<Outcome<>()> settle_;
  std::function<void(Connection&)> show_;
  std::atomic<bool> unsettled_ = false;
  mutable const Fault* refuses_writes_ = nullptr;  ///< why, amid such a transaction
  std::unique_ptr<Connection> writer_;
  std::unique_ptr<Connection> reader_;  ///< null if the writer reads too
};

/// What SQLite's exception means to a person.
[[nodiscard]] Fault fault_of(const SQLite::Exception& error, const std::filesystem::path& file);

/// For rows that contradict each other, which only damage can bring about: throws what SQLite itself would throw for it.
[[noreturn]] void damaged(const std::string& what);

/// Blobs in and out of statements.
/// Binds without copying: the bytes must live until the statement has run.
void bind_blob(SQLite::Statement& statement, int index, std::span<const std::uint8_t> bytes);
/// Leaves the parameter NULL where there is nothing.
template <class Tag>
void bind_maybe(SQLite::Statement& statement, int index, const Id<Tag>& id) {
  if (id) bind_blob(statement, index, id.bytes);
}
inline void bind_maybe(SQLite::Statement& statement, int index, const std::optional<std::int64_t>& number) {
  if (number) statement.bind(index, *number);
}
/// Valid until the statement's next step or reset.
[[nodiscard]] std::span<const std::uint8_t> blob_of(SQLite::Statement& statement, int column);

}  // namespace weavelog
