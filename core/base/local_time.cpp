#include "core/base/local_time.h"

#include <unicode/timezone.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <optional>

#include "core/base/iso_time.h"

namespace weavelog {
namespace {

constexpr std::int64_t kDayMs = 24 * kHourMs;
constexpr UnixMs kFar = 10'000LL * 366 * kDayMs;  // what calendars can say

std::int64_t floor_of(std::int64_t value, std::int64_t by) {
  return value / by - (value % by < 0 ? 1 : 0);
}

}  // namespace

struct LocalTime::Zone {
  std::unique_ptr<icu::TimeZone> held;
};

LocalTime::LocalTime(const std::string& zone) : zone_(std::make_unique<Zone>()) {
  zone_->held.reset(icu::TimeZone::createTimeZone(icu::UnicodeString::fromUTF8(zone)));
  if (*zone_->held == icu::TimeZone::getUnknown()) zone_->held.reset(icu::TimeZone::getGMT()->clone());
}
LocalTime::~LocalTime() = default;
LocalTime::LocalTime(LocalTime&&) noexcept = default;
LocalTime& LocalTime::operator=(LocalTime&&) noexcept = default;

std::int64_t LocalTime::wall_ms(UnixMs at) const {
  at = std::clamp(at, -kFar, kFar);
  std::int32_t raw = 0, summer = 0;
  UErrorCode status = U_ZERO_ERROR;
  zone_->held->getOffset(static_cast<UDate>(at), false, raw, summer, status);
  return U_FAILURE(status) ? at : at + raw + summer;
}

std::int64_t LocalTime::day_of(UnixMs at) const { return floor_of(wall_ms(at), kDayMs); }

int LocalTime::hour_of(UnixMs at) const {
  const std::int64_t wall = wall_ms(at);
  return static_cast<int>((wall - floor_of(wall, kDayMs) * kDayMs) / kHourMs);
}

UnixMs LocalTime::begin_of(std::int64_t day) const {
  day = std::clamp(day, -kFar / kDayMs, kFar / kDayMs);
  // Offsets are whole quarters of an hour in all zones of today; halving finds the first moment for any.
  UnixMs before = day * kDayMs - kDayMs * 2, after = day * kDayMs + kDayMs * 2;
  while (after - before > 1) {
    const UnixMs middle = before + (after - before) / 2;
    (day_of(middle) < day ? before : after) = middle;
  }
  return after;
}

std::string date_text(std::int64_t day) {
  const std::chrono::year_month_day date{std::chrono::sys_days(std::chrono::days(std::clamp<std::int64_t>(day, -700'000, 2'900'000)))};
  char text[32];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                static_cast<unsigned>(date.day()));
  return text;
}

std::optional<std::int64_t> day_from(const std::string& date) {
  if (!is_iso_date(date)) return std::nullopt;
  const auto at = moment_from(date + "T00:00Z", "UTC", 0);
  return at ? std::optional(floor_of(*at, kDayMs)) : std::nullopt;
}

}  // namespace weavelog
