#include "sync/exchange/borrowed_names.h"

#include <set>
#include <string>

#include "core/base/text.h"

namespace weavelog {

bool nobody_knows(const Ledger& ledger, const DeviceList& devices, const PublicKey& key) {
  const auto device = devices.member(key);
  // A device that was revoked is known: what it wrote and others bring is taken, counted and told.
  return !device && device.error().code != FaultCode::refused && key != ledger.self().key && !devices.host(key);
}

std::vector<std::size_t> borrowed_names(const Ledger& ledger, const DeviceList& devices, const std::function<bool(const PublicKey&)>& stranger,
                                        const Batch& batch) {
  std::vector<std::size_t> out;
  std::set<std::string> names;
  for (std::size_t i = 0; i < batch.authors.size(); ++i) {
    if (!stranger(batch.authors[i].key)) continue;
    if (names.empty()) {
      names.insert(search_key(ledger.self().device));
      for (const EnrolledDevice& device : devices.devices()) names.insert(search_key(device.name));
    }
    if (names.contains(search_key(batch.authors[i].device))) out.push_back(i);
  }
  return out;
}

void take_names_away(Batch& batch, const std::vector<std::size_t>& cards) {
  batch.ahead = {};
  for (const std::size_t card : cards) batch.authors[card].device = "? " + to_hex(batch.authors[card].key).substr(0, 8);
}

}  // namespace weavelog
