// Session, continued: which books a tablet that plays the host has in common with a guest. What it gives to share, and what the guest
// shows that it has. Somebody who only knows the number of a book (an entry list names numbers) must not get it for that, nor learn that
// it is held: so offered heads count where their hash is that of a chain held here, and entries where they are the very bytes. Chains of
// the guest's own show nothing, because it can write them.

#include <algorithm>

#include "sync/exchange/session.h"

namespace weavelog {

bool Session::widen_shared() {
  if (!options_.shares) return true;
  std::vector<BookId> fresh = options_.shares(status_.peer.key);
  std::erase_if(fresh, [&](const BookId& book) { return options_.peers->in_scope(status_.peer_number, book); });
  if (fresh.empty()) return true;
  const auto widened = options_.peers->widen(status_.peer_number, fresh);
  if (!widened) close(widened.error());
  return widened.has_value();
}

bool Session::widen_offered(const std::vector<BookHeads>& theirs) {
  if (!options_.shares) return true;
  std::vector<BookId> fresh;
  for (const BookHeads& book : theirs)
    if (!options_.peers->in_scope(status_.peer_number, book.book) && options_.ledger->book(book.book) && shows_heads(book))
      fresh.push_back(book.book);
  if (fresh.empty()) return true;
  if (auto widened = options_.peers->widen(status_.peer_number, fresh); !widened) {
    close(widened.error());
    return false;
  }
  given_.insert(fresh.begin(), fresh.end());
  common_books().revisit(*options_.ledger, may_cross(), fresh);
  return true;
}

std::set<AuthorId> Session::own_authors() const {
  std::set<AuthorId> out;
  for (const KnownAuthor& author : options_.ledger->authors())
    if (author.card.key == status_.peer.key) out.insert(author.card.id());
  return out;
}

bool Session::shows_heads(const BookHeads& theirs) const {
  const Heads ours = options_.ledger->heads(theirs.book);
  const auto parted = options_.ledger->forked(theirs.book, theirs.heads);
  const auto own = own_authors();
  // What the guest alone wrote it has anyway.
  if (std::all_of(ours.begin(), ours.end(), [&](const Head& head) { return own.contains(head.author); })) return true;
  return std::any_of(theirs.heads.begin(), theirs.heads.end(), [&](const Head& head) {
    const auto mine = std::find_if(ours.begin(), ours.end(), [&](const Head& one) { return one.author == head.author; });
    return mine != ours.end() && !own.contains(head.author) && head.seq > 0 && head.seq <= mine->seq &&
           std::find(parted.begin(), parted.end(), head.author) == parted.end();
  });
}

bool Session::shows_entries(const Batch& batch, std::size_t book) const {
  const BookId& id = batch.books[book].id;
  const Heads ours = options_.ledger->heads(id);
  const auto own = own_authors();
  if (std::all_of(ours.begin(), ours.end(), [&](const Head& head) { return own.contains(head.author); })) return true;
  return std::any_of(batch.entries.begin(), batch.entries.end(), [&](const BatchEntry& entry) {
    if (entry.book != book || entry.author >= batch.authors.size()) return false;
    const AuthorId author = batch.authors[entry.author].id();
    if (own.contains(author)) return false;
    const auto held = options_.ledger->entry(id, author, entry.seq);
    return held && encode_entry(*held, author) == entry.body;
  });
}

}  // namespace weavelog
