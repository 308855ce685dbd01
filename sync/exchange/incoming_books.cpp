#include "sync/exchange/incoming_books.h"

#include <algorithm>

namespace weavelog {
namespace {

bool shows_entries(const Ledger& ledger, const PeerStore& peers, const PublicKey& key, const Batch& batch, std::uint32_t book) {
  const BookId& id = batch.books[book].id;
  const Heads ours = ledger.heads(id);
  const auto nothing = showing_nothing(ledger, peers, key, id);
  // What the peer alone wrote, or said, it has anyway.
  if (std::all_of(ours.begin(), ours.end(), [&](const Head& head) { return nothing.contains(head.author); })) return true;
  return std::any_of(batch.entries.begin(), batch.entries.end(), [&](const BatchEntry& entry) {
    if (entry.book != book || entry.author >= batch.authors.size()) return false;
    const AuthorId author = batch.authors[entry.author].id();
    if (nothing.contains(author)) return false;
    const auto held = ledger.entry(id, author, entry.seq);
    return held && encode_entry(*held, author) == entry.body;
  });
}

}  // namespace

std::set<AuthorId> showing_nothing(const Ledger& ledger, const PeerStore& peers, const PublicKey& key, const BookId& book) {
  std::set<AuthorId> out = peers.apart_authors(book);
  for (const KnownAuthor& author : ledger.authors())
    if (author.card.key == key) out.insert(author.card.id());
  return out;
}

IncomingBooks incoming_books(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const Batch& batch,
                             const std::function<bool(const BookId&)>& left_out) {
  IncomingBooks out;
  for (std::uint32_t i = 0; i < batch.books.size(); ++i) {
    const BookId& book = batch.books[i].id;
    if (left_out(book) || peers.in_scope(peer, book)) continue;
    if (!ledger.book(book) || shows_entries(ledger, peers, key, batch, i)) {
      out.fresh.push_back(book);
    } else {
      out.apart.push_back(i);
    }
  }
  return out;
}

}  // namespace weavelog
