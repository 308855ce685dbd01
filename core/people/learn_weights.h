#pragma once
// Weights out of two lists, without anybody saying who is who.
//
// Strangers' shares come from chance pairs of persons known here, who are nearly all different people. Those of one person, and how many are
// known, relatives or namesakes, come by expectation and maximisation (Dempster, Laird and Rubin 1977; for record linkage Winkler 1988): by the
// weights so far each entry is one of its candidates with some probability, or none; the shares of levels among all pairs, weighted so, are the next
// weights. What begins stays in as if it had been seen in some dozens of pairs, so that a short list moves it little. What relatives share is not
// learnt: left free, that class takes in whoever has names of one language.

#include <vector>

#include "core/people/match.h"

namespace weavelog {

/// From so many entries and persons on a list says more of its own errors than what is usual.
inline constexpr std::size_t kEnoughToLearn = 200;

struct LearnOptions {
  MatchWeights start = MatchWeights::usual();
  double start_worth = 50;  ///< pairs that the beginning counts for
  std::size_t rounds = 30;  ///< at most
  double settled = 1e-4;    ///< no share moves by more: done
  std::size_t chance_pairs = 200'000;
  std::size_t most_entries = 5'000;  ///< more are passed over, evenly

  /// While somebody waits at an arrival: fewer chance pairs, which changed no answer that was seen.
  [[nodiscard]] static LearnOptions at_arrival();
};

inline LearnOptions LearnOptions::at_arrival() {
  LearnOptions out;
  out.chance_pairs = 20'000;
  return out;
}

struct LearntWeights {
  MatchWeights weights;
  std::size_t rounds = 0;
  std::size_t entries = 0;
  double expected_known = 0;  ///< of the entries
};

/// `index` may have been made with any weights. The same lists give the same weights.
[[nodiscard]] LearntWeights learn_weights(const PersonIndex& index, const std::vector<PersonFacts>& entries, const LearnOptions& options = {});

}  // namespace weavelog
