#pragma once
// Evidence that two records are one person, as log-odds (Fellegi and Sunter 1969, "A theory for record
// linkage", JASA 64).

namespace weavelog {

/// m: how often the comparison comes out so for one and the same person; u: for two different ones.
struct Odds {
  double m = 0;
  double u = 0;
};

/// log2(m/u), in bits.
[[nodiscard]] double weight_of(const Odds& odds);
/// The same for the opposite outcome: log2((1-m)/(1-u)).
[[nodiscard]] double weight_against(const Odds& odds);
/// log2(p/(1-p)).
[[nodiscard]] double weight_of_prior(double probability);
/// 2^w/(1+2^w).
[[nodiscard]] double probability_of(double weight);

}  // namespace weavelog
