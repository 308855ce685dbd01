#pragma once
// What every source that speaks to ICU needs. Only for sources of this room: it brings ICU's headers along.

#include <unicode/unistr.h>
#include <unicode/utypes.h>

#include <stdexcept>
#include <string>

namespace weavelog {

/// Throws std::logic_error, naming what was tried, if ICU refused.
inline void must(UErrorCode status, const char* what) {
  if (U_FAILURE(status)) throw std::logic_error(std::string(what) + ": ICU says " + u_errorName(status));
}

inline std::string to_utf8(const icu::UnicodeString& text) {
  std::string out;
  return text.toUTF8String(out);
}

}  // namespace weavelog
