#include "core/desk/room_forecast.h"

#include <algorithm>
#include <map>

#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/event_book.h"
#include "core/desk/room_benches.h"
#include "core/model/job_facts.h"
#include "core/plan/durations.h"

namespace weavelog {
namespace {

constexpr int kMorningEnds = 10;

/// What somebody brought so far, by the search key of the name, whichever way round it is written.
struct Brought {
  double jobs = 0;
  std::string string;
};
std::map<std::string, Brought> brought_by_name(const Ledger& ledger, const BookId& event) {
  std::map<std::string, Brought> out;
  for (const PlayerJobs& one : jobs_by_player(ledger, event))
    for (const std::string& name : {one.given_name + " " + one.family_name, one.family_name + " " + one.given_name}) {
      Brought& brought = out[search_key(name)];
      brought = {static_cast<double>(one.jobs), one.mains_string};
      if (one.given_name.empty()) break;
    }
  return out;
}

/// The days on which the rounds of a draw are played, from 1 as days since 1970: as the order of play says, else counted back from the last.
std::vector<std::int64_t> days_of_rounds(const HeldDraw& draw, const LocalTime& clock, std::int64_t last) {
  std::vector<std::int64_t> out;
  const int rounds = draw.rounds();
  for (int round = 1; round <= rounds; ++round) {
    std::map<std::int64_t, int> said;
    for (const auto& match : draw.matches)
      if (match.now.round == round && match.now.not_before) ++said[clock.day_of(*match.now.not_before)];
    const auto most = std::max_element(said.begin(), said.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    out.push_back(most != said.end() ? most->first : last - (rounds - round));
  }
  // A round is never before the one that leads to it.
  for (std::size_t i = 1; i < out.size(); ++i) out[i] = std::max(out[i], out[i - 1]);
  return out;
}

struct GroupDays {
  double played = 0;               ///< matches
  std::vector<std::int64_t> days;  ///< of those to come, none before `first`
};
/// When one of a group plays: as the order of play says of the match, else on the day of its round. What should have been played is played next.
GroupDays days_in_group(const HeldDraw& draw, std::size_t line, const std::vector<std::int64_t>& of_rounds, const LocalTime& clock, std::int64_t first) {
  GroupDays out;
  for (int round = 1; round <= draw.rounds(); ++round)
    for (std::size_t match = 0; match < draw.matches_in(round); ++match) {
      const auto [one, other] = draw.sides(round, match);
      if (!one || !other || (*one != line && *other != line)) continue;
      if (draw.winner(round, match)) out.played += 1;
      if (!draw.group->meets(*one, *other)) continue;
      const auto* said = draw.match(round, match);
      const std::int64_t day = said != nullptr && said->now.not_before ? clock.day_of(*said->now.not_before) : of_rounds[static_cast<std::size_t>(round) - 1];
      out.days.push_back(std::max(day, first));
    }
  return out;
}

}  // namespace

Outcome<ForecastInput> room_forecast_input(const Ledger& ledger, const BookId& event, UnixMs now) {
  const auto record = load_event(ledger, event);
  if (!record) return fail(record.error());
  const LocalTime clock(record->event.now.time_zone);
  const auto last = day_from(record->event.now.last_day);
  if (!last) return fail(FaultCode::refused, "the event does not say when it ends", "event", "say its last day under Team");
  const std::int64_t today = clock.day_of(now), first = clock.hour_of(now) < kMorningEnds ? today : today + 1;
  if (first > *last) return fail(FaultCode::refused, "the event is over", "event", "there is nothing left to forecast");
  const auto draws = event_draws(ledger, event);
  const BenchBook book = load_bench_book(ledger, event);
  const auto brought = brought_by_name(ledger, event);

  ForecastInput out;
  const std::int64_t until = std::min(*last, first + 59);
  for (std::int64_t day = first; day <= until; ++day) out.days.push_back(date_text(day));
  std::vector<WorkReading> readings;
  for (const JobFacts& facts : job_facts(ledger, event)) {
    if (facts.at) out.taken_in[static_cast<std::size_t>(clock.hour_of(*facts.at))] += 1;
    if (facts.times.mounted_at && facts.times.strung_at)
      readings.push_back({facts.times.strung_by, {}, static_cast<double>(*facts.times.strung_at - *facts.times.mounted_at) / 60'000});
  }
  const double minutes = WorkTimes(readings).of("", {}).mean();
  const auto add_player = [&](const BracketLine& line, const std::string& listed, const std::vector<double>& by_day, double played) {
    for (const std::string& name : people_of(line)) {
      ForecastPlayer player;
      player.name = name;
      player.draw = listed;
      player.chances = by_day;
      player.minutes = minutes;
      player.matches = played;
      if (const auto found = brought.find(search_key(name)); found != brought.end()) {
        // Who has a racket here for a match yet to come has brought it for one more.
        player.matches = std::max(1.0, played);
        player.rackets = std::min(found->second.jobs, 50 * player.matches);
        player.string = found->second.string;
      }
      out.players.push_back(std::move(player));
    }
  };
  for (const HeldDraw& draw : draws) {
    if (draw.group) {
      const auto days = days_of_rounds(draw, clock, *last);
      for (std::size_t line = 0; line < draw.group->players().size(); ++line) {
        const GroupDays found = days_in_group(draw, line, days, clock, first);
        std::vector<double> by_day(out.days.size());
        for (const std::int64_t day : found.days)
          if (day <= until) by_day[static_cast<std::size_t>(day - first)] = 1;
        // Both of a match play: nobody's chance hangs on another's, as it does in a draw.
        add_player(draw.line(line), {}, by_day, found.played);
      }
      continue;
    }
    if (draw.sheet.now.kind == DrawKind::qualifying || !draw.draw) continue;
    const Bracket& bracket = draw.draw->bracket();
    const auto chances = chances_by_rules(bracket, book.rules.now.chances);
    if (!chances) return fail(chances.error());
    const MeetingOdds odds(bracket, *chances);
    const auto days = days_of_rounds(draw, clock, *last);
    for (std::size_t line = 0; line < bracket.lines().size(); ++line) {
      std::vector<double> by_day(out.days.size());
      double played = 0;
      for (int round = 1; round <= bracket.rounds(); ++round) {
        const auto day = days[static_cast<std::size_t>(round) - 1];
        if (day >= first && day <= until) {
          double& chance = by_day[static_cast<std::size_t>(day - first)];
          chance = std::min(1.0, chance + odds.plays(line, round));
        }
        const std::size_t match = Bracket::match_of(round, line);
        const auto sides = bracket.sides(round, match);
        if (bracket.played(round, match) && (sides.first == line || sides.second == line)) played += 1;
      }
      add_player(bracket.lines()[line], draw.sheet.now.name.empty() ? draw.sheet.id().hex() : draw.sheet.now.name, by_day, played);
    }
  }
  if (out.players.empty()) return fail(FaultCode::not_found, "there is no draw to go by", "draws", "bring a draw in under Plan first");
  return out;
}

}  // namespace weavelog
