#include "sync/cli/told_times.h"

#include "core/base/local_time.h"
#include "core/base/localised.h"

namespace weavelog::cli {

struct ToldTimes::Clock {
  MomentWriter this_year, other_year, time;
};

ToldTimes::ToldTimes(Context& context, const Language& language) : context_(context), language_(language), now_(context.now()) {}
ToldTimes::ToldTimes(Context& context) : ToldTimes(context, context.language()) {}
ToldTimes::~ToldTimes() = default;

const std::string& ToldTimes::zone_at(const BookId& event) {
  auto zone = zones_.find(event);
  if (zone == zones_.end()) {
    const BookId meant = event ? event : context_.event().value_or(BookId{});
    zone = zones_.emplace(event, meant ? context_.zone_of(meant) : "UTC").first;
  }
  return zone->second;
}

ToldTimes::Clock& ToldTimes::clock_of(const std::string& zone) {
  auto& clock = clocks_[zone];
  if (!clock)
    clock.reset(new Clock{MomentWriter(language_, zone, Moment::Form::day_and_time), MomentWriter(language_, zone, Moment::Form::day_year_and_time),
                          MomentWriter(language_, zone, Moment::Form::time_of_day)});
  return *clock;
}

std::string ToldTimes::operator()(UnixMs at, const BookId& event) {
  const std::string& zone = zone_at(event);
  const bool far = moment_told(at, zone, now_).form == Moment::Form::day_year_and_time;
  return (far ? clock_of(zone).other_year : clock_of(zone).this_year)(at) + (zone == "UTC" ? " UTC" : "");
}

std::string ToldTimes::today(UnixMs at, const BookId& event) {
  const std::string& zone = zone_at(event);
  const LocalTime local(zone);
  if (local.day_of(at) != local.day_of(now_)) return (*this)(at, event);
  return clock_of(zone).time(at) + (zone == "UTC" ? " UTC" : "");
}

}  // namespace weavelog::cli
