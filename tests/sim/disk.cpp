#include "tests/sim/disk.h"

#include <sqlite3.h>

#include <cstring>
#include <new>

#include "tests/sim/disk_file.h"

namespace weavelog::sim {

/// What SQLite holds of an open file. SQLite gives the memory; the base must come first.
struct DiskHandle {
  sqlite3_file base;
  Disk* disk;
  std::shared_ptr<DiskFile> file;
  std::uint64_t generation;
  int level;
  std::uint8_t shared_slots, exclusive_slots;
  bool uses_memory;

  /// Opened before the last start of the disk.
  [[nodiscard]] bool stale() const { return generation != disk->generation_; }
  [[nodiscard]] bool dead() const { return disk->stopped_ || stale(); }
  [[nodiscard]] bool misreads() const { return disk->misreads(); }
  static DiskHandle& of(sqlite3_file* file) { return *reinterpret_cast<DiskHandle*>(file); }
  static int change(sqlite3_file* held, std::size_t growth, bool is_sync, int code) {
    switch (of(held).disk->count_operation(growth, is_sync, of(held).file.get())) {
      case Disk::Verdict::fine:
        return SQLITE_OK;
      case Disk::Verdict::full:
        return SQLITE_FULL;
      case Disk::Verdict::read_only:
        return SQLITE_READONLY;
      case Disk::Verdict::fails:
        break;
    }
    return code;
  }
  void leave_memory() {
    if (!uses_memory || generation != disk->generation_) return;
    uses_memory = false;
    if (--file->memory_users == 0) file->memory.clear();
  }
};

namespace {

constexpr std::size_t kLargestFile = 256 * 1024 * 1024;

int close_file(sqlite3_file* held) {
  DiskHandle& handle = DiskHandle::of(held);
  handle.leave_memory();
  held->pMethods->xUnlock(held, SQLITE_LOCK_NONE);
  handle.~DiskHandle();
  return SQLITE_OK;
}

int read_file(sqlite3_file* held, void* out, int amount, sqlite3_int64 offset) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead() || handle.misreads()) return SQLITE_IOERR_READ;
  const Bytes& bytes = handle.file->bytes;
  const auto at = static_cast<std::size_t>(offset), wanted = static_cast<std::size_t>(amount);
  const std::size_t there = at < bytes.size() ? std::min(wanted, bytes.size() - at) : 0;
  if (there > 0) std::memcpy(out, bytes.data() + at, there);
  if (there == wanted) return SQLITE_OK;
  std::memset(static_cast<char*>(out) + there, 0, wanted - there);
  return SQLITE_IOERR_SHORT_READ;
}

int write_file(sqlite3_file* held, const void* data, int amount, sqlite3_int64 offset) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead()) return SQLITE_IOERR_WRITE;
  const auto at = static_cast<std::size_t>(offset), size = static_cast<std::size_t>(amount);
  // A database that was damaged can ask for any page. Here a file takes memory for all that lies before it, and nothing may be
  // thrown through SQLite; real disks are full at some size too.
  if (at > kLargestFile || size > kLargestFile - at) return SQLITE_FULL;
  const std::size_t held_size = handle.file->bytes.size();
  const std::size_t growth = at + size > held_size ? at + size - held_size : 0;
  if (const int refused = DiskHandle::change(held, growth, false, SQLITE_IOERR_WRITE); refused != SQLITE_OK)
    return refused;
  handle.file->write(at, {static_cast<const std::uint8_t*>(data), size});
  return SQLITE_OK;
}

int truncate_file(sqlite3_file* held, sqlite3_int64 size) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead()) return SQLITE_IOERR_TRUNCATE;
  if (size < 0 || static_cast<std::size_t>(size) > kLargestFile) return SQLITE_IOERR_TRUNCATE;
  if (const int refused = DiskHandle::change(held, 0, false, SQLITE_IOERR_TRUNCATE); refused != SQLITE_OK)
    return refused;
  handle.file->truncate(static_cast<std::size_t>(size));
  return SQLITE_OK;
}

int sync_file(sqlite3_file* held, int) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead()) return SQLITE_IOERR_FSYNC;
  if (const int refused = DiskHandle::change(held, 0, true, SQLITE_IOERR_FSYNC); refused != SQLITE_OK)
    return refused;
  handle.file->sync();
  return SQLITE_OK;
}

int size_of_file(sqlite3_file* held, sqlite3_int64* size) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead()) return SQLITE_IOERR_FSTAT;
  *size = static_cast<sqlite3_int64>(handle.file->bytes.size());
  return SQLITE_OK;
}

int lock_file(sqlite3_file* held, int level) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.dead()) return SQLITE_IOERR_LOCK;
  DiskFile& file = *handle.file;
  if (handle.level >= level) return SQLITE_OK;
  const auto others = [&](const void* owner) { return owner != nullptr && owner != held; };
  if (level == SQLITE_LOCK_SHARED) {
    if (others(file.pending) || others(file.exclusive)) return SQLITE_BUSY;
    ++file.shared;
  } else if (level == SQLITE_LOCK_RESERVED) {
    if (others(file.reserved)) return SQLITE_BUSY;
    file.reserved = held;
  } else {
    if (others(file.pending) || others(file.reserved)) return SQLITE_BUSY;
    file.pending = held;
    if (handle.level < SQLITE_LOCK_PENDING) handle.level = SQLITE_LOCK_PENDING;
    if (file.shared > 1) return SQLITE_BUSY;
    file.exclusive = held;
  }
  handle.level = level;
  return SQLITE_OK;
}

int unlock_file(sqlite3_file* held, int level) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.stale() || handle.level <= level) return SQLITE_OK;
  DiskFile& file = *handle.file;
  for (const void** owner : {&file.reserved, &file.pending, &file.exclusive})
    if (*owner == held) *owner = nullptr;
  if (level == SQLITE_LOCK_NONE) --file.shared;
  handle.level = level;
  return SQLITE_OK;
}

int check_reserved(sqlite3_file* held, int* out) {
  *out = DiskHandle::of(held).file->reserved != nullptr ? 1 : 0;
  return SQLITE_OK;
}

int control_file(sqlite3_file*, int, void*) {
  return SQLITE_NOTFOUND;
}
int sector_size(sqlite3_file*) {
  return 4096;
}
int characteristics(sqlite3_file*) {
  return SQLITE_IOCAP_POWERSAFE_OVERWRITE;
}

int map_memory(sqlite3_file* held, int page, int size, int extend, void volatile** out) {
  DiskHandle& handle = DiskHandle::of(held);
  *out = nullptr;
  if (handle.dead()) return SQLITE_IOERR_SHMMAP;
  auto& memory = handle.file->memory;
  if (size != 32768) return SQLITE_IOERR_SHMSIZE;
  if (!handle.uses_memory) {
    handle.uses_memory = true;
    ++handle.file->memory_users;
  }
  const auto place = static_cast<std::size_t>(page);
  if (place >= memory.size() && extend == 0) return SQLITE_OK;
  while (memory.size() <= place) memory.push_back(std::make_unique<std::array<std::uint8_t, 32768>>());
  *out = memory[place]->data();
  return SQLITE_OK;
}

int lock_memory(sqlite3_file* held, int first, int count, int flags) {
  DiskHandle& handle = DiskHandle::of(held);
  if (handle.stale()) return (flags & SQLITE_SHM_UNLOCK) != 0 ? SQLITE_OK : SQLITE_IOERR_SHMLOCK;
  DiskFile& file = *handle.file;
  const bool exclusive = (flags & SQLITE_SHM_EXCLUSIVE) != 0;
  const auto slot_bit = [](int slot) { return static_cast<std::uint8_t>(1U << slot); };
  const auto at = [](int slot) { return static_cast<std::size_t>(slot); };
  if ((flags & SQLITE_SHM_UNLOCK) != 0) {
    for (int slot = first; slot < first + count; ++slot) {
      if ((handle.shared_slots & slot_bit(slot)) != 0) --file.memory_shared[at(slot)];
      if ((handle.exclusive_slots & slot_bit(slot)) != 0) file.memory_exclusive[at(slot)] = nullptr;
      handle.shared_slots &= static_cast<std::uint8_t>(~slot_bit(slot));
      handle.exclusive_slots &= static_cast<std::uint8_t>(~slot_bit(slot));
    }
    return SQLITE_OK;
  }
  if (handle.dead()) return SQLITE_IOERR_SHMLOCK;
  for (int slot = first; slot < first + count; ++slot) {
    const int own = (handle.shared_slots & slot_bit(slot)) != 0 ? 1 : 0;
    const void* owner = file.memory_exclusive[at(slot)];
    if (owner != nullptr && owner != held) return SQLITE_BUSY;
    if (exclusive && file.memory_shared[at(slot)] > own) return SQLITE_BUSY;
  }
  for (int slot = first; slot < first + count; ++slot) {
    if (exclusive) {
      file.memory_exclusive[at(slot)] = held;
      handle.exclusive_slots |= slot_bit(slot);
    } else if ((handle.shared_slots & slot_bit(slot)) == 0) {
      ++file.memory_shared[at(slot)];
      handle.shared_slots |= slot_bit(slot);
    }
  }
  return SQLITE_OK;
}

void barrier(sqlite3_file*) {}

int unmap_memory(sqlite3_file* held, int) {
  DiskHandle::of(held).leave_memory();
  return SQLITE_OK;
}

constexpr sqlite3_io_methods kMethods{
    2,           close_file,  read_file,      write_file,   truncate_file, sync_file,       size_of_file,
    lock_file,   unlock_file, check_reserved, control_file, sector_size,   characteristics, map_memory,
    lock_memory, barrier,     unmap_memory,   nullptr,      nullptr};

}  // namespace

/// The functions of the file system itself.
struct DiskVfs {
  static Disk& disk(sqlite3_vfs* vfs) { return *static_cast<Disk*>(vfs->pAppData); }

  static int open(sqlite3_vfs* vfs, const char* name, sqlite3_file* out, int flags, int* out_flags) {
    out->pMethods = nullptr;
    Disk& held = disk(vfs);
    if (held.stopped_ || name == nullptr) return SQLITE_CANTOPEN;
    auto& file = held.files_[name];
    if (!file) {
      if ((flags & SQLITE_OPEN_CREATE) == 0 || held.read_only_) {
        held.was_in_trouble_ = held.was_in_trouble_ || held.read_only_;
        held.files_.erase(name);
        return SQLITE_CANTOPEN;
      }
      file = std::make_shared<DiskFile>();
    }
    const bool writable = (flags & SQLITE_OPEN_READWRITE) != 0 && !held.read_only_;
    if (out_flags != nullptr)
      *out_flags = (flags & ~(SQLITE_OPEN_READWRITE | SQLITE_OPEN_READONLY)) |
                   (writable ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY);
    new (out) DiskHandle{{&kMethods}, &held, file, held.generation_, SQLITE_LOCK_NONE, 0, 0, false};
    return SQLITE_OK;
  }
  static int remove(sqlite3_vfs* vfs, const char* name, int) {
    Disk& held = disk(vfs);
    if (held.stopped_) return SQLITE_IOERR_DELETE;
    if (held.count_operation(0, false, nullptr) != Disk::Verdict::fine) return SQLITE_IOERR_DELETE;
    return held.files_.erase(name) > 0 ? SQLITE_OK : SQLITE_IOERR_DELETE_NOENT;
  }
  static int access(sqlite3_vfs* vfs, const char* name, int flags, int* out) {
    Disk& held = disk(vfs);
    if (held.stopped_) return SQLITE_IOERR_ACCESS;
    *out = held.files_.contains(name) && (flags != SQLITE_ACCESS_READWRITE || !held.read_only_) ? 1 : 0;
    return SQLITE_OK;
  }
  static int full_path(sqlite3_vfs*, const char* name, int size, char* out) {
    sqlite3_snprintf(size, out, "%s", name);
    return SQLITE_OK;
  }
  static int randomness(sqlite3_vfs*, int size, char* out) {
    std::memset(out, 7, static_cast<std::size_t>(size));  // SQLite's generator is seeded by seed_libraries()
    return size;
  }
  static int sleep(sqlite3_vfs*, int microseconds) { return microseconds; }
  static int time(sqlite3_vfs*, double* out) {
    *out = 2462823.5;
    return SQLITE_OK;
  }
  static int last_error(sqlite3_vfs*, int, char*) { return 0; }
  static int time_ms(sqlite3_vfs*, sqlite3_int64* out) {
    *out = 212787950400000;
    return SQLITE_OK;
  }
};

Disk::Disk(const std::string& name, std::uint64_t seed, std::size_t sector)
    : name_("weavelog-disk-" + name), random_(seed), sector_(sector), vfs_(std::make_unique<sqlite3_vfs>()) {
  sqlite3_vfs& vfs = *vfs_;
  vfs.iVersion = 2;
  vfs.szOsFile = sizeof(DiskHandle);
  vfs.mxPathname = 512;
  vfs.zName = name_.c_str();
  vfs.pAppData = this;
  vfs.xOpen = DiskVfs::open;
  vfs.xDelete = DiskVfs::remove;
  vfs.xAccess = DiskVfs::access;
  vfs.xFullPathname = DiskVfs::full_path;
  vfs.xRandomness = DiskVfs::randomness;
  vfs.xSleep = DiskVfs::sleep;
  vfs.xCurrentTime = DiskVfs::time;
  vfs.xGetLastError = DiskVfs::last_error;
  vfs.xCurrentTimeInt64 = DiskVfs::time_ms;
  sqlite3_vfs_register(&vfs, 0);
}

Disk::~Disk() {
  sqlite3_vfs_unregister(vfs_.get());
}

void Disk::cut_power() {
  for (auto& [name, file] : files_) lost_ += file->cut_power(random_, sector_);
}

void Disk::stop(Stop how) {
  if (stopped_) return;
  stopped_ = true;
  stop_in_ = 0;
  if (how == Stop::power) cut_power();
}

void Disk::stop_after(std::uint64_t operations, Stop how) {
  stop_in_ = operations;
  stop_how_ = how;
}

void Disk::start() {
  stopped_ = false;
  ++generation_;
  stop_in_ = fail_in_ = fail_count_ = misread_in_ = misread_count_ = 0;
  read_only_ = unreadable_ = was_in_trouble_ = false;
  capacity_.reset();
  for (auto& [name, file] : files_) file->forget_users();
}

void Disk::fail_after(std::uint64_t operations, std::uint64_t count) {
  fail_in_ = operations;
  fail_count_ = count;
}

void Disk::misread_after(std::uint64_t readings, std::uint64_t count) {
  misread_in_ = readings;
  misread_count_ = count;
}

bool Disk::misreads() {
  bool out = unreadable_;
  if (misread_in_ > 0 && --misread_in_ == 0) {
    out = true;
    if (misread_count_ > 1) misread_in_ = 1;
    if (misread_count_ > 0) --misread_count_;
  }
  was_in_trouble_ = was_in_trouble_ || out;
  return out;
}

void Disk::make_well() {
  read_only_ = unreadable_ = false;
  capacity_.reset();
  stop_in_ = fail_in_ = fail_count_ = misread_in_ = misread_count_ = 0;
}

bool Disk::in_trouble() const {
  return was_in_trouble_ || read_only_ || unreadable_ || capacity_ || fail_in_ > 0 || misread_in_ > 0;
}

Disk::Verdict Disk::count_operation(std::size_t growth, bool is_sync, DiskFile* file) {
  ++operations_;
  if (is_sync) ++syncs_;
  if (stop_in_ > 0 && --stop_in_ == 0) {
    if (is_sync && file != nullptr && random_.chance(500))
      file->sync();  // the disk was done, the program never heard
    stop(stop_how_);
    return Verdict::fails;
  }
  Verdict verdict = Verdict::fine;
  if (fail_in_ > 0 && --fail_in_ == 0) {
    verdict = Verdict::fails;
    if (is_sync && file != nullptr) file->sync_failed();
    if (fail_count_ > 1) fail_in_ = 1;
    if (fail_count_ > 0) --fail_count_;
  } else if (read_only_) {
    verdict = Verdict::read_only;
  } else if (growth > 0 && capacity_ && bytes() + growth > *capacity_) {
    verdict = Verdict::full;
  }
  was_in_trouble_ = was_in_trouble_ || verdict != Verdict::fine;
  return verdict;
}

DiskImage Disk::image() const {
  DiskImage out;
  for (const auto& [name, file] : files_) out.emplace(name, file->bytes);
  return out;
}

void Disk::load(const DiskImage& image) {
  files_.clear();
  for (const auto& [name, bytes] : image) {
    auto file = std::make_shared<DiskFile>();
    file->bytes = bytes;
    file->sync();
    files_.emplace(name, std::move(file));
  }
}

std::string Disk::file_with(std::string_view text) const {
  for (const auto& [name, file] : files_)
    if (as_text(file->bytes).find(text) != std::string_view::npos) return name;
  return {};
}

std::size_t Disk::bytes() const {
  std::size_t sum = 0;
  for (const auto& [name, file] : files_) sum += file->bytes.size();
  return sum;
}

}  // namespace weavelog::sim
