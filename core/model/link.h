#pragma once
// By what two books are known to be one person's, and by what else that person is called. Parts of the player's book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// What was said of this book and another one. Each of the two holds one, with an id that follows from both, so that either tells of the other
/// wherever it comes alone. Two answers given apart are a question.
struct BookLink {
  BookId other;
  LinkSaid said = LinkSaid::unsaid;
  std::optional<std::int64_t> at;
  std::string by;
  bool operator==(const BookLink&) const = default;
};

struct OtherName {
  std::string family_name;
  std::string given_name;
  std::string native_name;
  NameWhy why = NameWhy::unsaid;
  std::optional<std::int64_t> at;
  std::string by;
  bool operator==(const OtherName&) const = default;
};

inline constexpr auto kBookLinkFields = std::to_array<Field<BookLink>>({
    {1, "other", &BookLink::other},
    {2, "said", &BookLink::said, true},
    {3, "at", &BookLink::at},
    {4, "by", &BookLink::by},
});
template <>
struct Described<BookLink> {
  static constexpr EntityKind kind = kBookLink;
  static constexpr std::uint32_t base = 1300;
  static constexpr std::span<const Field<BookLink>> table = kBookLinkFields;
};

inline constexpr auto kOtherNameFields = std::to_array<Field<OtherName>>({
    {1, "family_name", &OtherName::family_name},
    {2, "given_name", &OtherName::given_name},
    {3, "native_name", &OtherName::native_name},
    {4, "why", &OtherName::why},
    {5, "at", &OtherName::at},
    {6, "by", &OtherName::by},
});
template <>
struct Described<OtherName> {
  static constexpr EntityKind kind = kOtherName;
  static constexpr std::uint32_t base = 1400;
  static constexpr std::span<const Field<OtherName>> table = kOtherNameFields;
};

}  // namespace weavelog
