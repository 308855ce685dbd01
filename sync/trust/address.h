#pragma once
// Where an event server listens.

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// Taken when none is said.
inline constexpr std::uint16_t kDefaultPort = 26110;

struct Address {
  std::string host;  ///< a name, an IPv4 or an IPv6 address, the last without brackets
  std::uint16_t port = kDefaultPort;

  bool operator==(const Address&) const = default;
  /// "desk.local:26110", "[fe80::1]:26110"
  [[nodiscard]] std::string text() const;
  /// "host", "host:port", "[IPv6]", "[IPv6]:port" or a bare IPv6 address. Does not look the name up. For
  /// `listening` port 0 means any free one. Fault: bad_input.
  [[nodiscard]] static Outcome<Address> parse(std::string_view text, bool listening = false);
};

}  // namespace weavelog
