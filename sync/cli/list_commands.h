#pragma once
// A list of the room, as commands name its steps.

#include <string>

#include "core/desk/work_list.h"
#include "sync/cli/context.h"

namespace weavelog::cli {

/// The step of a list that is meant by its place (from 1, those turned off included), by the key of common practice ("knots"), or by its
/// words. Faults: not_found.
[[nodiscard]] Outcome<WorkStep> choose_step(const std::vector<WorkStep>& list, WorkList which, const std::string& typed);

}  // namespace weavelog::cli
