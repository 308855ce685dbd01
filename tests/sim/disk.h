#pragma once
// A device's disk, in memory, as a file system of SQLite's (sqlite3_vfs). What was not synced can be lost at
// a power cut: each sector written since its file's last sync is then kept, dropped or torn. Bytes outside of
// what was written since are never touched, as real disks do (SQLite's "powersafe overwrite", which its own
// Unix file system also assumes).

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/bytes.h"
#include "tests/sim/random.h"

struct sqlite3_vfs;

namespace weavelog::sim {

/// How a device stops.
enum class Stop : std::uint8_t {
  kill,   ///< the program dies: what it wrote stays with the operating system
  power,  ///< the machine dies: what was not synced is at the mercy of the disk
};

/// All files of a disk, as somebody would copy them.
using DiskImage = std::map<std::string, Bytes>;

struct DiskFile;  // disk_file.h

class Disk {
 public:
  /// `name` must be unique among living disks. Sectors have 512 or 4096 bytes.
  Disk(const std::string& name, std::uint64_t seed, std::size_t sector);
  ~Disk();
  Disk(const Disk&) = delete;
  Disk& operator=(const Disk&) = delete;

  /// For LedgerOptions::vfs.
  [[nodiscard]] const std::string& vfs() const { return name_; }

  // --- how it stops
  /// Now. Whoever still has files open gets errors only and changes nothing any more.
  void stop(Stop how);
  /// At the so-manieth write, truncation or sync from now on (from 1).
  void stop_after(std::uint64_t operations, Stop how);
  [[nodiscard]] bool stopped() const { return stopped_; }
  /// Back in service with what is left, all troubles below gone. Files that are still open stay dead.
  void start();

  // --- troubles short of that
  void set_read_only(bool read_only) { read_only_ = read_only; }
  /// Reads fail, writes do not.
  void set_unreadable(bool unreadable) { unreadable_ = unreadable; }
  /// The so-manieth reading from now on fails (from 1), and `count` in all.
  void misread_after(std::uint64_t readings, std::uint64_t count);
  /// Writes that would make all files together larger fail. Nothing: there is always room.
  void set_capacity(std::optional<std::size_t> bytes) { capacity_ = bytes; }
  /// The so-manieth operation from now on fails (from 1), and `count` in all.
  void fail_after(std::uint64_t operations, std::uint64_t count);
  /// Ends all of these; the running program goes on.
  void make_well();
  /// True while some trouble is set, or since the last start() an operation failed because of one.
  [[nodiscard]] bool in_trouble() const;

  // --- files
  [[nodiscard]] DiskImage image() const;
  /// Replaces all files. None may be open.
  void load(const DiskImage& image);
  [[nodiscard]] std::size_t bytes() const;
  /// The first file that holds the text anywhere; empty if none does.
  [[nodiscard]] std::string file_with(std::string_view text) const;
  /// Writes, truncations and syncs so far.
  [[nodiscard]] std::uint64_t operations() const { return operations_; }
  [[nodiscard]] std::uint64_t syncs() const { return syncs_; }
  /// Bytes lost at power cuts so far: shows that cuts do cut.
  [[nodiscard]] std::uint64_t lost_bytes() const { return lost_; }

 private:
  friend struct DiskHandle;
  friend struct DiskVfs;
  enum class Verdict : std::uint8_t { fine, fails, full, read_only };
  /// Counts one changing operation and says what becomes of it.
  Verdict count_operation(std::size_t growth, bool is_sync, DiskFile* file);
  [[nodiscard]] bool misreads();
  void cut_power();

  std::string name_;
  Random random_;
  std::size_t sector_;
  std::map<std::string, std::shared_ptr<DiskFile>> files_;
  std::unique_ptr<sqlite3_vfs> vfs_;
  bool stopped_ = false;
  std::uint64_t generation_ = 0;  ///< of starts: handles of an older one are dead
  bool read_only_ = false;
  bool unreadable_ = false;
  bool was_in_trouble_ = false;
  std::optional<std::size_t> capacity_;
  std::uint64_t stop_in_ = 0;
  Stop stop_how_ = Stop::kill;
  std::uint64_t fail_in_ = 0, fail_count_ = 0;
  std::uint64_t misread_in_ = 0, misread_count_ = 0;
  std::uint64_t operations_ = 0, syncs_ = 0, lost_ = 0;
};

}  // namespace weavelog::sim
