#pragma once
// How long the server of an event keeps players' books: a rule that stands in the event's book, so that every tablet shows it.

#include <chrono>
#include <optional>

#include "core/desk/event_book.h"

namespace weavelog {

/// The longest that can be said: ten years.
inline constexpr std::int64_t kMostKeepDays = 3650;

/// Sets the rule: so many days after the event's last one; none: they are kept. Faults: bad_input (days out of range; the event's last day
/// is not said), conflict (the rule is that already).
[[nodiscard]] Outcome<Draft> set_keep_days(const EventRecord& record, std::optional<std::int64_t> days);

/// The moment from which the event's server holds no players' books: the end of the last of these days, as the clocks of the place show it.
/// Nothing where no rule is set, or the event's last day is not said.
[[nodiscard]] std::optional<UnixMs> books_go_at(const EventInfo& event);
[[nodiscard]] std::optional<UnixMs> books_go_at(const Ledger& ledger, const BookId& event);

/// Why an event's server exchanges nothing any more, once that moment has come.
[[nodiscard]] std::optional<Fault> event_is_over(const Ledger& ledger, const BookId& event, UnixMs now);

/// On the event's server: lets all players' books go, if the moment has come, a hundred at a time: how many. Faults: those of Ledger::shed.
[[nodiscard]] Outcome<std::size_t> let_books_go(Ledger& ledger, const BookId& event, UnixMs now);

/// Says when a server may act on the rule: not before the moment has lain behind for a while of running, by a clock that nobody sets. A wall clock
/// that jumped ahead is noticed in that time, because nothing is exchanged any more, and set right; what is erased does not come back by that.
class LettingGo {
 public:
  using Steady = std::chrono::steady_clock;
  explicit LettingGo(Steady::duration patience = std::chrono::hours(1)) : patience_(patience) {}
  /// `over`: event_is_over() says so now. Asked again and again; the wait begins anew whenever it did not hold.
  [[nodiscard]] bool due(bool over, Steady::time_point now);

 private:
  Steady::duration patience_;
  std::optional<Steady::time_point> since_;
};

}  // namespace weavelog
