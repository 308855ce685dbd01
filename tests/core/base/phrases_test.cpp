#include "core/base/phrases.h"

#include <array>
#include <catch2/catch.hpp>
#include <stdexcept>
#include <thread>

namespace weavelog {
std::span<const PhraseText> sample_phrases();
}

using namespace weavelog;

namespace {
Language in_language(std::string_view tag) {
  return Language::from(tag).value();
}

const Phrases& sample() {
  static const Phrases phrases({sample_phrases()});
  return phrases;
}

// 2026-03-03T13:05:00Z
constexpr UnixMs kTuesday = 1'772'543'100'000;
}  // namespace

TEST_CASE("language tags are read in any spelling, and what is none is refused") {
  CHECK(Language{}.tag() == "en");
  CHECK(in_language("DE").tag() == "de");
  CHECK(in_language("de_ch").tag() == "de-CH");
  CHECK(in_language("de-CH").base() == "de");
  CHECK(in_language("zh-Hant-TW").base() == "zh");
  CHECK(in_language("fr").own_name() == "français");
  for (const char* tag : {"", "d", "german language", "x-private", "und", "de-", "\xFF\xFF", "../../en"}) {
    CAPTURE(tag);
    CHECK_FALSE(Language::from(tag));
  }
  CHECK_FALSE(Language::from(std::string(100'000, 'a')));
}

TEST_CASE("numbers come in the language's form with the decimals as spoken") {
  CHECK(localised(in_language("de"), Decimal{245, 1}) == "24,5");
  CHECK(localised(in_language("en"), Decimal{2450, 2}) == "24.50");
  CHECK(localised(in_language("fr"), Decimal{2450, 2}) == "24,50");
  CHECK(localised(in_language("es"), Decimal{-5, 1}) == "-0,5");
  CHECK(localised(in_language("de-CH"), Decimal{245, 1}) == "24.5");
  CHECK(localised(in_language("en"), Decimal{999'999'999'999'999, 9}) == "999,999.999999999");
}

TEST_CASE("a quantity has a no-break space before its unit") {
  CHECK(localised(in_language("de"), Quantity{{245, 1}, Unit::kilogram_force}) == "24,5\u00A0kg");
  CHECK(localised(in_language("en"), Quantity{{55, 0}, Unit::pound_force}) == "55\u00A0lb");
  CHECK(localised(in_language("en"), Quantity{{3, 0}, Unit::none}) == "3");
}

TEST_CASE("a moment is told in its zone, and an unknown zone in UTC") {
  CHECK(localised(in_language("de"), Moment{kTuesday, "Europe/Lisbon", Moment::Form::time_of_day}) == "13:05");
  CHECK(localised(in_language("de"), Moment{kTuesday, "Europe/Berlin", Moment::Form::time_of_day}) == "14:05");
  CHECK(localised(in_language("de"), Moment{kTuesday, "Nowhere/Land", Moment::Form::time_of_day}) == "13:05");
  CHECK(localised(in_language("de"), Moment{kTuesday, "UTC", Moment::Form::day}) == "Di., 3. März");
  CHECK(localised(in_language("en"), Moment{kTuesday, "UTC", Moment::Form::day_and_time}).find("Mar 3") !=
        std::string::npos);
}

TEST_CASE("the year is told where it is not the one that the place has now") {
  const UnixMs eve = 1'924'991'940'000;  // 2030-12-31T23:59:00Z: New Year's Eve in Lisbon, New Year in Berlin
  const UnixMs later = eve + 60 * 60'000;
  for (const char* language : {"en", "de", "fr", "es"}) {
    CHECK(localised(in_language(language), moment_told(later, "Europe/Lisbon", eve)).find("2031") != std::string::npos);
    CHECK(localised(in_language(language), moment_told(later, "Europe/Berlin", eve)).find("20") == std::string::npos);
    CHECK(localised(in_language(language), moment_told(eve - 365LL * 86'400'000, "Europe/Lisbon", eve)).find("2029") != std::string::npos);
  }
  CHECK(moment_told(eve, "Europe/Lisbon", eve).form == Moment::Form::day_and_time);
}

TEST_CASE("a phrase is said in the person's language, plural and all") {
  const PhraseArgs one{{"count", 1},
                       {"tension", Quantity{{2450, 2}, Unit::kilogram_force}},
                       {"when", Moment{kTuesday, "UTC", Moment::Form::time_of_day}}};
  CHECK(sample().say(in_language("de"), "sample.rackets", one) == "1 Schläger mit 24,50\u00A0kg, fertig 13:05");
  PhraseArgs three = one;
  three[0].second = std::int64_t{3};
  CHECK(sample().say(in_language("es"), "sample.rackets", three) == "3 raquetas a 24,50\u00A0kg, listo 13:05");
  CHECK(sample().say(in_language("de-CH"), "sample.rackets", one) ==
        "1 Schläger mit 24.50\u00A0kg, fertig 13:05");
}

TEST_CASE("an apostrophe in a text stays, and braces in an argument are not a pattern") {
  CHECK(sample().say(Language{}, "sample.greeting", {{"name", "Łucja {name}"}}) ==
        "Good day, Łucja {name}; don't worry.");
}

TEST_CASE("a language without phrases gets English") {
  CHECK(sample().say(in_language("nl"), "sample.greeting", {{"name", "Ida"}}) == "Good day, Ida; don't worry.");
}

TEST_CASE("a missing key or argument is a broken invariant that names it") {
  CHECK_THROWS_AS(sample().say(Language{}, "sample.nothing"), std::logic_error);
  CHECK_THROWS_WITH(sample().say(Language{}, "sample.greeting"), Catch::Contains("argument name is missing"));
  CHECK(sample().has("sample.greeting"));
  CHECK_FALSE(sample().has("sample.nothing"));
}

TEST_CASE("a text where a plural needs a number is a broken invariant") {
  CHECK_THROWS_AS(
      sample().say(Language{}, "sample.rackets", {{"count", "three"}, {"tension", ""}, {"when", ""}}),
      std::logic_error);
}

TEST_CASE("the sample phrases have every key in every language with the same arguments") {
  CHECK(sample().gaps() == std::vector<std::string>{});
  CHECK(sample().languages().size() == 4);
}

TEST_CASE("gaps name what is missing where") {
  constexpr std::array<PhraseText, 5> kTexts{
      {{"en", "a", "{x} and {y}"},
       {"en", "b", "b"},
       {"en", "c", "{n, plural, one {{x}} other {#}}"},
       {"fr", "a", "d'{x} et {y}"},  // the apostrophe quotes all that follows
       {"fr", "c", "{n, plural, one {{x}} other {#}}"}}};
  CHECK(Phrases({kTexts}).gaps() == std::vector<std::string>{"a: en has x, y; fr has none", "fr lacks b"});
}

TEST_CASE("broken translation files are found when they are loaded") {
  constexpr std::array<PhraseText, 1> kBroken{{{"en", "a", "{x"}}};
  constexpr std::array<PhraseText, 2> kDoubled{{{"en", "a", "1"}, {"en", "a", "2"}}};
  constexpr std::array<PhraseText, 1> kNoLanguage{{{"english!", "a", "1"}}};
  CHECK_THROWS_AS(Phrases({kBroken}), std::logic_error);
  CHECK_THROWS_AS(Phrases({kDoubled}), std::logic_error);
  CHECK_THROWS_AS(Phrases({kNoLanguage}), std::logic_error);
}

TEST_CASE("several threads may speak at once") {
  std::vector<std::thread> threads;
  std::array<bool, 4> right{};
  for (std::size_t t = 0; t < right.size(); ++t) {
    threads.emplace_back([&right, t] {
      right[t] = true;
      for (std::int64_t i = 2; i < 200; ++i) {
        const auto text =
            sample().say(in_language("fr"), "sample.rackets",
                         {{"count", i}, {"tension", Quantity{{i, 1}, Unit::newton}}, {"when", "x"}});
        right[t] = right[t] && text.starts_with(std::to_string(i) + " raquettes");
      }
    });
  }
  for (auto& thread : threads) thread.join();
  for (const bool each : right) CHECK(each);
}
