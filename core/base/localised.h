#pragma once
// Numbers, quantities and times as a person of a language reads them, with the decimals kept as spoken.

#include <memory>
#include <string>

#include "core/base/clock.h"
#include "core/base/language.h"
#include "core/base/units.h"

namespace weavelog {

/// A point in time with the zone it is told in.
struct Moment {
  enum class Form { time_of_day, day, day_and_time, day_year_and_time };

  UnixMs at = 0;
  std::string zone = "UTC";  ///< IANA name such as "Europe/Lisbon"; an unknown one is told in UTC
  Form form = Form::day_and_time;
};

/// With day and time, and with the year where it is not the one that a clock there shows at `now`.
[[nodiscard]] Moment moment_told(UnixMs at, const std::string& zone, UnixMs now);

/// "24,50" in German for 24.50.
[[nodiscard]] std::string localised(const Language& language, const Decimal& decimal);
/// "24,5 kg" with a no-break space (U+00A0) before the unit.
[[nodiscard]] std::string localised(const Language& language, const Quantity& quantity);
/// "14:05", "Di., 3. März", or both, with the year or without, by the language's customary order (Unicode CLDR).
[[nodiscard]] std::string localised(const Language& language, const Moment& moment);

/// The same for many moments of one zone and form: making it costs far more than using it.
class MomentWriter {
 public:
  MomentWriter(const Language& language, const std::string& zone, Moment::Form form);
  ~MomentWriter();
  MomentWriter(const MomentWriter&) = delete;
  MomentWriter& operator=(const MomentWriter&) = delete;

  [[nodiscard]] std::string operator()(UnixMs at) const;

 private:
  struct Format;
  std::unique_ptr<Format> format_;
};

}  // namespace weavelog
