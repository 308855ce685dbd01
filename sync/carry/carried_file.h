#pragma once
// Files on a stick: written so that whoever looks sees the whole file or none under its name, read piece by piece.

#include <filesystem>
#include <functional>

#include "sync/carry/bundle_seal.h"

namespace weavelog {

/// Calls write(sink), which gives the content. It goes into a file beside, mode 0600, which takes the name once it is on the disk, so
/// that a stick that is pulled out, a full disk or a fault of `write` leave nothing under the name. Faults: conflict (there is one
/// already and `replace` is not set), no_space, io, refused, those of `write`.
[[nodiscard]] Outcome<> write_carried_file(const std::filesystem::path& file, bool replace,
                                           const std::function<Outcome<>(const ByteSink&)>& write);

/// A plain file. Faults: not_found, refused, io.
[[nodiscard]] Outcome<ByteSource> read_carried_file(const std::filesystem::path& file);
/// The whole of a small one. Faults: the same, malformed (larger than `most`).
[[nodiscard]] Outcome<Bytes> read_small_file(const std::filesystem::path& file, std::size_t most);

}  // namespace weavelog
