#include "core/people/name_likeness.h"

#include <catch2/catch.hpp>

#include "core/people/person_facts.h"

using namespace weavelog;

namespace {

NameLikeness names(const NameKey& a, const NameKey& b) {
  const NameLikeness forth = compare_names({a}, {b}), back = compare_names({b}, {a});
  CHECK(forth.family == back.family);
  CHECK(forth.given == back.given);
  return forth;
}

bool alike(const NameKey& a, const NameKey& b) {
  const NameLikeness out = names(a, b);
  return out.family <= NameLevel::sound && out.given <= NameLevel::sound;
}

}  // namespace

TEST_CASE("names of other alphabets meet those of passports", "[people]") {
  CHECK(alike(name_key("Щеглова", "Юлия"), name_key("Shcheglova", "Iuliia")));
  CHECK(alike(name_key("Щеглова", "Юлия"), name_key("Scheglova", "Yuliya")));
  CHECK(alike(name_key("Θαλασσινακη", "Μυρσινη"), name_key("Thalassinaki", "Myrsini")));
  CHECK(alike(whole_name_key("王小明"), name_key("Wang", "Xiao Ming")));
  CHECK(alike(whole_name_key("王小明"), name_key("Wang", "Hsiao-Ming")));
  CHECK(alike(whole_name_key("いそなみ しおり"), name_key("Isonami", "Shiori")));
  CHECK(alike(whole_name_key("남궁하늘"), name_key("Namgung", "Haneul")));
  CHECK(alike(name_key("김", "하늘"), name_key("Kim", "Haneul")));
  // Vowels are left out there, and the article is part of the word.
  CHECK(alike(name_key("المرساوي", "ردينة"), name_key("Al-Marsawi", "Rudayna")));
  CHECK(alike(name_key("القنديلي", "نديم"), name_key("Al Qandili", "Nadim")));
  CHECK_FALSE(alike(name_key("القنديلي", "نديم"), name_key("Al Qandili", "Karim")));
}

TEST_CASE("order and particles do not part one name", "[people]") {
  const NameLikeness swapped = names(name_key("Lindgrove", "Ida"), name_key("Ida", "Lindgrove"));
  CHECK(swapped.swapped);
  CHECK(swapped.family == NameLevel::same);
  CHECK(alike(name_key("van der Meyde", "Sanne"), name_key("Vandermeyde", "Sanne")));
  CHECK(alike(name_key("van der Meyde", "Sanne"), name_key("Meyde", "Sanne")));
  CHECK(alike(name_key("Vandermeyde", "Sanne"), name_key("Meyde", "Sanne")));
  CHECK(alike(name_key("de la Agueral", "Lucía"), name_key("AGUERAL", "Lucia")));
  CHECK(alike(name_key("al-Qandili", "Nadim"), name_key("Alqandili", "Nadim")));
  CHECK(alike(name_key("Lindgrove Ida", ""), name_key("Lindgrove", "Ida")));
}

TEST_CASE("short forms of given names come out of our own list", "[people]") {
  const auto given = [](const char* a, const char* b) { return names(name_key("Lindgrove", a), name_key("Lindgrove", b)).given; };
  CHECK(given("Katherine", "Kate") == NameLevel::short_form);
  CHECK(given("Francisco", "Paco") == NameLevel::short_form);
  CHECK(given("Aleksandr", "Sasha") == NameLevel::short_form);
  CHECK(given("Alexandra", "Sasha") == NameLevel::short_form);
  CHECK(given("Jakub", "Kuba") == NameLevel::short_form);
  CHECK(given("Михаил", "Миша") == NameLevel::short_form);
  CHECK(given("William", "Bill") == NameLevel::short_form);
  CHECK(given("William", "Robert") == NameLevel::different);
  CHECK(given("William", "W.") == NameLevel::initial);
  CHECK(given("Jean-Pierre", "J.-P.") == NameLevel::initial);
  CHECK(given("Jean-Pierre", "JP") == NameLevel::initial);
  CHECK(given("Jean-Pierre", "Jean") == NameLevel::part);
  CHECK(given("Ana María", "Ana Luisa") == NameLevel::different);
}

TEST_CASE("slips and mishearings are told from other names", "[people]") {
  const auto family = [](const char* a, const char* b) { return names(name_key(a, "Ida"), name_key(b, "Ida")).family; };
  CHECK(family("Lindgrove", "Lindgorve") == NameLevel::slip);
  CHECK(family("Lindgrove", "Lindgrov") == NameLevel::slip);
  CHECK(family("Meyer", "Maier") == NameLevel::sound);
  CHECK(family("Wolkow", "Volkov") == NameLevel::sound);
  CHECK(family("Philipson", "Filipson") == NameLevel::sound);
  CHECK(family("Brask", "Brusk") == NameLevel::slip_short);
  CHECK(family("Ruiz Calvo", "Ruiz") == NameLevel::part);
  CHECK(family("Lee", "Yi") == NameLevel::sound);
  CHECK(family("Lindgrove", "Marblethorpe") == NameLevel::different);
}

TEST_CASE("a name before a marriage is found among the other names", "[people]") {
  PersonFacts here, there;
  here.family = "Thornfield";
  here.given = there.given = "Ida";
  here.also_known_as = {"Lindgrove"};
  there.family = "Lindgrove";
  const NameLikeness by_alias = compare_names(person_key(here).names, person_key(there).names);
  CHECK(by_alias.alias);
  CHECK(by_alias.family == NameLevel::same);
  here.also_known_as = {"Lindgrove, Adelaide"};
  CHECK(compare_names(person_key(here).names, person_key(there).names).given == NameLevel::different);
}
