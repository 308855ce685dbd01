#include "sync/exchange/incoming_books.h"

#include <algorithm>

namespace weavelog {
namespace {

std::set<AuthorId> authors_with(const Ledger& ledger, const PublicKey& key) {
  std::set<AuthorId> out;
  for (const KnownAuthor& author : ledger.authors())
    if (author.card.key == key) out.insert(author.card.id());
  return out;
}

bool shows_entries(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const Batch& batch, std::uint32_t book) {
  const BookId& id = batch.books[book].id;
  if (has_all_anyway(ledger, peers, peer, key, id)) return true;
  const auto nothing = showing_nothing(ledger, peers, key, id);
  return std::any_of(batch.entries.begin(), batch.entries.end(), [&](const BatchEntry& entry) {
    if (entry.book != book || entry.author >= batch.authors.size()) return false;
    const AuthorId author = batch.authors[entry.author].id();
    return !nothing.contains(author) && ledger.holds(id, author, entry.seq, entry.body);
  });
}

}  // namespace

std::set<AuthorId> showing_nothing(const Ledger& ledger, const PeerStore& peers, const PublicKey& key, const BookId& book) {
  std::set<AuthorId> out = peers.apart_authors(book);
  out.merge(authors_with(ledger, key));
  return out;
}

bool has_all_anyway(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const BookId& book) {
  const auto own = authors_with(ledger, key);
  const auto apart = peers.apart(peer);
  const auto found = apart.find(book);
  const Heads said = found == apart.end() ? Heads{} : found->second;
  const Heads ours = ledger.heads(book);
  return std::all_of(ours.begin(), ours.end(), [&](const Head& head) {
    return own.contains(head.author) || std::find(said.begin(), said.end(), head) != said.end();
  });
}

IncomingBooks incoming_books(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const Batch& batch,
                             const std::function<bool(const BookId&)>& left_out) {
  IncomingBooks out;
  std::vector<bool> used(batch.books.size());
  for (const BatchEntry& entry : batch.entries)
    if (entry.book < used.size()) used[entry.book] = true;
  for (std::uint32_t i = 0; i < batch.books.size(); ++i) {
    if (!used[i]) continue;
    const BookId& book = batch.books[i].id;
    if (left_out(book) || peers.in_scope(peer, book)) continue;
    if (!ledger.book(book) || shows_entries(ledger, peers, peer, key, batch, i)) {
      out.fresh.push_back(book);
    } else {
      out.apart.push_back(i);
    }
  }
  return out;
}

}  // namespace weavelog
