#include "sync/trust/private_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "core/base/descriptor.h"

namespace weavelog {
namespace {

constexpr off_t kMaxSize = 64 * 1024;

tl::unexpected<Fault> system_fault(int error, const char* what, const std::filesystem::path& file) {
  const std::string text = std::string(what) + ": " + std::system_category().message(error);
  if (error == ENOSPC || error == EDQUOT) {
    return fail(FaultCode::no_space, text, file.string(), "free some space and start again");
  }
  if (error == EACCES || error == EPERM || error == EROFS) {
    return fail(FaultCode::refused, text, file.string(), "choose a data folder that you may write to");
  }
  return fail(FaultCode::io, text, file.string(), "check the disk and the data folder");
}

/// Writes everything and has it on disk; 0 or the error.
int write_all(int fd, std::string_view content) {
  while (!content.empty()) {
    const ssize_t n = ::write(fd, content.data(), content.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return errno;
    content.remove_prefix(static_cast<std::size_t>(n));
  }
  return ::fsync(fd) == 0 ? 0 : errno;
}

}  // namespace

Outcome<std::optional<std::string>> read_private_file(const std::filesystem::path& file) {
  // Non-blocking, so that a pipe put in the file's place can't hang us.
  const Descriptor fd(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (!fd) {
    if (errno == ENOENT) return std::optional<std::string>{};
    return system_fault(errno, "can't be read", file);
  }
  struct stat info {};
  if (::fstat(fd.get(), &info) != 0) return system_fault(errno, "can't be read", file);
  if (!S_ISREG(info.st_mode)) {
    return fail(FaultCode::damaged, "is not a plain file", file.string(), "put the file back from a backup");
  }
  if ((info.st_mode & 077) != 0) {
    return fail(FaultCode::refused, "others than its owner may read or change this secret file",
                file.string(),
                "run chmod 600 on it, and pair this device anew if somebody may have copied it");
  }
  if (info.st_uid != ::geteuid()) {
    return fail(FaultCode::refused, "this secret file belongs to another user", file.string(),
                "start as that user, or choose another data folder");
  }
  if (info.st_size == 0 || info.st_size > kMaxSize) {
    return fail(FaultCode::damaged, info.st_size == 0 ? "the file is empty" : "the file is far too large",
                file.string(), "put the file back from a backup");
  }
  std::string content(static_cast<std::size_t>(info.st_size), '\0');
  std::size_t have = 0;
  while (have < content.size()) {
    const ssize_t n = ::read(fd.get(), content.data() + have, content.size() - have);
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return system_fault(errno, "can't be read", file);
    if (n == 0) break;
    have += static_cast<std::size_t>(n);
  }
  content.resize(have);
  return std::optional<std::string>(std::move(content));
}

Outcome<bool> create_private_file(const std::filesystem::path& file, std::string_view content) {
  const std::filesystem::path folder =
      file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
  std::error_code error;
  if (!std::filesystem::exists(folder, error)) {
    if (folder.has_parent_path()) std::filesystem::create_directories(folder.parent_path(), error);
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
      return system_fault(errno, "can't be made", folder);
  }
  // Written beside and then linked to its name: whoever looks sees the whole file or none, and link() never
  // replaces.
  std::string beside = file.string() + ".XXXXXX";
  const Descriptor fd(::mkostemp(beside.data(), O_CLOEXEC));  // mode 0600
  if (!fd) return system_fault(errno, "can't be written", file);
  int trouble = write_all(fd.get(), content);
  bool made = false;
  if (trouble == 0) {
    if (::link(beside.c_str(), file.c_str()) == 0) {
      made = true;
    } else if (errno != EEXIST) {
      trouble = errno;
    }
  }
  ::unlink(beside.c_str());
  if (trouble != 0) return system_fault(trouble, "can't be written", file);
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!directory || ::fsync(directory.get()) != 0) return system_fault(errno, "can't be written", folder);
  return made;
}

}  // namespace weavelog
