#pragma once
// Days and hours as a clock on the wall of a place shows them, for many moments at once.

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "core/base/clock.h"

namespace weavelog {

inline constexpr UnixMs kMinuteMs = 60'000, kHourMs = 60 * kMinuteMs;

/// One time zone (IANA name; an unknown one counts as UTC). Not thread-safe.
class LocalTime {
 public:
  explicit LocalTime(const std::string& zone);
  ~LocalTime();
  LocalTime(LocalTime&&) noexcept;
  LocalTime& operator=(LocalTime&&) noexcept;

  /// Days since 1970-01-01 of the date that the place has then.
  [[nodiscard]] std::int64_t day_of(UnixMs at) const;
  /// 0 to 23.
  [[nodiscard]] int hour_of(UnixMs at) const;
  /// When that day begins there; where clocks skip midnight, the first moment that is.
  [[nodiscard]] UnixMs begin_of(std::int64_t day) const;

 private:
  struct Zone;
  [[nodiscard]] std::int64_t wall_ms(UnixMs at) const;
  std::unique_ptr<Zone> zone_;
};

/// "2031-05-26" for days since 1970-01-01.
[[nodiscard]] std::string date_text(std::int64_t day);
/// The way back. Nothing where it is no day that exists.
[[nodiscard]] std::optional<std::int64_t> day_from(const std::string& date);

}  // namespace weavelog
