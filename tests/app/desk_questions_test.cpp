#include "core/desk/questions.h"

#include "tests/app/desk_room.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A player with a past, for whose setup the bench says 26 kg and this desk 24 kg.
struct AskedAtDesk : DeskRoom {
  BookId player;
  Tablet other{"Bench tablet"};

  AskedAtDesk() {
    player = pastPlayer("Wendelmoor", 2);
    bringTo(other, *this, player);
    const EntityId setup = record().setups.front().id();
    other.change<Setup>(player, setup, [](Setup& held) { held.mains_tension = kg("26"); });
    change([&](Setup& held) { held.mains_tension = kg("24"); });
    bringFrom(other, *this, player);
    settle();
    REQUIRE(ledger().open_questions(player).size() == 1);
    desk->finder()->setTyped("wendel");
    desk->choose(0);
  }
  [[nodiscard]] PlayerRecord record() const { return must(load_player(ledger(), player)); }
  template <class Change>
  void change(Change say) {
    const auto held = record().setups.front();
    Setup now = held.now;
    say(now);
    Draft draft(player, kPlayerBook, kActEdit);
    put_changes(draft, held.seen, now);
    append(draft);
  }
  void closedThere(const Quantity& tension) {
    closeThere(other, *this, player, Value{tension});
    settle();
  }
  QVariantMap question() { return draft().questions().value(0).toMap(); }
  /// Which of the answers it is, as it is listed.
  int at(const QString& text) {
    const auto answers = question()["answers"].toList();
    for (int i = 0; i < answers.size(); ++i)
      if (answers[i].toMap()["text"].toString().startsWith(text)) return i;
    return -1;
  }
};

}  // namespace

TEST_CASE("with two answers open neither is taken unsaid: the field says nothing and nothing is read back") {
  AskedAtDesk room;
  std::vector<int> parts;
  QObject::connect(room.desk.get(), &DeskModel::heldBack, [&](int part) { parts.push_back(part); });
  room.desk->sameAsLastTime();
  REQUIRE(room.draft().questions().size() == 1);
  CHECK(room.question()["field"] == "Mains tension");
  CHECK(room.question()["rackets"] == "1, 2");
  CHECK(room.question()["chosen"] == -1);
  REQUIRE(room.question()["answers"].toList().size() == 2);
  CHECK(room.at("24") >= 0);
  CHECK(room.at("26") >= 0);
  CHECK(room.draft().openFields() == QStringList{"mains_tension"});
  CHECK(room.draft().wish()["mains_tension"] == "");
  CHECK(room.draft().wish()["crosses_tension"] == "24");
  CHECK(room.draft().rackets()[0].toMap()["mains"] == "?");
  CHECK(room.draft().changes().isEmpty());

  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  room.desk->storeUnconfirmed();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(parts == std::vector{2, 2});

  // It can't be stepped, spread or given another unit before it is asked.
  int asked = 0;
  QObject::connect(&room.draft(), &DropOffDraft::questionFirst, [&] { ++asked; });
  room.draft().adjust("mains", "-1");
  room.draft().set("mains_tension", "23");
  room.draft().setUnit("mains_tension", "lb");
  room.draft().spread(1, "0.5");
  CHECK(asked == 4);
  CHECK(room.draft().wish()["mains_tension"] == "");
  room.draft().adjust("crosses", "-1");
  CHECK(room.draft().wish()["crosses_tension"] == "23");

  // Whoever hands over none of its rackets is not asked.
  room.draft().pick(0, false);
  CHECK(room.question()["rackets"] == "2");
  room.draft().pick(1, false);
  CHECK(room.draft().questions().isEmpty());
}

TEST_CASE("the answer that is chosen is named in the read-back, and the yes closes the question as an answer") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  CHECK_FALSE(room.draft().settle(0, 2));
  CHECK_FALSE(room.draft().settle(1, 0));
  REQUIRE(room.draft().settle(0, room.at("26")));
  CHECK(room.question()["chosen"] == room.at("26"));
  CHECK(room.draft().openFields().isEmpty());
  CHECK(room.draft().wish()["mains_tension"] == "26");
  // The player thinks it over, and has a word more.
  REQUIRE(room.draft().settle(0, room.at("24")));
  CHECK(room.draft().wish()["mains_tension"] == "24");
  room.draft().adjust("crosses", "-1");
  room.draft().setLanguage("en");
  room.desk->readBack();
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  const QString shown = room.draft().readBack();
  CHECK(shown.contains("Different answers stood for mains tension"));
  CHECK(shown.contains("From now on 24\u00a0kg holds."));
  room.desk->confirm(shown);
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(room.faults.isEmpty());

  CHECK(room.ledger().open_questions(room.player).empty());
  const auto record = room.record();
  CHECK(record.setups.front().now.mains_tension == kg("24"));
  CHECK(record.jobs.back().now.mains_tension == kg("24"));
  CHECK(record.drop_offs.back().now.confirmed_text == shown.toStdString());
  const auto state = room.ledger().entity(room.player, record.setups.front().id());
  const auto origin = room.ledger().origin(room.player, state->find(tag_of<Setup>(&Setup::mains_tension))->latest().dot);
  REQUIRE(origin);
  CHECK(origin->action == kActCloseQuestion);
  // The other tablet hears that it is closed.
  bringTo(room.other, room, room.player);
  CHECK(room.other.ledger->open_questions(room.player).empty());

  SECTION("the drop-off can be taken back, and the answer stays") {
    CHECK(room.device->work().undo());
    CHECK(room.record().jobs.size() == 2);
    CHECK(room.ledger().open_questions(room.player).empty());
    CHECK(room.record().setups.front().now.mains_tension == kg("24"));
  }
}

TEST_CASE("another answer can be given; what can't be meant chooses nothing and says why") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  CHECK_FALSE(room.draft().settleOtherwise(0, "2k", "kg").isEmpty());
  CHECK(room.question()["chosen"] == -1);
  CHECK_FALSE(room.draft().settleOtherwise(0, "250", "kg").isEmpty());
  CHECK(room.question()["chosen"] == -1);
  CHECK(room.draft().settleOtherwise(0, "25", "kg").isEmpty());
  CHECK(room.question()["chosen"] == 2);
  CHECK(room.question()["other"] == "25");
  CHECK(room.question()["unit"] == "kg");
  // Emptied again: nothing is chosen.
  CHECK(room.draft().settleOtherwise(0, "", "kg").isEmpty());
  CHECK(room.question()["chosen"] == -1);
  CHECK(room.draft().settleOtherwise(0, "25", "kg").isEmpty());

  SECTION("and closes the question with the yes") {
    room.desk->readBack();
    room.desk->confirm(room.draft().readBack());
    REQUIRE(room.desk->page() == DeskModel::Page::Stored);
    CHECK(room.ledger().open_questions(room.player).empty());
    CHECK(room.record().setups.front().now.mains_tension == kg("25"));
  }
  SECTION("what is chosen is still chosen after a kill") {
    room.startAgain();
    REQUIRE(room.draft().unfinished().size() == 1);
    REQUIRE(room.draft().resume(room.draft().unfinished()[0].toMap()["id"].toString()));
    CHECK(room.question()["chosen"] == 2);
    CHECK(room.draft().wish()["mains_tension"] == "25");
  }
  SECTION("unconfirmed, the racket goes by it and the question stays open") {
    room.desk->storeUnconfirmed();
    REQUIRE(room.desk->page() == DeskModel::Page::Stored);
    CHECK(room.record().jobs.back().now.mains_tension == kg("25"));
    CHECK(room.ledger().open_questions(room.player).size() == 1);
  }
}

TEST_CASE("an answer that comes in while the player reads opens the question again, and nothing is stored") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  REQUIRE(room.draft().settle(0, room.at("24")));
  room.desk->readBack();
  const QString shown = room.draft().readBack();
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  Tablet third("Third tablet");
  third.clock.set(room.clock.now());
  bringTo(third, room, room.player);
  third.change<Setup>(room.player, room.record().setups.front().id(), [](Setup& held) { held.mains_tension = kg("27"); });
  room.change([](Setup& held) { held.mains_tension = kg("23"); });
  bringFrom(third, room, room.player);
  room.settle();
  room.desk->confirm(shown);
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(room.faults.size() == 1);
  CHECK(room.record().jobs.size() == 2);
  CHECK(room.draft().openFields() == QStringList{"mains_tension"});
}

TEST_CASE("a racket that is new today is wanted as the one before it, and waits for the same answer") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  room.draft().addRacket();
  CHECK(room.question()["rackets"] == "1, 2, 3");
  room.draft().setScope(2);
  CHECK(room.draft().openFields() == QStringList{"mains_tension"});
  REQUIRE(room.draft().settle(0, room.at("26")));
  CHECK(room.draft().wish()["mains_tension"] == "26");
}

TEST_CASE("what is typed and can't stand stops the read-back at its field") {
  DeskRoom room;
  room.pastPlayer("Wendelmoor", 1);
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  std::vector<int> parts;
  QStringList fields;
  QObject::connect(room.desk.get(), &DeskModel::heldBack, [&](int part) { parts.push_back(part); });
  QObject::connect(&room.draft(), &DropOffDraft::fieldFirst, [&](const QString& field) { fields.append(field); });
  room.draft().mistyped("mains_tension", "22k5");
  room.draft().mistyped("mains_gauge", "9");
  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  room.draft().mistyped("mains_tension", "");
  room.desk->storeUnconfirmed();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  room.draft().mistyped("mains_gauge", "");
  room.draft().mistyped("bags", "x");
  room.desk->readBack();
  CHECK(parts == std::vector{2, 1, 3});
  CHECK(fields == QStringList{"mains_tension", "mains_gauge", "bags"});
  // Left and taken up again, nothing is typed there any more.
  room.desk->back();
  room.desk->sameAsLastTime();
  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::Confirm);
}

TEST_CASE("the first step of a tension or a gauge goes to what is usual in its unit") {
  DeskRoom room;
  room.desk->finder()->setTyped("Quillon");
  room.desk->addPlayer();
  auto& draft = room.draft();
  CHECK(draft.usualFirst("mains_tension") == "23");
  draft.setUnit("mains_tension", "lb");
  CHECK(draft.usualFirst("mains_tension") == "51");
  draft.setUnit("mains_tension", "N");
  CHECK(draft.usualFirst("mains_tension") == "225");
  CHECK(draft.usualFirst("crosses_gauge") == "1.25");
  CHECK(draft.usualFirst("mains_prestretch") == "");
}

TEST_CASE("an answer given at another tablet is what the drop-off goes by, and the card says so where another one was chosen here") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  QString unlike;
  SECTION("nothing was chosen here") {}
  SECTION("another one was chosen here") {
    REQUIRE(room.draft().settle(0, room.at("24")));
    unlike = QString::fromUtf8("24\u00a0kg");
  }
  room.closedThere(kg("26"));
  CHECK(room.draft().openFields().isEmpty());
  CHECK(room.draft().wish()["mains_tension"] == "26");
  REQUIRE(room.draft().questions().size() == 1);
  CHECK(room.question()["closed"].toMap()["text"].toString() == QString::fromUtf8("26\u00a0kg"));
  CHECK(room.question()["closed"].toMap()["device"] == "Bench tablet");
  CHECK(room.question()["unlike"] == unlike);
  CHECK_FALSE(room.draft().settle(0, 0));
  CHECK_FALSE(room.draft().settleOtherwise(0, "25", "kg").isEmpty());
  CHECK(room.draft().wish()["mains_tension"] == "26");
  room.draft().setLanguage("en");
  room.desk->readBack();
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  const QString shown = room.draft().readBack();
  CHECK_FALSE(shown.contains("Different answers stood"));
  room.desk->confirm(shown);
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(room.record().jobs.back().now.mains_tension == kg("26"));
  CHECK(room.record().setups.front().now.mains_tension == kg("26"));
  CHECK(room.ledger().open_questions(room.player).empty());
  CHECK(room.faults.isEmpty());
}

TEST_CASE("whoever chose what was answered elsewhere has nothing to read") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  REQUIRE(room.draft().settle(0, room.at("26")));
  room.closedThere(kg("26"));
  CHECK(room.draft().questions().isEmpty());
  CHECK(room.draft().wish()["mains_tension"] == "26");
}

TEST_CASE("an answer given at another tablet while the player reads stores nothing that was read before") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  REQUIRE(room.draft().settle(0, room.at("24")));
  room.desk->readBack();
  const QString shown = room.draft().readBack();
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  room.closedThere(kg("26"));
  room.desk->confirm(shown);
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(room.faults.size() == 1);
  CHECK(room.record().jobs.size() == 2);
  CHECK(room.record().setups.front().now.mains_tension == kg("26"));
  room.desk->readBack();
  room.desk->confirm(room.draft().readBack());
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(room.record().jobs.back().now.mains_tension == kg("26"));
}

TEST_CASE("a drop-off that was left follows what was answered elsewhere by the time it is gone on with") {
  AskedAtDesk room;
  room.desk->sameAsLastTime();
  REQUIRE(room.draft().settle(0, room.at("24")));
  room.startAgain();
  room.closedThere(kg("26"));
  REQUIRE(room.draft().unfinished().size() == 1);
  REQUIRE(room.draft().resume(room.draft().unfinished()[0].toMap()["id"].toString()));
  CHECK(room.draft().wish()["mains_tension"] == "26");
  CHECK(room.question()["closed"].toMap()["text"].toString() == QString::fromUtf8("26\u00a0kg"));
}
