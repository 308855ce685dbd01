#include "app-qml/view/model_text.h"
#include "core/desk/consent.h"
#include "tests/app/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

// A drop-off of somebody new, read back.
BookId readBackNew(DeskRoom& room) {
  room.desk->finder()->setTyped("Quillon");
  room.desk->addPlayer();
  room.draft().setPerson("language", "de");
  room.answerNeeded();
  room.desk->readBack();
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  return room.draft().book();
}

}  // namespace

TEST_CASE("somebody new is asked for the consent before the read-back, and one yes stores both") {
  DeskRoom room;
  const BookId event = room.addEvent("Harbour Open", "2031-05-19");
  REQUIRE(waitUntil([&] { return room.device->work().event() == event; }));
  const BookId book = readBackNew(room);
  CHECK(room.draft().consentFirst());
  const auto words = room.draft().consentWords();
  REQUIRE(words["choices"].toList().size() == 3);  // there is nothing yet to withdraw
  const Language german = Language::from("de").value();
  CHECK(words["choices"].toList()[0].toMap()["text"] ==
        qtext(consent_text(german, ConsentChoice::this_room)));

  room.draft().answerConsent(static_cast<int>(ConsentChoice::events_entered));
  CHECK_FALSE(room.draft().consentFirst());
  CHECK(room.draft().consentOpen());  // it can still be changed
  CHECK_FALSE(load_player(room.ledger(), book));
  room.desk->confirm(room.draft().readBack());
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(room.ledger().heads(book).at(0).seq == 1);  // in the same action
  const auto record = must(load_player(room.ledger(), book));
  CHECK(record.person.now.consent == ConsentChoice::events_entered);
  REQUIRE(record.consents.size() == 1);
  CHECK(record.consents[0].now.text == consent_text(german, ConsentChoice::events_entered));
  CHECK(record.consents[0].now.event == event);
  CHECK(room.faults.isEmpty());
}

TEST_CASE("the consent can be put off, and is then asked at the next drop-off without a tap more") {
  DeskRoom room;
  const BookId book = readBackNew(room);
  room.draft().answerConsent(0);
  CHECK_FALSE(room.draft().consentFirst());
  room.desk->confirm(room.draft().readBack());
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  auto record = must(load_player(room.ledger(), book));
  CHECK(record.person.now.consent == ConsentChoice::unsaid);
  CHECK(record.consents.empty());

  room.desk->next();
  room.desk->finder()->setTyped("quill");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  CHECK(room.draft().consentOpen());
  CHECK_FALSE(room.draft().consentFirst());
  room.draft().answerConsent(static_cast<int>(ConsentChoice::this_room));
  room.desk->readBack();
  room.desk->confirm(room.draft().readBack());
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  record = must(load_player(room.ledger(), book));
  CHECK(record.person.now.consent == ConsentChoice::this_room);

  room.desk->next();
  room.desk->finder()->setTyped("quill");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  CHECK_FALSE(room.draft().consentOpen());
}

TEST_CASE("a consent that was answered survives the end of the app with its drop-off") {
  DeskRoom room;
  readBackNew(room);
  room.draft().answerConsent(static_cast<int>(ConsentChoice::any_room));
  room.startAgain();
  REQUIRE(room.draft().unfinished().size() == 1);
  room.desk->resume(room.draft().unfinished()[0].toMap()["id"].toString());
  CHECK(room.draft().consent() == static_cast<int>(ConsentChoice::any_room));
}

TEST_CASE("without the player's yes no consent is stored") {
  DeskRoom room;
  const BookId book = readBackNew(room);
  room.draft().answerConsent(static_cast<int>(ConsentChoice::any_room));
  room.desk->back();
  room.desk->storeUnconfirmed();
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(must(load_player(room.ledger(), book)).consents.empty());
}

TEST_CASE("what has to be said of the rackets stands on the page and in the read-back") {
  DeskRoom room;
  const BookId book = room.pastPlayer("Wendelmoor", 2);
  const auto record = must(load_player(room.ledger(), book));
  Draft draft(book, kPlayerBook, kActEdit);
  Racket printed = record.rackets[0].now;
  printed.tension_high = kg("25.5");
  put_changes(draft, record.rackets[0].seen, printed);
  room.append(draft);
  room.settle();
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  CHECK(room.draft().cautions().isEmpty());
  room.draft().adjust("mains", "1");
  REQUIRE(room.draft().cautions().size() == 1);
  CHECK(room.draft().cautions()[0].toMap()["rackets"] == qtext(printed.label));
  room.draft().set("note", "coude douloureux");
  REQUIRE(room.draft().cautions().size() == 2);
  CHECK(room.draft().cautions()[1].toMap()["rackets"] == "");
  room.desk->readBack();
  const Language french = Language::from("fr").value();
  const QString shown = room.draft().readBack();
  CHECK(shown.contains(qtext(caution_for_player(french, Caution::tension_over_range))));
  CHECK(shown.contains(qtext(caution_for_player(french, Caution::arm_pain))));
  room.desk->confirm(shown);
  CHECK(room.desk->page() == DeskModel::Page::Stored);
}

TEST_CASE("a racket whose job at another event was never marked as collected is taken in here") {
  DeskRoom room;
  const BookId harbour = room.addEvent("Harbour Open", "2031-05-19");
  REQUIRE(waitUntil([&] { return room.device->work().event() == harbour; }));
  readBackNew(room);
  room.desk->confirm(room.draft().readBack());
  room.desk->next();
  const BookId lakeside = room.addEvent("Lakeside Cup", "2031-06-09");
  room.device->chooseEvent(lakeside);
  REQUIRE(room.device->work().event() == lakeside);
  room.desk->finder()->setTyped("quill");
  room.desk->choose(0);
  CHECK(room.desk->card()->rackets()[0].toMap()["stage"] == -1);
  room.desk->sameAsLastTime();
  CHECK(room.draft().pickedCount() == 1);
  room.desk->readBack();
  room.desk->confirm(room.draft().readBack());
  CHECK(room.desk->page() == DeskModel::Page::Stored);
}
