#include "tests/sim/room.h"

#include <sqlite3.h>

#include <algorithm>

namespace weavelog::sim {

std::set<AuthorId> Room::hostile_authors(Device& at) const {
  std::set<AuthorId> out;
  const auto hostile = hostile_key();
  if (!hostile) return out;
  for (const KnownAuthor& one : at.ledger().authors())
    if (one.card.key == *hostile) out.insert(one.card.id());
  return out;
}

void Room::blame_disk(const SQLite::Exception& error) {
  const int code = error.getErrorCode() & 0xff;
  const bool of_disks = code == SQLITE_IOERR || code == SQLITE_FULL || code == SQLITE_READONLY || code == SQLITE_CANTOPEN;
  const bool excused = std::any_of(devices.begin(), devices.end(), [](const auto& device) { return device->gone() || device->disk.in_trouble(); });
  if (!of_disks || !excused) throw Violation("database", error.what());
  trace.line("   a disk refuses: " + std::string(error.what()));
}

}  // namespace weavelog::sim
