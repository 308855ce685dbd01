#pragma once
// Leaves out of a failing plan whatever it does not need to fail.

#include <vector>

#include "tests/sim/plan.h"

namespace weavelog::sim {

/// Numbers of the events that are still needed to break the same promise. Delta debugging (Zeller,
/// Hildebrandt 2002), for at most about so many seconds.
[[nodiscard]] std::vector<std::size_t> shrink(const Plan& plan, const std::string& invariant, double seconds);

}  // namespace weavelog::sim
