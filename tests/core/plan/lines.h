#pragma once
// Lines of a draw for tests.

#include <string>
#include <vector>

#include "core/plan/draw.h"

namespace weavelog::test {

/// "P1", "P2", ...: as many as asked for.
inline std::vector<BracketLine> named(std::size_t size, const std::string& letter = "P") {
  std::vector<BracketLine> out(size);
  for (std::size_t i = 0; i < size; ++i) out[i].player = letter + std::to_string(i + 1);
  return out;
}

}  // namespace weavelog::test
