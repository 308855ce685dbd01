#include "sync/carry/sealed_box.h"

#include <sodium.h>

namespace weavelog {

static_assert(kSealedBoxExtra == crypto_box_SEALBYTES);

std::optional<Bytes> seal_for(const PublicKey& device, ByteView plain) {
  std::array<std::uint8_t, crypto_box_PUBLICKEYBYTES> to;
  if (crypto_sign_ed25519_pk_to_curve25519(to.data(), device.data()) != 0) return std::nullopt;
  Bytes out(plain.size() + kSealedBoxExtra);
  if (crypto_box_seal(out.data(), plain.data(), plain.size(), to.data()) != 0) return std::nullopt;
  return out;
}

std::optional<Bytes> open_sealed(const DeviceKey& device, ByteView sealed) {
  if (sealed.size() < kSealedBoxExtra) return std::nullopt;
  auto seed = device.seed();
  std::array<std::uint8_t, crypto_sign_PUBLICKEYBYTES> ed_public;
  std::array<std::uint8_t, crypto_sign_SECRETKEYBYTES> ed_secret;
  std::array<std::uint8_t, crypto_box_SECRETKEYBYTES> secret;
  std::array<std::uint8_t, crypto_box_PUBLICKEYBYTES> own;
  crypto_sign_seed_keypair(ed_public.data(), ed_secret.data(), seed.data());
  std::optional<Bytes> out;
  if (crypto_sign_ed25519_sk_to_curve25519(secret.data(), ed_secret.data()) == 0 &&
      crypto_sign_ed25519_pk_to_curve25519(own.data(), ed_public.data()) == 0) {
    out.emplace(sealed.size() - kSealedBoxExtra);
    if (crypto_box_seal_open(out->data(), sealed.data(), sealed.size(), own.data(), secret.data()) != 0) out.reset();
  }
  sodium_memzero(seed.data(), seed.size());
  sodium_memzero(ed_secret.data(), ed_secret.size());
  sodium_memzero(secret.data(), secret.size());
  return out;
}

}  // namespace weavelog
