#include "core/bed/layout.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/bed/setup.h"
#include "tests/support/published.h"

using namespace weavelog;
using weavelog::test::published_json;

TEST_CASE("chords, areas and limits are the published ones", "[bed][published]") {
  const auto document = published_json("racket_geometry.json");
  for (const auto& row : document.at("ellipse").as_array()) {
    const auto value = [&](const char* name) { return row.at(name).to_number<double>(); };
    const auto head = HeadOutline::of_axes(1000 * value("half_width_m"), 1000 * value("half_length_m")).value();
    BedPattern pattern;
    pattern.mains = static_cast<int>(value("mains"));
    pattern.crosses = static_cast<int>(value("crosses"));
    pattern.widening = 1;
    pattern.outer_main = value("outer_main_at_fraction_of_half_width");
    pattern.outer_cross = value("outer_cross_at_fraction_of_half_length");
    const auto layout = lay_out(head, pattern).value();
    CHECK(head.area_cm2() == Approx(value("area_cm2")).epsilon(1e-6));
    CHECK(layout.mains_in_face() == Approx(value("sum_of_main_chords_m")).epsilon(1e-9));
    CHECK(layout.crosses_in_face() == Approx(value("sum_of_cross_chords_m")).epsilon(1e-9));
  }
  // ITF Rules of Tennis, Appendix II.
  for (const auto& row : document.at("boundary_cases").as_array()) {
    const auto head = HeadOutline::of_axes(5 * row.at("width_cm").to_number<double>(), 5 * row.at("length_cm").to_number<double>()).value();
    CHECK(head.within_rules() == row.at("legal").as_bool());
  }
}

TEST_CASE("a racket takes as much string as people say", "[bed][published]") {
  const auto range = published_json("bed_physics.json").at("ranges").at("string_for_a_racket_m");
  BedSetup setup;
  const auto layout = layout_of(setup).value();
  for (const int pieces : {1, 2}) {
    const auto need = string_needed(layout, pieces).value();
    CHECK(need.metres() > range.at("low").to_number<double>());
    CHECK(need.metres() < range.at("high").to_number<double>());
    CHECK(need.mains.in_face + need.crosses.in_face > 8);
  }
  CHECK(string_needed(layout, 1).value().short_side > layout.mains_in_face() / 2);
  CHECK_FALSE(string_needed(layout, 3));
}

TEST_CASE("strings are denser in the middle, alike on both sides", "[bed]") {
  const auto head = HeadOutline::of_area(645, 1.35).value();
  CHECK(head.area_cm2() == Approx(645));
  CHECK(HeadOutline::of_area(645, 1.35, 2.6).value().area_cm2() == Approx(645));
  BedPattern pattern;
  pattern.widening = 1.5;
  const auto layout = lay_out(head, pattern).value();
  const auto& mains = layout.mains;
  CHECK((mains[1].at - mains[0].at) / (mains[8].at - mains[7].at) == Approx(1.5));
  for (std::size_t i = 0; i < 8; ++i) CHECK(mains[i].at == Approx(-mains[15 - i].at).margin(1e-9));
  CHECK(mains[7].length() > mains[0].length());
}

TEST_CASE("a polygon of an ellipse's points is that ellipse", "[bed]") {
  const auto head = HeadOutline::of_area(645, 1.3).value();
  const auto drawn = HeadOutline::of_corners(head.drawing(720)).value();
  CHECK(drawn.area_cm2() == Approx(645).epsilon(1e-4));
  CHECK(drawn.along_y(40)->second == Approx(head.along_y(40)->second).epsilon(1e-4));
  CHECK_FALSE(drawn.along_x(1000));
}

TEST_CASE("a drawing weaves: each crossing has one string above", "[bed]") {
  BedSetup setup;
  const auto layout = layout_of(setup).value();
  const auto lines = drawn_strings(layout);
  std::size_t crossings = net_of(setup, 200, 200).value().crossings().size();
  // Every crossing cuts one string in two.
  CHECK(lines.size() == layout.mains.size() + layout.crosses.size() + crossings);
}

TEST_CASE("heads and patterns that can't be are named", "[bed]") {
  CHECK(HeadOutline::of_area(100, 1.3).error().where == "head");
  CHECK(HeadOutline::of_area(645, 3).error().where == "aspect");
  CHECK_FALSE(HeadOutline::of_area(std::nan(""), 1.3));
  CHECK(HeadOutline::of_corners({{0, 0}, {1, 1}}).error().where == "outline");
  CHECK(HeadOutline::of_corners({{0, 0}, {10, 0}, {10, 10}, {5, 2}, {0, 10}}).error().what.find("dent") != std::string::npos);
  CHECK(HeadOutline::of_corners({{0, 0}, {1e9, 0}, {1, 1}}).error().where == "outline, corner 2");
  const auto head = HeadOutline::of_area(645, 1.35).value();
  BedPattern pattern;
  pattern.mains = 0;
  CHECK(lay_out(head, pattern).error().where == "pattern");
  pattern.mains = 16;
  pattern.main_positions = {0, 500};
  CHECK(lay_out(head, pattern).error().where == "main 2");
  pattern.main_positions = {0, 0.5};
  CHECK(lay_out(head, pattern).error().where == "main 2");
}
