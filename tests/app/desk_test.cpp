#include <QAbstractItemModelTester>
#include <QElapsedTimer>

#include "app-qml/view/model_text.h"
#include "core/desk/event_book.h"
#include "core/desk/person_books.h"
#include "core/model/event.h"
#include "core/people/entry_list.h"
#include "tests/app/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Nobody turns up within a moment that is long for what is looked for.
bool staysEmpty(const KnownAlike& alike) {
  const QDeadlineTimer end(400);
  while (!end.hasExpired()) {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    if (!alike.people().isEmpty()) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("same as last time, three rackets, mains one kilo less: four actions after the player is found") {
  DeskRoom room;
  room.addEvent("Harbour Open", "2031-05-19");
  REQUIRE(waitUntil([&] { return room.device->eventName() == "Harbour Open"; }));
  const BookId book = room.pastPlayer("Wendelmoor", 3);
  room.desk->finder()->setTyped("wendel");
  REQUIRE(room.desk->finder()->count() == 1);
  room.desk->choose(0);
  REQUIRE(room.desk->card()->hasLastTime());

  room.desk->sameAsLastTime();  // 1
  CHECK(room.draft().pickedCount() == 3);
  CHECK(room.draft().steps("mains") == QStringList{"-1", "-0.5", "0.5", "1"});
  room.draft().adjust("mains", "-1");  // 2
  CHECK(room.draft().wish()["mains_tension"] == "24");
  REQUIRE(room.draft().changes().size() == 1);
  room.desk->readBack();  // 3
  REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
  CHECK(room.draft().language() == "fr");
  const QString shown = room.draft().readBack();
  CHECK(shown.contains("25"));
  room.desk->confirm(shown);  // 4
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(room.faults.isEmpty());
  REQUIRE(room.draft().tags().size() == 3);
  CHECK(room.draft().tags()[0].toMap()["tag"] == "4");

  const auto record = must(load_player(room.ledger(), book));
  CHECK(record.jobs.size() == 6);
  CHECK(record.drop_offs.back().now.confirmed_text == shown.toStdString());
  CHECK(record.drop_offs.back().now.confirmed_language == "fr");
  CHECK(record.jobs.back().now.mains_tension == kg("24"));
  CHECK(record.jobs.back().now.crosses_tension == kg("24"));

  SECTION("and it can be taken back as a whole") {
    CHECK(room.device->work().undo());
    CHECK(must(load_player(room.ledger(), book)).jobs.size() == 3);
  }
}

TEST_CASE("a text that is not what was shown is not stored, and says so") {
  DeskRoom room;
  room.pastPlayer("Wendelmoor", 1);
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  room.desk->readBack();
  const QString shown = room.draft().readBack();
  room.draft().adjust("mains", "-1");
  room.desk->confirm(shown);
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  REQUIRE(room.faults.size() == 1);
  CHECK(room.draft().begun());
}

TEST_CASE("first two at 25, the next two at 25.5: tensions are spread over the rackets in one tap") {
  DeskRoom room;
  room.desk->finder()->setTyped("Okonjo");
  room.desk->addPlayer();
  room.answerNeeded();
  auto& draft = room.draft();
  for (int i = 0; i < 3; ++i) draft.addRacket();
  draft.set("mains_tension", "25");
  draft.set("crosses_tension", "24");
  const auto tensions = [&] {
    QStringList out;
    for (int i = 0; i < 4; ++i) {
      draft.setScope(i);
      out.append(draft.wish()["mains_tension"].toString() + "/" + draft.wish()["crosses_tension"].toString());
    }
    draft.setScope(-1);
    return out;
  };
  draft.spread(2, "0.5");
  CHECK(tensions() == QStringList{"25/24", "25/24", "25.5/24.5", "25.5/24.5"});
  // Again: from the first racket, not on top of what was spread before.
  draft.spread(1, "0.5");
  CHECK(tensions() == QStringList{"25/24", "25.5/24.5", "26/25", "26.5/25.5"});
  draft.pick(1, false);
  draft.spread(2, "0.5");
  CHECK(tensions() == QStringList{"25/24", "25.5/24.5", "25/24", "25.5/24.5"});
  draft.spread(0, "0.5");
  draft.spread(1, "much");
  CHECK(tensions() == QStringList{"25/24", "25.5/24.5", "25/24", "25.5/24.5"});
}

TEST_CASE("spread setups are named by a tap and kept under those names, and the next time they are found again") {
  DeskRoom room;
  room.desk->finder()->setTyped("Okonjo");
  room.desk->addPlayer();
  room.answerNeeded();
  auto& draft = room.draft();
  for (int i = 0; i < 3; ++i) draft.addRacket();
  draft.set("mains_tension", "25");
  draft.set("crosses_tension", "24");
  draft.spread(2, "0.5");
  REQUIRE(draft.groups().size() == 2);
  const auto group = [&](int at) { return room.draft().groups().at(at).toMap(); };
  CHECK(group(0)["rackets"] == "1, 2");
  CHECK(group(1)["rackets"] == "3, 4");
  CHECK(group(1)["mains"] == QString::fromUtf8("25.5\u00a0kg"));
  CHECK(group(0)["name"] == "usual");
  draft.nameGroup(0, "=day");
  draft.nameGroup(1, "night");
  draft.nameGroup(7, "nobody");
  CHECK(group(0)["name"] == "day");
  CHECK(group(0)["key"] == "=day");
  CHECK(group(1)["name"] == "night");
  draft.nameGroup(1, "");
  CHECK(group(1)["name"] == "usual");
  draft.nameGroup(1, "  slow   clay " + QString(100, 'y'));
  CHECK(group(1)["name"].toString().size() == 60);
  draft.nameGroup(1, " slow  clay ");
  CHECK(group(1)["key"] == "slow clay");
  draft.set("knot_pretension", "10");
  room.startAgain();  // the names are on the disk
  CHECK(room.draft().resume(room.draft().unfinished()[0].toMap()["id"].toString()));
  const BookId book = room.draft().book();
  room.desk->readBack();
  REQUIRE(room.draft().store(room.draft().readBack()));
  const auto record = must(load_player(room.ledger(), book));
  REQUIRE(record.setups.size() == 2);
  CHECK(record.setups[0].now.name == "=day");
  CHECK(record.setups[0].now.knot_pretension == Quantity{{10, 0}, Unit::percent});
  CHECK(record.setups[0].now.mains_tension == kg("25"));
  CHECK(record.setups[1].now.name == "slow clay");
  CHECK(record.setups[1].now.mains_tension == kg("25.5"));
  std::vector<EntityId> jobs;
  for (const auto& job : record.jobs) jobs.push_back(job.id());
  CHECK(record.jobs.at(3).now.setup == record.setups[1].id());
  room.append(must(take_step(record, jobs, {Stage::collected, "Ines", "handed over", room.clock.now()})));
  room.settle();
  // The player's own of that name and wish is taken, not made a second time.
  room.clock.advance(kDay);
  REQUIRE(room.draft().begin(book, false));
  CHECK(group(1)["name"] == "slow clay");
  room.draft().nameGroup(1, "=new_balls");
  CHECK(group(1)["name"] == "new balls");
  room.draft().nameGroup(1, "slow clay");
  REQUIRE(room.draft().prepareReadBack());
  REQUIRE(room.draft().store(room.draft().readBack()));
  CHECK(must(load_player(room.ledger(), book)).setups.size() == 2);
}

TEST_CASE("the bags of a hand-over are counted once for all its rackets, and more than there can be are refused") {
  DeskRoom room;
  room.desk->finder()->setTyped("Okonjo");
  room.desk->addPlayer();
  room.answerNeeded();
  auto& draft = room.draft();
  const BookId book = draft.book();
  draft.setDropOff("bags", 12);
  room.desk->readBack();
  CHECK_FALSE(draft.store(draft.readBack()));
  CHECK(room.faults.size() == 1);
  draft.setDropOff("bags", 2);
  REQUIRE(draft.store(draft.readBack()));
  CHECK(must(load_player(room.ledger(), book)).drop_offs.at(0).now.bags == 2);
}

TEST_CASE("a drop-off in the making survives the end of the app and is gone on with") {
  DeskRoom room;
  room.desk->finder()->setTyped("Okonjo");
  room.desk->addPlayer();
  room.answerNeeded();
  room.draft().set("mains_gauge", "1.25");
  room.draft().set("pieces", 2);
  room.draft().set("mains_supply", 1);
  room.draft().addRacket();
  room.draft().setScope(1);
  room.draft().set("mains_tension", "23.5");
  room.draft().readyIn(120);
  const QString ready = room.draft().readyBy();
  room.startAgain();

  REQUIRE(room.draft().unfinished().size() == 1);
  const auto left = room.draft().unfinished()[0].toMap();
  CHECK(left["player"] == "Okonjo");
  CHECK(left["rackets"] == 2);
  room.desk->resume(left["id"].toString());
  REQUIRE(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(room.draft().wish()["mains_gauge"] == "1.25");
  CHECK(room.draft().wish()["pieces"] == 2);
  CHECK(room.draft().wish()["mains_supply"] == 1);
  CHECK(room.draft().differing() == QStringList{"mains_tension"});
  CHECK(room.draft().readyBy() == ready);
  room.draft().setScope(1);
  CHECK(room.draft().wish()["mains_tension"] == "23.5");

  SECTION("stored, it is not offered again") {
    room.draft().setScope(-1);
    room.desk->readBack();
    room.desk->confirm(room.draft().readBack());
    CHECK(room.desk->page() == DeskModel::Page::Stored);
    room.startAgain();
    CHECK(room.draft().unfinished().isEmpty());
  }
  SECTION("stored, and the app killed before it was taken off the shelf, it is not offered again") {
    const auto kept = room.ledger().remembered("app.drop_offs");
    REQUIRE(kept);
    const BookId book = room.draft().book();
    room.draft().setScope(-1);
    room.desk->readBack();
    room.desk->confirm(room.draft().readBack());
    REQUIRE(room.desk->page() == DeskModel::Page::Stored);
    REQUIRE(room.ledger().remember("app.drop_offs", *kept));
    room.startAgain();
    CHECK(room.draft().unfinished().isEmpty());
    CHECK(must(load_player(room.ledger(), book)).drop_offs.size() == 1);
  }
  SECTION("thrown away, it is not offered again") {
    room.desk->next();
    room.draft().discard(left["id"].toString());
    room.startAgain();
    CHECK(room.draft().unfinished().isEmpty());
  }
}

TEST_CASE("what was kept and cannot be read costs the draft only") {
  DeskRoom room;
  const std::string rubbish = "{\"[[\xff";
  REQUIRE(room.ledger().remember("app.drop_offs", as_bytes(rubbish)));
  room.startAgain();
  CHECK(room.draft().unfinished().isEmpty());
  room.desk->addPlayer();
  CHECK(room.draft().begun());
}

TEST_CASE("55 kg is caught as a slip of the unit beside its field, and the unit can be put right") {
  DeskRoom room;
  room.desk->addPlayer();
  room.draft().setPerson("family_name", "Okonjo");
  room.answerNeeded();
  room.draft().set("mains_tension", "55");
  const auto finding = room.draft().findings()["mains_tension"].toMap();
  CHECK(finding["refused"].toBool());
  CHECK(finding["what"].toString().contains("55"));
  CHECK_FALSE(finding["toDo"].toString().isEmpty());
  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  room.draft().setUnit("mains_tension", "lb");
  CHECK(room.draft().wish()["mains_tension"] == "55");
  CHECK_FALSE(room.draft().findings().contains("mains_tension"));
}

TEST_CASE(
    "what stringing waits for is said once somebody wants to read back, everything else can be skipped") {
  DeskRoom room;
  room.desk->addPlayer();
  CHECK(room.draft().findings().isEmpty());
  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(room.draft().findings().contains("mains_string"));
  CHECK(room.draft().stillNeeded().size() == 5);
  room.draft().setPerson("family_name", "Okonjo");
  room.answerNeeded();
  room.desk->readBack();
  CHECK(room.desk->page() == DeskModel::Page::Confirm);
}

TEST_CASE("a racket that is in the room cannot be taken in again") {
  DeskRoom room;
  room.pastPlayer("Wendelmoor", 2);
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  room.desk->readBack();
  room.desk->confirm(room.draft().readBack());
  room.desk->next();
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  CHECK(room.draft().rackets()[0].toMap()["stage"].toInt() == static_cast<int>(Stage::received));
  room.draft().pick(0, true);
  CHECK(room.draft().pickedCount() == 1);  // the new one, begun because both others are in the room
}

TEST_CASE("entries of today's list are found as new, and become known with their first drop-off") {
  DeskRoom room;
  const BookId event = room.addEvent("Harbour Open", "2031-05-19");
  Draft draft(event, kEventBook, kActImportEntryList);
  EntryListItem entry;
  entry.family_name = "Çelik";
  entry.given_name = "Mirela";
  entry.country = "NOR";
  const EntityId item = put_new(draft, entry, room.clock.now()).id;
  room.append(draft);
  REQUIRE(waitUntil([&] { return room.device->work().event() == event; }));
  room.settle();
  PlayersModel& finder = *room.desk->finder();
  const QAbstractItemModelTester tester(&finder, QAbstractItemModelTester::FailureReportingMode::Fatal);
  finder.setTyped("celik");
  REQUIRE(finder.count() == 1);
  CHECK(finder.data(finder.index(0), PlayersModel::FreshRole).toBool());
  room.desk->choose(0);
  REQUIRE(room.desk->page() == DeskModel::Page::DropOff);
  CHECK(room.draft().person()["country"] == "NOR");
  room.answerNeeded();
  const BookId book = room.draft().book();
  room.desk->readBack();
  room.desk->confirm(room.draft().readBack());
  REQUIRE(room.desk->page() == DeskModel::Page::Stored);
  CHECK(from_state<EntryListItem>(*room.ledger().entity(event, item)).player == book);
  room.settle();
  finder.setTyped("celik");
  REQUIRE(finder.count() == 1);
  CHECK_FALSE(finder.data(finder.index(0), PlayersModel::FreshRole).toBool());
}

TEST_CASE("the list of players reads more as it is scrolled") {
  DeskRoom room;
  for (int i = 0; i < 130; ++i) room.addPlayer(named("Player" + std::to_string(100 + i)));
  room.settle();
  PlayersModel& finder = *room.desk->finder();
  CHECK(finder.count() == 60);
  CHECK(finder.known() == 130);
  const QAbstractItemModelTester tester(&finder, QAbstractItemModelTester::FailureReportingMode::Fatal);
  while (finder.canFetchMore({})) finder.fetchMore({});
  CHECK(finder.count() == 130);
  finder.setTyped("player129");
  CHECK(finder.count() == 1);
}

TEST_CASE("a player's card holds what can be mended, and mends it as an action of its own") {
  DeskRoom room;
  const BookId book = room.pastPlayer("Wendelmoor", 2);
  PlayerCard card(room.device->work());
  card.show(idText(book));
  CHECK(card.name() == "Wendelmoor Ilse");
  CHECK(card.jobCount() == 2);
  REQUIRE(card.agreed().size() == 1);
  CHECK(card.agreed()[0].toMap()["mains"] == "25");
  CHECK(card.savePerson({{"contact", "coach, court 3"}, {"tension_unit", 2}}));
  CHECK(card.person()["contact"] == "coach, court 3");
  const auto record = must(load_player(room.ledger(), book));
  CHECK(record.person.now.tension_unit == Unit::pound_force);
  CHECK(card.saveRacket(card.rackets()[0].toMap()["id"].toString(), {{"label", "red dot"}}));
  CHECK(card.rackets()[0].toMap()["label"] == "red dot");
  const QString text = PlayerCard::consentText(2, "fr");
  CHECK(card.giveConsent(2, "fr", text));
  CHECK(must(load_player(room.ledger(), book)).person.now.consent == ConsentChoice::events_entered);
  CHECK_FALSE(card.giveConsent(2, "fr", "something else"));
}

TEST_CASE("a new player who may be known is shown beside who is here, and one tap takes that one") {
  DeskRoom room;
  const BookId ilse = room.pastPlayer("Wendelmoor", 2);
  KnownAlike& alike = *room.desk->alike();
  room.desk->finder()->setTyped("Vendelmor");  // as it was heard
  room.desk->addPlayer();
  room.draft().setPerson("given_name", "Ilse");
  REQUIRE(waitUntil([&] { return alike.people().size() == 1; }));
  const auto shown = alike.people().first().toMap();
  CHECK(shown["book"].toString() == idText(ilse));
  CHECK(shown["name"].toString() == "Wendelmoor Ilse");
  CHECK(shown["like"].toString().contains("name"));
  CHECK(shown["last"].toString().contains("25 / 24 kg"));
  CHECK_FALSE(alike.known());

  SECTION("with nothing said but the name the card of the known one is shown, and nothing is left unfinished") {
    room.desk->takeKnown(idText(ilse));
    CHECK(room.desk->page() == DeskModel::Page::Player);
    CHECK(room.desk->card()->book() == idText(ilse));
    CHECK_FALSE(room.draft().begun());
    CHECK(room.draft().unfinished().isEmpty());
    CHECK(alike.people().isEmpty());
    CHECK(find_players(room.ledger(), "vendel", 5).empty());
  }
  SECTION("what was said of rackets and strings meanwhile stays") {
    room.answerNeeded();
    room.draft().set("mains_tension", "26");
    room.desk->takeKnown(idText(ilse));
    CHECK(room.desk->page() == DeskModel::Page::DropOff);
    CHECK_FALSE(room.draft().fresh());
    CHECK(room.draft().book() == ilse);
    CHECK(room.draft().player().contains("Wendelmoor"));
    room.desk->readBack();
    REQUIRE(room.desk->page() == DeskModel::Page::Confirm);
    room.desk->confirm(room.draft().readBack());
    const auto record = must(load_player(room.ledger(), ilse));
    CHECK(record.jobs.size() == 3);
    CHECK(record.jobs.back().now.mains_tension == Quantity{{26, 0}, Unit::kilogram_force});
    CHECK(room.faults.isEmpty());
  }
  SECTION("somebody else is not asked about again, and nothing of that is kept") {
    alike.someoneElse();
    CHECK(alike.people().isEmpty());
    room.draft().setPerson("country", "NED");
    room.draft().setPerson("country", "BEL");
    CHECK(staysEmpty(alike));
    room.answerNeeded();
    room.desk->readBack();
    room.desk->confirm(room.draft().readBack());
    CHECK(find_players(room.ledger(), "vendel", 5).size() == 1);
    room.desk->next();
    // Another drop-off asks anew.
    room.desk->finder()->setTyped("Wendelmor");
    room.desk->addPlayer();
    room.draft().setPerson("given_name", "Ilse");
    REQUIRE(waitUntil([&] { return !alike.people().isEmpty(); }));
  }
}

TEST_CASE("somebody of the entry list who may be known is asked about too, and linked to the one that is taken") {
  DeskRoom room;
  const BookId ilse = room.pastPlayer("Wendelmoor", 1);
  const BookId event = room.addEvent("Lakeside", "2031-06-20");
  room.device->chooseEvent(event);
  const auto rows = must(read_entry_list("family_name,given_name\nWendelmor,Ilse\nTarrengold,Ada\n")).rows;
  for (const Draft& draft : import_entries(must(load_event(room.ledger(), event)), rows, room.clock.now()).drafts) room.append(draft);
  room.settle();
  room.desk->finder()->setTyped("wendelmor ");
  REQUIRE(room.desk->finder()->count() == 1);
  room.desk->choose(0);
  REQUIRE(room.draft().fresh());
  REQUIRE(waitUntil([&] { return !room.desk->alike()->people().isEmpty(); }));
  room.desk->takeKnown(idText(ilse));
  int linked = 0;
  for (const auto& state : room.ledger().entities(event, kEntryListItem)) linked += from_state<EntryListItem>(state).player == ilse ? 1 : 0;
  CHECK(linked == 1);
  // Nobody is alike to one whom nobody knows, and too little of a name says nothing.
  room.desk->next();
  room.desk->finder()->setTyped("tarren");
  room.desk->choose(0);
  CHECK(staysEmpty(*room.desk->alike()));
  CHECK(room.faults.isEmpty());
}

TEST_CASE("a player's rackets and last setups of all linked books are at the drop-off; what another book knew comes into the newest one") {
  DeskRoom room;
  const BookId older = room.pastPlayer("Wendelmoor", 2), newer = room.pastPlayer("Wendelmore", 1);
  // The older book has a racket of its own, last strung otherwise.
  const auto record = must(load_player(room.ledger(), older));
  {
    const auto& racket = record.rackets.at(1);
    Racket named = racket.now;
    named.label = "7";
    named.maker = "Orrin";
    Draft draft(older, kPlayerBook, kActEdit);
    put_changes(draft, racket.seen, named);
    Job job = record.jobs.at(1).now;
    job.racket = racket.id();
    job.at = room.clock.now();
    job.mains_tension = Quantity{{22, 0}, Unit::kilogram_force};
    job.drop_off = {};
    (void)put_new(draft, job, room.clock.now());
    room.append(draft);
  }
  room.clock.advance(kDay);
  for (const Draft& draft : must(say_of_books(room.ledger(), older, newer, LinkSaid::same_person, "Ines", room.clock.now()))) room.append(draft);
  room.settle();
  REQUIRE(room.draft().begin(newer, false));
  const auto shown = room.draft().rackets();
  // Racket 1 is in both books and stands once; 7 is the other book's.
  REQUIRE(shown.size() == 2);
  CHECK(shown[0].toMap()["label"].toString() == "1");
  const auto seven = shown[1].toMap();
  CHECK(seven["label"].toString() == "7");
  CHECK(seven["mains"].toString().contains("22"));
  CHECK_FALSE(seven["picked"].toBool());
  room.draft().pick(0, false);
  room.draft().pick(1, true);
  room.draft().answerConsent(static_cast<int>(ConsentChoice::any_room));
  REQUIRE(room.draft().prepareReadBack());
  REQUIRE(room.draft().store(room.draft().readBack()));
  const auto after = must(load_player(room.ledger(), newer));
  CHECK(after.jobs.size() == 2);
  // Whoever agrees does not know of books.
  CHECK(after.person.now.consent == ConsentChoice::any_room);
  CHECK(must(load_player(room.ledger(), older)).person.now.consent == ConsentChoice::any_room);
  CHECK(after.rackets.back().now.label == "7");
  CHECK(after.jobs.back().now.mains_tension == Quantity{{22, 0}, Unit::kilogram_force});
  CHECK(must(load_player(room.ledger(), older)).jobs.size() == 3);
  CHECK(room.faults.isEmpty());
}

TEST_CASE("where the rackets differ it is shown what they have, and only what a person says is changed") {
  DeskRoom room;
  room.desk->finder()->setTyped("Okonjo");
  room.desk->addPlayer();
  room.answerNeeded();
  room.draft().set("mains_gauge", "1.25");
  room.draft().addRacket();
  room.draft().addRacket();
  room.draft().setScope(1);
  room.draft().set("mains_tension", "23.5");
  room.draft().set("mains_gauge", "");
  room.draft().set("note", "for the evening");
  room.draft().set("mains_supply", 2);
  room.draft().setScope(-1);
  const auto has = [&](int racket, const char* field) {
    room.draft().setScope(racket);
    const QString out = room.draft().wish()[QLatin1String(field)].toString();
    room.draft().setScope(-1);
    return out;
  };
  QStringList differing = room.draft().differing();
  differing.sort();
  CHECK(differing == QStringList{"mains_gauge", "mains_supply", "mains_tension", "note"});
  CHECK(room.draft().apart()["mains_tension"].toString() == QString::fromUtf8("25\u00a0kg, 23.5\u00a0kg"));
  CHECK(room.draft().apart()["mains_gauge"].toString() == QString::fromUtf8("1.25\u00a0mm, –"));
  CHECK_FALSE(room.draft().apart().contains("crosses_tension"));

  SECTION("an entry that says nothing takes nothing away") {
    room.draft().set("mains_tension", "");
    room.draft().set("note", "");
    CHECK(has(0, "mains_tension") == "25");
    CHECK(has(1, "mains_tension") == "23.5");
    CHECK(has(1, "note") == "for the evening");
  }
  SECTION("what is begun for all and emptied again leaves each as it was") {
    room.draft().set("mains_tension", "2");
    room.draft().set("mains_tension", "24");
    CHECK(room.draft().differing().indexOf("mains_tension") < 0);
    room.draft().set("mains_tension", "");
    CHECK(has(0, "mains_tension") == "25");
    CHECK(has(1, "mains_tension") == "23.5");
    CHECK(has(2, "mains_tension") == "25");
    CHECK(room.draft().apart()["mains_tension"].toString() == QString::fromUtf8("25\u00a0kg, 23.5\u00a0kg"));
  }
  SECTION("what is said for all holds for all") {
    room.draft().set("mains_tension", "24");
    room.draft().set("mains_supply", 0);
    for (int racket = 0; racket < 3; ++racket) {
      CHECK(has(racket, "mains_tension") == "24");
      CHECK(has(racket, "mains_supply") == "0");
    }
    CHECK(has(1, "note") == "for the evening");
    // It is the answer then, and can be taken away like any other.
    room.draft().set("mains_tension", "");
    CHECK(has(0, "mains_tension") == "");
  }
  SECTION("a step is one for each that has a figure, from where it is") {
    room.draft().stepEach("mains_tension", "0.5", "1", "999");
    CHECK(has(0, "mains_tension") == "25.5");
    CHECK(has(1, "mains_tension") == "24");
    room.draft().stepEach("mains_gauge", "-0.01", "0.5", "2.5");
    CHECK(has(0, "mains_gauge") == "1.24");
    CHECK(has(1, "mains_gauge") == "");
  }
}
