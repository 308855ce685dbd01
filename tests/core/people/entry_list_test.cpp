#include "core/people/entry_list.h"

#include <catch2/catch.hpp>

using namespace weavelog;

namespace {
EntryList read(std::string_view text) {
  auto list = read_entry_list(text, {}, "entries.csv");
  REQUIRE(list);
  return std::move(*list);
}

bool any_has(const std::vector<Fault>& faults, std::string_view part) {
  for (const auto& fault : faults)
    if (fault.message().find(part) != std::string::npos) return true;
  return false;
}
}  // namespace

TEST_CASE("an entry list comes in with names of the world, columns in any order and case") {
  const auto list = read(
      "Seed;Family Name;GIVEN-NAME;native_name;country;birth_year;entry;draw;hand;tour_number;Hotel\n"
      "1;Łukowska;Ania;;pol;2001;direct;women singles;left;T-17;Harbour\n"
      ";Wang;Xiaoming;王小明;CHN;;WC;women singles;;;\n"
      ";Ruiz Calvo;Inma;;ESP;1999;Lucky loser;women singles;R;;\n");
  CHECK(list.faults.empty());
  CHECK(list.doubts.empty());
  CHECK(list.ignored_columns == std::vector<std::string>{"Hotel"});
  REQUIRE(list.rows.size() == 3);
  const auto& first = list.rows[0].item;
  CHECK(list.rows[0].line == 2);
  CHECK(first.family_name == "Łukowska");
  CHECK(first.country == "POL");
  CHECK(first.birth_year == 2001);
  CHECK(first.seed == 1);
  CHECK(first.via == EntryVia::direct);
  CHECK(first.hand == Hand::left);
  CHECK(first.tour_number == "T-17");
  CHECK(list.rows[1].item.native_name == "王小明");
  CHECK(list.rows[1].item.via == EntryVia::wild_card);
  CHECK_FALSE(list.rows[1].item.birth_year);
  CHECK(list.rows[2].item.via == EntryVia::lucky_loser);
}

TEST_CASE("a broken row says line, column and what was expected, and the good rows still come in") {
  const auto list = read(
      "family_name,given_name,country,birth_year,seed,entry,hand\n"
      "Lindgrove,Ida,SWE,2001,1,,\n"
      ",Ada,NGR,2000,,,\n"
      "Okonjo,Ada,Nigeria,20,zero,invited,both\n"
      "too,few\n"
      "Vell,Una,NOR,2001.5,0,,\n"
      "\"two\nlines\",Una,NOR,,,,\n"
      "Vell,Una,NOR,2002,2,,\n");
  REQUIRE(list.rows.size() == 2);
  CHECK(list.rows[1].line == 9);
  CHECK(any_has(list.faults, "entries.csv, line 3, column 1 (family_name): \"\" is not a name"));
  CHECK(any_has(list.faults, "line 4, column 3 (country): \"Nigeria\" is not a country of three letters"));
  CHECK(
      any_has(list.faults, "line 4, column 4 (birth_year): \"20\" is not a whole number from 1900 to 2099"));
  CHECK(any_has(list.faults, "line 4, column 5 (seed): \"zero\" is not a whole number"));
  CHECK(any_has(list.faults,
                "line 4, column 6 (entry): \"invited\" is not direct, qualifier, wild card or lucky loser"));
  CHECK(any_has(list.faults, "line 4, column 7 (hand): \"both\" is not right or left"));
  CHECK(any_has(list.faults, "line 5, column 3: 2 fields where the header has 7"));
  CHECK(any_has(list.faults, "line 6, column 4 (birth_year)"));
  CHECK(any_has(list.faults, "line 6, column 5 (seed)"));
  CHECK(any_has(list.faults, "line 7, column 1 (family_name)"));
  CHECK(list.faults.size() == 10);
}

TEST_CASE("doubled names of one draw are flagged, one player in two draws is not") {
  const auto list = read(
      "family_name,given_name,country,birth_year,draw\n"
      "Łukowska,Ania,POL,2001,singles\n"
      "LUKOWSKA,Ania,POL,,singles\n"
      "Lukowska,Ania,POL,2001,doubles\n"
      "Lukowska,Ania,POL,1980,singles\n"
      "Lukowska,Ania,SVK,2001,singles\n");
  CHECK(list.rows.size() == 5);
  REQUIRE(list.doubts.size() == 2);  // the row without a birth year fits both with one
  CHECK(list.doubts[0].message().find(
            "entries.csv, line 3: the same name, country and birth year as line 2 (Łukowska)") == 0);
  CHECK(list.doubts[1].where == "entries.csv, line 5");
}

TEST_CASE("one country in two codes does not hide a doubled name") {
  CHECK(read("family_name,country\nVell,GER\nVell,DEU\n").doubts.size() == 1);
}

TEST_CASE("doubled seeds and seeds beyond the draw are flagged and come in") {
  const auto list =
      read("family_name,seed,draw\nVell,1,singles\nAro,1,singles\nOkonjo,9,singles\nBarr,1,doubles\n");
  CHECK(list.rows.size() == 4);
  CHECK(list.doubts.size() == 2);
  CHECK(any_has(list.doubts, "line 3 (seed): seed 1 again, after line 2 (Vell)"));
  CHECK(any_has(list.doubts, "line 4 (seed): seed 9 in a draw of 3 players"));
}

TEST_CASE("a header that does not name the columns is one fault for the whole file") {
  const auto nameless = read_entry_list("Vell,Una,NOR\nAro,Eva,FIN\n", {}, "entries.csv");
  REQUIRE_FALSE(nameless);
  CHECK(nameless.error().what == "the header line has no column family_name");
  CHECK(nameless.error().what_to_do.find("tour_number") != std::string::npos);
  CHECK_FALSE(read_entry_list("family_name,Family Name\na,b\n"));
  CHECK_FALSE(read_entry_list("family_name\nJos\xE9\n"));
  CHECK_FALSE(read_entry_list(""));
}
