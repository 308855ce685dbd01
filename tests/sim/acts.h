#pragma once
// What a person does at a device: the draft that the desk's own functions make of it.

#include <optional>
#include <string>

#include "tests/sim/device.h"
#include "tests/sim/plan.h"

namespace weavelog::sim {

struct Act {
  Draft draft;
  std::string what;  ///< for the trace
  /// Set when a question is closed: what the person saw, and so what may be closed.
  std::optional<OpenQuestion> closes;
};

/// True for kinds that this file makes drafts of.
[[nodiscard]] bool is_act(EventKind kind);
/// Nothing if there is nothing to do (no question open, no player known), or the desk refuses. Reads only;
/// may throw SQLite's exception.
[[nodiscard]] std::optional<Act> act_of(EventKind kind, Device& device, Random& random);

}  // namespace weavelog::sim
