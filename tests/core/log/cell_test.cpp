#include "core/log/cell.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/support/published.h"
#include "tests/support/small_registry.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

AuthorId author(char letter) { return AuthorId{{static_cast<std::uint8_t>(letter)}}; }

/// One replica of one field, as the published scenario speaks of it.
struct Replica {
  AuthorId self;
  EntityState state;
  std::uint64_t seq = 0;
  std::vector<std::pair<Write, Dot>> log;

  explicit Replica(char letter) : self(author(letter)) {}

  void assign(const std::string& value) {
    Write write{EntityId{{1}}, kBox, kGuarded, value, {}};
    if (const Cell* cell = state.find(kGuarded))
      for (const auto& held : cell->values) write.replaces.push_back(held.dot);
    take(write, Dot{self, ++seq, 0});
  }
  void take(const Write& write, const Dot& dot) {
    state.apply(write, dot, Stamp{log.size() + 1});
    log.emplace_back(write, dot);
  }
  /// In the order of the other's log, which respects causality; what is known already changes nothing.
  void merge(const Replica& other) {
    for (const auto& [write, dot] : other.log)
      if (std::none_of(log.begin(), log.end(), [&](const auto& own) { return own.second == dot; })) take(write, dot);
  }
  [[nodiscard]] std::vector<std::string> values() const {
    std::vector<std::string> out;
    if (const Cell* cell = state.find(kGuarded))
      for (const auto& held : cell->values) out.push_back(text_of(held.value));
    std::sort(out.begin(), out.end());
    return out;
  }
};

using Values = std::vector<std::string>;

}  // namespace

// Source: Shapiro, Preguica, Baquero, Zawirski (2011), INRIA RR-7506, MV-Register (Spec. 10, section 3.2.2; numbers from
// memory). The steps are a worked scenario of our own that follows the definition.
TEST_CASE("a cell is the published multi-value register", "[published]") {
  const auto published = test::published_json("sync_clocks_crdt.json").at("mv_register").at("steps");
  const auto expected = [&](std::size_t step) {
    Values out;
    for (const auto& value : published.at(step).at("value").as_array()) out.emplace_back(value.as_string());
    return out;
  };
  Replica a('A'), b('B');
  a.assign("52");
  b.assign("54");
  const Replica old_b = b;
  a.merge(b);
  CHECK(a.values() == expected(2));
  a.assign("53");
  a.merge(old_b);
  CHECK(a.values() == expected(4));
  b.assign("55");
  a.merge(b);
  CHECK(a.values() == expected(6));
}

TEST_CASE("merging is commutative, associative and idempotent to the byte") {
  Replica a('A'), b('B'), c('C');
  a.assign("1");
  b.merge(a);
  c.merge(a);
  a.assign("2");
  b.assign("3");
  c.assign("4");
  Replica ab = a, ba = b;
  ab.merge(b);
  ba.merge(a);
  CHECK(ab.values() == ba.values());
  Replica left = ab, right = b;
  left.merge(c);
  right.merge(c);
  right.merge(a);
  CHECK(left.values() == right.values());
  const auto before = encode_state(left.state);
  left.merge(b);
  CHECK(encode_state(left.state) == before);
}

TEST_CASE("the bytes of a state do not depend on the order in which concurrent writes came") {
  const EntityId box{{7}};
  const std::vector<Write> writes{{box, kBox, kLabel, std::string("x"), {}}, {box, kBox, kCount, std::int64_t{-3}, {}},
                                  {box, kBox, kLabel, Value{}, {}}, {box, kBox, kGuarded, Quantity{{2450, 2}, Unit::kilogram_force}, {}}};
  std::vector<std::size_t> order{0, 1, 2, 3};
  std::optional<Bytes> first;
  do {
    EntityState state;
    state.id = box;
    for (const std::size_t i : order) state.apply(writes[i], Dot{author(static_cast<char>('A' + i)), 1, 0}, Stamp{i + 1});
    const Bytes bytes = encode_state(state);
    if (!first) first = bytes;
    CHECK(bytes == *first);
    const auto back = decode_state({}, box, bytes);
    REQUIRE(back);
    CHECK(*back == state);
  } while (std::next_permutation(order.begin(), order.end()));
}

TEST_CASE("a cleared field against a changed one is an open question, equal answers are not") {
  Replica a('A'), b('B');
  a.assign("52");
  b.merge(a);
  Write clear{EntityId{{1}}, kBox, kGuarded, Value{}, {a.state.cells[0].values[0].dot}};
  a.take(clear, Dot{author('A'), 2, 0});
  b.assign("51");
  a.merge(b);
  CHECK(a.state.find(kGuarded)->split());
  Replica c('C'), d('D');
  c.assign("52");
  d.assign("52");
  c.merge(d);
  CHECK(c.state.find(kGuarded)->values.size() == 2);
  CHECK_FALSE(c.state.find(kGuarded)->split());
}

TEST_CASE("damaged rows are a fault, not a crash") {
  Replica a('A');
  a.assign("52");
  const Bytes whole = encode_state(a.state);
  for (std::size_t cut = 0; cut < whole.size(); ++cut) {
    const auto state = decode_state({}, EntityId{{1}}, ByteView(whole).first(cut));
    REQUIRE_FALSE(state);
    CHECK(state.error().code == FaultCode::damaged);
  }
}
