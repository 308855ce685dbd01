#include "core/store/entity_cache.h"

#include <catch2/catch.hpp>

#include "tests/support/ledgers.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

constexpr EntityKind kOften{1}, kOnce{2};

HeldEntity entity_of(EntityKind kind, int number) {
  HeldEntity out;
  out.state.book = BookId{{1}};
  out.state.id.bytes = {static_cast<std::uint8_t>(kind), static_cast<std::uint8_t>(number >> 8), static_cast<std::uint8_t>(number)};
  out.state.kind = kind;
  out.questions = number;
  return out;
}

bool holds(EntityCache& cache, const HeldEntity& entity) { return cache.find(entity.state.book, entity.state.id).has_value(); }

}  // namespace

TEST_CASE("entity cache: what is taken out is what was given, and is no longer there") {
  EntityCache cache;
  cache.give(entity_of(kOften, 7));
  const HeldEntity wanted = entity_of(kOften, 7);
  const auto taken = cache.take(wanted.state.book, wanted.state.id);
  REQUIRE(taken);
  CHECK(taken->state == wanted.state);
  CHECK(taken->questions == 7);
  CHECK_FALSE(holds(cache, wanted));
}

TEST_CASE("entity cache: as many as it may hold, the ones that were given last") {
  EntityCache cache;
  const int most = static_cast<int>(EntityCache::kMost);
  for (int i = 0; i < most + 10; ++i) {
    cache.give(entity_of(kOften, i));
    REQUIRE(holds(cache, entity_of(kOften, i)));
  }
  CHECK_FALSE(holds(cache, entity_of(kOften, 9)));
  CHECK(holds(cache, entity_of(kOften, 10)));
  cache.clear();
  CHECK_FALSE(holds(cache, entity_of(kOften, most)));
}

TEST_CASE("entity cache: a kind that is never asked for does not push out one that is, until it is asked for") {
  EntityCache cache;
  const int jobs = static_cast<int>(EntityCache::kMost) / 2;
  // Each job comes back once in a round, and eight marks are made meanwhile: more of them than there is room. That jobs come back is known
  // after a few rounds only.
  int found = 0, asked = 0;
  for (int round = 0; round < 8; ++round)
    for (int job = 0; job < jobs; ++job) {
      const HeldEntity wanted = entity_of(kOften, job);
      const auto taken = cache.take(wanted.state.book, wanted.state.id);
      if (round > 5) {
        ++asked;
        found += taken ? 1 : 0;
      }
      cache.give(wanted);
      for (int mark = 0; mark < 8; ++mark) cache.give(entity_of(kOnce, (job * 8 + mark) % 30'000));
    }
  CHECK(found > asked * 9 / 10);

  // Now marks are asked for as soon as they are made: a few are still kept, and from them it is seen.
  int kept = 0;
  for (int i = 0; i < 6000; ++i) {
    cache.give(entity_of(kOnce, i));
    if (holds(cache, entity_of(kOnce, i)) && i >= 5000) ++kept;
  }
  CHECK(kept == 1000);
}
