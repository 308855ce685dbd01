#include "core/bed/stiffness_map.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "tests/core/bed/usual_bed.h"

using namespace weavelog;
using weavelog::test::usual;

namespace {

double area_of(const std::vector<BedPoint>& polygon) {
  double twice = 0;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++)
    twice += polygon[j].x * polygon[i].y - polygon[i].x * polygon[j].y;
  return std::abs(twice) / 2;
}

bool holds(const std::vector<BedPoint>& polygon, const BedPoint& point) {
  bool within = false;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const BedPoint &a = polygon[j], &b = polygon[i];
    if ((a.y > point.y) != (b.y > point.y) && point.x < a.x + (point.y - a.y) / (b.y - a.y) * (b.x - a.x)) within = !within;
  }
  return within;
}

}  // namespace

TEST_CASE("the steps of a map tile the places where the contact lies whole within the head, once each", "[bed]") {
  BedSetup setup = usual();
  setup.area = std::numbers::pi * 12 * 16;  // half axes of 120 and 160 mm
  setup.aspect = 160.0 / 120;
  const BedReckoner reckoner;
  const auto map = stiffness_map(setup, reckoner, BedEstimate::of(30'000, 0.1)).value();
  double sum = 0;
  for (const MapStep& step : map.steps)
    for (const auto& area : step.areas) sum += area_of(area);
  // What is left of an ellipse when a disc has rolled round it inside (Steiner's formula): area - perimeter r + pi r2. Its perimeter by Ramanujan's
  // second approximation.
  const double a = 120, b = 160, h = (a - b) * (a - b) / ((a + b) * (a + b));
  const double round = std::numbers::pi * (a + b) * (1 + 3 * h / (10 + std::sqrt(4 - 3 * h)));
  const double left = std::numbers::pi * (a * b + map.contact * map.contact) - round * map.contact;
  CHECK(sum == Approx(left).epsilon(0.01));
  CHECK(map.steps.size() >= 4);
  CHECK(map.steps.size() <= 6);
  CHECK(map.steps.front().from <= map.least);
  CHECK(map.steps.front().from > map.least - map.step());
  CHECK(map.steps.back().from < map.most);
  for (const MapStep& step : map.steps) CHECK(std::abs(std::remainder(step.from, 500)) < 1e-6);
}

TEST_CASE("every place of a map lies in the step in which the net pressed there is", "[bed]") {
  const BedSetup setup = usual();
  const BedReckoner reckoner;
  const double middle = reckoner.value(setup, {BedGoal::Kind::stiffness, 0}).value();
  const auto map = stiffness_map(setup, reckoner, BedEstimate::of(1.2 * middle, 0.1)).value();
  const auto tensions = reckoner.tensions(setup).value();
  const auto net = net_of(setup, tensions.mains, tensions.crosses).value();
  const double factor = 1.2 * middle / net.press_lightly({}).value().stiffness();
  std::size_t found = 0, clear = 0;
  for (const NetPoint& point : net.map({})) {
    const double stiffness = factor * point.stiffness;
    for (std::size_t i = 0; i < map.steps.size(); ++i)
      for (const auto& area : map.steps[i].areas) {
        if (!holds(area, {point.x, point.y})) continue;
        ++found;
        const double from = map.steps[i].from, to = i + 1 < map.steps.size() ? from + map.step() : HUGE_VAL;
        clear += stiffness > 0.985 * from && stiffness < 1.015 * to ? 1 : 0;
      }
  }
  CHECK(found > 100);
  CHECK(clear == found);
  // Where a step begins, the net is as stiff as it says.
  for (const MapStep& step : map.steps)
    for (std::size_t i = 0; i < step.edges.size(); i += 7) {
      const BedPoint &a = step.edges[i].from, &b = step.edges[i].to;
      const auto pressed = net.press_lightly({(a.x + b.x) / 2, (a.y + b.y) / 2, map.contact, NetContact::Share::disc}).value();
      CHECK(factor * pressed.stiffness() == Approx(step.from).epsilon(0.02));
    }
}

TEST_CASE("a map's figures are told with bands, wider away from the middle, and a bed is stiffer near its frame", "[bed]") {
  const auto map = stiffness_map(usual(), BedReckoner(), BedEstimate::of(30'000, 0.1)).value();
  REQUIRE(map.spots.size() == 9);
  CHECK(map.spots.front().stiffness.value == Approx(30'000).epsilon(1e-9));
  CHECK(map.spots.front().stiffness.relative_sd == 0.1);
  CHECK(map.between_sd > 0.02);
  CHECK(map.between_sd < 0.1);
  for (std::size_t i = 1; i < 9; ++i) {
    CHECK(map.spots[i].stiffness.relative_sd > 0.1);
    CHECK(map.spots[i].stiffness.value > (i < 5 ? 36'000 : 30'000));
  }
  // Mirrored: the head and its pattern are even to both sides.
  CHECK(map.spots[1].stiffness.value == Approx(map.spots[3].stiffness.value).epsilon(1e-6));
  CHECK(map.spots[2].stiffness.value == Approx(map.spots[4].stiffness.value).epsilon(1e-6));
}

TEST_CASE("a contact that finds no place is a named fault and no map", "[bed]") {
  BedSetup narrow = usual();
  narrow.corners = {{0, 0}, {80, 0}, {80, 400}, {0, 400}};
  narrow.assumed.contact = 45;
  const auto fault = stiffness_map(narrow, BedReckoner(), BedEstimate::of(30'000, 0.1));
  REQUIRE_FALSE(fault.has_value());
  CHECK(fault.error().where == "contact");
  narrow.assumed.contact = 25;
  CHECK(stiffness_map(narrow, BedReckoner(), BedEstimate::of(30'000, 0.1)).has_value());
  BedSetup heavy = usual();
  heavy.mains.pulled = 5'000;
  CHECK_FALSE(stiffness_map(heavy, BedReckoner(), BedEstimate::of(30'000, 0.1)).has_value());
}
