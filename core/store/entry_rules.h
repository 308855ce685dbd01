#pragma once
// What entries must keep beyond their form, judged alike on every device, so that words that go on from them stay sound.

#include "core/log/entry.h"

namespace weavelog {

/// The newest time that a clock gives, however wrong it is (in the year 10,332; HybridClock goes no further). Beyond it lies only what a forger
/// says, and what had to follow that; up to the last stamp that there is, room is left for 2^60 such words.
inline constexpr Stamp kNewestStamp = Stamp::of((std::uint64_t{1} << 48) - (std::uint64_t{1} << 44), 0);

/// Two of its writes are of one field. A draft lets the second take the place of the first, so no honest program makes such an entry; but
/// thousands of answers at once could be more than one entry can replace.
[[nodiscard]] bool writes_a_field_twice(const Entry& entry);

/// True if the stamp is one that a clock gives, or the very next after the newest that is replaced. `some_unknown`: of something that
/// is replaced the time can't be told here; then whoever follows a forger's last word is believed, up to half of the room that is left.
[[nodiscard]] constexpr bool stamp_can_be(Stamp stamp, Stamp newest_replaced, bool some_unknown = false) {
  return stamp <= kNewestStamp || stamp.raw - newest_replaced.raw == 1 || (some_unknown && stamp.raw - kNewestStamp.raw <= std::uint64_t{1} << 59);
}

}  // namespace weavelog
