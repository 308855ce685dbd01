#include "core/plan/chance.h"

#include <cmath>

namespace weavelog {

Chance::Chance(std::uint64_t start, std::uint64_t number) : state_(start ^ (number * 0xD1342543DE82EF95ULL)) { state_ = bits(); }

std::uint64_t Chance::bits() {
  std::uint64_t z = state_ += 0x9E3779B97F4A7C15ULL;
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31);
}

double Chance::uniform() { return (static_cast<double>(bits() >> 11) + 0.5) * 0x1p-53; }

std::uint64_t Chance::below(std::uint64_t count) { return static_cast<std::uint64_t>(uniform() * static_cast<double>(count)) % count; }

double Chance::normal() { return normal_quantile(uniform()); }

double Chance::exponential(double rate) { return -std::log(uniform()) / rate; }

double Chance::gamma(double shape) {
  if (shape < 1) {
    const double more = gamma(shape + 1);
    return more * std::pow(uniform(), 1 / shape);
  }
  const double d = shape - 1.0 / 3, c = 1 / std::sqrt(9 * d);
  for (;;) {
    const double x = normal();
    const double v = std::pow(1 + c * x, 3);
    if (v > 0 && std::log(uniform()) < x * x / 2 + d - d * v + d * std::log(v)) return d * v;
  }
}

std::uint64_t Chance::poisson(double mean) {
  std::uint64_t out = 0;
  // In parts, so that exp(-mean) does not vanish.
  for (double left = mean; left > 0; left -= 30) {
    const double limit = std::exp(-std::fmin(left, 30));
    for (double product = uniform(); product > limit; product *= uniform()) ++out;
  }
  return out;
}

double normal_chance(double x) { return std::erfc(-x / std::sqrt(2.0)) / 2; }

namespace {

template <std::size_t N>
double polynomial(const double (&c)[N], double x) {
  double out = 0;
  for (std::size_t i = N; i-- > 0;) out = out * x + c[i];
  return out;
}

}  // namespace

double normal_quantile(double p) {
  constexpr double kA[] = {3.3871328727963666080e0,  1.3314166789178437745e2,  1.9715909503065514427e3,  1.3731693765509461125e4,
                           4.5921953931549871457e4,  6.7265770927008700853e4,  3.3430575583588128105e4,  2.5090809287301226727e3};
  constexpr double kB[] = {1.0,                      4.2313330701600911252e1,  6.8718700749205790830e2,  5.3941960214247511077e3,
                           2.1213794301586595867e4,  3.9307895800092710610e4,  2.8729085735721942674e4,  5.2264952788528545610e3};
  constexpr double kC[] = {1.42343711074968357734e0, 4.63033784615654529590e0, 5.76949722146069140550e0, 3.64784832476320460504e0,
                           1.27045825245236838258e0, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4};
  constexpr double kD[] = {1.0,                      2.05319162663775882187e0, 1.67638483018380384940e0, 6.89767334985100004550e-1,
                           1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4, 1.05075007164441684324e-9};
  constexpr double kE[] = {6.65790464350110377720e0, 5.46378491116411436990e0, 1.78482653991729133580e0, 2.96560571828504891230e-1,
                           2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7};
  constexpr double kF[] = {1.0,                      5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
                           7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15};
  const double q = p - 0.5;
  if (std::abs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * polynomial(kA, r) / polynomial(kB, r);
  }
  double r = std::sqrt(-std::log(q < 0 ? p : 1 - p));
  const double out = r <= 5 ? polynomial(kC, r - 1.6) / polynomial(kD, r - 1.6) : polynomial(kE, r - 5) / polynomial(kF, r - 5);
  return q < 0 ? -out : out;
}

}  // namespace weavelog
