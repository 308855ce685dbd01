#pragma once
// Station: one device on disk. A folder with its key, its ledger, whom it knows and up to where it agreed with whom.

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/store/ledger.h"
#include "sync/exchange/content_files.h"
#include "sync/exchange/peer_store.h"
#include "sync/trust/device_list.h"

namespace weavelog {

struct StationOptions {
  std::filesystem::path folder;  ///< made (mode 0700) if it is missing
  std::string vfs;               ///< SQLite's name of a simulated disk; then `key` is given, and no folder is made
  bool one_thread = false;       ///< see LedgerOptions
  std::optional<DeviceKey> key;  ///< instead of the one in the folder
  std::string device_name;  ///< given now: the folder keeps it
  std::string usual_name;   ///< where none is given now and the folder has none yet
  const FieldRegistry* registry = nullptr;
  std::vector<std::shared_ptr<Projection>> projections;
  const WallClock* clock = &WallClock::system();
};

/// Thread-safe as its parts are.
class Station {
 public:
  /// Faults: those of the key file and of Ledger::open, each naming its file.
  [[nodiscard]] static Outcome<std::unique_ptr<Station>> open(StationOptions options);

  [[nodiscard]] Ledger& ledger() { return *ledger_; }
  [[nodiscard]] const Ledger& ledger() const { return *ledger_; }
  [[nodiscard]] DeviceList& devices() { return *devices_; }
  [[nodiscard]] PeerStore& peers() { return *peers_; }
  /// Large bytes of books, beside the ledger; erased with their book.
  [[nodiscard]] ContentFiles& contents() { return *contents_; }
  [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
  /// The name that the device had before it was opened under another one; only looked for where a usual name was given.
  [[nodiscard]] const std::optional<std::string>& former_name() const { return former_name_; }

 private:
  Station() = default;
  std::filesystem::path folder_;
  std::optional<std::string> former_name_;
  std::unique_ptr<ContentFiles> contents_;
  std::unique_ptr<Ledger> ledger_;  // before what refers to it
  std::unique_ptr<DeviceList> devices_;
  std::unique_ptr<PeerStore> peers_;
};

}  // namespace weavelog
