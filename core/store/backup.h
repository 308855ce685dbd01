#pragma once
// Backup and restore of a ledger's file. A backup holds no key: whoever opens it writes as a new author.

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <functional>
#include <optional>

#include "core/base/outcome.h"
#include "core/log/author.h"

namespace weavelog {

/// Copies the database at `source` into the new file `target` (mode 0600, on disk when this returns), whoever
/// has it open meanwhile: it reads one snapshot and needs no lock. The copy is checked (SQLite's integrity
/// check, and that it is a Weavelog database of a version known here) before it gets its name. Faults:
/// not_found, conflict (the target exists), newer, damaged, bad_input (another program's database), no_space,
/// io. With the device's key, its own chains are sealed in the copy, so that another device that restores it
/// can hand them on.
[[nodiscard]] Outcome<> back_up(const std::filesystem::path& source, const std::filesystem::path& target,
                                const DeviceKey* key = nullptr);

struct Restored {
  std::optional<std::filesystem::path> replaced;  ///< where the database that was there before is kept now
  bool carried = false;                           ///< what must not be unlearnt came over from it; false: there was none, it held nothing, or it can't be read
};

/// What becomes of the restored database before it takes its place. What one throws is left at that.
struct RestoreCare {
  std::function<void(SQLite::Database&)> carry = {};      ///< brings more over of what must not be unlearnt, out of the other, which is attached as `replaced`
  std::function<void(SQLite::Database&)> otherwise = {};  ///< nothing could be brought over: takes out what may have ended since the backup was made
};

/// Puts the backup in the place of the database at `target`. What was there is kept beside it under a new
/// name; books that were forgotten there are forgotten in the restored one too. Faults: those of back_up for
/// the backup; conflict (there is a database and `overwrite` is false); locked (a program has it open).
[[nodiscard]] Outcome<Restored> restore(const std::filesystem::path& backup,
                                        const std::filesystem::path& target, bool overwrite,
                                        const RestoreCare& care = {});

}  // namespace weavelog
