#pragma once
// What the desk says to players and stringers, in English, French, Spanish and German: phrases/*.json.

#include <span>
#include <string>
#include <string_view>

#include "core/base/phrases.h"
#include "core/log/value.h"

namespace weavelog {

/// The lines of phrases/*.json, embedded by the build.
[[nodiscard]] std::span<const PhraseText> desk_phrases();
/// The same, read; made once.
[[nodiscard]] const Phrases& desk_words();

/// "mains tension"; the registry's own name where there is no phrase for it.
[[nodiscard]] std::string field_words(const Language& language, std::string_view field);
/// A field's value as a person reads it: a quantity with the language's decimal sign, a choice by its word,
/// "not said".
[[nodiscard]] std::string value_words(const Language& language, std::string_view field, const Value& value);

/// A setup's name as a person reads it: one of those that every room has ("=day", "=night", "=new_balls", "=usual") in their language, any
/// other as the player gave it.
[[nodiscard]] std::string setup_words(const Language& language, std::string_view name);

}  // namespace weavelog
