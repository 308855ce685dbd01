#include "core/plan/bench_search.h"

#include <algorithm>
#include <cmath>

#include "core/plan/chance.h"

namespace weavelog {
namespace {

/// More than any plan costs, and little enough to keep the digits of the rest.
constexpr double kPenalty = 10'000;

/// A plan that changes, with what each player would cost on each bench.
class Table {
 public:
  Table(const BenchProblem& problem, bool parted) : p_(problem), cost_(problem.clash) {
    for (std::size_t at = 0; at < cost_.size(); ++at)
      if (problem.hard[at] > 0) cost_[at] += parted ? kPenalty : problem.hard[at];
    allowed_.resize(p_.players);
    for (std::size_t i = 0; i < p_.players; ++i)
      for (std::size_t bench = 0; bench < p_.benches; ++bench)
        if (own(i, bench) < kNever) allowed_[i].push_back(bench);
  }

  void set(BenchChoice choice) {
    choice_ = std::move(choice);
    sums_.assign(p_.players * p_.benches, 0);
    loads_.assign(p_.benches * p_.days, 0);
    for (std::size_t i = 0; i < p_.players; ++i) {
      for (std::size_t j = 0; j < p_.players; ++j) sums_[j * p_.benches + choice_[i]] += cost_[i * p_.players + j];
      for (std::size_t day = 0; day < p_.days; ++day) loads_[choice_[i] * p_.days + day] += p_.load[i * p_.days + day];
    }
    total_ = 0;
    for (std::size_t i = 0; i < p_.players; ++i) total_ += sums_[i * p_.benches + choice_[i]] / 2 + own(i, choice_[i]);
    for (std::size_t at = 0; at < loads_.size(); ++at) total_ += burden(loads_[at], at);
  }

  [[nodiscard]] const BenchChoice& choice() const { return choice_; }
  [[nodiscard]] double total() const { return total_; }
  [[nodiscard]] const std::vector<std::size_t>& allowed(std::size_t i) const { return allowed_[i]; }
  [[nodiscard]] bool may(std::size_t i, std::size_t bench) const { return own(i, bench) < kNever; }

  [[nodiscard]] double of_move(std::size_t i, std::size_t to) const {
    const std::size_t from = choice_[i];
    double out = sums_[i * p_.benches + to] - sums_[i * p_.benches + from] + own(i, to) - own(i, from);
    for (std::size_t day = 0; day < p_.days; ++day) out += shifted(from, to, day, p_.load[i * p_.days + day]);
    return out;
  }
  [[nodiscard]] double of_exchange(std::size_t i, std::size_t j) const {
    const std::size_t a = choice_[i], b = choice_[j];
    double out = sums_[i * p_.benches + b] - sums_[i * p_.benches + a] + sums_[j * p_.benches + a] - sums_[j * p_.benches + b] -
                 2 * cost_[i * p_.players + j] + own(i, b) - own(i, a) + own(j, a) - own(j, b);
    for (std::size_t day = 0; day < p_.days; ++day) out += shifted(a, b, day, p_.load[i * p_.days + day] - p_.load[j * p_.days + day]);
    return out;
  }
  void move(std::size_t i, std::size_t to, double difference) {
    const std::size_t from = choice_[i];
    const double* row = &cost_[i * p_.players];
    for (std::size_t j = 0; j < p_.players; ++j) {
      if (row[j] == 0) continue;
      sums_[j * p_.benches + from] -= row[j];
      sums_[j * p_.benches + to] += row[j];
    }
    for (std::size_t day = 0; day < p_.days; ++day) {
      loads_[from * p_.days + day] -= p_.load[i * p_.days + day];
      loads_[to * p_.days + day] += p_.load[i * p_.days + day];
    }
    choice_[i] = to;
    total_ += difference;
  }
  /// That all on one bench and all on another change places; kNever if somebody may not.
  [[nodiscard]] double of_turn(std::size_t a, std::size_t b) const {
    double out = 0;
    for (std::size_t i = 0; i < p_.players && out < kNever; ++i) {
      if (choice_[i] == a) out += own(i, b) - own(i, a);
      if (choice_[i] == b) out += own(i, a) - own(i, b);
    }
    for (std::size_t day = 0; day < p_.days; ++day) {
      const std::size_t at = a * p_.days + day, bt = b * p_.days + day;
      out += burden(loads_[bt], at) + burden(loads_[at], bt) - burden(loads_[at], at) - burden(loads_[bt], bt);
    }
    return out;
  }
  void turn(std::size_t a, std::size_t b) {
    BenchChoice turned = choice_;
    for (std::size_t& bench : turned) bench = bench == a ? b : bench == b ? a : bench;
    set(std::move(turned));
  }
  void exchange(std::size_t i, std::size_t j, double difference) {
    const std::size_t a = choice_[i], b = choice_[j];
    move(i, b, difference);
    move(j, a, 0);
  }

  /// What such a move changes in the sum of squared loads; `with`: the player who comes back, or this one for nobody.
  [[nodiscard]] double of_squares(std::size_t i, std::size_t to, std::size_t with) const {
    double out = 0;
    for (std::size_t day = 0; day < p_.days; ++day) {
      const double load = p_.load[i * p_.days + day] - (with == i ? 0 : p_.load[with * p_.days + day]);
      const double a = loads_[choice_[i] * p_.days + day], b = loads_[to * p_.days + day];
      out += (a - load) * (a - load) - a * a + (b + load) * (b + load) - b * b;
    }
    return out;
  }

 private:
  [[nodiscard]] double own(std::size_t i, std::size_t bench) const { return p_.own[i * p_.benches + bench]; }
  [[nodiscard]] double burden(double load, std::size_t at) const {
    return p_.over_weight * std::max(0.0, load - p_.fair[at]) + kPenalty * std::max(0.0, load - p_.most[at] - 1e-9);
  }
  [[nodiscard]] double shifted(std::size_t from, std::size_t to, std::size_t day, double load) const {
    const std::size_t f = from * p_.days + day, t = to * p_.days + day;
    return burden(loads_[f] - load, f) - burden(loads_[f], f) + burden(loads_[t] + load, t) - burden(loads_[t], t);
  }

  const BenchProblem& p_;
  std::vector<double> cost_;
  std::vector<std::vector<std::size_t>> allowed_;
  BenchChoice choice_;
  std::vector<double> sums_, loads_;
  double total_ = 0;
};

void downhill(Table& table, std::size_t players, std::size_t benches) {
  // Rounds are bounded, so that what rounding pretends can't go round in circles.
  for (std::size_t round = 0, better = 1; better > 0 && round < 1'000; ++round) {
    better = 0;
    for (std::size_t i = 0; i < players; ++i) {
      for (const std::size_t to : table.allowed(i))
        if (to != table.choice()[i])
          if (const double difference = table.of_move(i, to); difference < -1e-9) table.move(i, to, difference), ++better;
      for (std::size_t j = i + 1; j < players; ++j)
        if (table.choice()[i] != table.choice()[j] && table.may(i, table.choice()[j]) && table.may(j, table.choice()[i]))
          if (const double difference = table.of_exchange(i, j); difference < -1e-9) table.exchange(i, j, difference), ++better;
    }
    for (std::size_t a = 0; a < benches; ++a)
      for (std::size_t b = a + 1; b < benches; ++b)
        if (table.of_turn(a, b) < -1e-9) table.turn(a, b), ++better;
  }
}

/// How much an ordinary move changes: the scale of the cooling.
double usual_change(const Table& table, Chance& chance, std::size_t players) {
  std::vector<double> changes;
  for (int probe = 0; probe < 400; ++probe) {
    const std::size_t i = chance.below(players);
    const std::size_t to = table.allowed(i)[chance.below(table.allowed(i).size())];
    if (const double change = std::abs(table.of_move(i, to)); change > 1e-9 && change < kPenalty / 2) changes.push_back(change);
  }
  if (changes.empty()) return 0.1;
  std::nth_element(changes.begin(), changes.begin() + static_cast<std::ptrdiff_t>(changes.size() / 2), changes.end());
  return changes[changes.size() / 2];
}

void cool(Table& table, Chance& chance, std::size_t players, std::size_t steps, double warmth) {
  const double begin = warmth * usual_change(table, chance, players), end = begin / 500;
  const double fall = std::pow(end / begin, 1 / static_cast<double>(std::max<std::size_t>(steps, 1)));
  BenchChoice best = table.choice();
  double least = table.total(), heat = begin;
  for (std::size_t step = 0; step < steps; ++step, heat *= fall) {
    const std::size_t i = chance.below(players);
    double difference = 0;
    if (step % 2 == 0) {
      const std::size_t to = table.allowed(i)[chance.below(table.allowed(i).size())];
      if (to == table.choice()[i]) continue;
      difference = table.of_move(i, to);
      if (difference > 0 && chance.uniform() >= std::exp(-difference / heat)) continue;
      table.move(i, to, difference);
    } else {
      const std::size_t j = chance.below(players);
      const std::size_t a = table.choice()[i], b = table.choice()[j];
      if (a == b || !table.may(i, b) || !table.may(j, a)) continue;
      difference = table.of_exchange(i, j);
      if (difference > 0 && chance.uniform() >= std::exp(-difference / heat)) continue;
      table.exchange(i, j, difference);
    }
    if (table.total() < least - 1e-9) {
      least = table.total();
      best = table.choice();
    }
  }
  table.set(std::move(best));
}

}  // namespace

BenchChoice search_benches(const BenchProblem& problem, std::span<const BenchChoice> beginnings, const BenchSearch& how) {
  if (problem.players == 0) return {};
  Table table(problem, how.parted);
  BenchChoice best;
  double least = kNever;
  const auto keep = [&] {
    downhill(table, problem.players, problem.benches);
    table.set(table.choice());  // sums anew, without what rounding left
    if (table.total() < least) {
      least = table.total();
      best = table.choice();
    }
  };
  const std::size_t steps = how.steps * problem.players;
  Chance chance(how.chance);
  for (const BenchChoice& beginning : beginnings) {
    table.set(beginning);
    keep();
    cool(table, chance, problem.players, steps, 0.1);
    keep();
  }
  for (std::size_t restart = 0; restart < how.restarts; ++restart) {
    BenchChoice by_chance(problem.players);
    for (std::size_t i = 0; i < problem.players; ++i) by_chance[i] = table.allowed(i)[chance.below(table.allowed(i).size())];
    table.set(std::move(by_chance));
    cool(table, chance, problem.players, steps, 1);
    keep();
  }
  return best;
}

BenchChoice even_out(const BenchProblem& problem, BenchChoice choice, bool parted) {
  if (problem.players == 0) return choice;
  Table table(problem, parted);
  table.set(std::move(choice));
  constexpr double kSame = 1e-9, kLess = -1e-6;
  for (std::size_t round = 0, better = 1; better > 0 && round < 50; ++round) {
    better = 0;
    for (std::size_t i = 0; i < problem.players; ++i) {
      for (const std::size_t to : table.allowed(i))
        if (to != table.choice()[i] && table.of_squares(i, to, i) < kLess)
          if (const double difference = table.of_move(i, to); difference <= kSame) table.move(i, to, difference), ++better;
      for (std::size_t j = i + 1; j < problem.players; ++j) {
        const std::size_t a = table.choice()[i], b = table.choice()[j];
        if (a == b || !table.may(i, b) || !table.may(j, a) || table.of_squares(i, b, j) >= kLess) continue;
        if (const double difference = table.of_exchange(i, j); difference <= kSame) table.exchange(i, j, difference), ++better;
      }
    }
  }
  return table.choice();
}

}  // namespace weavelog
