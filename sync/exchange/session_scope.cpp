// Session, continued: which books a guest, or a tablet that plays the host, has in common with the other. What it gives to share, and what
// the other shows that it has (incoming_books.h); who only knows the number of a book does not even learn that it is held. A book that is here, not
// ticked, and of which the peer shows nothing is kept apart: what the peer says of it is taken in, and both compare that much of it as if nothing
// else were here, so that they agree and the peer does not learn more.

#include <algorithm>
#include <unordered_set>

#include "core/base/salted_hash.h"
#include "core/log/head_index.h"
#include "sync/exchange/incoming_books.h"
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

bool Session::shows_heads(const BookHeads& theirs) const {
  if (has_all_anyway(*options_.ledger, *options_.peers, status_.peer_number, status_.peer.key, theirs.book)) return true;
  const Heads ours = options_.ledger->heads(theirs.book);
  const HeadIndex index(ours);
  const auto found = options_.ledger->forked(theirs.book, theirs.heads);
  const std::unordered_set<AuthorId, SaltedIdHash> parted(found.begin(), found.end());
  const auto nothing = showing_nothing(*options_.ledger, *options_.peers, status_.peer.key, theirs.book);
  return std::any_of(theirs.heads.begin(), theirs.heads.end(), [&](const Head& head) {
    const Head* mine = index.find(head.author);
    return mine != nullptr && !nothing.contains(head.author) && head.seq > 0 && head.seq <= mine->seq && !parted.contains(head.author);
  });
}

bool Session::kept_apart(const BookId& book) const {
  return apart_.contains(book) && !options_.peers->in_scope(status_.peer_number, book);
}

Heads Session::told_heads(const BookId& book) const { return kept_apart(book) ? apart_.at(book) : options_.ledger->heads(book); }

}  // namespace weavelog
