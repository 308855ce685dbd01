#pragma once
// The distributions that intervals and tests are taken from (Boost.Math; its headers are heavy and stay in one source).

namespace weavelog {

/// The value below which Student's t of so many degrees of freedom (above 0) stays with chance p, 0 < p < 1.
[[nodiscard]] double student_quantile(double p, double freedom);
/// The chance that |t| is at least so large.
[[nodiscard]] double student_two_sided(double t, double freedom);
/// The chance that F is at least so large.
[[nodiscard]] double f_above(double f, double freedom_above, double freedom_below);
/// The value below which chi-square stays with chance p.
[[nodiscard]] double chi_square_quantile(double p, double freedom);
/// The chance that of n tries of chance p so many or fewer come true.
[[nodiscard]] double binomial_at_most(double successes, double tries, double p);

}  // namespace weavelog
