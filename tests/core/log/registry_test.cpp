// What a program says of its fields.

#include "core/log/registry.h"

#include <catch2/catch.hpp>
#include <stdexcept>
#include <vector>

using namespace weavelog;

namespace {

constexpr EntityKind kCrate{1}, kCover{2};
constexpr KindInfo kCrateKinds[] = {{kCrate, "crate"}, {kCover, "cover"}};

FieldRegistry crate_registry(std::vector<FieldInfo> fields) { return FieldRegistry(3, kCrateKinds, fields); }

}  // namespace

TEST_CASE("fields are found by their number and by their name within a kind") {
  const auto registry = crate_registry({{FieldTag{7}, kCrate, "label", true}, {FieldTag{8}, kCover, "label"}, {FieldTag{5}, kCrate, "count"}});
  CHECK(registry.schema() == 3);
  CHECK(registry.find(kCover, "label") == registry.find(FieldTag{8}));
  CHECK(registry.find(kCrate, "label")->tag == FieldTag{7});
  CHECK(registry.guarded(FieldTag{7}));
  CHECK_FALSE(registry.guarded(FieldTag{8}));
  CHECK_FALSE(registry.guarded(FieldTag{9}));
  CHECK(registry.find(FieldTag{9}) == nullptr);
  CHECK(registry.find(kCover, "count") == nullptr);
  CHECK(registry.name_of(kCover) == "cover");
  CHECK(registry.name_of(EntityKind{3}).empty());
}

TEST_CASE("a number or a name that is given twice is refused, and named") {
  using Catch::Matchers::Message;
  CHECK_THROWS_MATCHES(crate_registry({{FieldTag{7}, kCrate, "label"}, {FieldTag{7}, kCrate, "count"}}), std::logic_error,
                       Message("field tag used twice: count"));
  CHECK_THROWS_MATCHES(crate_registry({{FieldTag{7}, kCrate, "label"}, {FieldTag{5}, kCrate, "count"}, {FieldTag{8}, kCrate, "label"}}), std::logic_error,
                       Message("field name used twice: label"));
}
