#pragma once
// What the desk and the head of the room write into an event's book: the event, its entry list, prices, team.

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/model/event.h"
#include "core/people/entry_list.h"
#include "core/people/price_list.h"
#include "core/store/ledger.h"

namespace weavelog {

/// Everything an event book holds, loaded once, each list in order of making.
struct EventRecord {
  BookId book;
  Loaded<EventInfo> event;  ///< without an id if the book has none (yet)
  std::vector<Loaded<TeamMember>> team;
  std::vector<Loaded<EntryListItem>> entries;
  std::vector<Loaded<Price>> prices;
};

/// Faults: not_found.
[[nodiscard]] Outcome<EventRecord> load_event(const Ledger& ledger, const BookId& book);

/// The event in a book of its own. Faults: bad_input (no name, a day that does not exist or the last before
/// the first, a currency or time zone that is not known).
[[nodiscard]] Outcome<Draft> new_event(const BookId& book, const EventInfo& event, UnixMs now);
/// Changes what is said of an event; its currency has a rule of its own (set_currency in prices.h) and stays. Empty if nothing differs.
/// Faults: those of new_event, and not_found (the event is not described here yet).
[[nodiscard]] Outcome<Draft> change_event(const EventRecord& record, const EventInfo& event);

/// What an import does.
struct ImportDrafts {
  std::vector<Draft> drafts;  ///< to be appended in this order; none if nothing is new
  std::size_t added = 0;
  std::size_t updated = 0;
  std::size_t unchanged = 0;
};

/// Brings an entry list in. A row whose name, country and birth year are those of an entry (a birth year that
/// one side does not say fits any) updates that entry, unless both name a draw and the draws differ; what the
/// row leaves empty stays as it was, and so does the link to a player's book. Entries that the list no longer
/// has stay. Long lists are split so that every draft keeps the bounds of an entry.
[[nodiscard]] ImportDrafts import_entries(const EventRecord& record, std::span<const EntryListRow> rows,
                                          UnixMs now);
/// Brings prices in; a service that is there already gets the new price.
[[nodiscard]] ImportDrafts import_prices(const EventRecord& record, std::span<const PriceListRow> rows,
                                         UnixMs now);

/// Adds a member of the team, or brings the one of that device (without one: of that name) up to date.
/// Faults: bad_input (no name).
[[nodiscard]] Outcome<Draft> put_team_member(const EventRecord& record, const TeamMember& member, UnixMs now);

/// Links entries to players' books; links that are so already are left out. Faults: not_found (no such
/// entry).
[[nodiscard]] Outcome<Draft> link_entries(const EventRecord& record,
                                          std::span<const std::pair<EntityId, BookId>> links);

}  // namespace weavelog
