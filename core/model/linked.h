#pragma once
// Which books are one person's, by what people said of them (core/model/link.h).

#include <string>
#include <vector>

#include "core/model/choices.h"
#include "core/store/ledger.h"

namespace weavelog {

struct LinkedBooks {
  std::vector<BookId> here;       ///< held by this device, the asked one included; oldest first
  std::vector<BookId> elsewhere;  ///< linked, but not (or no longer) held here
};

/// Follows what is said from book to book, whichever of two holds it; chains and circles end. Where one of two books says that they are
/// different people's they are not followed into each other, whatever the other one says: nothing is shown as somebody's on half a word.
[[nodiscard]] LinkedBooks linked_books(const Ledger& ledger, const BookId& book);

/// These books and all held here that are linked to one of them, each once: those given first, each followed by its own. What is done for a
/// person (sent along, agreed to) is done for all of them.
[[nodiscard]] std::vector<BookId> with_linked(const Ledger& ledger, const std::vector<BookId>& books);

/// Another name of somebody whose book is held here.
struct OtherNameRow {
  BookId book;
  std::string family_name;
  std::string given_name;
  std::string native_name;
};
/// Of all players, in no order.
[[nodiscard]] std::vector<OtherNameRow> other_names(const Ledger& ledger);

/// What one book says of another one.
struct SaidLink {
  BookId book, other;
  LinkSaid said{};
};
/// All that any book here says, in the order of the tables.
[[nodiscard]] std::vector<SaidLink> said_links(const Ledger& ledger);

/// What is said of two books, by either; other_person if they contradict each other.
[[nodiscard]] LinkSaid said_of(const Ledger& ledger, const BookId& one, const BookId& other);

/// Every book that is linked to another one, in groups; books that stand alone are in none.
[[nodiscard]] std::vector<LinkedBooks> all_linked_books(const Ledger& ledger);

}  // namespace weavelog
