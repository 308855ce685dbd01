#pragma once
// Private to sync/net: the network interfaces of this machine.

#include <boost/asio/ip/address_v4.hpp>
#include <optional>
#include <vector>

namespace weavelog {

/// An IPv4 address that this machine has on an interface that is up.
struct Interface {
  boost::asio::ip::address_v4 address;
  std::optional<boost::asio::ip::address_v4> broadcast;  ///< none on loopback and point-to-point links
};

/// As they are now; none where the system does not say.
[[nodiscard]] std::vector<Interface> up_interfaces();

}  // namespace weavelog
