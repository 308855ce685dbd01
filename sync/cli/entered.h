#pragma once
// Who is on the event's entry list and nowhere else on this device yet.

#include <string>

#include "sync/cli/context.h"

namespace weavelog::cli {

/// Those of whose name every typed word begins a word, and what makes players of them, a line each; "" for nobody, for nothing typed,
/// and without an event.
[[nodiscard]] std::string entered_text(Context& context, const std::string& typed);

}  // namespace weavelog::cli
