#include "core/plan/durations.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "core/plan/chance.h"

using namespace weavelog;

namespace {

struct Truth {
  std::vector<double> paces;
  double usual = 28, gut = 0.22, noise = 0.15;
};

/// Readings of a room in which stringer i has paces[i].
std::vector<WorkReading> readings_of(const Truth& truth, std::size_t each, std::uint64_t start) {
  Chance chance(start);
  std::vector<WorkReading> out;
  for (std::size_t s = 0; s < truth.paces.size(); ++s)
    for (std::size_t i = 0; i < each; ++i) {
      const bool gut = chance.uniform() < 0.4;
      const double log_time = std::log(truth.usual * truth.paces[s]) + (gut ? truth.gut : 0) + truth.noise * chance.normal();
      out.push_back({"stringer " + std::to_string(s), {"16x19", gut ? "natural gut" : "multifilament", 1}, std::exp(log_time)});
    }
  return out;
}

}  // namespace

TEST_CASE("normal quantiles are those of the tables") {
  // Standard tables: 1.645, 1.960, 2.326; and the way back by the error function.
  CHECK(normal_quantile(0.5) == Approx(0).margin(1e-15));
  CHECK(normal_quantile(0.95) == Approx(1.6448536269514722).epsilon(1e-13));
  CHECK(normal_quantile(0.975) == Approx(1.959963984540054).epsilon(1e-13));
  CHECK(normal_quantile(0.01) == Approx(-2.3263478740408408).epsilon(1e-13));
  for (const double p : {1e-12, 1e-6, 0.003, 0.1, 0.42, 0.77, 0.9999}) CHECK(normal_chance(normal_quantile(p)) == Approx(p).epsilon(1e-11));
}

TEST_CASE("chance is the same everywhere and has the moments that it says") {
  // SplitMix64 from 1234567: the first number of its public test values (memory).
  CHECK(Chance(1234567).bits() == 6457827717110365317ULL);
  Chance chance(5);
  double normal = 0, squares = 0, gamma = 0, poisson = 0, small = 0;
  constexpr int kMany = 100'000;
  for (int i = 0; i < kMany; ++i) {
    const double x = chance.normal();
    normal += x, squares += x * x;
    gamma += chance.gamma(2.5);
    small += chance.gamma(0.4);
    poisson += static_cast<double>(chance.poisson(47.5));
  }
  CHECK(normal / kMany == Approx(0).margin(0.015));
  CHECK(squares / kMany == Approx(1).margin(0.02));
  CHECK(gamma / kMany == Approx(2.5).margin(0.03));
  CHECK(small / kMany == Approx(0.4).margin(0.01));
  CHECK(poisson / kMany == Approx(47.5).margin(0.1));
}

TEST_CASE("with no readings the first guesses hold") {
  const WorkTimes times;
  const WorkTime usual = times.of("", {"16x19", "multifilament", 1});
  CHECK(usual.quantile(0.05) < 25);
  CHECK(usual.quantile(0.95) > 25);
  CHECK(usual.quantile(0.95) < 60);
  CHECK(times.of("", {"18x20", "multifilament", 1}).median() > usual.median());
  CHECK(times.of("", {"16x19", "natural gut", 1}).median() > usual.median());
  CHECK(times.of("", {"16x19", "multifilament", 2}).median() > usual.median());
  CHECK(times.pace("anybody") == 1);
  CHECK(times.used() == 0);
}

TEST_CASE("many readings give back what they were made of") {
  const Truth truth{{0.75, 0.9, 1.0, 1.1, 1.35}};
  const WorkTimes times(readings_of(truth, 200, 7));
  for (std::size_t s = 0; s < truth.paces.size(); ++s) {
    const std::string name = "stringer " + std::to_string(s);
    const WorkTime time = times.of(name, {"16x19", "multifilament", 1});
    CHECK(time.median() == Approx(truth.usual * truth.paces[s]).epsilon(0.04));
    CHECK(time.own == Approx(truth.noise).epsilon(0.12));
    CHECK(time.shared < 0.03);
    CHECK(times.of(name, {"16x19", "natural gut", 1}).median() / time.median() == Approx(std::exp(truth.gut)).epsilon(0.03));
    CHECK(time.mean() == Approx(time.median() * std::exp(time.sigma() * time.sigma() / 2)));
  }
}

TEST_CASE("a stringer with few readings is near the room, one with many is themselves") {
  auto readings = readings_of({std::vector<double>(6, 1.0)}, 60, 11);
  const auto add = [&](const char* name, int count) {
    for (int i = 0; i < count; ++i) readings.push_back({name, {"16x19", "multifilament", 1}, 28 * 1.6});
  };
  add("new", 1);
  add("known", 40);
  const WorkTimes times(readings);
  const auto median = [&](const char* name) { return times.of(name, {"16x19", "multifilament", 1}).median(); };
  CHECK(median("stringer 2") == Approx(28).epsilon(0.05));
  CHECK(median("new") > 28 * 1.1);
  CHECK(median("new") < 28 * 1.5);
  CHECK(median("known") == Approx(28 * 1.6).epsilon(0.04));
  CHECK(times.pace("known") > times.pace("new"));
  const auto doubt = [&](const char* name) { return times.of(name, {"16x19", "multifilament", 1}).shared; };
  CHECK(doubt("known") < doubt("new"));
  CHECK(doubt("new") < doubt("never seen"));
}

TEST_CASE("quantiles cover as many new rackets as they say, of known and of new stringers") {
  Chance chance(19);
  int below_90 = 0, below_95 = 0, new_below_90 = 0, asked = 0, new_asked = 0;
  for (std::uint64_t room = 0; room < 120; ++room) {
    Truth truth;
    for (int s = 0; s < 8; ++s) truth.paces.push_back(std::exp(0.2 * chance.normal()));
    truth.usual = 25 * std::exp(0.2 * chance.normal());
    auto readings = readings_of(truth, 12, 1000 + room);
    const WorkTimes times(readings);
    for (const WorkReading& next : readings_of(truth, 5, 5000 + room)) {
      const WorkTime time = times.of(next.stringer, next.kind);
      ++asked;
      below_90 += next.minutes < time.quantile(0.9);
      below_95 += next.minutes < time.quantile(0.95);
    }
    Truth guest = truth;
    guest.paces = {std::exp(0.2 * chance.normal())};
    const auto next = readings_of(guest, 1, 9000 + room).front();
    ++new_asked;
    new_below_90 += next.minutes < times.of("a guest", next.kind).quantile(0.9);
  }
  CHECK(below_90 / double(asked) == Approx(0.90).margin(0.015));
  CHECK(below_95 / double(asked) == Approx(0.95).margin(0.012));
  CHECK(new_below_90 / double(new_asked) == Approx(0.90).margin(0.06));
}

TEST_CASE("bad readings are ignored and counted") {
  const Truth truth{{0.85, 1.0, 1.2}};
  auto readings = readings_of(truth, 60, 23);
  const WorkTimes clean(readings);
  const std::size_t good = readings.size();
  for (const double minutes : {0.0, -5.0, 1e9, std::nan(""), std::numeric_limits<double>::infinity(), 2.0})
    readings.push_back({"stringer 1", {"16x19", "multifilament", 1}, minutes});
  for (int i = 0; i < 12; ++i) readings.push_back({"stringer 0", {"16x19", "multifilament", 1}, 150.0 + i});  // left over lunch
  const WorkTimes times(readings);
  CHECK(times.ignored().size() >= 18);
  CHECK(times.ignored().size() <= 21);
  CHECK(times.used() + times.ignored().size() == readings.size());
  for (const std::size_t place : times.ignored()) CHECK((place >= good || clean.ignored().size() <= 3));
  for (const char* name : {"stringer 0", "stringer 1", "stringer 2"})
    CHECK(times.of(name, {"16x19", "multifilament", 1}).median() == Approx(clean.of(name, {"16x19", "multifilament", 1}).median()).epsilon(0.04));
}

TEST_CASE("readings of ten thousand rackets and of more names than fit stay quick and sound") {
  std::vector<WorkReading> readings;
  Chance chance(3);
  for (int i = 0; i < 3000; ++i)
    readings.push_back({"somebody " + std::to_string(i),
                        {std::to_string(10 + i % 20) + "x" + std::to_string(12 + i % 17), "word " + std::to_string(i), 1 + i % 2},
                        26 * std::exp(0.2 * chance.normal())});
  const WorkTimes times(readings);
  CHECK(times.stringers().size() <= 120);
  CHECK(times.of("", {}).median() == Approx(26).epsilon(0.2));
}

TEST_CASE("a pattern is one however it is written") {
  for (const char* written : {"16x19", "16 × 19", "16X19", "16*19", " 16 / 19 "}) CHECK(pattern_key(written) == "16x19");
  CHECK(pattern_key("Dense") == "dense");
}
