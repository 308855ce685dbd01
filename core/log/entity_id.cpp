#include "core/log/entity_id.h"

#include <algorithm>
#include <array>

namespace weavelog {
namespace {

/// Of no meaning; with the variant before it.
constexpr std::array<std::uint8_t, 3> kBound{0xab, 0x1d, 0x5a};
static_assert(kBound[0] >> 6 == 2);

}  // namespace

EntityId make_entity_id(EntityKind kind, UnixMs now) {
  EntityId id = make_id<EntityId>(now);
  if (kind >= kKindsBound) return id;
  const auto number = static_cast<std::uint16_t>(kind);
  id.bytes[6] = static_cast<std::uint8_t>(0x80 | number >> 8);
  id.bytes[7] = static_cast<std::uint8_t>(number);
  std::copy(kBound.begin(), kBound.end(), id.bytes.begin() + 8);
  return id;
}

std::optional<EntityKind> kind_bound_to(const EntityId& id) {
  if (id.bytes[6] >> 4 != 8 || !std::equal(kBound.begin(), kBound.end(), id.bytes.begin() + 8)) return std::nullopt;
  return static_cast<EntityKind>((id.bytes[6] & 0x0f) << 8 | id.bytes[7]);
}

}  // namespace weavelog
