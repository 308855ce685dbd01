#include "core/quality/written_number.h"

#include <charconv>

#include "core/base/text.h"

namespace weavelog {
namespace {

constexpr int kMostDigits = 18, kLargest = 100;

tl::unexpected<Fault> none(std::string_view text) {
  return fail(FaultCode::bad_input, "'" + shortened(text, 60) + "' is no number", {}, "write digits, as 24.5 or 1.2e-3");
}

}  // namespace

Outcome<WrittenNumber> WrittenNumber::parse(std::string_view text) {
  const std::string_view all = text;
  WrittenNumber out;
  bool negative = false, point = false, any = false;
  if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
    negative = text.front() == '-';
    text.remove_prefix(1);
  }
  int digits = 0, zeros = 0;  // zeros that may turn out to be the last ones
  for (; !text.empty() && text.front() != 'e' && text.front() != 'E'; text.remove_prefix(1)) {
    const char c = text.front();
    if ((c == '.' || c == ',') && !point) {
      point = true;
      continue;
    }
    if (c < '0' || c > '9') return none(all);
    any = true;
    if (point) --out.exponent;
    if (out.exponent < -10'000 || zeros > 10'000) return none(all);
    if (c == '0' && digits == 0) continue;
    if (c == '0') {
      ++zeros;
      continue;
    }
    if (digits + zeros + 1 > kMostDigits)
      return fail(FaultCode::bad_input, "'" + shortened(all, 60) + "' has more digits than can be kept", {}, "write at most 18 digits");
    for (; zeros > 0; --zeros, ++digits) out.mantissa *= 10;
    out.mantissa = out.mantissa * 10 + (c - '0');
    ++digits;
  }
  if (!any) return none(all);
  out.exponent += zeros;
  if (!text.empty()) {
    text.remove_prefix(1);
    if (!text.empty() && text.front() == '+') text.remove_prefix(1);
    int power = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), power);
    if (error != std::errc() || end != text.data() + text.size() || power < -10'000 || power > 10'000) return none(all);
    out.exponent += power;
  }
  if (out.mantissa == 0) return WrittenNumber{};
  if (out.exponent + digits > kLargest || out.exponent + digits < -kLargest)
    return fail(FaultCode::bad_input, "'" + shortened(all, 60) + "' is too large or too small to be reckoned with", {}, "use another unit");
  if (negative) out.mantissa = -out.mantissa;
  return out;
}

double WrittenNumber::to_double() const {
  const std::string text = std::to_string(mantissa) + "e" + std::to_string(exponent);
  double out = 0;
  std::from_chars(text.data(), text.data() + text.size(), out);
  return out;
}

}  // namespace weavelog
