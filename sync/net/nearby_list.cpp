#include "sync/net/nearby_list.h"

#include <algorithm>
#include <tuple>

namespace weavelog {
namespace {

/// How well an address serves: small is good. A link-local address holds only with this machine's own name of
/// its interface, and a loopback one only on this machine.
int rank(const std::string& host) {
  if (host.starts_with("127.") || host == "::1") return 3;
  if (host.starts_with("fe80:")) return 2;
  return host.find(':') == std::string::npos ? 0 : 1;
}

}  // namespace

std::optional<KnownHost> claimed_host(const std::vector<KnownHost>& known, const NearbyOffer& offer) {
  const auto found = std::find_if(known.begin(), known.end(), [&](const KnownHost& host) {
    return host.key == offer.key && host.fingerprint == offer.fingerprint;
  });
  return found == known.end() ? std::nullopt : std::optional(*found);
}

void NearbyList::hear(const NearbyOffer& offer, const std::string& host, Time now) {
  auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) {
    return one.offer.key == offer.key && one.offer.fingerprint == offer.fingerprint;
  });
  if (row == rows_.end()) {
    if (rows_.size() >= kServers) return;
    row = rows_.insert(rows_.end(), Row{offer, {}});
  }
  row->offer = offer;
  const Address address{host, offer.port};
  const auto known = std::find_if(row->heard.begin(), row->heard.end(),
                                  [&](const Heard& one) { return one.address == address; });
  if (known != row->heard.end()) {
    known->at = now;
  } else if (row->heard.size() < kAddresses) {
    row->heard.push_back({address, now});
  }
}

void NearbyList::expire(Time now) {
  for (Row& row : rows_) std::erase_if(row.heard, [&](const Heard& one) { return now - one.at >= life_; });
  std::erase_if(rows_, [](const Row& row) { return row.heard.empty(); });
}

std::vector<NearbyServer> NearbyList::servers() const {
  std::vector<NearbyServer> out;
  for (const Row& row : rows_) {
    // The first heard of those that serve equally well: the row keeps its address while that one answers.
    const auto best = std::min_element(
        row.heard.begin(), row.heard.end(),
        [](const Heard& a, const Heard& b) { return rank(a.address.host) < rank(b.address.host); });
    out.push_back({row.offer, best->address});
    out.back().offer.port = best->address.port;
  }
  std::sort(out.begin(), out.end(), [](const NearbyServer& a, const NearbyServer& b) {
    return std::tie(a.offer.name, a.offer.key, a.offer.fingerprint) <
           std::tie(b.offer.name, b.offer.key, b.offer.fingerprint);
  });
  return out;
}

}  // namespace weavelog
