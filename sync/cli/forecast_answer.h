#pragma once
// How a forecast is told, wherever it comes from.

#include "core/plan/forecast.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

inline constexpr const char* kForecastAnswer =
    "--json: one object: days [{day, rackets, minutes, benches, hours [{hour, rackets, benches}], strings [{string, metres}]}], rackets, "
    "rackets_a_match,\n"
    "strings; rackets, minutes and metres are {mean, low, middle, high}: exceeded nine times of ten, one of two, one of ten. benches: enough "
    "nine times of\n"
    "ten.";

void tell_forecast(const Context& context, const Forecast& made);

}  // namespace weavelog::cli
