// What a scanner types, and what a browser says on the languages of whoever looks at the board.

#include <algorithm>

#include "core/desk/tag_code.h"
#include "sync/net/preferred_language.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

void scan(std::string_view text) {
  const auto code = tag_code_from(text);
  const auto number = tag_number_from(text, book_of(0));
  must_hold(code.has_value() || !number, "a number is read off what is no tag");
  if (!code) {
    must_hold(!code.error().what.empty(), "a fault without words");
    return;
  }
  must_hold(code->number >= 1 && code->number <= kHighestTagNumber, "a number that no tag has");
  must_hold(code->event.size() == 6, "an event of another length");
  must_hold(number.has_value() == (code->event == event_short_id(book_of(0))), "a tag of another event is taken, or one of this is not");
  const std::string plain = "WL" + code->event + std::to_string(code->number);
  const std::string again = "WL:" + code->event + ':' + std::to_string(code->number) + ':' + check_character(plain);
  const auto again_read = tag_code_from(again);
  must_hold(looks_like_tag_code(again) && again_read && *again_read == *code, "a tag's code does not survive being printed again");
  if (number) must_hold(tag_code(book_of(0), *number).value_or("") == again, "a tag of this event is printed otherwise");
  note_reached("tag: one is read");
}

}  // namespace

/// As it came, or what stands before the check character, which is then made right.
void run_tag(ByteView input) {
  if (input.empty()) return;
  const std::string text(as_text(input.subspan(1)));
  (void)looks_like_tag_code(text);
  if ((input[0] & 1) == 0) return scan(text);
  std::string plain;
  for (const char c : text)
    if ((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z')) plain += c;
  scan("WL:" + text + ":" + check_character("WL" + plain));
}

std::vector<Bytes> seeds_tag() {
  const std::string code = tag_code(book_of(0), 137).value_or(""), other = tag_code(book_of(1), kHighestTagNumber).value_or("");
  std::string lower = ' ' + code + "\r\n";
  std::transform(lower.begin(), lower.end(), lower.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  std::vector<Bytes> out;
  for (const std::string& text : {code, other, lower, std::string("WL;AS59RB;137;9"), std::string("WLASR")}) {
    Bytes one{0};
    one.insert(one.end(), text.begin(), text.end());
    out.push_back(std::move(one));
  }
  Bytes body{1};
  const std::string said = code.substr(3, code.size() - 5);
  body.insert(body.end(), said.begin(), said.end());
  out.push_back(std::move(body));
  return out;
}

void run_languages(ByteView input) {
  static const std::vector<Language> all = [] {
    std::vector<Language> out;
    for (const char* tag : {"en", "de", "fr", "es"}) out.push_back(Language::from(tag).value_or(Language()));
    return out;
  }();
  const std::string said(as_text(input));
  const std::size_t chosen = preferred_language(said, all);
  must_hold(chosen < all.size(), "a language that there is none of");
  if (chosen != 0) {
    note_reached("languages: another than the first");
    std::string lower = said;
    std::transform(lower.begin(), lower.end(), lower.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    must_hold(lower.find(all[chosen].base()) != std::string::npos, "a language that nobody named");
    must_hold(preferred_language(lower, all) == chosen, "capitals change which language is preferred");
  }
  must_hold(preferred_language(said, {all[chosen]}) == 0, "a language that there is none of, of one");
}

std::vector<Bytes> seeds_languages() {
  std::vector<Bytes> out;
  for (const std::string text : {"de", "fr-CH, fr;q=0.9, en;q=0.8, de;q=0.7, *;q=0.5", "ES;q=1.000", "da, en-gb;q=0.8, en;q=0.7", "*",
                                 "de;q=2, fr;q=0.001;x=y", "en;q=0, es;q=\"0.5\", ,, de"})
    out.emplace_back(text.begin(), text.end());
  return out;
}

}  // namespace weavelog::fuzz
