#pragma once
// What a bed says to people: phrases in core/bed/phrases, all four languages.

#include "core/base/phrases.h"
#include "core/bed/listen.h"

namespace weavelog {

/// Made by the build from core/bed/phrases.
[[nodiscard]] std::span<const PhraseText> bed_phrases();
[[nodiscard]] const Phrases& bed_words();

/// Why there is no tone and what to do, one or two sentences; "" if there is one.
[[nodiscard]] std::string advice_words(const Language& language, ToneDoubt doubt);
/// How much of a figure is own data.
[[nodiscard]] std::string data_words(const Language& language, double from_data, std::size_t readings);

}  // namespace weavelog
