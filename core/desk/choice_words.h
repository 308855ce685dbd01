#pragma once
// A stored choice in words.

#include <string>
#include <string_view>

#include "core/desk/phrases.h"
#include "core/model/choices.h"

namespace weavelog {

/// By its phrase, "remedy." and the choice's name. A number of a newer version has neither name nor phrase and is told as such.
template <class Enum>
[[nodiscard]] std::string choice_words(const Language& language, std::string_view prefix, Enum choice) {
  const std::string key = std::string(prefix) + std::string(name_of_choice(choice));
  return desk_words().say(language, desk_words().has(key) ? key : "value.newer");
}

}  // namespace weavelog
