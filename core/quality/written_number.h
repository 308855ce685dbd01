#pragma once
// A number exactly as it was written, so that what is computed of it is limited by its digits and not by what a double can hold of them.

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// mantissa x 10^exponent, exactly.
struct WrittenNumber {
  std::int64_t mantissa = 0;
  int exponent = 0;

  /// Digits with at most one sign, one '.' or ',', and an exponent as in 1.5e-3. At most 18 digits from the first that is not 0, and a size
  /// of at most 10^100 (0 apart, at least 10^-100). Faults: bad_input (no number, or one beyond these).
  [[nodiscard]] static Outcome<WrittenNumber> parse(std::string_view text);
  /// The nearest double.
  [[nodiscard]] double to_double() const;
};

}  // namespace weavelog
