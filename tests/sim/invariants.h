#pragma once
// What must hold at the end of every run, whatever happened. Each throws a Violation.

#include "tests/sim/room.h"

namespace weavelog::sim {

/// The server knows whom it enrolled.
void check_enrolled(Room& room, std::size_t server);

/// All of them, on devices that are up and have exchanged until nothing changed.
void check_everything(Room& room);

}  // namespace weavelog::sim
