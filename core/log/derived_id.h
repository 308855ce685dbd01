#pragma once
// Ids that follow from what they stand for: two devices that note the same thing while apart note it under one id.

#include <algorithm>
#include <string_view>

#include "core/base/clock.h"
#include "core/base/digest.h"
#include "core/base/id.h"

namespace weavelog {

/// A UUID version 7 whose chance bits are the digest's.
[[nodiscard]] inline EntityId derived_id(UnixMs at, const Digest& digest) {
  std::uint64_t chance = 0;
  for (std::size_t i = 0; i < 8; ++i) chance = chance << 8 | digest[i];
  const auto more = static_cast<std::uint16_t>((digest[8] << 8 | digest[9]) & 0x0fff);
  return EntityId{uuid_v7(static_cast<std::uint64_t>(std::max<UnixMs>(at, 0)) & 0xffff'ffff'ffffU, more, chance >> 2)};
}

/// Of something that belongs to a book or an entity, by its name: at the moment at which that was made, so that it sorts beside it.
template <class Tag>
[[nodiscard]] EntityId derived_id(const Id<Tag>& from, std::string_view what) {
  UnixMs made = 0;
  for (std::size_t i = 0; i < 6; ++i) made = made << 8 | from.bytes[i];
  return derived_id(made, digest_of({from.view(), as_bytes(what)}));
}

}  // namespace weavelog
