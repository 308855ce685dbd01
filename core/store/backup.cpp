#include "core/store/backup.h"

#include <SQLiteCpp/Backup.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <tuple>
#include <vector>

#include "core/base/clock.h"
#include "core/base/iso_time.h"
#include "core/log/entry.h"
#include "core/store/database.h"
#include "core/store/late_entries.h"
#include "core/store/schema.h"

namespace weavelog {
namespace {

namespace fs = std::filesystem;

Fault io_fault(const std::string& what, const fs::path& file, int error) {
  return {error == ENOSPC ? FaultCode::no_space : FaultCode::io, what + ": " + std::strerror(error),
          file.string(), "choose another folder, or free some space"};
}

/// Content and name are on disk. Faults name `called`.
Outcome<> settle_on_disk(const fs::path& file, const fs::path& called) {
  for (const fs::path& path : {file, file.has_parent_path() ? file.parent_path() : fs::path(".")}) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0 || ::fsync(descriptor) != 0) {
      const Fault fault = io_fault("cannot be brought to disk", called, errno);
      if (descriptor >= 0) ::close(descriptor);
      return fail(fault);
    }
    ::close(descriptor);
  }
  return {};
}

/// Is it one of ours, whole, and of a version that is known here?
Outcome<> examine(SQLite::Database& db, const fs::path& file) {
  if (db.execAndGet("PRAGMA application_id").getInt() != kApplicationId)
    return fail(FaultCode::bad_input, "this is not a Weavelog database", file.string(),
                "choose another file");
  if (const int version = db.execAndGet("PRAGMA user_version").getInt(); version > kSchemaVersion)
    return fail(FaultCode::newer,
                "this database was written by a newer version of Weavelog (" + std::to_string(version) +
                    ", this one knows " + std::to_string(kSchemaVersion) + ")",
                file.string(), "update Weavelog on this device; nothing was changed");
  if (const std::string said = db.execAndGet("PRAGMA integrity_check(1)").getString(); said != "ok")
    return fail(FaultCode::damaged, "the database is damaged (" + said + ")", file.string(),
                "use an older backup");
  return {};
}

struct RemoveUnlessKept {
  fs::path file;
  bool kept = false;
  bool alone = false;  ///< what stands beside it is not its own
  ~RemoveUnlessKept() {
    std::error_code ignored;
    if (kept) return;
    if (alone) {
      fs::remove(file, ignored);
      return;
    }
    for (const char* suffix : {"", "-journal", "-wal", "-shm"}) fs::remove(file.string() + suffix, ignored);
  }
};

/// The name, or with a number behind it, so that nothing of that name is lost.
fs::path free_name(const std::string& wanted) {
  std::error_code ignored;
  fs::path out = wanted;
  for (int next = 2; fs::exists(fs::symlink_status(out, ignored)); ++next) out = wanted + "-" + std::to_string(next);
  return out;
}

/// True if there is nothing that could be read: damaged, not ours, or from before there were such tables.
bool holds_nothing(const SQLite::Exception& error) {
  const int code = error.getErrorCode() & 0xff;
  return code == SQLITE_ERROR || code == SQLITE_CORRUPT || code == SQLITE_NOTADB;
}

/// What SQLite says about a copy: what was read is named where it is at fault, otherwise the file that was to be written. A disk that is full
/// is that of the copy, so nothing that was confirmed is at stake.
Fault copy_fault(const SQLite::Exception& error, const fs::path& source, const fs::path& target) {
  switch (error.getErrorCode() & 0xff) {
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return fault_of(error, source);
    case SQLITE_FULL:
      return {FaultCode::no_space, "there is no room left for the copy; nothing was written", target.string(), "free some space there, or choose another place"};
    default:
      return {FaultCode::io, std::string("cannot be written (") + error.getErrorStr() + ")", target.string(), "look at the stick or disk and try again"};
  }
}

/// One snapshot of `source` as the new file `part` of `target`, without what makes its writer this author: then `more`.
Outcome<> copy_snapshot(const fs::path& source, const fs::path& part, const fs::path& target,
                        const std::function<void(SQLite::Database&)>& more) {
  std::error_code ignored;
  fs::remove(part, ignored);
  const int descriptor = ::open(part.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (descriptor < 0) return fail(io_fault("cannot be created", target, errno));
  ::close(descriptor);
  std::optional<SQLite::Database> opened;
  try {
    opened.emplace(source.string(), SQLite::OPEN_READONLY, 5000);
    if (auto sound = examine(*opened, source); !sound) return sound;
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, source));
  }
  SQLite::Database& from = *opened;
  try {
    SQLite::Database to(part.string(), SQLite::OPEN_READWRITE);
    {
      SQLite::Backup copy(to, from);
      (void)copy.executeStep(-1);
    }
    to.exec("PRAGMA journal_mode=DELETE; PRAGMA synchronous=FULL");
    to.exec("DELETE FROM meta WHERE key IN ('self', 'place')");
    if (more) more(to);
    return examine(to, target);
  } catch (const SQLite::Exception& error) {
    return fail(copy_fault(error, source, target));
  }
}

/// Our own chains are signed whenever they are handed over; in the copy there is nobody to do so.
void seal_own(SQLite::Database& db, const DeviceKey& key) {
  // Of an older program, whose links have no hashes yet: whoever restores it makes them.
  if (db.execAndGet("PRAGMA user_version").getInt() < kVersionWithLinks) return;
  db.exec(kCareSchema);
  // What the program that has the database open did not come to link yet.
  {
    SQLite::Statement into(db, kStoreLateLink), begin(db, kBeginChain);
    SQLite::Transaction transaction(db);
    each_late_entry(db, [&](const Link& link, const BookId&, const AuthorId&, ByteView) {
      store_link(into, link);
      if (link.seq == 1) begin_chain(begin, link);
    });
    transaction.commit();
  }
  SQLite::Statement chains(
      db, "SELECT h.book, h.author, h.seq, h.hash FROM head h JOIN author a ON a.n=h.author WHERE a.key=?");
  bind_blob(chains, 1, key.public_key());
  SQLite::Statement seal(db, "UPDATE chain SET sealed=?, signature=?, tail=x'' WHERE book=? AND author=?");
  std::vector<std::tuple<std::int64_t, std::int64_t, std::int64_t, Signature>> seals;
  while (chains.executeStep()) {
    Digest hash{};
    const ByteView held = blob_of(chains, 3);
    if (held.size() != hash.size()) throw SQLite::Exception("a digest of the wrong length", SQLITE_CORRUPT);
    std::copy(held.begin(), held.end(), hash.begin());
    const std::int64_t seq = chains.getColumn(2).getInt64();
    seals.emplace_back(chains.getColumn(0).getInt64(), chains.getColumn(1).getInt64(), seq,
                       key.sign(seal_message(static_cast<std::uint64_t>(seq), hash)));
  }
  SQLite::Transaction transaction(db);
  for (const auto& [book, author, seq, signature] : seals) {
    seal.bind(1, seq);
    bind_blob(seal, 2, signature);
    seal.bind(3, book);
    seal.bind(4, author);
    seal.exec();
    seal.reset();
  }
  transaction.commit();
}

/// What a restored database must not unlearn from the one that it takes the place of.
void carry_stubs(SQLite::Database& restored) {
  restored.exec(kCareSchema);
  restored.exec(
      "INSERT OR IGNORE INTO stub(book, kind, at, key, device, signature, heard, heard_from) SELECT book, "
      "kind, at, key, device, "
      "signature, heard, heard_from FROM replaced.stub ORDER BY n");
}

/// False: the database that it takes the place of was only just made, and knows nothing of what came since the backup.
bool held_something(SQLite::Database& restored) {
  return restored.execAndGet("SELECT EXISTS(SELECT 1 FROM replaced.entry) OR EXISTS(SELECT 1 FROM replaced.stub)").getInt() != 0;
}

}  // namespace

Outcome<> back_up(const fs::path& source, const fs::path& target, const DeviceKey* key) {
  std::error_code ignored;
  if (!fs::exists(source, ignored))
    return fail(FaultCode::not_found, "there is no database to back up", source.string(),
                "give the folder of a device with --data");
  if (fs::exists(target, ignored))
    return fail(FaultCode::conflict, "a file of this name exists", target.string(),
                "choose another name; backups are never overwritten");
  RemoveUnlessKept part{target.string() + ".part"};
  const auto copied = copy_snapshot(source, part.file, target, [&](SQLite::Database& copy) {
    if (key != nullptr) seal_own(copy, *key);
  });
  if (!copied) return copied;
  if (auto settled = settle_on_disk(part.file, target); !settled) return settled;
  std::error_code error;
  fs::rename(part.file, target, error);
  if (error) return fail(io_fault("cannot be renamed", target, error.value()));
  part.kept = true;
  return settle_on_disk(target, target);
}

Outcome<Restored> restore(const fs::path& backup, const fs::path& target, bool overwrite,
                          const RestoreCare& care) {
  std::error_code ignored;
  if (!fs::exists(backup, ignored))
    return fail(FaultCode::not_found, "there is no such file", backup.string(), "look at its name again");
  if (fs::exists(target, ignored) && fs::equivalent(backup, target, ignored))
    return fail(FaultCode::bad_input, "the backup is the very database that it would replace",
                backup.string(), "choose another file");
  const bool present = fs::exists(target, ignored);
  if (present && !overwrite)
    return fail(FaultCode::conflict, "this device has a database already", target.string(),
                "add --overwrite to put the backup in its place; it is kept under another name");
  auto lock = FileLock::take(target);
  if (!lock) return fail(lock.error());

  bool readable = present;
  if (present) {
    // What still stands in its log goes into the file; a damaged one is kept as it is.
    try {
      SQLite::Database before(target.string(), SQLite::OPEN_READWRITE, 5000);
      (void)before.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const SQLite::Exception& error) {
      if (!holds_nothing(error)) return fail(fault_of(error, target));
      readable = false;
    }
  }
  RemoveUnlessKept part{target.string() + ".part"};
  // Each by itself: what can't be read can't be carried over. But what only can't be read now must not be unlearnt.
  std::optional<SQLite::Exception> not_carried;
  const auto what_there_is = [&](const std::function<void()>& step) {
    try {
      step();
    } catch (const SQLite::Exception& error) {
      if (holds_nothing(error)) return;
      not_carried = error;
      throw;
    }
  };
  Restored out;
  auto copied = copy_snapshot(backup, part.file, target, [&](SQLite::Database& restored) {
    if (readable) what_there_is([&] {
      SQLite::Statement attach(restored, "ATTACH ? AS replaced");
      attach.bind(1, target.string());
      attach.exec();
      bool some = false, rest = false;
      what_there_is([&] {
        carry_stubs(restored);
        some = held_something(restored);
      });
      what_there_is([&] {
        if (care.carry) care.carry(restored);
        rest = true;
      });
      restored.exec("DETACH replaced");
      out.carried = some && rest;
    });
    if (!out.carried && care.otherwise) what_there_is([&] { care.otherwise(restored); });
  });
  if (not_carried)
    return fail(FaultCode::io,
                "what the database here knows of forgotten players and revoked devices can't be carried over (" +
                    std::string(not_carried->getErrorStr()) + ")",
                target.string(), "free some space and try again; nothing was changed");
  if (!copied) return fail(copied.error());
  if (auto settled = settle_on_disk(part.file, target); !settled) return fail(settled.error());

  std::error_code error;
  RemoveUnlessKept kept_before{{}, true, true};  // of one file two names must not stay
  if (present) {
    std::string day = iso_utc(WallClock::system().now());
    std::erase(day, ':');
    out.replaced = free_name(target.string() + ".before-" + day);
    // Under both names until the other takes its place: at no moment is there none, for which a program would make an empty one that
    // knows of nobody who was forgotten. Not every file system has links.
    fs::create_hard_link(target, *out.replaced, error);
    if (error) fs::copy_file(target, *out.replaced, error);
    if (error) return fail(io_fault("what was here before cannot be kept", *out.replaced, error.value()));
    kept_before.file = *out.replaced;
    kept_before.kept = false;
    if (auto settled = settle_on_disk(*out.replaced, *out.replaced); !settled) return fail(settled.error());
    for (const char* suffix : {"-wal", "-shm"})
      if (fs::exists(target.string() + suffix, ignored)) {
        fs::rename(target.string() + suffix, out.replaced->string() + suffix, error);
        if (error) return fail(io_fault("cannot be renamed", target, error.value()));
      }
  }
  for (const char* suffix : {"-wal", "-shm"}) fs::remove(target.string() + suffix, ignored);
  fs::rename(part.file, target, error);
  if (error) return fail(io_fault("cannot be renamed", target, error.value()));
  part.kept = kept_before.kept = true;
  if (auto settled = settle_on_disk(target, target); !settled) return fail(settled.error());
  return out;
}

}  // namespace weavelog
