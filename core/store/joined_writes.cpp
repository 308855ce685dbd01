#include "core/store/joined_writes.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <new>
#include <stdexcept>
#include <utility>

#include "core/base/bytes.h"

namespace weavelog {
namespace {

/// As much is handed on at once: SQLite's own file system refuses writes of 128 KiB and more, which SQLite
/// never makes.
constexpr std::size_t kMostHeld = 64 * 1024;
/// A log that begins anew: its frames must not reach the disk before this.
constexpr std::size_t kLogHeader = 32;

/// An open log. SQLite gives the memory, in which the file underneath follows; the base must come first.
struct LogFile {
  sqlite3_file base;
  sqlite3_file* below;
  Bytes held;        ///< written, but not yet handed on
  sqlite3_int64 at;  ///< where in the file that begins
  bool* leaves_sync;  ///< the next one of frames, and is reset by it
  bool owed = false;  ///< one was left, and none came after it
  /// One that was owed failed. The system takes what it could not write for written then, so no later sync brings it to disk; and unlike a
  /// transaction that was refused, it will not be written anew by SQLite. So this does it (write_again), or nothing behind it counts as confirmed.
  bool lost_a_sync = false;

  static LogFile& of(sqlite3_file* file) { return *reinterpret_cast<LogFile*>(file); }

  int hand_on() {
    if (held.empty()) return SQLITE_OK;
    const int result = below->pMethods->xWrite(below, held.data(), static_cast<int>(held.size()), at);
    // What could not be written is refused with its transaction, which SQLite then writes anew.
    held.clear();
    return result;
  }

  int write(const void* data, int amount, sqlite3_int64 offset) {
    const auto size = static_cast<std::size_t>(amount);
    if (!held.empty() &&
        (offset != at + static_cast<sqlite3_int64>(held.size()) || held.size() + size > kMostHeld))
      if (const int result = hand_on(); result != SQLITE_OK) return result;
    if (size > kMostHeld) return below->pMethods->xWrite(below, data, amount, offset);
    if (held.empty()) at = offset;
    const auto* bytes = static_cast<const std::uint8_t*>(data);
    try {
      held.insert(held.end(), bytes, bytes + size);
    } catch (const std::bad_alloc&) {
      return SQLITE_IOERR_NOMEM;
    }
    return SQLITE_OK;
  }
};

/// Writes all of the file over itself, as the system shows it.
int write_again(sqlite3_file* below) {
  sqlite3_int64 size = 0;
  if (const int result = below->pMethods->xFileSize(below, &size); result != SQLITE_OK) return result;
  std::array<std::uint8_t, 16 * 1024> piece;
  for (sqlite3_int64 at = 0; at < size; at += static_cast<sqlite3_int64>(piece.size())) {
    const int amount = static_cast<int>(std::min<sqlite3_int64>(size - at, static_cast<sqlite3_int64>(piece.size())));
    if (const int result = below->pMethods->xRead(below, piece.data(), amount, at); result != SQLITE_OK) return result;
    if (const int result = below->pMethods->xWrite(below, piece.data(), amount, at); result != SQLITE_OK) return result;
  }
  return SQLITE_OK;
}

/// Calls what the file underneath does after all that was held has been handed on.
template <class Do>
int after_writes(sqlite3_file* file, Do&& then) {
  LogFile& log = LogFile::of(file);
  const int result = log.hand_on();
  return result == SQLITE_OK ? then(log.below) : result;
}

int close_log(sqlite3_file* file) {
  LogFile& log = LogFile::of(file);
  // What was never synced belongs to no transaction that was acknowledged.
  (void)log.hand_on();
  const int result = log.below->pMethods->xClose(log.below);
  log.~LogFile();
  return result;
}

const sqlite3_io_methods kLogMethods = [] {
  sqlite3_io_methods out{};
  out.iVersion = 1;  // logs are neither shared memory nor mapped
  out.xClose = close_log;
  out.xRead = [](sqlite3_file* file, void* data, int amount, sqlite3_int64 offset) {
    return after_writes(
        file, [&](sqlite3_file* below) { return below->pMethods->xRead(below, data, amount, offset); });
  };
  out.xWrite = [](sqlite3_file* file, const void* data, int amount, sqlite3_int64 offset) {
    return LogFile::of(file).write(data, amount, offset);
  };
  out.xTruncate = [](sqlite3_file* file, sqlite3_int64 size) {
    return after_writes(file, [&](sqlite3_file* below) { return below->pMethods->xTruncate(below, size); });
  };
  out.xSync = [](sqlite3_file* file, int flags) {
    LogFile& log = LogFile::of(file);
    const bool of_frames = log.at != 0 || log.held.size() != kLogHeader;
    if (of_frames && std::exchange(*log.leaves_sync, false)) {
      log.owed = true;
      return log.hand_on();
    }
    return after_writes(file, [&](sqlite3_file* below) {
      if (log.lost_a_sync)
        if (const int result = write_again(below); result != SQLITE_OK) return result;
      const int result = below->pMethods->xSync(below, flags);
      log.lost_a_sync = result != SQLITE_OK && log.owed;
      if (result == SQLITE_OK) log.owed = false;
      return result;
    });
  };
  out.xFileSize = [](sqlite3_file* file, sqlite3_int64* size) {
    return after_writes(file, [&](sqlite3_file* below) { return below->pMethods->xFileSize(below, size); });
  };
  out.xLock = [](sqlite3_file* file, int level) {
    return LogFile::of(file).below->pMethods->xLock(LogFile::of(file).below, level);
  };
  out.xUnlock = [](sqlite3_file* file, int level) {
    return LogFile::of(file).below->pMethods->xUnlock(LogFile::of(file).below, level);
  };
  out.xCheckReservedLock = [](sqlite3_file* file, int* locked) {
    return LogFile::of(file).below->pMethods->xCheckReservedLock(LogFile::of(file).below, locked);
  };
  // Nothing is handed on here: SQLite takes many of these for hints whose failure it does not look at, and a
  // write that failed unseen would be missing at the next sync.
  out.xFileControl = [](sqlite3_file* file, int what, void* argument) {
    return LogFile::of(file).below->pMethods->xFileControl(LogFile::of(file).below, what, argument);
  };
  out.xSectorSize = [](sqlite3_file* file) {
    return LogFile::of(file).below->pMethods->xSectorSize(LogFile::of(file).below);
  };
  out.xDeviceCharacteristics = [](sqlite3_file* file) {
    return LogFile::of(file).below->pMethods->xDeviceCharacteristics(LogFile::of(file).below);
  };
  return out;
}();

std::string fresh_name() {
  static std::atomic<std::uint64_t> count{0};
  return "weavelog joined writes " + std::to_string(++count);
}

}  // namespace

JoinedWrites::JoinedWrites(const std::string& below) : name_(fresh_name()), layer_{} {
  sqlite3_vfs* found = sqlite3_vfs_find(below.empty() ? nullptr : below.c_str());
  if (found == nullptr) throw std::runtime_error("SQLite knows no file system " + below);
  // All but opening is done underneath, whose functions find their own data in the copy.
  static_cast<sqlite3_vfs&>(layer_) = *found;
  layer_.below = found;
  layer_.zName = name_.c_str();
  layer_.pNext = nullptr;
  layer_.szOsFile = static_cast<int>(sizeof(LogFile)) + found->szOsFile;
  layer_.xOpen = open;
  if (sqlite3_vfs_register(&layer_, 0) != SQLITE_OK) throw std::bad_alloc();
}

JoinedWrites::~JoinedWrites() {
  sqlite3_vfs_unregister(&layer_);
}

int JoinedWrites::open(sqlite3_vfs* vfs, const char* name, sqlite3_file* out, int flags, int* out_flags) {
  sqlite3_vfs* found = static_cast<Layer*>(vfs)->below;
  if ((flags & SQLITE_OPEN_WAL) == 0) return found->xOpen(found, name, out, flags, out_flags);
  static_assert(sizeof(LogFile) % alignof(sqlite3_int64) == 0);
  auto* below = reinterpret_cast<sqlite3_file*>(reinterpret_cast<char*>(out) + sizeof(LogFile));
  const int result = found->xOpen(found, name, below, flags, out_flags);
  out->pMethods = nullptr;  // says that there is nothing to close
  if (below->pMethods == nullptr) return result;
  // What an earlier program left may be such a loss of its own: the system tells nobody of it twice.
  sqlite3_int64 size = 0;
  const bool left = below->pMethods->xFileSize(below, &size) == SQLITE_OK && size > 0;
  new (out) LogFile{{&kLogMethods}, below, {}, 0, &static_cast<Layer*>(vfs)->leaves_sync, left, left};
  return result;
}

}  // namespace weavelog
