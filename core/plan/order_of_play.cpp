#include "core/plan/order_of_play.h"

#include <algorithm>
#include <set>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/plan/plan_table.h"

namespace weavelog {
namespace {

std::string name_of(const PlayedMatch& match) {
  return (match.draw.empty() ? "" : match.draw + ", ") + "round " + std::to_string(match.round) + ", match " + std::to_string(match.match + 1);
}

std::string where(const OrderEntry& entry) { return (entry.place.empty() ? "" : entry.place + ", ") + name_of(entry.match); }

/// "2/7" or "Doubles 2/7".
std::optional<PlayedMatch> match_in(const std::string& text, const std::string& draw) {
  PlayedMatch out;
  const auto slash = text.rfind('/');
  if (slash == std::string::npos) return std::nullopt;
  const auto space = text.rfind(' ', slash);
  out.draw = space == std::string::npos ? draw : std::string(trimmed(std::string_view(text).substr(0, space)));
  const std::size_t from = space == std::string::npos ? 0 : space + 1;
  const auto round = PlanTable::number<int>(std::string_view(text).substr(from, slash - from));
  const auto match = PlanTable::number<std::size_t>(std::string_view(text).substr(slash + 1));
  if (!round || !match || *round < 1 || *match < 1) return std::nullopt;
  out.round = *round;
  out.match = *match - 1;
  return out;
}

Outcome<std::optional<UnixMs>> time_in(const PlanTable& table, const CsvRow& row, std::string_view column, const std::string& day,
                                       const std::string& zone) {
  const std::string text = table.cell(row, column);
  if (text.empty()) return std::optional<UnixMs>();
  const bool form = text.size() == 5 && text[2] == ':' && text.find_first_not_of("0123456789:") == std::string::npos;
  const auto at = form ? moment_from(day + "T" + text, zone, 0) : Outcome<UnixMs>(fail(FaultCode::bad_input, ""));
  if (!at) return table.wrong(row, column, "'" + text + "' is no time of day", "write hours and minutes such as 14:05, or nothing");
  return std::optional<UnixMs>(*at);
}

/// The matches one after the other, as each court and what leads to them lets them begin.
class Clock {
 public:
  Clock(std::span<const OrderEntry> order, const std::map<std::string, const Bracket*>& draws, const OrderOptions& options)
      : order_(order), draws_(draws), options_(options) {}

  Outcome<std::map<PlayedMatch, MatchTime>> run() {
    if (auto checked = check(); !checked) return fail(checked.error());
    std::map<std::pair<std::string, std::string>, std::size_t> last;  // by day and court
    for (std::size_t at = 0; at < order_.size(); ++at) {
      const auto key = std::pair(order_[at].day, order_[at].court);
      if (const auto found = last.find(key); found != last.end()) before_[at] = found->second;
      last[key] = at;
    }
    std::map<PlayedMatch, MatchTime> out;
    for (std::size_t at = 0; at < order_.size(); ++at) {
      const auto time = time_of(at, 0);
      if (!time) return fail(time.error());
      out[order_[at].match] = *time;
    }
    return out;
  }

 private:
  Outcome<> check() {
    for (std::size_t at = 0; at < order_.size(); ++at) {
      const OrderEntry& entry = order_[at];
      const auto draw = draws_.find(entry.match.draw);
      if (draw == draws_.end()) return fail(FaultCode::bad_input, "there is no draw of this name", where(entry), "name it as it was given");
      const Bracket& bracket = *draw->second;
      if (entry.match.round < 1 || entry.match.round > bracket.rounds() || entry.match.match >= bracket.lines().size() >> entry.match.round)
        return fail(FaultCode::bad_input, "there is no such match in a draw of " + std::to_string(bracket.lines().size()), where(entry),
                    "correct round or match");
      if (bracket.winner(entry.match.round, entry.match.match))
        return fail(FaultCode::bad_input, "this match is decided already, or has a bye", where(entry), "take it out of the order");
      if (!place_.emplace(entry.match, at).second) return fail(FaultCode::bad_input, "this match comes twice", where(entry), "leave one of the two");
      const auto [upper, lower] = bracket.sides(entry.match.round, entry.match.match);
      for (const auto& side : {upper, lower})
        if (side)
          for (const std::string& person : people_of(bracket.lines()[*side])) people_[at].insert(search_key(person));
      for (const auto& time : {entry.at, entry.not_before})
        if (time && (!first_.contains(entry.day) || *time < first_[entry.day])) first_[entry.day] = *time;
    }
    for (const auto& [day, time] : options_.day_begins) first_[day] = time;
    for (std::size_t at = 0; at < order_.size(); ++at)
      for (const std::size_t feeder : feeders(order_[at].match)) {
        const OrderEntry &entry = order_[at], &leads = order_[feeder];
        const bool ahead = leads.day == entry.day && leads.court == entry.court && feeder > at;
        if (leads.day > entry.day || ahead)
          return fail(
              FaultCode::bad_input,
              "this match is before one that leads to it: " + name_of(leads.match) + " is on " + leads.day + (ahead ? ", later on this court" : ""),
              where(entry), "put that one first");
      }
    return {};
  }

  /// The match before this one in the draw, if it is in the order and not decided.
  std::vector<std::size_t> feeders(const PlayedMatch& match) const {
    std::vector<std::size_t> out;
    if (match.round > 1)
      for (const std::size_t feeder : {2 * match.match, 2 * match.match + 1})
        if (const auto found = place_.find({match.draw, match.round - 1, feeder}); found != place_.end()) out.push_back(found->second);
    return out;
  }

  /// Matches of the same people in other draws that day, which are told an earlier time: nobody goes from one court to the next without rest.
  std::vector<std::size_t> earlier_of_players(std::size_t at) const {
    std::vector<std::size_t> out;
    const auto told = [&](std::size_t of) { return order_[of].at ? order_[of].at : order_[of].not_before; };
    const auto mine = people_.find(at);
    if (!told(at) || mine == people_.end()) return out;
    for (const auto& [other, people] : people_) {
      if (other == at || order_[other].day != order_[at].day || order_[other].match.draw == order_[at].match.draw || !told(other)) continue;
      if (std::pair(*told(other), other) > std::pair(*told(at), at)) continue;
      if (std::any_of(people.begin(), people.end(), [&](const auto& one) { return mine->second.contains(one); })) out.push_back(other);
    }
    return out;
  }

  Outcome<MatchTime> time_of(std::size_t at, std::size_t depth) {
    if (const auto known = times_.find(at); known != times_.end()) return known->second;
    const OrderEntry& entry = order_[at];
    if (depth > order_.size())
      return fail(FaultCode::bad_input, "this match waits for one that waits for it", where(entry),
                  "change the order on a court, or what it follows");
    MatchTime out;
    UnixMs earliest = 0;
    const auto wait_for = [&](std::size_t other, UnixMs pause) -> Outcome<> {
      const auto time = time_of(other, depth + 1);
      if (!time) return fail(time.error());
      earliest = std::max(earliest, time->end + pause);
      return {};
    };
    for (const std::size_t feeder : feeders(entry.match)) {
      if (auto waited = wait_for(feeder, options_.rest); !waited) return fail(waited.error());
      if (entry.at && *entry.at < times_[feeder].end)
        return fail(FaultCode::bad_input, "this match is before one that leads to it: " + name_of(order_[feeder].match) + " is not over by then",
                    where(entry), "give it a later time");
    }
    for (const std::size_t other : earlier_of_players(at))
      if (auto waited = wait_for(other, options_.rest); !waited) return fail(waited.error());
    if (const auto ahead = before_.find(at); ahead != before_.end()) {
      const OrderEntry& other = order_[ahead->second];
      if (auto waited = wait_for(ahead->second, 0); !waited) return fail(waited.error());
      if (entry.at && *entry.at < times_[ahead->second].begin)
        return fail(FaultCode::bad_input, "its time is before that of the match ahead on this court, " + name_of(other.match), where(entry),
                    "put it ahead, or give it a later time");
    }
    if (entry.follows) {
      const auto found = place_.find(*entry.follows);
      if (found == place_.end())
        return fail(FaultCode::bad_input, "it follows " + name_of(*entry.follows) + ", which is not in the order of play", where(entry),
                    "put that match in, or take this out");
      if (auto waited = wait_for(found->second, 0); !waited) return fail(waited.error());
    }
    if (entry.at) {
      out.begin = *entry.at;
    } else {
      const auto first = first_.find(entry.day);
      if (first == first_.end() && earliest == 0)
        return fail(FaultCode::bad_input, "no time is said on this day", where(entry), "give the first match of a court a time");
      out.begin = std::max({earliest, entry.not_before.value_or(0), first == first_.end() ? 0 : first->second});
      out.estimated = true;
    }
    out.end = out.begin + options_.match_length;
    times_[at] = out;
    return out;
  }

  std::span<const OrderEntry> order_;
  const std::map<std::string, const Bracket*>& draws_;
  const OrderOptions& options_;
  std::map<PlayedMatch, std::size_t> place_;
  std::map<std::size_t, std::set<std::string>> people_;  // who is known to play, by search key
  std::map<std::size_t, std::size_t> before_;
  std::map<std::string, UnixMs> first_;
  std::map<std::size_t, MatchTime> times_;
};

}  // namespace

Outcome<std::vector<OrderEntry>> read_order(std::string_view bytes, const std::string& zone, std::string_view source) {
  if (!is_time_zone(zone))
    return fail(FaultCode::bad_input, "'" + shortened(zone, 40) + "' is no time zone that is known here", "time zone",
                "write a name such as Europe/Lisbon");
  const auto table = PlanTable::read(bytes, source, {"day", "court", "round", "match"});
  if (!table) return fail(table.error());
  std::vector<OrderEntry> out;
  for (const CsvRow& row : table->rows()) {
    OrderEntry entry;
    entry.place = table->place(row);
    entry.day = table->cell(row, "day");
    if (!is_iso_date(entry.day)) return table->wrong(row, "day", "'" + entry.day + "' is no day", "write it as 2031-05-26");
    entry.court = table->cell(row, "court");
    if (entry.court.empty()) return table->wrong(row, "court", "no court is named", "name one");
    entry.match.draw = table->cell(row, "draw");
    const auto round = PlanTable::number<int>(table->cell(row, "round"));
    const auto match = PlanTable::number<std::size_t>(table->cell(row, "match"));
    if (!round || *round < 1) return table->wrong(row, "round", "'" + table->cell(row, "round") + "' is no round", "count rounds from 1");
    if (!match || *match < 1)
      return table->wrong(row, "match", "'" + table->cell(row, "match") + "' is no match", "count matches from 1, from the top");
    entry.match.round = *round;
    entry.match.match = *match - 1;
    const auto at = time_in(*table, row, "at", entry.day, zone);
    if (!at) return fail(at.error());
    entry.at = *at;
    const auto not_before = time_in(*table, row, "not_before", entry.day, zone);
    if (!not_before) return fail(not_before.error());
    entry.not_before = *not_before;
    if (const std::string text = table->cell(row, "follows"); !text.empty()) {
      entry.follows = match_in(text, entry.match.draw);
      if (!entry.follows) return table->wrong(row, "follows", "'" + text + "' is no match", "write round and match, as in 2/7");
    }
    out.push_back(std::move(entry));
  }
  return out;
}

Outcome<std::map<PlayedMatch, MatchTime>> expected_times(std::span<const OrderEntry> order, const std::map<std::string, const Bracket*>& draws,
                                                         const OrderOptions& options) {
  return Clock(order, draws, options).run();
}

}  // namespace weavelog
