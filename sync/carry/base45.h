#pragma once
// Bytes in the 45 characters that a QR code holds most closely: Base45 of RFC 9285.

#include <optional>
#include <string>
#include <string_view>

#include "core/base/bytes.h"

namespace weavelog {

[[nodiscard]] std::string to_base45(ByteView bytes);
/// Nothing if a character is none of the 45, a group stands for more than its bytes can hold, or one character is left over.
[[nodiscard]] std::optional<Bytes> from_base45(std::string_view text);

}  // namespace weavelog
