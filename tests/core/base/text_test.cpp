// Normal forms: Unicode UAX 15 (fixtures/published/names_unicode.csv). Cyrillic and Latin letters: ICAO Doc
// 9303-3, section 6 (fixtures/published/names_transliteration.json).
#include "core/base/text.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <thread>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
/// "U+0049 U+0307" as UTF-8.
std::string from_code_points(const std::string& list) {
  std::string out;
  for (std::size_t at = 0; (at = list.find("U+", at)) != std::string::npos; at += 2) {
    const auto c = static_cast<std::uint32_t>(std::stoul(list.substr(at + 2), nullptr, 16));
    const auto put = [&out](std::uint32_t byte) { out.push_back(static_cast<char>(byte)); };
    if (c < 0x80) {
      put(c);
    } else if (c < 0x800) {
      put(0xC0 | (c >> 6)), put(0x80 | (c & 63));
    } else {
      put(0xE0 | (c >> 12)), put(0x80 | ((c >> 6) & 63)), put(0x80 | (c & 63));
    }
  }
  return out;
}

Language language(std::string_view tag) {
  return Language::from(tag).value();
}

std::vector<std::string> sorted(std::string_view tag, std::vector<std::string> names) {
  std::sort(names.begin(), names.end(), [&](const auto& a, const auto& b) {
    return sort_key(language(tag), a) < sort_key(language(tag), b);
  });
  return names;
}
}  // namespace

TEST_CASE("clean text is in normal form C as published", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("names_unicode.csv")) {
    const std::string given = from_code_points(row.at("code_points"));
    const std::string normal = from_code_points(row.at("NFC"));
    if (is_blank(given)) continue;
    CHECK(clean_text("x" + given).value() == "x" + normal);
    ++checked;
  }
  CHECK(checked == 29);
}

TEST_CASE("the search key folds what the published stripping folds", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("names_unicode.csv")) {
    const std::string& folded = row.at("stripped_casefolded");
    const bool plain = std::all_of(folded.begin(), folded.end(), [](char c) { return c > ' ' && c < 0x7f; });
    if (!plain || folded.empty()) continue;
    CAPTURE(row.at("code_points"));
    CHECK(search_key(row.at("text")) == folded);
    ++checked;
  }
  CHECK(checked >= 12);
}

TEST_CASE("letters that accent stripping leaves alone fold too, and scripts become Latin") {
  CHECK(search_key("Łuć-Đin  O’Neß") == "luc din oness");
  CHECK(search_key("ŁÓDŹ") == "lodz");
  CHECK(search_key("Øystein Ærø") == "oystein aero");
  CHECK(search_key("ıİ") == "ii");
  CHECK(search_key("Ｆｕｌｌ ﬁt") == "full fit");
  CHECK(search_key("王小明") == "wang xiao ming");
  CHECK(search_key("Щеглова") == "shcheglova");
  CHECK(search_key("Θάνος") == "thanos");
  for (const char* text : {"محمود", "김서연", "สมชาย", "ソラ", "שרה"}) {
    const std::string key = search_key(text);
    CAPTURE(text, key);
    CHECK_FALSE(key.empty());
    CHECK(std::all_of(key.begin(), key.end(), [](char c) { return (c >= 'a' && c <= 'z') || c == ' '; }));
    CHECK(search_key(key) == key);
  }
}

TEST_CASE("all apostrophes and hyphens of a name fold alike") {
  for (const char* apostrophe : {"'", "\u2019", "\u02BC", "`"})
    CHECK(search_key(std::string("D") + apostrophe + "Aro") == "daro");
  for (const char* hyphen : {"-", "\u2010", "\u2011", "\u2013", "\u00A0"})
    CHECK(search_key(std::string("Ana") + hyphen + "Vera") == "ana vera");
}

TEST_CASE("a decomposed name and a composed one have one key, й included") {
  CHECK(search_key("Cafe\u0301") == search_key("Café"));
  CHECK(search_key("\u0438\u0306") == search_key("й"));
}

TEST_CASE("Cyrillic is spelled as in passports", "[published]") {
  const auto published = test::published_json("names_transliteration.json");
  for (const auto& pair : published.at("icao_9303_cyrillic").as_array())
    CHECK(to_latin(pair.at(0).as_string().c_str()) == pair.at(1).as_string().c_str());
  CHECK(to_latin("ЩЕГЛОВА Юлия") == "SHCHEGLOVA Iuliia");
}

TEST_CASE("Latin letters lose their marks in one of the published ways", "[published]") {
  const auto published = test::published_json("names_transliteration.json");
  for (const auto& row : published.at("icao_9303_latin").as_array()) {
    std::string latin = to_latin(row.at("letter").as_string().c_str());
    std::transform(latin.begin(), latin.end(), latin.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    const std::string forms = " " + test::text_in(row, "upper_case_forms") + " ";
    CAPTURE(forms, latin);
    CHECK(forms.find(" " + latin + " ") != std::string::npos);
  }
}

TEST_CASE("names sort as the language does, other scripts among them") {
  CHECK(sorted("sv", {"Öberg", "Zeta", "Aro"}) == std::vector<std::string>{"Aro", "Zeta", "Öberg"});
  CHECK(sorted("de", {"Zeta", "Öberg", "Aro"}) == std::vector<std::string>{"Aro", "Öberg", "Zeta"});
  CHECK(sorted("en", {"Zeta", "Щукин", "Aro", "王"}) ==
        std::vector<std::string>{"Aro", "Щукин", "王", "Zeta"});
}

TEST_CASE("shortening keeps what a reader takes for one character together") {
  CHECK(shortened("abcdef", 4) == "abc…");
  CHECK(shortened("abcd", 4) == "abcd");
  CHECK(shortened("e\u0301e\u0301e\u0301", 2) == "e\u0301…");
  CHECK(shortened("👩‍👩‍👧🇵🇹x", 3) == "👩‍👩‍👧🇵🇹x");
  CHECK(shortened("👩‍👩‍👧🇵🇹xy", 3) == "👩‍👩‍👧🇵🇹…");
  CHECK(shortened("각각", 1) == "…");
  CHECK(shortened("abc", 0).empty());
}

TEST_CASE("blank and trimmed see every kind of space, and invisible characters are blank") {
  CHECK(is_blank(""));
  CHECK(is_blank(" \t\r\n\u00A0\u3000\uFEFF\u200B\u2060"));
  CHECK_FALSE(is_blank(" x "));
  CHECK(trimmed("\u00A0 \t王 x\u3000\n") == "王 x");
  CHECK(trimmed(" \n ").empty());
  CHECK(clean_text("  a\u0301b \n").value() == "áb");
}

TEST_CASE("bytes that are not UTF-8 are a fault at the door and never a crash further in") {
  const auto fault = clean_text("Zo\xEB", "family_name").error();
  CHECK(fault.where == "family_name");
  CHECK(fault.what.find("offset 2") != std::string::npos);
  for (const std::string bad : {"\xFF", "a\xC3", "\xED\xA0\x80", "王\xE7\x8E", "\x80\x80\x80 Ł"}) {
    CHECK_FALSE(clean_text(bad));
    (void)search_key(bad);
    (void)to_latin(bad);
    (void)sort_key(Language{}, bad);
    (void)shortened(bad, 1);
    CHECK_FALSE(is_blank(bad));
    CHECK(trimmed(bad) == bad);
  }
}

TEST_CASE("the words of a key") {
  CHECK(words_of("a bc d") == std::vector<std::string_view>{"a", "bc", "d"});
  CHECK(words_of("").empty());
}

TEST_CASE("several threads may fold and sort at once") {
  std::vector<std::thread> threads;
  std::vector<int> wrong(4);
  for (std::size_t t = 0; t < wrong.size(); ++t) {
    threads.emplace_back([&wrong, t] {
      for (int i = 0; i < 200; ++i) {
        wrong[t] += search_key("Łódź 王 สมชาย") == search_key("łódź 王 สมชาย") ? 0 : 1;
        wrong[t] += sort_key(language("sv"), "Щ") == sort_key(language("sv"), "Щ") ? 0 : 1;
      }
    });
  }
  for (auto& thread : threads) thread.join();
  CHECK(wrong == std::vector<int>(4, 0));
}
