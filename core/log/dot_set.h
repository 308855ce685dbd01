#pragma once

#include <algorithm>
#include <vector>

#include "core/log/entry.h"

namespace weavelog {

/// Looks dots up among some. There are one or two nearly always; a faulty device can name thousands. The dots must outlive it.
class DotSet {
 public:
  explicit DotSet(const std::vector<Dot>& dots) : dots_(dots) {
    if (dots.size() <= kFew) return;
    sorted_ = dots;
    std::sort(sorted_.begin(), sorted_.end());
  }
  [[nodiscard]] bool contains(const Dot& dot) const {
    return sorted_.empty() ? std::find(dots_.begin(), dots_.end(), dot) != dots_.end() : std::binary_search(sorted_.begin(), sorted_.end(), dot);
  }

 private:
  static constexpr std::size_t kFew = 16;
  const std::vector<Dot>& dots_;
  std::vector<Dot> sorted_;
};

}  // namespace weavelog
