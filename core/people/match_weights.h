#pragma once
// How outcomes of a comparison weigh: shares of each level among records of one person, among relatives, among
// strangers (Fellegi and Sunter 1969). The weights come out of data without labels: learn_weights.h.

#include <array>

#include "core/people/comparison.h"

namespace weavelog {

struct MatchWeights {
  /// Of each field and level, rows of 1 in sum.
  using Table = std::array<std::array<double, kNameLevels>, kComparedFields>;
  Table same{};        ///< the other record is of the same person
  Table relative{};    ///< of a sister, brother or twin: one family name, one country, years near
  Table namesake{};    ///< of one who is called alike for a reason, a father or a cousin: not born in the same year; what has no row is a stranger's
  Table stranger{};    ///< of anybody else; where Comparison::chance says more, that counts
  Table compatriot{};  ///< of anybody else of the same country: names of one language are more alike
  /// Share of those asked for who are known here, given that all are of one circuit.
  double known = 0.5;
  /// How many relatives, and how many such namesakes, a person has among those known here.
  double relatives = 0.025;
  double namesakes = 0.004;

  /// Learnt by learn_weights() without labels from the invented lists of fixtures/people, but for what stands beside it as estimated; real lists
  /// were not at hand.
  [[nodiscard]] static const MatchWeights& usual();
};

/// How many levels a field has.
[[nodiscard]] std::size_t levels_of(ComparedField field);

/// The chances of one comparison.
struct Chances {
  double same = 1, relative = 1, namesake = 1, stranger = 1;

  /// Of the outcome if it is not the same person, where `persons` are known here.
  [[nodiscard]] double other(const MatchWeights& weights, double persons) const;
};
[[nodiscard]] Chances chances_of(const Comparison& comparison, const MatchWeights& weights);
/// log2(same/stranger) of one field; 0 where one side does not say.
[[nodiscard]] double weight_of_field(const Comparison& comparison, ComparedField field, const MatchWeights& weights);

}  // namespace weavelog
