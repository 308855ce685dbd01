#pragma once
// What an event has still to expect: from its draws, its order of play and its own history to a forecast.

#include "core/desk/draws.h"
#include "core/plan/forecast.h"

namespace weavelog {

/// What a forecast is made from. Days are the event's from tomorrow on, and today as long as it is before ten o'clock there; a round is played on
/// the day that the order of play says, else each on a day of its own with the final on the last one. Rackets a match by what each player brought so
/// far. Faults: not_found (no event, no draw to go by), refused (the event is over, or does not say when it ends).
[[nodiscard]] Outcome<ForecastInput> room_forecast_input(const Ledger& ledger, const BookId& event, UnixMs now);

}  // namespace weavelog
