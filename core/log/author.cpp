#include "core/log/author.h"

#include <sodium.h>

#include <algorithm>
#include <stdexcept>

#include "core/base/digest.h"

namespace weavelog {

struct DeviceKey::Secret {
  PublicKey public_key{};
  std::array<std::uint8_t, crypto_sign_SECRETKEYBYTES> secret_key{};

  Secret() = default;
  Secret(const Secret&) = delete;
  Secret& operator=(const Secret&) = delete;
  ~Secret() { sodium_memzero(secret_key.data(), secret_key.size()); }
};

namespace {
void start_sodium() {
  static const int started = sodium_init();
  if (started < 0) throw std::logic_error("libsodium does not start");
}
}  // namespace

DeviceKey::DeviceKey(std::shared_ptr<const Secret> secret) : secret_(std::move(secret)) {}

DeviceKey DeviceKey::generate() {
  start_sodium();
  std::array<std::uint8_t, 32> seed;
  randombytes_buf(seed.data(), seed.size());
  DeviceKey key = from_seed(seed);
  sodium_memzero(seed.data(), seed.size());
  return key;
}

DeviceKey DeviceKey::from_seed(const std::array<std::uint8_t, 32>& seed) {
  start_sodium();
  auto secret = std::make_shared<Secret>();
  crypto_sign_seed_keypair(secret->public_key.data(), secret->secret_key.data(), seed.data());
  return DeviceKey(std::move(secret));
}

const PublicKey& DeviceKey::public_key() const { return secret_->public_key; }

Signature DeviceKey::sign(ByteView message) const {
  Signature signature;
  crypto_sign_detached(signature.data(), nullptr, message.data(), message.size(), secret_->secret_key.data());
  return signature;
}

std::array<std::uint8_t, 32> DeviceKey::seed() const {
  std::array<std::uint8_t, 32> seed;
  crypto_sign_ed25519_sk_to_seed(seed.data(), secret_->secret_key.data());
  return seed;
}

bool verify(const PublicKey& key, ByteView message, const Signature& signature) {
  return crypto_sign_verify_detached(signature.data(), message.data(), message.size(), key.data()) == 0;
}

AuthorId AuthorCard::id() const {
  std::array<std::uint8_t, 8> number;
  for (std::size_t i = 0; i < number.size(); ++i) number[i] = static_cast<std::uint8_t>(incarnation >> (8 * i));
  const Digest digest = digest_of({as_bytes("weavelog author 1"), key, number});
  AuthorId id;
  std::copy_n(digest.begin(), id.bytes.size(), id.bytes.begin());
  return id;
}

}  // namespace weavelog
