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

/// The same for a table or a text, in the place of what has the name: with its mode, or the one that the system gives to new files. A link is
/// followed; what is no plain file (a pipe, a device), or the program's own output, is written to as it is. Faults: not_found (no such folder), bad_input (a folder has the name),
/// no_space, io, refused.
[[nodiscard]] Outcome<> write_open_file(const std::filesystem::path& file, ByteView content);

/// Copies a whole file under a name that is free, piece by piece through `part_of_carried_file(to)`, which stays where it is when the
/// copy is cut, so that the next call goes on: what is there and equal is not copied again. `go_on` gets the bytes that are there; false
/// stops. Faults: conflict (a file has the name), not_found (the folder, or `from`), refused, no_space, io.
[[nodiscard]] Outcome<> copy_carried_file(const std::filesystem::path& from, const std::filesystem::path& to,
                                          const std::function<bool(std::uint64_t bytes)>& go_on);
[[nodiscard]] std::filesystem::path part_of_carried_file(const std::filesystem::path& file);

/// A plain file. Faults: not_found, refused, io.
[[nodiscard]] Outcome<ByteSource> read_carried_file(const std::filesystem::path& file);
/// The whole of a small one. Faults: the same, malformed (larger than `most`).
[[nodiscard]] Outcome<Bytes> read_small_file(const std::filesystem::path& file, std::size_t most);

}  // namespace weavelog
