#pragma once
// What stands in the chunks of a bundle. Shared by bundle_write.cpp, bundle_read.cpp and the fuzzer, which makes chunks that no
// program would.

#include "sync/carry/bundle.h"

namespace weavelog {

/// Kinds from kOptionalChunks on may be passed over by a program that does not know them.
enum class ChunkKind : std::uint8_t { manifest = 1, frame = 2, end = 3 };
inline constexpr std::uint8_t kOptionalChunks = 128;

/// Signs chunk after chunk: each signature covers the head of the bundle and all chunks before.
class ChunkWriter {
 public:
  ChunkWriter(ChunkSealer sealer, DeviceKey key);
  [[nodiscard]] Bytes head() const { return sealer_.head().bytes; }
  [[nodiscard]] Bytes add(std::uint8_t kind, ByteView payload, bool last = false);

 private:
  ChunkSealer sealer_;
  DeviceKey key_;
  Digest running_;
};

/// The running digest after one more chunk.
[[nodiscard]] Digest next_digest(const Digest& before, std::uint8_t kind, ByteView payload);
[[nodiscard]] Bytes chunk_message(const Digest& running);
[[nodiscard]] Bytes encode_manifest(const BundleManifest& manifest);
[[nodiscard]] Outcome<BundleManifest> decode_manifest(ByteView payload);

}  // namespace weavelog
