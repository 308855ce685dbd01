#pragma once
// What stands in a device's ledger and in its quarantine, entry by entry.

#include <string>
#include <vector>

#include "core/store/ledger.h"
#include "tests/sim/promises.h"

namespace weavelog::sim {

struct HeldEntry {
  EntryKey key;
  PublicKey author_key{};  ///< zeros: of an author of whom the device took nothing in
  Digest body{};
  Bytes bytes;
  bool written_here = false;
  std::string reason;  ///< why it was put aside
};

[[nodiscard]] std::vector<HeldEntry> all_entries(const Ledger& ledger);
/// Those that were put aside.
[[nodiscard]] std::vector<HeldEntry> all_aside(const Ledger& ledger);

}  // namespace weavelog::sim
