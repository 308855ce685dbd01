#pragma once
// Is that name meant by what was typed of it?

#include <algorithm>
#include <string_view>

#include "core/base/text.h"

namespace weavelog {

/// True where every typed word begins a word of the name, in any order; both as search_key() folds. Nothing typed finds everybody.
[[nodiscard]] inline bool name_found(std::string_view name, std::string_view typed) {
  const auto words = words_of(name), wanted = words_of(typed);
  return std::all_of(wanted.begin(), wanted.end(), [&](std::string_view one) {
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) { return word.starts_with(one); });
  });
}

}  // namespace weavelog
