#pragma once
// Private to sync/net: so many of something a second.

#include <chrono>

namespace weavelog {

class PerSecond {
 public:
  using Clock = std::chrono::steady_clock;
  explicit PerSecond(int most) : most_(most) {}

  /// Takes one; false if this second has none left.
  bool take(Clock::time_point now) {
    if (now >= end_) {
      end_ = now + std::chrono::seconds(1);
      left_ = most_;
    }
    if (left_ == 0) return false;
    --left_;
    return true;
  }
  [[nodiscard]] bool none_left() const { return left_ == 0; }
  /// When there are some again.
  [[nodiscard]] Clock::time_point end() const { return end_; }

 private:
  int most_;
  int left_ = 0;
  Clock::time_point end_{};
};

}  // namespace weavelog
