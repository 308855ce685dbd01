#pragma once
// Consent: given on the turned screen in the player's own language, dated, withdrawable.

#include "core/desk/person_books.h"
#include "core/desk/read_back.h"

namespace weavelog {

/// The sentence that the player agrees to (phrases consent.*). Empty for `unsaid`.
[[nodiscard]] std::string consent_text(const Language& language, ConsentChoice choice);
/// What was answered to the question where a player's setups may go, with the sentence as it was shown.
struct ConsentSaid {
  ConsentChoice choice = ConsentChoice::unsaid;
  std::string text;
};
/// Notes in a draft of the player's book that this was said, when and where; the choice that is valid now is
/// the caller's to put. Faults: bad_input (no choice, or a text that is not that choice's).
[[nodiscard]] Outcome<> note_consent(Draft& draft, ConsentChoice choice, const Confirmation& confirmation,
                                     const BookId& event);
/// Records the choice and makes it the valid one; `event` is where it was given, which is what "this room"
/// means. Faults: not_found (the book has no person), bad_input (no choice, or a text that is not that
/// choice's).
[[nodiscard]] Outcome<Draft> give_consent(const PlayerRecord& record, ConsentChoice choice,
                                          const Confirmation& confirmation, const BookId& event = {});
/// The same in all books of the person that are held here, one draft each, that asked for first: whoever agrees or withdraws does not know
/// of books.
[[nodiscard]] Outcome<std::vector<Draft>> give_consent(const PersonBooks& books, ConsentChoice choice, const Confirmation& confirmation,
                                                       const BookId& event = {});

}  // namespace weavelog
