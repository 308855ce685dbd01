#pragma once
// What the room charges and is paid: entities of the event's book, each put once and never changed. A mistake is reversed by a
// line of its own. What is charged is guarded: two tablets that charged one job by different prices while apart leave a question. Amounts are whole minor units (cents) of an ISO 4217 currency.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// One line on a player's account. Negative: a discount, or a reversal.
struct Charge {
  BookId player;
  EntityId job;  ///< that it is for; none: for something else
  std::string service;
  std::optional<std::int64_t> amount_minor;
  std::string currency;  ///< ISO 4217 code
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;  ///< the string's name, the reason of a discount
  EntityId reverses;
  bool operator==(const Charge&) const = default;
};

/// Money that the room took, or gave back (negative).
struct Payment {
  BookId player;
  std::optional<std::int64_t> amount_minor;
  std::string currency;
  PaidBy means = PaidBy::unsaid;
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;
  EntityId reverses;
  bool operator==(const Payment&) const = default;
};

/// The books of one day as somebody closed them. What is written for that day later shows as such.
struct DayClose {
  std::string day;                   ///< ISO 8601 date in the event's time zone
  std::optional<std::int64_t> from;  ///< the day's bounds, Unix milliseconds, the end not included
  std::optional<std::int64_t> until;
  std::string currency;
  std::optional<std::int64_t> charged_minor;
  std::optional<std::int64_t> paid_minor;
  std::optional<std::int64_t> cash_minor;     ///< of it in cash, by the lines
  std::optional<std::int64_t> counted_minor;  ///< in the box, as counted
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;
  bool operator==(const DayClose&) const = default;
};

inline constexpr auto kChargeFields = std::to_array<Field<Charge>>({
    {1, "player", &Charge::player},
    {2, "job", &Charge::job},
    {3, "service", &Charge::service},
    {4, "amount_minor", &Charge::amount_minor, true},
    {5, "currency", &Charge::currency, true},
    {6, "at", &Charge::at},
    {7, "by", &Charge::by},
    {8, "note", &Charge::note},
    {9, "reverses", &Charge::reverses},
});
template <>
struct Described<Charge> {
  static constexpr EntityKind kind = kCharge;
  static constexpr std::uint32_t base = 2800;
  static constexpr std::span<const Field<Charge>> table = kChargeFields;
};

inline constexpr auto kPaymentFields = std::to_array<Field<Payment>>({
    {1, "player", &Payment::player},
    {2, "amount_minor", &Payment::amount_minor},
    {3, "currency", &Payment::currency},
    {4, "means", &Payment::means},
    {5, "at", &Payment::at},
    {6, "by", &Payment::by},
    {7, "note", &Payment::note},
    {8, "reverses", &Payment::reverses},
});
template <>
struct Described<Payment> {
  static constexpr EntityKind kind = kPayment;
  static constexpr std::uint32_t base = 2900;
  static constexpr std::span<const Field<Payment>> table = kPaymentFields;
};

inline constexpr auto kDayCloseFields = std::to_array<Field<DayClose>>({
    {1, "day", &DayClose::day},
    {2, "from", &DayClose::from},
    {3, "until", &DayClose::until},
    {4, "currency", &DayClose::currency},
    {5, "charged_minor", &DayClose::charged_minor},
    {6, "paid_minor", &DayClose::paid_minor},
    {7, "cash_minor", &DayClose::cash_minor},
    {8, "counted_minor", &DayClose::counted_minor},
    {9, "at", &DayClose::at},
    {10, "by", &DayClose::by},
    {11, "note", &DayClose::note},
});
template <>
struct Described<DayClose> {
  static constexpr EntityKind kind = kDayClose;
  static constexpr std::uint32_t base = 3000;
  static constexpr std::span<const Field<DayClose>> table = kDayCloseFields;
};

}  // namespace weavelog
