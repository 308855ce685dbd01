#pragma once
// Is it UTF-8, and if not, where it breaks. Text from outside is checked here once; everything further in may
// rely on it.

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// Offset of the first byte that does not begin a well-formed UTF-8 sequence (RFC 3629: no surrogates, no
/// overlong forms, nothing beyond U+10FFFF); nothing if all of it is well formed.
[[nodiscard]] std::optional<std::size_t> first_invalid_utf8(std::string_view text);
/// A bad_input fault that names the byte offset (from 0) and the byte. `where` is handed on.
[[nodiscard]] Outcome<> check_utf8(std::string_view text, std::string where = {});

}  // namespace weavelog
