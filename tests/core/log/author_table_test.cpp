#include <catch2/catch.hpp>
#include <cstring>
#include <unordered_set>

#include "core/base/salted_hash.h"
#include "core/log/device_name.h"
#include "core/log/value_codec.h"
#include "tests/support/processor_time.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

AuthorId author(std::uint32_t number) {
  AuthorId out;
  std::memcpy(out.bytes.data(), &number, sizeof number);
  return out;
}

}  // namespace

TEST_CASE("a table of authors gives each one place, however many there are") {
  AuthorTable table;
  table.add(author(7));  // as the author of the entry, whose place is 0
  for (std::uint32_t round = 0; round < 3; ++round)
    for (std::uint32_t i = 0; i < 100; ++i) CHECK(table.place(author(7 + i)) == i);
  REQUIRE(table.all().size() == 100);
  for (std::uint32_t i = 0; i < 100; ++i) CHECK(table.at(i) == author(7 + i));
}

// A frame of 159 bytes named 200,000 authors, and kept a server busy for a minute.
TEST_CASE("a table of a hundred thousand authors is not looked through for each") {
  const double begin = processor_ms();
  AuthorTable table;
  for (std::uint32_t i = 0; i < 100'000; ++i) CHECK_FALSE(table.place(author(i)) != i);
  CHECK(processor_ms() - begin < 3000);
}

TEST_CASE("ids that are alike in one half do not meet in one place of a table") {
  std::unordered_set<std::size_t> first_half, second_half;
  for (std::uint32_t i = 0; i < 10'000; ++i) {
    AuthorId id = author(i);
    first_half.insert(SaltedIdHash()(id) % 4096);
    std::swap_ranges(id.bytes.begin(), id.bytes.begin() + 8, id.bytes.begin() + 8);
    second_half.insert(SaltedIdHash()(id) % 4096);
  }
  // By chance 3,740 of 4,096 places are taken.
  CHECK(first_half.size() > 3500);
  CHECK(second_half.size() > 3500);
}

TEST_CASE("a device's name is shown without control characters, cut between characters") {
  CHECK(shown_name("Tablet 1") == "Tablet 1");
  CHECK(shown_name("a\nb\x1b[31m\x7f") == "a b [31m ");
  CHECK(shown_name(std::string(63, 'x') + "é") == std::string(63, 'x'));
  CHECK(shown_name(std::string(62, 'x') + "é and more") == std::string(62, 'x') + "é");
  CHECK(shown_name("bad \xff here") == "bad ");
  CHECK(shown_words(std::string(600, 'w')).size() == 500);
}
