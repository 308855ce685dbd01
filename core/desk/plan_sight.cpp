#include "core/desk/plan_sight.h"

#include <algorithm>
#include <boost/json.hpp>

#include "core/desk/room_benches.h"

namespace weavelog {
namespace {

namespace json = boost::json;

/// A ready time that moves by less than this is no news.
constexpr std::int64_t kNewsMs = 10LL * 60'000;

}  // namespace

PlanSight plan_sight(const Ledger& ledger, const BookId& event, const RoomDay& day, const DayPlan& plan) {
  PlanSight out;
  out.at = day.input().now;
  for (std::size_t job = 0; job < day.input().jobs.size(); ++job) {
    const OpenJob& racket = day.racket(job);
    const PlannedJob* planned = plan.of(job);
    PlanSight::Racket seen;
    seen.whose = racket_words(racket);
    if (planned != nullptr) {
      seen.bench = day.input().benches[planned->bench].name;
      seen.ready = planned->end + day.finishing();
      seen.late = planned->late > 0;
    } else {
      seen.late = day.input().jobs[job].due.has_value();
    }
    out.rackets.emplace(racket.job.hex(), std::move(seen));
  }
  std::map<EntityId, std::string> names;
  for (std::size_t bench = 0; bench < day.input().benches.size(); ++bench) names[day.hands(bench).stringer] = day.input().benches[bench].stringer;
  for (const auto& place : load_bench_book(ledger, event).places)
    if (const auto name = names.find(place.now.stringer); name != names.end()) out.homes[place.now.player] = name->second;
  for (const HeldDraw& draw : event_draws(ledger, event)) {
    int decided = 0;
    for (const auto& match : draw.matches) decided += match.now.winner.value_or(0) > 0 ? 1 : 0;
    if (decided > 0) out.results[draw.sheet.now.name] = decided;
    for (const BracketLine& line : draw.lines)
      if (line.withdrawn) out.withdrawn.insert(line_name(line));
  }
  return out;
}

std::vector<PlanNews> news_since(const PlanSight& before, const PlanSight& now) {
  std::vector<PlanNews> out;
  for (const auto& [job, racket] : now.rackets) {
    const auto old = before.rackets.find(job);
    if (old == before.rackets.end()) {
      out.push_back({PlanNews::Kind::came, racket.whose, {}, racket.bench, 0, racket.ready, 0});
      if (racket.late) out.push_back({PlanNews::Kind::now_late, racket.whose, {}, racket.bench, 0, racket.ready, 0});
      continue;
    }
    const PlanSight::Racket& was = old->second;
    PlanNews news{PlanNews::Kind::later, racket.whose, was.bench, racket.bench, was.ready, racket.ready, 0};
    const auto say = [&](PlanNews::Kind kind) {
      news.kind = kind;
      out.push_back(news);
    };
    if (racket.late && !was.late) say(PlanNews::Kind::now_late);
    else if (!racket.late && was.late) say(PlanNews::Kind::in_time_again);
    else if (racket.bench != was.bench) say(PlanNews::Kind::other_bench);
    else if (racket.ready > was.ready + kNewsMs) say(PlanNews::Kind::later);
    else if (racket.ready < was.ready - kNewsMs) say(PlanNews::Kind::sooner);
  }
  for (const auto& [job, racket] : before.rackets)
    if (!now.rackets.contains(job)) out.push_back({PlanNews::Kind::off_the_list, racket.whose, racket.bench, {}, racket.ready, 0, 0});
  for (const auto& [player, stringer] : now.homes) {
    const auto old = before.homes.find(player);
    if (old != before.homes.end() && old->second != stringer)
      out.push_back({PlanNews::Kind::home_moved, player, old->second, stringer, 0, 0, 0});
  }
  for (const std::string& player : now.withdrawn)
    if (!before.withdrawn.contains(player)) out.push_back({PlanNews::Kind::withdrew, player, {}, {}, 0, 0, 0});
  for (const auto& [draw, decided] : now.results) {
    const auto old = before.results.find(draw);
    const int more = decided - (old == before.results.end() ? 0 : old->second);
    if (more > 0) out.push_back({PlanNews::Kind::played, draw, {}, {}, 0, 0, more});
  }
  const auto rank = [](PlanNews::Kind kind) {
    switch (kind) {
      case PlanNews::Kind::now_late: return 0;
      case PlanNews::Kind::withdrew: return 1;
      case PlanNews::Kind::home_moved: return 2;
      case PlanNews::Kind::other_bench: return 3;
      case PlanNews::Kind::later: return 4;
      case PlanNews::Kind::in_time_again: return 5;
      case PlanNews::Kind::sooner: return 6;
      case PlanNews::Kind::played: return 7;
      case PlanNews::Kind::came: return 8;
      case PlanNews::Kind::off_the_list: return 9;
    }
    return 10;
  };
  std::stable_sort(out.begin(), out.end(), [&](const auto& a, const auto& b) { return rank(a.kind) < rank(b.kind); });
  return out;
}

std::string sight_text(const PlanSight& sight) {
  json::object rackets, homes, results;
  json::array withdrawn;
  for (const auto& [job, racket] : sight.rackets)
    rackets[job] = json::object{{"whose", racket.whose}, {"bench", racket.bench}, {"ready", racket.ready}, {"late", racket.late}};
  for (const auto& [player, stringer] : sight.homes) homes[player] = stringer;
  for (const auto& [draw, decided] : sight.results) results[draw] = decided;
  for (const std::string& player : sight.withdrawn) withdrawn.emplace_back(player);
  return json::serialize(json::object{{"version", 1}, {"at", sight.at}, {"rackets", std::move(rackets)}, {"homes", std::move(homes)},
                                      {"withdrawn", std::move(withdrawn)}, {"results", std::move(results)}});
}

Outcome<PlanSight> sight_from(std::string_view text) {
  const auto wrong = [] {
    return fail(FaultCode::bad_input, "what was seen of the plan can't be read", "plan sight", "look at the plan once; it is written anew then");
  };
  boost::system::error_code error;
  const json::value document = json::parse(json::string_view(text.data(), text.size()), error);
  if (error || !document.is_object()) return wrong();
  PlanSight out;
  try {
    const json::object& all = document.get_object();
    if (all.at("version").to_number<int>() != 1) return wrong();
    out.at = all.at("at").to_number<UnixMs>();
    for (const auto& [job, value] : all.at("rackets").as_object()) {
      const json::object& racket = value.as_object();
      out.rackets.emplace(job, PlanSight::Racket{std::string(racket.at("whose").as_string()), std::string(racket.at("bench").as_string()),
                                                 racket.at("ready").to_number<UnixMs>(), racket.at("late").as_bool()});
    }
    for (const auto& [player, stringer] : all.at("homes").as_object()) out.homes.emplace(player, std::string(stringer.as_string()));
    for (const auto& [draw, decided] : all.at("results").as_object()) out.results.emplace(draw, decided.to_number<int>());
    for (const json::value& player : all.at("withdrawn").as_array()) out.withdrawn.insert(std::string(player.as_string()));
  } catch (const std::exception&) {  // how this library says that something is missing or of another kind
    return wrong();
  }
  return out;
}

}  // namespace weavelog
