#pragma once
// Raw bytes: owned, viewed, and as text.

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace weavelog {

using Bytes = std::vector<std::uint8_t>;
using ByteView = std::span<const std::uint8_t>;

/// The bytes of a text, without copying. Valid as long as the text is.
[[nodiscard]] ByteView as_bytes(std::string_view text);
/// The same bytes seen as text, without copying and without checking that they are UTF-8.
[[nodiscard]] std::string_view as_text(ByteView bytes);
/// Lower-case hexadecimal, two characters a byte.
[[nodiscard]] std::string to_hex(ByteView bytes);
/// Fills `out` from exactly 2 x out.size() hexadecimal characters; false (out unspecified) if they are not that.
[[nodiscard]] bool from_hex(std::string_view hex, std::span<std::uint8_t> out);

}  // namespace weavelog
