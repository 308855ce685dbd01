#include "core/bed/setup_words.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace weavelog;

namespace {

std::string refused(std::vector<std::string> words) {
  const auto told = setup_in_words(words);
  return told ? "no fault" : told.error().where + ": " + told.error().what;
}

}  // namespace

TEST_CASE("a setup is told in words, both ways of stringing alike until told apart", "[bed]") {
  const std::vector<std::string> words{
      "head=100in2", "pattern=18x20",  "string=poly", "gauge=1.25", "tension=52lb", "crosses=50lb", "crosses_string=natural gut",
      "after=2h",    "pre_stretch=5%", "frame=A3"};
  const auto told = setup_in_words(words).value();
  CHECK(told.setup.area == Approx(645.16));
  CHECK(told.setup.pattern.mains == 18);
  CHECK(told.setup.mains.kind.material == BedMaterial::polyester);
  CHECK(told.setup.crosses.kind.material == BedMaterial::natural_gut);
  CHECK(told.setup.crosses.kind.gauge == 1.25);
  CHECK(told.setup.mains.pulled == Approx(52 * 4.4482216152605));
  CHECK(told.setup.crosses.pulled == Approx(50 * 4.4482216152605));
  CHECK(told.setup.after == 7200);
  CHECK(told.setup.crosses.pre_stretch == 5);
  CHECK(told.unit == Unit::pound_force);
  CHECK(told.whose.frame == "A3");
  CHECK(told.whose.string == "polyester 1250 / natural gut 1250");
  const std::vector<std::string> change{"gauge=1.20", "mains_pre_stretch=10"};
  const auto changed = setup_in_words(change, told).value();
  CHECK(changed.setup.crosses.kind.gauge == 1.2);
  CHECK(changed.setup.crosses.kind.material == BedMaterial::natural_gut);
  CHECK(changed.setup.mains.pre_stretch == 10);
  CHECK(changed.setup.crosses.pre_stretch == 5);
}

TEST_CASE("JSON has the same names", "[bed]") {
  const auto told = setup_in_json(R"({"head": "645cm2", "gauge": 1.3, "mains": "24.5kg", "weight": 1.8, "elasticity": 5200})", "a.json").value();
  CHECK(told.setup.crosses.pulled == Approx(24.5 * 9.80665));
  CHECK(told.setup.mains.kind.linear_density.value() == Approx(0.0018));
  CHECK(setup_in_json("[1]", "a.json").error().where == "a.json");
  CHECK(setup_in_json(R"({"gauge": true})", "a.json").error().what.find("gauge") != std::string::npos);
  CHECK(setup_in_json(R"({"gauge": "thick"})", "a.json").error().where == "a.json, gauge");
}

TEST_CASE("words that can't be are named", "[bed]") {
  CHECK(refused({"gauge"}).find("has no value") != std::string::npos);
  CHECK(refused({"colour=red"}).find("is not known") != std::string::npos);
  CHECK(refused({"tension=24"}) == "tension: a tension needs its unit");
  CHECK(refused({"tension=24mm"}) == "tension: a tension needs its unit");
  CHECK(refused({"head=100"}) == "head: a head's area needs its unit");
  CHECK(refused({"pattern=16"}) == "pattern: this is no pattern");
  CHECK(refused({"pattern=16x1.5"}) == "pattern: this is no pattern");
  CHECK(refused({"gauge=1.25kg"}) == "gauge: this unit does not go with it");
  CHECK(refused({"string=wood"}).find("no material") != std::string::npos);
  CHECK(refused({"after=2weeks"}).find("is no time") != std::string::npos);
  CHECK(refused({"pieces=3"}) == "pieces: a racket is strung in one piece or two");
  CHECK_FALSE(stiffness_in("34", "x"));
  CHECK_FALSE(stiffness_in("34 N/m", "x"));
  CHECK(stiffness_in("34N/mm", "x").value() == 34'000);
  CHECK(stiffness_in("195 lb/in", "x").value() == Approx(195 * 175.12683524).epsilon(1e-9));
}

TEST_CASE("tables of readings are read, and a wrong row is named with its line", "[bed]") {
  const auto readings = read_relaxation("racket,after,hz,material\nA,20min,600,poly\nA,1d,580,poly\n", "r.csv").value();
  REQUIRE(readings.size() == 2);
  CHECK(readings[0].seconds == 1200);
  CHECK(readings[1].value == Approx(580.0 * 580));
  CHECK(read_relaxation("racket,after,value\nA,1h,200\nA,soon,190\n", "r.csv").error().where.find("line 3") != std::string::npos);
  CHECK_FALSE(read_relaxation("racket,after,value,hz\nA,1h,200,500\n", "r.csv"));
  const BedReckoner reckoner;
  const auto measured = read_measured("setup,stiffness,frame\nhead=100in2 string=poly gauge=1.25 tension=24kg,36N/mm,A\n", reckoner, "m.csv").value();
  REQUIRE(measured.readings.size() == 1);
  CHECK(measured.readings[0].frame == "A");
  CHECK(std::abs(measured.readings[0].log_ratio) < 0.4);
  CHECK(measured.readings[0].material == "polyester");
  CHECK(measured.ages.assumed == 1);
  // A bed that is read a day later is held against what is left of it then; one of which nobody knows when is kept apart.
  const auto aged = read_measured("setup,stiffness\ntension=24kg after=10min,36N/mm\ntension=24kg after=1d,36N/mm\ntension=24kg,30N/mm\n", reckoner, "m.csv").value();
  REQUIRE(aged.readings.size() == 2);
  CHECK(aged.ages.known == 2);
  CHECK(aged.ages.unknown == 1);
  const RelaxationCase plain;
  CHECK(aged.readings[1].log_ratio - aged.readings[0].log_ratio ==
        Approx(std::log(reckoner.relaxation().left_at(plain, 600)->left.value / reckoner.relaxation().left_at(plain, 86'400)->left.value)).margin(1e-6));
  CHECK(read_measured("setup,stiffness\nhead=100in2,36N/mm\n", reckoner, "m.csv").error().what.find("tension") != std::string::npos);
  CHECK(read_measured("setup,stiffness\ntension=24kg,36\n", reckoner, "m.csv").error().where.find("line 2") != std::string::npos);
  CHECK(read_corners("x,y\n0,0\n1,0\n1,a\n", "o.csv").error().where.find("line 4") != std::string::npos);
}
