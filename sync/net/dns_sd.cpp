#include "sync/net/dns_sd.h"

#include <algorithm>

#include "core/base/text.h"

namespace weavelog {
namespace {

constexpr std::string_view kVersion = "txtvers=1", kKey = "key=", kCert = "cert=", kName = "name=", kEvent = "event=";
constexpr std::size_t kInstanceBytes = 63;  ///< RFC 6763, section 4.1.1

}  // namespace

std::vector<std::string> dns_sd_text(const NearbyOffer& offer) {
  // Cut as an answer cuts it.
  const auto answer = read_nearby_answer(nearby_answer({}, offer));
  return {std::string(kVersion), std::string(kKey) + to_hex(offer.key), std::string(kCert) + to_hex(offer.fingerprint),
          std::string(kName) + (answer ? answer->offer.name : std::string()), std::string(kEvent) + (answer ? answer->offer.event : std::string())};
}

std::string dns_sd_instance(const std::string& name) {
  for (std::size_t most = kInstanceBytes; most > 0; --most)
    if (std::string out = shortened(name, most); out.size() <= kInstanceBytes) return out;
  return {};
}

std::optional<NearbyOffer> read_dns_sd_text(const std::vector<std::string>& text, const std::string& name, std::uint16_t port) {
  const auto value = [&](std::string_view key) -> std::string {
    const auto found = std::find_if(text.begin(), text.end(), [&](const std::string& one) { return one.starts_with(key); });
    return found == text.end() ? std::string() : found->substr(key.size());
  };
  NearbyOffer offer;
  offer.port = port;
  offer.name = value(kName).empty() ? name : value(kName);
  offer.event = value(kEvent);
  if (std::find(text.begin(), text.end(), kVersion) == text.end()) return std::nullopt;
  if (!from_hex(value(kKey), offer.key) || !from_hex(value(kCert), offer.fingerprint)) return std::nullopt;
  // What may be shown of it is decided in one place.
  const auto answer = read_nearby_answer(nearby_answer({}, offer));
  if (!answer || answer->offer != offer) return std::nullopt;
  return offer;
}

}  // namespace weavelog
