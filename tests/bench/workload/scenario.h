#pragma once
// One scenario of the workload by one of those who run it, in a process of its own: prints one JSON line in
// the form that the shared harness prints.
//
//   W1 local write      all actions, one durable transaction each
//   W2 cold import      an empty replica takes in everything; what the sender does is timed apart
//   W3 small delta      both changed a hundred things apart, ten of them the same; then once more
//   W4 few of many      10,000 players, five changed: met before, and never met
//   W4r                 reconciliation alone of 1,000,000 books, ten changed
//   W5 open and read    a player's setup and last ten jobs

#include <filesystem>
#include <string>

namespace weavelog::bench {

struct ScenarioOptions {
  std::string scenario;
  std::string who;  ///< "weavelog" or "floor"
  std::string size;
  std::filesystem::path ops, state, tmp;
  std::string mode;    ///< of W1: "nosync" (files in memory, where a flush costs nothing), "two" (the same with the app's two connections) or "sync"
  bool keep = false;   ///< leave the replica for the scenarios that come after
  double limit = 1e9;  ///< ms after which W1 stops
  std::size_t turn = 0;
};

/// 0 if the result was right.
int run_scenario(const ScenarioOptions& options);

}  // namespace weavelog::bench
