#include "core/quality/statistics.h"

#include "core/quality/distributions.h"
#include "core/quality/exact.h"

namespace weavelog {
namespace {

template <class Number>
Outcome<std::vector<Exact>> exact_of(std::span<const Number> numbers) {
  std::vector<Exact> out;
  out.reserve(numbers.size());
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    if (!can_be_summed(numbers[i]))
      return fail(FaultCode::bad_input, "the number is not finite, or beyond 10^100", "number " + std::to_string(i + 1), "leave it out or mend it");
    out.push_back(exact(numbers[i]));
  }
  return out;
}

Exact sum(const std::vector<Exact>& numbers) {
  Exact out = 0;
  for (const Exact& one : numbers) out += one;
  return out;
}
Exact squares_about(const std::vector<Exact>& numbers, const Exact& centre) {
  Exact out = 0;
  for (const Exact& one : numbers) out += (one - centre) * (one - centre);
  return out;
}
Exact count_of(std::size_t count) { return Exact(static_cast<unsigned long long>(count)); }

/// So that what a rounding in the hundredth digit leaves counts as nothing.
bool nothing(const Exact& squares, const Exact& scale) { return squares <= scale * Exact("1e-80"); }

template <class Number>
Outcome<Summary> summarise(std::span<const Number> numbers) {
  if (numbers.empty()) return fail(FaultCode::bad_input, "there are no numbers", {}, "give at least one");
  const auto all = exact_of(numbers);
  if (!all) return fail(all.error());
  Summary out;
  out.count = all->size();
  const Exact mean = sum(*all) / count_of(out.count), squares = squares_about(*all, mean);
  out.mean = nearest(mean);
  if (out.count < 2) return out;
  const bool equal = nothing(squares, mean * mean * count_of(out.count));
  out.deviation = equal ? 0 : nearest(sqrt(squares / count_of(out.count - 1)));
  if (equal) return out;
  Exact products = 0;
  for (std::size_t i = 1; i < out.count; ++i) products += ((*all)[i] - mean) * ((*all)[i - 1] - mean);
  out.lag1 = nearest(products / squares);
  return out;
}

VarianceLine line_of(const Exact& squares, std::size_t freedom) {
  return {static_cast<double>(freedom), nearest(squares), freedom == 0 ? 0 : nearest(squares / count_of(freedom))};
}

template <class Number>
Outcome<OneWay> one_way_of(std::span<const std::vector<Number>> groups) {
  if (groups.size() < 2) return fail(FaultCode::bad_input, "there are fewer than two groups", {}, "give numbers of at least two groups");
  OneWay out;
  out.groups = groups.size();
  Exact total = 0, within = 0, between = 0, counts_squared = 0;
  std::vector<Exact> means;
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const std::string place = "group " + std::to_string(g + 1);
    if (groups[g].empty()) return fail(FaultCode::bad_input, "the group is empty", place, "leave it out");
    auto numbers = exact_of(std::span<const Number>(groups[g]));
    if (!numbers) {
      Fault fault = numbers.error();
      fault.where = place + ", " + fault.where;
      return fail(std::move(fault));
    }
    const Exact all = sum(*numbers);
    means.push_back(all / count_of(numbers->size()));
    within += squares_about(*numbers, means.back());
    total += all;
    out.count += numbers->size();
    counts_squared += count_of(numbers->size()) * count_of(numbers->size());
  }
  if (out.count == out.groups) return fail(FaultCode::bad_input, "no group has two numbers", {}, "give repeated readings");
  const Exact mean = total / count_of(out.count);
  for (std::size_t g = 0; g < groups.size(); ++g) between += count_of(groups[g].size()) * (means[g] - mean) * (means[g] - mean);
  const Exact scale = mean * mean * count_of(out.count);
  if (nothing(within, scale)) within = 0;
  if (nothing(between, scale)) between = 0;
  const std::size_t above = out.groups - 1, below = out.count - out.groups;
  out.between = line_of(between, above);
  out.within = line_of(within, below);
  if (within > 0) {
    out.f = nearest((between / count_of(above)) / (within / count_of(below)));
    out.chance = f_above(*out.f, out.between.freedom, out.within.freedom);
  }
  if (between + within > 0) out.r_squared = nearest(between / (between + within));
  out.residual_deviation = nearest(sqrt(within / count_of(below)));
  out.within_variance = out.within.mean_square;
  const Exact each = (count_of(out.count) - counts_squared / count_of(out.count)) / count_of(above);
  const Exact part = (between / count_of(above) - within / count_of(below)) / each;
  out.between_variance = part > 0 ? nearest(part) : 0;
  return out;
}

}  // namespace

Outcome<Summary> summary_of(std::span<const WrittenNumber> numbers) { return summarise(numbers); }
Outcome<Summary> summary_of(std::span<const double> numbers) { return summarise(numbers); }
Outcome<OneWay> one_way(std::span<const std::vector<WrittenNumber>> groups) { return one_way_of(groups); }
Outcome<OneWay> one_way(std::span<const std::vector<double>> groups) { return one_way_of(groups); }

Outcome<Nested> nested(std::span<const std::vector<std::vector<double>>> groups) {
  Nested out;
  Exact total = 0, within = 0, lower = 0, upper = 0;
  Exact lower_in_upper = 0, lower_in_all = 0, upper_in_all = 0;  // sums of n_ij^2 / n_i, n_ij^2, n_i^2
  std::vector<std::pair<Exact, std::size_t>> means;
  for (const auto& one : groups) {
    Exact of_upper = 0, squares = 0;
    std::size_t count = 0;
    std::vector<std::pair<Exact, std::size_t>> inner;
    for (const auto& numbers_given : one) {
      if (numbers_given.empty()) continue;
      const auto numbers = exact_of(std::span<const double>(numbers_given));
      if (!numbers) return fail(numbers.error());
      const Exact all = sum(*numbers);
      inner.emplace_back(all / count_of(numbers->size()), numbers->size());
      within += squares_about(*numbers, inner.back().first);
      squares += count_of(numbers->size()) * count_of(numbers->size());
      of_upper += all;
      count += numbers->size();
    }
    if (inner.empty()) continue;
    const Exact mean = of_upper / count_of(count);
    for (const auto& part : inner) lower += count_of(part.second) * (part.first - mean) * (part.first - mean);
    lower_in_upper += squares / count_of(count);
    lower_in_all += squares;
    upper_in_all += count_of(count) * count_of(count);
    means.emplace_back(mean, count);
    total += of_upper;
    out.lower_groups += inner.size();
    out.count += count;
  }
  out.upper_groups = means.size();
  if (out.upper_groups < 2) return fail(FaultCode::bad_input, "there are fewer than two groups", {}, "give numbers of at least two groups");
  if (out.lower_groups == out.upper_groups)
    return fail(FaultCode::bad_input, "no group has two groups inside", {}, "give groups of which at least one has several inside");
  if (out.count == out.lower_groups) return fail(FaultCode::bad_input, "no inner group has two numbers", {}, "give repeated readings");
  const Exact all = count_of(out.count), mean = total / all;
  for (const auto& part : means) upper += count_of(part.second) * (part.first - mean) * (part.first - mean);
  const std::size_t a = out.upper_groups - 1, b = out.lower_groups - out.upper_groups, e = out.count - out.lower_groups;
  out.upper = line_of(upper, a);
  out.lower = line_of(lower, b);
  out.within = line_of(within, e);
  const Exact ms_a = upper / count_of(a), ms_b = lower / count_of(b), ms_e = within / count_of(e);
  if (ms_b > 0) out.f_upper = nearest(ms_a / ms_b);
  if (ms_e > 0) {
    out.f_lower = nearest(ms_b / ms_e);
    out.chance_lower = f_above(*out.f_lower, out.lower.freedom, out.within.freedom);
  }
  const Exact c1 = (all - lower_in_upper) / count_of(b), c2 = (lower_in_upper - lower_in_all / all) / count_of(a),
              c3 = (all - upper_in_all / all) / count_of(a);
  const Exact of_lower = (ms_b - ms_e) / c1, of_upper = (ms_a - ms_e - c2 * of_lower) / c3;
  out.within_variance = nearest(ms_e);
  out.lower_variance = of_lower > 0 ? nearest(of_lower) : 0;
  out.upper_variance = of_upper > 0 ? nearest(of_upper) : 0;
  return out;
}

}  // namespace weavelog
