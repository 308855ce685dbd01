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

TEST_CASE("work ahead is done in its order, and each piece is there for who waited for it") {
  for (const std::size_t count : {0u, 1u, 7u, 8u, 100u, 5000u}) {
    std::vector<std::size_t> order;
    order.reserve(count);
    std::vector<int> done(count);
    {
      WorkAhead ahead(count, [&](std::size_t i) {
        order.push_back(i);
        done[i] = static_cast<int>(i) + 1;
      });
      for (std::size_t i = 0; i < count; ++i) {
        ahead.wait_for(i);
        REQUIRE(done[i] == static_cast<int>(i) + 1);
      }
    }
    REQUIRE(order.size() == count);
    for (std::size_t i = 0; i < count; ++i) REQUIRE(order[i] == i);
  }
}

TEST_CASE("what work ahead throws reaches who waits for it, and nothing runs any more once it is gone") {
  for (const std::size_t count : {3u, 200u}) {
    WorkAhead ahead(count, [&](std::size_t i) {
      if (i == 2) throw std::runtime_error("piece two");
    });
    CHECK_THROWS_WITH(ahead.wait_for(count - 1), "piece two");
  }
  std::atomic<int> running{0};
  {
    WorkAhead ahead(500, [&](std::size_t) {
      ++running;
      --running;
    });
    ahead.wait_for(3);
  }
  CHECK(running == 0);
}
