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

TEST_CASE("one level of groups is the best linear unbiased prediction of the textbook", "[bed]") {
  // Six batches of dyestuff, five preparations each (Davies and Goldsmith, Statistical Methods in Research and Production, 1972, table 6.3), with the
  // variances 1764.05 and 2451.25 of restricted maximum likelihood and the predictions that are published with them (Bates, lme4: Mixed-effects
  // Modeling with R, chapter 1). All from memory; the formula beside them is the one-way model's: n s / (n s + e) times the batch's distance.
  const double yields[6][5] = {{1545, 1440, 1440, 1520, 1580}, {1540, 1555, 1490, 1560, 1495}, {1595, 1550, 1605, 1510, 1560},
                               {1445, 1440, 1595, 1465, 1545}, {1595, 1630, 1515, 1635, 1625}, {1520, 1455, 1450, 1480, 1445}};
  const double published[6] = {-17.607, 0.391, 28.562, -23.085, 56.733, -44.995};
  constexpr double kMean = 1527.5, kBetween = 1764.05, kWithin = 2451.25, kScale = 1000;  // so that all lies within a factor of two
  std::vector<BedReading> readings;
  double squares = 0, means = 0;
  for (int batch = 0; batch < 6; ++batch) {
    double mean = 0;
    for (const double one : yields[batch]) mean += one / 5;
    for (const double one : yields[batch]) {
      readings.push_back({"", "batch " + std::to_string(batch), "", (one - kMean) / kScale, std::sqrt(kWithin) / kScale});
      squares += std::pow(one - mean, 2);
    }
    means += std::pow(mean - kMean, 2);
  }
  // The variances are those of these very figures: analysis of variance gives them for groups of one size.
  CHECK(squares / 24 == Approx(kWithin).epsilon(1e-6));
  CHECK((5 * means / 5 - squares / 24) / 5 == Approx(kBetween).epsilon(1e-5));
  BedSpread spread;
  spread.all = 1.99;  // as good as nothing known of the whole
  spread.model = std::sqrt(kBetween) / kScale;
  const auto said = BedCorrections::predicted(readings, spread).value();
  CHECK(said.noise() == 1);
  for (int batch = 0; batch < 6; ++batch) {
    const auto of = said.of({"", "batch " + std::to_string(batch), ""});
    REQUIRE(of.levels.size() == 2);
    CHECK(kScale * of.levels[0].log == Approx(0).margin(1e-6));
    CHECK(of.levels[1].of == BedLevel::Of::model);
    CHECK(kScale * of.levels[1].log == Approx(published[batch]).margin(0.001));
    CHECK(of.levels[0].readings == 30);
    CHECK(of.levels[1].readings == 5);
    double mean = 0;
    for (const double one : yields[batch]) mean += one / 5;
    CHECK(kScale * of.log == Approx((mean - kMean) * 5 * kBetween / (5 * kBetween + kWithin)).epsilon(1e-6));
  }
}

TEST_CASE("frame, model and all are drawn to each other as two nested levels are by formula", "[bed]") {
  // Balanced and nested: a frames in each of b models, n readings each. With variances f (frames), m (models), e (readings) and nothing known of the
  // whole, the model's part is m a n / (m a n + f n + e) of its mean's distance, the frame's n f / (n f + e) of its mean less the
  // whole and the model's part; both follow from the normal equations of the mixed model (common textbook form, from memory).
  constexpr int b = 4, a = 3, n = 2;
  constexpr double f = 0.03 * 0.03, m = 0.06 * 0.06, e = 0.04 * 0.04;
  Chance chance(12);
  std::vector<BedReading> readings;
  double of_frame[b][a] = {}, of_model[b] = {}, whole = 0;
  for (int model = 0; model < b; ++model)
    for (int frame = 0; frame < a; ++frame)
      for (int i = 0; i < n; ++i) {
        const double value = 0.07 * chance.normal();
        readings.push_back({std::to_string(frame), std::to_string(model), "", value, 0.04});
        of_frame[model][frame] += value / n;
        of_model[model] += value / (n * a);
        whole += value / (n * a * b);
      }
  BedSpread spread;
  spread.all = 1.99;
  const auto said = BedCorrections::predicted(readings, spread).value();
  for (int model = 0; model < b; ++model)
    for (int frame = 0; frame < a; ++frame) {
      const double models = (of_model[model] - whole) * m * a * n / (m * a * n + f * n + e);
      const double frames = (of_frame[model][frame] - whole - models) * n * f / (n * f + e);
      CHECK(said.of({std::to_string(frame), std::to_string(model), ""}).log == Approx(whole + models + frames).margin(2e-5));
    }
}

TEST_CASE("a racket of nobody known yet is corrected by all, and by its material", "[bed]") {
  std::vector<BedReading> readings;
  for (int i = 0; i < 40; ++i) {
    const bool poly = i % 2 == 0;
    readings.push_back({"frame " + std::to_string(i), "model " + std::to_string(i % 5), "string " + std::to_string(i % 8), poly ? 0.13 : 0.07, 0.03,
                        poly ? "polyester" : "multifilament"});
  }
  const auto fitted = BedCorrections::fitted(readings).value();
  const auto poly = fitted.of({"new", "new", "new", "polyester"}), soft = fitted.of({"new", "new", "new", "multifilament"});
  CHECK(poly.log == Approx(0.13).margin(0.03));
  CHECK(soft.log == Approx(0.07).margin(0.03));
  CHECK(poly.log - soft.log > 0.02);
  CHECK(poly.from_data > 0.5);
  REQUIRE(poly.levels.size() == 2);
  CHECK(poly.levels[0].of == BedLevel::Of::all);
  CHECK(poly.levels[1].of == BedLevel::Of::material);
  CHECK(poly.levels[1].readings == 20);
  CHECK(poly.levels[0].log + poly.levels[1].log == Approx(poly.log));
  const std::string words = level_words(Language(), poly);
  CHECK(words.find("all rackets +") != std::string::npos);
  CHECK(words.find("(of 40)") != std::string::npos);
  CHECK(words.find("this material") != std::string::npos);
  CHECK(level_words(Language(), {}).empty());
}
