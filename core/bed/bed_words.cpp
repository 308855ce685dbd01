#include "core/bed/bed_words.h"

#include <cmath>

namespace weavelog {

const Phrases& bed_words() {
  static const Phrases words({bed_phrases()});
  return words;
}

std::string advice_words(const Language& language, ToneDoubt doubt) {
  return doubt == ToneDoubt::none ? std::string() : bed_words().say(language, "tone." + std::string(name_of(doubt)));
}

std::string data_words(const Language& language, double from_data, std::size_t readings) {
  if (readings == 0) return bed_words().say(language, "figure.model");
  return bed_words().say(language, "figure.data",
                         {{"percent", Decimal::rounded(100 * from_data, 0)}, {"readings", static_cast<std::int64_t>(readings)}});
}

std::string level_words(const Language& language, const BedCorrection& correction) {
  std::string levels;
  for (const BedLevel& level : correction.levels) {
    const double percent = 100 * std::expm1(level.log);
    const Decimal tenths = Decimal::rounded(std::abs(percent), 1);
    levels += (levels.empty() ? "" : ", ") + bed_words().say(language, "level." + std::string(name_of(level.of)),
                                                             {{"sign", std::string(tenths.mantissa == 0 ? "" : percent < 0 ? "−" : "+")},
                                                              {"percent", tenths},
                                                              {"readings", static_cast<std::int64_t>(level.readings)}});
  }
  return levels.empty() ? levels : bed_words().say(language, "figure.levels", {{"levels", levels}});
}

std::string one_age_words(const Language& language, const ReadingAges& ages) {
  // All read at one age: nothing was moved, and nothing need be said.
  if (ages.known == 0 || (ages.unknown == 0 && ages.most_percent < 0.05)) return {};
  std::string out = bed_words().say(language, "ages.one",
                                    {{"readings", static_cast<std::int64_t>(ages.known)},
                                     {"mean", Decimal::rounded(ages.mean_percent, 1)},
                                     {"most", Decimal::rounded(ages.most_percent, 1)}});
  if (ages.unknown > 0) out += " " + bed_words().say(language, "ages.unknown", {{"readings", static_cast<std::int64_t>(ages.unknown)}});
  return out;
}

std::string age_words(const Language& language, const ReadingAges& ages) {
  std::string out;
  const auto add = [&](const char* phrase, const PhraseArgs& args) { out += (out.empty() ? "" : " ") + bed_words().say(language, phrase, args); };
  if (ages.known > 0) add("ages.known", {{"mean", Decimal::rounded(ages.mean_percent, 1)}, {"most", Decimal::rounded(ages.most_percent, 1)}});
  if (ages.unknown > 0) add("ages.unknown", {{"readings", static_cast<std::int64_t>(ages.unknown)}});
  if (ages.assumed > 0) add("ages.assumed", {});
  return out;
}

}  // namespace weavelog
