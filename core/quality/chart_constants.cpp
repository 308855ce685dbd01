// The constants of charts, by quadrature.

#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <stdexcept>

#include "core/plan/chance.h"
#include "core/quality/charts.h"

namespace weavelog {
namespace {

constexpr double kFar = 9;  // sigmas beyond which a normal density adds nothing to sixteen digits

double density(double x) { return 0.3989422804014327 * std::exp(-x * x / 2); }

/// Over pieces of one sigma each, so that thirty points a piece reach every digit.
template <class F>
double integral(double from, double to, F&& f) {
  double out = 0;
  const int pieces = std::max(1, static_cast<int>(std::ceil(to - from)));
  for (int i = 0; i < pieces; ++i)
    out += boost::math::quadrature::gauss<double, 15>::integrate(f, from + (to - from) * i / pieces, from + (to - from) * (i + 1) / pieces);
  return out;
}

}  // namespace

ChartConstants chart_constants(int n) {
  if (n < 2 || n > 25) throw std::invalid_argument("chart constants are for samples of 2 to 25");
  ChartConstants out;
  out.d2 = integral(-kFar, kFar, [&](double x) {
    const double below = normal_chance(x), above = normal_chance(-x);
    return 1 - std::pow(below, n) - std::pow(above, n);
  });
  // The mean square of the range, by the densities of the least and the largest.
  const double square = integral(-kFar, kFar, [&](double least) {
    const double inner = integral(least, kFar, [&](double largest) {
      const double between = normal_chance(largest) - normal_chance(least);
      return (largest - least) * (largest - least) * density(largest) * (n == 2 ? 1 : std::pow(std::max(0.0, between), n - 2));
    });
    return n * (n - 1) * density(least) * inner;
  });
  out.d3 = std::sqrt(square - out.d2 * out.d2);
  out.c4 = std::sqrt(2.0 / (n - 1)) * std::exp(std::lgamma(n / 2.0) - std::lgamma((n - 1) / 2.0));
  const double root = std::sqrt(static_cast<double>(n)), spread = std::sqrt(1 - out.c4 * out.c4);
  out.a2 = 3 / (out.d2 * root);
  out.a3 = 3 / (out.c4 * root);
  out.b3 = std::max(0.0, 1 - 3 * spread / out.c4);
  out.b4 = 1 + 3 * spread / out.c4;
  out.range_low = std::max(0.0, 1 - 3 * out.d3 / out.d2);
  out.range_high = 1 + 3 * out.d3 / out.d2;
  return out;
}

}  // namespace weavelog
