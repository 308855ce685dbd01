#pragma once
// Who of the team is in the room when. Part of the event's book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

struct Shift {
  EntityId member;
  std::optional<std::int64_t> from;
  std::optional<std::int64_t> until;
  std::string note;
  bool operator==(const Shift&) const = default;
};

inline constexpr auto kShiftFields = std::to_array<Field<Shift>>({
    {1, "member", &Shift::member},
    {2, "from", &Shift::from},
    {3, "until", &Shift::until},
    {4, "note", &Shift::note},
});
template <>
struct Described<Shift> {
  static constexpr EntityKind kind = kShift;
  static constexpr std::uint32_t base = 3100;
  static constexpr std::span<const Field<Shift>> table = kShiftFields;
};

}  // namespace weavelog
