#include "core/quality/calibration.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/plan/chance.h"
#include "tests/support/published.h"

using namespace weavelog;
using namespace weavelog::test;

namespace {

namespace json = boost::json;

constexpr UnixMs kDay = 86'400'000;
constexpr UnixMs kFirstMonday = 1'937'563'200'000;

std::vector<GaugeReading> published(const char* name) {
  const json::value all = published_json("calibration_regression.json");
  const json::object& set = all.at(name).as_object();
  std::vector<GaugeReading> out;
  for (std::size_t i = 0; i < set.at("x").as_array().size(); ++i)
    out.push_back({set.at("x").at(i).to_number<double>(), set.at("y").at(i).to_number<double>(), {}, "", ""});
  return out;
}

/// A machine's readings at five settings, twice each.
void pull(std::vector<GaugeReading>& into, Chance& chance, UnixMs at, double factor, double scatter = 0.05) {
  for (int i = 0; i < 10; ++i) {
    const double set = 20 + 2.0 * (i / 2);
    into.push_back({set, set * factor + scatter * chance.normal(), at, "T1", ""});
  }
}

}  // namespace

TEST_CASE("a machine's correction is that of its line") {
  const auto machine = Calibration::of(published("own_machine_B")).value();
  const auto setting = machine.setting_for(25).value();
  CHECK(setting.set == Approx(25.784615384615).epsilon(1e-13));
  CHECK(setting.needed);
  CHECK((setting.band.low < setting.set && setting.set < setting.band.high));
  CHECK((setting.next.low < 25 && 25 < setting.next.high));
  CHECK_FALSE(machine.is_bent());
  const auto error = machine.error_at(25).value();
  CHECK(error.percent == Approx(100 * (-0.14 + 0.975 * 25 - 25) / 25).epsilon(1e-12));
  CHECK(error.band.high < -2.5);
  CHECK(machine.state() == Calibration::State::beyond);  // it pulls 3 per cent too little
  CHECK_FALSE(machine.due());
  CHECK_FALSE(machine.setting_for(60));
  CHECK_FALSE(machine.error_at(60));
  CHECK_FALSE(machine.setting_for(0));
}

TEST_CASE("the load cell's bend is noticed and the straight one's is not", "[published]") {
  // NIST/SEMATECH e-Handbook 2.3.6.5: the load cell's straight line has a visibly curved residual. Its y is deflection; a factor of 10 makes it a pull.
  auto cell = published("LoadCell_mpc365");
  for (GaugeReading& one : cell) one.pulled *= 10;
  const auto bent = Calibration::of(cell).value();
  CHECK(bent.is_bent());
  CHECK(*bent.bend_chance() < 1e-20);
  CHECK(*bent.misfit_chance() < 1e-6);
  CHECK(bent.bent()->coefficients()[2] == Approx(7.0318651148180331e-5).epsilon(1e-12));
  CHECK(bent.line().residual_deviation() == Approx(3.76402941992637e-4).epsilon(1e-12));
  const double wanted = bent.bent()->at(13);
  CHECK(bent.setting_for(wanted)->set == Approx(13).epsilon(1e-12));
  const auto width = Calibration::of(published("Linewidth_mpc3673")).value();
  CHECK_FALSE(width.is_bent());
}

TEST_CASE("bends are seen in straight machines as seldom as is said, and in bent ones when they matter") {
  Chance chance(31);
  int wrongly = 0, rightly = 0;
  constexpr int kMachines = 600;
  for (int i = 0; i < kMachines; ++i) {
    std::vector<GaugeReading> straight, bent;
    pull(straight, chance, kFirstMonday, 0.98);
    bent = straight;
    for (GaugeReading& one : bent) one.pulled += 0.02 * (one.set - 24) * (one.set - 24);
    wrongly += Calibration::of(straight)->is_bent() ? 1 : 0;
    rightly += Calibration::of(bent)->is_bent() ? 1 : 0;
  }
  CHECK(wrongly < kMachines * 0.01 + 4 * std::sqrt(kMachines * 0.01));
  CHECK(rightly > kMachines * 0.95);
}

TEST_CASE("drift between checks is told, and steadiness is not called drift") {
  Chance chance(12);
  int wrongly = 0;
  for (int i = 0; i < 300; ++i) {
    std::vector<GaugeReading> steady;
    for (int week = 0; week < 2; ++week) pull(steady, chance, kFirstMonday + week * 7 * kDay, 1);
    wrongly += Calibration::of(steady)->drift()->clear ? 1 : 0;
  }
  CHECK(wrongly < 300 * 0.05 + 4 * std::sqrt(300 * 0.05));

  std::vector<GaugeReading> drifting;
  for (int week = 0; week < 4; ++week) pull(drifting, chance, kFirstMonday + week * 7 * kDay, 1 - 0.004 * week);
  const auto machine = Calibration::of(drifting).value();
  REQUIRE(machine.drift());
  REQUIRE(machine.sessions().size() == 4);
  CHECK(machine.used() == 10);  // the newest session makes the line
  CHECK(*machine.drift()->per_day == Approx(-0.4 / 7).epsilon(0.2));
  // 1.2 per cent low now and 0.4 a week: the tolerance of 2 is near in less than two weeks, long before the thirty days.
  REQUIRE(machine.due());
  CHECK(machine.due()->by_drift);
  CHECK(machine.due()->at > machine.sessions().back().at);
  CHECK(machine.due()->at < kFirstMonday + 21 * kDay + 14 * kDay);

  std::vector<GaugeReading> once;
  pull(once, chance, kFirstMonday, 1);
  const auto fresh = Calibration::of(once).value();
  CHECK_FALSE(fresh.drift());
  CHECK(fresh.state() == Calibration::State::good);
  CHECK(fresh.due()->at == kFirstMonday + 30 * kDay);
  CHECK_FALSE(fresh.due()->by_drift);
}

TEST_CASE("readings that tell no line are refused") {
  CHECK_FALSE(Calibration::of(std::vector<GaugeReading>{}));
  std::vector<GaugeReading> two_settings;
  for (int i = 0; i < 8; ++i) two_settings.push_back({i % 2 == 0 ? 20.0 : 25.0, i % 2 == 0 ? 20.1 : 25.2, {}, "", ""});
  CHECK_FALSE(Calibration::of(two_settings));
  // Spread over days none of which is enough.
  Chance chance(1);
  std::vector<GaugeReading> spread;
  pull(spread, chance, kFirstMonday, 1);
  for (std::size_t i = 0; i < spread.size(); ++i) spread[i].at = kFirstMonday + static_cast<UnixMs>(i) * kDay;
  CHECK_FALSE(Calibration::of(spread));
  // Pounds beside kilograms.
  std::vector<GaugeReading> pounds;
  pull(pounds, chance, kFirstMonday, 2.20462);
  const auto refused = Calibration::of(pounds);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what.find("does not follow") != std::string::npos);
  CalibrationOptions options;
  options.level = 1;
  std::vector<GaugeReading> good;
  pull(good, chance, kFirstMonday, 1);
  CHECK_FALSE(Calibration::of(good, options));
  good[3].pulled = -1;
  CHECK_FALSE(Calibration::of(good));
}

TEST_CASE("gauge readings come from tables") {
  const auto table = read_gauge("set,pulled,machine,at\n20 kg,44.1 lb,T1,2031-05-26\n22 kg,21.6 kg,T1,2031-05-26\n", "gauge.csv");
  REQUIRE(table);
  CHECK(table->unit == Unit::kilogram_force);
  CHECK(table->readings[0].pulled == Approx(20.003).epsilon(1e-4));
  const auto fault = [](std::string_view text) {
    const auto read = read_gauge(text, "gauge.csv");
    return read ? std::string("none") : read.error().message();
  };
  CHECK(fault("set,pulled\n20,44\n").find("gauge.csv, line 2, column 2 (pulled): this is 2.2 times what was to be expected, as if in pounds for kilograms") == 0);
  CHECK(fault("set,pulled\n20 kg,20 mm\n").find("a pull is a force, this is in mm") != std::string::npos);
  CHECK(fault("set\n20\n").find("the column pulled is missing") != std::string::npos);
  CHECK(fault("set,pulled\n20,\n").find("line 2, column 2 (pulled)") != std::string::npos);
}
