#pragma once
// Batch: a run of entries on its way between two ledgers, in an order that respects causality, with the seals that prove it.

#include <cstdint>
#include <optional>
#include <vector>

#include "core/log/author.h"
#include "core/log/entry.h"

namespace weavelog {

/// An author's newest known sequence number in one book, with the chain's hash there.
struct Head {
  AuthorId author;
  std::uint64_t seq = 0;
  Digest hash{};
  auto operator<=>(const Head&) const = default;
};

/// Proof of a chain up to its last entry in the batch: the author's signature over the hash at `seq`, and, where that lies
/// beyond the batch's last entry of the chain, the digests of the bodies in between, so that the receiver can reach it.
struct Seal {
  std::uint32_t book = 0;    ///< index into Batch::books
  std::uint32_t author = 0;  ///< index into Batch::authors
  std::uint64_t seq = 0;
  Signature signature{};
  std::vector<Digest> tail;
  bool operator==(const Seal&) const = default;
};
/// Digests in a seal's tail at most; more are malformed. Authors seal at every 1024th entry; some of earlier versions did not.
inline constexpr std::size_t kMaxTail = 8192;

struct BatchBook {
  BookId id;
  BookKind kind{};
  bool operator==(const BatchBook&) const = default;
};

struct BatchEntry {
  std::uint32_t book = 0;
  std::uint32_t author = 0;
  std::uint64_t seq = 0;
  Bytes body;
  bool operator==(const BatchEntry&) const = default;
};

/// What can be told of a batch without a ledger, worked out before its turn. Whoever changes the batch empties this.
struct ReadAhead {
  struct Body {
    Digest digest{};
    std::optional<Digest> chain;  ///< the chain's hash up to it, where the chain begins in the batch and has no gap before it
    std::optional<Entry> entry;   ///< none if the body is malformed
  };
  std::vector<Body> bodies;                  ///< of each of Batch::entries, or none at all
  std::vector<std::optional<Digest>> signs;  ///< of each of Batch::seals: the chain's hash that its signature was found to be good for
};

/// Proves itself: every chain that occurs in `entries` has one seal at or beyond its last entry here.
struct Batch {
  std::vector<AuthorCard> authors;
  std::vector<BatchBook> books;
  std::vector<BatchEntry> entries;
  std::vector<Seal> seals;
  ReadAhead ahead;  ///< filled or empty; no part of what is said
  [[nodiscard]] bool empty() const { return entries.empty(); }
  bool operator==(const Batch& other) const {
    return authors == other.authors && books == other.books && entries == other.entries && seals == other.seals;
  }
};

/// Fills `ahead`, on whatever thread, so that Ledger::ingest need not do that work inside its transaction: decodes and hashes every body,
/// and checks the signatures over chains that begin in the batch. Batches of more than kMostReadAhead bytes are left as they are: what is
/// decoded takes several times the room, and honest senders make smaller ones.
void read_ahead(Batch& batch);
inline constexpr std::size_t kMostReadAhead = 512 * 1024;

}  // namespace weavelog
