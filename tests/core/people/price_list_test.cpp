#include "core/people/price_list.h"

#include <catch2/catch.hpp>

using namespace weavelog;

TEST_CASE("prices come in as minor units of their currency") {
  // Decimals: ISO 4217 (EUR 2, JPY 0, KWD 3).
  const auto list =
      read_price_list("service;amount;currency;note\nRestring;25,50;EUR;x\nRush;10;eur;\n").value();
  REQUIRE(list.rows.size() == 2);
  CHECK(list.rows[0].price == Price{"Restring", 2550, "EUR"});
  CHECK(list.rows[1].price == Price{"Rush", 1000, "EUR"});
  CHECK(list.ignored_columns == std::vector<std::string>{"note"});
  CHECK(list.doubts.empty());
  CHECK(decimals_of_currency("JPY") == 0);
  CHECK(decimals_of_currency("KWD") == 3);
  CHECK_FALSE(decimals_of_currency("QQQ"));
  CHECK_FALSE(decimals_of_currency("eur"));
}

TEST_CASE("a broken price says where and what was expected, and the good ones still come in") {
  const auto list =
      read_price_list(
          "service,amount,currency\nRestring,25.505,EUR\nRush,-5,EUR\nStencil,two,EUR\nGrip,5,euros\n,5,EUR\n"
          "Knot,99999999999999,EUR\nTubing,0,EUR\nShift,1.5,JPY\n",
          {}, "prices.csv")
          .value();
  REQUIRE(list.rows.size() == 1);
  CHECK(list.rows[0].price.service == "Tubing");
  REQUIRE(list.faults.size() == 7);
  CHECK(list.faults[0].where == "prices.csv, line 2, column 2 (amount)");
  CHECK(list.faults[3].where == "prices.csv, line 5, column 3 (currency)");
}

TEST_CASE("a service named twice and a second currency are flagged") {
  const auto list =
      read_price_list("service,amount,currency\nRestring,25,EUR\nRESTRING,20,EUR\nRush,10,CHF\n").value();
  CHECK(list.rows.size() == 3);
  CHECK(list.doubts.size() == 2);
}
