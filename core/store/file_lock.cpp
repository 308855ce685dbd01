#include "core/store/file_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

namespace weavelog {

Outcome<std::unique_ptr<FileLock>> FileLock::take(const std::filesystem::path& file) {
  const std::string path = file.string() + ".lock";
  const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (descriptor < 0)
    return fail(errno == ENOSPC ? FaultCode::no_space : FaultCode::io,
                std::string("cannot be created: ") + std::strerror(errno), path,
                "check that the folder exists and can be written");
  auto lock = std::make_unique<FileLock>(descriptor);
  if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0)
    return fail(FaultCode::locked, "another program has this database open", file.string(),
                "close the other Weavelog that uses it, or choose another folder");
  return lock;
}

FileLock::~FileLock() {
  ::close(descriptor_);
}

}  // namespace weavelog
