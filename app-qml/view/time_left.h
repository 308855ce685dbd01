#pragma once

#include <cmath>
#include <cstdint>
#include <deque>
#include <optional>

// How long something will still take, by how fast it went of late. Says nothing until it has seen a second of it.
class TimeLeft {
 public:
  // So much is done of so much, at a time that only ever goes on. What falls back (another connection counts anew) begins anew.
  void see(double done, double total, std::int64_t nowMs) {
    if (!seen_.empty() && (done < seen_.back().done || total < total_)) seen_.clear();
    total_ = total;
    if (seen_.empty() || done > seen_.back().done) seen_.push_back({nowMs, done});
    now_ = nowMs;
    while (seen_.size() > 2 && nowMs - seen_.front().at > windowMs) seen_.pop_front();
  }
  void clear() { seen_.clear(); }
  // Whole seconds, at least one while something is left; none while it can't be told.
  [[nodiscard]] std::optional<int> seconds() const {
    if (seen_.empty()) return std::nullopt;
    const double left = total_ - seen_.back().done, gone = seen_.back().done - seen_.front().done;
    if (left <= 0) return 0;
    const double time = static_cast<double>(now_ - seen_.front().at);
    if (time < leastMs || gone <= 0) return std::nullopt;
    return static_cast<int>(std::ceil(left * time / gone / 1000));
  }

 private:
  static constexpr std::int64_t windowMs = 8000;
  static constexpr double leastMs = 1000;
  struct Seen {
    std::int64_t at;
    double done;
  };
  std::deque<Seen> seen_;
  double total_ = 0;
  std::int64_t now_ = 0;
};
