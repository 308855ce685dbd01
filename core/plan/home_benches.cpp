#include "core/plan/home_benches.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/base/text.h"

namespace weavelog {
namespace {

/// On a day off so few rackets may be expected of one player; more means that this bench is none for them.
constexpr double kRare = 0.25;

/// Points, more than any plan costs.
constexpr double kMuch = 1e6;

std::string decimals(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", value);
  return text;
}

std::string in_quotes(const std::string& text) { return "\"" + shortened(text, 60) + "\""; }

std::string where(const std::string& place, const std::string& name) { return place.empty() ? in_quotes(name) : place; }

bool same_name(const std::string& one, const std::string& other) { return search_key(one) == search_key(other); }

bool has(const std::vector<std::string>& all, const std::string& one) {
  return std::any_of(all.begin(), all.end(), [&](const std::string& other) { return same_name(one, other); });
}

bool fits(const HomeBench& bench, const std::string& with) {
  return same_name(with, bench.name) || same_name(with, bench.stringer) || (!bench.machine.empty() && same_name(with, bench.machine));
}

bool on_shift(const HomeBench& bench, std::size_t day) {
  return bench.days.empty() || std::find(bench.days.begin(), bench.days.end(), static_cast<int>(day) + 1) != bench.days.end();
}

struct OwnParts {
  double before = 0, move = 0, skill = 0, language = 0;
};

OwnParts own_parts(const BenchWeights& weights, const BenchPerson& person, const HomeBench& bench, bool before_is_here, bool moves) {
  OwnParts out;
  if (before_is_here && !same_name(person.before, bench.stringer)) out.before = weights.continuity;
  if (moves) out.move = weights.move;
  for (const std::string& skill : person.skills)
    if (!has(bench.skills, skill)) out.skill += weights.skill;
  const bool speaks =
      person.languages.empty() || bench.languages.empty() ||
      std::any_of(person.languages.begin(), person.languages.end(), [&](const std::string& one) { return has(bench.languages, one); });
  if (!speaks) out.language = weights.language;
  return out;
}

}  // namespace

Outcome<HomeBenches> HomeBenches::make(BenchCase given) {
  HomeBenches out(std::move(given));
  if (auto checked = out.check_benches(); !checked) return fail(checked.error());
  out.find_people();
  out.weigh_meetings();
  out.share_loads();
  out.weigh_own();
  if (auto allowed = out.forbid(); !allowed) return fail(allowed.error());
  if (auto carried = out.check_loads(); !carried) return fail(carried.error());
  return out;
}

Outcome<> HomeBenches::check_benches() const {
  if (given_.benches.empty()) return fail(FaultCode::bad_input, "there is no bench", {}, "name at least one stringer");
  std::map<std::string, std::size_t> seen;
  for (std::size_t bench = 0; bench < given_.benches.size(); ++bench) {
    const std::string& name = given_.benches[bench].name;
    if (is_blank(name)) return fail(FaultCode::bad_input, "a bench has no name", "bench " + std::to_string(bench + 1), "name its stringer");
    if (!seen.emplace(search_key(name), bench).second)
      return fail(FaultCode::bad_input, "two benches have this name", in_quotes(name), "give one of them another, or its machine");
  }
  return {};
}

void HomeBenches::find_people() {
  std::size_t most_rounds = 0;
  for (const DrawnPeople& draw : given_.draws)
    if (draw.further == 0) most_rounds = std::max(most_rounds, static_cast<std::size_t>(draw.bracket->rounds()));
  std::size_t days = most_rounds;
  for (DrawnPeople& draw : given_.draws) {
    const auto rounds = static_cast<std::size_t>(draw.bracket->rounds());
    if (draw.days.size() < rounds) {
      draw.days.clear();
      for (std::size_t round = 1; round <= rounds; ++round) draw.days.push_back(static_cast<int>(most_rounds - rounds + round));
    }
    for (const int day : draw.days) days = std::max(days, static_cast<std::size_t>(std::max(day, 1)));
    for (std::size_t line = 0; line < draw.people.size(); ++line) {
      if (draw.odds->matches_left(line) <= 0) continue;
      for (const std::string& name : draw.people[line]) {
        if (!numbers_.try_emplace(search_key(name), people_.size()).second) continue;
        const auto known =
            std::find_if(given_.people.begin(), given_.people.end(), [&](const BenchPerson& one) { return same_name(one.name, name); });
        people_.push_back(known == given_.people.end() ? BenchPerson{} : *known);
        people_.back().name = name;
      }
    }
  }
  problem_ = BenchProblem(people_.size(), given_.benches.size(), days);
  problem_.over_weight = given_.weights.over;
  bound_.assign(people_.size(), 0);
  last_.assign(people_.size(), std::nullopt);
  for (const auto& [name, last] : given_.last)
    if (const auto who = person(name)) last_[*who] = bench(last);
}

void HomeBenches::weigh_meetings() {
  for (std::size_t at = 0; at < given_.draws.size(); ++at) {
    const DrawnPeople& draw = given_.draws[at];
    const int rounds = draw.bracket->rounds();
    std::vector<std::vector<std::size_t>> in(draw.people.size());
    for (std::size_t line = 0; line < draw.people.size(); ++line) {
      for (const std::string& name : draw.people[line])
        if (const auto who = person(name)) in[line].push_back(*who);
      for (int round = 1; round <= rounds && !in[line].empty(); ++round)
        for (const std::size_t who : in[line])
          problem_.load[who * problem_.days + static_cast<std::size_t>(std::max(draw.days[static_cast<std::size_t>(round) - 1], 1)) - 1] +=
              people_[who].rackets * draw.odds->plays(line, round);
      for (std::size_t other = 0; other < line; ++other) {
        if (in[line].empty() || in[other].empty()) continue;
        const int round = Bracket::meeting_round(line, other);
        const double odds = draw.odds->meet(line, other);
        if (odds <= 0 || draw.bracket->winner(round, Bracket::match_of(round, line))) continue;
        const double points = odds * points_of(at, round);
        const bool hard = (2 << (rounds - round + draw.further)) <= given_.weights.hard_places;
        for (const std::size_t one : in[line])
          for (const std::size_t two : in[other]) {
            if (one == two) continue;
            all_.push_back({one, two, odds, at, round, hard});
            const std::size_t place = one * problem_.players + two;
            if (hard)
              problem_.set_hard(one, two, problem_.hard[place] + given_.weights.hard * points);
            else
              problem_.set_clash(one, two, problem_.clash[place] + points);
          }
      }
    }
    note_matches(draw, in);
  }
}

double HomeBenches::points_of(std::size_t draw, int round) const {
  const auto& weights = given_.weights.rounds;
  const auto after = static_cast<std::size_t>(given_.draws[draw].bracket->rounds() - round + given_.draws[draw].further);
  return weights.empty() ? 1 : weights[std::min(after, weights.size() - 1)];
}

/// The matches that are open, as the bound wants them.
void HomeBenches::note_matches(const DrawnPeople& draw, const std::vector<std::vector<std::size_t>>& in) {
  for (int round = 1; round <= draw.bracket->rounds(); ++round)
    for (std::size_t match = 0; match < in.size() >> round; ++match) {
      if (draw.bracket->winner(round, match)) continue;
      BenchMatch one;
      const std::size_t half = std::size_t{1} << (round - 1), first = match << round;
      for (std::size_t line = first; line < first + 2 * half; ++line)
        for (const std::size_t who : in[line])
          if (const double chance = draw.bracket->lines()[line].withdrawn ? 0 : draw.odds->reaches(line, round); chance > 0)
            (line < first + half ? one.upper : one.lower).emplace_back(who, chance);
      if (!one.upper.empty() && !one.lower.empty()) problem_.matches.push_back(std::move(one));
    }
}

void HomeBenches::share_loads() {
  for (std::size_t day = 0; day < problem_.days; ++day) {
    double load = 0, limits = 0;
    std::size_t here = 0;
    bool all_limited = true;
    for (std::size_t who = 0; who < people_.size(); ++who) load += problem_.load[who * problem_.days + day];
    for (const HomeBench& bench : given_.benches)
      if (on_shift(bench, day)) {
        ++here;
        all_limited = all_limited && bench.most && *bench.most > 0;
        limits += bench.most.value_or(0);
      }
    for (std::size_t bench = 0; bench < given_.benches.size(); ++bench) {
      const std::size_t at = bench * problem_.days + day;
      const HomeBench& one = given_.benches[bench];
      if (!on_shift(one, day)) {
        problem_.fair[at] = 0;  // what little is expected here is beyond what is fair; see forbid() for the rest
        continue;
      }
      problem_.fair[at] = (all_limited ? load * *one.most / limits : load / static_cast<double>(here)) + given_.weights.even_within;
      if (one.most) problem_.most[at] = *one.most;
    }
  }
}

void HomeBenches::weigh_own() {
  for (std::size_t who = 0; who < people_.size(); ++who) {
    const BenchPerson& person = people_[who];
    const bool here = !person.before.empty() && std::any_of(given_.benches.begin(), given_.benches.end(),
                                                            [&](const HomeBench& bench) { return same_name(person.before, bench.stringer); });
    for (std::size_t bench = 0; bench < given_.benches.size(); ++bench) {
      const OwnParts parts = own_parts(given_.weights, person, given_.benches[bench], here, last_[who] && *last_[who] != bench);
      problem_.own[who * problem_.benches + bench] = parts.before + parts.move + parts.skill + parts.language;
    }
  }
}

Outcome<> HomeBenches::forbid() {
  const std::size_t m = given_.benches.size();
  std::vector<std::string> said(people_.size());  // what binds each, for faults
  std::vector<bool> drawn(people_.size());
  const auto narrow = [&](std::size_t who, const std::string& words, const std::string& place, const auto& allows) -> Outcome<> {
    bool left = false;
    for (std::size_t bench = 0; bench < m; ++bench) {
      double& own = problem_.own[who * m + bench];
      if (!allows(given_.benches[bench])) own = kNever;
      left = left || own < kNever;
    }
    if (!left)
      return fail(FaultCode::bad_input,
                  "no bench is left for " + people_[who].name + ": this contradicts " + (said[who].empty() ? "itself" : said[who]),
                  where(place, people_[who].name), "take one of the two back");
    said[who] += (said[who].empty() ? "" : ", ") + words + (place.empty() ? "" : " (" + place + ")");
    return {};
  };
  const auto known = [&](const std::string& name) {
    // Somebody who is out, or whose place is not known yet, keeps the wish for later.
    return std::any_of(given_.draws.begin(), given_.draws.end(), [&](const DrawnPeople& draw) {
      return std::any_of(draw.people.begin(), draw.people.end(), [&](const auto& line) { return has(line, name); });
    });
  };
  for (const BenchWish& wish : given_.wishes) {
    if (std::none_of(given_.benches.begin(), given_.benches.end(), [&](const HomeBench& bench) { return fits(bench, wish.with); }))
      return fail(FaultCode::bad_input, "no bench, stringer or machine is called " + in_quotes(wish.with), where(wish.place, wish.player),
                  "write it as in the list of people");
    const auto who = person(wish.player);
    if (!who && !known(wish.player))
      return fail(FaultCode::bad_input, "no player of the draw is called " + in_quotes(wish.player), where(wish.place, wish.player),
                  "write the name as in the draw");
    if (!who) continue;
    bound_[*who] = 'w';
    const std::string words = std::string(wish.never ? "never with " : "only with ") + wish.with;
    if (auto done = narrow(*who, words, wish.place, [&](const HomeBench& bench) { return fits(bench, wish.with) != wish.never; }); !done) return done;
  }
  for (const BenchPin& pin : given_.pins) {
    const auto at = bench(pin.bench);
    if (!at)
      return fail(FaultCode::bad_input, "no bench is called " + in_quotes(pin.bench), where(pin.place, pin.player),
                  "write it as in the list of people");
    const auto who = person(pin.player);
    if (!who && !known(pin.player))
      return fail(FaultCode::bad_input, "no player of the draw is called " + in_quotes(pin.player), where(pin.place, pin.player),
                  "write the name as in the draw");
    if (!who) continue;
    bound_[*who] = 'p';
    const std::string& name = given_.benches[*at].name;
    if (auto done = narrow(*who, "pinned to " + name, pin.place, [&](const HomeBench& one) { return one.name == name; }); !done) return done;
  }
  for (std::size_t who = 0; who < people_.size(); ++who) {
    bool left = false;
    for (std::size_t bench = 0; bench < m; ++bench) {
      double& own = problem_.own[who * m + bench];
      for (std::size_t day = 0; day < problem_.days; ++day) {
        const double load = problem_.load[who * problem_.days + day];
        if (on_shift(given_.benches[bench], day) ? load > problem_.most[bench * problem_.days + day] : load > kRare) own = kNever;
      }
      left = left || own < kNever;
    }
    if (!left)
      return fail(FaultCode::bad_input,
                  "no bench that is allowed" + (said[who].empty() ? std::string() : " (" + said[who] + ")") +
                      " has a shift and room on all days of this player",
                  in_quotes(people_[who].name), "change a shift, a limit or a wish");
  }
  return {};
}

Outcome<> HomeBenches::check_loads() const {
  for (std::size_t day = 0; day < problem_.days; ++day) {
    double load = 0, most = 0;
    for (std::size_t who = 0; who < people_.size(); ++who) load += problem_.load[who * problem_.days + day];
    for (std::size_t bench = 0; bench < given_.benches.size(); ++bench)
      most += on_shift(given_.benches[bench], day) ? problem_.most[bench * problem_.days + day] : kRare;
    if (load > most + 1e-9)
      return fail(FaultCode::bad_input, "the shifts can't carry what is expected: " + decimals(load) + " rackets, room for " + decimals(most),
                  "day " + std::to_string(day + 1), "add a bench or a shift on this day, or raise a limit");
  }
  return {};
}

Outcome<BenchPlan> HomeBenches::plan(const BenchEffort& effort) const {
  BenchChoice before;
  for (std::size_t who = 0; who < people_.size(); ++who) {
    const double* own = &problem_.own[who * problem_.benches];
    std::size_t bench = static_cast<std::size_t>(std::min_element(own, own + problem_.benches) - own);
    if (last_[who] && own[*last_[who]] < kNever) bench = *last_[who];
    before.push_back(bench);
  }
  const bool again = std::any_of(last_.begin(), last_.end(), [](const auto& last) { return last.has_value(); });
  BenchPlan out;
  out.solution = solve_benches(problem_, again ? std::span<const std::size_t>(before) : std::span<const std::size_t>(), effort);
  if (!out.solution.cost.kept()) {
    std::size_t worst_bench = 0, worst_day = 0;
    double beyond = 0;
    for (std::size_t bench = 0; bench < problem_.benches; ++bench)
      for (std::size_t day = 0; day < problem_.days; ++day)
        if (const double more = rackets(out.choice(), bench, day) - problem_.most[bench * problem_.days + day]; more > beyond)
          beyond = more, worst_bench = bench, worst_day = day;
    return fail(FaultCode::refused, "no plan was found that keeps all limits; the nearest has " + decimals(beyond) + " rackets too many here",
                given_.benches[worst_bench].name + ", day " + std::to_string(worst_day + 1),
                "add a bench or a shift, raise a limit, or take a wish or pin back");
  }
  for (std::size_t who = 0; who < people_.size(); ++who)
    if (last_[who] && *last_[who] != out.choice()[who]) out.moved.push_back(who);
  return out;
}

std::optional<std::size_t> HomeBenches::person(const std::string& name) const {
  const auto found = numbers_.find(search_key(name));
  return found == numbers_.end() ? std::nullopt : std::optional(found->second);
}

std::optional<std::size_t> HomeBenches::bench(const std::string& name) const {
  for (std::size_t bench = 0; bench < given_.benches.size(); ++bench)
    if (same_name(given_.benches[bench].name, name)) return bench;
  return std::nullopt;
}

double HomeBenches::rackets(const BenchChoice& choice, std::size_t bench, std::size_t day) const {
  double out = 0;
  for (std::size_t who = 0; who < people_.size(); ++who)
    if (choice[who] == bench) out += problem_.load[who * problem_.days + day];
  return out;
}

double HomeBenches::even_share(std::size_t bench, std::size_t day) const {
  return std::max(0.0, problem_.fair[bench * problem_.days + day] - given_.weights.even_within);
}

std::vector<BenchMeeting> HomeBenches::meetings(const BenchChoice& choice) const {
  std::vector<BenchMeeting> out;
  for (const BenchMeeting& one : all_)
    if (choice[one.one] == choice[one.other]) out.push_back(one);
  std::stable_sort(out.begin(), out.end(), [](const BenchMeeting& a, const BenchMeeting& b) { return a.hard != b.hard ? a.hard : a.odds > b.odds; });
  return out;
}

/// What one player's moves change, without summing all costs anew.
class HomeBenches::Moves {
 public:
  Moves(const BenchProblem& problem, const BenchChoice& choice, std::size_t person)
      : p_(problem), person_(person), here_(choice[person]), hard_(p_.benches), clash_(p_.benches), loads_(p_.benches * p_.days) {
    for (std::size_t other = 0; other < p_.players; ++other) {
      for (std::size_t day = 0; day < p_.days; ++day) loads_[choice[other] * p_.days + day] += p_.load[other * p_.days + day];
      if (other == person) continue;
      hard_[choice[other]] += p_.hard[person * p_.players + other];
      clash_[choice[other]] += p_.clash[person * p_.players + other];
    }
  }
  [[nodiscard]] BenchCost after(BenchCost now, std::size_t bench) const {
    if (bench == here_) return now;
    now.hard = std::max(0.0, now.hard + hard_[bench] - hard_[here_]);
    now.clash = std::max(0.0, now.clash + clash_[bench] - clash_[here_]);
    const double own = p_.own[person_ * p_.benches + bench];
    now.own = own == kNever ? kNever : now.own + own - p_.own[person_ * p_.benches + here_];
    for (std::size_t day = 0; day < p_.days; ++day) {
      const double load = p_.load[person_ * p_.days + day];
      add(now, here_ * p_.days + day, -load);
      add(now, bench * p_.days + day, load);
    }
    now.over = std::max(0.0, now.over);
    now.beyond = std::max(0.0, now.beyond);
    return now;
  }

 private:
  void add(BenchCost& cost, std::size_t at, double load) const {
    const auto above = [](double value, double limit) { return std::max(0.0, value - limit); };
    cost.over += p_.over_weight * (above(loads_[at] + load, p_.fair[at]) - above(loads_[at], p_.fair[at]));
    cost.beyond += above(loads_[at] + load, p_.most[at]) - above(loads_[at], p_.most[at]);
  }

  const BenchProblem& p_;
  std::size_t person_, here_;
  std::vector<double> hard_, clash_, loads_;
};

BenchCost HomeBenches::with_move(const BenchChoice& choice, std::size_t person, std::size_t bench) const {
  return Moves(problem_, choice, person).after(cost_of(problem_, choice), bench);
}

BenchReason HomeBenches::why(const BenchChoice& choice, std::size_t person) const {
  using Kind = BenchReason::Kind;
  const std::size_t here = choice[person];
  BenchReason out;
  if (bound_[person] == 'p') {
    out.kind = Kind::pinned;
    return out;
  }
  const BenchCost now = cost_of(problem_, choice);
  const Moves moves(problem_, choice, person);
  BenchCost next;
  double least = kNever;
  for (std::size_t bench = 0; bench < problem_.benches; ++bench) {
    if (bench == here || problem_.own[person * problem_.benches + bench] == kNever) continue;
    const BenchCost moved = moves.after(now, bench);
    // Beyond a limit, or against a rule that the plan keeps, is no alternative but for want of others.
    const bool rule = now.hard == 0 && moved.hard > 0;
    const double more = moved.total() - now.total() + kMuch * (moved.beyond + (rule ? 1 : 0));
    if (more < least) least = more, out.other_bench = bench, out.rule = rule, next = moved;
  }
  if (least == kNever) {
    out.kind = bound_[person] == 'w' ? Kind::wished : Kind::only_one;
    return out;
  }
  out.cheaper = next.total() - now.total();
  const BenchPerson& who = people_[person];
  const bool before_here = !who.before.empty() && std::any_of(given_.benches.begin(), given_.benches.end(),
                                                              [&](const HomeBench& bench) { return same_name(who.before, bench.stringer); });
  const auto parts = [&](std::size_t bench) {
    return own_parts(given_.weights, who, given_.benches[bench], before_here, last_[person] && *last_[person] != bench);
  };
  const OwnParts mine = parts(here), theirs = parts(out.other_bench);
  // In the order in which people would say them, if two weigh the same.
  const std::pair<Kind, double> kinds[] = {
      {Kind::apart, out.rule ? kMuch : next.hard - now.hard + next.clash - now.clash}, {Kind::even_load, next.over - now.over + kMuch * next.beyond},
      {Kind::stayed, theirs.move - mine.move},                      {Kind::before, theirs.before - mine.before},
      {Kind::skill, theirs.skill - mine.skill},                     {Kind::language, theirs.language - mine.language}};
  double most = 1e-6;
  for (const auto& [kind, more] : kinds)
    if (more > most) most = more, out.kind = kind;
  if (out.kind == Kind::apart)
    for (const BenchMeeting& one : all_) {
      if (one.one != person && one.other != person) continue;
      const std::size_t other = one.one == person ? one.other : one.one;
      if (choice[other] != out.other_bench || (out.rule && !one.hard)) continue;
      const auto weight = [&](const BenchMeeting& meeting) {
        return meeting.odds * points_of(meeting.draw, meeting.round) * (meeting.hard ? given_.weights.hard : 1);
      };
      if (out.meeting && weight(*out.meeting) >= weight(one)) continue;
      out.meeting = one;
      out.meeting->one = person;
      out.meeting->other = other;
    }
  return out;
}

}  // namespace weavelog
