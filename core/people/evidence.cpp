#include "core/people/evidence.h"

#include <cmath>

namespace weavelog {

double weight_of(const Odds& odds) {
  return std::log2(odds.m / odds.u);
}
double weight_against(const Odds& odds) {
  return std::log2((1 - odds.m) / (1 - odds.u));
}
double weight_of_prior(double probability) {
  return std::log2(probability / (1 - probability));
}
double probability_of(double weight) {
  return 1 / (1 + std::exp2(-weight));
}

}  // namespace weavelog
