#include "core/desk/tag_code.h"

#include <charconv>
#include <stdexcept>
#include <vector>

#include "core/base/digest.h"
#include "core/base/text.h"

namespace weavelog {
namespace {

constexpr std::string_view kCrockford = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::string_view kMark = "WL";
constexpr std::size_t kTagEventCharacters = 6;
/// Longer than any code of ours: what a scanner types from somebody else's label is not looked at any further.
constexpr std::size_t kLongest = 64;

/// ASCII only, whatever the locale.
char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return c >= 'A' && c <= 'Z'; }

tl::unexpected<Fault> misread(std::string what) {
  return fail(FaultCode::malformed, std::move(what), {}, "scan it again, or type the number that stands on the tag");
}

}  // namespace

char check_character(std::string_view text) {
  // ISO/IEC 7064, hybrid system MOD 37,36: the product starts at 36; a sum that is 0 modulo 36 counts as 36.
  int product = 36;
  for (const char c : text) {
    if (!is_digit(c) && !is_letter(c)) throw std::logic_error("a check character is over digits and upper-case letters only");
    const int value = is_digit(c) ? c - '0' : c - 'A' + 10;
    const int sum = (product + value) % 36;
    product = (sum == 0 ? 36 : sum) * 2 % 37;
  }
  const int check = (37 - product) % 36;
  return static_cast<char>(check < 10 ? '0' + check : 'A' + check - 10);
}

std::string event_short_id(const BookId& event) {
  const Digest digest = digest_of({as_bytes("weavelog tag event 1"), event.view()});
  const std::uint32_t bits = (std::uint32_t{digest[0]} << 24 | std::uint32_t{digest[1]} << 16 | std::uint32_t{digest[2]} << 8 | digest[3]) >> 2;
  std::string out;
  for (std::size_t i = 0; i < kTagEventCharacters; ++i) out += kCrockford[bits >> (5 * (kTagEventCharacters - 1 - i)) & 31U];
  return out;
}

Outcome<std::string> tag_code(const BookId& event, std::int64_t number) {
  if (!event) return fail(FaultCode::bad_input, "a tag needs an event", {}, "choose today's event");
  if (number < 1 || number > kHighestTagNumber)
    return fail(FaultCode::bad_input, "a tag's number is from 1 to " + std::to_string(kHighestTagNumber), std::to_string(number));
  const std::string id = event_short_id(event);
  const std::string digits = std::to_string(number);
  std::string out(kMark);
  const char check = check_character(out + id + digits);
  return out + ':' + id + ':' + digits + ':' + check;
}

bool looks_like_tag_code(std::string_view text) {
  const std::string_view code = trimmed(text);
  if (code.size() <= kMark.size() || upper(code[0]) != kMark[0] || upper(code[1]) != kMark[1]) return false;
  const char next = upper(code[2]);
  return !is_digit(next) && !is_letter(next) && next != ' ';
}

Outcome<TagCode> tag_code_from(std::string_view text) {
  const std::string_view typed = trimmed(text);
  if (!looks_like_tag_code(typed) || typed.size() > kLongest)
    return fail(FaultCode::bad_input, "this is no code of a tag", {}, "scan the tag, or type the number that stands on it");
  if (typed[kMark.size()] != ':')
    return fail(FaultCode::bad_input, "the scanner types for another keyboard", {},
                "set the scanner to the keyboard that this device is set to");
  std::vector<std::string> parts(1);
  for (const char c : typed) {
    if (c == ':')
      parts.emplace_back();
    else
      parts.back() += upper(c);
  }
  if (parts.size() != 4 || parts[1].size() != kTagEventCharacters || parts[3].size() != 1) return misread("a part of the tag's code is missing");
  TagCode out{std::move(parts[1]), 0};
  for (const char c : out.event)
    if (kCrockford.find(c) == std::string_view::npos) return misread("the event in the tag's code is not as written");
  const std::string& digits = parts[2];
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), out.number);
  if (error != std::errc{} || end != digits.data() + digits.size() || !is_digit(digits[0]) || digits[0] == '0' || out.number > kHighestTagNumber)
    return misread("the number in the tag's code is not as written");
  if (check_character(parts[0] + out.event + digits) != parts[3][0]) return misread("the tag's code does not add up");
  return out;
}

Outcome<std::int64_t> tag_number_from(std::string_view text, const BookId& event) {
  auto code = tag_code_from(text);
  if (!code) return fail(std::move(code.error()));
  if (code->event != event_short_id(event))
    return fail(FaultCode::refused, "this tag is of another event", code->event, "find the racket by its player's name");
  return code->number;
}

}  // namespace weavelog
