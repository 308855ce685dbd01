#include "core/base/parallel.h"

#include <atomic>
#include <catch2/catch.hpp>
#include <stdexcept>
#include <vector>

using namespace weavelog;

TEST_CASE("every piece of parallel work is done once, however many there are") {
  for (const std::size_t count : {0u, 1u, 7u, 8u, 100u, 5000u}) {
    std::vector<std::atomic<int>> done(count);
    in_parallel(count, [&](std::size_t i) { ++done[i]; });
    for (const auto& times : done) REQUIRE(times == 1);
  }
}

TEST_CASE("what parallel work throws reaches the caller after all threads have ended") {
  std::atomic<int> running{0};
  const auto work = [&](std::size_t i) {
    ++running;
    const bool bad = i == 40;
    --running;
    if (bad) throw std::runtime_error("piece forty");
  };
  CHECK_THROWS_WITH(in_parallel(200, work), "piece forty");
  CHECK(running == 0);
}
