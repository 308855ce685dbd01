#pragma once
// Makes the workload: a fixed seed, so the same files come out every time.

#include <filesystem>
#include <string>
#include <vector>

namespace weavelog::bench {

/// T for a look, S, M; W4 has players only.
[[nodiscard]] const std::vector<std::string>& workload_sizes();
/// Writes SIZE.ops, its deltas and SIZE.meta.json into the folder. Throws std::runtime_error when that fails.
void generate_workload(const std::filesystem::path& folder, const std::string& size);

}  // namespace weavelog::bench
