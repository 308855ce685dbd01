#pragma once
// A key that nobody enrolled costs nothing, and its card can carry any name: also that of a device of the room, under which its words would be read.

#include <functional>
#include <vector>

#include "sync/trust/device_list.h"

namespace weavelog {

/// True if the key is neither this device's, nor enrolled here (revoked ones are known too), nor that of a server that it was paired with.
[[nodiscard]] bool nobody_knows(const Ledger& ledger, const DeviceList& devices, const PublicKey& key);

/// Cards of the batch, by their place, of whom `stranger` says so and that bear the name of this device or of one that is enrolled here.
[[nodiscard]] std::vector<std::size_t> borrowed_names(const Ledger& ledger, const DeviceList& devices, const std::function<bool(const PublicKey&)>& stranger,
                                                      const Batch& batch);
/// These get the beginning of their key for a name. What was read ahead of the batch is dropped.
void take_names_away(Batch& batch, const std::vector<std::size_t>& cards);

}  // namespace weavelog
