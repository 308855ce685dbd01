#pragma once
// Private to sync/net: an acceptor that listens.

#include <boost/asio/ip/tcp.hpp>
#include <cstdint>
#include <string>

#include "core/base/outcome.h"

namespace weavelog {

/// Listens on an IPv4 or IPv6 address ("::" on both kinds); port 0 is any free one. Faults: locked (the port is taken), bad_input
/// (address), refused (rights), io.
[[nodiscard]] Outcome<> listen_on(boost::asio::ip::tcp::acceptor& acceptor, const std::string& address, std::uint16_t port);

}  // namespace weavelog
