#include "core/bed/setup.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/bed/equivalents.h"
#include "core/plan/chance.h"
#include "tests/core/bed/refined_bed.h"
#include "tests/core/bed/usual_bed.h"
#include "tests/support/published.h"

using namespace weavelog;
using weavelog::test::usual;
using weavelog::test::published_json;

namespace {


}  // namespace

TEST_CASE("a usual racket lies within what is published, and its band says how little that is", "[bed][published]") {
  const auto ranges = published_json("bed_physics.json").at("ranges");
  const BedReckoner reckoner;
  const auto whole = reckoner.whole(usual(), 1000).value();
  CHECK(whole.stiffness.estimate.value > ranges.at("stiffness_N_per_m").at("low").to_number<double>());
  CHECK(whole.stiffness.estimate.value < ranges.at("stiffness_N_per_m").at("high").to_number<double>());
  CHECK(whole.tone.estimate.value > ranges.at("tone_Hz").at("low").to_number<double>());
  CHECK(whole.tone.estimate.value < ranges.at("tone_Hz").at("high").to_number<double>());
  CHECK(whole.tensions.mains / usual().mains.pulled == Approx(1 - ranges.at("off_machine_loss").at("typical").to_number<double>()));
  // Absolute figures from the set tension: good to some 20 percent.
  CHECK(whole.stiffness.estimate.relative_sd > 0.08);
  CHECK(whole.stiffness.estimate.relative_sd < 0.2);
  // The strings' own elasticity adds 15 to 36 percent at 1,000 N in the model study.
  CHECK(whole.loaded.estimate.value / whole.stiffness.estimate.value > 1.1);
  CHECK(whole.held > whole.loaded.estimate.value);
  CHECK(whole.mains_share == Approx(0.48).margin(0.06));
  REQUIRE(whole.modes.size() == 4);
  CHECK(whole.modes[1] / whole.modes[0] == Approx(1.5).margin(0.1));
}

TEST_CASE("a square bed sounds by the published formula whatever the gap", "[bed][published]") {
  // Cross (2006): f = sqrt(T / (4 m L)), L the root of the area, m the mass of a string of that length.
  const auto identity = published_json("membrane_modes.json").at("cross_2006_identity");
  const double side = 1000 * std::sqrt(0.063), mu = 1140 * 3.14159265358979 / 4 * 0.0013 * 0.0013;
  const auto head = HeadOutline::of_corners({{0, 0}, {side, 0}, {side, side}, {0, side}}).value();
  BedPattern pattern;
  for (int i = 1; i <= 24; ++i) pattern.main_positions.push_back(side * (i / 25.0 - 0.5));
  pattern.cross_positions = pattern.main_positions;
  const std::vector<NetString> strings(24, {200, 0, mu});
  const auto net = StringNet::make(lay_out(head, pattern).value(), strings, strings, 4).value();
  CHECK(net.modes(1).value()[0] == Approx(identity.at("f_Hz").to_number<double>()).epsilon(0.002));
}

TEST_CASE("a tone leads back to the tension and stiffness that made it", "[bed]") {
  const BedReckoner reckoner;
  BedSetup truth = usual();
  truth.assumed.off_machine = 0.38;
  const double hz = reckoner.value(truth, {BedGoal::Kind::tone, 0}, 1).value();
  const auto said = reckoner.from_tone(usual(), hz).value();
  const auto now = reckoner.tensions(truth).value();
  CHECK(said.mains.value == Approx(now.mains).epsilon(1e-6));
  CHECK(said.stiffness.value == Approx(reckoner.value(truth, {BedGoal::Kind::stiffness, 0}, 1).value()).epsilon(1e-6));
  // Better than from the set tension, since nothing need be assumed of what the machine left.
  CHECK(said.tension.relative_sd < 0.08);
  CHECK(said.tension.low < now.mains);
  CHECK(said.tension.high > now.crosses);
  CHECK(reckoner.from_tone(usual(), 54).error().what == "this is no tone of a string bed");
  CHECK(reckoner.from_tone(usual(), 1400).error().what.find("does not go with this setup") != std::string::npos);
}

TEST_CASE("ratios of two beds are far surer than each", "[bed]") {
  const BedReckoner reckoner;
  BedSetup softer = usual();
  softer.mains.pulled *= 0.95;
  softer.crosses.pulled *= 0.95;
  const BedGoal goal{BedGoal::Kind::stiffness, 500};
  CHECK(reckoner.ratio(softer, usual(), goal, true).value().estimate.relative_sd < 0.012);
  CHECK(reckoner.figure(usual(), goal).value().estimate.relative_sd > 0.07);
}

TEST_CASE("setups that can't be are named with their field", "[bed]") {
  const BedReckoner reckoner;
  const auto where = [&](auto change) {
    BedSetup setup = usual();
    change(setup);
    const auto value = reckoner.value(setup, {});
    return value ? std::string("no fault") : value.error().where;
  };
  CHECK(where([](BedSetup& s) { s.mains.pulled = -20; }) == "mains, tension");
  CHECK(where([](BedSetup& s) { s.crosses.pulled = 24; }) == "crosses, tension");  // kilograms told as newtons
  CHECK(where([](BedSetup& s) { s.mains.pulled = std::nan(""); }) == "mains, tension");
  CHECK(where([](BedSetup& s) { s.mains.kind.gauge = 125; }) == "mains, gauge");
  CHECK(where([](BedSetup& s) { s.area = 100; }) == "head");
  CHECK(where([](BedSetup& s) { s.after = -1; }) == "after");
  CHECK(where([](BedSetup& s) { s.assumed.contact = 0; }) == "contact");
  CHECK(where([](BedSetup& s) { s.mains.pre_stretch = 200; }) == "mains, pre-stretch");
}

TEST_CASE("equivalents are those of a refined model within two percent", "[bed]") {
  const BedReckoner reckoner;
  Chance chance(5);
  double worst = 0;
  for (int i = 0; i < 24; ++i) {
    EquivalentAsk ask;
    ask.from = ask.to = usual();
    if (i % 3 == 2) ask.goal.kind = BedGoal::Kind::tone;
    ask.goal.force = i % 2 == 0 ? 500 : 0;
    switch (i % 6) {
      case 0:
        ask.to.mains.kind.gauge = ask.to.crosses.kind.gauge = 1.15 + 0.2 * chance.uniform();
        break;
      case 1:
        ask.to.mains.kind = {kBedMaterials[chance.below(4)], 1.3};
        break;
      case 2:
        ask.to.area = 600 + 100 * chance.uniform();
        break;
      case 3:
        ask.to.pattern.mains = 18, ask.to.pattern.crosses = 20;
        break;
      case 4:
        ask.to.crosses.pulled *= 0.92;
        break;
      default:
        ask.to.mains.pre_stretch = 10, ask.from.after = ask.to.after = 3 * 3600;
        break;
    }
    if (i % 6 == 4) ask.adjust = EquivalentAsk::Adjust::mains;
    const auto made = equivalent(ask, reckoner).value();
    BedSetup to = ask.to;
    to.mains.pulled = made.mains.exact;
    to.crosses.pulled = made.crosses.exact;
    // Each gap in ten pieces: strings bend and weigh between their crossings too.
    const double off = reckoner.value(to, ask.goal, 10).value() / reckoner.value(ask.from, ask.goal, 10).value() - 1;
    worst = std::max(worst, std::abs(off));
    CHECK(made.mains.low <= made.mains.exact);
    CHECK(made.mains.exact <= made.mains.high);
  }
  CHECK(worst < 0.02);
}

TEST_CASE("the second, finer model that equivalents are held against is itself a textbook's", "[bed][published]") {
  const auto document = published_json("bed_physics.json");
  // One string under a load in its middle, with its stretch (exact; statics): a cross without tension to speak of lies on it.
  for (const auto& row : document.at("string_point_nonlinear").at("rows").as_array()) {
    const double length = 1000 * row.at("length_m").to_number<double>(), force = row.at("force_exact_N").to_number<double>();
    const auto head = HeadOutline::of_corners({{0, 0}, {200, 0}, {200, length}, {0, length}}).value();
    BedPattern pattern;
    pattern.main_positions = pattern.cross_positions = {0};
    const refined::Bed bed(lay_out(head, pattern).value(), {row.at("tension_N").to_number<double>(), row.at("EA_N").to_number<double>(), 0.0015},
                           {1e-6, 0, 0.0015}, 1);
    // All but a point: a disc of a hundredth of a millimetre.
    CHECK(force / bed.stiffness(0.01, force) == Approx(row.at("midspan_deflection_m").to_number<double>()).epsilon(2e-4));
  }
}

TEST_CASE("equivalents are within two percent of a finer model that shares nothing with the net but its drawing", "[bed]") {
  const BedReckoner reckoner;
  const auto refined_value = [&](const BedSetup& setup, const BedGoal& goal) {
    const auto tensions = reckoner.tensions(setup).value();
    const auto string = [](const BedStrings& part, double tension) {
      return NetString{tension, elasticity_of(part.kind), linear_density_of(part.kind)};
    };
    const refined::Bed bed(layout_of(setup).value(), string(setup.mains, tensions.mains), string(setup.crosses, tensions.crosses), 3);
    return goal.kind == BedGoal::Kind::tone ? bed.tone() : bed.stiffness(setup.assumed.contact, goal.force);
  };
  double worst = 0, worst_value = 0;
  for (int i = 0; i < 6; ++i) {
    EquivalentAsk ask;
    ask.from = ask.to = usual();
    ask.goal.force = 500;
    if (i == 0) ask.to.area = 690;
    if (i == 1) ask.to.pattern.mains = 18, ask.to.pattern.crosses = 20;
    if (i == 2) ask.to.mains.kind = ask.to.crosses.kind = {BedMaterial::natural_gut, 1.35};
    if (i == 3) ask.to.crosses.pulled *= 0.9, ask.adjust = EquivalentAsk::Adjust::mains;
    if (i == 4) ask.to.area = 600, ask.goal.kind = BedGoal::Kind::tone;
    if (i == 5) ask.to.mains.kind.gauge = 1.15, ask.goal.kind = BedGoal::Kind::tone;
    const auto made = equivalent(ask, reckoner).value();
    BedSetup to = ask.to;
    to.mains.pulled = made.mains.exact;
    to.crosses.pulled = made.crosses.exact;
    const double before = refined_value(ask.from, ask.goal), after = refined_value(to, ask.goal);
    CAPTURE(i, before, after);
    CHECK(std::abs(after / before - 1) < 0.02);
    worst = std::max(worst, std::abs(after / before - 1));
    worst_value = std::max(worst_value, std::abs(before / reckoner.value(ask.from, ask.goal).value() - 1));
  }
  // Both models alone lie within that too, which a ratio could hide.
  CHECK(worst_value < 0.02);
  CHECK(worst > 0);
}

TEST_CASE("nothing changed asks for the same tension; a thinner string for more, a larger head for more", "[bed]") {
  const BedReckoner reckoner;
  EquivalentAsk ask;
  ask.from = ask.to = usual();
  ask.of_from = ask.of_to = {"A", "X", "poly"};
  auto same = equivalent(ask, reckoner).value();
  CHECK(text_of(same.mains.set) == "24.0 kg");
  CHECK(same.relative_sd < 0.01);
  ask.to.mains.kind.gauge = ask.to.crosses.kind.gauge = 1.15;
  CHECK(equivalent(ask, reckoner).value().mains.exact > usual().mains.pulled * 1.005);
  ask.to = usual();
  ask.to.area = 690;
  ask.unit = Unit::pound_force;
  const auto larger = equivalent(ask, reckoner).value();
  CHECK(larger.mains.exact > usual().mains.pulled);
  CHECK(larger.mains.set.unit == Unit::pound_force);
  CHECK(larger.mains.set.amount.scale == 0);
  ask.to.mains.pulled = 1;
  CHECK_FALSE(equivalent(ask, reckoner));
  CHECK(text_of(set_to_step(237.3, Unit::kilogram_force, 0.1).value()) == "24.2 kg");
  CHECK(text_of(set_to_step(237.3, Unit::kilogram_force, 0.25).value()) == "24.25 kg");
  CHECK_FALSE(set_to_step(237.3, Unit::millimetre, 0.1));
  CHECK_FALSE(set_to_step(237.3, Unit::newton, -1));
}
