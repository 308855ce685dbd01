#include "core/desk/keep_rule.h"

#include <algorithm>

#include "core/base/local_time.h"
#include "core/model/fields.h"
#include "core/model/stage_now.h"

namespace weavelog {
namespace {

constexpr std::size_t kBooksAtOnce = 100;

std::optional<EventInfo> event_of(const Ledger& ledger, const BookId& event) {
  for (const EntityState& state : ledger.entities(event, kEvent))
    if (exists(state)) return from_state<EventInfo>(state);
  return std::nullopt;
}

}  // namespace

Outcome<Draft> set_keep_days(const EventRecord& record, std::optional<std::int64_t> days) {
  if (!record.event.id()) return fail(FaultCode::not_found, "the event is not described here yet", "event", "exchange with its server first");
  if (days && (*days < 0 || *days > kMostKeepDays))
    return fail(FaultCode::bad_input, "books are kept from 0 to " + std::to_string(kMostKeepDays) + " days after an event", "days", "give a number in between");
  if (days && !day_from(record.event.now.last_day))
    return fail(FaultCode::bad_input, "the event's last day is not said", "days", "say first when the event ends");
  if (record.event.now.keep_days == days) return fail(FaultCode::conflict, "the rule is that already", "days", "nothing needs to be done");
  EventInfo now = record.event.now;
  now.keep_days = days;
  Draft draft(record.book, kEventBook, kActEdit);
  put_changes(draft, record.event.seen, now);
  return draft;
}

std::optional<UnixMs> books_go_at(const EventInfo& event) {
  const auto last = day_from(event.last_day);
  if (!last || !event.keep_days) return std::nullopt;
  return LocalTime(event.time_zone).begin_of(*last + 1 + std::clamp<std::int64_t>(*event.keep_days, 0, kMostKeepDays));
}

std::optional<UnixMs> books_go_at(const Ledger& ledger, const BookId& event) {
  const auto held = event_of(ledger, event);
  return held ? books_go_at(*held) : std::nullopt;
}

std::optional<Fault> event_is_over(const Ledger& ledger, const BookId& event, UnixMs now) {
  const auto info = event_of(ledger, event);
  const auto at = info ? books_go_at(*info) : std::nullopt;
  if (!at || now < *at) return std::nullopt;
  return Fault{FaultCode::expired, info->name + " is over: by its rule the server keeps players' books no longer and exchanges nothing any more", "exchange",
               "what this device holds stays here; if it is not over, set the server's clock at once"};
}

bool LettingGo::due(bool over, Steady::time_point now) {
  if (!over) {
    since_.reset();
    return false;
  }
  if (!since_) since_ = now;
  return now - *since_ >= patience_;
}

Outcome<std::size_t> let_books_go(Ledger& ledger, const BookId& event, UnixMs now) {
  if (!event_is_over(ledger, event, now)) return 0;
  std::vector<BookId> books;
  for (const BookInfo& book : ledger.books(kPlayerBook)) books.push_back(book.id);
  std::size_t gone = 0;
  for (std::size_t first = 0; first < books.size(); first += kBooksAtOnce) {
    const auto report = ledger.shed(std::span(books).subspan(first, std::min(kBooksAtOnce, books.size() - first)));
    if (!report) return fail(report.error());
    gone += report->erased.size();
  }
  return gone;
}

}  // namespace weavelog
