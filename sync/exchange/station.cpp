#include "sync/exchange/station.h"

#include "sync/trust/key_file.h"

namespace weavelog {

Outcome<std::unique_ptr<Station>> Station::open(StationOptions options) {
  std::error_code error;
  if (std::filesystem::create_directories(options.folder, error)) {
    std::filesystem::permissions(options.folder, std::filesystem::perms::owner_all, error);
  }
  if (error)
    return fail(FaultCode::io, "the folder can't be made: " + error.message(), options.folder.string(),
                "choose a folder that you may write to");
  auto key = load_or_create_key(options.folder / "device.key");
  if (!key) return fail(key.error());

  LedgerOptions ledger;
  ledger.file = options.folder / "ledger.db";
  ledger.registry = options.registry;
  ledger.clock = options.clock;
  ledger.key = *key;
  ledger.device_name = options.device_name;
  ledger.projections = std::move(options.projections);
  auto station = std::unique_ptr<Station>(new Station());
  station->folder_ = options.folder;
  auto opened = Ledger::open(std::move(ledger));
  if (!opened) return fail(opened.error());
  station->ledger_ = std::move(*opened);
  auto devices = DeviceList::open(*station->ledger_, *key);
  if (!devices) return fail(devices.error());
  station->devices_ = std::move(*devices);
  auto peers = PeerStore::open(*station->ledger_);
  if (!peers) return fail(peers.error());
  station->peers_ = std::move(*peers);
  return station;
}

}  // namespace weavelog
