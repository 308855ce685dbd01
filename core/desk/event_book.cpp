#include "core/desk/event_book.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/prices.h"
#include "core/model/stage_now.h"
#include "core/people/country.h"

namespace weavelog {
namespace {

// Half of what an entry may hold: room for what encoding adds.
constexpr std::size_t kMostWrites = kMaxWritesPerEntry / 2;
constexpr std::size_t kMostBytes = kMaxEntryBytes / 2;

std::size_t cost_of(const Write& write) {
  const auto* text = std::get_if<std::string>(&write.value);
  return 64 + (text ? text->size() : 0) + write.replaces.size() * 32;
}

/// Gathers rows into as few drafts as the bounds allow.
class Rows {
 public:
  Rows(const BookId& book, ActionKind action) : book_(book), action_(action) {}

  /// The draft that the next row goes into.
  Draft& next() {
    if (!drafts_.empty()) {
      const auto& writes = drafts_.back().writes();
      for (; counted_ < writes.size(); ++counted_) bytes_ += cost_of(writes[counted_]);
    }
    if (drafts_.empty() || counted_ >= kMostWrites || bytes_ >= kMostBytes) {
      drafts_.emplace_back(book_, kEventBook, action_);
      counted_ = bytes_ = 0;
    }
    return drafts_.back();
  }

  std::vector<Draft> take() {
    std::erase_if(drafts_, [](const Draft& draft) { return draft.empty(); });
    return std::move(drafts_);
  }

 private:
  BookId book_;
  ActionKind action_;
  std::vector<Draft> drafts_;
  std::size_t counted_ = 0;
  std::size_t bytes_ = 0;
};

std::string person_key(const EntryListItem& item) {
  // The native name tells apart only those who have no other.
  return search_key(item.family_name) + '\n' + search_key(item.given_name) + '\n' +
         (item.family_name.empty() ? search_key(item.native_name) : std::string()) + '\n' +
         country_key(item.country);
}

/// 0: not one entry; otherwise the larger the closer.
int closeness(const EntryListItem& held, const EntryListItem& row) {
  int close = 1;
  if (held.birth_year && row.birth_year) {
    if (*held.birth_year != *row.birth_year) return 0;
    close += 2;
  }
  const std::string held_draw = search_key(held.draw), row_draw = search_key(row.draw);
  if (held_draw == row_draw) return close + 4;
  return held_draw.empty() || row_draw.empty() ? close : 0;
}

/// Takes over what is said; what is not said stays.
template <class S>
void take_over(S& held, const S& said) {
  for_each_field<S>([&](FieldTag, std::string_view, bool, auto member) {
    if (!is_cleared(to_value(said.*member))) held.*member = said.*member;
  });
}

/// Brings one row into a held entity and counts it.
template <class S>
void update(Rows& rows, ImportDrafts& out, const Loaded<S>& held, const S& wanted) {
  if (wanted == held.now) {
    ++out.unchanged;
    return;
  }
  put_changes(rows.next(), held.seen, wanted);
  ++out.updated;
}

Outcome<> check_event(const EventInfo& event) {
  if (is_blank(event.name)) return fail(FaultCode::bad_input, "the event has no name", "name", "give it one");
  for (const auto& [day, where] :
       {std::pair(event.first_day, "first day"), std::pair(event.last_day, "last day")})
    if (!day.empty() && !is_iso_date(day))
      return fail(FaultCode::bad_input, "\"" + day + "\" is not a day", where, "write it as 2031-05-26");
  if (!event.first_day.empty() && !event.last_day.empty() && event.last_day < event.first_day)
    return fail(FaultCode::bad_input, "the event ends before it begins", "last day", "check both days");
  if (event.keep_days && event.last_day.empty())
    return fail(FaultCode::bad_input, "books are kept for days after an event whose last day is not said", "last day", "say when the event ends");
  if (!event.currency.empty() && !decimals_of_currency(event.currency))
    return fail(FaultCode::bad_input, "\"" + event.currency + "\" is not a currency", "currency",
                "write its three letters, such as EUR");
  if (!event.time_zone.empty() && !is_time_zone(event.time_zone))
    return fail(FaultCode::bad_input, "\"" + event.time_zone + "\" is not a time zone", "time zone",
                "write its IANA name, such as Europe/Lisbon");
  return {};
}

}  // namespace

Outcome<EventRecord> load_event(const Ledger& ledger, const BookId& book) {
  const auto info = ledger.book(book);
  if (!info || info->kind != kEventBook)
    return fail(FaultCode::not_found, "this device does not hold the event", "event " + book.hex(),
                "exchange with the event server first");
  EventRecord record;
  record.book = book;
  // By kind: the money and the stock of two weeks are a hundred times as much, and nobody asked for them.
  for (const EntityKind kind : {kEvent, kTeamMember, kEntryListItem, kPrice})
    for (EntityState& state : ledger.entities(book, kind)) {
      if (!exists(state)) continue;
      if (kind == kEvent && !record.event.id())
        record.event = Loaded<EventInfo>(std::move(state));
      else if (kind == kTeamMember)
        record.team.emplace_back(std::move(state));
      else if (kind == kEntryListItem)
        record.entries.emplace_back(std::move(state));
      else if (kind == kPrice)
        record.prices.emplace_back(std::move(state));
    }
  return record;
}

Outcome<Draft> new_event(const BookId& book, const EventInfo& event, UnixMs now) {
  if (auto checked = check_event(event); !checked) return fail(checked.error());
  Draft draft(book, kEventBook, kActNewEvent);
  (void)put_new(draft, event, now);
  return draft;
}

Outcome<Draft> change_event(const EventRecord& record, const EventInfo& event) {
  if (!record.event.id())
    return fail(FaultCode::not_found, "the event is not described here yet", "event", "exchange with its server first");
  EventInfo wanted = event;
  wanted.currency = record.event.now.currency;
  if (auto checked = check_event(wanted); !checked) return fail(checked.error());
  Draft draft(record.book, kEventBook, kActEdit);
  put_changes(draft, record.event.seen, wanted);
  return draft;
}

ImportDrafts import_entries(const EventRecord& record, std::span<const EntryListRow> rows, UnixMs now) {
  std::multimap<std::string, const Loaded<EntryListItem>*> held;
  for (const auto& entry : record.entries) held.emplace(person_key(entry.now), &entry);

  Rows drafts(record.book, kActImportEntryList);
  ImportDrafts out;
  for (const EntryListRow& row : rows) {
    auto [begin, end] = held.equal_range(person_key(row.item));
    auto best = end;
    int best_closeness = 0;
    for (auto at = begin; at != end; ++at) {
      const int close = closeness(at->second->now, row.item);
      if (close > best_closeness) {
        best = at;
        best_closeness = close;
      }
    }
    if (best == end) {
      (void)put_new(drafts.next(), row.item, now);
      ++out.added;
      continue;
    }
    EntryListItem wanted = best->second->now;
    take_over(wanted, row.item);
    update(drafts, out, *best->second, wanted);
    held.erase(best);  // one row, one entry
  }
  out.drafts = drafts.take();
  return out;
}

ImportDrafts import_prices(const EventRecord& record, std::span<const PriceListRow> rows, UnixMs now) {
  std::map<std::string, const Loaded<Price>*> held;
  for (const auto& price : record.prices) held.emplace(search_key(price.now.service), &price);
  std::set<std::string> made;
  Rows drafts(record.book, kActImportPrices);
  ImportDrafts out;
  for (const PriceListRow& row : rows) {
    const auto found = held.find(search_key(row.price.service));
    if (found == held.end()) {
      // A service that the list names twice is two prices, and the person is told.
      if (record.event.id() && made.insert(search_key(row.price.service)).second)
        put_changes(drafts.next(), new_price(record, row.price.service), row.price);
      else
        (void)put_new(drafts.next(), row.price, now);
      ++out.added;
      continue;
    }
    Price wanted = found->second->now;
    take_over(wanted, row.price);
    update(drafts, out, *found->second, wanted);
    held.erase(found);
  }
  out.drafts = drafts.take();
  return out;
}

Outcome<Draft> put_team_member(const EventRecord& record, const TeamMember& member, UnixMs now) {
  if (is_blank(member.name))
    return fail(FaultCode::bad_input, "the member of the team has no name", "team", "give one");
  Draft draft(record.book, kEventBook, kActTeam);
  const auto held =
      std::find_if(record.team.begin(), record.team.end(), [&](const Loaded<TeamMember>& other) {
        return member.device.empty() ? search_key(other.now.name) == search_key(member.name)
                                     : other.now.device == member.device;
      });
  if (held == record.team.end()) {
    (void)put_new(draft, member, now);
  } else {
    TeamMember wanted = held->now;
    take_over(wanted, member);
    put_changes(draft, held->seen, wanted);
  }
  return draft;
}

Outcome<Draft> link_entries(const EventRecord& record, std::span<const std::pair<EntityId, BookId>> links) {
  Draft draft(record.book, kEventBook, kActLinkEntry);
  for (const auto& [entry, player] : links) {
    const auto held =
        std::find_if(record.entries.begin(), record.entries.end(),
                     [&, id = entry](const Loaded<EntryListItem>& other) { return other.id() == id; });
    if (held == record.entries.end())
      return fail(FaultCode::not_found, "the entry list has no such entry", "entry " + entry.hex(),
                  "look at the entry list again");
    if (held->now.player == player) continue;
    draft.put(held->seen, tag_of<EntryListItem>(&EntryListItem::player), to_value(player));
  }
  return draft;
}

}  // namespace weavelog
