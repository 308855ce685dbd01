#pragma once
// Who writes: a device's Ed25519 key (RFC 8032) and its incarnation, new whenever a database is created, restored or
// found to be a clone.

#include <array>
#include <cstdint>
#include <memory>
#include <string>

#include "core/base/bytes.h"
#include "core/base/id.h"
#include "core/base/outcome.h"

namespace weavelog {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

/// The public side of an author, enough to check its signatures. The name is for people and is not trusted.
struct AuthorCard {
  PublicKey key{};
  std::uint64_t incarnation = 0;
  std::string device;

  /// First 16 bytes of BLAKE2b-256 over a prefix, the key and the incarnation (little-endian).
  [[nodiscard]] AuthorId id() const;
  bool operator==(const AuthorCard&) const = default;
};

/// A device's secret key. Copies share the secret; it is wiped when the last one goes.
class DeviceKey {
 public:
  [[nodiscard]] static DeviceKey generate();
  /// The 32-byte seed of RFC 8032.
  [[nodiscard]] static DeviceKey from_seed(const std::array<std::uint8_t, 32>& seed);

  [[nodiscard]] const PublicKey& public_key() const;
  [[nodiscard]] Signature sign(ByteView message) const;
  /// For the key file (sync/trust), and for opening what was sealed to the device (sync/carry).
  [[nodiscard]] std::array<std::uint8_t, 32> seed() const;

 private:
  struct Secret;
  explicit DeviceKey(std::shared_ptr<const Secret> secret);
  std::shared_ptr<const Secret> secret_;
};

/// Strict verification: false also for keys and signatures that RFC 8032 leaves room for but libsodium rejects.
[[nodiscard]] bool verify(const PublicKey& key, ByteView message, const Signature& signature);

}  // namespace weavelog
