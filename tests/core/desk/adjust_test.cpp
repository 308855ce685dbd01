#include "core/desk/adjust.h"

#include <catch2/catch.hpp>

#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("one kilo less is one kilo less of what was said") {
  const Agreed wish = day_wish();
  CHECK(must(adjusted(wish, {StringPart::mains, kg("-1")})).mains_tension == kg("24"));
  CHECK(must(adjusted(wish, {StringPart::mains, kg("-1")})).crosses_tension == kg("24"));
  CHECK(must(adjusted(wish, {StringPart::crosses, kg("0.5")})).crosses_tension == kg("24.5"));
  CHECK(must(adjusted(wish, {StringPart::both, kg("-0.5")})).mains_tension == kg("24.5"));
}

TEST_CASE("a change in another unit is asked about, never converted") {
  Agreed wish = day_wish();
  wish.mains_tension = lb("55");
  const auto refused = adjusted(wish, {StringPart::mains, kg("-1")});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what.find("lb") != std::string::npos);
  CHECK(refused.error().what.find("kg") != std::string::npos);
  CHECK(wish.mains_tension == lb("55"));
  CHECK(must(adjusted(wish, {StringPart::mains, lb("-2")})).mains_tension == lb("53"));
  CHECK_FALSE(tension_unit_of(wish));
  // On purpose: 55 lbf are 24.9475803... kgf (NIST SP 811, App. B.8: 4.448222 N and 9.80665 N).
  const Agreed converted = must(in_unit(wish, Unit::kilogram_force, 1));
  CHECK(converted.mains_tension == kg("24.9"));
  CHECK(converted.crosses_tension == kg("24"));
  CHECK(tension_unit_of(converted) == Unit::kilogram_force);
  CHECK_FALSE(in_unit(wish, Unit::millimetre, 1));
}

TEST_CASE("a change needs something to change and has to leave something") {
  CHECK_FALSE(adjusted(Agreed{}, {StringPart::mains, kg("-1")}));
  CHECK_FALSE(adjusted(day_wish(), {StringPart::mains, kg("-25")}));
  CHECK_FALSE(tension_unit_of(Agreed{}));
}
