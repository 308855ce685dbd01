#pragma once
// A name made comparable: folded words without order, particles aside, with a rough sound of each, in every
// script given.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace weavelog {

/// One word of a folded name.
struct NameWord {
  std::string text;
  std::string sound;          ///< see sound_of()
  std::uint32_t letters = 0;  ///< which letters occur: one edit changes at most two of these bits
  bool operator==(const NameWord&) const = default;
};

/// A person's name ready for comparing. Particles (van, de, al, ...) are left out unless nothing else is
/// there.
struct NameKey {
  std::vector<NameWord> family;
  std::vector<NameWord> given;
  std::vector<std::string> sorted_words;  ///< of family and given together
  /// Family and given run together both ways, and the native name in Latin letters: scripts without spaces
  /// divide names differently from passports.
  std::vector<std::string> joined;

  [[nodiscard]] bool empty() const { return joined.empty(); }
};

[[nodiscard]] NameKey name_key(std::string_view family, std::string_view given, std::string_view native = {});

/// A folded word with the usual differences of spelling between alphabets and passports levelled: MUELLER,
/// MÜLLER and MULLER, Yuliya, Iuliia and Julija each have one sound. Our own table; only for finding
/// candidates and for "nearly the same".
[[nodiscard]] std::string sound_of(std::string_view word);

}  // namespace weavelog
