#include "sync/carry/carried_file.h"

#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <memory>
#include <system_error>

#include "core/base/descriptor.h"
#include "core/base/id.h"

namespace weavelog {
namespace {

tl::unexpected<Fault> trouble(int error, const char* what, const std::filesystem::path& file) {
  const std::string text = std::string(what) + ": " + std::system_category().message(error);
  if (error == ENOENT) return fail(FaultCode::not_found, text, file.string(), "look at the name of the file and its folder");
  if (error == ENOSPC || error == EDQUOT) return fail(FaultCode::no_space, text, file.string(), "free some space there and try again");
  if (error == EACCES || error == EPERM || error == EROFS) return fail(FaultCode::refused, text, file.string(), "choose a folder that you may use");
  if (error == EISDIR) return fail(FaultCode::bad_input, "this is a folder", file.string(), "name a file in it");
  return fail(FaultCode::io, text, file.string(), "look at the stick or disk and try again");
}

/// On the disk, where the file system can say so: some of those that sticks have can't for a folder.
bool settle(int fd) { return ::fsync(fd) == 0 || errno == EINVAL || errno == ENOTSUP; }

Outcome<> write_all(int fd, ByteView bytes, const std::filesystem::path& file) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(fd, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return trouble(errno, "can't be written", file);
    bytes = bytes.subspan(static_cast<std::size_t>(n));
  }
  return {};
}

/// As many as there are, up to the span.
Outcome<std::size_t> read_some(int fd, std::span<std::uint8_t> out, const std::filesystem::path& file) {
  std::size_t have = 0;
  while (have < out.size()) {
    const ssize_t n = ::read(fd, out.data() + have, out.size() - have);
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return trouble(errno, "can't be read", file);
    if (n == 0) break;
    have += static_cast<std::size_t>(n);
  }
  return have;
}

constexpr std::size_t kPiece = 256 * 1024;
/// Between two of these a stick may have taken nothing to heart.
constexpr std::uint64_t kSettleEvery = 4 * 1024 * 1024;

tl::unexpected<Fault> no_folder(const std::filesystem::path& folder) {
  return fail(FaultCode::not_found, "the folder is not there", folder.string(), "put the stick in again, or choose another place");
}

/// Creates a file beside, of a name that nobody has, which goes into `name`; -1 and errno if it can't.
int create_beside(std::string& name, const std::filesystem::path& folder, const std::filesystem::path& file, mode_t mode) {
  for (int tries = 0; tries < 100; ++tries) {
    std::array<std::uint8_t, 6> chance;
    randombytes_buf(chance.data(), chance.size());
    name = (folder / ("." + file.filename().string() + ".part-" + to_hex(chance))).string();
    const int fd = ::open(name.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, mode);
    if (fd >= 0 || errno != EEXIST) return fd;
  }
  return -1;
}

Outcome<> settle_name(const std::filesystem::path& folder) {
  const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!directory || !settle(directory.get())) return trouble(errno, "can't be written", folder);
  return {};
}

/// Whole under its name, or nothing of it. `keep` is a mode to be taken over.
Outcome<> write_beside(const std::filesystem::path& file, mode_t mode, std::optional<mode_t> keep, const std::function<Outcome<>(const ByteSink&)>& write) {
  const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
  std::string beside;
  const Descriptor fd(create_beside(beside, folder, file, mode));
  if (!fd) return trouble(errno, "can't be written", file);
  if (keep) (void)::fchmod(fd.get(), *keep);  // some file systems of sticks have no modes
  const auto sink = [&](ByteView bytes) { return write_all(fd.get(), bytes, file); };
  Outcome<> done = write(sink);
  if (done && !settle(fd.get())) done = trouble(errno, "can't be written", file);
  if (done && ::rename(beside.c_str(), file.c_str()) != 0) done = trouble(errno, "can't be given its name", file);
  if (!done) {
    ::unlink(beside.c_str());
    return done;
  }
  return settle_name(folder);
}

/// A plain file with the same bytes, on the disk.
bool holds_the_same(int source, const std::filesystem::path& from, const std::filesystem::path& to) {
  const Descriptor there(::open(to.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
  struct stat info {};
  if (!there || ::fstat(there.get(), &info) != 0 || !S_ISREG(info.st_mode)) return false;
  Bytes ours(kPiece), theirs(kPiece);
  for (;;) {
    const auto here = read_some(source, ours, from);
    const auto other = read_some(there.get(), theirs, to);
    if (!here || !other || *here != *other || !std::equal(ours.begin(), ours.begin() + static_cast<std::ptrdiff_t>(*here), theirs.begin())) return false;
    if (*here == 0) return settle(there.get());
  }
}

}  // namespace

Outcome<> write_carried_file(const std::filesystem::path& file, bool replace, const std::function<Outcome<>(const ByteSink&)>& write) {
  std::error_code ignored;
  if (!replace && std::filesystem::exists(std::filesystem::symlink_status(file, ignored)))
    return fail(FaultCode::conflict, "there is a file of that name already", file.string(), "choose another name, or say that it may be replaced");
  return write_beside(file, 0600, {}, write);
}

Outcome<> write_open_file(const std::filesystem::path& named, ByteView content) {
  std::error_code no_link;
  const std::filesystem::path followed = std::filesystem::weakly_canonical(named, no_link);
  const bool link = std::filesystem::is_symlink(std::filesystem::symlink_status(named, no_link)) && !followed.empty();
  const std::filesystem::path& file = link ? followed : named;
  struct stat before {};
  const bool there = ::stat(file.c_str(), &before) == 0;
  // What this program writes to anyway (/dev/stdout) goes on there.
  for (const int own : {STDOUT_FILENO, STDERR_FILENO})
    if (struct stat out {}; there && ::fstat(own, &out) == 0 && out.st_dev == before.st_dev && out.st_ino == before.st_ino) return write_all(own, content, named);
  if (there && !S_ISREG(before.st_mode)) {
    const Descriptor fd(::open(file.c_str(), O_WRONLY | O_CLOEXEC | O_NOCTTY));
    return fd ? write_all(fd.get(), content, named) : Outcome<>(trouble(errno, "can't be written", named));
  }
  return write_beside(file, 0666, there ? std::optional<mode_t>(before.st_mode & 0777) : std::nullopt,
                      [&](const ByteSink& sink) { return sink(content); });
}

std::filesystem::path part_of_carried_file(const std::filesystem::path& file) {
  return file.parent_path() / ("." + file.filename().string() + ".part");
}

Outcome<> copy_carried_file(const std::filesystem::path& from, const std::filesystem::path& to,
                            const std::function<bool(std::uint64_t bytes)>& go_on) {
  std::error_code ignored;
  const std::filesystem::path folder = to.parent_path();
  if (!std::filesystem::is_directory(folder, ignored)) return no_folder(folder);
  const Descriptor source(::open(from.c_str(), O_RDONLY | O_CLOEXEC));
  if (!source) return trouble(errno, "can't be read", from);
  if (std::filesystem::exists(std::filesystem::symlink_status(to, ignored))) {
    // It has its name already if a cut came after that and before anybody could note it.
    if (!holds_the_same(source.get(), from, to)) return fail(FaultCode::conflict, "there is a file of that name already", to.string(), "choose another name");
    return settle_name(folder);
  }
  const std::filesystem::path part = part_of_carried_file(to);
  const Descriptor target(::open(part.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600));
  if (!target) return errno == ENOENT ? no_folder(folder) : trouble(errno, "can't be written", to);
  // What is there counts as far as it is the same: a stick that was pulled out may hold the length and not the bytes.
  Bytes ours(kPiece), theirs(kPiece);
  std::uint64_t same = 0;
  for (bool equal = true; equal;) {
    const auto here = read_some(source.get(), ours, from);
    if (!here) return fail(here.error());
    const auto there = read_some(target.get(), std::span(theirs).first(*here), to);
    equal = *here > 0 && there && *there == *here && std::equal(ours.begin(), ours.begin() + static_cast<std::ptrdiff_t>(*here), theirs.begin());
    if (equal) same += *here;
  }
  const auto offset = static_cast<off_t>(same);
  if (::ftruncate(target.get(), offset) != 0 || ::lseek(target.get(), offset, SEEK_SET) < 0) return trouble(errno, "can't be written", to);
  if (::lseek(source.get(), offset, SEEK_SET) < 0) return trouble(errno, "can't be read", from);
  for (std::uint64_t unsettled = 0;;) {
    if (go_on && !go_on(same)) return fail(FaultCode::refused, "stopped by hand", to.string(), "go on when it suits");
    const auto got = read_some(source.get(), ours, from);
    if (!got) return fail(got.error());
    if (*got == 0) break;
    if (auto done = write_all(target.get(), ByteView(ours).first(*got), to); !done) return done;
    same += *got;
    unsettled += *got;
    if (unsettled >= kSettleEvery) {
      if (!settle(target.get())) return trouble(errno, "can't be written", to);
      unsettled = 0;
    }
  }
  if (!settle(target.get())) return trouble(errno, "can't be written", to);
  if (::rename(part.c_str(), to.c_str()) != 0) return errno == ENOENT ? no_folder(folder) : trouble(errno, "can't be given its name", to);
  return settle_name(folder);
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
