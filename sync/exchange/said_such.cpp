#include "sync/exchange/said_such.h"

namespace weavelog {

std::uint64_t said_such(const Ledger& ledger, const BookId& book, const AuthorId& author, std::uint64_t head, const std::function<bool(ActionKind)>& may) {
  for (std::uint64_t at = head; at > 0; --at)
    if (const auto entry = ledger.entry(book, author, at); entry && !may(entry->action)) return at;
  return 0;
}

}  // namespace weavelog
