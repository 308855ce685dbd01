#pragma once
// Which of the books that a peer brings come into its scope by that. Somebody who only knows the number of a book (an entry list names numbers)
// must not get it for that: so a book that is here and was not ticked does only if what comes of it are the very bytes that are held here. Chains of
// the peer's own show nothing, because it can write them, nor do those that came to a book which was here and not ticked: these were perhaps made
// up for that purpose.

#include <cstdint>
#include <functional>
#include <set>
#include <vector>

#include "core/log/batch.h"
#include "core/store/ledger.h"
#include "sync/exchange/peer_store.h"

namespace weavelog {

struct IncomingBooks {
  std::vector<BookId> fresh;         ///< come into the scope
  std::vector<std::uint32_t> apart;  ///< by their place in the batch: see PeerStore::keep_apart
};

/// Asked before the batch is taken in. Books of which `left_out` says so are passed over.
[[nodiscard]] IncomingBooks incoming_books(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const Batch& batch,
                                           const std::function<bool(const BookId&)>& left_out);

/// All that is held of the book is the peer's own, or what this very peer said of it, to the last entry: it learns nothing by it.
[[nodiscard]] bool has_all_anyway(const Ledger& ledger, const PeerStore& peers, std::int64_t peer, const PublicKey& key, const BookId& book);

/// Authors whose chains in a book show nothing when this peer has them.
[[nodiscard]] std::set<AuthorId> showing_nothing(const Ledger& ledger, const PeerStore& peers, const PublicKey& key, const BookId& book);

}  // namespace weavelog
