#pragma once
// Rackets that were taken in while this device had no event: they stand on no board and carry no tag until an event takes them.

#include <span>
#include <string>
#include <vector>

#include "core/desk/event_book.h"

namespace weavelog {

/// Longer ago than this a racket that nobody marked as collected is hardly still here.
inline constexpr int kWithoutEventDays = 14;

/// One player's.
struct WithoutEvent {
  BookId player;
  std::string name;            ///< as lists show it
  std::vector<EntityId> jobs;  ///< in the order in which they were taken in
};

/// Those that this device itself took in within the last kWithoutEventDays, under whatever incarnation, and that are still open; whoever
/// came first stands first. What others took in without an event is their own affair.
[[nodiscard]] std::vector<WithoutEvent> rackets_without_event(const Ledger& ledger);

/// Puts these rackets into the event as if they had been taken in there. One that carries a number, as those taken in on the command line do, keeps it
/// unless a racket of the event has it or one before it in this list; all others get the next free ones, none of which one of the list keeps. One
/// draft a player, to be appended in this order. What was read back and confirmed stays as it is. Faults: not_found (no such event or job).
[[nodiscard]] Outcome<std::vector<Draft>> take_into_event(const Ledger& ledger, const BookId& event, std::span<const WithoutEvent> rackets);

}  // namespace weavelog
