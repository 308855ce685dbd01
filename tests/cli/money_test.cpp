// A job's price, its payment and the close of the day, by commands alone.

#include "core/desk/money.h"
#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

struct MoneyDesk : CliDevice {
  MoneyDesk() : CliDevice("Desk 1") {
    (void)ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon", "--currency", "EUR"});
    const std::string prices = file("prices.csv",
                                    "service,amount,currency\nlabour,20,EUR\nstring,18.01,EUR\nstring Velmora Round,15,EUR\n"
                                    "stencil,1.50,EUR\nrush,8,EUR\n");
    (void)ask({"import", "prices", prices});
    (void)ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  }
};

}  // namespace

TEST_CASE("a job is charged by the price list, discounted, paid and reversed") {
  const MoneyDesk desk;
  // Labour, half of the room's crosses, a stencil.
  const auto charged = desk.ask({"charge", "1", "--by", "Mara"});
  CHECK(text_at(charged, "/accounts/0/charged_minor") == "2900");
  CHECK(size_at(charged, "/lines") == 3);
  CHECK(text_at(desk.ask({"charge", "1"}, 1), "/error/what").find("charged before") != std::string::npos);
  CHECK(text_at(desk.ask({"discount", "1", "12.5", "--reason", "late"}), "/accounts/0/charged_minor") == "2537");
  CHECK(text_at(desk.ask({"discount", "1", "101", "--reason", "x"}, 1), "/error/code") == "bad_input");
  CHECK(text_at(desk.ask({"discount", "1", "0.05", "--reason", "x"}, 1), "/error/code") == "bad_input");
  (void)desk.ask({"discount", "1", "10"}, 2);  // without a reason
  CHECK(text_at(desk.ask({"pay", "Wendelmoor", "25.37", "cash"}), "/accounts/0/due_minor") == "0");
  CHECK(text_at(desk.ask({"pay", "Wendelmoor", "1.234", "cash"}, 1), "/error/where") == "amount");
  (void)desk.ask({"pay", "Wendelmoor", "1", "shells"}, 1);
  (void)desk.ask({"pay", "Nobody", "1", "cash"}, 4);
  const auto lines = desk.ask({"statement", "Wendelmoor"});
  const std::string last = std::to_string(size_at(lines, "/lines"));
  CHECK(text_at(desk.ask({"reverse", "Wendelmoor", last, "--reason", "wrong card"}), "/accounts/0/due_minor") == "2537");
  (void)desk.ask({"reverse", "Wendelmoor", "99", "--reason", "x"}, 4);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("takings and the close of a day follow the lines") {
  const MoneyDesk desk;
  for (const char* tag : {"1", "2", "3"}) (void)desk.ask({"charge", tag});
  (void)desk.ask({"pay", "Wendelmoor", "50", "cash"});
  (void)desk.ask({"pay", "Wendelmoor", "30", "card"});
  const auto all = desk.ask({"takings"});
  CHECK(text_at(all, "/totals/0/charged_minor") == "8700");
  CHECK(text_at(all, "/totals/0/paid_minor") == "8000");
  CHECK(text_at(all, "/totals/0/by_service/labour") == "6000");
  CHECK(text_at(all, "/totals/0/by_means/cash") == "5000");
  CHECK(size_at(desk.ask({"takings", "1999-01-01"}), "/totals") == 0);
  (void)desk.ask({"takings", "1999-02-30"}, 1);
  (void)desk.ask({"close-day", "1999-01-01"}, 2);
  const auto closed = desk.ask({"close-day", "1999-01-01", "--counted", "0"});
  CHECK(size_at(closed, "/totals") == 0);
  CHECK(text_at(closed, "/closed/difference_minor") == "0");
  const auto text = desk.run({"statement", "Wendelmoor"});
  CHECK(text.out.find("due: 7.00\xC2\xA0" "EUR") != std::string::npos);
}

TEST_CASE("without a price nothing is charged") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open", "--currency", "EUR"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  CHECK(text_at(desk.ask({"charge", "1"}, 1), "/error/what").find("labour") != std::string::npos);
  CHECK(size_at(desk.ask({"statement", "Wendelmoor"}), "/lines") == 0);
}

TEST_CASE("something sold without a job, with the list's price or its own; prices are set by hand") {
  const MoneyDesk desk;
  CHECK(text_at(desk.ask({"sell", "Wendelmoor", "overgrip"}, 4), "/error/what").find("overgrip") != std::string::npos);
  CHECK(size_at(desk.ask({"price", "overgrip", "3.50"}), "") == 6);
  const auto sold = desk.ask({"sell", "Wendelmoor", "overgrip", "--count", "3"});
  CHECK(text_at(sold, "/accounts/0/due_minor") == "1050");
  CHECK(text_at(desk.ask({"sell", "Wendelmoor", "reel of Velmora Round", "--each", "180"}), "/accounts/0/due_minor") == "19050");
  CHECK(text_at(desk.ask({"sell", "Wendelmoor", "labour", "--each", "1"}, 1), "/error/code") == "bad_input");
  CHECK(text_at(desk.ask({"sell", "Wendelmoor", "x", "--each", "1.234"}, 1), "/error/where") == "amount");
  CHECK(size_at(desk.ask({"price", "overgrip", "none"}), "") == 5);
  (void)desk.ask({"price", "overgrip"}, 2);
  CHECK(text_at(desk.ask({"price", "overgrip", "-1"}, 1), "/error/code") == "bad_input");
}

TEST_CASE("a statement tells which racket a line is for") {
  const MoneyDesk desk;
  const auto charged = desk.ask({"charge", "1"});
  CHECK(text_at(charged, "/lines/0/tag") == "1");
  CHECK_FALSE(text_at(charged, "/lines/0/racket").empty());
  CHECK(desk.run({"statement", "Wendelmoor"}).out.find("tag 1  racket") != std::string::npos);
}

TEST_CASE("a day is closed with what was counted beside what should be there, and again only where that is said") {
  const MoneyDesk desk;
  (void)desk.ask({"pay", "Wendelmoor", "50", "cash"});
  const std::string day = weavelog::day_at(weavelog::WallClock::system().now(), "Europe/Lisbon");
  const auto first = desk.ask({"close-day", day, "--counted", "47.50", "--by", "Mara", "--note", "one coin missing"});
  CHECK(text_at(first, "/stored") == "true");
  CHECK(text_at(first, "/closed/cash_minor") == "5000");
  CHECK(text_at(first, "/closed/counted_minor") == "4750");
  CHECK(text_at(first, "/closed/difference_minor") == "-250");
  CHECK(size_at(first, "/closed_before") == 0);

  const auto again = desk.ask({"close-day", day, "--counted", "50"}, 3);
  CHECK(text_at(again, "/stored") == "false");
  CHECK(text_at(again, "/closed_before/0/by") == "Mara");
  CHECK(text_at(again, "/closed_before/0/counted_minor") == "4750");
  const auto asked = desk.run({"close-day", day, "--counted", "50"}).out;
  CHECK(asked.find("closed before at ") != std::string::npos);
  CHECK(asked.find(" by Mara") != std::string::npos);
  CHECK(asked.find("--again") != std::string::npos);

  // What comes into the box after it was counted is said, and what goes out of it.
  const auto late = desk.ask({"pay", "Wendelmoor", "5", "cash"});
  REQUIRE(size_at(late, "/remarks") == 1);
  CHECK(text_at(late, "/remarks/0").find("by Mara") != std::string::npos);
  CHECK(size_at(desk.ask({"pay", "Wendelmoor", "5", "card"}), "/remarks") == 0);
  CHECK(size_at(desk.ask({"reverse", "Wendelmoor", "2", "--reason", "x"}), "/remarks") == 1);
  CHECK(size_at(desk.ask({"reverse", "Wendelmoor", "3", "--reason", "x"}), "/remarks") == 0);

  const auto text = desk.run({"close-day", day, "--counted", "51", "--again"}).out;
  CHECK(text.find("cash by the lines: 50.00") != std::string::npos);
  CHECK(text.find("counted: 51.00") != std::string::npos);
  CHECK(text.find("difference: 1.00\xC2\xA0" "EUR too much in the box") != std::string::npos);
  CHECK(size_at(desk.ask({"close-day", day, "--counted", "50", "--again"}), "/closed_before") == 2);
}

TEST_CASE("a string of which nobody said whose it is is not charged, and that is said") {
  const MoneyDesk desk;
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0,
                 R"({"player": {"family_name": "Okonjo", "given_name": "Ada"}, "ready_by": "+180", "rackets": ["1"],
                   "agreed": {"mains_string": "Velmora Round", "mains_tension": "24 kg", "crosses_string": "Tarnbrook Silk",
                     "crosses_tension": "23 kg", "crosses_owner": "player"}})");
  const auto charged = desk.ask({"charge", "5"});
  CHECK(text_at(charged, "/accounts/0/charged_minor") == "2000");
  REQUIRE(size_at(charged, "/remarks") == 1);
  CHECK(text_at(charged, "/remarks/0").find("string not charged (Velmora Round): not said whose it is") != std::string::npos);
  CHECK(text_at(charged, "/remarks/0").find("--set mains_owner=room") != std::string::npos);
  CHECK(size_at(desk.ask({"charge", "1"}), "/remarks") == 0);  // the player's own mains, the room's crosses
}
