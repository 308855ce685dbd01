#pragma once
// The event's price list, kept by hand: what a service costs, and in which currency.

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/desk/event_book.h"

namespace weavelog {

/// Services that jobs are charged by themselves, in the order of a price list; "string NAME" beside "string".
inline constexpr std::array<std::string_view, 7> kJobServices{"labour", "string",        "stencil", "rush",
                                                              "on-court rush", "grommet strip", "tubing"};

/// A state without cells for a service that is new on the list. Its identifier follows from its name, so that two tablets that add it while
/// apart add it once.
[[nodiscard]] EntityState new_price(const EventRecord& event, std::string_view service);

/// Sets what a service costs; nothing takes it off the list. Faults: bad_input (no name, below zero or too much, the event has no currency).
[[nodiscard]] Outcome<Draft> set_price(const EventRecord& event, const std::string& service, std::optional<std::int64_t> amount_minor);

/// Gives an event its currency (ISO 4217). Faults: bad_input (no such currency); refused (it has prices or lines in another: amounts are
/// never changed into another currency).
[[nodiscard]] Outcome<Draft> set_currency(const Ledger& ledger, const EventRecord& event, const std::string& currency);

}  // namespace weavelog
