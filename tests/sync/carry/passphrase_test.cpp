#include "sync/carry/passphrase.h"

#include <catch2/catch.hpp>

#include "sync/carry/bundle_seal.h"

using namespace weavelog;

TEST_CASE("a passphrase is judged by what a guesser would try") {
  for (const char* words : {"", "short", "sieben7", " seven77 "}) CHECK(passphrase_strength(words) == PassphraseStrength::too_short);
  for (const char* words : {"aaaaaaaaaaaa", "12345678", "qwertzuiop", "password", "abcdefghijkl", "anna anna anna"}) {
    INFO(words);
    CHECK(passphrase_strength(words) == PassphraseStrength::weak);
  }
  for (const char* words : {"t7Kq!m2x", "ferry window ladder salt", "Kurbel-93-Möwe"}) {
    INFO(words << " " << passphrase_bits(words));
    CHECK(passphrase_strength(words) == PassphraseStrength::fair);
  }
  for (const char* words : {"ferry window ladder salt bridge", "v9#Lq2!tW8@zRk"}) {
    INFO(words << " " << passphrase_bits(words));
    CHECK(passphrase_strength(words) == PassphraseStrength::strong);
  }
  for (int i = 0; i < 20; ++i) CHECK(passphrase_strength(make_passphrase()) == PassphraseStrength::strong);
}
