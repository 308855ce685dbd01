#include "core/quality/distributions.h"

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace weavelog {

double student_quantile(double p, double freedom) { return boost::math::quantile(boost::math::students_t(freedom), p); }

double student_two_sided(double t, double freedom) {
  if (!std::isfinite(t)) return 0;
  return 2 * boost::math::cdf(boost::math::complement(boost::math::students_t(freedom), std::fabs(t)));
}

double f_above(double f, double freedom_above, double freedom_below) {
  if (!std::isfinite(f)) return 0;
  return boost::math::cdf(boost::math::complement(boost::math::fisher_f(freedom_above, freedom_below), f));
}

double chi_square_quantile(double p, double freedom) { return boost::math::quantile(boost::math::chi_squared(freedom), p); }

double binomial_at_most(double successes, double tries, double p) { return boost::math::cdf(boost::math::binomial(tries, p), successes); }

}  // namespace weavelog
