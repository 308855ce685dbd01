#include "sync/cli/told_times.h"

#include "core/base/localised.h"

namespace weavelog::cli {

struct ToldTimes::Clock {
  MomentWriter this_year, other_year;
};

ToldTimes::ToldTimes(Context& context, const Language& language) : context_(context), language_(language), now_(context.now()) {}
ToldTimes::ToldTimes(Context& context) : ToldTimes(context, context.language()) {}
ToldTimes::~ToldTimes() = default;

ToldTimes::Clock& ToldTimes::clock_of(const BookId& event) {
  auto zone = zones_.find(event);
  if (zone == zones_.end()) {
    const BookId meant = event ? event : context_.event().value_or(BookId{});
    zone = zones_.emplace(event, meant ? context_.zone_of(meant) : "UTC").first;
  }
  auto& clock = clocks_[zone->second];
  if (!clock)
    clock.reset(new Clock{MomentWriter(language_, zone->second, Moment::Form::day_and_time),
                          MomentWriter(language_, zone->second, Moment::Form::day_year_and_time)});
  return *clock;
}

std::string ToldTimes::operator()(UnixMs at, const BookId& event) {
  Clock& clock = clock_of(event);
  const std::string& zone = zones_.at(event);
  const bool far = moment_told(at, zone, now_).form == Moment::Form::day_year_and_time;
  return (far ? clock.other_year : clock.this_year)(at) + (zone == "UTC" ? " UTC" : "");
}

}  // namespace weavelog::cli
