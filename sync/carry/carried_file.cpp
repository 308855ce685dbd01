#include "sync/carry/carried_file.h"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <memory>
#include <system_error>

#include "core/base/descriptor.h"

namespace weavelog {
namespace {

tl::unexpected<Fault> trouble(int error, const char* what, const std::filesystem::path& file) {
  const std::string text = std::string(what) + ": " + std::system_category().message(error);
  if (error == ENOENT) return fail(FaultCode::not_found, text, file.string(), "look at the name of the file and its folder");
  if (error == ENOSPC || error == EDQUOT) return fail(FaultCode::no_space, text, file.string(), "free some space there and try again");
  if (error == EACCES || error == EPERM || error == EROFS) return fail(FaultCode::refused, text, file.string(), "choose a folder that you may use");
  return fail(FaultCode::io, text, file.string(), "look at the stick or disk and try again");
}

/// On the disk, where the file system can say so: some of those that sticks have can't for a folder.
bool settle(int fd) { return ::fsync(fd) == 0 || errno == EINVAL || errno == ENOTSUP; }

}  // namespace

Outcome<> write_carried_file(const std::filesystem::path& file, bool replace, const std::function<Outcome<>(const ByteSink&)>& write) {
  std::error_code ignored;
  if (!replace && std::filesystem::exists(std::filesystem::symlink_status(file, ignored)))
    return fail(FaultCode::conflict, "there is a file of that name already", file.string(), "choose another name, or say that it may be replaced");
  const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
  std::string beside = (folder / ("." + file.filename().string() + ".part-XXXXXX")).string();
  const Descriptor fd(::mkostemp(beside.data(), O_CLOEXEC));  // mode 0600
  if (!fd) return trouble(errno, "can't be written", file);
  const auto sink = [&](ByteView bytes) -> Outcome<> {
    while (!bytes.empty()) {
      const ssize_t n = ::write(fd.get(), bytes.data(), bytes.size());
      if (n < 0 && errno == EINTR) continue;
      if (n < 0) return trouble(errno, "can't be written", file);
      bytes = bytes.subspan(static_cast<std::size_t>(n));
    }
    return {};
  };
  Outcome<> done = write(sink);
  if (done && !settle(fd.get())) done = trouble(errno, "can't be written", file);
  if (done && ::rename(beside.c_str(), file.c_str()) != 0) done = trouble(errno, "can't be given its name", file);
  if (!done) {
    ::unlink(beside.c_str());
    return done;
  }
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!directory || !settle(directory.get())) return trouble(errno, "can't be written", folder);
  return {};
}

Outcome<ByteSource> read_carried_file(const std::filesystem::path& file) {
  // Non-blocking, so that a pipe in the file's place can't hang us.
  const auto fd = std::make_shared<Descriptor>(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (!*fd) return trouble(errno, "can't be read", file);
  struct stat info {};
  if (::fstat(fd->get(), &info) != 0) return trouble(errno, "can't be read", file);
  if (!S_ISREG(info.st_mode)) return fail(FaultCode::refused, "is not a plain file", file.string(), "choose a file");
  return ByteSource([fd, file](std::span<std::uint8_t> out) -> Outcome<std::size_t> {
    for (;;) {
      const ssize_t n = ::read(fd->get(), out.data(), out.size());
      if (n < 0 && errno == EINTR) continue;
      if (n < 0) return trouble(errno, "can't be read", file);
      return static_cast<std::size_t>(n);
    }
  });
}

Outcome<Bytes> read_small_file(const std::filesystem::path& file, std::size_t most) {
  const auto source = read_carried_file(file);
  if (!source) return fail(source.error());
  Bytes out;
  for (Bytes piece(64 * 1024);;) {
    const auto got = (*source)(piece);
    if (!got) return fail(got.error());
    if (*got == 0) return out;
    out.insert(out.end(), piece.begin(), piece.begin() + static_cast<std::ptrdiff_t>(*got));
    if (out.size() > most) return fail(FaultCode::malformed, "is far too large for what it should be", file.string(), "choose another file");
  }
}

}  // namespace weavelog
