// Arriving at an event, against a real server in this process.

#include "app-qml/view/arrival_steps.h"

#include "app-qml/view/exchange_model.h"
#include "core/desk/event_book.h"
#include "core/desk/person_books.h"
#include "core/people/consent.h"
#include "core/people/entry_list.h"
#include "sync/trust/proquint.h"
#include "tests/app/event_server.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A server of an event with an entry list.
struct ListedServer : EventServer {
  explicit ListedServer(const std::string& table) {
    for (const Draft& draft : import_entries(must(load_event(ledger(), event)), must(read_entry_list(table)).rows, ledger().wall().now()).drafts)
      (void)must(ledger().append(draft));
  }
  [[nodiscard]] Ledger& ledger() const { return station->ledger(); }
  BookId addPlayer(const Person& person, int jobs, UnixMs at) {
    const BookId book = ledger().create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    (void)put_new(draft, person, at);
    for (int i = 0; i < jobs; ++i) {
      Job job;
      job.at = at;
      job.event = event;
      (void)put_new(draft, job, at);
    }
    (void)must(ledger().append(draft));
    return book;
  }
  void link(const std::string& family, const BookId& player) {
    const auto record = must(load_event(ledger(), event));
    for (const auto& entry : record.entries) {
      if (entry.now.family_name != family) continue;
      const std::pair<EntityId, BookId> link{entry.id(), player};
      (void)must(ledger().append(must(link_entries(record, std::span(&link, 1)))));
    }
  }
};

Person whole(const std::string& family, const std::string& given, const std::string& country, std::int64_t year) {
  Person person = named(family, given);
  person.country = country;
  person.birth_year = year;
  return person;
}

/// The app as it is on the tablet, with the models of its arrival.
struct ArrivingTablet : AppRoom {
  std::unique_ptr<ExchangeModel> exchange;
  std::unique_ptr<ArrivalModel> list;
  std::unique_ptr<ArrivalSteps> steps;

  ArrivingTablet() {
    clock.set(WallClock::system().now());
    open();
  }
  void open() {
    exchange = std::make_unique<ExchangeModel>(*device);
    list = std::make_unique<ArrivalModel>(*device);
    list->setLooking(true);
    steps = std::make_unique<ArrivalSteps>(*device);
  }
  /// As a kill does it: what is only in memory is gone.
  void startAgain() {
    steps.reset();
    list.reset();
    exchange.reset();
    stop();
    start();
    open();
  }
  BookId addPlayer(const Person& person, int jobs, UnixMs at) {
    const BookId book = ledger().create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    (void)put_new(draft, person, at);
    append(draft);
    for (int i = 0; i < jobs; ++i) {
      Draft more(book, kPlayerBook, kActDropOff);
      Job job;
      job.at = at;
      (void)put_new(more, job, at);
      append(more);
    }
    return book;
  }
  void pair(EventServer& server) { REQUIRE(exchange->pair(server.codeFor(Role::desk), "").isEmpty()); }
  bool comesTo(ArrivalSteps::Step step) {
    return waitUntil([&] { return steps->step() == step; });
  }
  int rowOf(const QString& name) {
    for (int row = 0; row < list->rowCount(); ++row)
      if (role(*list, row, "name").toString() == name) return row;
    return -1;
  }
};

/// What the server remembers of its agreement with the tablet, in words.
QString wordsThere(const EventServer& server, const AppRoom& room) {
  const auto number = must(server.station->peers().number_of(room.ledger().self().key));
  const auto agreement = server.station->peers().agreement(number);
  return agreement ? QString::fromStdString(agreement_words(agreement->digest)) : QString();
}

constexpr const char* kList =
    "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Jo,BEL,1999\nOkonjo,Ada,NGR,2001\nTarrengold,Mei,SGP,2003\n";

}  // namespace

TEST_CASE("an arrival from the code to the account: the list, who is known, what each side gains, what stays and why, the same words") {
  ListedServer server(kList);
  ArrivingTablet room;
  const UnixMs now = room.clock.now();
  const BookId ilse = room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 3, now - 10 * kDay);
  Person withdrawn = whole("Vantreel", "Jo", "BEL", 1999);
  withdrawn.consent = ConsentChoice::withdrawn;
  const BookId jo = room.addPlayer(withdrawn, 1, now - kDay), stranger = room.addPlayer(whole("Quillfeather", "Sam", "USA", 1990), 2, now);
  server.link("Okonjo", server.addPlayer(whole("Okonjo", "Ada", "NGR", 2001), 2, now - 3 * kDay));
  CHECK_FALSE(room.steps->goingOn());
  CHECK(room.steps->step() == ArrivalSteps::Meet);

  room.pair(server);
  CHECK(room.steps->goingOn());
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->count() == 4 && room.list->known() == 3 && room.list->gains()["herePlayers"].toInt() == 1; }));
  CHECK(room.list->fresh() == 1);
  CHECK(room.list->gains()["hereFirst"].toInt() == 1);
  CHECK(room.list->gains()["hereRackets"].toInt() == 2);
  CHECK(room.list->gains()["roomPlayers"].toInt() == 0);
  CHECK(role(*room.list, room.rowOf("Okonjo Ada"), "came").toString().contains("2 racket"));
  CHECK(role(*room.list, room.rowOf("Okonjo Ada"), "sent").toBool());
  const auto candidate = role(*room.list, room.rowOf("Wendelmoor Ilse"), "candidates").toList().first().toMap();
  CHECK(candidate["room"].toString().contains("3 racket"));

  room.list->tickAllKnown();
  CHECK(room.list->ticked() == 1);
  CHECK(room.list->gains()["roomPlayers"].toInt() == 1);
  CHECK(room.list->gains()["roomFirst"].toInt() == 1);
  CHECK(room.list->gains()["roomRackets"].toInt() == 3);
  REQUIRE(room.list->consents().size() == 1);
  CHECK(room.list->consents().first().toMap()["choice"].toInt() == static_cast<int>(ConsentChoice::unsaid));
  REQUIRE(room.list->staying().size() == 1);
  CHECK(room.list->staying().first().toMap()["why"].toInt() == ArrivalModel::NotAgreed);

  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  REQUIRE(waitUntil([&] { return room.steps->playersWent() == 1 && room.steps->playersCame() == 1; }));
  CHECK(room.steps->racketsWent() == 3);
  CHECK(room.steps->racketsCame() == 2);
  CHECK(room.steps->gone() == room.steps->toGo());
  CHECK(room.steps->toGo() == 4);
  CHECK(server.ledger().book(ilse));
  CHECK_FALSE(server.ledger().book(jo));
  CHECK_FALSE(server.ledger().book(stranger));
  REQUIRE(waitUntil([&] { return room.exchange->state() == ExchangeModel::Agreed && room.exchange->agreedWords() == wordsThere(server, room); }));
  CHECK(room.exchange->agreedWords().count('-') == 2);
  room.steps->finish();
  CHECK_FALSE(room.steps->goingOn());
  CHECK(room.steps->step() == ArrivalSteps::Meet);
}

TEST_CASE("an arrival goes on after a cut link and a closed app: ticks, what was sent and the account are there again") {
  ListedServer server(kList);
  ArrivingTablet room;
  const UnixMs now = room.clock.now();
  const BookId ilse = room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 40, now - 10 * kDay);
  const BookId mei = room.addPlayer(whole("Tarrengold", "Mei", "SGP", 2003), 1, now);
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->known() == 2; }));
  room.list->tick(room.rowOf("Wendelmoor Ilse"), 0);

  // Closed with one ticked and nothing sent; the server is out of reach then.
  const auto port = server.host->port();
  server.host.reset();
  room.startAgain();
  CHECK(room.steps->goingOn());
  REQUIRE(room.comesTo(ArrivalSteps::People));
  CHECK(room.steps->cut());
  REQUIRE(waitUntil([&] { return room.list->ticked() == 1; }));
  CHECK(room.list->staying().size() == 1);
  // Sent without a connection: it waits.
  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(waitUntil([&] { return room.steps->toGo() == 41; }));
  CHECK(room.steps->step() == ArrivalSteps::Across);
  CHECK(room.steps->gone() == 0);
  CHECK(room.steps->secondsLeft() == -1);
  room.startAgain();
  CHECK(room.steps->step() == ArrivalSteps::Across);
  REQUIRE(waitUntil([&] { return room.steps->toGo() == 41; }));

  server.start(port);
  room.exchange->tryNow();
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  CHECK(server.ledger().book(ilse));
  CHECK_FALSE(server.ledger().book(mei));
  REQUIRE(waitUntil([&] { return room.steps->racketsWent() == 40; }));
  CHECK(room.steps->gone() == 41);
  REQUIRE(waitUntil([&] { return room.exchange->agreedWords() == wordsThere(server, room); }));
  // One more is looked at after all.
  room.steps->lookAgain();
  CHECK(room.steps->step() == ArrivalSteps::People);
  room.list->tickAllKnown();
  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  CHECK(server.ledger().book(mei));
  REQUIRE(waitUntil([&] { return room.steps->playersWent() == 2; }));
}

TEST_CASE("a transfer that is cut in the middle goes on from there and is counted once") {
  ListedServer server(kList);
  ArrivingTablet room;
  // Long texts, so that one batch does not hold everything.
  const BookId ilse = room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 0, room.clock.now());
  for (int i = 0; i < 150; ++i) {
    Draft draft(ilse, kPlayerBook, kActEdit);
    Racket racket;
    for (int turn = 0; turn < 700; ++turn) racket.note += std::to_string(i * 7919 + turn * 104729);
    (void)put_new(draft, racket, room.clock.now());
    room.append(draft);
  }
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->known() == 1; }));
  room.list->tickAllKnown();
  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(waitUntil([&] { return server.ledger().book(ilse).has_value(); }));
  const auto port = server.host->port();
  server.host.reset();
  const auto arrived = server.ledger().heads(ilse).at(0).seq;
  CHECK(arrived < 151);
  server.start(port);
  room.exchange->tryNow();
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  CHECK(server.ledger().heads(ilse) == room.ledger().heads(ilse));
  CHECK(room.steps->playersWent() == 1);
  CHECK(room.steps->gone() == 151);
}

TEST_CASE("where the room has a book of its own of somebody whom we know, it is asked, and both are linked or told apart") {
  ListedServer server(kList);
  ArrivingTablet room;
  const UnixMs now = room.clock.now();
  const BookId ours = room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 2, now - 2 * kDay);
  const BookId theirs = server.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 1, now - 30 * kDay);
  server.link("Wendelmoor", theirs);
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->likely() == 1; }));
  const int row = room.rowOf("Wendelmoor Ilse");
  REQUIRE(role(*room.list, row, "asksForLink").toBool());
  const auto candidates = role(*room.list, row, "candidates").toList();
  REQUIRE(candidates.size() == 2);
  CHECK(candidates[0].toMap()["atRoom"].toBool());
  CHECK(candidates[1].toMap()["room"].toString().contains("2 racket"));
  CHECK(candidates[1].toMap()["room"].toString().contains("28 day"));
  CHECK(room.list->unanswered() == 1);

  SECTION("the same player: our book goes, linked to theirs") {
    room.list->tick(row, 1);
    CHECK(room.list->gains()["roomNewer"].toInt() == 1);
    REQUIRE(room.steps->goOn(room.list.get()));
    REQUIRE(room.comesTo(ArrivalSteps::Account));
    CHECK(linked_books(server.ledger(), theirs).here.size() == 2);
    REQUIRE(waitUntil([&] { return room.list->known() == 1; }));
  }
  SECTION("somebody else: nothing of ours goes, and nobody asks again") {
    room.list->tick(row, 0);
    REQUIRE(room.steps->goOn(room.list.get()));
    REQUIRE(room.comesTo(ArrivalSteps::Account));
    CHECK_FALSE(server.ledger().book(ours));
    CHECK(said_of(room.ledger(), ours, theirs) == LinkSaid::other_person);
    REQUIRE(waitUntil([&] { return room.list->likely() == 0; }));
    CHECK_FALSE(room.device->work().workplace().is_ticked(ours));
  }
}

TEST_CASE("linked books of a ticked player go together, but for one whose player did not agree to travel") {
  ListedServer server(kList);
  ArrivingTablet room;
  const UnixMs now = room.clock.now();
  const BookId newest = room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 1, now), older = room.addPlayer(named("Wendelmoor", "I."), 1, now - kDay);
  Person kept = named("Wendelmoore", "Ilse");
  kept.consent = ConsentChoice::withdrawn;
  const BookId withdrawn = room.addPlayer(kept, 1, now - 2 * kDay);
  for (const BookId& other : {older, withdrawn})
    for (const Draft& draft : must(say_of_books(room.ledger(), newest, other, LinkSaid::same_person, "Ines", now))) room.append(draft);
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->known() == 1; }));
  room.list->tickAllKnown();
  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  CHECK(server.ledger().book(newest));
  CHECK(server.ledger().book(older));
  CHECK_FALSE(server.ledger().book(withdrawn));
  REQUIRE(waitUntil([&] { return room.list->staying().isEmpty(); }));
}

TEST_CASE("nobody has to be ticked, an event may have no list, and a server that is known is arrived at again") {
  EventServer server;
  ArrivingTablet room;
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::List));
  REQUIRE(room.steps->goOn(room.list.get()));
  REQUIRE(room.comesTo(ArrivalSteps::Account));
  CHECK(room.steps->playersWent() == 0);
  CHECK(room.steps->toGo() == 0);
  room.steps->finish();
  CHECK(room.steps->step() == ArrivalSteps::Meet);
  REQUIRE(waitUntil([&] { return room.exchange->state() == ExchangeModel::Agreed; }));
  room.steps->begin();
  CHECK(room.steps->step() == ArrivalSteps::List);
}

TEST_CASE("a long list is shown piece by piece and by band") {
  std::string table = "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\n";
  for (int i = 0; i < 90; ++i) table += "Quill" + std::string(1, static_cast<char>('a' + i % 26)) + std::string(1, static_cast<char>('a' + i / 26)) + ",Sam,USA,1990\n";
  ListedServer server(table);
  ArrivingTablet room;
  (void)room.addPlayer(whole("Wendelmoor", "Ilse", "NED", 2002), 1, room.clock.now());
  room.pair(server);
  REQUIRE(room.comesTo(ArrivalSteps::People));
  REQUIRE(waitUntil([&] { return room.list->count() == 91; }));
  CHECK(room.list->rowCount() == 40);
  CHECK(room.list->hidden() == 51);
  room.list->showMore();
  room.list->showMore();
  CHECK(room.list->rowCount() == 91);
  CHECK(room.list->hidden() == 0);
  room.list->setFilter(ArrivalModel::OnlyKnown);
  REQUIRE(room.list->rowCount() == 1);
  room.list->tick(0, 0);
  CHECK(room.list->ticked() == 1);
  room.list->setFilter(ArrivalModel::OnlyLikely);
  CHECK(room.list->rowCount() == 0);
  room.list->setFilter(ArrivalModel::OnlyNew);
  CHECK(room.list->hidden() == 50);
}

TEST_CASE("the time that is left follows how fast it goes, and is not told before that is seen") {
  TimeLeft left;
  CHECK_FALSE(left.seconds());
  left.see(0, 100, 0);
  left.see(5, 100, 500);
  CHECK_FALSE(left.seconds());
  left.see(10, 100, 1000);
  CHECK(left.seconds() == 9);
  left.see(20, 100, 2000);
  CHECK(left.seconds() == 8);
  // It stalls: the estimate grows.
  left.see(20, 100, 6000);
  CHECK(left.seconds() == 24);
  // Another connection counts anew.
  left.see(2, 50, 7000);
  CHECK_FALSE(left.seconds());
  left.see(50, 50, 9000);
  CHECK(left.seconds() == 0);
}
