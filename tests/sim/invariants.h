#pragma once
// What must hold at the end of every run, whatever happened. Each throws a Violation.

#include "tests/sim/room.h"

namespace weavelog::sim {

/// The server knows whom it enrolled.
void check_enrolled(Room& room, std::size_t server);

/// The device let the book go because of what the player said, and of the book a number was given twice: what two devices know of that word may
/// stand in the chain that parted, so that they judge differently.
[[nodiscard]] bool let_go_since_parted(const Room& room, Device& device, const BookId& book);

/// For the message: what two devices hold differently.
[[nodiscard]] std::string books_apart(Device& guest, Device& server);

/// All of them, on devices that are up and have exchanged until nothing changed.
void check_everything(Room& room);

}  // namespace weavelog::sim
