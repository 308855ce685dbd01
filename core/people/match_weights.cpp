#include "core/people/match_weights.h"

#include <cmath>

namespace weavelog {
namespace {

constexpr std::size_t index_of(ComparedField field) {
  return static_cast<std::size_t>(field);
}

MatchWeights usual_weights() {
  MatchWeights out;
  using Field = ComparedField;
  const auto row = [](MatchWeights::Table & table, Field field) -> auto& {
    return table[index_of(field)];
  };
  //                                same    sound   short   slip    slip_short part    initial different
  row(out.same, Field::family) = {0.902, 0.035, 0, 0.041, 0.005, 0.0145, 0, 0.0025};
  row(out.same, Field::given) = {0.939, 0.02, 0.008, 0.0065, 0.0055, 0.002, 0.016, 0.003};
  row(out.same, Field::country) = {0.986, 0.014};
  row(out.same, Field::birth_year) = {0.982, 0.0145, 0.0035};
  row(out.same, Field::hand) = {0.871, 0.107, 0.022};
  row(out.same, Field::tour_number) = {0.985, 0.0135, 0.0015};
  row(out.same, Field::rackets) = {0.767, 0.233};
  row(out.same, Field::strings) = {0.778, 0.222};

  row(out.stranger, Field::family) = {1.8e-4, 3.6e-4, 0, 4.3e-4, 1e-4, 3.2e-4, 0, 0.99861};
  row(out.stranger, Field::given) = {2.2e-3, 5.8e-4, 3.8e-3, 3e-4, 6.2e-4, 8.1e-4, 1.6e-3, 0.99009};
  row(out.stranger, Field::country) = {0.0357, 0.9643};
  row(out.stranger, Field::birth_year) = {0.0385, 0.1265, 0.835};
  row(out.stranger, Field::hand) = {0.769, 0.0155, 0.2155};
  row(out.stranger, Field::tour_number) = {1e-5, 1e-4, 0.99989};  // not learnt: real ones may be of several tours
  row(out.stranger, Field::rackets) = {0.037, 0.963};
  row(out.stranger, Field::strings) = {0.04, 0.96};
  out.compatriot = out.stranger;
  row(out.compatriot, Field::family) = {5e-3, 1.1e-3, 0, 7.1e-3, 8e-4, 3e-3, 0, 0.983};
  row(out.compatriot, Field::given) = {0.0242, 9.3e-4, 1.2e-3, 1.3e-3, 1.5e-3, 1.3e-3, 1.7e-3, 0.96787};

  // Estimates of our own, not learnt.
  row(out.relative, Field::family) = {0.87, 0.05, 0, 0.015, 0.01, 0.035, 0, 0.02};
  row(out.relative, Field::given) = {2e-4, 1e-3, 0.01, 0.003, 0.06, 0.02, 0.05, 0.8558};
  row(out.relative, Field::country) = {0.97, 0.03};
  row(out.relative, Field::birth_year) = {0.35, 0.15, 0.5};  // twins, and others a few years apart
  row(out.relative, Field::hand) = row(out.stranger, Field::hand);
  row(out.relative, Field::tour_number) = row(out.stranger, Field::tour_number);
  row(out.relative, Field::rackets) = {0.4, 0.6};
  row(out.relative, Field::strings) = {0.4, 0.6};
  row(out.namesake, Field::family) = {0.955, 0.02, 0, 0.005, 0.005, 0.01, 0, 0.005};
  row(out.namesake, Field::given) = {0.955, 0.015, 0.005, 0.003, 0.005, 0.003, 0.01, 0.004};
  row(out.namesake, Field::country) = {0.97, 0.03};
  row(out.namesake, Field::birth_year) = {0.001, 0.1, 0.899};
  return out;
}

double strangers_chance(const Comparison& comparison, std::size_t field, const MatchWeights& weights) {
  const double said = comparison.chance[field];
  if (said > 0) return said;
  const bool compatriot = comparison.of(ComparedField::country) == static_cast<std::int8_t>(CountryLevel::same);
  return (compatriot ? weights.compatriot : weights.stranger)[field][static_cast<std::size_t>(comparison.level[field])];
}

}  // namespace

const MatchWeights& MatchWeights::usual() {
  static const MatchWeights weights = usual_weights();
  return weights;
}

std::size_t levels_of(ComparedField field) {
  switch (field) {
    case ComparedField::family:
    case ComparedField::given:
      return kNameLevels;
    case ComparedField::birth_year:
    case ComparedField::hand:
    case ComparedField::tour_number:
      return 3;
    default:
      return 2;
  }
}

Chances chances_of(const Comparison& comparison, const MatchWeights& weights) {
  Chances out;
  for (std::size_t field = 0; field < kComparedFields; ++field) {
    if (comparison.level[field] == Comparison::kUnsaid) continue;
    const auto level = static_cast<std::size_t>(comparison.level[field]);
    const double stranger = strangers_chance(comparison, field, weights);
    out.same *= weights.same[field][level];
    out.relative *= weights.relative[field][level];
    out.stranger *= stranger;
    const double namesake = weights.namesake[field][0];
    out.namesake *= namesake > 0 ? weights.namesake[field][level] : stranger;
  }
  return out;
}

double Chances::other(const MatchWeights& weights, double persons) const {
  const double relatives = weights.relatives / persons, namesakes = weights.namesakes / persons;
  return (1 - relatives - namesakes) * stranger + relatives * relative + namesakes * namesake;
}

double weight_of_field(const Comparison& comparison, ComparedField field, const MatchWeights& weights) {
  const std::size_t at = index_of(field);
  if (comparison.level[at] == Comparison::kUnsaid) return 0;
  return std::log2(weights.same[at][static_cast<std::size_t>(comparison.level[at])] / strangers_chance(comparison, at, weights));
}

}  // namespace weavelog
