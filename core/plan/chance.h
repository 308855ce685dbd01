#pragma once
// Chance that is the same on every machine: the standard library's generators are laid down, its distributions are not.

#include <cstdint>

namespace weavelog {

/// A stream of random numbers that follows from its start: SplitMix64 (Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators,
/// 2014).
class Chance {
 public:
  explicit Chance(std::uint64_t start) : state_(start) {}
  /// Stream `number` of a family, for common random numbers: the same run of two plans meets the same luck.
  Chance(std::uint64_t start, std::uint64_t number);

  [[nodiscard]] std::uint64_t bits();
  /// Above 0 and below 1.
  [[nodiscard]] double uniform();
  /// 0 to count - 1; count is 1 or more.
  [[nodiscard]] std::uint64_t below(std::uint64_t count);
  /// Mean 0, standard deviation 1.
  [[nodiscard]] double normal();
  /// Of that rate (mean 1 / rate).
  [[nodiscard]] double exponential(double rate);
  /// Shape above 0, scale 1: Marsaglia and Tsang, A Simple Method for Generating Gamma Variables (2000).
  [[nodiscard]] double gamma(double shape);
  /// Of mean 0 or more.
  [[nodiscard]] std::uint64_t poisson(double mean);

 private:
  std::uint64_t state_;
};

/// The value below which a standard normal stays with chance p, 0 < p < 1: Wichura, Algorithm AS 241 (1988), good to 1e-15.
[[nodiscard]] double normal_quantile(double p);
/// The chance that a standard normal is at most x.
[[nodiscard]] double normal_chance(double x);

}  // namespace weavelog
