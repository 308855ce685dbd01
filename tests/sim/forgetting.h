#pragma once
// A player withdraws: what must hold of a forgotten book at a device, from the moment on at which the
// device's ledger held the stub. Each check throws a Violation. And books that a device was given and may not keep.

#include "tests/sim/room.h"

namespace weavelog::sim {

/// Books of which the ledger holds a stub, and the reference's part in forgetting: what was promised of them
/// ends, no stub is there that nobody ordered, and none that was there is gone. To be called whenever the
/// device may have heard of some.
void heed_forgetting(Room& room, std::size_t place);

/// Books that were to let go again and are gone: what was promised of them ends. To be called before the device takes anything
/// in, since they may come again, by another's word or in another branch.
void heed_letting_go(Room& room, std::size_t place);

/// Nothing of a forgotten book came back: no entry of it is in the ledger.
void check_stays_forgotten(Device& device);

/// True if one of them is of the program before, which did not notice that who went on from an old copy of its files
/// has to be told of forgotten books again.
[[nodiscard]] bool may_miss_forgetting(const Device& one, const Device& other);

/// What people wrote into its forgotten books is nowhere in its files, write-ahead log included.
void check_bytes_gone(Device& device);
[[nodiscard]] bool are_bytes_gone(Device& device);

}  // namespace weavelog::sim
