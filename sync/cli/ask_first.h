#pragma once
// What is open about a player and has to be answered before anything is built on it.

#include "core/desk/player_record.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// Prints the open questions, with stored: false; needs_answer.
[[nodiscard]] Ending ask_first(Context& context, const PlayerRecord& record);

}  // namespace weavelog::cli
