#include "core/people/learn_weights.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace weavelog {
namespace {

using Table = MatchWeights::Table;

/// Counts of levels, begun with a table that is worth so many pairs.
class Counts {
 public:
  Counts(const Table& start, double worth) : counts_(start) {
    for (auto& row : counts_)
      for (double& one : row) one *= worth;
  }
  void add(const Comparison& comparison, double weight) {
    for (std::size_t field = 0; field < kComparedFields; ++field)
      if (comparison.level[field] != Comparison::kUnsaid) counts_[field][static_cast<std::size_t>(comparison.level[field])] += weight;
  }
  [[nodiscard]] Table shares() const {
    Table out = counts_;
    for (std::size_t field = 0; field < kComparedFields; ++field) {
      double sum = 0;
      const std::size_t levels = levels_of(static_cast<ComparedField>(field));
      for (std::size_t level = 0; level < levels; ++level) sum += out[field][level];
      for (std::size_t level = 0; level < levels && sum > 0; ++level) out[field][level] /= sum;
    }
    return out;
  }

 private:
  Table counts_;
};

/// Chance that is the same everywhere: a linear congruential generator (Knuth, MMIX).
class Steps {
 public:
  std::size_t below(std::size_t bound) {
    state_ = state_ * 6364136223846793005U + 1442695040888963407U;
    return static_cast<std::size_t>((state_ >> 33) % bound);
  }

 private:
  std::uint64_t state_ = 1;
};

/// Chance pairs of persons known here, of all and of compatriots. Too few persons say nothing.
void learn_strangers(const PersonIndex& index, const LearnOptions& options, MatchWeights& weights) {
  constexpr std::size_t kFewest = 50;
  constexpr double kStartWorth = 1000;
  const std::size_t size = index.size();
  if (size < kFewest) return;
  std::map<std::string, std::vector<std::size_t>> countries;
  for (std::size_t i = 0; i < size; ++i)
    if (!index.country(i).empty()) countries[index.country(i)].push_back(i);
  Counts all(options.start.stranger, kStartWorth), compatriots(options.start.compatriot, kStartWorth);
  Steps steps;
  const std::size_t pairs = std::min(options.chance_pairs, size * 20);
  for (std::size_t i = 0; i < pairs; ++i) {
    const std::size_t a = steps.below(size), b = steps.below(size);
    if (a != b) all.add(index.compared(a, b), 1);
    const auto home = countries.find(index.country(a));
    if (home == countries.end()) continue;
    const std::size_t c = home->second[steps.below(home->second.size())];
    if (a != c) compatriots.add(index.compared(a, c), 1);
  }
  weights.stranger = all.shares();
  weights.compatriot = compatriots.shares();
}

double furthest(const Table& a, const Table& b) {
  double out = 0;
  for (std::size_t field = 0; field < kComparedFields; ++field)
    for (std::size_t level = 0; level < kNameLevels; ++level) out = std::max(out, std::fabs(a[field][level] - b[field][level]));
  return out;
}

}  // namespace

LearntWeights learn_weights(const PersonIndex& index, const std::vector<PersonFacts>& entries, const LearnOptions& options) {
  LearntWeights out;
  out.weights = options.start;
  if (index.size() == 0 || entries.empty()) return out;
  learn_strangers(index, options, out.weights);

  std::vector<std::vector<Comparison>> pairs;
  const std::size_t step = entries.size() / std::max<std::size_t>(options.most_entries, 1) + 1;
  for (std::size_t i = 0; i < entries.size(); i += step) pairs.push_back(index.comparisons(entries[i]));
  out.entries = pairs.size();
  const auto asked = static_cast<double>(pairs.size());
  const double persons = index.circuit();

  for (out.rounds = 0; out.rounds < options.rounds;) {
    ++out.rounds;
    const MatchWeights& now = out.weights;
    Counts same(options.start.same, options.start_worth);
    double known = options.start.known * options.start_worth, relatives = options.start.relatives * options.start_worth,
           namesakes = options.start.namesakes * options.start_worth;
    const double prior = now.known / persons / (1 - now.known);
    for (const auto& entry : pairs) {
      std::vector<Chances> chances;
      double all_odds = 1;
      for (const Comparison& pair : entry) {
        chances.push_back(chances_of(pair, now));
        all_odds += prior * chances.back().same / chances.back().other(now, persons);
      }
      for (std::size_t i = 0; i < entry.size(); ++i) {
        const Chances& one = chances[i];
        const double other = one.other(now, persons);
        const double is_same = prior * one.same / other / all_odds;
        const double is_relative = (1 - is_same) * now.relatives / persons * one.relative / other;
        if (is_same > 1e-6) same.add(entry[i], is_same);
        known += is_same;
        relatives += is_relative;
        namesakes += (1 - is_same) * now.namesakes / persons * one.namesake / other;
      }
    }
    MatchWeights next = now;
    next.same = same.shares();
    // Nobody is certain to be known, nor certain to be new.
    next.known = std::clamp(known / (asked + options.start_worth), 0.02, 0.98);
    next.relatives = relatives / (asked + options.start_worth);
    next.namesakes = namesakes / (asked + options.start_worth);
    const double moved = furthest(next.same, now.same);
    out.weights = next;
    if (moved < options.settled) break;
  }
  out.expected_known = out.weights.known * asked;
  return out;
}

}  // namespace weavelog
