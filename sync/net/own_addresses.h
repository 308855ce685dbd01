#pragma once
// Under which addresses others in the network reach this machine.

#include <string>
#include <vector>

namespace weavelog {

/// IPv4 addresses as text, those of a local network first; none without a network (this machine's own 127.0.0.1 is no such address).
[[nodiscard]] std::vector<std::string> own_addresses();

}  // namespace weavelog
