#pragma once
// Names that go for each other: short forms of given names, and spellings of one family name in Latin letters.

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace weavelog {

/// Groups of folded words; a word may be in several ("sasha": Alexander and Alexandra).
class NameGroups {
 public:
  /// One group a line, words parted by one space.
  explicit NameGroups(std::span<const std::string_view> lines);
  /// Numbers of its groups, ascending; none if it is in none.
  [[nodiscard]] std::vector<std::uint16_t> of(std::string_view word) const;

 private:
  std::unordered_map<std::string_view, std::vector<std::uint16_t>> groups_;
};

/// Given names with their common short forms and their forms in neighbouring languages (from memory).
[[nodiscard]] const NameGroups& given_short_forms();
/// Family names that passports spell in several ways, from Chinese and Korean above all (from memory).
[[nodiscard]] const NameGroups& family_spellings();

}  // namespace weavelog
