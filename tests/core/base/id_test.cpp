// UUID version 7: RFC 9562, section 5.7 and Appendix A.6 (fixtures/published/sync_crypto.json).
#include "core/base/id.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "tests/support/published.h"

using namespace weavelog;

TEST_CASE("UUIDv7 has the published layout", "[published]") {
  const auto vectors = test::published_json("sync_crypto.json").at("uuid_v7");
  int checked = 0;
  for (const char* group : {"published", "layout"}) {
    for (const auto& example : vectors.at(group).as_array()) {
      const auto made =
          uuid_v7(example.at("unix_ts_ms").to_number<std::uint64_t>(),
                  static_cast<std::uint16_t>(std::stoul(test::text_in(example, "rand_a_hex"), nullptr, 16)),
                  std::stoull(test::text_in(example, "rand_b_hex"), nullptr, 16));
      std::string expected = test::text_in(example, "uuid");
      std::transform(expected.begin(), expected.end(), expected.begin(),
                     [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
      CHECK(uuid_text(made) == expected);
      ++checked;
    }
  }
  CHECK(checked == 4);
}

TEST_CASE("fresh ids carry version and variant, sort by time and do not repeat") {
  std::set<std::string> seen;
  const auto early = make_id<EntityId>(1'000);
  const auto late = make_id<EntityId>(2'000);
  CHECK(early < late);
  for (int i = 0; i < 1'000; ++i) {
    const auto id = make_id<BookId>(1'700'000'000'000);
    CHECK((id.bytes[6] >> 4) == 7);
    CHECK((id.bytes[8] >> 6) == 2);
    seen.insert(id.hex());
  }
  CHECK(seen.size() == 1'000);
}

TEST_CASE("a wall clock before 1970 still makes an id") {
  CHECK(make_id<EntityId>(-5).bytes[0] == 0);
}

TEST_CASE("ids come back from hex and bytes, and only from exactly that") {
  const auto id = make_id<EntityId>(1'700'000'000'000);
  CHECK(EntityId::from_hex(id.hex()) == id);
  CHECK(EntityId::from_bytes(id.view()) == id);
  CHECK_FALSE(EntityId::from_hex(id.hex().substr(1)));
  CHECK_FALSE(EntityId::from_hex(std::string(31, '0') + "g"));
  CHECK_FALSE(EntityId::from_bytes(id.view().first(15)));
  CHECK_FALSE(EntityId{});
}

TEST_CASE("identifiers of one millisecond sort in the order of making, however many") {
  constexpr std::int64_t kNow = 1'937'556'000'123;
  auto before = make_id<EntityId>(kNow);
  for (int i = 0; i < 10'000; ++i) {
    const auto next = make_id<EntityId>(kNow);
    REQUIRE(before < next);
    before = next;
  }
  CHECK(make_id<EntityId>(kNow) != make_id<EntityId>(kNow));
  CHECK(make_id<EntityId>(0) < before);
}
