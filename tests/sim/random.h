#pragma once
// The only source of chance in the simulator: SplitMix64 (Steele, Lea, Flood 2014, "Fast splittable
// pseudorandom number generators"), because the distributions of <random> differ between standard libraries.

#include <cstddef>
#include <cstdint>
#include <vector>

namespace weavelog::sim {

class Random {
 public:
  explicit Random(std::uint64_t seed = 0) : state_(seed) {}

  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15U);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31);
  }
  /// 0 to n - 1; 0 for n = 0. The bias of the remainder does not matter here.
  std::uint64_t below(std::uint64_t n) { return n == 0 ? 0 : next() % n; }
  /// From `low` to `high`, both included.
  std::int64_t between(std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(below(static_cast<std::uint64_t>(high - low) + 1));
  }
  /// True in `of_thousand` of 1000 cases.
  bool chance(std::uint64_t of_thousand) { return below(1000) < of_thousand; }
  template <class Container>
  const typename Container::value_type& pick(const Container& from) {
    return from.at(static_cast<std::size_t>(below(from.size())));
  }

 private:
  std::uint64_t state_;
};

/// From here on libsodium (keys, nonces, incarnations, ids) and SQLite take their randomness from this seed.
/// Has to be called before anything starts libsodium; may be called again at any time.
void seed_libraries(std::uint64_t seed);

}  // namespace weavelog::sim
