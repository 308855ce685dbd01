#pragma once
// Ids that follow from what they stand for: two devices that note the same thing while apart note it under one id.

#include <algorithm>

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

}  // namespace weavelog
