#pragma once
// One person's books: made at two events that did not know of each other, and told to be one person's by somebody. Nothing is copied from one
// to the other; they are shown together, and parting them leaves each as it was.

#include <string>
#include <string_view>
#include <vector>

#include "core/desk/player_record.h"
#include "core/model/linked.h"

namespace weavelog {

struct PersonBooks {
  std::vector<PlayerRecord> records;  ///< the book asked for first, then those with the newest jobs first
  std::vector<BookId> elsewhere;      ///< linked, but not held here
};
/// Faults: not_found.
[[nodiscard]] Outcome<PersonBooks> load_person(const Ledger& ledger, const BookId& book);

/// The one in which the newest job stands: where the player is taken up again. That asked for, if there is none.
[[nodiscard]] BookId newest_book(const PersonBooks& books);

/// All of them as if they were one, for reading: history in order, the last time. Its book and person are those of the book asked for; what it
/// holds belongs to several books (EntityState::book), so nothing may be written by it.
[[nodiscard]] PlayerRecord together(const PersonBooks& books);

/// What one book answers to something in which two of them differ.
struct BookAnswer {
  BookId book;
  EntityId entity;
  Value value;
  UnixMs at = 0;  ///< when it was written
};
struct BookDifference {
  FieldTag field{};
  std::string_view name;  ///< of the field
  std::string subject;    ///< the setup's name; "" for the person
  std::vector<BookAnswer> answers;  ///< one a book that says something, newest first
};
/// Fields of the person, the name excepted (it is known by both), and of setups that are called alike. A book that says nothing about a field
/// differs from none.
[[nodiscard]] std::vector<BookDifference> differences(const PersonBooks& books);
/// Makes every book that answers say this; one draft a book that does not yet. Faults: bad_input if the value is of another kind than the
/// answers; not_found if a book has changed since.
[[nodiscard]] Outcome<std::vector<Draft>> settle(const PersonBooks& books, const BookDifference& difference, const Value& answer);

/// The person withdraws: every book that is linked is forgotten, those that are not held here too, so that they never come. The book asked for
/// goes last: whoever was stopped in the middle finds the rest by it again. Faults: those of Ledger::forget, of the first book that stays.
[[nodiscard]] Outcome<ForgetReport> forget_person(Ledger& ledger, const BookId& book);

/// What is written, one draft for each of the two books that is held here and does not say it yet. Either alone is enough for them to be shown
/// together; to be parted, each that says they are one person's has to say otherwise. Faults: bad_input (a book with itself, nobody named,
/// nothing said); not_found (neither is held here, or one is no player's).
[[nodiscard]] Outcome<std::vector<Draft>> say_of_books(const Ledger& ledger, const BookId& one, const BookId& other, LinkSaid said,
                                                       const std::string& by, UnixMs at);
/// Somebody else's after all: parted from every book that it is linked to. Empty if it stands alone. Faults: as say_of_books().
[[nodiscard]] Outcome<std::vector<Draft>> part_book(const Ledger& ledger, const BookId& book, const std::string& by, UnixMs at);

}  // namespace weavelog
