#include "sync/carry/known_as.h"

#include <algorithm>

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

std::string_view name_of(KnownAs known) {
  constexpr std::string_view kNames[] = {"self", "host", "member", "author", "stranger", "revoked"};
  return kNames[static_cast<std::size_t>(known)];
}

}  // namespace weavelog
