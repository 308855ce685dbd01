#pragma once
// Looking into a bundle before it is taken in: who made it, what it holds, and what of that is new here.

#include <map>
#include <set>

#include "sync/carry/bundle.h"

namespace weavelog {

struct BundleSight {
  BundleId id;
  bool for_device = false;
  BundleManifest manifest;
  KnownAs maker{};
  std::optional<Fault> refused;  ///< why take_bundle would not take it in; `untrusted` if a person may say that it is all right
  std::map<BookKind, std::uint64_t> kinds;  ///< books of each kind
  std::uint64_t books = 0, new_books = 0;
  std::uint64_t entries = 0, new_entries = 0;
  std::uint64_t pictures = 0;
  std::vector<BookId> withheld, forgotten, not_begun;  ///< that would be left out
  ChunkEnd end = ChunkEnd::whole;
  std::optional<Fault> fault;  ///< why it could not be read to its end
  [[nodiscard]] bool whole() const { return !fault && end == ChunkEnd::whole; }
};

/// Reads the bundle to its end and takes nothing in. `options.go_on` is called as by take_bundle; what it stops is seen as far as it
/// was read, with the fault refused. `seen` is shown every batch, for whoever can say more of it.
/// Faults: those of BundleReader::open. May throw SQLite's exception.
[[nodiscard]] Outcome<BundleSight> look_into(ByteSource source, const OpenWith& with, const TakeOptions& options,
                                             const std::function<void(const Batch&)>& seen = {});

}  // namespace weavelog
