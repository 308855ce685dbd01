#pragma once
// How alike two names are, part by part, whatever their order.

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/people/name_key.h"

namespace weavelog {

/// Of family or given names. The order is that of the tables of weights.
enum class NameLevel : std::uint8_t {
  same,        ///< letter for letter once folded
  sound,       ///< another spelling of one sound, or the same consonants where a script leaves vowels out
  short_form,  ///< a usual short form of a given name
  slip,        ///< a letter or two off in a long word
  slip_short,  ///< a letter off in a word so short that others are as near
  part,        ///< one of a double name
  initial,     ///< an initial of the given name
  different,
};
inline constexpr std::size_t kNameLevels = 8;

struct NameLikeness {
  bool said = false;  ///< false: one side has no name
  NameLevel family = NameLevel::different;
  bool given_said = false;
  NameLevel given = NameLevel::different;
  bool swapped = false;  ///< family and given changed places
  bool alias = false;    ///< not by the first names of both
  /// The words of the second name that agreed: what is as frequent as they are is as weak.
  const NameWord* family_word = nullptr;
  const NameWord* given_word = nullptr;

  /// For choosing among names and orders only.
  [[nodiscard]] int rank() const;
};

/// The likest of all names of either side. The words pointed at belong to `b`.
[[nodiscard]] NameLikeness compare_names(const std::vector<NameKey>& a, const std::vector<NameKey>& b);
/// How two words of a family name agree: same, sound, slip, slip_short or different.
[[nodiscard]] NameLevel compare_words(const NameWord& a, const NameWord& b, bool unvowelled = false);

}  // namespace weavelog
