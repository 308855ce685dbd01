#pragma once
// Entry: one user action, atomic. Encoded once; those very bytes are hashed, stored, relayed and sent.

#include <compare>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/base/clock.h"
#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/base/outcome.h"
#include "core/log/registry.h"
#include "core/log/value.h"

namespace weavelog {

/// Names one write of one entry.
struct Dot {
  AuthorId author;
  std::uint64_t seq = 0;    ///< of the entry, from 1
  std::uint32_t index = 0;  ///< of the write in the entry, from 0
  auto operator<=>(const Dot&) const = default;
};

/// One field change. `value` monostate clears the field.
struct Write {
  EntityId entity;
  EntityKind kind{};
  FieldTag tag{};
  Value value;
  std::vector<Dot> replaces;
  bool operator==(const Write&) const = default;
};

/// The body of an entry. Its book and author are not in the bytes: they are the context in which it is stored and sent,
/// and the chain hash binds them.
struct Entry {
  std::uint64_t seq = 0;  ///< contiguous from 1 per book and author
  Stamp stamp;
  std::uint32_t schema = 0;
  ActionKind action{};
  std::vector<Write> writes;
  bool operator==(const Entry&) const = default;
};

/// Bounds that every entry keeps; more is malformed.
inline constexpr std::size_t kMaxEntryBytes = 256 * 1024;
inline constexpr std::size_t kMaxWritesPerEntry = 4096;

/// The bytes of an entry (format 1, see DEVELOPERS.md). Writes of one entity should stand together: they share its id.
[[nodiscard]] Bytes encode_entry(const Entry& entry, const AuthorId& author);
/// Everything is checked before anything is allocated; left-over bytes are malformed.
[[nodiscard]] Outcome<Entry> decode_entry(ByteView body, const AuthorId& author);

/// The action of an entry, read from its head alone. Nothing if that is cut off or of a later format.
[[nodiscard]] std::optional<ActionKind> action_in(ByteView body);

/// The hash chain of one author in one book: hash_0 binds book, kind and author; hash_n = H(hash_n-1, H(body_n)).
[[nodiscard]] Digest chain_start(const BookId& book, BookKind kind, const AuthorId& author);
[[nodiscard]] Digest chain_next(const Digest& previous, const Digest& body_digest);
/// What a seal signs: the chain's hash at seq.
[[nodiscard]] Bytes seal_message(std::uint64_t seq, const Digest& chain_hash);

}  // namespace weavelog
