#include "core/people/match.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/people/country.h"
#include "core/people/name_key.h"
#include "tests/support/processor_time.h"

using namespace weavelog;
using weavelog::testing::processor_ms;

namespace {

BookId book(std::uint8_t number) {
  BookId id;
  id.bytes[15] = number;
  id.bytes[0] = 1;
  return id;
}

PersonFacts person(std::string family, std::string given, std::string country = {},
                   std::optional<std::int64_t> year = {}) {
  PersonFacts facts;
  facts.family = std::move(family);
  facts.given = std::move(given);
  facts.country = std::move(country);
  facts.birth_year = year;
  return facts;
}

Likeness names(const PersonFacts& a, const PersonFacts& b) {
  return compare_persons(a, b).front().agreement;
}

/// An index with one person, so that the outcome rests on the evidence alone.
MatchResult against(const PersonFacts& known, const PersonFacts& entry) {
  return PersonIndex({{book(1), known}}).match(entry);
}

}  // namespace

TEST_CASE("one name in several spellings has one sound") {
  CHECK(sound_of("mueller") == sound_of("muller"));
  CHECK(sound_of("yuliya") == sound_of("iuliia"));
  CHECK(sound_of("julija") == sound_of("iuliia"));
  CHECK(sound_of("philipp") == sound_of("filip"));
  CHECK(sound_of("wolkow") == sound_of("volkov"));
  CHECK(sound_of("aro") != sound_of("ora"));
}

TEST_CASE("country codes of both lists meet") {
  CHECK(country_key("GER") == "DEU");
  CHECK(country_key("sui") == "CHE");
  CHECK(country_key("FRA") == "FRA");
  CHECK(is_country_code("por"));
  CHECK_FALSE(is_country_code("PO"));
  CHECK_FALSE(is_country_code("P0R"));
}

TEST_CASE("names agree across order, case, diacritics, particles and script") {
  CHECK(names(person("Łukowska", "Ania"), person("LUKOWSKA", "ania")) == Likeness::same);
  CHECK(names(person("Łukowska", "Ania"), person("Ania", "Lukowska")) == Likeness::same);
  CHECK(names(person("van der Meyde", "Sanne"), person("Meyde", "Sanne")) == Likeness::same);
  CHECK(names(person("Щукина", "Дарья"), person("Shchukina", "Daria")) == Likeness::same);
  CHECK(names(person("Wang", "Xiaoming"), person("王", "小明")) == Likeness::same);
  auto both_scripts = person("Uong", "Hsiao-Ming");
  both_scripts.native = "王小明";
  CHECK(names(both_scripts, person("Wang", "Xiao Ming")) == Likeness::same);
}

TEST_CASE("slips and other spellings are near, parts are parts, siblings share only the family name") {
  CHECK(names(person("Müllerin", "Ida"), person("Muellerin", "Ida")) == Likeness::near);
  CHECK(names(person("Lindgrove", "Ida"), person("Lindgorve", "Ida")) == Likeness::near);
  CHECK(names(person("Щукина", "Юлия"), person("Schukina", "Yuliya")) == Likeness::near);
  CHECK(names(person("Ruiz Calvo", "Inma"), person("Ruiz", "Inma")) == Likeness::part);
  CHECK(names(person("Lindgrove", "Ida"), person("Lindgrove", "I.")) == Likeness::part);
  CHECK(names(person("Lindgrove", ""), person("Lindgrove", "Ida")) == Likeness::part);
  CHECK(names(person("Lindgrove", "Ida"), person("Lindgrove", "Tora")) == Likeness::family);
  CHECK(names(person("Lindgrove", "Ida"), person("Okonjo", "Ada")) == Likeness::different);
  CHECK(names(person("", ""), person("Okonjo", "Ada")) == Likeness::unsaid);
}

TEST_CASE("evidence does not depend on which of two records comes first") {
  const PersonFacts all[] = {person("Ruiz Calvo", "Inma", "ESP", 2001), person("Ruiz", "Inma", "ESP"),
                             person("Lindgrove", "I", "SWE", 1999), person("Ida", "Lindgrove", "", 1998),
                             person("", "")};
  for (const auto& a : all) {
    for (const auto& b : all) {
      const auto forth = compare_persons(a, b);
      const auto back = compare_persons(b, a);
      for (std::size_t i = 0; i < forth.size(); ++i) {
        CHECK(forth[i].agreement == back[i].agreement);
        CHECK(forth[i].weight == back[i].weight);
      }
    }
  }
}

TEST_CASE("a person with the same name, country and birth year is known") {
  const auto result =
      against(person("Łukowska", "Ania", "POL", 2001), person("LUKOWSKA", "Ania", "POL", 2001));
  CHECK(result.band == MatchBand::known);
  REQUIRE(result.candidates.size() == 1);
  CHECK(result.candidates[0].book == book(1));
  CHECK(result.candidates[0].probability > 0.99);
}

TEST_CASE(
    "a missing birth year or country asks, unless the tour number tells") {
  auto here = person("Łukowska", "Ania", "POL", 2001);
  CHECK(against(here, person("Lukowska", "Ania", "POL")).band == MatchBand::likely);
  CHECK(against(here, person("Lukowska", "Ania")).band == MatchBand::likely);
  auto there = person("Lukowska", "Ania");
  here.tour_number = there.tour_number = "T 4711";
  CHECK(against(here, there).band == MatchBand::known);
}

TEST_CASE("birth years far apart are never known, however much agrees; one off is where all else does") {
  auto here = person("Lindgrove", "Ida", "SWE", 2001);
  auto there = person("Lindgrove", "Ida", "SWE", 1987);
  here.hand = there.hand = Hand::left;
  here.tour_number = there.tour_number = "T-4711";
  CHECK(against(here, there).band == MatchBand::likely);
  there.birth_year = 2002;
  CHECK(against(here, there).band == MatchBand::known);
  there.tour_number.clear();
  CHECK(against(here, there).band == MatchBand::likely);
  there.birth_year = 2001;
  CHECK(against(here, there).band == MatchBand::known);
}

TEST_CASE("two candidates that tie are both asked about and neither is known") {
  const PersonIndex index({{book(1), person("Lindgrove", "Ida", "SWE", 2001)},
                           {book(2), person("Lindgrove", "Ida", "SWE", 2001)},
                           {book(3), person("Okonjo", "Ada", "NGR", 2001)}});
  const auto result = index.match(person("Lindgrove", "Ida", "SWE", 2001));
  CHECK(result.band == MatchBand::likely);
  REQUIRE(result.candidates.size() == 2);
  CHECK(result.candidates[0].book == book(1));
  CHECK(result.candidates[0].probability == Approx(0.5).margin(0.01));
}

TEST_CASE("two of one name in different countries are told apart") {
  const PersonIndex index({{book(1), person("Lindgrove", "Ida", "SWE", 2001)},
                           {book(2), person("Lindgrove", "Ida", "NOR", 1994)}});
  const auto result = index.match(person("Lindgrove", "Ida", "NOR", 1994));
  CHECK(result.band == MatchBand::known);
  CHECK(result.candidates.front().book == book(2));
}

TEST_CASE("a slip in the name asks, a stranger is new, a sibling is new") {
  const auto known = person("Lindgrove", "Ida", "SWE", 2001);
  CHECK(against(known, person("Lindgorve", "Ida", "SWE", 2001)).band == MatchBand::likely);
  CHECK(against(known, person("Okonjo", "Ada", "NGR", 2001)).band == MatchBand::new_person);
  CHECK(against(known, person("Lindgrove", "Tora", "SWE", 2003)).band == MatchBand::new_person);
  CHECK(against(known, person("", "")).band == MatchBand::new_person);
  CHECK(PersonIndex({}).match(known).band == MatchBand::new_person);
}

TEST_CASE("one who changed the name is asked about by tour number") {
  auto before = person("Lindgrove", "Ida", "SWE", 2001);
  auto after = person("Okonjo", "Ada", "SWE", 2001);
  before.tour_number = after.tour_number = "T 4711";
  CHECK(against(before, after).band == MatchBand::likely);
}

TEST_CASE("evidence says what agreed and what did not") {
  const auto result =
      against(person("Lindgrove", "Ida", "SWE", 2001), person("Lindgrove", "Ida", "NOR", 2001));
  REQUIRE(result.candidates.size() == 1);
  const auto& candidate = result.candidates[0];
  CHECK(candidate.agreement(EvidenceField::name) == Likeness::same);
  CHECK(candidate.agreement(EvidenceField::country) == Likeness::different);
  CHECK(candidate.agreement(EvidenceField::birth_year) == Likeness::same);
  CHECK(candidate.agreement(EvidenceField::hand) == Likeness::unsaid);
}

TEST_CASE("300 entries against 5,000 persons: under a second, nobody mistaken, slips found") {
  std::mt19937 random(2026);
  const auto pick = [&random](std::size_t count) { return std::size_t{random()} % count; };
  static constexpr const char* kBegin[] = {"Bar", "Dov", "Fen", "Gil", "Hal", "Jor", "Kel", "Lun",
                                           "Mor", "Nev", "Pel", "Ros", "Sto", "Tam", "Vel", "Wen"};
  static constexpr const char* kMiddle[] = {"ad", "el", "in", "or", "ul", "am", "es", "ik", "ov", "un"};
  static constexpr const char* kEnd[] = {"ska",  "sen", "ard", "ini", "ova",   "ez",  "berg", "quist",
                                         "oglu", "ian", "eau", "man", "ström", "čić", "ło",   "ß"};
  static constexpr const char* kGiven[] = {"Ada",   "Bea",   "Cleo",  "Dora", "Enid", "Fay",  "Gwen",
                                           "Hedda", "Ines",  "Jutta", "Kaja", "Liv",  "Mina", "Nora",
                                           "Odile", "Petra", "Runa",  "Svea", "Thea", "Una"};
  static constexpr const char* kCountries[] = {"SWE", "NOR", "POL", "GER", "ESP", "FRA",
                                               "ITA", "CZE", "NED", "POR", "CRO", "SUI"};

  std::vector<std::pair<BookId, PersonFacts>> persons;
  for (std::size_t i = 0; i < 5'000; ++i) {
    BookId id;
    id.bytes = uuid_v7(i, 0, i);
    // One statement a draw: the order in which arguments are evaluated differs between compilers.
    std::string family = kBegin[pick(16)];
    family += kMiddle[pick(10)];
    family += kEnd[pick(16)];
    const char* const given = kGiven[pick(20)];
    const char* const country = kCountries[pick(12)];
    persons.emplace_back(id, person(family, given, country, 1985 + static_cast<std::int64_t>(pick(25))));
    persons.back().second.tour_number = "T" + std::to_string(100'000 + 7 * i);
  }
  const PersonIndex index(persons);
  CHECK(index.size() == 5'000);

  const double start = processor_ms();
  int known_right = 0, known_wrong = 0, slip_found = 0, strangers_known = 0;
  for (std::size_t i = 0; i < 300; ++i) {
    const auto& [id, facts] = persons[i * 16];
    auto entry = facts;
    const std::size_t kind = i % 3;
    if (kind == 1) std::swap(entry.family[2], entry.family[3]);
    if (kind == 2)
      entry = person("Xan" + std::string(kMiddle[pick(10)]) + "thorpe", "Quilla", facts.country,
                     facts.birth_year);
    if (kind == 1) entry.tour_number.clear();
    const auto result = index.match(entry);
    const bool right = !result.candidates.empty() && result.candidates.front().book == id;
    if (kind == 0 && result.band == MatchBand::known) ++(right ? known_right : known_wrong);
    if (kind == 1 && result.band != MatchBand::new_person && right) ++slip_found;
    if (kind == 2 && result.band == MatchBand::known) ++strangers_known;
  }
  const double took = (processor_ms() - start) / 1000;
  INFO("300 entries against 5,000 persons: " << took * 1000 << " ms; known " << known_right
                                             << "/100, slips found " << slip_found << "/100");
  CHECK(known_right >= 95);
  CHECK(known_wrong == 0);
  CHECK(slip_found >= 90);
  CHECK(strangers_known == 0);
#ifdef NDEBUG
  CHECK(took < 1.0);
#else  // unoptimised, and perhaps under a sanitizer
  CHECK(took < 20.0);
#endif
}

TEST_CASE("very long and odd names cost no more than a moment") {
  const PersonIndex index({{book(1), person(std::string(50'000, 'a'), std::string(50'000, 'b'))},
                           {book(2), person("\xFF\xC3", "🎾")}});
  (void)index.match(person(std::string(50'000, 'a'), "x"));
  CHECK(index.match(person("\xFF", "🎾", "SWE")).band != MatchBand::known);
}
