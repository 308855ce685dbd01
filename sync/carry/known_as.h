#pragma once
// Who made what was carried here, as far as this device knows.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

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
/// What this device calls it: as it is enrolled, as host, or as it called itself; else the beginning of its key.
[[nodiscard]] std::string device_name(const Ledger& ledger, const DeviceList& devices, const PublicKey& key);
/// "self", "host", ... for --json.
[[nodiscard]] std::string_view name_of(KnownAs known);

/// Somebody else's device for whom a bundle can be sealed.
struct KnownDevice {
  PublicKey key{};
  std::string name;
  KnownAs known = KnownAs::stranger;
};
/// Every device that is known here and was not revoked, but this one: those enrolled, hosts, and whose entries are held. By name.
[[nodiscard]] std::vector<KnownDevice> known_devices(const Ledger& ledger, const DeviceList& devices);

}  // namespace weavelog
