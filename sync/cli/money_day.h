#pragma once
// How a day of the event was closed, in words.

#include "core/desk/money.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// "at 26 May, 18:05 by Mara, with 50.00 EUR counted".
[[nodiscard]] std::string close_words(Context& context, const EventRecord& event, const DayClose& close);

}  // namespace weavelog::cli
