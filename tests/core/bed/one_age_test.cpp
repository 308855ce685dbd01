#include "core/bed/one_age.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/bed/bed_words.h"
#include "core/plan/chance.h"

using namespace weavelog;

namespace {

ReadingTable table_of(const std::string& csv) {
  return read_strung(csv, "readings.csv").value();
}

}  // namespace

TEST_CASE("readings at different ages are brought to one by the law of relaxation", "[bed][quality]") {
  ReadingTable table = table_of("reading,unit,racket,after,material\n30,N/mm,A,10min,polyester\n30,N/mm,B,1d,polyester\n30,N/mm,C,1min,polyester\n");
  const auto ages = bring_to_one_age(table, RelaxationModel()).value();
  CHECK(ages.known == 3);
  CHECK(ages.unknown == 0);
  const double loss = prior_of(BedMaterial::polyester).loss_per_decade;
  const auto left = [&](double seconds) { return LogTimeLaw{loss, 60}.left(seconds); };
  CHECK(table.readings[0].value == Approx(30));
  CHECK(table.readings[0].aged_sd == Approx(0).margin(1e-9));
  CHECK(one_age_of(table) == std::optional(600.0));
  CHECK(table.readings[1].value == Approx(30 * left(600) / left(86'400)));
  CHECK(table.readings[1].aged_percent == Approx(100 * (left(600) / left(86'400) - 1)));
  CHECK(table.readings[1].aged_sd > 0.5);
  CHECK(table.readings[2].value == Approx(30 * left(600) / left(60)));
  CHECK(table.readings[2].value < 30);
  CHECK(ages.most_percent == Approx(100 * (1 - left(86'400))));
  CHECK(one_age_words(Language(), ages).find("3 readings are brought to one time after stringing") == 0);

  // Of a tone the square goes with the tension.
  ReadingTable tones = table_of("reading,unit,after,material\n600,Hz,10min,polyester\n601,Hz,10min,polyester\n600,Hz,1d,polyester\n");
  REQUIRE(bring_to_one_age(tones, RelaxationModel()));
  CHECK(tones.readings[2].value == Approx(600 * std::sqrt(left(600) / left(86'400))));
}

TEST_CASE("readings of unknown age are kept apart where others tell theirs, and said", "[bed][quality]") {
  ReadingTable table = table_of("reading,unit,setup,racket,after\n30,N/mm,s,A,10min\n30.2,N/mm,s,B,10min\n29.9,N/mm,s,C,10min\n36,N/mm,s,D,\n30.1,N/mm,s,E,12min\n");
  const auto ages = bring_to_one_age(table).value();
  CHECK(ages.known == 4);
  CHECK(ages.unknown == 1);
  const auto deviations = deviations_of(table).value();
  CHECK(deviations[3].against == Against::nothing);
  CHECK(deviations[4].against == Against::setup);
  CHECK(std::abs(deviations[4].percent) < 1);  // what D read is in nobody's mean
  CHECK(one_age_words(Language(), ages).find("1 reading is kept apart") != std::string::npos);

  ReadingTable none = table_of("reading,unit\n30,N/mm\n31,N/mm\n");
  const auto nothing = bring_to_one_age(none).value();
  CHECK(nothing.assumed == 2);
  CHECK(none.readings[1].value == 31);
  CHECK(one_age_words(Language(), nothing).empty());
}

TEST_CASE("rackets that lie a day look even with fresh ones once their age is known, with the room's own fit", "[bed][quality]") {
  // Strings that lose twice what is believed; a third of the rackets is read the day after.
  Chance chance(3);
  const double loss = 2 * prior_of(BedMaterial::multifilament).loss_per_decade;
  const auto left = [&](double seconds) { return LogTimeLaw{loss, 60}.left(seconds); };
  std::string csv = "reading,unit,wanted,wanted_unit,kind,racket,after,material\n";
  const auto row = [&](int racket, double seconds) {
    csv += std::to_string(34 * left(seconds) * (1 + 0.005 * chance.normal())) + ",N/mm,24,kg,k,R" + std::to_string(racket) + "," +
           std::to_string(std::lround(seconds)) + "s,multifilament\n";
  };
  for (int racket = 0; racket < 30; ++racket) {
    row(racket, racket % 3 == 0 ? 86'400 : 600);
    if (racket % 5 == 0) row(racket, racket % 3 == 0 ? 600 : 86'400);
  }
  ReadingTable raw = table_of(csv), table = raw, believed = raw;
  REQUIRE(bring_to_one_age(table));
  REQUIRE(bring_to_one_age(believed, RelaxationModel()));
  const auto widest = [](const ReadingTable& one) {
    double most = 0;
    const auto deviations = deviations_of(one).value();
    for (const Deviation& deviation : deviations) most = std::max(most, std::abs(deviation.percent));
    return most;
  };
  CHECK(widest(raw) > 6);
  CHECK(widest(believed) < widest(raw));
  CHECK(widest(table) < 2.5);
}

TEST_CASE("ages that can't be are named with their place", "[bed][quality]") {
  CHECK(read_strung("reading,after\n30,soon\n", "r.csv").error().where.find("line 2") != std::string::npos);
  CHECK(read_strung("reading,after,temperature\n30,2h,warm\n", "r.csv").error().what.find("warm") != std::string::npos);
  ReadingTable table = table_of("reading,after\n30,900d\n");
  CHECK(bring_to_one_age(table).error().what.find("time since stringing") != std::string::npos);
  ReadingTable odd = table_of("reading,after,material\n30,2h,wool\n");
  CHECK(bring_to_one_age(odd).error().where.find("line 2") != std::string::npos);
}
