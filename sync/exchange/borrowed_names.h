#pragma once
// A key that nobody enrolled costs nothing, and its card can carry any name: also that of a device of the room, under which its words would be read.

#include <vector>

#include "sync/exchange/role_weigher.h"

namespace weavelog {

/// Cards of the batch, by their place, of keys that nobody here knows and that bear the name of this device or of one that is enrolled here.
[[nodiscard]] std::vector<std::size_t> borrowed_names(const Ledger& ledger, const DeviceList& devices, RoleWeigher& weigher, const Batch& batch);
/// These get the beginning of their key for a name. What was read ahead of the batch is dropped.
void take_names_away(Batch& batch, const std::vector<std::size_t>& cards);

}  // namespace weavelog
