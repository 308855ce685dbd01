#pragma once
// Processor time of this process: what other programs take of the machine meanwhile is not in it.

#include <time.h>

namespace weavelog::testing {

/// In ms, of all threads together.
[[nodiscard]] inline double processor_ms() {
  timespec now{};
  ::clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

}  // namespace weavelog::testing
