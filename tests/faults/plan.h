#pragma once
// How much of the faults is wanted: the short plan of tests/run, or what tests/faults/run asks for through
// the environment. What was measured goes to standard output as lines that tests/faults/run reads.

#include <chrono>
#include <cstdint>
#include <string>

namespace weavelog::testing {

struct Plan {
  std::uint64_t seed = 20310526;
  int rounds = 60;               ///< of kills
  std::chrono::seconds most{0};  ///< kills go on for so long instead of a number of rounds; 0: rounds count
  bool full = false;             ///< the sizes of the targets, and what takes minutes

  /// WEAVELOG_FAULTS_SEED, _ROUNDS, _SECONDS, _FULL. Throws std::invalid_argument where one is no number.
  [[nodiscard]] static Plan from_environment();
};

/// "figure: FAULT: WHAT: VALUE UNIT", one line.
void figure(const std::string& fault, const std::string& what, double value, const std::string& unit);
/// A bound of memory in MB; higher where a sanitizer keeps books of its own beside it.
[[nodiscard]] double bound_mb(double mb);
/// As many descriptors as the system allows at most: hundreds of ledgers and sockets are held in one process.
void allow_many_descriptors();
/// "skipped: FAULT: WHY", one line: tests/run takes the case from those that passed.
void skip(const std::string& fault, const std::string& why);

}  // namespace weavelog::testing
