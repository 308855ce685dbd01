#include "core/log/batch.h"

#include <map>
#include <utility>

namespace weavelog {
namespace {

/// Chains whose first entry is in the batch: their hashes need nothing from before.
class BegunChains {
 public:
  BegunChains(const Batch& batch, const std::vector<AuthorId>& authors) : batch_(batch), authors_(authors) {}

  /// The chain's hash up to the entry, if nothing is lacking before it.
  std::optional<Digest> add(const BatchEntry& entry, const Digest& body) {
    const auto [found, fresh] = chains_.try_emplace({entry.book, entry.author});
    Chain& chain = found->second;
    if (fresh) {
      const BatchBook& book = batch_.books[entry.book];
      chain.hash = chain_start(book.id, book.kind, authors_[entry.author]);
    }
    if (entry.seq != chain.last + 1) return std::nullopt;
    chain.last = entry.seq;
    return chain.hash = chain_next(chain.hash, body);
  }

  /// The hash that the seal signs, if it is that of such a chain up to its last entry here and beyond.
  [[nodiscard]] std::optional<Digest> signed_by(const Seal& seal) {
    const auto found = chains_.find({seal.book, seal.author});
    if (found == chains_.end()) return std::nullopt;
    Chain& chain = found->second;
    if (chain.last == 0 || chain.weighed || seal.seq != chain.last + seal.tail.size()) return std::nullopt;
    chain.weighed = true;  // one signature a chain: more would let a sender have us check for seconds
    Digest hash = chain.hash;
    for (const Digest& body : seal.tail) hash = chain_next(hash, body);
    if (!verify(batch_.authors[seal.author].key, seal_message(seal.seq, hash), seal.signature)) return std::nullopt;
    return hash;
  }

 private:
  struct Chain {
    std::uint64_t last = 0;
    Digest hash{};
    bool weighed = false;
  };
  const Batch& batch_;
  const std::vector<AuthorId>& authors_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, Chain> chains_;
};

}  // namespace

void read_ahead(Batch& batch) {
  std::size_t bytes = 0;
  for (const BatchEntry& entry : batch.entries) {
    if (entry.author >= batch.authors.size() || entry.book >= batch.books.size()) return;  // the ledger says what is wrong
    bytes += entry.body.size();
  }
  if (bytes > kMostReadAhead) return;
  std::vector<AuthorId> authors;
  authors.reserve(batch.authors.size());
  for (const AuthorCard& author : batch.authors) authors.push_back(author.id());
  ReadAhead ahead;
  ahead.bodies.reserve(batch.entries.size());
  BegunChains chains(batch, authors);
  for (const BatchEntry& entry : batch.entries) {
    ReadAhead::Body& body = ahead.bodies.emplace_back();
    body.digest = digest_of(entry.body);
    if (auto decoded = decode_entry(entry.body, authors[entry.author])) body.entry = std::move(*decoded);
    body.chain = chains.add(entry, body.digest);
  }
  ahead.signs.reserve(batch.seals.size());
  for (const Seal& seal : batch.seals) ahead.signs.push_back(chains.signed_by(seal));
  batch.ahead = std::move(ahead);
}

}  // namespace weavelog
