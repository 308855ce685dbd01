#pragma once
// Bytes that belong to a book and lie outside its log because they are large: pictures. Each is a file of the device's folder,
// `photos/BOOK/HASH`, named by the BLAKE2b-256 of its bytes, so that what is read is what was meant.

#include <cstdint>
#include <filesystem>
#include <functional>
#include <mutex>
#include <set>
#include <utility>
#include <vector>

#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/base/outcome.h"

namespace weavelog {

struct ContentBounds {
  std::uint64_t one = 8U << 20;     ///< bytes of one
  std::uint64_t all = 1024U << 20;  ///< of all together
};

/// What was made here stays until its book is forgotten; what was fetched makes room when there is too much, the least recently used first.
enum class ContentOrigin : std::uint8_t { made, fetched };

struct HeldContent {
  BookId book;
  Digest hash{};
  std::uint64_t size = 0;
};

/// Thread-safe within one program; a second program on the same folder is kept out by the ledger's lock.
class ContentFiles {
 public:
  explicit ContentFiles(std::filesystem::path folder, ContentBounds bounds = {});

  /// On the disk when it returns, under its name only once it is whole. Held already: nothing happens, but that what was fetched counts as
  /// made here from then on if it is made here too. Faults: bad_input (empty, too large), no_space (the disk is full; all that may make room
  /// has), io, refused.
  [[nodiscard]] Outcome<Digest> add(const BookId& book, ByteView bytes, ContentOrigin origin = ContentOrigin::made);
  /// Faults: not_found, damaged (the bytes are others than those that were stored; fetched ones are thrown away, to be fetched again), io.
  [[nodiscard]] Outcome<Bytes> read(const BookId& book, const Digest& hash);
  [[nodiscard]] bool holds(const BookId& book, const Digest& hash) const;

  /// A piece of a whole one, unchecked: whoever puts the pieces together checks them against the hash. No bytes: `offset` lies at its end or
  /// beyond. Faults: not_found, damaged, io.
  struct Piece {
    std::uint64_t size = 0;  ///< of the whole
    Bytes bytes;
  };
  [[nodiscard]] Outcome<Piece> read_piece(const BookId& book, const Digest& hash, std::uint64_t offset, std::size_t most) const;
  /// What was made here.
  [[nodiscard]] std::vector<HeldContent> made() const;
  /// Every whole one, of either origin.
  [[nodiscard]] std::vector<HeldContent> all() const;
  /// Rises with every one that is made here.
  [[nodiscard]] std::uint64_t made_count() const;
  /// True if so many bytes fit without throwing anything away.
  [[nodiscard]] bool has_room(std::uint64_t bytes) const;
  [[nodiscard]] const ContentBounds& bounds() const { return bounds_; }

  /// One at a time fetches a content: false if somebody does already. Whoever got it lets go of it.
  [[nodiscard]] bool claim(const BookId& book, const Digest& hash);
  void let_go(const BookId& book, const Digest& hash);

  /// How much has come of what is being fetched: where to go on. 0 if nothing has, or it is whole.
  [[nodiscard]] std::uint64_t part_held(const BookId& book, const Digest& hash) const;
  /// Bytes that follow those held. True once it is whole, which is checked: other bytes than those meant are thrown away. Faults: bad_input (not
  /// where it goes on, beyond `size`, a size that is none), malformed (whole, and other bytes than those meant), no_space, io.
  [[nodiscard]] Outcome<bool> add_part(const BookId& book, const Digest& hash, std::uint64_t size, std::uint64_t offset, ByteView bytes);

  /// What was fetched of it, whole or in part, is thrown away.
  void drop_fetched(const BookId& book, const Digest& hash);

  /// Everything of a book is erased: it was forgotten.
  void forget(const BookId& book);
  /// The same for each book of which something lies here and `gone` holds: what a crash between erasing a book and its files left.
  void sweep(const std::function<bool(const BookId&)>& gone);
  /// Bytes of all.
  [[nodiscard]] std::uint64_t total() const;

 private:
  [[nodiscard]] std::filesystem::path file(const BookId& book, const Digest& hash, ContentOrigin origin) const;
  [[nodiscard]] std::filesystem::path part_file(const BookId& book, const Digest& hash) const;
  /// Fetched files but `keep` go until so many bytes more fit.
  [[nodiscard]] Outcome<> make_room(std::uint64_t bytes, const std::filesystem::path& keep);
  [[nodiscard]] Outcome<Digest> add_locked(const BookId& book, ByteView bytes, ContentOrigin origin);
  [[nodiscard]] std::uint64_t total_locked() const;

  std::filesystem::path folder_;
  ContentBounds bounds_;
  mutable std::mutex lock_;
  std::set<std::pair<BookId, Digest>> claimed_;
  std::uint64_t made_count_ = 0;
};

}  // namespace weavelog
