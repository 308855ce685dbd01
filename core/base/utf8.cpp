#include "core/base/utf8.h"

#include <unicode/utf8.h>

#include "core/base/bytes.h"

namespace weavelog {

std::optional<std::size_t> first_invalid_utf8(std::string_view text) {
  const ByteView bytes = as_bytes(text);
  const std::size_t length = bytes.size();
  std::size_t at = 0;
  while (at < length) {
    const std::size_t start = at;
    UChar32 code_point = 0;
    U8_NEXT(bytes.data(), at, length, code_point);
    if (code_point < 0) return start;
  }
  return std::nullopt;
}

Outcome<> check_utf8(std::string_view text, std::string where) {
  const auto at = first_invalid_utf8(text);
  if (!at) return {};
  return fail(
      FaultCode::bad_input,
      "not UTF-8: byte 0x" + to_hex(as_bytes(text.substr(*at, 1))) + " at offset " + std::to_string(*at),
      std::move(where), "save or send the text as UTF-8");
}

}  // namespace weavelog
