#pragma once
// The two datagrams of "who is near": a guest's query and a host's answer, as bytes.
//
// What an answer says is a hint that anybody on the network can forge. It helps a person to find an address;
// whom one connects to is proved by the pinned certificate or by pairing, as ever.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/log/author.h"
#include "sync/trust/certificate.h"

namespace weavelog {

/// A query is padded to exactly this, and an answer is never larger: whoever forges a query's sender gains
/// nothing by it.
inline constexpr std::size_t kNearbyBytes = 320;
/// A name in an answer, in bytes.
inline constexpr std::size_t kNearbyName = 96;

/// Random, and given back in the answer.
using NearbyNonce = std::array<std::uint8_t, 16>;

/// What a host says of itself.
struct NearbyOffer {
  PublicKey key{};            ///< the device's
  Fingerprint fingerprint{};  ///< of its certificate
  std::uint16_t port = 0;     ///< of its TCP listener
  std::string name;           ///< the device's
  std::string event;          ///< "" if it has none

  bool operator==(const NearbyOffer&) const = default;
};

struct NearbyAnswer {
  NearbyNonce nonce{};
  NearbyOffer offer;
};

[[nodiscard]] Bytes nearby_query(const NearbyNonce& nonce);
/// Names longer than kNearbyName are cut, the last character then an ellipsis.
[[nodiscard]] Bytes nearby_answer(const NearbyNonce& nonce, const NearbyOffer& offer);

/// Nothing for whatever is not a query of this version, to the byte.
[[nodiscard]] std::optional<NearbyNonce> read_nearby_query(ByteView datagram);
/// Nothing for whatever is not an answer of this version; nor for names that are blank, not UTF-8, too long,
/// or hold control characters, which a terminal would obey.
[[nodiscard]] std::optional<NearbyAnswer> read_nearby_answer(ByteView datagram);

}  // namespace weavelog
