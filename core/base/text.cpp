#include "core/base/text.h"

#include <unicode/brkiter.h>
#include <unicode/coll.h>
#include <unicode/normalizer2.h>
#include <unicode/translit.h>
#include <unicode/uchar.h>
#include <unicode/utf8.h>

#include <algorithm>
#include <map>
#include <memory>
#include <mutex>
#include <stdexcept>

#include "core/base/icu_text.h"
#include "core/base/utf8.h"

namespace weavelog {
namespace {

icu::UnicodeString to_utf16(std::string_view text) {
  return icu::UnicodeString::fromUTF8(icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
}

bool is_ascii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

// Cyrillic as ICAO Doc 9303-3, section 6.B, spells it (so that a name meets its owner's passport), all else
// as ICU does. A capital that needs several letters has only the first one large unless another capital
// follows.
constexpr const char16_t* kToLatinRules =
    u":: NFC;"
    u"А>A; Б>B; В>V; Г>G; Ґ>G; Ѓ>G; Д>D; Ђ>D; Е>E; Ё>E; З>Z; И>I; І>I; Ї>I; Й>I; Ј>J; К>K; Ќ>K; Л>L; М>M; "
    u"Н>N; О>O;"
    u"П>P; Р>R; С>S; Т>T; Ћ>C; У>U; Ў>U; Ф>F; Ы>Y; Э>E; Ь>;"
    u"Ж}[:Lu:]>ZH; Ж>Zh; Х}[:Lu:]>KH; Х>Kh; Ц}[:Lu:]>TS; Ц>Ts; Ч}[:Lu:]>CH; Ч>Ch; Ш}[:Lu:]>SH; Ш>Sh;"
    u"Щ}[:Lu:]>SHCH; Щ>Shch; Ъ}[:Lu:]>IE; Ъ>Ie; Ю}[:Lu:]>IU; Ю>Iu; Я}[:Lu:]>IA; Я>Ia; Є}[:Lu:]>IE; Є>Ie;"
    u"Љ}[:Lu:]>LJ; Љ>Lj; Њ}[:Lu:]>NJ; Њ>Nj; Ѕ}[:Lu:]>DZ; Ѕ>Dz; Џ}[:Lu:]>DZ; Џ>Dz;"
    u"а>a; б>b; в>v; г>g; ґ>g; ѓ>g; д>d; ђ>d; е>e; ё>e; ж>zh; з>z; и>i; і>i; ї>i; й>i; ј>j; к>k; ќ>k; л>l; "
    u"љ>lj; м>m;"
    u"н>n; њ>nj; о>o; п>p; р>r; с>s; т>t; ћ>c; у>u; ў>u; ф>f; х>kh; ц>ts; ч>ch; ш>sh; щ>shch; ъ>ie; ы>y; ь>; "
    u"э>e; ю>iu;"
    u"я>ia; є>ie; ѕ>dz; џ>dz;"
    u":: Any-Latin;";
constexpr const char16_t* kToAsciiRules =
    u":: Latin-ASCII; :: NFD; :: [[:Mn:]&[[:Latin:][:Inherited:]]] Remove; :: NFC;";

/// A transliterator made once from rules. ICU does not promise that one may be used by two threads at once.
class Rules {
 public:
  Rules(const char16_t* id, const char16_t* rules) {
    UErrorCode status = U_ZERO_ERROR;
    UParseError place{};
    transliterator_.reset(icu::Transliterator::createFromRules(id, rules, UTRANS_FORWARD, place, status));
    must(status, "making a transliterator");
  }
  void apply(icu::UnicodeString& text) {
    const std::lock_guard lock(mutex_);
    transliterator_->transliterate(text);
  }

 private:
  std::mutex mutex_;
  std::unique_ptr<icu::Transliterator> transliterator_;
};

Rules& latin_rules() {
  static Rules rules(u"weavelog_latin", kToLatinRules);
  return rules;
}

Rules& ascii_rules() {
  static Rules rules(u"weavelog_ascii", kToAsciiRules);
  return rules;
}

const icu::Collator& collator_of(const Language& language) {
  static std::mutex mutex;
  static std::map<std::string, std::unique_ptr<const icu::Collator>> made;
  const std::lock_guard lock(mutex);
  auto& collator = made[language.tag()];
  if (!collator) {
    UErrorCode status = U_ZERO_ERROR;
    collator.reset(
        icu::Collator::createInstance(icu::Locale::forLanguageTag(language.tag(), status), status));
    must(status, "making a collator");
  }
  return *collator;
}

bool is_space_or_control(UChar32 c) {
  return c == 0xFEFF || u_isUWhiteSpace(c) || u_charType(c) == U_CONTROL_CHAR;
}

}  // namespace

Outcome<std::string> clean_text(std::string_view text, std::string where) {
  if (auto checked = check_utf8(text, std::move(where)); !checked) return fail(checked.error());
  text = trimmed(text);
  if (is_ascii(text)) return std::string(text);
  UErrorCode status = U_ZERO_ERROR;
  const auto normal = icu::Normalizer2::getNFCInstance(status)->normalize(to_utf16(text), status);
  must(status, "normalising");
  return to_utf8(normal);
}

std::string to_latin(std::string_view text) {
  if (is_ascii(text)) return std::string(text);
  icu::UnicodeString letters = to_utf16(text);
  latin_rules().apply(letters);
  ascii_rules().apply(letters);
  return to_utf8(letters);
}

std::string search_key(std::string_view text) {
  std::string latin;
  if (is_ascii(text)) {
    latin = text;
  } else {
    UErrorCode status = U_ZERO_ERROR;
    auto folded = icu::Normalizer2::getNFKCCasefoldInstance(status)->normalize(to_utf16(text), status);
    must(status, "folding");
    latin_rules().apply(folded);
    ascii_rules().apply(folded);
    latin = to_utf8(folded.foldCase());
  }

  std::string out;
  bool parted = false;
  const ByteView bytes = as_bytes(latin);
  for (std::size_t at = 0; at < bytes.size();) {
    const std::size_t start = at;
    UChar32 c = 0;
    U8_NEXT_OR_FFFD(bytes.data(), at, bytes.size(), c);
    if (c == '\'' || c == '`' || c == 0x2BC || c == 0x2019) continue;
    if (!u_isalnum(c) && (c < 0x80 || is_space_or_control(c) || u_ispunct(c))) {
      parted = true;
      continue;
    }
    if (parted && !out.empty()) out.push_back(' ');
    parted = false;
    if (c < 0x80) {
      out.push_back(static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c));
    } else {
      out.append(latin, start, at - start);
    }
  }
  return out;
}

std::vector<std::string_view> words_of(std::string_view key) {
  std::vector<std::string_view> out;
  while (!key.empty()) {
    const std::size_t end = std::min(key.find(' '), key.size());
    if (end > 0) out.push_back(key.substr(0, end));
    key.remove_prefix(std::min(end + 1, key.size()));
  }
  return out;
}

Bytes sort_key(const Language& language, std::string_view text) {
  icu::UnicodeString letters = to_utf16(text);
  if (!is_ascii(text)) latin_rules().apply(letters);
  const icu::Collator& collator = collator_of(language);
  Bytes out(static_cast<std::size_t>(letters.length()) * 3 + 16);
  auto length = collator.getSortKey(letters, out.data(), static_cast<std::int32_t>(out.size()));
  if (static_cast<std::size_t>(length) > out.size()) {
    out.resize(static_cast<std::size_t>(length));
    length = collator.getSortKey(letters, out.data(), length);
  }
  out.resize(static_cast<std::size_t>(length));
  return out;
}

std::string shortened(std::string_view text, std::size_t max) {
  static const std::unique_ptr<const icu::BreakIterator> prototype = [] {
    UErrorCode status = U_ZERO_ERROR;
    std::unique_ptr<const icu::BreakIterator> made(
        icu::BreakIterator::createCharacterInstance(icu::Locale::getRoot(), status));
    must(status, "making a character iterator");
    return made;
  }();
  if (max == 0) return {};
  if (text.size() <= max) return std::string(text);

  const icu::UnicodeString characters = to_utf16(text);
  const std::unique_ptr<icu::BreakIterator> breaks(prototype->clone());
  breaks->setText(characters);
  std::int32_t cut = 0;
  for (std::size_t count = 0; count < max; ++count) {
    const std::int32_t end = breaks->next();
    if (end == icu::BreakIterator::DONE) return std::string(text);
    if (count + 1 < max) cut = end;
  }
  if (breaks->current() == characters.length()) return std::string(text);
  return to_utf8(characters.tempSubString(0, cut)) + "…";
}

bool is_blank(std::string_view text) {
  const ByteView bytes = as_bytes(text);
  for (std::size_t at = 0; at < bytes.size();) {
    UChar32 c = 0;
    U8_NEXT_OR_FFFD(bytes.data(), at, bytes.size(), c);
    if (!is_space_or_control(c) && !u_hasBinaryProperty(c, UCHAR_DEFAULT_IGNORABLE_CODE_POINT)) return false;
  }
  return true;
}

std::string_view trimmed(std::string_view text) {
  const ByteView bytes = as_bytes(text);
  std::size_t begin = bytes.size();
  std::size_t end = 0;
  for (std::size_t at = 0; at < bytes.size();) {
    const std::size_t start = at;
    UChar32 c = 0;
    U8_NEXT_OR_FFFD(bytes.data(), at, bytes.size(), c);
    if (is_space_or_control(c)) continue;
    begin = std::min(begin, start);
    end = at;
  }
  return begin < end ? text.substr(begin, end - begin) : std::string_view();
}

}  // namespace weavelog
