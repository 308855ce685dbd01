#pragma once
// Small secret files that only their owner may read: how the device key and the server's certificate are
// kept.

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// The whole file, at most 64 KiB; nothing if there is none.
/// Faults: refused (others may read it, or it is another user's), damaged (empty, too large, not a plain
/// file), io.
[[nodiscard]] Outcome<std::optional<std::string>> read_private_file(const std::filesystem::path& file);

/// Creates the file with mode 0600, on disk when this returns; its folder is made (mode 0700) if it is
/// missing. Never replaces a file. False if one is there already, then left as it is. Faults: no_space, io,
/// refused.
[[nodiscard]] Outcome<bool> create_private_file(const std::filesystem::path& file, std::string_view content);

}  // namespace weavelog
