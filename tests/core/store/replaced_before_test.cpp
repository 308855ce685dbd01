#include "core/store/replaced_before.h"

#include <catch2/catch.hpp>

#include "tests/support/ledgers.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a value that is replaced by an entry before it does not stand when the book is made from its entries") {
  const AuthorId one = AuthorCard{DeviceKey::generate().public_key(), 1, "one"}.id(), two = AuthorCard{DeviceKey::generate().public_key(), 1, "two"}.id();
  const auto entry = [](std::uint64_t seq, const std::string& word, std::vector<Dot> replaces) {
    return Entry{seq, Stamp::of(static_cast<std::uint64_t>(kNoon) + seq, 0), 1, kEdit, {Write{kOne, kBox, kGuarded, word, std::move(replaces)}}};
  };
  const std::vector<std::pair<AuthorId, Entry>> held{
      {one, entry(1, "50", {})},
      {one, entry(2, "52", {Dot{two, 1, 0}})},  // of a word that comes after it
      {two, entry(1, "51", {Dot{one, 1, 0}})},
      {two, entry(2, "53", {})},
  };
  ReplacedBefore replaced;
  EntityState state;
  for (const auto& [author, said] : held) {
    state.apply(said.writes[0], Dot{author, said.seq, 0}, said.stamp);
    const auto places = replaced.of(author, said);
    CHECK(places == (author == two && said.seq == 1 ? std::vector<std::uint32_t>{0} : std::vector<std::uint32_t>{}));
    if (!places.empty()) drop_value(state, kGuarded, Dot{author, said.seq, 0});
  }
  const Cell* cell = state.find(kGuarded);
  REQUIRE(cell != nullptr);
  REQUIRE(cell->values.size() == 2);
  CHECK(cell->find(Dot{one, 2, 0}) != nullptr);
  CHECK(cell->find(Dot{two, 2, 0}) != nullptr);
  // What is left of a field of which nothing stands is no field.
  drop_value(state, kGuarded, Dot{one, 2, 0});
  drop_value(state, kGuarded, Dot{two, 2, 0});
  CHECK(state.cells.empty());
}
