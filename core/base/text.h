#pragma once
// Names of the world: normal form, search keys, Latin forms, sort order, and cutting without breaking a
// character.
//
// Text from outside passes clean_text() once. The other functions never fail: a byte that is not UTF-8 counts
// as U+FFFD. All may be called from any thread. Standards: Unicode UAX 15 (normal forms), UAX 29 (what a
// reader takes for one character), UTS 10 (sort order); ICAO Doc 9303-3, section 6, for Cyrillic letters as
// passports spell them.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/bytes.h"
#include "core/base/language.h"
#include "core/base/outcome.h"

namespace weavelog {

/// Valid UTF-8 in normal form C without space or control characters at either end. A fault names the byte
/// offset.
[[nodiscard]] Outcome<std::string> clean_text(std::string_view text, std::string where = {});

/// For search: case, diacritics, stroke letters, compatibility forms, apostrophes and script folded away,
/// words parted by one space. "Łuć-Đin O’Neß" and "luc din oness" have one key; 王小明 has "wang xiao ming"
/// (Han is read as Mandarin).
[[nodiscard]] std::string search_key(std::string_view text);
/// The words of a search key, as parts of it.
[[nodiscard]] std::vector<std::string_view> words_of(std::string_view key);
/// In unaccented Latin letters with case kept, for labels and people who can't read the script: "Юлия" gives
/// "Iuliia". What has no Latin form stays.
[[nodiscard]] std::string to_latin(std::string_view text);
/// Compares as the language sorts, other scripts among the Latin names by their Latin form. Only for
/// comparing with keys made by the same ICU version: keep it in what can be rebuilt.
[[nodiscard]] Bytes sort_key(const Language& language, std::string_view text);

/// At most `max` characters as a reader counts them, the last one "…" if something was cut off.
[[nodiscard]] std::string shortened(std::string_view text, std::size_t max);
/// Nothing to see: only spaces, control and invisible characters, or nothing at all.
[[nodiscard]] bool is_blank(std::string_view text);
/// Without spaces and control characters at either end. A part of the same text.
[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace weavelog
