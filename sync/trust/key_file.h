#pragma once
// The device's secret key on disk. The incarnation is not here: it stays with the ledger, so that a restored
// or copied database is told apart from its original although both use this key.

#include <filesystem>

#include "core/base/outcome.h"
#include "core/log/author.h"

namespace weavelog {

/// Loads the key, or makes one if there is no file: mode 0600, whole and on disk when this returns. A file
/// that is there is never replaced. Faults: refused (others may read it), damaged, newer, no_space, io.
/// Format: three lines of text, "weavelog device key 1", "seed " and "public " with 64 hexadecimal digits
/// each.
[[nodiscard]] Outcome<DeviceKey> load_or_create_key(const std::filesystem::path& file);

}  // namespace weavelog
