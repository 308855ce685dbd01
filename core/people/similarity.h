#pragma once
// How alike two short texts are. Byte by byte: give folded text (search_key). Quadratic in length, so not for
// long texts.

#include <cstddef>
#include <string_view>

namespace weavelog {

/// Jaro (1989): from 0 (nothing in common) to 1 (equal); two empty texts are equal.
[[nodiscard]] double jaro(std::string_view a, std::string_view b);
/// Jaro-Winkler (Winkler 1990): prefix of at most 4, scaling 0.1, at every Jaro value.
[[nodiscard]] double jaro_winkler(std::string_view a, std::string_view b);
/// True Damerau-Levenshtein distance: insertions, deletions, substitutions and swaps of neighbours, also
/// around later edits.
[[nodiscard]] std::size_t damerau_levenshtein(std::string_view a, std::string_view b);

}  // namespace weavelog
