#pragma once
// Names that devices give themselves: shown to people, never trusted.

#include <string>
#include <string_view>

namespace weavelog {

inline constexpr std::size_t kMaxDeviceName = 64;
/// No program of ours makes a longer one; what comes with one is malformed.
inline constexpr std::size_t kMaxDeviceNameThatComes = 1024;

/// Well-formed, no control characters (they would garble a log or a terminal), at most kMaxDeviceName bytes.
[[nodiscard]] std::string shown_name(std::string_view name);
/// The same for whole sentences of a peer's.
[[nodiscard]] std::string shown_words(std::string_view words, std::size_t most = 500);

}  // namespace weavelog
