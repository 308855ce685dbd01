#pragma once
// Hashes for tables whose keys come from other devices: salted, so that nobody can choose keys which meet in one place.

#include <array>
#include <cstdint>
#include <cstring>
#include <random>

#include "core/base/id.h"

namespace weavelog {

/// One salt for all of this process: asking the machine for chance takes longer than a small table.
[[nodiscard]] inline std::uint64_t process_salt() {
  static const std::uint64_t salt = static_cast<std::uint64_t>(std::random_device()()) << 32 | std::random_device()();
  return salt;
}

/// Mixes all bits into all (the finaliser of SplitMix64: Steele, Lea, Flood 2014).
[[nodiscard]] inline std::uint64_t mixed(std::uint64_t key) {
  key = (key ^ (key >> 30)) * 0xbf58476d1ce4e5b9U;
  key = (key ^ (key >> 27)) * 0x94d049bb133111ebU;
  return key ^ (key >> 31);
}

/// Of the sixteen bytes of an id.
struct SaltedIdHash {
  std::size_t operator()(const std::array<std::uint8_t, 16>& id) const {
    std::uint64_t first = 0, second = 0;
    std::memcpy(&first, id.data(), sizeof first);
    std::memcpy(&second, id.data() + sizeof first, sizeof second);
    // What the first half becomes nobody outside can foresee, so nor what the second half would have to be to make up for it.
    return static_cast<std::size_t>(mixed(mixed(first + process_salt()) ^ second));
  }
  template <class Tag>
  std::size_t operator()(const Id<Tag>& id) const {
    return operator()(id.bytes);
  }
};

}  // namespace weavelog
