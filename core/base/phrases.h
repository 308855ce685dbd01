#pragma once
// Phrases: sentences for people, by ICU MessageFormat, from translation files. Code never glues a sentence
// together.
//
// Files: a folder `phrases` beside the room that speaks, one file a language (en.json): {"key": "pattern"}.
// The build embeds each core/ROOM/phrases as a function `ROOM_phrases()` (core/base/embed_phrases.cmake); the
// room declares it in a header. In a pattern, {name} is an argument, {n, plural, one {# racket} other {#
// rackets}} and {g, select, ...} choose. An ASCII apostrophe before a brace quotes it, so write ’ (U+2019) in
// texts.

#include <cstdint>
#include <initializer_list>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/language.h"
#include "core/base/localised.h"

namespace weavelog {

/// One line of a translation file. The views must live as long as the program (the build makes them
/// literals).
struct PhraseText {
  std::string_view language;
  std::string_view key;
  std::string_view pattern;
};

/// What a pattern's argument is filled with. Decimals, quantities and moments come in the language's form; an
/// integer can drive a plural, a text a select.
using PhraseArg = std::variant<std::string, std::int64_t, Decimal, Quantity, Moment>;
using PhraseArgs = std::vector<std::pair<std::string_view, PhraseArg>>;

/// All phrases of one room or more. Immutable, so any number of threads may use one.
class Phrases {
 public:
  /// Throws std::logic_error on a pattern that ICU cannot read, a doubled key, or a language tag that is
  /// none.
  explicit Phrases(std::initializer_list<std::span<const PhraseText>> texts);
  ~Phrases();
  Phrases(Phrases&&) noexcept;
  Phrases& operator=(Phrases&&) noexcept;

  /// The sentence. A language without phrases gets English. Throws std::logic_error, naming key and argument,
  /// if the key or an argument of the pattern is missing; arguments that the pattern does not use are let be.
  [[nodiscard]] std::string say(const Language& language, std::string_view key,
                                const PhraseArgs& args = {}) const;

  [[nodiscard]] bool has(std::string_view key) const;
  /// Ordered by tag.
  [[nodiscard]] std::vector<Language> languages() const;
  /// What is missing where: a key that one language lacks, or arguments that differ between languages. Empty
  /// in a complete set; each room's tests require that.
  [[nodiscard]] std::vector<std::string> gaps() const;

 private:
  struct Tables;
  std::unique_ptr<const Tables> tables_;
};

}  // namespace weavelog
