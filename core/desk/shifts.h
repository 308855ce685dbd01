#pragma once
// Who is in the room when, and whose days grow too long.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/desk/event_book.h"
#include "core/model/shift.h"

namespace weavelog {

/// A day of more hours than this is warned of.
inline constexpr std::int64_t kLongDayMs = 12LL * 3'600'000;
/// Rest between two days: Directive 2003/88/EC, article 3. What holds in a room is for its local law and contracts to say.
inline constexpr std::int64_t kRestMs = 11LL * 3'600'000;

/// Faults: not_found (no such member), bad_input (no times, ends before it begins, longer than a day and a night).
[[nodiscard]] Outcome<Draft> add_shift(const EventRecord& event, const Shift& shift, UnixMs at);
/// Faults: as above.
[[nodiscard]] Outcome<Draft> change_shift(const EventRecord& event, const Loaded<Shift>& shift, const Shift& wanted);
/// Takes a shift off the plan.
[[nodiscard]] Draft remove_shift(const BookId& event, const Loaded<Shift>& shift);

[[nodiscard]] std::vector<Loaded<Shift>> load_shifts(const Ledger& ledger, const BookId& event);
/// Members whose shift covers the moment, in order of the team.
[[nodiscard]] std::vector<EntityId> present_at(std::span<const Loaded<Shift>> shifts, UnixMs at);

struct ShiftWarning {
  enum class Kind { long_day, short_rest } kind = Kind::long_day;
  EntityId member;
  std::int64_t day = 0;     ///< days since 1970: the day that is too long, or that begins too soon
  std::int64_t length = 0;  ///< ms: of the day, or of the rest
};
/// A shift counts to the day on which it begins, in the event's time zone; what overlaps counts once. In order of day.
[[nodiscard]] std::vector<ShiftWarning> shift_warnings(std::span<const Loaded<Shift>> shifts, const std::string& zone);

}  // namespace weavelog
