#include "core/people/people_table.h"

#include <catch2/catch.hpp>

using namespace weavelog;

TEST_CASE("a table of persons is read by its column names", "[people]") {
  const auto table = read_people(
      "ID;Family Name;given_name;also_known_as;country;birth_year;hand;strings;shoe\n"
      "7;Lindgrove;Ida;\"Thornfield, Ida ; Kestwick\";swe;2001;L;Tarnbrook Silk;39\n",
      {}, "a.csv");
  REQUIRE(table);
  REQUIRE(table->rows.size() == 1);
  const PeopleRow& row = table->rows.front();
  CHECK(row.line == 2);
  CHECK(row.id == "7");
  CHECK(row.name() == "Lindgrove, Ida");
  CHECK(row.facts.also_known_as == std::vector<std::string>{"Thornfield, Ida", "Kestwick"});
  CHECK(table->ignored_columns == std::vector<std::string>{"shoe"});
}

TEST_CASE("a table of persons that is none is one fault with its place", "[people]") {
  const auto fault = [](std::string_view bytes) {
    const auto table = read_people(bytes, {}, "a.csv");
    REQUIRE_FALSE(table);
    return table.error().where + ": " + table.error().what;
  };
  CHECK(fault("").rfind("a.csv", 0) == 0);
  CHECK(fault("surname,first\nLindgrove,Ida\n") == "a.csv: the header line has no column family_name");
  CHECK(fault("family_name\n") == "a.csv: there are no persons below the header line");
  CHECK(fault("family_name\nM\xFCller\n").find("line 2") != std::string::npos);
  const auto broken = read_people("family_name,birth_year,hand\nLindgrove,20001,both\n,1999,\n", {}, "a.csv");
  REQUIRE(broken);
  CHECK(broken->rows.empty());
  REQUIRE(broken->faults.size() == 3);
  CHECK(broken->faults[0].where == "a.csv, line 2, column 2 (birth_year)");
}
