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

}  // namespace weavelog
