#pragma once
// Arrival at an event: whom of its entry list does this device know already, and what did they have last?

#include <vector>

#include "core/people/arrival_account.h"
#include "core/people/people_here.h"

namespace weavelog {

struct ArrivalLine {
  EntityId entry;
  EntryListItem item;
  MatchBand band = MatchBand::new_person;
  bool linked = false;                       ///< a person has said who it is: the first candidate. Known, if it is the only one
  std::vector<ArrivalCandidate> candidates;  ///< best first; none for a new one
};

/// By folded family and given name, as the entry list shows it. Looks at the persons of every player book
/// held here; 300 entries against 5,000 players take well under a second.
///
/// `going_on`: of an entry that is linked to a book which came in this arrival, books that were here before and may be the same person's
/// are candidates too, and the line is likely: two rooms that did not know of each other each made a book of that player.
[[nodiscard]] std::vector<ArrivalLine> arrival(const Ledger& ledger, const BookId& event, UnixMs now, const Arrival* going_on = nullptr);

}  // namespace weavelog
