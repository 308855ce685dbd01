#pragma once
// Identifiers that follow from what something is for, so that two devices that make it while apart make it once.

#include <string_view>

#include "core/base/id.h"

namespace weavelog {

/// Sorts with `source` (it has its time), and is the same wherever it is made. `use` names the purpose, `part` tells apart several of
/// one source: BLAKE2b-256 over use, source and part, the first ten bytes.
[[nodiscard]] EntityId made_from(const EntityId& source, std::string_view use, std::string_view part);

}  // namespace weavelog
