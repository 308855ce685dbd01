#pragma once
// The room's money: what a job costs by the event's price list, discounts, payments, a player's statement, the close of a day.
// Whole minor units throughout; sums that would leave 64 bits stay at the end of the range.

#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/desk/event_book.h"
#include "core/desk/player_record.h"
#include "core/model/money_tables.h"
#include "core/store/ledger.h"

namespace weavelog {

/// The largest amount of one line, in minor units.
inline constexpr std::int64_t kMostMinor = 1'000'000'000;

struct ChargeLine {
  std::string service;
  std::string note;
  std::int64_t amount_minor = 0;
  bool operator==(const ChargeLine&) const = default;
};

struct JobPrice {
  std::vector<ChargeLine> lines;
  std::vector<std::string> unpriced;  ///< services that were done and that the list has no price for
  std::vector<std::string> unowned;   ///< "mains_owner", "crosses_owner": the string has a price and is left out, since nobody said whose it is
  std::string currency;
  [[nodiscard]] std::int64_t sum() const;
};

/// What a job costs by the services of the price list: "labour"; "string NAME" for one string, "string" for any other; "stencil"; "rush";
/// "on-court rush"; "grommet strip"; "tubing". That is: labour; the room's own string (of a hybrid half of each price, the odd cent on the mains: common practice, no
/// source); stencil; rush; and what was agreed about the frame. Faults: not_found; bad_input (the prices are of several currencies, or
/// of none).
[[nodiscard]] Outcome<JobPrice> price_of(const EventRecord& event, const PlayerRecord& record, const EntityId& job);

/// True where a charge of the job stands that nobody reversed; a discount alone is none.
[[nodiscard]] bool is_charged(std::span<const MoneyRow> lines, const EntityId& job);

/// Puts the price of jobs on the player's account, in one action. The lines have identifiers of their own made from job and service, so
/// that two tablets that charge one job while apart charge it once; if their price lists differ, what it costs is an open question.
/// Faults: refused (a line of a job stands: only where all were reversed it is charged anew); not_found; bad_input (nothing to charge,
/// something unpriced).
[[nodiscard]] Outcome<Draft> charge_jobs(const Ledger& ledger, const EventRecord& event, const PlayerRecord& record,
                                         std::span<const EntityId> jobs, const std::string& by, UnixMs at);

/// Something sold that belongs to no job: overgrips, a reel.
struct Sale {
  std::string service;          ///< as the price list calls it, or any other words
  std::int64_t each_minor = 0;  ///< minor units of the event's currency
  std::int64_t count = 1;
  std::string note;
};
/// Puts it on the player's account, one line whose note tells the count. Faults: bad_input (no words, a name of what jobs are charged by
/// themselves, nothing or too much to pay, not 1 to 1,000 pieces).
[[nodiscard]] Outcome<Draft> charge_sale(const EventRecord& event, const BookId& player, const Sale& sale, const std::string& by, UnixMs at);

/// Takes a part off what was charged for a job: of 1,000, so that 100 is a tenth; 1,000 is free of charge. Halves of a minor unit go
/// to the player. Faults: bad_input (no reason, not 1 to 1,000, no job); refused (nothing is left to take off); conflict (what it costs is an
/// open question).
[[nodiscard]] Outcome<Draft> discount(const Ledger& ledger, const EventRecord& event, const BookId& player, const EntityId& job,
                                      std::int64_t per_mille, const std::string& reason, const std::string& by, UnixMs at);

/// Faults: bad_input (not above zero, too large, no currency, no means).
[[nodiscard]] Outcome<Draft> take_payment(const EventRecord& event, const BookId& player, std::int64_t amount_minor, PaidBy means,
                                          const std::string& note, const std::string& by, UnixMs at);

/// A line of the opposite amount. Faults: not_found; refused (it was reversed, or reverses another); bad_input (no reason); conflict (its
/// amount is an open question).
[[nodiscard]] Outcome<Draft> reverse(const Ledger& ledger, const EventRecord& event, const EntityId& line, const std::string& reason,
                                     const std::string& by, UnixMs at);

/// What a player owes in one currency.
struct Account {
  std::string currency;
  std::int64_t charged = 0;
  std::int64_t paid = 0;
  [[nodiscard]] std::int64_t due() const;
};
/// One for each currency that occurs, by its code.
[[nodiscard]] std::vector<Account> accounts_of(std::span<const MoneyRow> lines);

struct MoneyTotals {
  std::string currency;
  std::int64_t charged = 0;
  std::int64_t paid = 0;
  std::map<std::string, std::int64_t> by_service;
  std::map<PaidBy, std::int64_t> by_means;
};
[[nodiscard]] std::vector<MoneyTotals> totals_of(std::span<const MoneyRow> lines);

/// [from, until), Unix milliseconds.
struct DayBounds {
  std::int64_t from = 0, until = 0;
};
/// A day as it is told in a time zone, also where the clocks change. Faults: bad_input (no such day).
[[nodiscard]] Outcome<DayBounds> bounds_of_day(const std::string& day, const std::string& zone);
/// The day that a zone has at a moment: "2031-05-26".
[[nodiscard]] std::string day_at(UnixMs at, const std::string& zone);
/// That day after so many others; negative: before. "" for no day.
[[nodiscard]] std::string day_after(const std::string& day, int days);

/// Closes a day over its lines; `counted_minor` is what lies in the box. Faults: bad_input (lines of several currencies, a negative
/// count).
[[nodiscard]] Outcome<Draft> close_day(const EventRecord& event, const std::string& day, std::span<const MoneyRow> lines,
                                       std::int64_t counted_minor, const std::string& note, const std::string& by, UnixMs at);

/// How a day was closed, newest first: several where the box was counted again, or by two people apart.
[[nodiscard]] std::vector<DayClose> closes_of_day(const Ledger& ledger, const BookId& event, const std::string& day);
/// What was counted beyond the day's cash by the lines; below zero: what was missing. Bounded, as a peer may have written anything.
[[nodiscard]] std::int64_t box_difference(const DayClose& close);

/// The event's currency, or that of its prices. Faults: bad_input (several, or none).
[[nodiscard]] Outcome<std::string> currency_of(const EventRecord& event);

/// "25,50 EUR" as the language writes it, a no-break space before the code.
[[nodiscard]] std::string money_words(const Language& language, std::int64_t minor, const std::string& currency);
/// Whole minor units of "25.50" in that currency. Faults: bad_input (no number, too many decimals, not a currency, too large).
[[nodiscard]] Outcome<std::int64_t> minor_from(std::string_view text, const std::string& currency);

}  // namespace weavelog
