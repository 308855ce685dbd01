#include "core/desk/money.h"

#include <catch2/catch.hpp>
#include <random>
#include <set>

#include "core/base/iso_time.h"
#include "core/desk/inspection.h"
#include "core/desk/prices.h"
#include "core/desk/questions.h"
#include "core/desk/statement.h"
#include "core/desk/undo.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Till : Desk {
  BookId book = first_drop_off(3);
  std::vector<EntityId> jobs;

  explicit Till(const std::string& currency = "EUR", std::vector<std::pair<std::string, std::int64_t>> prices = usual()) {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", currency}, clock.now()));
    for (const auto& [service, amount] : prices) add(event, Price{service, amount, currency}, kEventBook);
    for (const auto& job : load(book).jobs) jobs.push_back(job.id());
  }
  static std::vector<std::pair<std::string, std::int64_t>> usual() {
    return {{"Labour", 2000}, {"string", 1801}, {"string Tarnbrook Silk", 4505}, {"stencil", 150}, {"rush", 800}, {"on-court rush", 1500},
            {"grommet strip", 1200}, {"tubing", 75}};
  }
  [[nodiscard]] EventRecord at_event() const { return must(load_event(*ledger, event)); }
  [[nodiscard]] std::vector<MoneyRow> lines() const { return money_of_player(*ledger, event, book); }
  [[nodiscard]] JobPrice price(std::size_t n = 0) const { return must(price_of(at_event(), load(book), jobs.at(n))); }
  void set(std::size_t n, const std::function<void(Job&)>& work) { change<Job>(book, jobs.at(n), work); }
  [[nodiscard]] Outcome<Draft> charge(std::size_t n = 0) const {
    return charge_jobs(*ledger, at_event(), load(book), std::span(&jobs.at(n), 1), "Mara", clock.now());
  }
  [[nodiscard]] std::int64_t due() const {
    const auto accounts = accounts_of(lines());
    return accounts.empty() ? 0 : accounts.front().due();
  }
};

void own_strings(Job& job, const std::string& mains, const std::string& crosses) {
  job.mains_string = mains;
  job.crosses_string = crosses;
  job.mains_owner = job.crosses_owner = StringOwner::room;
  job.racket_stencil.clear();
  job.string_stencil.clear();
  job.rush = Rush::none;
}

}  // namespace

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

namespace {

/// The other tablet of a room: what was written until now is there, and what either writes meets at the end.
struct Apart {
  Till& here;
  Tablet there{"Bench tablet"};
  explicit Apart(Till& till) : here(till) { meet(); }
  static void bring(const Ledger& from, Ledger& to) {
    for (const BookInfo& book : from.books()) (void)must(to.ingest(from.missing(book.id, to.heads(book.id), 1 << 30), 0));
  }
  void meet() {
    bring(*here.ledger, *there.ledger);
    bring(*there.ledger, *here.ledger);
    bring(*here.ledger, *there.ledger);
  }
  void charge_there() {
    there.append(charge_jobs(*there.ledger, must(load_event(*there.ledger, here.event)), must(load_player(*there.ledger, here.book)),
                             std::span(&here.jobs[0], 1), "Bo", there.clock.now()));
  }
  void price_there(const std::string& service, std::int64_t minor) {
    there.append(set_price(must(load_event(*there.ledger, here.event)), service, minor));
  }
};

}  // namespace

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
