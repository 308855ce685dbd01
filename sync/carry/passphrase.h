#pragma once
// How hard a passphrase is to guess, roughly: for a word to a person who types one. Who has the file can try as often as he likes.

#include <string_view>

namespace weavelog {

enum class PassphraseStrength {
  too_short,  ///< fewer characters than kShortestPassphrase: refused
  weak,       ///< a patient person or a small program finds it
  fair,       ///< keeps a finder out
  strong,     ///< keeps everybody out
};

/// Bits that somebody has to guess who knows how people make them: repeated and neighbouring characters ("aaaa", "1234", "qwert") and
/// repeated words count little, four or more words about ten bits each. A rough guess, from above for words of a sentence.
[[nodiscard]] double passphrase_bits(std::string_view words);
[[nodiscard]] PassphraseStrength passphrase_strength(std::string_view words);

}  // namespace weavelog
