#pragma once
// SQLite hands a transaction to its write-ahead log in two small writes for every page that changed. This
// file system, laid over another, puts neighbouring writes to a log together and hands them on as one, which
// is most of what such a write costs.

#include <sqlite3.h>

#include <string>

namespace weavelog {

/// Registered with SQLite while it lives: outlive all connections opened through it. Nothing is held back
/// from a sync, which with synchronous=FULL comes before a transaction counts as committed and before others
/// may look for it: use it with FULL only, and for the writer.
class JoinedWrites {
 public:
  /// `below` is SQLite's name of the file system underneath; empty: the machine's.
  explicit JoinedWrites(const std::string& below);
  ~JoinedWrites();
  JoinedWrites(const JoinedWrites&) = delete;
  JoinedWrites& operator=(const JoinedWrites&) = delete;

  [[nodiscard]] const std::string& name() const { return name_; }

  /// The next transaction need not reach the disk by itself: what it writes is handed on, in order, and goes there with the sync after it.
  void leave_next_sync() { layer_.leaves_sync = true; }
  void sync_again() { layer_.leaves_sync = false; }

 private:
  struct Layer : sqlite3_vfs {
    sqlite3_vfs* below;
    bool leaves_sync;
  };
  static int open(sqlite3_vfs* vfs, const char* name, sqlite3_file* out, int flags, int* out_flags);

  std::string name_;
  Layer layer_;
};

}  // namespace weavelog
