#pragma once
// The incremental fingerprint of a set of ids, as in the negentropy protocol, version 1 ("RangeFingerprint
// Algorithm").

#include <array>
#include <cstdint>

#include "core/base/digest.h"

namespace weavelog {

using RangeFingerprint = std::array<std::uint8_t, 16>;

/// A sum of ids, each read as a little-endian number, modulo 2^256. Sums of neighbouring runs can be added
/// and taken off one another.
class IdSum {
 public:
  void add(const Digest& id);
  void add(const IdSum& part);
  /// Takes off a sum that is part of this one.
  void subtract(const IdSum& part);
  /// The first 16 bytes of SHA-256 over the sum (32 bytes, little-endian) and `count` as a varint.
  [[nodiscard]] RangeFingerprint fingerprint(std::uint64_t count) const;

 private:
  std::array<std::uint64_t, 4> words_{};  // least significant first
};

}  // namespace weavelog
