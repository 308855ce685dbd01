#pragma once
// Who made what was carried here, as far as this device knows.

#include <cstdint>
#include <string_view>

#include "sync/trust/device_list.h"

namespace weavelog {

enum class KnownAs : std::uint8_t {
  self,      ///< this device, or another with its key
  host,      ///< a server that it was paired with
  member,    ///< enrolled here
  author,    ///< entries of its are held here
  stranger,  ///< nothing is known of it
  revoked,   ///< it was enrolled here and shut out
};

[[nodiscard]] KnownAs known_as(const Ledger& ledger, const DeviceList& devices, const PublicKey& key);
/// "self", "host", ... for --json.
[[nodiscard]] std::string_view name_of(KnownAs known);

}  // namespace weavelog
