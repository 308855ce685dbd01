#include "core/plan/bench_parting.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <map>

#include "core/plan/bench_bound.h"

namespace weavelog {
namespace {

using BenchSet = std::uint32_t;

constexpr std::size_t kMostPartedBenches = 13;  // 3^13 partings of sets a section: some ten milliseconds

std::vector<std::size_t> members(BenchSet set) {
  std::vector<std::size_t> out;
  for (; set != 0; set &= set - 1) out.push_back(static_cast<std::size_t>(std::countr_zero(set)));
  return out;
}

/// Of sections too large to look through: what else is known of their meetings.
void know_floors(BenchExact& section, const BenchProblem& problem, std::size_t most_benches, std::size_t nodes) {
  if (section.players().size() <= 16) return;
  for (std::size_t benches = 2; benches <= most_benches; ++benches)
    section.know_floor(benches, meetings_floor(problem, section.players(), benches, nodes / most_benches));
}

/// One section: what each set of benches costs it, at least or exactly. Sets of benches that are alike for it are one case.
class Section {
 public:
  Section(const BenchProblem& problem, std::vector<std::size_t> players, std::size_t most_benches, BenchPatience& patience)
      : exact_(problem, std::move(players), true), cases_(std::size_t{1} << problem.benches), floors_(cases_.size(), kNever) {
    for (std::size_t bench = 0; bench < problem.benches; ++bench) {
      kinds_.push_back(bench);
      for (std::size_t earlier = 0; earlier < bench && kinds_[bench] == bench; ++earlier)
        if (alike(problem, earlier, bench)) kinds_[bench] = earlier;
    }
    know_floors(exact_, problem, most_benches, patience.nodes);
    std::map<std::vector<std::size_t>, std::size_t> known;
    for (BenchSet set = 1; set < cases_.size(); ++set) {
      const auto benches = members(set);
      if (benches.size() > most_benches) continue;
      std::vector<std::size_t> kinds;
      for (const std::size_t bench : benches) kinds.push_back(kinds_[bench]);
      std::sort(kinds.begin(), kinds.end());
      const auto [found, made] = known.try_emplace(std::move(kinds), solved_.size());
      if (made) {
        solved_.emplace_back();
        sets_.emplace_back();
        solved_.back().floor = exact_.quick_floor(benches, patience);
        solved_.back().proven = solved_.back().floor == kNever;
      }
      cases_[set] = found->second;
      sets_[found->second].push_back(set);
      floors_[set] = solved_[found->second].floor;
    }
  }

  [[nodiscard]] const std::vector<double>& floors() const { return floors_; }
  [[nodiscard]] const std::vector<std::size_t>& players() const { return exact_.players(); }
  [[nodiscard]] bool tried(BenchSet set) const { return tried_.contains(cases_[set]) || solved_[cases_[set]].proven; }
  void solve(BenchSet set, BenchPatience& patience) {
    const std::size_t which = cases_[set];
    tried_[which] = set;
    solved_[which] = exact_.solve(members(set), patience);
    for (const BenchSet one : sets_[which]) floors_[one] = solved_[which].floor;
  }
  /// The cheapest plan found for a set that was tried; none if there is none.
  [[nodiscard]] std::optional<BenchChoice> choice(BenchSet set) const {
    const auto& solved = solved_[cases_[set]];
    if (!solved.choice || !tried_.contains(cases_[set])) return std::nullopt;
    const BenchSet there = tried_.at(cases_[set]);
    if (there == set) return solved.choice;
    // The same benches take the same places; what is alike stands in for each other.
    const auto before = members(there), now = members(set);
    BenchChoice out;
    const std::vector<std::size_t> to = match(before, now);
    for (const std::size_t bench : *solved.choice) out.push_back(to[bench]);
    return out;
  }
 private:
  [[nodiscard]] bool alike(const BenchProblem& problem, std::size_t one, std::size_t other) const {
    for (const std::size_t player : exact_.players())
      if (problem.own[player * problem.benches + one] != problem.own[player * problem.benches + other]) return false;
    for (std::size_t day = 0; day < problem.days; ++day) {
      const std::size_t a = one * problem.days + day, b = other * problem.days + day;
      if (problem.fair[a] != problem.fair[b] || problem.most[a] != problem.most[b]) return false;
    }
    return true;
  }
  [[nodiscard]] std::vector<std::size_t> match(const std::vector<std::size_t>& before, const std::vector<std::size_t>& now) const {
    std::vector<std::size_t> to(kinds_.size());
    std::vector<bool> taken(now.size());
    for (const std::size_t bench : before)
      for (std::size_t at = 0; at < now.size(); ++at)
        if (!taken[at] && kinds_[now[at]] == kinds_[bench]) {
          taken[at] = true;
          to[bench] = now[at];
          break;
        }
    return to;
  }

  BenchExact exact_;
  std::vector<std::size_t> cases_;                 // by set
  std::vector<double> floors_;                     // by set
  std::vector<BenchExact::Answer> solved_;         // by case
  std::vector<std::vector<BenchSet>> sets_;        // by case
  std::map<std::size_t, BenchSet> tried_;          // by case: for which set
  std::vector<std::size_t> kinds_;                 // by bench: the first that is like it
};

/// The cheapest parting by what is known of each section, and its floor.
struct Division {
  double floor = kNever;
  std::vector<BenchSet> sets;
};

Division divide(const std::vector<Section>& sections, std::size_t benches, std::size_t most_benches) {
  const std::size_t all = std::size_t{1} << benches;
  std::vector<double> before(all, kNever), now;
  before[0] = 0;
  std::vector<std::vector<BenchSet>> chosen;
  for (const Section& section : sections) {
    now.assign(all, kNever);
    std::vector<BenchSet> which(all);
    const auto& floors = section.floors();
    for (BenchSet set = 1; set < all; ++set)
      for (BenchSet part = set; part != 0; part = (part - 1) & set) {
        if (floors[part] == kNever || static_cast<std::size_t>(std::popcount(part)) > most_benches) continue;
        if (const double cost = before[set ^ part] + floors[part]; cost < now[set]) now[set] = cost, which[set] = part;
      }
    chosen.push_back(std::move(which));
    before.swap(now);
  }
  Division out;
  BenchSet best = 0;
  for (BenchSet set = 0; set < all; ++set)
    if (before[set] < out.floor) out.floor = before[set], best = set;
  if (out.floor == kNever) return out;
  out.sets.resize(sections.size());
  for (std::size_t k = sections.size(); k-- > 0;) {
    out.sets[k] = chosen[k][best];
    best ^= out.sets[k];
  }
  return out;
}

/// What own costs are at least beyond each player's cheapest bench, because a bench serves one section only: nobody saves anything on it but those.
double own_floor_beyond(const BenchProblem& problem, const std::vector<BenchExact>& sections) {
  const std::size_t m = problem.benches;
  double cheapest = 0, all = 0;
  std::vector<double> most_saved(m);
  for (const BenchExact& section : sections) {
    std::vector<double> saved(m);
    for (const std::size_t player : section.players()) {
      double least = kNever, most = 0;
      for (std::size_t bench = 0; bench < m; ++bench)
        if (const double own = problem.own[player * m + bench]; own < kNever) least = std::min(least, own), most = std::max(most, own);
      cheapest += least;
      all += most;
      for (std::size_t bench = 0; bench < m; ++bench)
        if (const double own = problem.own[player * m + bench]; own < kNever) saved[bench] += most - own;
    }
    for (std::size_t bench = 0; bench < m; ++bench) most_saved[bench] = std::max(most_saved[bench], saved[bench]);
  }
  for (const double saved : most_saved) all -= saved;
  return std::max(0.0, all - cheapest);
}

/// Too many benches for sets of them: only how many each section has. Then the floor takes the best bench for each player and the widest
/// loads for each day, and the plan gives each section the benches that cost its players least.
BenchParting part_by_numbers(const BenchProblem& problem, std::vector<std::vector<std::size_t>> groups, BenchPatience& patience) {
  BenchParting out;
  const std::size_t all = problem.benches, most_benches = all - groups.size() + 1;
  std::vector<double> before(all + 1, kNever), now;
  before[0] = 0;
  std::vector<BenchExact> sections;
  sections.reserve(groups.size());
  std::vector<std::vector<std::size_t>> chosen;
  for (auto& group : groups) {
    BenchExact& section = sections.emplace_back(problem, std::move(group), true);
    know_floors(section, problem, most_benches, patience.nodes / 16);
    now.assign(all + 1, kNever);
    std::vector<std::size_t> which(all + 1);
    for (std::size_t part = 1; part <= std::min(most_benches, std::max<std::size_t>(section.players().size(), 1)); ++part) {
      BenchPatience some{patience.nodes / 16};
      const double floor = section.floor_of_any(part, some);
      if (floor == kNever) continue;
      for (std::size_t used = part; used <= all; ++used)
        if (const double cost = before[used - part] + floor; cost < now[used]) now[used] = cost, which[used] = part;
    }
    chosen.push_back(std::move(which));
    before.swap(now);
  }
  std::size_t used = static_cast<std::size_t>(std::min_element(before.begin(), before.end()) - before.begin());
  out.floor = before[used];
  if (out.floor == kNever) {
    out.state = BenchParting::State::impossible;
    return out;
  }
  out.floor += own_floor_beyond(problem, sections);
  std::vector<bool> taken(all);
  BenchChoice choice(problem.players);
  for (std::size_t k = sections.size(); k-- > 0;) {
    const std::size_t part = chosen[k][used];
    used -= part;
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t bench = 0; bench < all; ++bench) {
      double sum = 0;
      for (const std::size_t player : sections[k].players()) sum += std::min(1e6, problem.own[player * all + bench]);
      if (!taken[bench]) order.emplace_back(sum, bench);
    }
    std::sort(order.begin(), order.end());
    std::vector<std::size_t> benches;
    for (std::size_t at = 0; at < part; ++at) benches.push_back(order[at].second), taken[order[at].second] = true;
    std::sort(benches.begin(), benches.end());
    BenchPatience some{patience.nodes / 16};
    const auto solved = sections[k].solve(benches, some);
    if (!solved.choice) return out;
    for (std::size_t at = 0; at < solved.choice->size(); ++at) choice[sections[k].players()[at]] = (*solved.choice)[at];
  }
  out.state = BenchParting::State::found;
  out.choices.push_back(std::move(choice));
  return out;
}

}  // namespace

std::vector<std::vector<std::size_t>> sections_of(const BenchProblem& problem) {
  std::vector<std::vector<std::size_t>> out;
  std::vector<bool> seen(problem.players);
  for (std::size_t first = 0; first < problem.players; ++first) {
    if (seen[first]) continue;
    std::vector<std::size_t> group{first};
    seen[first] = true;
    for (std::size_t at = 0; at < group.size(); ++at)
      for (std::size_t other = 0; other < problem.players; ++other)
        if (!seen[other] && problem.hard[group[at] * problem.players + other] == 0) {
          seen[other] = true;
          group.push_back(other);
        }
    std::sort(group.begin(), group.end());
    out.push_back(std::move(group));
  }
  return out;
}

BenchParting part_benches(const BenchProblem& problem, double enough, BenchPatience& patience) {
  BenchParting out;
  auto groups = sections_of(problem);
  if (groups.size() > problem.benches) {
    out.state = BenchParting::State::impossible;
    out.floor = kNever;
    return out;
  }
  if (groups.empty()) return out;
  if (problem.benches > kMostPartedBenches) return part_by_numbers(problem, std::move(groups), patience);
  const std::size_t most_benches = problem.benches - groups.size() + 1;
  std::vector<Section> sections;
  sections.reserve(groups.size());
  for (auto& group : groups) {
    BenchPatience some{patience.nodes / (2 * groups.size())};
    sections.emplace_back(problem, std::move(group), most_benches, some);
  }
  const std::size_t each = patience.nodes / 10;
  double least = kNever;
  for (;;) {
    const Division division = divide(sections, problem.benches, most_benches);
    out.floor = std::max(out.floor, division.floor);
    if (division.floor == kNever) {
      out.state = BenchParting::State::impossible;
      return out;
    }
    bool all_known = true;
    BenchChoice choice(problem.players);
    bool whole = true;
    for (std::size_t k = 0; k < sections.size(); ++k) {
      if (!sections[k].tried(division.sets[k])) {
        BenchPatience some{std::min(patience.nodes, each)};
        const std::size_t given = some.nodes;
        sections[k].solve(division.sets[k], some);
        patience.nodes -= given - some.nodes;
        all_known = false;
      }
      const auto part = sections[k].choice(division.sets[k]);
      whole = whole && part;
      if (part)
        for (std::size_t at = 0; at < part->size(); ++at) choice[sections[k].players()[at]] = (*part)[at];
    }
    if (whole) {
      out.state = BenchParting::State::found;
      if (const double cost = cost_of(problem, choice).total(); cost < least) {
        least = cost;
        out.choices.push_back(std::move(choice));
      }
    }
    if (all_known || patience.nodes == 0 || least - out.floor <= enough * least) return out;
  }
}

}  // namespace weavelog
