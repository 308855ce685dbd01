#include "app-qml/view/money_place.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "app-qml/view/questions_model.h"
#include "core/desk/prices.h"
#include "core/desk/statement.h"
#include "tests/app/room_jobs.h"
#include "tests/app/rows.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A room that charges in euro, with one player and two rackets.
struct MoneyRoom : RoomOfJobs {
  BookId player = addPlayer(named("Okafor", "Sade"));
  MadeJob first, second;
  std::unique_ptr<MoneyPlace> money;
  QStringList faults;

  MoneyRoom() {
    append(must(set_currency(ledger(), atEvent(), "EUR")));
    for (const auto& [service, minor] : std::vector<std::pair<std::string, std::int64_t>>{{"labour", 2000}, {"string", 1801}, {"overgrip", 350}})
      append(must(set_price(atEvent(), service, minor)));
    Agreed agreed;
    agreed.mains_string = agreed.crosses_string = "Tarnbrook Silk";
    agreed.mains_owner = agreed.crosses_owner = StringOwner::room;
    first = receive(player, agreed, 14);
    second = receive(player, agreed, 15);
    money = std::make_unique<MoneyPlace>(device->work());
    QObject::connect(&device->work(), &Work::failed, [this](const QString& what) { faults.append(what); });
    account().show(hex(player));
  }
  [[nodiscard]] EventRecord atEvent() const { return must(load_event(ledger(), event)); }
  AccountModel& account() { return *money->account(); }
  [[nodiscard]] QVariantMap due() { return account().due().value(0).toMap(); }
};

}  // namespace

TEST_CASE("an account shows what is not charged yet, charges it in one action, and undo takes that back") {
  MoneyRoom room;
  auto& account = room.account();
  CHECK(account.name() == "Okafor Sade");
  REQUIRE(account.uncharged().size() == 2);
  CHECK(at(account.uncharged(), 0)["tag"] == "14");
  CHECK(at(account.uncharged(), 0)["racket"] == "2");
  CHECK(at(account.uncharged(), 0)["sum"].toString() == QStringLiteral("38.01\u00a0EUR"));
  CHECK(room.due()["digits"] == "0.00");
  CHECK(room.due()["typed"] == "");
  const QStringList both{hex(room.first.job), hex(room.second.job)};
  CHECK(account.sumOf(both) == QStringLiteral("76.02\u00a0EUR"));
  QSignalSpy done(&room.device->work(), &Work::done);
  CHECK(account.charge(both, "Charged"));
  CHECK(done.size() == 1);
  CHECK(account.uncharged().isEmpty());
  CHECK(room.money->standing(hex(room.player)) == QVariantMap{{"due", QStringLiteral("76.02\u00a0EUR")}, {"uncharged", 0}});
  CHECK(room.due()["digits"] == "76.02");
  CHECK(room.due()["sign"] == 1);
  CHECK(account.parts().size() == 2);
  CHECK(at(account.parts(), 0)["lines"].toList().size() == 2);
  CHECK_FALSE(account.charge(both, "Charged"));
  CHECK(room.faults.size() == 1);
  CHECK(room.device->work().undo());
  CHECK(account.uncharged().size() == 2);
  CHECK(account.charge(both, "Charged"));
  CHECK(room.due()["digits"] == "76.02");
}

TEST_CASE("what has no price is named and cannot be charged; a price on the list mends it") {
  MoneyRoom room;
  auto& account = room.account();
  CHECK(room.money->prices()->set("labour", "", "off"));
  CHECK(at(account.uncharged(), 0)["unpriced"].toList() == QVariantList{"labour"});
  CHECK_FALSE(account.charge({hex(room.first.job)}, "Charged"));
  CHECK(room.faults.back().contains("labour"));
  CHECK(room.money->prices()->set("labour", "20,50", "on"));
  CHECK(account.charge({hex(room.first.job)}, "Charged"));
  CHECK(room.due()["digits"] == "38.51");
}

TEST_CASE("payments, discounts, sales and reversals are written and told in the language of the screens") {
  MoneyRoom room;
  auto& account = room.account();
  room.device->work().setLanguage("de");
  CHECK(account.charge({hex(room.first.job)}, "Charged"));
  CHECK(room.due()["typed"] == "38,01");
  CHECK(account.pay(room.due()["typed"].toString(), static_cast<int>(PaidBy::cash), "", "Paid"));
  CHECK(room.due()["sign"] == 0);
  CHECK(account.discount(hex(room.first.job), 100, "late", "Off"));  // 3.801 of 38.01: 3.80
  CHECK(room.due()["sign"] == -1);
  CHECK(room.due()["digits"] == "3.80");
  CHECK(account.sell("overgrip", at(account.wares(), 0)["typed"].toString(), 3, "", "Sold"));
  CHECK(room.due()["digits"] == "6.70");  // 10.50 - 3.80
  CHECK(at(account.wares(), 0)["amount"].toString() == QStringLiteral("3,50\u00a0EUR"));
  QVariantMap sale;  // all was written in one moment, so the order of the lines says nothing
  for (const QVariant& part : account.parts())
    for (const QVariant& line : part.toMap()["lines"].toList())
      if (!line.toMap()["note"].toString().isEmpty() && line.toMap()["note"].toString().startsWith(u'3')) sale = line.toMap();
  CHECK(sale["note"] == QStringLiteral("3 \u00d7 3.50"));
  CHECK(account.reverse(sale["id"].toString(), "not taken", "Back"));
  CHECK(room.due()["digits"] == "3.80");
  CHECK_FALSE(account.reverse(sale["id"].toString(), "again", "Back"));
  CHECK_FALSE(account.discount(hex(room.first.job), 100, " ", "Off"));
  CHECK_FALSE(account.pay("0", static_cast<int>(PaidBy::cash), "", "Paid"));
  CHECK(room.faults.size() == 3);
  CHECK(account.wrongWith("1,5").isEmpty());
  CHECK(account.wrongWith("").isEmpty());
  for (const char* wrong : {"x", "1.234", "0", "-2", "99999999999"}) CHECK_FALSE(account.wrongWith(wrong).isEmpty());
}

TEST_CASE("two tablets that charged by different prices leave a question that the questions page closes") {
  MoneyRoom room;
  Tablet other("Bench tablet");
  bringTo(other, room, room.event);
  bringTo(other, room, room.player);
  other.append(must(set_price(must(load_event(*other.ledger, room.event)), "labour", 2200)));
  other.append(must(charge_jobs(*other.ledger, must(load_event(*other.ledger, room.event)), must(load_player(*other.ledger, room.player)),
                                std::span(&room.first.job, 1), "Bo", kMonday)));
  CHECK(room.account().charge({hex(room.first.job)}, "Charged"));
  QuestionsModel questions(room.device->work());
  CHECK(questions.count() == 0);
  bringFrom(other, room, room.event);
  room.device->work().refresh();
  CHECK(room.account().questions() == 1);
  REQUIRE(questions.count() == 1);
  CHECK(role(questions, 0, "kind").toInt() == QuestionsModel::Amount);
  CHECK(role(questions, 0, "player") == "Okafor Sade");
  CHECK(role(questions, 0, "subject") == "labour");
  CHECK(role(questions, 0, "tag") == "14");
  CHECK(questions.wrongWith(0, "1.234", "").size() > 0);
  CHECK(questions.wrongWith(0, "21", "").isEmpty());
  CHECK(questions.closeOtherwise(0, "21", ""));
  CHECK(questions.count() == 0);
  CHECK(room.account().questions() == 0);
  CHECK(room.due()["digits"] == "39.01");
}

TEST_CASE("the list of accounts is read while it is looked at: who owes first") {
  MoneyRoom room;
  const auto even = room.addPlayer(named("Aalto", "Bo"));
  (void)room.receive(even, {}, 20);
  auto& list = *room.money->list();
  const QAbstractItemModelTester tester(&list, QAbstractItemModelTester::FailureReportingMode::Fatal);
  CHECK(list.count() == 0);
  list.setWatched(true);
  REQUIRE(list.count() == 2);
  CHECK(role(list, 0, "name") == "Aalto Bo");
  CHECK(room.account().charge({hex(room.first.job)}, "Charged"));
  CHECK(role(list, 0, "name") == "Okafor Sade");
  CHECK(role(list, 0, "due").toString() == QStringLiteral("38.01\u00a0EUR"));
  CHECK(list.owing() == 1);
  list.setTyped("aal");
  REQUIRE(list.count() == 1);
  CHECK(role(list, 0, "name") == "Aalto Bo");
  CHECK(list.owing() == 1);
}

TEST_CASE("a day is summed, its box compared, and closed; what comes after shows") {
  MoneyRoom room;
  auto& day = *room.money->day();
  day.setWatched(true);
  CHECK(day.today());
  CHECK(day.totals().isEmpty());
  CHECK(room.account().charge({hex(room.first.job)}, "Charged"));
  CHECK(room.account().pay("30", static_cast<int>(PaidBy::cash), "", "Paid"));
  CHECK(room.account().pay("8.01", static_cast<int>(PaidBy::card), "", "Paid"));
  const auto totals = at(day.totals(), 0);
  CHECK(totals["charged"] == QStringLiteral("38.01\u00a0EUR"));
  CHECK(totals["paid"] == QStringLiteral("38.01\u00a0EUR"));
  CHECK(totals["services"].toList().size() == 2);
  CHECK(totals["means"].toList().size() == 2);
  CHECK(day.cash() == QStringLiteral("30.00\u00a0EUR"));
  CHECK(day.difference("29.50")["sign"] == -1);
  CHECK(day.difference("29.50")["amount"] == QStringLiteral("0.50\u00a0EUR"));
  CHECK(day.difference("30")["sign"] == 0);
  CHECK(day.difference("").isEmpty());
  CHECK_FALSE(day.wrongWith("-1").isEmpty());
  CHECK(day.close("29.50", "a coin short", "Closed"));
  REQUIRE(day.closes().size() == 1);
  CHECK(at(day.closes(), 0)["sign"] == -1);
  CHECK(at(day.closes(), 0)["by"] == "Ines");
  CHECK(at(day.closes(), 0)["paidSince"] == "");
  CHECK(room.account().pay("5", static_cast<int>(PaidBy::cash), "", "Paid"));
  CHECK(at(day.closes(), 0)["paidSince"] == QStringLiteral("5.00\u00a0EUR"));
  day.step(-1);
  CHECK_FALSE(day.today());
  CHECK(day.totals().isEmpty());
  CHECK(day.closes().isEmpty());
  day.showToday();
  CHECK(day.today());
}

TEST_CASE("the price list shows what jobs are charged, priced or not, and takes a currency once") {
  RoomOfJobs room;
  PricesModel prices(room.device->work());
  QStringList faults;
  QObject::connect(&room.device->work(), &Work::failed, [&](const QString& what) { faults.append(what); });
  CHECK(prices.hasEvent());
  CHECK(prices.currency().isEmpty());
  CHECK(prices.ofJobs().size() == static_cast<qsizetype>(kJobServices.size()));
  CHECK_FALSE(prices.set("labour", "20", "Kept"));
  CHECK_FALSE(prices.wrongCurrency("XYZ").isEmpty());
  CHECK_FALSE(prices.setCurrency("XYZ", "Kept"));
  CHECK(prices.setCurrency("jpy", "Kept"));  // ISO 4217: no decimals
  CHECK_FALSE(prices.wrongWith("20.5").isEmpty());
  CHECK(prices.set("labour", "2000", "Kept"));
  CHECK(prices.set("string Velmora Round", "1500", "Kept"));
  CHECK(prices.set("overgrip", "300", "Kept"));
  CHECK(at(prices.ofJobs(), 0)["amount"].toString() == QStringLiteral("2,000\u00a0JPY"));
  CHECK(at(prices.ofJobs(), 2)["service"] == "string Velmora Round");
  CHECK(prices.others().size() == 1);
  CHECK_FALSE(prices.setCurrency("EUR", "Kept"));
  CHECK(faults.size() == 3);
}
