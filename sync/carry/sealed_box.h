#pragma once
// What only one device can open: an anonymous box to its Ed25519 key, which stands for an X25519 key as well (libsodium's sealed
// box over crypto_sign_ed25519_pk_to_curve25519).

#include <optional>

#include "core/log/author.h"

namespace weavelog {

/// How much longer than its content a box is.
inline constexpr std::size_t kSealedBoxExtra = 48;

/// Nothing if the key is none that Ed25519 could have made.
[[nodiscard]] std::optional<Bytes> seal_for(const PublicKey& device, ByteView plain);
/// Nothing if it was sealed for another device or altered.
[[nodiscard]] std::optional<Bytes> open_sealed(const DeviceKey& device, ByteView sealed);

}  // namespace weavelog
