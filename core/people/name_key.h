#pragma once
// A name made comparable: folded words, particles aside, with a rough sound of each, in every script and every
// name that a person is known by.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace weavelog {

/// One word of a folded name.
struct NameWord {
  std::string text;
  std::string sound;                  ///< see sound_of()
  std::string skeleton;               ///< see skeleton_of()
  std::uint32_t letters = 0;          ///< which letters occur: one edit changes at most two of these bits
  std::vector<std::uint16_t> groups;  ///< of name_groups.h: short forms of a given name, spellings of a family name
  bool operator==(const NameWord&) const = default;
};

/// One name ready for comparing. Particles (van, de, al, ...) are left out unless nothing else is there.
struct NameKey {
  std::vector<NameWord> family;
  std::vector<NameWord> given;
  /// Family and given run together both ways, particles included: scripts without spaces divide names
  /// differently from passports.
  std::vector<std::string> joined;
  bool unvowelled = false;  ///< out of a script that leaves vowels out: compare skeletons

  [[nodiscard]] bool empty() const { return joined.empty(); }
};

[[nodiscard]] NameKey name_key(std::string_view family, std::string_view given);
/// A whole name whose parts are not told: the last word is taken for the family name, in scripts without
/// spaces the first one. Which is which does not matter to compare_names().
[[nodiscard]] NameKey whole_name_key(std::string_view name);
/// "Family, Given", or a family name alone, which then goes with `given`.
[[nodiscard]] NameKey alias_key(std::string_view alias, std::string_view given);

/// A folded word with the usual differences of spelling between alphabets and passports levelled: MUELLER,
/// MÜLLER and MULLER, Yuliya, Iuliia and Julija each have one sound. Our own table; only for finding
/// candidates and for "sounds the same".
[[nodiscard]] std::string sound_of(std::string_view word);
/// A word without a particle that is written together with it ("vandermeyde": "meyde"), if enough is left.
[[nodiscard]] std::string_view without_joined_particle(std::string_view word);
/// The consonants of a sound; "" if there are none. What is left of a name in Arabic or Hebrew letters.
[[nodiscard]] std::string skeleton_of(std::string_view sound);

}  // namespace weavelog
