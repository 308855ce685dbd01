#pragma once
// A small disk of a test's own, which can be filled, resized and taken away.

#include <sched.h>
#include <sys/mount.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <fstream>

#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

/// A file system in memory, of a size that can be changed, over a folder.
class SmallDisk {
 public:
  /// errno where the machine does not allow it.
  int mount(const std::string& size) {
    if (::unshare(CLONE_NEWNS) != 0) return errno;
    if (::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0) return errno;
    return ::mount("tmpfs", path().c_str(), "tmpfs", 0, ("size=" + size).c_str()) == 0 ? 0 : errno;
  }
  ~SmallDisk() { ::umount2(path().c_str(), MNT_DETACH); }
  SmallDisk() = default;
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;

  void resize(const std::string& size) const {
    REQUIRE(::mount("tmpfs", path().c_str(), "tmpfs", MS_REMOUNT, ("size=" + size).c_str()) == 0);
  }
  void read_only(bool wanted) const {
    REQUIRE(::mount("tmpfs", path().c_str(), "tmpfs", MS_REMOUNT | (wanted ? MS_RDONLY : 0), "size=64m") ==
            0);
  }
  /// Takes what room there is; gives it back when the file is removed.
  void fill() const {
    std::ofstream out(path() / "filling", std::ios::binary);
    const std::string block(4096, 'x');
    while (out.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
    }
  }
  void clear() const { std::filesystem::remove(path() / "filling"); }
  [[nodiscard]] const std::filesystem::path& path() const { return folder_.path(); }

 private:
  TemporaryFolder folder_;
};

}  // namespace weavelog::testing
