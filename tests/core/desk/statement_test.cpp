#include "core/desk/statement.h"

#include <catch2/catch.hpp>
#include <random>
#include <set>

#include "core/desk/questions.h"
#include "core/desk/undo.h"
#include "tests/core/desk/till.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("an undone charge or reversal is made again without a question") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  const auto take_back = [&] { till.append(undo(*till.ledger, till.event, *last_action(*till.ledger, till.event))); };
  till.append(till.charge());
  take_back();
  CHECK(till.lines().empty());
  till.append(till.charge());
  CHECK(till.due() == 2000 + 1801);
  const auto line = till.lines()[0].id;
  till.append(reverse(*till.ledger, till.at_event(), line, "x", "Mara", till.clock.now()));
  take_back();
  CHECK(till.due() == 2000 + 1801);
  till.append(reverse(*till.ledger, till.at_event(), line, "x", "Mara", till.clock.now()));
  CHECK(till.lines().size() == 3);
  CHECK(till.ledger->open_questions().empty());
  CHECK(till.ledger->verify().faults.empty());
}

TEST_CASE("several jobs are charged in one action, or none of them") {
  Till till("EUR", {{"labour", 2000}, {"string A", 1800}});
  for (std::size_t n = 0; n < 3; ++n) till.set(n, [&](Job& job) { own_strings(job, n == 2 ? "B" : "A", n == 2 ? "B" : "A"); });
  const auto all = [&](std::span<const EntityId> jobs) {
    return charge_jobs(*till.ledger, till.at_event(), till.load(till.book), jobs, "Mara", till.clock.now());
  };
  CHECK(all(till.jobs).error().what.find("string B") != std::string::npos);
  CHECK(all({}).error().code == FaultCode::bad_input);
  CHECK(uncharged_jobs(till.load(till.book), till.event, till.lines()) == till.jobs);
  till.append(all(std::span(till.jobs).first(2)));
  CHECK(till.due() == 2 * 3800);
  CHECK(uncharged_jobs(till.load(till.book), till.event, till.lines()) == std::vector<EntityId>{till.jobs[2]});
}

TEST_CASE("one job charged by two price lists while apart is an open question, not the later one's word") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  Apart room(till);
  till.append(till.charge());
  room.price_there("labour", 2200);
  room.charge_there();
  room.meet();
  const auto questions = money_questions(*till.ledger, till.event);
  REQUIRE(questions.size() == 1);
  CHECK(questions[0].player == till.book);
  CHECK(questions[0].subject == "labour");
  CHECK(questions[0].tag_number == 101);
  CHECK(questions[0].currency == "EUR");
  REQUIRE(questions[0].answers.size() == 2);
  std::set<std::string> words;
  for (const auto& answer : questions[0].answers) words.insert(answer_words({}, questions[0], answer.value));
  CHECK(words == std::set<std::string>{"20.00\xC2\xA0" "EUR", "22.00\xC2\xA0" "EUR"});
  CHECK(questions_about(*till.ledger, till.load(till.book)).size() == 1);
  // Nothing is built on a price that nobody decided.
  const auto labour = questions[0].question.entity;
  CHECK(reverse(*till.ledger, till.at_event(), labour, "x", "Mara", 1).error().code == FaultCode::conflict);
  CHECK(discount(*till.ledger, till.at_event(), till.book, till.jobs[0], 100, "x", "Mara", 1).error().code == FaultCode::conflict);
  const auto statement = statement_of(*till.ledger, till.event, till.book);
  CHECK(std::count_if(statement.lines.begin(), statement.lines.end(), [](const StatementLine& line) { return line.open; }) == 1);
  till.append(close_question(questions[0].question, Value{std::int64_t{2000}}));
  room.meet();
  for (Ledger* ledger : {till.ledger.get(), room.there.ledger.get()}) {
    CHECK(ledger->open_questions().empty());
    CHECK(accounts_of(money_of_player(*ledger, till.event, till.book)).front().charged == 2000 + 1801);
    CHECK(ledger->verify().faults.empty());
  }
}

TEST_CASE("one job charged by one price list while apart asks nothing") {
  Till till;
  till.set(0, [](Job& job) { own_strings(job, "A", "A"); });
  Apart room(till);
  till.append(till.charge());
  room.charge_there();
  room.meet();
  CHECK(till.ledger->open_questions().empty());
  CHECK(till.due() == 2000 + 1801);
}

TEST_CASE("a service that two tablets price while apart is one service; a currency stays once money is in it") {
  Till till;
  Apart room(till);
  till.append(set_price(till.at_event(), "Overgrip", 300));
  room.price_there("overgrip", 300);
  room.meet();
  const auto prices = till.at_event().prices;
  CHECK(std::count_if(prices.begin(), prices.end(), [](const auto& price) { return price.now.amount_minor == 300; }) == 1);
  till.append(set_price(till.at_event(), "OVERGRIP", {}));
  CHECK(till.at_event().prices.size() == prices.size());
  const auto after = till.at_event().prices;
  CHECK(std::none_of(after.begin(), after.end(), [](const auto& price) { return price.now.amount_minor == 300; }));
  CHECK(set_price(till.at_event(), " ", 1).error().code == FaultCode::bad_input);
  CHECK(set_price(till.at_event(), "x", -1).error().code == FaultCode::bad_input);
  CHECK(set_currency(*till.ledger, till.at_event(), "CHF").error().code == FaultCode::refused);
  CHECK(set_currency(*till.ledger, till.at_event(), "XYZ").error().code == FaultCode::bad_input);
  Till fresh("", {});
  CHECK(set_price(fresh.at_event(), "labour", 1).error().code == FaultCode::bad_input);
  fresh.append(set_currency(*fresh.ledger, fresh.at_event(), "JPY"));
  CHECK(fresh.at_event().event.now.currency == "JPY");
}

TEST_CASE("what is sold without a job stands on the account with its count") {
  Till till;
  const auto sell = [&](const std::string& what, std::int64_t each, std::int64_t count, const std::string& note = {}) {
    return charge_sale(till.at_event(), till.book, {what, each, count, note}, "Mara", till.clock.now());
  };
  till.append(sell("overgrip", 350, 3, "white"));
  REQUIRE(till.lines().size() == 1);
  CHECK(till.lines()[0].note == "3 \xC3\x97 3.50: white");
  CHECK_FALSE(till.lines()[0].job);
  CHECK(till.due() == 1050);
  CHECK(sell(" ", 350, 1).error().code == FaultCode::bad_input);
  CHECK(sell("Labour", 350, 1).error().code == FaultCode::bad_input);
  CHECK(sell("discount", 350, 1).error().code == FaultCode::bad_input);
  for (const std::int64_t each : {std::int64_t{0}, std::int64_t{-1}, kMostMinor + 1, std::numeric_limits<std::int64_t>::max()})
    CHECK(sell("overgrip", each, 2).error().code == FaultCode::bad_input);
  CHECK(sell("overgrip", kMostMinor / 1000 + 1, 1000).error().code == FaultCode::bad_input);
  for (const std::int64_t count : {0, -1, 1001}) CHECK(sell("overgrip", 1, count).error().code == FaultCode::bad_input);
  CHECK(discount(*till.ledger, till.at_event(), till.book, {}, 100, "x", "Mara", 1).error().code == FaultCode::bad_input);
  till.append(reverse(*till.ledger, till.at_event(), till.lines()[0].id, "not taken", "Mara", till.clock.now()));
  CHECK(till.due() == 0);
  CHECK(statement_of(*till.ledger, till.event, till.book).parts.size() == 1);  // a sale and its reversal
}

TEST_CASE("any run of sales, charges and payments: statement, accounts and totals agree with one another") {
  std::mt19937_64 random(20310527);
  for (int round = 0; round < 6; ++round) {
    Till till;
    for (std::size_t n = 0; n < 3; ++n) till.set(n, [](Job& job) { own_strings(job, "A", "A"); });
    std::int64_t charged = 0, paid = 0;
    std::vector<std::pair<EntityId, std::int64_t>> standing;
    for (int step = 0; step < 12; ++step) {
      till.clock.advance(1000);
      const std::int64_t each = 1 + static_cast<std::int64_t>(random() % 5000), count = 1 + static_cast<std::int64_t>(random() % 9);
      switch (random() % 4) {
        case 0:
          till.append(charge_sale(till.at_event(), till.book, {"overgrip", each, count, ""}, "M", till.clock.now()));
          charged += each * count;
          standing.emplace_back(till.lines().back().id, each * count);
          break;
        case 1:
          if (const auto made = till.charge(random() % 3)) {
            till.append(made);
            charged += 2000 + 1801;
          }
          break;
        case 2:
          till.append(take_payment(till.at_event(), till.book, each, random() % 2 ? PaidBy::cash : PaidBy::card, "", "M", till.clock.now()));
          paid += each;
          break;
        default:
          if (standing.empty()) break;
          till.append(reverse(*till.ledger, till.at_event(), standing.back().first, "x", "M", till.clock.now()));
          charged -= standing.back().second;
          standing.pop_back();
      }
    }
    const Statement statement = statement_of(*till.ledger, till.event, till.book);
    std::size_t lines = 0;
    std::int64_t by_part = 0;
    for (const StatementPart& part : statement.parts) {
      lines += part.lines.size();
      for (const Account& sum : part.sums) by_part += sum.due();
    }
    CHECK(lines == till.lines().size());
    CHECK(by_part == charged - paid);
    CHECK(std::is_sorted(statement.parts.begin(), statement.parts.end(),
                         [](const StatementPart& a, const StatementPart& b) { return a.newest_at > b.newest_at; }));
    if (lines == 0) continue;
    CHECK(statement.accounts.front().charged == charged);
    CHECK(statement.accounts.front().paid == paid);
    CHECK(totals_of(till.lines()).front().charged == charged);
    const auto debtors = accounts_at(*till.ledger, till.event);
    REQUIRE(debtors.size() == 1);
    CHECK(debtors[0].accounts.front().due() == charged - paid);
  }
}
