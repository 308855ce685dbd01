#include "core/plan/round_robin.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"

namespace weavelog {

std::vector<std::vector<GroupMatch>> circle_rounds(std::size_t players) {
  std::vector<std::vector<GroupMatch>> out;
  if (players < 2) return out;
  const std::size_t seats = players + players % 2;  // the last seat of an odd number rests its partner
  for (std::size_t round = 0; round + 1 < seats; ++round) {
    std::vector<GroupMatch> matches;
    const auto at = [&](std::size_t seat) { return seat == 0 ? 0 : (seat - 1 + round) % (seats - 1) + 1; };
    for (std::size_t seat = 0; seat < seats / 2; ++seat) {
      const std::size_t one = at(seat), other = at(seats - 1 - seat);
      if (one < players && other < players) matches.push_back({std::min(one, other), std::max(one, other)});
    }
    out.push_back(std::move(matches));
  }
  return out;
}

Outcome<RoundRobin> RoundRobin::make(std::vector<BracketLine> players, std::span<const Result> results) {
  if (players.size() < 3 || players.size() > 8)
    return fail(FaultCode::bad_input, "a group has 3 to 8 players, and here are " + std::to_string(players.size()), {},
                "divide them into several groups");
  std::set<std::string> people;
  for (std::size_t at = 0; at < players.size(); ++at) {
    const std::string place = "place " + std::to_string(at + 1) + " of the group";
    if (players[at].bye || players[at].player.empty())
      return fail(FaultCode::bad_input, "nobody is here", place, "name a player, or make the group smaller");
    for (const std::string& one : people_of(players[at]))
      if (!people.insert(search_key(one)).second)
        return fail(FaultCode::bad_input, one + " is in the group twice", place, "leave one of the two places to somebody else");
  }
  RoundRobin out;
  out.winners_.resize(players.size() * players.size());
  out.players_ = std::move(players);
  const std::size_t n = out.players_.size();
  for (const Result& result : results) {
    const auto [one, other] = result.match;
    const std::string place =
        (result.place.empty() ? "" : result.place + ", ") + "places " + std::to_string(one + 1) + " and " + std::to_string(other + 1);
    if (one >= n || other >= n || one == other) return fail(FaultCode::bad_input, "these two do not meet in this group", place, "correct the result");
    if (result.winner != one && result.winner != other)
      return fail(FaultCode::bad_input, "the winner did not play this match", place, "name one of the two");
    if (const auto known = out.winner(one, other); known && *known != result.winner)
      return fail(FaultCode::bad_input, "this match has another winner already: " + line_name(out.players_[*known]), place,
                  "correct one of the two results");
    out.decide(one, other, result.winner);
  }
  for (std::size_t one = 0; one < n; ++one)
    for (std::size_t other = 0; other < n; ++other)
      if (one != other && out.players_[one].withdrawn && !out.players_[other].withdrawn && !out.winner(one, other)) out.decide(one, other, other);
  return out;
}

void RoundRobin::decide(std::size_t one, std::size_t other, std::optional<std::size_t> winner) {
  winners_[one * players_.size() + other] = winners_[other * players_.size() + one] = winner;
}

bool RoundRobin::meets(std::size_t one, std::size_t other) const {
  return one != other && !winner(one, other) && !players_[one].withdrawn && !players_[other].withdrawn;
}

std::size_t RoundRobin::matches_left(std::size_t player) const {
  std::size_t out = 0;
  for (std::size_t other = 0; other < players_.size(); ++other) out += meets(player, other);
  return out;
}

std::size_t RoundRobin::wins(std::size_t player) const {
  std::size_t out = 0;
  for (std::size_t other = 0; other < players_.size(); ++other) out += other != player && winner(player, other) == player;
  return out;
}

/// Groups of players who are level after wins and wins among each other, best first.
std::vector<std::vector<std::size_t>> RoundRobin::levels() const {
  std::vector<std::vector<std::size_t>> out;
  std::vector<std::size_t> all(players_.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
  const auto part = [&](const std::vector<std::size_t>& group, const auto& score) {
    std::vector<std::vector<std::size_t>> parts;
    auto order = group;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return score(a) > score(b); });
    for (const std::size_t one : order) {
      if (parts.empty() || score(parts.back().front()) != score(one)) parts.emplace_back();
      parts.back().push_back(one);
    }
    return parts;
  };
  for (const auto& level : part(all, [&](std::size_t one) { return wins(one); }))
    for (auto& inner : part(level, [&](std::size_t one) {
           return std::count_if(level.begin(), level.end(), [&](std::size_t other) { return other != one && winner(one, other) == one; });
         }))
      out.push_back(std::move(inner));
  return out;
}

std::vector<std::size_t> RoundRobin::standing() const {
  std::vector<std::size_t> out;
  for (const auto& level : levels()) out.insert(out.end(), level.begin(), level.end());
  return out;
}

std::optional<std::vector<double>> RoundRobin::first_chances(const WinChance& chance) const {
  std::vector<GroupMatch> open;
  for (std::size_t one = 0; one < players_.size(); ++one)
    for (std::size_t other = one + 1; other < players_.size(); ++other)
      if (meets(one, other)) open.push_back({one, other});
  if (open.size() > 20) return std::nullopt;
  std::vector<double> out(players_.size());
  RoundRobin way = *this;
  for (std::size_t ways = 0; ways < std::size_t{1} << open.size(); ++ways) {
    double p = 1;
    for (std::size_t at = 0; at < open.size() && p > 0; ++at) {
      const auto [one, other] = open[at];
      const bool first = (ways >> at & 1) == 0;
      p *= first ? chance(one, other) : 1 - chance(one, other);
      way.decide(one, other, first ? one : other);
    }
    if (p == 0) continue;
    auto best = way.levels().front();
    // Who withdrew does not come first, however much was won before.
    std::erase_if(best, [&](std::size_t one) { return players_[one].withdrawn; });
    for (const std::size_t one : best) out[one] += p / static_cast<double>(best.size());
  }
  return out;
}

}  // namespace weavelog
