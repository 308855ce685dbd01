#include "core/bed/relaxation.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/plan/chance.h"
#include "tests/support/published.h"

using namespace weavelog;
using weavelog::test::published_json;

namespace {
double member(const boost::json::value& of, const char* name) {
  return std::stod(std::string(of.at(name).as_string()));
}
}  // namespace

TEST_CASE("log-time laws give the worked figures", "[bed][published]") {
  const auto document = published_json("tension_relaxation.json");
  for (const auto& row : document.at("one_line").at("cases").as_array())
    CHECK(member(row, "T0") * LogTimeLaw{member(row, "A"), member(row, "t0")}.left(member(row, "t_s")) == Approx(member(row, "T")).epsilon(1e-10));
  for (const auto& row : document.at("two_line").at("cases").as_array()) {
    const BentLogTimeLaw law{member(row, "A1"), member(row, "A2"), member(row, "t1"), member(row, "tb")};
    CHECK(member(row, "T0") * law.left(member(row, "t_s")) == Approx(member(row, "T")).epsilon(1e-10));
  }
  CHECK(LogTimeLaw{0.5, 1}.left(1e9) == 0);
}

TEST_CASE("what is believed before any reading is wide and holds the one published first day", "[bed][published]") {
  const double day = 1 - published_json("bed_physics.json").at("ranges").at("loss_24h").at("mean").to_number<double>();
  const RelaxationModel prior;
  for (const BedMaterial material : kBedMaterials) {
    const auto left = prior.left_at({material, 0, 20}, 86'400).value();
    CHECK(left.left.low < day);
    CHECK(left.left.high > day);
    CHECK(left.from_data == 0);
    CHECK(left.left.high < 1);
  }
  // Published order: gut keeps best, polyester worst.
  const auto at_day = [&](BedMaterial m) { return prior.left_at({m, 0, 20}, 86'400).value().left.value; };
  CHECK(at_day(BedMaterial::natural_gut) > at_day(BedMaterial::synthetic_gut));
  CHECK(at_day(BedMaterial::synthetic_gut) > at_day(BedMaterial::polyester));
  CHECK(prior.left_at({BedMaterial::polyester, 10, 20}, 86'400).value().left.value > at_day(BedMaterial::polyester));
  CHECK(prior.left_at({BedMaterial::polyester, 0, 35}, 86'400).value().left.value < at_day(BedMaterial::polyester));
}

TEST_CASE("own readings draw the loss to themselves, and the bands hold the truth", "[bed]") {
  int inside = 0, asked = 0;
  for (std::uint64_t room = 0; room < 12; ++room) {
    Chance chance(room + 1);
    const double truth = 0.034 * std::exp(0.4 * chance.normal());
    std::vector<RelaxationReading> readings;
    for (int racket = 0; racket < 8; ++racket) {
      const double loss = truth * std::exp(0.2 * chance.normal()), level = 150 + 50 * chance.uniform();
      for (const double minutes : {5.0, 60.0, 600.0, 1440.0})
        readings.push_back({std::to_string(racket),
                            {BedMaterial::polyester, 0, 20},
                            60 * minutes,
                            level * LogTimeLaw{loss, 60}.left(60 * minutes) * std::exp(0.01 * chance.normal()),
                            0.01});
    }
    const auto fitted = RelaxationModel::fitted(readings).value();
    const auto left = fitted.left_at({BedMaterial::polyester, 0, 20}, 86'400).value();
    CHECK(left.from_data > 0.6);
    CHECK(left.per_decade.value == Approx(truth).epsilon(0.35));
    inside += left.per_decade.low < truth && truth < left.per_decade.high;
    ++asked;
    // Another material has learned nothing.
    CHECK(fitted.left_at({BedMaterial::natural_gut, 0, 20}, 86'400).value().from_data < 0.05);
    // Of a racket that was read itself: since then less is lost than since the first minute.
    const auto since = fitted.left_of("3", 3600, 86'400).value();
    CHECK(since.left.value > left.left.value);
    CHECK(since.left.value < 1);
  }
  CHECK(inside >= asked - 3);
}

TEST_CASE("two readings of one racket without doubt fix the line through both", "[bed][published]") {
  const auto fit = published_json("tension_relaxation.json").at("fit");
  // T = a - b log10 t; ours counts 1 + t / 60, so times are moved by a minute.
  std::vector<RelaxationReading> readings;
  for (const auto& point : fit.at("points").as_array()) {
    const double t = std::stod(std::string(point.as_array()[0].as_string())), value = std::stod(std::string(point.as_array()[1].as_string()));
    readings.push_back({"r", {}, t - 60, value, 1e-6});
  }
  const auto fitted = RelaxationModel::fitted(readings).value();
  const double expected = member(fit, "T_at_86400") / readings[0].value;
  CHECK(fitted.left_of("r", readings[0].seconds, 86'400 - 60).value().left.value == Approx(expected).epsilon(1e-5));
}

TEST_CASE("readings of relaxation that can't be are named", "[bed]") {
  const auto said = [](RelaxationReading one) {
    const std::vector<RelaxationReading> all{{"a", {}, 60, 200, 0.01}, {"a", {}, 600, 196, 0.01}, {"a", {}, 900, 195, 0.01}, std::move(one)};
    const auto made = RelaxationModel::fitted(all);
    return made ? std::string("no fault") : made.error().where + ": " + made.error().what;
  };
  CHECK(said({"a", {}, 6000, 190, 0.01}) == "no fault");
  CHECK(said({"a", {}, -5, 190, 0.01}).rfind("reading 4: ", 0) == 0);
  CHECK(said({"a", {}, 60, 0, 0.01}).rfind("reading 4: ", 0) == 0);
  CHECK(said({"a", {}, 60, std::nan(""), 0.01}).rfind("reading 4: ", 0) == 0);
  CHECK(said({"a", {}, 600, 44, 0.01}).find("reading 4: this reading is more than half") == 0);  // pounds among newtons
  CHECK_FALSE(RelaxationModel().left_at({}, -1));
  CHECK_FALSE(RelaxationModel().left_at({BedMaterial::polyester, 90, 20}, 1));
  CHECK_FALSE(RelaxationModel().left_of("nobody", 0, 1));
}
