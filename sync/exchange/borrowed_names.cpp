#include "sync/exchange/borrowed_names.h"

#include <set>
#include <string>

#include "core/base/text.h"

namespace weavelog {

std::vector<std::size_t> borrowed_names(const Ledger& ledger, const DeviceList& devices, RoleWeigher& weigher, const Batch& batch) {
  std::vector<std::size_t> out;
  std::set<std::string> names;
  for (std::size_t i = 0; i < batch.authors.size(); ++i) {
    if (!weigher.nobody_knows(batch.authors[i].key)) continue;
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
