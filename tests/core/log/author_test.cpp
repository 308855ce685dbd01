// Ed25519: RFC 8032, section 7.1 (fixtures/published/sync_crypto.json).
#include "core/log/author.h"

#include <catch2/catch.hpp>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
template <std::size_t N>
std::array<std::uint8_t, N> bytes_in(const boost::json::value& object, std::string_view key) {
  std::array<std::uint8_t, N> out{};
  REQUIRE(from_hex(test::text_in(object, key), out));
  return out;
}

Bytes message_in(const boost::json::value& object) {
  const std::string hex = test::text_in(object, "message");
  Bytes out(hex.size() / 2);
  REQUIRE(from_hex(hex, out));
  return out;
}
}  // namespace

TEST_CASE("Ed25519 keys and signatures are the published ones", "[published]") {
  const auto vectors = test::published_json("sync_crypto.json");
  for (const auto& example : vectors.at("ed25519").as_array()) {
    CAPTURE(test::text_in(example, "name"));
    const auto key = DeviceKey::from_seed(bytes_in<32>(example, "secret"));
    const Bytes message = message_in(example);
    CHECK(key.public_key() == bytes_in<32>(example, "public"));
    CHECK(key.sign(message) == bytes_in<64>(example, "signature"));
    CHECK(verify(key.public_key(), message, key.sign(message)));
    CHECK(key.seed() == bytes_in<32>(example, "secret"));
  }
  CHECK(vectors.at("ed25519").as_array().size() == 2);
}

TEST_CASE("a changed or malleable signature is rejected", "[published]") {
  const auto vectors = test::published_json("sync_crypto.json");
  for (const auto& example : vectors.at("ed25519_must_reject").as_array()) {
    CAPTURE(test::text_in(example, "why"));
    CHECK_FALSE(
        verify(bytes_in<32>(example, "public"), message_in(example), bytes_in<64>(example, "signature")));
  }
  CHECK(vectors.at("ed25519_must_reject").as_array().size() == 2);
}

TEST_CASE("an author is its key and its incarnation, not its name") {
  const auto key = DeviceKey::generate();
  const AuthorCard card{key.public_key(), 1, "blue tablet"};
  CHECK(card.id() == AuthorCard{key.public_key(), 1, "renamed"}.id());
  CHECK(card.id() != AuthorCard{key.public_key(), 2, "blue tablet"}.id());
  CHECK(card.id() != AuthorCard{DeviceKey::generate().public_key(), 1, "blue tablet"}.id());
}
