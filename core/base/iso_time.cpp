#include "core/base/iso_time.h"

#include <unicode/gregocal.h>
#include <unicode/timezone.h>

#include <charconv>
#include <ctime>
#include <memory>
#include <optional>

namespace weavelog {
namespace {

constexpr UnixMs kMinute = 60'000;
constexpr UnixMs kDay = 24 * 60 * kMinute;

struct DayAndTime {
  int year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0;
};

bool is_leap(int year) {
  return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

int days_in(int year, int month) {
  constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && is_leap(year) ? 29 : kDays[month - 1];
}

/// Takes exactly `digits` digits off the front.
std::optional<int> take_number(std::string_view& text, std::size_t digits) {
  if (text.size() < digits) return std::nullopt;
  int number = 0;
  for (std::size_t i = 0; i < digits; ++i) {
    if (text[i] < '0' || text[i] > '9') return std::nullopt;
    number = number * 10 + (text[i] - '0');
  }
  text.remove_prefix(digits);
  return number;
}

bool take(std::string_view& text, char wanted) {
  if (text.empty() || text.front() != wanted) return false;
  text.remove_prefix(1);
  return true;
}

bool take_date(std::string_view& text, DayAndTime& out) {
  const auto year = take_number(text, 4);
  if (!year || !take(text, '-')) return false;
  const auto month = take_number(text, 2);
  if (!month || !take(text, '-')) return false;
  const auto day = take_number(text, 2);
  if (!day || *year < 1900 || *year > 2199 || *month < 1 || *month > 12 || *day < 1 ||
      *day > days_in(*year, *month))
    return false;
  out.year = *year;
  out.month = *month;
  out.day = *day;
  return true;
}

bool take_time(std::string_view& text, DayAndTime& out) {
  // People type 9:30 as well as 09:30.
  const auto hour = take_number(text, text.size() > 1 && text[1] == ':' ? 1 : 2);
  if (!hour || !take(text, ':')) return false;
  const auto minute = take_number(text, 2);
  if (!minute || *hour > 23 || *minute > 59) return false;
  out.hour = *hour;
  out.minute = *minute;
  if (take(text, ':')) {
    const auto second = take_number(text, 2);
    if (!second || *second > 59) return false;
    out.second = *second;
  }
  return true;
}

std::unique_ptr<icu::TimeZone> zone_of(const std::string& name) {
  std::unique_ptr<icu::TimeZone> zone(icu::TimeZone::createTimeZone(icu::UnicodeString::fromUTF8(name)));
  if (*zone == icu::TimeZone::getUnknown()) zone.reset(icu::TimeZone::getGMT()->clone());
  return zone;
}

std::optional<UnixMs> moment_in(const DayAndTime& parts, const std::string& zone) {
  UErrorCode status = U_ZERO_ERROR;
  icu::GregorianCalendar calendar(zone_of(zone).release(), status);
  calendar.clear();
  calendar.set(parts.year, parts.month - 1, parts.day, parts.hour, parts.minute, parts.second);
  const UDate at = calendar.getTime(status);
  if (U_FAILURE(status)) return std::nullopt;
  return static_cast<UnixMs>(at);
}

/// The day that `at` falls on in the zone.
std::optional<DayAndTime> day_of(UnixMs at, const std::string& zone) {
  UErrorCode status = U_ZERO_ERROR;
  icu::GregorianCalendar calendar(zone_of(zone).release(), status);
  calendar.setTime(static_cast<UDate>(at), status);
  DayAndTime day;
  day.year = calendar.get(UCAL_YEAR, status);
  day.month = calendar.get(UCAL_MONTH, status) + 1;
  day.day = calendar.get(UCAL_DATE, status);
  if (U_FAILURE(status)) return std::nullopt;
  return day;
}

/// The next moment after `now` at which a clock in the zone shows the time.
std::optional<UnixMs> next_showing(const DayAndTime& time, const std::string& zone, UnixMs now) {
  for (const UnixMs later : {UnixMs{0}, kDay, 2 * kDay}) {
    auto day = day_of(now + later, zone);
    if (!day) return std::nullopt;
    day->hour = time.hour;
    day->minute = time.minute;
    day->second = time.second;
    const auto at = moment_in(*day, zone);
    if (!at || *at > now) return at;
  }
  return std::nullopt;
}

std::optional<UnixMs> minutes_from(std::string_view text, UnixMs now) {
  std::int64_t minutes = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), minutes);
  if (error != std::errc() || end != text.data() + text.size() || minutes < 0 || minutes > 60 * 24 * 60)
    return std::nullopt;
  return now + minutes * kMinute;
}

std::optional<UnixMs> read_moment(std::string_view text, const std::string& zone, UnixMs now) {
  if (take(text, '+')) return minutes_from(text, now);
  DayAndTime parts;
  if (text.size() > 4 && text[4] == '-') {
    if (!take_date(text, parts) || !(take(text, 'T') || take(text, ' ')) || !take_time(text, parts))
      return std::nullopt;
    if (text == "Z") return moment_in(parts, "Etc/UTC");
    return text.empty() ? moment_in(parts, zone) : std::nullopt;
  }
  if (!take_time(text, parts) || !text.empty()) return std::nullopt;
  return next_showing(parts, zone, now);
}

}  // namespace

std::string iso_utc(UnixMs at) {
  const auto seconds = static_cast<std::time_t>(at / 1000);
  std::tm parts{};
  char text[40];
  if (at < 0 || gmtime_r(&seconds, &parts) == nullptr ||
      std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &parts) == 0)
    return std::to_string(at);
  return text;
}

Outcome<UnixMs> moment_from(std::string_view text, const std::string& zone, UnixMs now) {
  if (const auto at = read_moment(text, zone, now)) return *at;
  return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 40)) + "\" is no time", "",
              "say 14:30, 2031-05-26T14:30, 2031-05-26T12:30Z, or +90 for minutes from now");
}

bool is_iso_date(std::string_view text) {
  DayAndTime parts;
  return take_date(text, parts) && text.empty();
}

bool is_time_zone(const std::string& zone) {
  const std::unique_ptr<icu::TimeZone> found(
      icu::TimeZone::createTimeZone(icu::UnicodeString::fromUTF8(zone)));
  return *found != icu::TimeZone::getUnknown();
}

}  // namespace weavelog
