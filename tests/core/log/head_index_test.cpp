#include "core/log/head_index.h"

#include <catch2/catch.hpp>

#include "tests/support/processor_time.h"

using namespace weavelog;

namespace {
AuthorId author_of(std::size_t n) { return AuthorId{{static_cast<std::uint8_t>(n >> 8), static_cast<std::uint8_t>(n), 0, 0, 0, 0, 0, 0, static_cast<std::uint8_t>(n), 1}}; }
}  // namespace

TEST_CASE("a head is found by its author among few and many, also when they grow") {
  const std::size_t begin = GENERATE(0, 1, 15, 16, 17, 300);
  std::vector<Head> heads;
  for (std::size_t n = 0; n < begin; ++n) heads.push_back({author_of(n), n + 1, {}});
  HeadIndex index(heads);
  for (std::size_t n = begin; n < begin + 40; ++n) {
    CHECK(index.find(author_of(n)) == nullptr);
    heads.push_back({author_of(n), n + 1, {}});
    index.added();
  }
  for (std::size_t n = 0; n < heads.size(); ++n) {
    REQUIRE(index.find(author_of(n)) != nullptr);
    CHECK(index.find(author_of(n))->seq == n + 1);
    CHECK(index.place(author_of(n)) == n);
  }
  CHECK_FALSE(index.place(author_of(1000)));
}

TEST_CASE("of an author that is listed twice the first head counts, among few and many") {
  std::vector<Head> heads{{author_of(1), 5, {}}, {author_of(1), 9, {}}};
  if (GENERATE(false, true))
    for (std::size_t n = 2; n < 100; ++n) heads.push_back({author_of(n), 1, {}});
  CHECK(HeadIndex(heads).find(author_of(1))->seq == 5);
}

// 3,000 offers of 5,000 heads each, chosen so, kept a server busy for minutes.
TEST_CASE("heads whose authors were chosen to be alike in one half are found as quickly as others") {
  const bool second_half = GENERATE(false, true);
  std::vector<Head> heads(100'000);
  for (std::size_t n = 0; n < heads.size(); ++n)
    for (std::size_t at = 0; at < 3; ++at) heads[n].author.bytes[(second_half ? 8 : 0) + at] = static_cast<std::uint8_t>(n >> (8 * at));
  const double begin = testing::processor_ms();
  const HeadIndex index(heads);
  CHECK(index.place(heads.back().author) == heads.size() - 1);
  CHECK(testing::processor_ms() - begin < 3000);
}
