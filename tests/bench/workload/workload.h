#pragma once
// Runs the scenarios of the workload, ours and the floor by turns, each in a process of its own, and shows
// all in one table.

#include <filesystem>
#include <string>
#include <vector>

#include "tests/bench/benches.h"

namespace weavelog::bench {

struct WorkloadOptions {
  std::filesystem::path ops;                   ///< given operation files; empty: they are generated
  std::vector<std::string> sizes;              ///< of T, S, M, W4
  std::vector<std::filesystem::path> results;  ///< JSON lines of others over the same files, for the table
  std::size_t repeats = 3;
  bool json = false;
};

/// 0 if every result was right.
int workload(const Setting& setting, const WorkloadOptions& options);

}  // namespace weavelog::bench
