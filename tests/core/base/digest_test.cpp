// BLAKE2b: RFC 7693 (fixtures/published/sync_crypto.json).
#include "core/base/digest.h"

#include <sodium.h>

#include <catch2/catch.hpp>

#include "tests/support/published.h"

using namespace weavelog;

TEST_CASE("BLAKE2b gives the published digests", "[published]") {
  int full_length = 0;
  int ours = 0;
  const auto vectors = test::published_json("sync_crypto.json");
  for (const auto& example : vectors.at("blake2b").as_array()) {
    const std::string message = test::text_in(example, "message_ascii");
    const std::string expected = test::text_in(example, "hex");
    if (example.at("digest_size").to_number<int>() == 32) {
      CHECK(to_hex(digest_of(as_bytes(message))) == expected);
      ++ours;
    } else {
      // RFC 7693 Appendix A prints 64 bytes: the same library that our 32-byte digest uses.
      std::array<std::uint8_t, 64> out{};
      crypto_generichash(out.data(), out.size(), as_bytes(message).data(), message.size(), nullptr, 0);
      CHECK(to_hex(out) == expected);
      ++full_length;
    }
  }
  CHECK(full_length == 2);
  CHECK(ours == 1);
}

TEST_CASE("a digest does not depend on how the bytes were cut up") {
  const std::string text(1'000, 'x');
  Digester pieces;
  for (std::size_t at = 0; at < text.size(); at += 7)
    pieces.add(as_bytes(std::string_view(text).substr(at, 7)));
  CHECK(pieces.finish() == digest_of(as_bytes(text)));
  CHECK(digest_of({as_bytes("a"), as_bytes("bc")}) == digest_of(as_bytes("abc")));
  CHECK(digest_of(as_bytes("abc")) != digest_of(as_bytes("abd")));
}
