// Ids bound to a kind: UUID version 8, RFC 9562, sections 4.1, 4.2 and 5.8 (version and variant where every UUID has them, the rest as the maker likes).
#include "core/log/entity_id.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/log/cell.h"
#include "core/log/derived_id.h"

using namespace weavelog;

namespace {
constexpr UnixMs kNow = 1'937'556'000'123;
}

TEST_CASE("an id says its kind, when it was made, and is a UUID of version 8", "[published]") {
  for (const int number : {0, 1, 5, 255, 256, 4095}) {
    const EntityId id = make_entity_id(static_cast<EntityKind>(number), kNow);
    CHECK(kind_bound_to(id) == static_cast<EntityKind>(number));
    CHECK(id.bytes[6] >> 4 == 8);
    CHECK(id.bytes[8] >> 6 == 2);
    UnixMs made = 0;
    for (std::size_t i = 0; i < 6; ++i) made = made << 8 | id.bytes[i];
    CHECK(made == kNow);
  }
}

TEST_CASE("ids of one kind do not repeat and sort as they were made") {
  EntityId before;
  std::set<EntityId> seen;
  for (int i = 0; i < 5'000; ++i) {
    const EntityId id = make_entity_id(EntityKind{5}, kNow);
    CHECK(before < id);
    CHECK(seen.insert(id).second);
    before = id;
  }
}

TEST_CASE("a kind that has no room in an id, and an id made before, are bound to nothing") {
  CHECK_FALSE(kind_bound_to(make_entity_id(EntityKind{4096}, kNow)));
  CHECK_FALSE(kind_bound_to(make_entity_id(EntityKind{65535}, kNow)));
  CHECK_FALSE(kind_bound_to(make_id<EntityId>(kNow)));
  CHECK_FALSE(kind_bound_to(EntityId{}));
  CHECK_FALSE(kind_bound_to(derived_id(make_entity_id(EntityKind{5}, kNow), "something")));
}

TEST_CASE("what a faulty device writes to an entity as to one of another kind does not change what it is") {
  constexpr EntityKind kMade{5}, kSaid{3};
  EntityState state;
  state.id = make_entity_id(kMade, kNow);
  const Write honest{state.id, kMade, FieldTag{501}, std::string("as agreed"), {}}, faulty{state.id, kSaid, FieldTag{301}, std::string("mine"), {}};
  const Dot ours{AuthorId{{1}}, 1, 0}, theirs{AuthorId{{2}}, 1, 0};
  EntityState other_way = state;
  state.apply(honest, ours, Stamp{10});
  state.apply(faulty, theirs, Stamp{11});
  other_way.apply(faulty, theirs, Stamp{11});
  CHECK(other_way.kind == kMade);
  other_way.apply(honest, ours, Stamp{10});
  CHECK(state.kind == kMade);
  CHECK(encode_state(state) == encode_state(other_way));
}
