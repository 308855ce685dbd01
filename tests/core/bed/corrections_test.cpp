#include "core/bed/corrections.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/bed/bed_words.h"
#include "core/bed/equivalents.h"
#include "core/plan/chance.h"

using namespace weavelog;

TEST_CASE("no readings leave the model as it is, all doubt included", "[bed]") {
  const BedCorrections none;
  const auto said = none.of({"f", "m", "s"});
  CHECK(said.log == 0);
  CHECK(said.from_data == 0);
  CHECK(said.sd == Approx(std::sqrt(0.15 * 0.15 + 0.06 * 0.06 + 0.03 * 0.03 + 0.05 * 0.05)));
  CHECK(none.between({"f", "m", "s"}, {"f", "m", "s"}).sd == 0);
}

TEST_CASE("one reading of one level is the textbook's weighted mean of prior and reading", "[bed]") {
  // Normal prior (0, 0.15), one normal reading: no names, so that only "all" stands behind it.
  const BedReading one{"", "", "", 0.2, 0.05};
  const auto said = BedCorrections::fitted(std::span(&one, 1)).value();
  const double noise = 0.05 * said.noise(), weight = 0.15 * 0.15 / (0.15 * 0.15 + noise * noise);
  CHECK(said.of({"", "", ""}).log == Approx(0.2 * weight).epsilon(1e-4));
}

TEST_CASE("frames are drawn to their model and models to all, the more the fewer readings they have", "[bed]") {
  Chance chance(8);
  std::vector<BedReading> readings;
  const auto model_of = [](int m) { return "model " + std::to_string(m); };
  std::vector<double> models, frames;
  for (int m = 0; m < 8; ++m) models.push_back(0.06 * chance.normal());
  for (int f = 0; f < 32; ++f) {
    frames.push_back(0.03 * chance.normal());
    for (int i = 0; i < (f == 0 ? 1 : 5); ++i)
      readings.push_back({"frame " + std::to_string(f), model_of(f % 8), "",
                          -0.1 + models[static_cast<std::size_t>(f % 8)] + frames.back() + 0.03 * chance.normal(), 0.03});
  }
  const auto fitted = BedCorrections::fitted(readings).value();
  const auto many = fitted.of({"frame 8", "model 0", ""}), one = fitted.of({"frame 0", "model 0", ""}),
             unseen = fitted.of({"frame 99", "model 0", ""}), stranger = fitted.of({"new", "new", ""});
  CHECK(many.sd < one.sd);
  CHECK(one.sd < unseen.sd);
  CHECK(unseen.sd < stranger.sd);
  CHECK(stranger.log == Approx(-0.1).margin(0.05));
  CHECK(many.from_data > unseen.from_data);
  CHECK(stranger.from_data > 0.3);
  CHECK(many.of_frame == 5);
  CHECK(many.of_model == 16);
  CHECK(stranger.of_all == readings.size());
  // Truth lies within nine bands of ten or so.
  int inside = 0;
  double error = 0, raw = 0;
  for (int f = 0; f < 32; ++f) {
    const double truth = -0.1 + models[static_cast<std::size_t>(f % 8)] + frames[static_cast<std::size_t>(f)];
    const auto said = fitted.of({"frame " + std::to_string(f), model_of(f % 8), ""});
    const double string = 0.05;  // of no string in particular
    inside += std::abs(said.log - truth) < 1.645 * std::hypot(said.sd, 0) || std::abs(said.log - truth) < string;
    error += std::pow(said.log - truth, 2);
    raw += truth * truth;
  }
  CHECK(inside >= 28);
  CHECK(error < 0.1 * raw);
}

TEST_CASE("a string that measures stiffer than reckoned is set softer, by as much as readings speak for it", "[bed]") {
  const BedReckoner reckoner;
  EquivalentAsk ask;
  ask.from.mains.pulled = ask.to.mains.pulled = ask.from.crosses.pulled = ask.to.crosses.pulled = 240;
  ask.of_from = {"A", "X", "old"};
  ask.of_to = {"A", "X", "new"};
  ask.goal.force = 0;
  double last = equivalent(ask, reckoner).value().mains.exact;
  CHECK(last == Approx(240).epsilon(1e-4));
  for (const int count : {1, 4, 16}) {
    std::vector<BedReading> readings;
    for (int i = 0; i < count; ++i) {
      readings.push_back({"A", "X", "old", 0, 0.03});
      readings.push_back({"A", "X", "new", 0.06, 0.03});
    }
    const auto made = equivalent(ask, reckoner, BedCorrections::fitted(readings).value()).value();
    CHECK(made.mains.exact < last);
    CHECK(made.from_data > 0.1);
    last = made.mains.exact;
  }
  CHECK(last == Approx(240 / std::exp(0.06)).epsilon(0.012));
}

TEST_CASE("measured beds that can't be are named", "[bed]") {
  const BedReading wrong[] = {{"a", "b", "c", 0.01, 0.03}, {"a", "b", "c", 2.3, 0.03}};
  CHECK(BedCorrections::fitted(wrong).error().where == "reading 2");
  const BedReading none[] = {{"a", "b", "c", std::nan(""), 0.03}};
  CHECK_FALSE(BedCorrections::fitted(none));
  CHECK_FALSE(BedCorrections::fitted({}, {0, 0, 0, 0}));
}

TEST_CASE("a bed speaks all four languages", "[bed]") {
  CHECK(bed_words().gaps().empty());
  const Language english;
  CHECK(advice_words(english, ToneDoubt::none).empty());
  for (const ToneDoubt doubt :
       {ToneDoubt::no_tap, ToneDoubt::too_noisy, ToneDoubt::several, ToneDoubt::steady, ToneDoubt::taps_differ, ToneDoubt::echoes})
    CHECK_FALSE(advice_words(english, doubt).empty());
  CHECK(data_words(english, 0.4, 3).find("40 %") != std::string::npos);
}
