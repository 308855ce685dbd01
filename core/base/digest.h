#pragma once
// BLAKE2b (RFC 7693) with 32 bytes of output, unkeyed: every hash of the project.

#include <array>
#include <initializer_list>

#include "core/base/bytes.h"

namespace weavelog {

using Digest = std::array<std::uint8_t, 32>;

/// The digest of the parts one after another, as if they were one run of bytes.
[[nodiscard]] Digest digest_of(std::initializer_list<ByteView> parts);
[[nodiscard]] inline Digest digest_of(ByteView bytes) { return digest_of({bytes}); }

/// A digest over bytes that come in pieces.
class Digester {
 public:
  Digester();
  void add(ByteView bytes);
  /// Ends it; the digester must not be used afterwards.
  [[nodiscard]] Digest finish();

 private:
  alignas(64) std::array<std::uint8_t, 384> state_;
};

}  // namespace weavelog
