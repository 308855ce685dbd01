#pragma once
// How well a figure agrees with a certified one.

#include <algorithm>
#include <boost/json.hpp>
#include <cmath>
#include <string>

namespace weavelog::test {

/// Digits that agree: -log10 of the relative error (of the error where 0 is certified), 15 at most.
inline double digits(double value, double certified) {
  const double error = certified == 0 ? std::fabs(value) : std::fabs(value - certified) / std::fabs(certified);
  return error == 0 ? 15 : std::min(15.0, -std::log10(error));
}

/// A number that is written as one or in quotes.
inline double number(const boost::json::value& value) {
  return value.is_string() ? std::stod(std::string(value.get_string())) : value.to_number<double>();
}

}  // namespace weavelog::test
