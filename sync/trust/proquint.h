#pragma once
// Bytes as words that can be said aloud: proquints (Wilkerson 2009, arXiv:0901.4016). Sixteen bits make one
// word of five letters, consonant-vowel-consonant-vowel-consonant.

#include <string>
#include <string_view>

#include "core/base/bytes.h"
#include "core/base/digest.h"
#include "core/base/outcome.h"

namespace weavelog {

/// "lusab-babad" for 7f 00 00 01. Throws std::logic_error on an odd number of bytes.
[[nodiscard]] std::string to_proquints(ByteView bytes);

/// Reads words back, whatever their case, parted by spaces, dashes, dots, commas or not at all. At most 1 KiB
/// of text. Fault: bad_input, naming the word and letter that is wrong. No text gives no bytes.
[[nodiscard]] Outcome<Bytes> from_proquints(std::string_view text);

/// Three words that two devices show after an exchange: the same exactly if the digests of their common books
/// are the same (by chance otherwise once in 2^48).
[[nodiscard]] std::string agreement_words(const Digest& digest);

/// The first eight bytes of a certificate's fingerprint as four words, to compare by eye. No proof: that is the pin.
[[nodiscard]] std::string fingerprint_words(ByteView fingerprint);

}  // namespace weavelog
