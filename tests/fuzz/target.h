#pragma once
// A fuzz target: what it does with any bytes, and inputs to begin with. The same sources are linked into libFuzzer's programs and
// into test_fuzz, which runs every seed and every input that ever broke something.

#include <functional>
#include <map>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/base/bytes.h"

namespace weavelog::fuzz {

struct Target {
  const char* name;
  void (*run)(ByteView input);
  std::vector<Bytes> (*seeds)();
};

[[nodiscard]] std::span<const Target> targets();

/// Counts that a run came to a place worth coming to, so that a test can see that the seeds go where they are meant to.
void note_reached(const char* place);
[[nodiscard]] const std::map<std::string, std::size_t>& reached();

/// A promise that must hold for any input; a broken one is a crash to the fuzzer and a failure to the test.
class Broken : public std::logic_error {
 public:
  using std::logic_error::logic_error;
};
inline void must_hold(bool holds, const char* what) {
  if (!holds) throw Broken(what);
}

/// Takes an input apart: small numbers and runs of bytes, zeros at its end.
class Input {
 public:
  explicit Input(ByteView bytes) : left_(bytes) {}
  [[nodiscard]] bool empty() const { return left_.empty(); }
  [[nodiscard]] std::uint8_t byte() {
    if (left_.empty()) return 0;
    const std::uint8_t out = left_.front();
    left_ = left_.subspan(1);
    return out;
  }
  /// From 0 to `below` - 1.
  [[nodiscard]] std::size_t pick(std::size_t below) {
    if (below <= 1) return 0;
    const std::size_t wide = static_cast<std::size_t>(byte()) << 8;
    return (wide | byte()) % below;
  }
  [[nodiscard]] ByteView run(std::size_t most) {
    const std::size_t size = std::min(most, left_.size());
    const ByteView out = left_.first(size);
    left_ = left_.subspan(size);
    return out;
  }
  [[nodiscard]] ByteView rest() { return run(left_.size()); }

 private:
  ByteView left_;
};

}  // namespace weavelog::fuzz
