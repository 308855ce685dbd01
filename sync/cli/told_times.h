#pragma once
// Times in lines for people: as a clock at the event shows them. JSON documents have UTC (core/base/iso_time.h).

#include <map>
#include <memory>
#include <string>

#include "sync/cli/context.h"

namespace weavelog::cli {

/// Day and time, with the year where it is not this one. Where the event says no zone, or is not held here, in UTC, which is then said.
class ToldTimes {
 public:
  ToldTimes(Context& context, const Language& language);
  /// In the language of who types.
  explicit ToldTimes(Context& context);
  ~ToldTimes();
  ToldTimes(const ToldTimes&) = delete;
  ToldTimes& operator=(const ToldTimes&) = delete;

  /// As at that event; none: as at the one in use.
  [[nodiscard]] std::string operator()(UnixMs at, const BookId& event = {});
  /// Where it is the same day there as now only the time of day: for a plan, whose times are nearly all of today.
  [[nodiscard]] std::string today(UnixMs at, const BookId& event = {});

 private:
  struct Clock;
  /// The zone of that event.
  const std::string& zone_at(const BookId& event);
  Clock& clock_of(const std::string& zone);

  Context& context_;
  Language language_;
  UnixMs now_;
  std::map<BookId, std::string> zones_;
  std::map<std::string, std::unique_ptr<Clock>> clocks_;
};

}  // namespace weavelog::cli
