#include "sync/net/own_addresses.h"

#include <algorithm>

#include "sync/net/interfaces.h"

namespace weavelog {

std::vector<std::string> own_addresses() {
  auto all = up_interfaces();
  std::erase_if(all, [](const Interface& one) { return one.address.is_loopback(); });
  // A network with a broadcast address is one that tablets are in; a tunnel or a modem has none.
  std::stable_partition(all.begin(), all.end(), [](const Interface& one) { return one.broadcast.has_value(); });
  std::vector<std::string> out;
  for (const Interface& one : all) out.push_back(one.address.to_string());
  return out;
}

}  // namespace weavelog
