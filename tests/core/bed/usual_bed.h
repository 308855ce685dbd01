#pragma once
// The bed that tests begin with.

#include "core/bed/setup.h"

namespace weavelog::test {

/// Polyester of 1.25 mm at 24 kg in the usual head and pattern.
inline BedSetup usual() {
  BedSetup out;
  out.mains.kind = out.crosses.kind = {BedMaterial::polyester, 1.25};
  out.mains.pulled = out.crosses.pulled = 24 * 9.80665;
  return out;
}

}  // namespace weavelog::test
