#include "sync/exchange/content_files.h"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>
#include <vector>

#include "core/base/bytes.h"
#include "core/base/descriptor.h"

namespace weavelog {
namespace {

namespace fs = std::filesystem;

constexpr const char* kFetched = ".fetched";
constexpr const char* kPart = ".part";

tl::unexpected<Fault> trouble(int error, const fs::path& file) {
  const std::string text = "a picture can't be kept: " + std::system_category().message(error);
  if (error == ENOSPC || error == EDQUOT) return fail(FaultCode::no_space, text, file.string(), "free some space and try again");
  if (error == EACCES || error == EPERM || error == EROFS) return fail(FaultCode::refused, text, file.string(), "look at who owns the folder");
  return fail(FaultCode::io, text, file.string(), "look at the disk and try again");
}

Outcome<> make_own_folder(const fs::path& folder) {
  std::error_code error;
  fs::create_directories(folder, error);
  if (!error) fs::permissions(folder, fs::perms::owner_all, error);
  if (error) return trouble(error.value(), folder);
  return {};
}

Outcome<> write_all(int fd, ByteView bytes, const fs::path& file) {
  while (!bytes.empty()) {
    const ssize_t n = ::write(fd, bytes.data(), bytes.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return trouble(errno, file);
    bytes = bytes.subspan(static_cast<std::size_t>(n));
  }
  return {};
}

Outcome<> settle(const fs::path& folder) {
  const Descriptor fd(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!fd || ::fsync(fd.get()) != 0) return trouble(errno, folder);
  return {};
}

/// Whole under its name, or not there.
Outcome<> write_whole(const fs::path& file, ByteView bytes) {
  std::string beside = (file.parent_path() / ".new-XXXXXX").string();
  const Descriptor fd(::mkostemp(beside.data(), O_CLOEXEC));  // mode 0600
  if (!fd) return trouble(errno, file);
  Outcome<> done = write_all(fd.get(), bytes, file);
  if (done && ::fsync(fd.get()) != 0) done = trouble(errno, file);
  if (done && ::rename(beside.c_str(), file.c_str()) != 0) done = trouble(errno, file);
  if (!done) {
    ::unlink(beside.c_str());
    return done;
  }
  return settle(file.parent_path());
}

Outcome<Bytes> read_whole(const fs::path& file, std::uint64_t most) {
  const Descriptor fd(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW));
  struct stat info {};
  if (!fd || ::fstat(fd.get(), &info) != 0) return trouble(errno, file);
  if (!S_ISREG(info.st_mode) || info.st_size < 0 || static_cast<std::uint64_t>(info.st_size) > most)
    return fail(FaultCode::damaged, "is no picture that was stored here", file.string(), "fetch it again, or add it again");
  Bytes out(static_cast<std::size_t>(info.st_size));
  std::size_t done = 0;
  while (done < out.size()) {
    const ssize_t n = ::read(fd.get(), out.data() + done, out.size() - done);
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return trouble(errno, file);
    if (n == 0) break;
    done += static_cast<std::size_t>(n);
  }
  out.resize(done);
  return out;
}

bool is_file(const fs::path& file) {
  std::error_code ignored;
  return fs::is_regular_file(fs::symlink_status(file, ignored));
}

/// Every file below the folder, nothing that is a link.
std::vector<fs::path> files_below(const fs::path& folder) {
  std::vector<fs::path> out;
  std::error_code error;
  for (fs::recursive_directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (is_file(at->path())) out.push_back(at->path());
  return out;
}

std::uint64_t size_of(const fs::path& file) {
  std::error_code error;
  const auto size = fs::file_size(file, error);
  return error ? 0 : size;
}

/// Nothing if a file of that name is no content.
std::optional<HeldContent> named(const fs::path& file, const std::string& name) {
  HeldContent held;
  const auto book = BookId::from_hex(file.parent_path().filename().string());
  if (!book || !from_hex(name, held.hash)) return std::nullopt;
  held.book = *book;
  held.size = size_of(file);
  return held;
}

}  // namespace

ContentFiles::ContentFiles(fs::path folder, ContentBounds bounds) : folder_(std::move(folder)), bounds_(bounds) {}

fs::path ContentFiles::file(const BookId& book, const Digest& hash, ContentOrigin origin) const {
  return folder_ / book.hex() / (to_hex(hash) + (origin == ContentOrigin::fetched ? kFetched : ""));
}

fs::path ContentFiles::part_file(const BookId& book, const Digest& hash) const {
  return folder_ / book.hex() / (to_hex(hash) + kPart);
}

std::uint64_t ContentFiles::total_locked() const {
  std::uint64_t sum = 0;
  for (const fs::path& one : files_below(folder_)) sum += size_of(one);
  return sum;
}

std::uint64_t ContentFiles::total() const {
  const std::lock_guard guard(lock_);
  return total_locked();
}

Outcome<> ContentFiles::make_room(std::uint64_t bytes, const fs::path& keep) {
  std::uint64_t sum = total_locked();
  if (sum + bytes <= bounds_.all) return {};
  std::vector<std::pair<fs::file_time_type, fs::path>> fetched;
  for (const fs::path& one : files_below(folder_)) {
    if (one == keep || (one.extension() != kFetched && one.extension() != kPart)) continue;
    std::error_code ignored;
    fetched.emplace_back(fs::last_write_time(one, ignored), one);
  }
  std::sort(fetched.begin(), fetched.end());
  for (const auto& [used, one] : fetched) {
    if (sum + bytes <= bounds_.all) break;
    const std::uint64_t size = size_of(one);
    std::error_code error;
    if (fs::remove(one, error) && !error) sum -= std::min(sum, size);
  }
  if (sum + bytes <= bounds_.all) return {};
  return fail(FaultCode::no_space, "the pictures of this device have reached their bound", folder_.string(),
              "forget players who are done with, or hand the pictures on");
}

Outcome<Digest> ContentFiles::add(const BookId& book, ByteView bytes, ContentOrigin origin) {
  const std::lock_guard guard(lock_);
  return add_locked(book, bytes, origin);
}

Outcome<Digest> ContentFiles::add_locked(const BookId& book, ByteView bytes, ContentOrigin origin) {
  if (bytes.empty()) return fail(FaultCode::bad_input, "the picture is empty", {}, "choose another file");
  if (bytes.size() > bounds_.one)
    return fail(FaultCode::bad_input, "the picture is too large", std::to_string(bytes.size()) + " bytes",
                "make it smaller: " + std::to_string(bounds_.one >> 20) + " MiB at most");
  const Digest hash = digest_of(bytes);
  const fs::path made = file(book, hash, ContentOrigin::made), fetched = file(book, hash, ContentOrigin::fetched);
  if (is_file(made) || (origin == ContentOrigin::fetched && is_file(fetched))) return hash;
  if (is_file(fetched)) {
    if (::rename(fetched.c_str(), made.c_str()) != 0) return trouble(errno, made);
    if (auto settled = settle(made.parent_path()); !settled) return fail(settled.error());
    ++made_count_;
    return hash;
  }
  if (auto room = make_room(bytes.size(), {}); !room) return fail(room.error());
  if (auto folder = make_own_folder(folder_); !folder) return fail(folder.error());
  if (auto folder = make_own_folder(made.parent_path()); !folder) return fail(folder.error());
  if (auto written = write_whole(origin == ContentOrigin::made ? made : fetched, bytes); !written) return fail(written.error());
  if (origin == ContentOrigin::made) ++made_count_;
  return hash;
}

Outcome<Bytes> ContentFiles::read(const BookId& book, const Digest& hash) {
  const std::lock_guard guard(lock_);
  for (const ContentOrigin origin : {ContentOrigin::made, ContentOrigin::fetched}) {
    const fs::path held = file(book, hash, origin);
    if (!is_file(held)) continue;
    auto bytes = read_whole(held, bounds_.one);
    if (bytes && digest_of(*bytes) == hash) {
      std::error_code ignored;
      fs::last_write_time(held, fs::file_time_type::clock::now(), ignored);  // used now
      return bytes;
    }
    if (!bytes && bytes.error().code != FaultCode::damaged) return bytes;
    if (origin == ContentOrigin::fetched) {
      std::error_code ignored;
      fs::remove(held, ignored);
    }
    return fail(FaultCode::damaged, "the picture is not what was stored", held.string(),
                origin == ContentOrigin::fetched ? "fetch it again" : "add it again from where it came");
  }
  return fail(FaultCode::not_found, "the picture is not on this device", to_hex(hash), "fetch it from a device that has it");
}

bool ContentFiles::holds(const BookId& book, const Digest& hash) const {
  const std::lock_guard guard(lock_);
  return is_file(file(book, hash, ContentOrigin::made)) || is_file(file(book, hash, ContentOrigin::fetched));
}

Outcome<ContentFiles::Piece> ContentFiles::read_piece(const BookId& book, const Digest& hash, std::uint64_t offset, std::size_t most) const {
  const std::lock_guard guard(lock_);
  for (const ContentOrigin origin : {ContentOrigin::made, ContentOrigin::fetched}) {
    const fs::path held = file(book, hash, origin);
    if (!is_file(held)) continue;
    const Descriptor fd(::open(held.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW));
    struct stat info {};
    if (!fd || ::fstat(fd.get(), &info) != 0) return trouble(errno, held);
    if (!S_ISREG(info.st_mode) || info.st_size <= 0 || static_cast<std::uint64_t>(info.st_size) > bounds_.one)
      return fail(FaultCode::damaged, "is no picture that was stored here", held.string(), "fetch it again, or add it again");
    Piece piece;
    piece.size = static_cast<std::uint64_t>(info.st_size);
    if (offset >= piece.size) return piece;
    piece.bytes.resize(static_cast<std::size_t>(std::min<std::uint64_t>(most, piece.size - offset)));
    std::size_t done = 0;
    while (done < piece.bytes.size()) {
      const ssize_t n = ::pread(fd.get(), piece.bytes.data() + done, piece.bytes.size() - done, static_cast<off_t>(offset + done));
      if (n < 0 && errno == EINTR) continue;
      if (n < 0) return trouble(errno, held);
      if (n == 0) return fail(FaultCode::damaged, "the picture is not what was stored", held.string(), "add it again from where it came");
      done += static_cast<std::size_t>(n);
    }
    return piece;
  }
  return fail(FaultCode::not_found, "the picture is not on this device", to_hex(hash), "fetch it from a device that has it");
}

std::vector<HeldContent> ContentFiles::made() const {
  const std::lock_guard guard(lock_);
  std::vector<HeldContent> out;
  for (const fs::path& one : files_below(folder_))
    if (const auto held = named(one, one.filename().string())) out.push_back(*held);
  return out;
}

std::vector<HeldContent> ContentFiles::all() const {
  const std::lock_guard guard(lock_);
  std::vector<HeldContent> out;
  for (const fs::path& one : files_below(folder_)) {
    const bool fetched = one.extension() == kFetched;
    if (const auto held = named(one, (fetched ? one.stem() : one.filename()).string())) out.push_back(*held);
  }
  return out;
}

std::uint64_t ContentFiles::made_count() const {
  const std::lock_guard guard(lock_);
  return made_count_;
}

bool ContentFiles::has_room(std::uint64_t bytes) const {
  const std::lock_guard guard(lock_);
  return bytes <= bounds_.all && total_locked() <= bounds_.all - bytes;
}

bool ContentFiles::claim(const BookId& book, const Digest& hash) {
  const std::lock_guard guard(lock_);
  return claimed_.emplace(book, hash).second;
}

void ContentFiles::let_go(const BookId& book, const Digest& hash) {
  const std::lock_guard guard(lock_);
  claimed_.erase({book, hash});
}

void ContentFiles::drop_fetched(const BookId& book, const Digest& hash) {
  const std::lock_guard guard(lock_);
  std::error_code ignored;
  fs::remove(part_file(book, hash), ignored);
  fs::remove(file(book, hash, ContentOrigin::fetched), ignored);
  fs::remove(folder_ / book.hex(), ignored);  // if nothing else is in it
}

std::uint64_t ContentFiles::part_held(const BookId& book, const Digest& hash) const {
  const std::lock_guard guard(lock_);
  const fs::path part = part_file(book, hash);
  return is_file(part) ? size_of(part) : 0;
}

Outcome<bool> ContentFiles::add_part(const BookId& book, const Digest& hash, std::uint64_t size, std::uint64_t offset, ByteView bytes) {
  const std::lock_guard guard(lock_);
  const fs::path part = part_file(book, hash);
  const std::uint64_t held = is_file(part) ? size_of(part) : 0;
  if (size == 0 || size > bounds_.one || bytes.empty() || offset != held || bytes.size() > size - std::min(size, offset))
    return fail(FaultCode::bad_input, "this is not the part of the picture that was asked for", to_hex(hash), "ask again from where it goes on");
  if (auto room = make_room(bytes.size(), part); !room) return fail(room.error());
  if (auto folder = make_own_folder(folder_); !folder) return fail(folder.error());
  if (auto folder = make_own_folder(part.parent_path()); !folder) return fail(folder.error());
  {
    const Descriptor fd(::open(part.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC | O_NOFOLLOW, 0600));
    if (!fd) return trouble(errno, part);
    if (auto written = write_all(fd.get(), bytes, part); !written) return fail(written.error());
  }
  if (offset + bytes.size() < size) return false;
  auto whole = read_whole(part, bounds_.one);
  std::error_code ignored;
  fs::remove(part, ignored);
  if (!whole) return fail(whole.error());
  if (digest_of(*whole) != hash)
    return fail(FaultCode::malformed, "the picture that came is another one than was asked for", to_hex(hash), "ask another device for it");
  if (auto added = add_locked(book, *whole, ContentOrigin::fetched); !added) return fail(added.error());
  return true;
}

void ContentFiles::forget(const BookId& book) {
  const std::lock_guard guard(lock_);
  std::error_code ignored;
  const fs::path own = folder_ / book.hex();
  // What freed blocks keep is beyond us, but the bytes that we can reach are written over first.
  for (const fs::path& one : files_below(own)) {
    const Descriptor fd(::open(one.c_str(), O_WRONLY | O_CLOEXEC | O_NOFOLLOW));
    const std::uint64_t size = size_of(one);
    if (fd && write_all(fd.get(), Bytes(static_cast<std::size_t>(std::min<std::uint64_t>(size, bounds_.one))), one)) (void)::fsync(fd.get());
  }
  fs::remove_all(own, ignored);
}

void ContentFiles::sweep(const std::function<bool(const BookId&)>& gone) {
  std::vector<BookId> books;
  std::error_code error;
  for (fs::directory_iterator at(folder_, error), end; !error && at != end; at.increment(error))
    if (const auto book = BookId::from_hex(at->path().filename().string())) books.push_back(*book);
  for (const BookId& book : books)
    if (gone(book)) forget(book);
}

}  // namespace weavelog
