#pragma once
// What the code on a racket's tag says (as a barcode or a QR code; every character is in QR's alphanumeric set and in Code 128):
//
//   WL:<event>:<number>:<check>     WL:AS59RB:137:9
//
// `event` is six characters of Crockford's base 32 out of the event's book, `number` the tag's number in decimal without zeros before
// it, `check` one character by ISO/IEC 7064, MOD 37,36, over "WL", event and number (the colons left out). It names nobody: who finds a
// bag learns nothing about its player. Two events have the same six characters once in a thousand million pairs.

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/id.h"
#include "core/base/outcome.h"

namespace weavelog {

inline constexpr std::int64_t kHighestTagNumber = 999'999'999;

struct TagCode {
  std::string event;  ///< as event_short_id() gives it
  std::int64_t number = 0;
  bool operator==(const TagCode&) const = default;
};

/// The check character by ISO/IEC 7064, MOD 37,36, of a text of digits and upper-case letters; anything else in it is a broken
/// invariant.
[[nodiscard]] char check_character(std::string_view text);

/// Six characters for an event, the same on every device.
[[nodiscard]] std::string event_short_id(const BookId& event);

/// What is printed on the tag. Faults: bad_input (no event, a number below 1 or above kHighestTagNumber).
[[nodiscard]] Outcome<std::string> tag_code(const BookId& event, std::int64_t number);

/// True for what a scanner typed from a tag of ours, right or damaged: it begins with "WL" and something that is no letter or digit of
/// ASCII. So a name that somebody types is none.
[[nodiscard]] bool looks_like_tag_code(std::string_view text);

/// Reads a tag's code; spaces round it and lower case do not matter. Faults: bad_input (it is none, or the scanner types for another
/// keyboard), malformed (a part is missing or not as written, or the check character does not fit: a character was misread).
[[nodiscard]] Outcome<TagCode> tag_code_from(std::string_view text);

/// The number on a tag of this event. Faults: as above; refused (the tag is of another event).
[[nodiscard]] Outcome<std::int64_t> tag_number_from(std::string_view text, const BookId& event);

}  // namespace weavelog
