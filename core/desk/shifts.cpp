#include "core/desk/shifts.h"

#include <algorithm>
#include <map>

#include "core/base/local_time.h"

namespace weavelog {
namespace {

constexpr std::int64_t kLongestShiftMs = 36LL * 3'600'000;
constexpr std::int64_t kFarMs = 1'000'000'000'000'000;  // year 33,658: beyond it no shift is real

Outcome<> check_shift(const EventRecord& event, const Shift& shift) {
  const bool member = std::any_of(event.team.begin(), event.team.end(), [&](const auto& other) { return other.id() == shift.member; });
  if (!member) return fail(FaultCode::not_found, "nobody of the team has that number", "member", "add the person to the team first");
  if (!shift.from || !shift.until || *shift.from < 0 || *shift.until > kFarMs)
    return fail(FaultCode::bad_input, "the shift needs a beginning and an end", "shift", "give both times");
  if (*shift.until <= *shift.from) return fail(FaultCode::bad_input, "the shift ends before it begins", "until", "check both times");
  if (*shift.until - *shift.from > kLongestShiftMs)
    return fail(FaultCode::bad_input, "nobody works that long", "until", "check the day; a shift has at most 36 hours");
  return {};
}

struct Span {
  std::int64_t from = 0, until = 0;
};

}  // namespace

Outcome<Draft> add_shift(const EventRecord& event, const Shift& shift, UnixMs at) {
  if (auto checked = check_shift(event, shift); !checked) return fail(checked.error());
  Draft draft(event.book, kEventBook, kActShift);
  (void)put_new(draft, shift, at);
  return draft;
}

Outcome<Draft> change_shift(const EventRecord& event, const Loaded<Shift>& shift, const Shift& wanted) {
  if (auto checked = check_shift(event, wanted); !checked) return fail(checked.error());
  Draft draft(event.book, kEventBook, kActShift);
  put_changes(draft, shift.seen, wanted);
  return draft;
}

Draft remove_shift(const BookId& event, const Loaded<Shift>& shift) {
  Draft draft(event, kEventBook, kActShift);
  put_changes(draft, shift.seen, Shift{});
  return draft;
}

std::vector<Loaded<Shift>> load_shifts(const Ledger& ledger, const BookId& event) {
  std::vector<Loaded<Shift>> out;
  for (EntityState& state : ledger.entities(event, kShift)) {
    Loaded<Shift> shift(std::move(state));
    // One that was taken off has no member; one that another device wrote may lack anything.
    if (shift.now.member && shift.now.from && shift.now.until && *shift.now.from >= 0 && *shift.now.until > *shift.now.from &&
        *shift.now.until <= kFarMs)
      out.push_back(std::move(shift));
  }
  std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return *a.now.from < *b.now.from; });
  return out;
}

std::vector<EntityId> present_at(std::span<const Loaded<Shift>> shifts, UnixMs at) {
  std::vector<EntityId> out;
  for (const auto& shift : shifts)
    if (*shift.now.from <= at && at < *shift.now.until && std::find(out.begin(), out.end(), shift.now.member) == out.end())
      out.push_back(shift.now.member);
  return out;
}

std::vector<ShiftWarning> shift_warnings(std::span<const Loaded<Shift>> shifts, const std::string& zone) {
  const LocalTime local(zone);
  std::map<EntityId, std::map<std::int64_t, std::vector<Span>>> days;
  for (const auto& shift : shifts) days[shift.now.member][local.day_of(*shift.now.from)].push_back({*shift.now.from, *shift.now.until});
  std::vector<ShiftWarning> out;
  for (auto& [member, by_day] : days) {
    std::optional<std::int64_t> before;  // the end of the day before
    for (auto& [day, spans] : by_day) {
      std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
      std::int64_t worked = 0, end = spans.front().from;
      for (const Span& span : spans) {
        worked += std::max<std::int64_t>(span.until - std::max(span.from, end), 0);
        end = std::max(end, span.until);
      }
      if (worked > kLongDayMs) out.push_back({ShiftWarning::Kind::long_day, member, day, worked});
      if (before && spans.front().from - *before < kRestMs)
        out.push_back({ShiftWarning::Kind::short_rest, member, day, std::max<std::int64_t>(spans.front().from - *before, 0)});
      before = std::max(before.value_or(end), end);
    }
  }
  std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
  return out;
}

}  // namespace weavelog
