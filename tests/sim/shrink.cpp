#include "tests/sim/shrink.h"

#include <algorithm>
#include <chrono>

#include "tests/sim/world.h"

namespace weavelog::sim {

std::vector<std::size_t> shrink(const Plan& plan, const std::string& invariant, double seconds) {
  const auto begin = std::chrono::steady_clock::now();
  const auto time_left = [&] {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count() < seconds;
  };
  const auto fails = [&](const std::vector<std::size_t>& numbers) {
    const Result result = run(only(plan, numbers));
    return result.violation && result.violation->invariant == invariant;
  };
  std::vector<std::size_t> kept;
  for (const Event& event : plan.events) kept.push_back(event.number);
  for (std::size_t piece = std::max<std::size_t>(1, kept.size() / 2); time_left(); piece = (piece + 1) / 2) {
    bool shorter = false;
    for (std::size_t at = 0; at < kept.size() && time_left();) {
      std::vector<std::size_t> without = kept;
      without.erase(without.begin() + static_cast<std::ptrdiff_t>(at),
                    without.begin() + static_cast<std::ptrdiff_t>(std::min(at + piece, kept.size())));
      if (fails(without)) {
        kept = std::move(without);
        shorter = true;
      } else {
        at += piece;
      }
    }
    if (piece == 1 && !shorter) break;
  }
  return kept;
}

}  // namespace weavelog::sim
