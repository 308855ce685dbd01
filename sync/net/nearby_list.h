#pragma once
// Who answered lately: bounded, and forgotten after a while. Knows no network; the time is handed in.

#include <chrono>
#include <optional>
#include <vector>

#include "sync/net/nearby_datagram.h"
#include "sync/trust/address.h"
#include "sync/trust/device_list.h"

namespace weavelog {

/// One event server that is near.
struct NearbyServer {
  NearbyOffer offer;
  Address address;  ///< the best of those it was heard at: another machine's rather than this one's own

  bool operator==(const NearbyServer&) const = default;
};

/// The host that this device was paired with and that the answer says it is, by key and certificate. A claim
/// only.
[[nodiscard]] std::optional<KnownHost> claimed_host(const std::vector<KnownHost>& known,
                                                    const NearbyOffer& offer);

/// Used by one thread at a time.
class NearbyList {
 public:
  using Time = std::chrono::steady_clock::time_point;
  static constexpr std::size_t kServers = 64;
  static constexpr std::size_t kAddresses = 8;  ///< of one server
  static constexpr std::chrono::seconds kLife{15};

  explicit NearbyList(std::chrono::milliseconds life = kLife) : life_(life) {}

  /// An answer that came from `host`, an address as text. The same device with the same certificate is the
  /// same server. What is beyond the limits is not taken in.
  void hear(const NearbyOffer& offer, const std::string& host, Time now);
  /// Forgets what was last heard `life` ago or longer.
  void expire(Time now);
  /// By name.
  [[nodiscard]] std::vector<NearbyServer> servers() const;

 private:
  struct Heard {
    Address address;
    Time at;
  };
  struct Row {
    NearbyOffer offer;
    std::vector<Heard> heard;
  };

  std::chrono::milliseconds life_;
  std::vector<Row> rows_;
};

}  // namespace weavelog
