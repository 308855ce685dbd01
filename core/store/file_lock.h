#pragma once
// The lock beside a database that tells a second program: "FILE.lock", held with flock.

#include <filesystem>
#include <memory>

#include "core/base/outcome.h"

namespace weavelog {

/// Held for as long as it lives; the kernel lets go of it when the process dies, however it dies.
class FileLock {
 public:
  /// Faults: locked (another program has it), no_space, io.
  [[nodiscard]] static Outcome<std::unique_ptr<FileLock>> take(const std::filesystem::path& file);
  explicit FileLock(int descriptor) : descriptor_(descriptor) {}
  ~FileLock();
  FileLock(const FileLock&) = delete;
  FileLock& operator=(const FileLock&) = delete;

 private:
  int descriptor_;
};

}  // namespace weavelog
