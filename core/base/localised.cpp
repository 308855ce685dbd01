#include "core/base/localised.h"

#include <unicode/datefmt.h>
#include <unicode/locid.h>
#include <unicode/numberformatter.h>
#include <unicode/timezone.h>

#include <memory>
#include <stdexcept>

#include "core/base/icu_text.h"
#include "core/base/local_time.h"

namespace weavelog {
namespace {

constexpr std::string_view kNoBreakSpace = "\xC2\xA0";

icu::Locale locale_of(const Language& language) {
  UErrorCode status = U_ZERO_ERROR;
  return icu::Locale::forLanguageTag(language.tag(), status);
}

const char* skeleton_of(Moment::Form form) {
  switch (form) {
    case Moment::Form::time_of_day:
      return "jm";
    case Moment::Form::day:
      return "EEEMMMd";
    case Moment::Form::day_and_time:
      return "EEEMMMdjm";
    case Moment::Form::day_year_and_time:
      return "yEEEMMMdjm";
  }
  throw std::logic_error("unknown form of a moment");
}

}  // namespace

Moment moment_told(UnixMs at, const std::string& zone, UnixMs now) {
  const LocalTime clock(zone);
  const auto year = [&](UnixMs moment) { return date_text(clock.day_of(moment)).substr(0, 4); };
  return {at, zone, year(at) == year(now) ? Moment::Form::day_and_time : Moment::Form::day_year_and_time};
}

std::string localised(const Language& language, const Decimal& decimal) {
  UErrorCode status = U_ZERO_ERROR;
  const auto text = icu::number::NumberFormatter::withLocale(locale_of(language))
                        .precision(icu::number::Precision::fixedFraction(decimal.scale))
                        .formatDecimal(decimal.text(), status)
                        .toString(status);
  must(status, "formatting a number");
  return to_utf8(text);
}

std::string localised(const Language& language, const Quantity& quantity) {
  std::string out = localised(language, quantity.amount);
  if (quantity.unit != Unit::none) out.append(kNoBreakSpace).append(symbol_of(quantity.unit));
  return out;
}

struct MomentWriter::Format {
  std::unique_ptr<icu::DateFormat> icu;
};

MomentWriter::MomentWriter(const Language& language, const std::string& zone, Moment::Form form)
    : format_(std::make_unique<Format>()) {
  UErrorCode status = U_ZERO_ERROR;
  format_->icu.reset(icu::DateFormat::createInstanceForSkeleton(skeleton_of(form), locale_of(language), status));
  must(status, "making a date format");
  std::unique_ptr<icu::TimeZone> told_in(icu::TimeZone::createTimeZone(icu::UnicodeString::fromUTF8(zone)));
  if (*told_in == icu::TimeZone::getUnknown()) told_in.reset(icu::TimeZone::getGMT()->clone());
  format_->icu->adoptTimeZone(told_in.release());
}
MomentWriter::~MomentWriter() = default;

std::string MomentWriter::operator()(UnixMs at) const {
  icu::UnicodeString text;
  format_->icu->format(static_cast<UDate>(at), text);
  return to_utf8(text);
}

std::string localised(const Language& language, const Moment& moment) {
  return MomentWriter(language, moment.zone, moment.form)(moment.at);
}

}  // namespace weavelog
