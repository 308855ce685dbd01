#include "sync/exchange/station.h"

#include "core/log/device_name.h"
#include "sync/trust/key_file.h"

namespace weavelog {
namespace {

Outcome<> make_folder(const std::filesystem::path& folder) {
  std::error_code error;
  if (std::filesystem::create_directories(folder, error)) {
    std::filesystem::permissions(folder, std::filesystem::perms::owner_all, error);
  }
  if (error)
    return fail(FaultCode::io, "the folder can't be made: " + error.message(), folder.string(),
                "choose a folder that you may write to");
  return {};
}

}  // namespace

Outcome<std::unique_ptr<Station>> Station::open(StationOptions options) {
  if (options.vfs.empty()) {
    if (auto made = make_folder(options.folder); !made) return fail(made.error());
  }
  if (!options.key) {
    auto key = load_or_create_key(options.folder / "device.key");
    if (!key) return fail(key.error());
    options.key = std::move(*key);
  }

  LedgerOptions ledger;
  ledger.file = options.folder / "ledger.db";
  ledger.registry = options.registry;
  ledger.clock = options.clock;
  ledger.vfs = options.vfs;
  ledger.one_thread = options.one_thread;
  ledger.key = *options.key;
  // With a usual name, first as whoever it was before: another name opens it once more. Others would cut a longer one.
  ledger.device_name = options.usual_name.empty() ? shown_name(options.device_name) : std::string();
  ledger.projections = std::move(options.projections);
  auto station = std::unique_ptr<Station>(new Station());
  station->folder_ = options.folder;
  auto opened = Ledger::open(ledger);
  if (!opened) return fail(opened.error());
  if (!options.usual_name.empty()) {
    const std::string kept = (*opened)->self().device;
    ledger.device_name = shown_name(!options.device_name.empty() ? options.device_name : kept.empty() ? options.usual_name : kept);
    if (ledger.device_name != kept) {
      if (!kept.empty()) station->former_name_ = kept;
      opened->reset();
      opened = Ledger::open(std::move(ledger));
      if (!opened) return fail(opened.error());
    }
  }
  station->ledger_ = std::move(*opened);
  station->contents_ = std::make_unique<ContentFiles>(options.folder / "photos");
  // Erased before the book's own transaction ends: an order that then fails is given again, and is about somebody who is to be forgotten.
  station->ledger_->erase_with([files = station->contents_.get()](Connection&, const BookId& book) { files->forget(book); });
  station->contents_->sweep([&](const BookId& book) { return station->ledger_->is_forgotten(book); });
  auto devices = DeviceList::open(*station->ledger_, *options.key);
  if (!devices) return fail(devices.error());
  station->devices_ = std::move(*devices);
  auto peers = PeerStore::open(*station->ledger_);
  if (!peers) return fail(peers.error());
  station->peers_ = std::move(*peers);
  return station;
}

}  // namespace weavelog
