#include "core/quality/line_fit.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/quality/distributions.h"
#include "core/quality/exact.h"

namespace weavelog {
namespace {

Exact power_of(const Exact& x, int power) {
  Exact out = 1;
  for (int i = 0; i < power; ++i) out *= x;
  return out;
}

/// The inverse of the normal matrix, row by row; empty if it has none.
std::vector<Exact> inverse_of(std::vector<Exact> matrix, std::size_t n) {
  std::vector<Exact> out(n * n, Exact(0));
  for (std::size_t i = 0; i < n; ++i) out[i * n + i] = 1;
  for (std::size_t column = 0; column < n; ++column) {
    std::size_t best = column;
    for (std::size_t row = column + 1; row < n; ++row)
      if (abs(matrix[row * n + column]) > abs(matrix[best * n + column])) best = row;
    if (matrix[best * n + column] == 0) return {};
    for (std::size_t k = 0; k < n; ++k) {
      std::swap(matrix[best * n + k], matrix[column * n + k]);
      std::swap(out[best * n + k], out[column * n + k]);
    }
    const Exact pivot = matrix[column * n + column];
    for (std::size_t k = 0; k < n; ++k) matrix[column * n + k] /= pivot, out[column * n + k] /= pivot;
    for (std::size_t row = 0; row < n; ++row) {
      if (row == column) continue;
      const Exact part = matrix[row * n + column];
      if (part == 0) continue;
      for (std::size_t k = 0; k < n; ++k) {
        matrix[row * n + k] -= part * matrix[column * n + k];
        out[row * n + k] -= part * out[column * n + k];
      }
    }
  }
  return out;
}

struct Solved {
  std::vector<Exact> coefficients, covariances;
};

Solved least_squares(const std::vector<Exact>& x, const std::vector<Exact>& y, const std::vector<int>& powers) {
  const std::size_t n = powers.size();
  std::vector<Exact> normal(n * n, Exact(0)), right(n, Exact(0)), row(n);
  for (std::size_t i = 0; i < x.size(); ++i) {
    for (std::size_t k = 0; k < n; ++k) row[k] = power_of(x[i], powers[k]);
    for (std::size_t k = 0; k < n; ++k) {
      right[k] += row[k] * y[i];
      for (std::size_t m = k; m < n; ++m) normal[k * n + m] += row[k] * row[m];
    }
  }
  for (std::size_t k = 0; k < n; ++k)
    for (std::size_t m = 0; m < k; ++m) normal[k * n + m] = normal[m * n + k];
  Solved out{std::vector<Exact>(n, Exact(0)), inverse_of(std::move(normal), n)};
  if (out.covariances.empty()) return out;
  for (std::size_t k = 0; k < n; ++k)
    for (std::size_t m = 0; m < n; ++m) out.coefficients[k] += out.covariances[k * n + m] * right[m];
  return out;
}

tl::unexpected<Fault> no_line(std::string what, std::string what_to_do) {
  return fail(FaultCode::bad_input, std::move(what), {}, std::move(what_to_do));
}

}  // namespace

template <class Number>
Outcome<LineFit> LineFit::solve(std::span<const Number> given_x, std::span<const Number> given_y, std::span<const int> powers) {
  if (given_x.size() != given_y.size()) return no_line("the columns differ in length", "give a y for every x");
  if (powers.empty() || powers.front() < 0 || powers.back() > 10 ||
      std::adjacent_find(powers.begin(), powers.end(), [](int a, int b) { return a >= b; }) != powers.end())
    return no_line("the powers of a line ascend from 0 to 10", "use 0 and 1 for a straight line");
  LineFit out;
  out.powers_.assign(powers.begin(), powers.end());
  out.count_ = given_x.size();
  const std::size_t n = powers.size();
  std::vector<Exact> x, y;
  for (std::size_t i = 0; i < given_x.size(); ++i) {
    if (!can_be_summed(given_x[i]) || !can_be_summed(given_y[i]))
      return fail(FaultCode::bad_input, "the number is not finite, or beyond 10^100", "pair " + std::to_string(i + 1), "leave it out or mend it");
    x.push_back(exact(given_x[i]));
    y.push_back(exact(given_y[i]));
  }
  if (out.count_ <= n)
    return no_line("so few pairs leave nothing to judge the line by: " + std::to_string(out.count_),
                 "give at least " + std::to_string(n + 1));
  const std::set<Exact> different(x.begin(), x.end());
  if (different.size() - (different.contains(Exact(0)) && powers.front() > 0 ? 1 : 0) < n)
    return no_line("there are too few different values of x for such a line", "give at least " + std::to_string(n) + " different ones");

  const Solved raw = least_squares(x, y, out.powers_);
  if (raw.covariances.empty()) return no_line("the values of x do not tell the line", "spread them further");
  Exact squares = 0, about = 0, mean = 0, mean_x = 0;
  for (std::size_t i = 0; i < x.size(); ++i) mean += y[i], mean_x += x[i];
  mean /= Exact(static_cast<unsigned long long>(x.size()));
  mean_x /= Exact(static_cast<unsigned long long>(x.size()));
  if (powers.front() > 0) mean = 0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    Exact fitted = 0;
    for (std::size_t k = 0; k < n; ++k) fitted += raw.coefficients[k] * power_of(x[i], out.powers_[k]);
    squares += (y[i] - fitted) * (y[i] - fitted);
    about += (y[i] - mean) * (y[i] - mean);
  }
  Exact size = 0;
  for (const Exact& one : y) size += one * one;
  if (squares <= size * Exact("1e-60")) squares = 0;  // what is left of rounding in the hundredth digit
  out.freedom_ = static_cast<double>(out.count_ - n);
  const Exact variance = squares / Exact(static_cast<unsigned long long>(out.count_ - n));
  out.residual_squares_ = nearest(squares);
  out.residual_deviation_ = nearest(sqrt(variance));
  if (about > size * Exact("1e-80")) out.r_squared_ = nearest(1 - squares / about);
  for (std::size_t k = 0; k < n; ++k) {
    out.coefficients_.push_back(nearest(raw.coefficients[k]));
    out.errors_.push_back(nearest(sqrt(variance * abs(raw.covariances[k * n + k]))));
  }
  out.mean_x_ = nearest(mean_x);
  out.range_ = {nearest(*different.begin()), nearest(*different.rbegin())};

  // Once more where nothing cancels. Only a polynomial with all lower powers may be shifted.
  const bool whole = powers.front() == 0 && powers.back() + 1 == static_cast<int>(n);
  Exact shift = whole ? mean_x : Exact(0), scale = 0;
  shift = exact(nearest(shift));
  for (const Exact& one : x) scale = std::max(scale, Exact(abs(one - shift)));
  scale = exact(nearest(scale));
  std::vector<Exact> local;
  for (const Exact& one : x) local.push_back((one - shift) / scale);
  const Solved there = least_squares(local, y, out.powers_);
  out.shift_ = nearest(shift);
  out.scale_ = nearest(scale);
  for (const Exact& one : there.coefficients) out.local_.push_back(nearest(one));
  for (const Exact& one : there.covariances) out.covariances_.push_back(nearest(one));
  return out;
}

Outcome<LineFit> LineFit::of(std::span<const double> x, std::span<const double> y, std::span<const int> powers) { return solve(x, y, powers); }
Outcome<LineFit> LineFit::of(std::span<const WrittenNumber> x, std::span<const WrittenNumber> y, std::span<const int> powers) {
  return solve(x, y, powers);
}

std::vector<double> LineFit::basis(double x) const {
  std::vector<double> out;
  const double t = (x - shift_) / scale_;
  for (const int power : powers_) out.push_back(std::pow(t, power));
  return out;
}

double LineFit::at(double x) const {
  double out = 0;
  const auto row = basis(x);
  for (std::size_t k = 0; k < row.size(); ++k) out += local_[k] * row[k];
  return out;
}

double LineFit::slope_at(double x) const {
  double out = 0;
  const double t = (x - shift_) / scale_;
  for (std::size_t k = 0; k < powers_.size(); ++k)
    if (powers_[k] > 0) out += local_[k] * powers_[k] * std::pow(t, powers_[k] - 1) / scale_;
  return out;
}

double LineFit::error_at(double x) const {
  const auto row = basis(x);
  double out = 0;
  for (std::size_t k = 0; k < row.size(); ++k)
    for (std::size_t m = 0; m < row.size(); ++m) out += row[k] * covariances_[k * row.size() + m] * row[m];
  return residual_deviation_ * std::sqrt(std::max(0.0, out));
}

Interval LineFit::confidence(double x, double level) const {
  const double half = student_quantile((1 + level) / 2, freedom_) * error_at(x);
  return {at(x) - half, at(x) + half};
}

Interval LineFit::prediction(double x, double level) const {
  const double half = student_quantile((1 + level) / 2, freedom_) * std::hypot(error_at(x), residual_deviation_);
  return {at(x) - half, at(x) + half};
}

std::optional<LineFit::Inverse> LineFit::inverse(double y, double level) const {
  const double t = student_quantile((1 + level) / 2, freedom_);
  const double beyond = 0.1 * (range_.high - range_.low);
  const double low = range_.low - beyond, high = range_.high + beyond;
  if (powers_ == std::vector<int>{0, 1}) {
    // In u = (x - shift) / scale, shift being the mean of x: the covariance is diagonal. g < 1: the slope is not in doubt.
    const double a = local_[0], b = local_[1], variance = residual_deviation_ * residual_deviation_;
    const double v_a = covariances_[0] * variance, v_b = covariances_[3] * variance;
    const double g = t * t * v_b / (b * b), u = (y - a) / b;
    if (!(g < 1)) return std::nullopt;
    const double middle = u / (1 - g), half = t / std::fabs(b) * std::sqrt((1 - g) * v_a + u * u * v_b) / (1 - g);
    const double x = shift_ + scale_ * u;
    if (x < low || x > high) return std::nullopt;
    return Inverse{x, {shift_ + scale_ * (middle - half), shift_ + scale_ * (middle + half)}};
  }
  // A bent line: halved between the ends, where it rises or falls all the way.
  double from = low, to = high;
  const double sign = at(to) >= at(from) ? 1 : -1;
  for (int i = 0; i <= 32; ++i)
    if (sign * slope_at(low + (high - low) * i / 32) <= 0) return std::nullopt;
  if (sign * (at(from) - y) > 0 || sign * (at(to) - y) < 0) return std::nullopt;
  for (int i = 0; i < 200 && from < to; ++i) {
    const double middle = from + (to - from) / 2;
    if (middle <= from || middle >= to) break;
    (sign * (at(middle) - y) < 0 ? from : to) = middle;
  }
  const double half = t * error_at(from) / std::fabs(slope_at(from));
  return Inverse{from, {from - half, from + half}};
}

}  // namespace weavelog
