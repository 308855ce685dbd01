#include "sync/carry/known_as.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace weavelog {

KnownAs known_as(const Ledger& ledger, const DeviceList& devices, const PublicKey& key) {
  if (key == ledger.self().key) return KnownAs::self;
  const auto member = devices.member(key);
  if (member) return KnownAs::member;
  if (member.error().code == FaultCode::refused) return KnownAs::revoked;
  if (devices.host(key)) return KnownAs::host;
  const auto authors = ledger.authors();
  const bool wrote = std::any_of(authors.begin(), authors.end(), [&](const KnownAuthor& author) { return author.card.key == key; });
  return wrote ? KnownAs::author : KnownAs::stranger;
}

std::string device_name(const Ledger& ledger, const DeviceList& devices, const PublicKey& key) {
  for (const EnrolledDevice& device : devices.devices())
    if (device.key == key) return device.name;
  if (const auto host = devices.host(key)) return host->name;
  std::string called;
  for (const KnownAuthor& author : ledger.authors())
    if (author.card.key == key) called = author.card.device;  // the newest incarnation's
  return called.empty() ? to_hex(key).substr(0, 12) : called;
}

std::vector<KnownDevice> known_devices(const Ledger& ledger, const DeviceList& devices) {
  std::map<PublicKey, KnownDevice> all;
  for (const KnownAuthor& author : ledger.authors()) all[author.card.key] = {author.card.key, author.card.device, KnownAs::author};
  for (const KnownHost& host : devices.hosts()) all[host.key] = {host.key, host.name, KnownAs::host};
  for (const EnrolledDevice& device : devices.devices())
    all[device.key] = {device.key, device.name, device.revoked ? KnownAs::revoked : KnownAs::member};
  all.erase(ledger.self().key);
  std::vector<KnownDevice> out;
  for (auto& [key, one] : all)
    if (one.known != KnownAs::revoked) out.push_back(std::move(one));
  std::sort(out.begin(), out.end(), [](const KnownDevice& a, const KnownDevice& b) { return std::tie(a.name, a.key) < std::tie(b.name, b.key); });
  return out;
}

std::string_view name_of(KnownAs known) {
  constexpr std::string_view kNames[] = {"self", "host", "member", "author", "stranger", "revoked"};
  return kNames[static_cast<std::size_t>(known)];
}

}  // namespace weavelog
