#include "core/desk/room_order.h"

#include <algorithm>

#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/plan/order_of_play.h"

namespace weavelog {
namespace {

/// An undecided match of which something is said, before it has its place on a court.
struct Said {
  const HeldDraw* draw = nullptr;
  const MatchRecord* record = nullptr;
  EntityId id;
  std::optional<UnixMs> when{};  ///< its own time, or that of what it follows
  int behind = 0;                ///< so many follow each other up to it
};

std::vector<Said> said_matches(std::span<const HeldDraw> draws) {
  std::vector<Said> out;
  for (const HeldDraw& draw : draws) {
    for (const auto& match : draw.matches) {
      const MatchRecord& now = match.now;
      const auto round = static_cast<int>(*now.round);
      if (*now.match < 1 || static_cast<std::size_t>(*now.match) > draw.matches_in(round)) continue;
      if (draw.winner(round, static_cast<std::size_t>(*now.match - 1))) continue;
      if (now.not_before || now.after) out.push_back({&draw, &now, match.id(), now.not_before});
    }
  }
  // What follows another match has that one's time, until one has a time of its own; who follow each other in a ring have none.
  for (std::size_t round = 0; round < out.size(); ++round) {
    bool more = false;
    for (Said& one : out) {
      if (one.when) continue;
      const auto before = std::find_if(out.begin(), out.end(), [&](const Said& other) { return other.id == one.record->after; });
      if (before == out.end() || !before->when) continue;
      one.when = before->when;
      one.behind = before->behind + 1;
      more = true;
    }
    if (!more) break;
  }
  std::erase_if(out, [](const Said& one) { return !one.when; });
  std::stable_sort(out.begin(), out.end(), [](const Said& a, const Said& b) { return std::pair(*a.when, a.behind) < std::pair(*b.when, b.behind); });
  return out;
}

PlayedMatch place_of(const Said& one) {
  return {one.draw->sheet.now.name, static_cast<int>(*one.record->round), static_cast<std::size_t>(*one.record->match - 1)};
}

}  // namespace

RoomOrder room_order(std::span<const HeldDraw> draws, const std::string& zone) {
  const LocalTime clock(zone);
  const auto said = said_matches(draws);
  std::vector<OrderEntry> order;
  std::map<std::string, const Bracket*> brackets;
  for (const HeldDraw& draw : draws)
    if (draw.draw) brackets[draw.sheet.now.name] = &draw.draw->bracket();
  for (const Said& one : said) {
    if (!one.draw->draw) continue;  // of a group only times that are said count
    OrderEntry entry;
    entry.day = date_text(clock.day_of(*one.when));
    // Without a court it is on one of its own: nothing there is in its way.
    entry.court = one.record->court.empty() ? "match " + one.id.hex() : one.record->court;
    entry.match = place_of(one);
    entry.not_before = one.record->not_before;
    entry.place = one.draw->sheet.now.name;
    if (!entry.not_before) {
      const auto before = std::find_if(said.begin(), said.end(), [&](const Said& other) { return other.id == one.record->after; });
      if (before != said.end()) entry.follows = place_of(*before);
    }
    order.push_back(std::move(entry));
  }
  RoomOrder out;
  const auto times = expected_times(order, brackets);
  if (!times) out.trouble = times.error();
  for (const Said& one : said) {
    const PlayedMatch place = place_of(one);
    ExpectedMatch expected;
    expected.draw = one.draw->sheet.id();
    expected.draw_name = place.draw;
    expected.round = place.round;
    expected.match = place.match;
    expected.court = one.record->court;
    if (times && times->contains(place)) {
      expected.begin = times->at(place).begin;
      expected.estimated = times->at(place).estimated;
    } else if (one.record->not_before) {
      expected.begin = *one.record->not_before;
    } else {
      continue;
    }
    const auto [upper, lower] = one.draw->sides(place.round, place.match);
    for (const auto& side : {upper, lower})
      if (side)
        for (const std::string& name : people_of(one.draw->line(*side))) expected.players.push_back(name);
    out.matches.push_back(std::move(expected));
  }
  std::stable_sort(out.matches.begin(), out.matches.end(), [](const auto& a, const auto& b) { return a.begin < b.begin; });
  return out;
}

std::map<std::string, UnixMs> next_matches(const RoomOrder& order, UnixMs now) {
  std::map<std::string, UnixMs> out;
  for (const ExpectedMatch& match : order.matches) {
    if (match.begin < now) continue;
    for (const std::string& player : match.players) out.emplace(search_key(player), match.begin);
  }
  return out;
}

}  // namespace weavelog
