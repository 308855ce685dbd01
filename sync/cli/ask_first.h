#pragma once
// What is open about a player and has to be answered before anything is built on it.

#include <span>

#include "core/desk/player_record.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// Prints those of the player's open questions that the command would build on, under the numbers by which `answer` knows them, with stored: false;
/// needs_answer.
[[nodiscard]] Ending ask_first(Context& context, const PlayerRecord& record, std::span<const OpenQuestion> asked);

}  // namespace weavelog::cli
