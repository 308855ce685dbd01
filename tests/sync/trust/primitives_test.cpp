// The primitives behind sealing, pairing and trust, as the library gives them, are the published ones (fixtures/published/primitives.json; Ed25519 and
// unkeyed BLAKE2b stand in tests/core/log).

#include <sodium.h>

#include <array>
#include <catch2/catch.hpp>

#include "core/base/bytes.h"
#include "tests/support/published.h"

using namespace weavelog;

namespace {

const boost::json::value& vectors() {
  static const boost::json::value held = test::published_json("primitives.json");
  return held;
}
Bytes bytes_in(const boost::json::value& object, std::string_view key) {
  const std::string text = test::text_in(object, key);
  Bytes out(text.size() / 2);
  std::size_t length = 0;
  REQUIRE(sodium_hex2bin(out.data(), out.size(), text.data(), text.size(), nullptr, &length, nullptr) == 0);
  REQUIRE(length == out.size());
  return out;
}
Bytes as_plain(const std::string& text) { return {text.begin(), text.end()}; }

}  // namespace

TEST_CASE("X25519 is that of RFC 7748, 5.2 and 6.1", "[published]") {
  REQUIRE(sodium_init() >= 0);
  for (const auto& vector : vectors().at("x25519").as_array()) {
    Bytes out(crypto_scalarmult_BYTES);
    REQUIRE(crypto_scalarmult(out.data(), bytes_in(vector, "scalar").data(), bytes_in(vector, "u").data()) == 0);
    CHECK(out == bytes_in(vector, "out"));
  }
  const auto& agreement = vectors().at("x25519_agreement");
  Bytes own(crypto_scalarmult_BYTES), shared(crypto_scalarmult_BYTES);
  REQUIRE(crypto_scalarmult_base(own.data(), bytes_in(agreement, "bob_secret").data()) == 0);
  CHECK(own == bytes_in(agreement, "bob_public"));
  REQUIRE(crypto_scalarmult(shared.data(), bytes_in(agreement, "bob_secret").data(), bytes_in(agreement, "alice_public").data()) == 0);
  CHECK(shared == bytes_in(agreement, "shared"));
}

TEST_CASE("a device's signing key and its sealing key are one pair", "[published]") {
  REQUIRE(sodium_init() >= 0);
  // No vector was published for the change from one curve to the other; both ways round it has to come to the same key.
  std::array<unsigned char, crypto_sign_SEEDBYTES> seed{};
  for (unsigned char first = 1; first < 20; ++first) {
    seed[0] = first;
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> open{};
    std::array<unsigned char, crypto_sign_SECRETKEYBYTES> secret{};
    REQUIRE(crypto_sign_seed_keypair(open.data(), secret.data(), seed.data()) == 0);
    std::array<unsigned char, crypto_scalarmult_BYTES> from_open{}, from_secret{}, scalar{};
    REQUIRE(crypto_sign_ed25519_pk_to_curve25519(from_open.data(), open.data()) == 0);
    REQUIRE(crypto_sign_ed25519_sk_to_curve25519(scalar.data(), secret.data()) == 0);
    REQUIRE(crypto_scalarmult_base(from_secret.data(), scalar.data()) == 0);
    CHECK(from_open == from_secret);
  }
}

TEST_CASE("SHA-256 is that of FIPS 180-4, keyed BLAKE2b that of its reference test set", "[published]") {
  REQUIRE(sodium_init() >= 0);
  const auto& sha = vectors().at("sha256");
  const std::string text = test::text_in(sha, "text");
  Bytes digest(crypto_hash_sha256_BYTES);
  REQUIRE(crypto_hash_sha256(digest.data(), as_plain(text).data(), text.size()) == 0);
  CHECK(digest == bytes_in(sha, "digest"));
  const auto& keyed = vectors().at("blake2b_keyed");
  const Bytes key = bytes_in(keyed, "key");
  Bytes out(crypto_generichash_BYTES_MAX);
  REQUIRE(crypto_generichash(out.data(), out.size(), nullptr, 0, key.data(), key.size()) == 0);
  CHECK(out == bytes_in(keyed, "digest_of_nothing"));
}

TEST_CASE("what bundles are sealed with is ChaCha20-Poly1305 as RFC 8439 has it, with the longer nonce of its draft", "[published]") {
  REQUIRE(sodium_init() >= 0);
  const auto& half = vectors().at("hchacha20");
  Bytes out(crypto_core_hchacha20_OUTPUTBYTES);
  REQUIRE(crypto_core_hchacha20(out.data(), bytes_in(half, "nonce").data(), bytes_in(half, "key").data(), nullptr) == 0);
  CHECK(out == bytes_in(half, "out"));
  const auto& vector = vectors().at("chacha20poly1305");
  const Bytes key = bytes_in(vector, "key"), added = bytes_in(vector, "added"), text = as_plain(test::text_in(vector, "text"));
  Bytes sealed(text.size()), tag(16);
  unsigned long long length = 0;
  REQUIRE(crypto_aead_chacha20poly1305_ietf_encrypt_detached(sealed.data(), tag.data(), &length, text.data(), text.size(), added.data(), added.size(),
                                                             nullptr, bytes_in(vector, "nonce").data(), key.data()) == 0);
  CHECK(tag == bytes_in(vector, "tag"));
  REQUIRE(crypto_aead_xchacha20poly1305_ietf_encrypt_detached(sealed.data(), tag.data(), &length, text.data(), text.size(), added.data(), added.size(),
                                                              nullptr, bytes_in(vector, "xnonce").data(), key.data()) == 0);
  CHECK(tag == bytes_in(vector, "xtag"));
}

TEST_CASE("a secret box is that of the paper that made it", "[published]") {
  REQUIRE(sodium_init() >= 0);
  const auto& vector = vectors().at("secretbox");
  const Bytes message = bytes_in(vector, "message");
  Bytes sealed(message.size() + crypto_secretbox_MACBYTES);
  REQUIRE(crypto_secretbox_easy(sealed.data(), message.data(), message.size(), bytes_in(vector, "nonce").data(), bytes_in(vector, "key").data()) == 0);
  CHECK(sealed == bytes_in(vector, "sealed"));
}

TEST_CASE("a passphrase is stretched by Argon2id as its reference implementation has it", "[published]") {
  REQUIRE(sodium_init() >= 0);
  const auto& vector = vectors().at("argon2id");
  const std::string string = test::text_in(vector, "string"), password = test::text_in(vector, "password");
  CHECK(crypto_pwhash_str_verify(string.c_str(), password.data(), password.size()) == 0);
  CHECK(crypto_pwhash_str_verify(string.c_str(), password.data(), password.size() - 1) != 0);
  const auto& own = vector.at("own");
  const std::string passphrase = test::text_in(own, "passphrase"), salt = test::text_in(own, "salt");
  REQUIRE(salt.size() == crypto_pwhash_SALTBYTES);
  Bytes key(32);
  REQUIRE(crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(), as_plain(salt).data(), own.at("passes").to_number<std::uint64_t>(),
                        own.at("memory_kib").to_number<std::size_t>() * 1024, crypto_pwhash_ALG_ARGON2ID13) == 0);
  CHECK(key == bytes_in(own, "out"));
}
