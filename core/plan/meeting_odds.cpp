#include "core/plan/meeting_odds.h"

#include <cmath>

namespace weavelog {

WinChance even_chances() {
  return [](std::size_t, std::size_t) { return 0.5; };
}

Outcome<WinChance> chances_by_rating(std::span<const BracketLine> lines) {
  double sum = 0;
  std::size_t rated = 0;
  for (const BracketLine& line : lines)
    if (line.rating) {
      sum += *line.rating;
      ++rated;
    }
  if (rated == 0)
    return fail(FaultCode::bad_input, "nobody here has a rating", {}, "give ratings, or reckon by seeds or with even odds");
  std::vector<double> ratings;
  for (const BracketLine& line : lines) ratings.push_back(line.rating.value_or(sum / static_cast<double>(rated)));
  return [ratings = std::move(ratings)](std::size_t one, std::size_t other) {
    return 1 / (1 + std::pow(10.0, (ratings[other] - ratings[one]) / 400));
  };
}

Outcome<WinChance> chances_by_rating(const Bracket& bracket) { return chances_by_rating(bracket.lines()); }

Outcome<WinChance> chances_by_seed(const Bracket& bracket) {
  std::int64_t last = 0;
  std::size_t players = 0;
  for (const BracketLine& line : bracket.lines()) {
    last = std::max(last, line.seed.value_or(0));
    players += line.bye ? 0 : 1;
  }
  if (last == 0) return fail(FaultCode::bad_input, "nobody in this draw is seeded", {}, "give seeds, or reckon by ratings or with even odds");
  const double middle = std::max(static_cast<double>(last) + 1, (static_cast<double>(last + 1) + static_cast<double>(players)) / 2);
  std::vector<double> ranks;
  for (const BracketLine& line : bracket.lines()) ranks.push_back(line.seed ? static_cast<double>(*line.seed) : middle);
  return [ranks = std::move(ranks)](std::size_t one, std::size_t other) { return ranks[other] / (ranks[one] + ranks[other]); };
}

MeetingOdds::MeetingOdds(const Bracket& bracket, const WinChance& chance)
    : size_(bracket.lines().size()),
      reach_(static_cast<std::size_t>(bracket.rounds()) + 1, std::vector<double>(size_)),
      plays_(static_cast<std::size_t>(bracket.rounds()), std::vector<double>(size_)) {
  std::fill(reach_[0].begin(), reach_[0].end(), 1.0);
  for (const BracketLine& line : bracket.lines()) withdrawn_.push_back(line.withdrawn);
  for (int round = 1; round <= bracket.rounds(); ++round) {
    const auto& here = reach_[static_cast<std::size_t>(round) - 1];
    auto& next = reach_[static_cast<std::size_t>(round)];
    const std::size_t half = std::size_t{1} << (round - 1);
    auto& states = states_.emplace_back();
    for (std::size_t match = 0; match < size_ >> round; ++match)
      states.push_back(!bracket.winner(round, match) ? State::open : bracket.played(round, match) ? State::played : State::walked_over);
    for (std::size_t line = 0; line < size_; ++line) {
      if (const auto winner = bracket.winner(round, Bracket::match_of(round, line))) {
        next[line] = *winner == line ? 1 : 0;
        continue;
      }
      if (here[line] == 0) continue;  // a bye, or out already: their chances need not exist
      const std::size_t first = (line / half ^ 1) * half;  // the other half of this match
      if (withdrawn_[line]) continue;
      double wins = 0, plays = 0, comes = 0;
      for (std::size_t other = first; other < first + half; ++other) {
        if (here[other] == 0) continue;
        comes += here[other];
        if (withdrawn_[other]) {
          wins += here[other];
        } else {
          plays += here[other];
          wins += here[other] * chance(line, other);
        }
      }
      // Of two who withdrew nobody comes.
      if (comes < 1 - 1e-12) wins += 1 - comes;
      next[line] = here[line] * wins;
      plays_[static_cast<std::size_t>(round) - 1][line] = here[line] * plays;
    }
  }
}

double MeetingOdds::reaches(std::size_t line, int round) const { return reach_.at(static_cast<std::size_t>(round) - 1).at(line); }

double MeetingOdds::meet(std::size_t one, std::size_t other) const {
  const int round = Bracket::meeting_round(one, other);
  if (round == 0) return 0;
  // Who withdrew meets nobody any more; whom they met before, they met.
  const State state = states_[static_cast<std::size_t>(round) - 1][Bracket::match_of(round, one)];
  if (state == State::walked_over || (state == State::open && (withdrawn_[one] || withdrawn_[other]))) return 0;
  return reaches(one, round) * reaches(other, round);
}

double MeetingOdds::plays(std::size_t line, int round) const { return plays_.at(static_cast<std::size_t>(round) - 1).at(line); }

double MeetingOdds::matches_left(std::size_t line) const {
  double out = 0;
  for (const auto& round : plays_) out += round.at(line);
  return out;
}

}  // namespace weavelog
