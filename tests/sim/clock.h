#pragma once
// Simulated time, and the wall clock of one device over it, which may be wrong.

#include "core/base/clock.h"

namespace weavelog::sim {

/// How time really passes: only the world moves it on.
struct Time {
  UnixMs now = 0;
};

/// What one device believes.
class DeviceClock final : public WallClock {
 public:
  explicit DeviceClock(const Time& time) : time_(&time) {}
  [[nodiscard]] UnixMs now() const override { return time_->now + offset_; }
  void set(UnixMs shown) { offset_ = shown - time_->now; }
  void jump(UnixMs by) { offset_ += by; }

 private:
  const Time* time_;
  UnixMs offset_ = 0;
};

}  // namespace weavelog::sim
