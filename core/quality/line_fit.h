#pragma once
// Least squares of a straight line or another low polynomial, with the intervals that follow for normal errors. Solved in a hundred digits,
// so that coefficients have all digits that a double can show.

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/quality/written_number.h"

namespace weavelog {

struct Interval {
  double low = 0, high = 0;
};

class LineFit {
 public:
  /// y = sum of coefficient x x^power: {0, 1} is a straight line, {1} one through the origin, {0, 1, 2} one with a bend. Powers ascend, from
  /// 0 to 10. Faults: bad_input (columns of unequal length, numbers not finite, no more numbers than coefficients, too few different x).
  [[nodiscard]] static Outcome<LineFit> of(std::span<const double> x, std::span<const double> y, std::span<const int> powers);
  [[nodiscard]] static Outcome<LineFit> of(std::span<const WrittenNumber> x, std::span<const WrittenNumber> y, std::span<const int> powers);

  [[nodiscard]] const std::vector<int>& powers() const { return powers_; }
  [[nodiscard]] const std::vector<double>& coefficients() const { return coefficients_; }
  [[nodiscard]] const std::vector<double>& errors() const { return errors_; }  ///< standard errors of the coefficients
  [[nodiscard]] double residual_deviation() const { return residual_deviation_; }
  [[nodiscard]] double residual_squares() const { return residual_squares_; }
  /// About the mean, or about 0 where the power 0 is not among the powers; none where y does not vary.
  [[nodiscard]] std::optional<double> r_squared() const { return r_squared_; }
  [[nodiscard]] double freedom() const { return freedom_; }
  [[nodiscard]] std::size_t count() const { return count_; }
  [[nodiscard]] Interval range() const { return range_; }  ///< of x
  [[nodiscard]] double mean_x() const { return mean_x_; }

  [[nodiscard]] double at(double x) const;
  [[nodiscard]] double slope_at(double x) const;
  /// Standard error of at(x).
  [[nodiscard]] double error_at(double x) const;
  /// Where the true line is, and where one further reading will be, with that chance (0 < level < 1).
  [[nodiscard]] Interval confidence(double x, double level) const;
  [[nodiscard]] Interval prediction(double x, double level) const;
  /// The x at which y is that, and where the true one is. Of a straight line by Fieller's theorem; of others by the slope there. None where
  /// the slope is in doubt, or no x of the range (a tenth of it beyond at most) has that y.
  struct Inverse {
    double x = 0;
    Interval confidence;
  };
  [[nodiscard]] std::optional<Inverse> inverse(double y, double level) const;

 private:
  template <class Number>
  static Outcome<LineFit> solve(std::span<const Number> x, std::span<const Number> y, std::span<const int> powers);
  [[nodiscard]] std::vector<double> basis(double x) const;

  std::vector<int> powers_;
  std::vector<double> coefficients_, errors_;
  // The same line in powers of (x - shift) / scale, in which nothing cancels, and what its coefficients' covariances are in units of the
  // residual variance.
  double shift_ = 0, scale_ = 1;
  std::vector<double> local_, covariances_;
  double residual_deviation_ = 0, residual_squares_ = 0, freedom_ = 0, mean_x_ = 0;
  std::optional<double> r_squared_;
  std::size_t count_ = 0;
  Interval range_;
};

}  // namespace weavelog
