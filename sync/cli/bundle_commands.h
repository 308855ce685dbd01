#pragma once
// What the sources of the `bundle` commands share.

#include <cstdint>
#include <string>

#include "sync/cli/commands.h"

namespace weavelog::cli {

/// "1 book", "2 books".
[[nodiscard]] inline std::string counted(std::uint64_t count, const char* one, const char* many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

/// bundle receipt, list, key.
void add_bundle_kept_commands(CLI::App& bundle, Work& chosen);

}  // namespace weavelog::cli
