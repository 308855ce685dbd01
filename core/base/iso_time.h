#pragma once
// Times in text that programs and commands exchange (ISO 8601), and times as a person types them at a desk.

#include <string>
#include <string_view>

#include "core/base/clock.h"
#include "core/base/outcome.h"

namespace weavelog {

/// "2031-05-26T14:05:00Z", whole seconds; a moment before 1970 as its bare milliseconds.
[[nodiscard]] std::string iso_utc(UnixMs at);

/// Reads a moment. "2031-05-26T14:05" (seconds optional, a space for the T) is told in `zone` (IANA name; an
/// unknown one counts as UTC) unless it ends in "Z"; "14:05" is the next time that a clock in `zone` shows
/// that after `now`; "+90" is so many minutes after `now`. Faults: bad_input, naming the forms.
[[nodiscard]] Outcome<UnixMs> moment_from(std::string_view text, const std::string& zone, UnixMs now);

/// "2031-05-26", a day that exists (proleptic Gregorian calendar, years 1900 to 2199).
[[nodiscard]] bool is_iso_date(std::string_view text);
/// A time zone that is known here.
[[nodiscard]] bool is_time_zone(const std::string& zone);

}  // namespace weavelog
