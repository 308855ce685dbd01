#pragma once
// What a bed says to people: phrases in core/bed/phrases, all four languages.

#include "core/base/phrases.h"
#include "core/bed/corrections.h"
#include "core/bed/listen.h"

namespace weavelog {

/// Made by the build from core/bed/phrases.
[[nodiscard]] std::span<const PhraseText> bed_phrases();
[[nodiscard]] const Phrases& bed_words();

/// Why there is no tone and what to do, one or two sentences; "" if there is one.
[[nodiscard]] std::string advice_words(const Language& language, ToneDoubt doubt);
/// How much of a figure is own data.
[[nodiscard]] std::string data_words(const Language& language, double from_data, std::size_t readings);
/// What readings of all rackets, of the model, the racket, the string and the material say, one by one; "" where there are none.
[[nodiscard]] std::string level_words(const Language& language, const BedCorrection& correction);
/// What was done about the readings' time since stringing; "" where there are none.
[[nodiscard]] std::string age_words(const Language& language, const ReadingAges& ages);
/// The same of readings that were brought to one age (core/bed/one_age.h); "" where nobody told any.
[[nodiscard]] std::string one_age_words(const Language& language, const ReadingAges& ages);

}  // namespace weavelog
