#include "core/quality/readings.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/plan/chance.h"

using namespace weavelog;

namespace {

std::string fault_of(std::string_view csv) {
  const auto table = read_strung(csv, "readings.csv");
  if (!table) return table.error().message();
  const auto deviations = deviations_of(*table);
  return deviations ? std::string("none") : deviations.error().message();
}

}  // namespace

TEST_CASE("readings come in with their units, from CSV and JSON") {
  const auto table = read_strung("racket,reading,wanted,stringer,machine,at\nA,31.2 N/mm,30 N/mm,Ida,T1,2031-05-26T10:00\n"
                                 "B,\"3,1 kg/cm\",3.0 kg/cm,Ida,T1,2031-05-26T09:00\n",
                                 "readings.csv");
  REQUIRE(table);
  CHECK(table->unit == Unit::newton_per_millimetre);
  REQUIRE(table->readings.size() == 2);
  CHECK(table->readings[0].racket == "B");  // it was read first
  CHECK(table->readings[0].value == Approx(3.1 * 0.980665));
  CHECK(table->readings[1].value == 31.2);
  const auto listed = read_strung(R"([{"racket": "A", "reading": 31.2, "unit": "N/mm", "machine": "T1"}])", "readings.json");
  REQUIRE(listed);
  CHECK(listed->readings[0].value == 31.2);
  CHECK(listed->readings[0].machine == "T1");
}

TEST_CASE("what is no reading is named with its place") {
  CHECK(fault_of("reading\n") == "readings.csv: there are no readings; give a row for each racket");
  CHECK(fault_of("value\n31\n") == "readings.csv, line 1: the column reading is missing; name it in the first line of the table");
  CHECK(fault_of("reading\n31\nabout 30\n").find("readings.csv, line 3, column 1 (reading): 'about 30' is no number") == 0);
  CHECK(fault_of("reading\n-31\n").find("line 2, column 1 (reading): '-31' is nothing that a gauge reads") != std::string::npos);
  CHECK(fault_of("reading\n31 N/mm\n31\n").find("line 3, column 1 (reading): this is in no unit, the rows before are in N/mm") != std::string::npos);
  CHECK(fault_of("reading\n31 N/mm\n31 kg\n").find("this is in kg, the rows before are in N/mm") != std::string::npos);
  CHECK(fault_of("reading\n31 furlong\n").find("'furlong' is no unit that is known here") != std::string::npos);
  CHECK(fault_of("reading,at\n31,yesterday\n").find("'yesterday' is no moment") != std::string::npos);
  CHECK(fault_of("reading,at\n31,2031-05-26\n32,\n").find("line 3, column 2 (at): some rows say when") != std::string::npos);
}

TEST_CASE("a reading in another unit is not taken for a bad racket") {
  // 55 pounds written as kilograms beside 25.
  const std::string fault = fault_of("reading,wanted\n24.9 N/mm,25 N/mm\n55.1 N/mm,25 N/mm\n");
  CHECK(fault == "readings.csv, line 3, column 1 (reading): this is 2.2 times what was to be expected, as if in pounds for kilograms; "
                 "check the unit and the racket, and read it again");
  CHECK(fault_of("reading,wanted\n245 N/mm,25 N/mm\n").find("newtons for kilograms") != std::string::npos);
  CHECK(fault_of("reading,setup\n25,a\n25.2,a\n24.9,a\n25,a\n11.3,a\n").find("line 6") != std::string::npos);
  CHECK(fault_of("reading,wanted\n1000000,0.001\n").find("far from") != std::string::npos);
  CHECK(plausible_reading(24, 25));
  CHECK(plausible_reading(30, 25));
}

TEST_CASE("rackets of different setups stand on one chart") {
  // Against what was wanted; against their kind; against the setup's own mean: each has the scatter that it says.
  Chance chance(9);
  for (const Against against : {Against::wanted, Against::kind, Against::setup}) {
    ReadingTable table;
    table.unit = Unit::newton_per_millimetre;
    table.wanted_unit = against == Against::kind ? Unit::kilogram_force : Unit::newton_per_millimetre;
    for (int i = 0; i < 4000; ++i) {
      StrungReading one;
      const auto setup = chance.below(80);
      const double level = 25 + static_cast<double>(setup) / 8;
      one.setup = "setup " + std::to_string(setup), one.kind = setup % 2 == 0 ? "98 sq in" : "100 sq in";
      one.machine = "T" + std::to_string(i % 3), one.stringer = one.machine;
      one.wanted = against == Against::kind ? level : level * 1.1;
      one.value = level * 1.1 * (against == Against::kind && setup % 2 == 0 ? 1.2 : 1) * (1 + 0.0175 * chance.normal());
      table.readings.push_back(one);
    }
    DeviationOptions options;
    options.only = against;
    const auto deviations = deviations_of(table, options).value();
    double sum = 0, squares = 0;
    std::size_t count = 0;
    for (const Deviation& one : deviations) {
      if (one.against == Against::nothing) continue;
      CHECK(one.against == against);
      const double z = one.percent / (1.75 * one.doubt);
      sum += z, squares += z * z, ++count;
    }
    CHECK(count >= 4000 - 80 * kFewestOfSetup);
    CHECK(sum / static_cast<double>(count) == Approx(0).margin(0.06));
    CHECK(squares / static_cast<double>(count) == Approx(1).margin(0.07));
    const Scatter scatter = scatter_of(table.readings, deviations);
    CHECK(scatter.percent == Approx(1.75).epsilon(0.05));
    CHECK(scatter.readings == count);
  }
}

TEST_CASE("with nothing to compare with nothing is said, and scatter is the usual one") {
  const auto table = read_strung("reading,setup\n25,a\n25.2,a\n24.9,a\n26,a\n31,b\n", "readings.csv").value();
  const auto deviations = deviations_of(table).value();
  CHECK(deviations[2].against == Against::nothing);
  CHECK(deviations[3].against == Against::setup);
  CHECK(deviations[3].percent == Approx(100 * (26 / (75.1 / 3) - 1)));
  CHECK(deviations[3].doubt == Approx(std::sqrt(4 / 3.0)));
  CHECK(deviations[4].against == Against::nothing);
  CHECK(scatter_of(table.readings, deviations).readings == 0);
  CHECK(scatter_of(table.readings, deviations).percent == kUsualScatter);
}

TEST_CASE("slips and shifts hardly move the scatter") {
  Chance chance(2);
  ReadingTable table;
  for (int i = 0; i < 600; ++i) {
    StrungReading one;
    one.machine = "T" + std::to_string(i % 4);
    one.wanted = 30;
    double percent = 1.75 * chance.normal() + (one.machine == "T1" ? -3 : 0);
    if (one.machine == "T2" && chance.uniform() < 0.3) percent -= 8;
    one.value = 30 * (1 + percent / 100);
    table.readings.push_back(one);
  }
  CHECK(scatter_of(table.readings, deviations_of(table).value()).percent == Approx(1.75).epsilon(0.15));
}
