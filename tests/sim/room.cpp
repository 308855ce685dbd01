#include "tests/sim/room.h"

#include <sqlite3.h>

#include <algorithm>

namespace weavelog::sim {

void Room::blame_disk(const SQLite::Exception& error) {
  const int code = error.getErrorCode() & 0xff;
  const bool of_disks = code == SQLITE_IOERR || code == SQLITE_FULL || code == SQLITE_READONLY || code == SQLITE_CANTOPEN;
  const bool excused = std::any_of(devices.begin(), devices.end(), [](const auto& device) { return device->gone() || device->disk.in_trouble(); });
  if (!of_disks || !excused) throw Violation("database", error.what());
  trace.line("   a disk refuses: " + std::string(error.what()));
}

}  // namespace weavelog::sim
