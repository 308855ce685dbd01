#include "core/store/newest.h"

#include <catch2/catch.hpp>

#include "core/store/database.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

Racket one_racket() {
  Racket racket;
  racket.label = "day";
  return racket;
}

}  // namespace

TEST_CASE("what was read before a change is not remembered after it") {
  Newest newest;
  std::int64_t on_disk = 7;
  const auto read = [&] { return Newest::Place{on_disk, 0}; };
  // Somebody writes between the reading and the remembering.
  CHECK(newest.get([&] {
          const auto found = read();
          on_disk = 8;
          newest.move_to(8);
          return found;
        }).position == 7);
  CHECK(newest.get(read).position == 8);
  on_disk = 9;
  CHECK(newest.get(read).position == 8);
  newest.forget();
  CHECK(newest.get(read).position == 9);
  newest.move_to(10);
  CHECK(newest.get(read).position == 10);
}

TEST_CASE("the ledger knows up to where it goes whatever was written, and whoever wrote it") {
  TemporaryFolder folder;
  Tablet a("a", folder / "a.db"), b("b", folder / "b.db");
  const auto as_on_disk = [](const Ledger& ledger) {
    std::int64_t position = 0, deletions = 0;
    ledger.read([&](Connection& db) {
      auto& query = db.statement("SELECT coalesce((SELECT max(position) FROM entry), 0), deletions FROM gone");
      query.executeStep();
      position = query.getColumn(0).getInt64();
      deletions = query.getColumn(1).getInt64();
    });
    const auto since = ledger.books_since(position, deletions);
    return ledger.position() == position && since.position == position && since.deletions == deletions && !since.all &&
           since.books.empty();
  };
  CHECK(a.ledger->position() == 0);
  const BookId one = a.add_player("Tarnquist", "Ilse"), two = a.add_player("Wendelmoor", "Mara");
  CHECK(a.ledger->position() == 2);
  REQUIRE(as_on_disk(*a.ledger));

  const auto before = a.ledger->books_since(2, 0);
  CHECK(before.books.empty());
  (void)a.add(one, one_racket());
  const auto after = a.ledger->books_since(2, 0);
  REQUIRE(after.books.size() == 1);
  CHECK(after.books.front().id == one);
  CHECK(after.position == 3);
  REQUIRE(as_on_disk(*a.ledger));

  meet(a, b, one);
  (void)b.add(one, one_racket());
  REQUIRE(as_on_disk(*b.ledger));
  meet(a, b, one);
  CHECK(a.ledger->position() == 4);
  REQUIRE(as_on_disk(*a.ledger));

  // Another room's words, and an action that is refused, move nothing; what comes after them goes on from there.
  REQUIRE(a.ledger->remember("note", as_bytes("x")));
  REQUIRE(as_on_disk(*a.ledger));
  REQUIRE(a.ledger->forget(two));
  REQUIRE(as_on_disk(*a.ledger));
  CHECK(a.ledger->books_since(4, 0).all);
  Draft back(two, kPlayerBook, kActEdit);
  (void)put_new(back, one_racket(), a.clock.now());
  CHECK_FALSE(a.ledger->append(back));
  REQUIRE(as_on_disk(*a.ledger));
  (void)a.add(one, one_racket());
  CHECK(a.ledger->position() == 5);
  REQUIRE(as_on_disk(*a.ledger));
  REQUIRE(a.ledger->rebuild());
  REQUIRE(as_on_disk(*a.ledger));

  // Within a snapshot only that counts.
  a.ledger->read([&](Connection& db) {
    auto& query = db.statement("SELECT count(*) FROM entry");
    query.executeStep();
    (void)a.add(one, one_racket());
    CHECK(a.ledger->position() == 5);
  });
  CHECK(a.ledger->position() == 6);
}

TEST_CASE("an entity that was written last is the same to its next action after another room wrote, and after one that failed") {
  TemporaryFolder folder;
  Tablet tablet("a", folder / "a.db");
  const BookId book = tablet.add_player("Tarnquist", "Ilse");
  const EntityId racket = tablet.add(book, one_racket());
  for (int i = 0; i < 3; ++i) {
    (void)tablet.change<Racket>(book, racket, [&](Racket& now) { now.label = std::to_string(i); });
    if (i == 0) REQUIRE(tablet.ledger->transact([](Connection& db) { db.raw().exec("CREATE TABLE other_room(x)"); }));
    if (i == 1) CHECK_FALSE(tablet.ledger->transact([](Connection& db) { db.raw().exec("INSERT INTO other_room VALUES(1); nonsense"); }));
  }
  CHECK(from_state<Racket>(tablet.ledger->entity(book, racket).value()).label == "2");
  CHECK(tablet.ledger->verify().faults.empty());
}
