#include "core/base/language.h"

#include <unicode/bytestream.h>
#include <unicode/locid.h>
#include <unicode/unistr.h>

#include <algorithm>

namespace weavelog {

std::optional<Language> Language::from(std::string_view tag) {
  if (tag.empty() || tag.size() > 35) return std::nullopt;
  std::string hyphened(tag);
  std::replace(hyphened.begin(), hyphened.end(), '_', '-');
  UErrorCode status = U_ZERO_ERROR;
  const auto locale = icu::Locale::forLanguageTag(hyphened, status);
  if (U_FAILURE(status) || locale.isBogus()) return std::nullopt;
  std::string canonical;
  icu::StringByteSink<std::string> sink(&canonical);
  locale.toLanguageTag(sink, status);
  if (U_FAILURE(status)) return std::nullopt;
  Language out;
  out.tag_ = canonical;
  if (out.base().size() < 2 || out.base().size() > 3 || out.base() == "und") return std::nullopt;
  return out;
}

std::string Language::own_name() const {
  UErrorCode status = U_ZERO_ERROR;
  const auto locale = icu::Locale::forLanguageTag(tag_, status);
  icu::UnicodeString name;
  locale.getDisplayLanguage(locale, name);
  std::string out;
  return name.toUTF8String(out);
}

}  // namespace weavelog
