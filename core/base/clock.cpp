#include "core/base/clock.h"

#include <algorithm>
#include <chrono>

namespace weavelog {
namespace {

class SystemClock final : public WallClock {
 public:
  [[nodiscard]] UnixMs now() const override {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::system_clock::now().time_since_epoch())
        .count();
  }
};

}  // namespace

const WallClock& WallClock::system() {
  static const SystemClock clock;
  return clock;
}

std::uint64_t HybridClock::wall_now() const {
  return static_cast<std::uint64_t>(std::clamp<UnixMs>(wall_->now(), 0, kLatestWall));
}

Stamp HybridClock::tick() {
  // raw + 1 is the next counter, and carries into the wall part by itself when the counter is full.
  last_ = Stamp{std::max(last_.raw + 1, Stamp::of(wall_now(), 0).raw)};
  return last_;
}

bool HybridClock::witness(Stamp remote) {
  if (too_far_ahead(remote)) return false;
  last_ = Stamp{std::max(std::max(last_.raw, remote.raw) + 1, Stamp::of(wall_now(), 0).raw)};
  return true;
}

bool HybridClock::too_far_ahead(Stamp remote) const {
  return remote.wall_ms() > wall_->now() + kTooFarAhead;
}

}  // namespace weavelog
