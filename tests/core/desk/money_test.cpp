#include "core/desk/money.h"

#include <catch2/catch.hpp>
#include <limits>
#include <random>

#include "core/base/iso_time.h"
#include "core/desk/inspection.h"
#include "tests/core/desk/till.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a job costs labour, the room's string, and what was done beside it") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "Tarnbrook Silk", "Tarnbrook Silk"); });
  CHECK(till.price().lines == std::vector<ChargeLine>{{"labour", "", 2000}, {"string", "Tarnbrook Silk", 4505}});
  CHECK(till.price().sum() == 6505);
  till.set(0, [](Job& job) {
    job.racket_stencil = "open ring";
    job.rush = Rush::on_court;
  });
  CHECK(till.price().sum() == 6505 + 150 + 1500);
  till.set(0, [](Job& job) { job.mains_owner = job.crosses_owner = StringOwner::player; });
  CHECK(till.price().sum() == 2000 + 150 + 1500);
}

TEST_CASE("a hybrid costs half of each string, and no cent is made or lost") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "Tarnbrook Silk", "Velmora Round"); });
  CHECK(till.price().lines ==
        std::vector<ChargeLine>{{"labour", "", 2000}, {"string, mains", "Tarnbrook Silk", 2253}, {"string, crosses", "Velmora Round", 900}});
  // Two halves of one price are the whole, odd or even.
  for (const std::int64_t whole : {0, 1, 2, 3, 1801, 4505, 999'999'999}) {
    Till odd("EUR", {{"labour", 0}, {"string", whole}});
    odd.set(0, [](Job& job) { own_strings(job, "A", "B"); });
    CHECK(odd.price().sum() == whole);
  }
}

TEST_CASE("what was agreed about the frame is charged: one strip, tubing by the place") {
  Till till;
  till.set(0, [](Job& job) {
    own_strings(job, "", "");
    job.mains_owner = job.crosses_owner = StringOwner::player;
  });
  const std::vector<FoundOnFrame> found{{FrameFault::grommet_split, FramePart::head, 0, FrameRemedy::replace_strip, ""},
                                        {FrameFault::grommet_missing, FramePart::head, 60, FrameRemedy::replace_strip, ""},
                                        {FrameFault::sharp_hole, FramePart::head, 90, FrameRemedy::tube, ""},
                                        {FrameFault::sharp_hole, FramePart::head, 95, FrameRemedy::tube, ""}};
  till.append(inspect(till.load(till.book), till.jobs[0], found, "Mara", till.clock.now()));
  CHECK(till.price().sum() == 2000);  // nothing is charged before the player agrees
  for (const auto& finding : till.load(till.book).findings)
    till.append(answer_finding(till.load(till.book), finding.id(), {finding.now.proposal, "she", "Mara", till.clock.now()}));
  CHECK(till.price().sum() == 2000 + 1200 + 2 * 75);
}

TEST_CASE("a job is charged once, also by two tablets that were apart") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  const auto here = till.charge();
  till.clock.advance(5000);
  const auto there = till.charge();  // from the same state: the other tablet has not heard of the first
  till.append(here);
  till.append(there);
  CHECK(till.lines().size() == 2);
  CHECK(till.due() == 2000 + 1801);
  CHECK(till.charge().error().code == FaultCode::refused);
}

TEST_CASE("a job whose lines were all reversed is charged anew, by today's prices") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  till.append(till.charge());
  const auto first = till.lines();
  till.append(reverse(*till.ledger, till.at_event(), first[0].id, "wrong string", "Mara", till.clock.now()));
  CHECK(till.charge().error().code == FaultCode::refused);  // the other line stands
  till.append(reverse(*till.ledger, till.at_event(), first[1].id, "wrong string", "Mara", till.clock.now()));
  CHECK(till.due() == 0);
  till.set(0, [](Job& job) { own_strings(job, "Tarnbrook Silk", "Tarnbrook Silk"); });
  till.append(till.charge());
  CHECK(till.due() == 2000 + 4505);
  CHECK(till.lines().size() == 6);
  CHECK(till.charge().error().code == FaultCode::refused);
}

TEST_CASE("a day is that of the place") {
  // 23:30 UTC on 26 May 2031; Lisbon is an hour ahead then (Directive 2000/84/EC, from memory), Honolulu ten behind.
  const UnixMs at = must(moment_from("2031-05-26T23:30Z", "UTC", 0));
  CHECK(day_at(at, "Europe/Lisbon") == "2031-05-27");
  CHECK(day_at(at, "UTC") == "2031-05-26");
  CHECK(day_at(at, "Pacific/Honolulu") == "2031-05-26");
  CHECK(day_at(at, "Pacific/Kiritimati") == "2031-05-27");
  CHECK(day_after("2032-02-28", 1) == "2032-02-29");  // ISO 8601: 2032 is a leap year
  CHECK(day_after("2031-01-01", -1) == "2030-12-31");
  CHECK(day_after("never", 1).empty());
}

TEST_CASE("a service without a price is named, and nothing is charged") {
  Till till("EUR", {{"labour", 2000}});
  till.set(0, [](Job& job) { own_strings(job, "A", "B"); });
  CHECK(till.price().unpriced == std::vector<std::string>{"string, mains A", "string, crosses B"});
  const auto refused = till.charge();
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what.find("string, mains A") != std::string::npos);
  Till none("", {});
  CHECK(price_of(none.at_event(), none.load(none.book), none.jobs[0]).error().code == FaultCode::bad_input);
  Till two;
  two.add(two.event, Price{"clamp", 100, "CHF"}, kEventBook);
  CHECK(price_of(two.at_event(), two.load(two.book), two.jobs[0]).error().what.find("CHF") != std::string::npos);
}

TEST_CASE("discounts, free of charge, payments and reversals leave an account that adds up") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  till.append(till.charge());
  const auto take_off = [&](std::int64_t per_mille, const std::string& reason) {
    return discount(*till.ledger, till.at_event(), till.book, till.jobs[0], per_mille, reason, "Mara", till.clock.now());
  };
  CHECK(take_off(100, "").error().code == FaultCode::bad_input);
  CHECK(take_off(0, "x").error().code == FaultCode::bad_input);
  CHECK(take_off(1001, "x").error().code == FaultCode::bad_input);
  till.append(take_off(500, "late"));  // half of 3801: the odd half to the player
  CHECK(till.due() == 1900);
  const auto pay = [&](std::int64_t amount, PaidBy means) { return take_payment(till.at_event(), till.book, amount, means, "", "Mara", till.clock.now()); };
  CHECK(pay(0, PaidBy::cash).error().code == FaultCode::bad_input);
  CHECK(pay(-5, PaidBy::cash).error().code == FaultCode::bad_input);
  CHECK(pay(5, PaidBy::unsaid).error().code == FaultCode::bad_input);
  till.append(pay(1000, PaidBy::cash));
  till.append(pay(900, PaidBy::prize_money));
  CHECK(till.due() == 0);
  const auto line = till.lines().back();
  CHECK(reverse(*till.ledger, till.at_event(), line.id, " ", "Mara", 1).error().code == FaultCode::bad_input);
  const auto back = reverse(*till.ledger, till.at_event(), line.id, "wrong player", "Mara", till.clock.now());
  till.append(back);
  till.append(back);  // the other tablet did the same
  CHECK(till.due() == 900);
  CHECK(reverse(*till.ledger, till.at_event(), line.id, "again", "Mara", 1).error().code == FaultCode::refused);
  till.append(take_off(1000, "sponsored"));  // all that is left of the charges
  CHECK(accounts_of(till.lines()).front().charged == 0);
  CHECK(take_off(1000, "again").error().code == FaultCode::refused);
}

TEST_CASE("any run of lines sums to what another way of counting gives") {
  std::mt19937_64 random(20310526);
  for (int round = 0; round < 200; ++round) {
    std::vector<MoneyRow> lines;
    std::map<std::string, std::int64_t> charged, paid;
    const std::size_t count = random() % 60;
    for (std::size_t i = 0; i < count; ++i) {
      MoneyRow row;
      row.payment = random() % 2 == 0;
      row.currency = random() % 5 == 0 ? "CHF" : "EUR";
      row.amount = static_cast<std::int64_t>(random() % 2'000'001) - 1'000'000;
      row.service = random() % 2 == 0 ? "labour" : "string";
      row.means = random() % 2 == 0 ? PaidBy::cash : PaidBy::card;
      (row.payment ? paid : charged)[row.currency] += row.amount;
      lines.push_back(row);
    }
    for (const Account& account : accounts_of(lines)) {
      CHECK(account.charged == charged[account.currency]);
      CHECK(account.due() == charged[account.currency] - paid[account.currency]);
    }
    for (const MoneyTotals& totals : totals_of(lines)) {
      std::int64_t services = 0, means = 0;
      for (const auto& [name, sum] : totals.by_service) services += sum;
      for (const auto& [how, sum] : totals.by_means) means += sum;
      CHECK(services == totals.charged);
      CHECK(means == totals.paid);
    }
  }
  // A hostile amount does not turn a sum round.
  const std::int64_t most = std::numeric_limits<std::int64_t>::max();
  std::vector<MoneyRow> hostile(3);
  for (auto& row : hostile) row.amount = most;
  CHECK(accounts_of(hostile).front().charged == most);
}

TEST_CASE("discounts of every share take off what exact arithmetic says") {
  for (const std::int64_t price : {1, 7, 99, 100, 1801, 4505}) {
    Till till("EUR", {{"labour", price}});
    till.set(0, [](Job& job) {
      own_strings(job, "", "");
      job.mains_owner = job.crosses_owner = StringOwner::player;
    });
    till.append(till.charge());
    for (std::int64_t share = 1; share <= 1000; share += 37) {
      const auto made = discount(*till.ledger, till.at_event(), till.book, till.jobs[0], share, "r", "M", 1);
      const double exact = static_cast<double>(price) * static_cast<double>(share) / 1000.0;
      if (!made) {
        CHECK(exact < 0.5);
        continue;
      }
      std::int64_t off = 0;
      for (const Write& write : made->writes())
        if (write.tag == tag_of<Charge>(&Charge::amount_minor)) off = -std::get<std::int64_t>(write.value);
      CHECK(std::abs(static_cast<double>(off) - exact) <= 0.5);
      CHECK(off <= price);
    }
  }
}

TEST_CASE("a day is closed over its lines with what was counted; its bounds follow the clocks of the place") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  till.append(till.charge());
  till.append(take_payment(till.at_event(), till.book, 2500, PaidBy::cash, "", "Mara", till.clock.now()));
  const DayBounds day = must(bounds_of_day("2031-05-26", "Europe/Lisbon"));
  CHECK(day.until - day.from == kDay);
  const auto lines = money_between(*till.ledger, till.event, day.from, day.until);
  CHECK(lines.size() == 3);
  till.append(close_day(till.at_event(), "2031-05-26", lines, 2400, "a coin short", "Mara", till.clock.now()));
  const auto closes = till.ledger->entities(till.event, kDayClose);
  REQUIRE(closes.size() == 1);
  const auto close = from_state<DayClose>(closes[0]);
  CHECK(close.charged_minor == 3801);
  CHECK(close.paid_minor == 2500);
  CHECK(close.cash_minor == 2500);
  CHECK(close.counted_minor == 2400);
  CHECK(close_day(till.at_event(), "2031-02-30", lines, 0, "", "M", 1).error().code == FaultCode::bad_input);
  CHECK(close_day(till.at_event(), "2031-05-26", lines, -1, "", "M", 1).error().code == FaultCode::bad_input);
  // Directive 2000/84/EC (from memory): clocks go forward on the last Sunday of March, back on the last of October.
  const auto hours = [](const char* date, const char* zone) {
    const DayBounds bounds = must(bounds_of_day(date, zone));
    return (bounds.until - bounds.from) / kHour;
  };
  CHECK(hours("2025-03-30", "Europe/Lisbon") == 23);
  CHECK(hours("2025-10-26", "Europe/Lisbon") == 25);
  CHECK(hours("2025-12-31", "Pacific/Kiritimati") == 24);
  CHECK(hours("2025-12-31", "Etc/GMT+12") == 24);
}

TEST_CASE("money is told and read with the decimals of its currency (ISO 4217)") {
  const auto words = [](const char* language, std::int64_t minor, const char* currency) {
    return money_words(Language::from(language).value(), minor, currency);
  };
  CHECK(words("en", 2550, "EUR") == "25.50\xC2\xA0" "EUR");
  CHECK(words("de", -2550, "CHF") == "-25,50\xC2\xA0" "CHF");
  CHECK(words("fr", 2550, "JPY").find("JPY") != std::string::npos);
  CHECK(minor_from("25.5", "EUR") == 2550);
  CHECK(minor_from("25", "JPY") == 25);
  CHECK(minor_from("1.234", "BHD") == 1234);  // three decimals
  CHECK(minor_from("25.555", "EUR").error().code == FaultCode::bad_input);
  CHECK(minor_from("0.5", "JPY").error().code == FaultCode::bad_input);
  CHECK(minor_from("x", "EUR").error().code == FaultCode::bad_input);
  CHECK(minor_from("99999999999", "EUR").error().code == FaultCode::bad_input);
  CHECK(minor_from("1", "XYZ").error().code == FaultCode::bad_input);
}

TEST_CASE("the table of money is what the entries say") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  till.append(till.charge());
  CHECK(till.ledger->verify().faults.empty());
  CHECK(money_line(*till.ledger, till.event, till.lines()[0].id) == till.lines()[0]);
  CHECK_FALSE(money_line(*till.ledger, till.event, EntityId{{1}}));
}

TEST_CASE("a string of which nobody said whose it is is left out and named, if it has a price") {
  Till till;
  till.set(0, [](Job& job) {
    own_strings(job, "A", "B");
    job.mains_owner = StringOwner::unsaid;
  });
  CHECK(till.price().unowned == std::vector<std::string>{"mains_owner"});
  CHECK(till.price().lines.size() == 2);  // labour and the crosses
  till.set(0, [](Job& job) { job.crosses_owner = StringOwner::unsaid; });
  CHECK(till.price().unowned == std::vector<std::string>{"mains_owner", "crosses_owner"});
  till.set(0, [](Job& job) {
    job.mains_owner = StringOwner::player;
    job.crosses_string.clear();
  });
  CHECK(till.price().unowned.empty());
  Till costless("EUR", {{"labour", 2000}, {"string", 0}});
  costless.set(0, [](Job& job) {
    own_strings(job, "A", "B");
    job.mains_owner = job.crosses_owner = StringOwner::unsaid;
  });
  CHECK(costless.price().unowned.empty());
}

TEST_CASE("how a day was closed is told newest first, with what was too much or too little in the box") {
  Till till;
  const auto close = [&](const char* day, std::int64_t counted, const char* by) {
    till.append(close_day(till.at_event(), day, till.lines(), counted, "", by, till.clock.now()));
    till.clock.advance(kMinute);
  };
  till.append(take_payment(till.at_event(), till.book, 5000, PaidBy::cash, "", "Mara", till.clock.now()));
  close("2031-05-26", 4750, "Mara");
  close("2031-05-27", 0, "Bo");
  close("2031-05-26", 5100, "Bo");
  const auto closes = closes_of_day(*till.ledger, till.event, "2031-05-26");
  REQUIRE(closes.size() == 2);
  CHECK(closes[0].by == "Bo");
  CHECK(box_difference(closes[0]) == 100);
  CHECK(box_difference(closes[1]) == -250);
  CHECK(closes_of_day(*till.ledger, till.event, "2031-05-28").empty());
  DayClose absurd;
  absurd.counted_minor = std::numeric_limits<std::int64_t>::min();
  absurd.cash_minor = std::numeric_limits<std::int64_t>::max();
  CHECK(box_difference(absurd) == -kMostMinor * 1000);
}
