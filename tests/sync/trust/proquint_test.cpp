#include "sync/trust/proquint.h"

#include <catch2/catch.hpp>

using namespace weavelog;

TEST_CASE("proquints: the published examples", "[trust][published]") {
  // Source: D. S. Wilkerson, "A Proposal for Proquints", arXiv:0901.4016, table of IP addresses.
  struct Example {
    std::array<std::uint8_t, 4> bytes;
    const char* words;
  };
  const Example examples[] = {{{127, 0, 0, 1}, "lusab-babad"},      {{63, 84, 220, 193}, "gutih-tugad"},
                              {{63, 118, 7, 35}, "gutuk-bisog"},    {{140, 98, 193, 141}, "mudof-sakat"},
                              {{64, 255, 6, 200}, "haguz-biram"},   {{128, 30, 52, 45}, "mabiv-gibot"},
                              {{147, 67, 119, 2}, "natag-lisaf"},   {{212, 58, 253, 68}, "tibup-zujah"},
                              {{216, 35, 68, 215}, "tobog-higil"},  {{216, 68, 232, 21}, "todah-vobij"},
                              {{198, 81, 129, 136}, "sinid-makam"}, {{12, 110, 110, 204}, "budov-kuras"}};
  for (const auto& example : examples) {
    CHECK(to_proquints(example.bytes) == example.words);
    const auto back = from_proquints(example.words);
    REQUIRE(back);
    CHECK(*back == Bytes(example.bytes.begin(), example.bytes.end()));
  }
}

TEST_CASE("proquints: every 16-bit word comes back", "[trust]") {
  for (unsigned value = 0; value < 65536; ++value) {
    const Bytes bytes = {static_cast<std::uint8_t>(value >> 8), static_cast<std::uint8_t>(value)};
    const auto back = from_proquints(to_proquints(bytes));
    if (!back || *back != bytes) FAIL("value " << value);
  }
}

TEST_CASE("proquints: read as people type them", "[trust]") {
  const Bytes home = {127, 0, 0, 1};
  for (const char* text : {"LUSAB BABAD", "  lusab --babad\n", "lusabbabad", "Lusab, Babad.",
                           "lusab\xe2\x80\x93"
                           "babad",
                           "lusab\xc2\xa0"
                           "babad"}) {
    INFO(text);
    const auto read = from_proquints(text);
    REQUIRE(read);
    CHECK(*read == home);
  }
  CHECK(from_proquints("")->empty());
}

TEST_CASE("proquints: a slip is named by word and letter", "[trust]") {
  const auto letter = from_proquints("lusab-bebad");
  REQUIRE_FALSE(letter);
  CHECK(letter.error().code == FaultCode::bad_input);
  CHECK(letter.error().where == "word 2");
  CHECK(letter.error().what.find("letter 2") != std::string::npos);
  const auto letters = from_proquints("lusab bab");
  REQUIRE_FALSE(letters);
  CHECK(letters.error().where == "word 2");
  CHECK(letters.error().what.find("3 letters") != std::string::npos);
  CHECK_FALSE(from_proquints("lusab-\xff\xfe\x00zz"));
  CHECK_FALSE(from_proquints(std::string(100000, 'b')));
}

TEST_CASE("agreement words: three words, the same for the same digest only", "[trust]") {
  const Digest one = digest_of(as_bytes("one"));
  Digest other = one;
  other[31] ^= 1;
  CHECK(agreement_words(one) == agreement_words(one));
  CHECK(agreement_words(one) != agreement_words(other));
  CHECK(agreement_words(one).size() == 17);
}
