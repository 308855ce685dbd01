#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "core/model/event.h"
#include "core/model/queries.h"
#include "core/store/database.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Everything that SQLite keeps on disk for this database.
std::string bytes_on_disk(const std::filesystem::path& file) {
  std::string all;
  for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
    std::ifstream in(file.string() + suffix, std::ios::binary);
    std::stringstream held;
    held << in.rdbuf();
    all += held.str();
  }
  return all;
}

std::size_t count_of(const std::string& all, const std::string& what) {
  std::size_t count = 0;
  for (std::size_t at = all.find(what); at != std::string::npos; at = all.find(what, at + 1)) ++count;
  return count;
}

Setup named_setup(const std::string& note) {
  Setup setup;
  static_cast<Agreed&>(setup) = day_wish();
  setup.name = "day";
  setup.note = note;
  return setup;
}

}  // namespace

TEST_CASE("nothing of a forgotten player stays in the bytes of the database, its log and its index") {
  TemporaryFolder folder;
  const auto file = folder / "room.db";
  const std::vector<std::string> secrets{
      "Zwicklhuber", "zwicklhuber", "Quendoline", "quendoline", "scar on the left thumb", "Plumbago"};
  BookId forgotten, other;
  {
    Tablet tablet("desk", file);
    // Many others around, written in turn with the one who will withdraw, so that pages split and are shared.
    for (int i = 0; i < 60; ++i)
      (void)tablet.add_player("Other" + std::to_string(i), "Given" + std::to_string(i));
    other = tablet.add_player("Tarrengold", "Ilmari");
    forgotten = tablet.add_player("Zwicklhuber", "Quendoline");
    const EntityId setup = tablet.add(forgotten, named_setup("scar on the left thumb"));
    for (int i = 0; i < 40; ++i) {
      const BookId next = tablet.add_player("Later" + std::to_string(i), "Given");
      (void)tablet.add(next, named_setup("as always " + std::string(static_cast<std::size_t>(i * 17), 'x')));
      (void)tablet.change<Setup>(forgotten, setup, [&](Setup& now) {
        now.note = "scar on the left thumb, seen " + std::to_string(i) +
                   std::string(static_cast<std::size_t>((i % 7) * 90), '.');
        now.dampener = "Plumbago";
      });
    }
    REQUIRE(tablet.ledger->remember(
        "app.drop_offs",
        as_bytes("[{\"book\":\"" + forgotten.hex() + "\",\"person\":\"Zwicklhuber\"},{\"book\":\"" +
                 other.hex() + "\",\"person\":\"Tarrengold\"}]")));
    REQUIRE(tablet.ledger->remember("last shown", as_bytes(forgotten.hex() + " Zwicklhuber")));
    REQUIRE(tablet.ledger->remember("other", as_bytes("stays")));
    for (const std::string& secret : secrets) {
      INFO(secret);
      CHECK(count_of(bytes_on_disk(file), secret) > 0);
    }
    const auto report = must(tablet.ledger->forget(forgotten));
    CHECK(report.erased == std::vector<BookId>{forgotten});
    CHECK_FALSE(report.not_yet_gone);
    for (const std::string& secret : secrets) {
      INFO(secret);
      CHECK(count_of(bytes_on_disk(file), secret) == 0);
    }
    CHECK(std::filesystem::file_size(file.string() + "-wal") < 16 * 1024);  // the few pages written since
    CHECK(as_text(tablet.ledger->remembered("app.drop_offs").value()) ==
          "[{\"book\":\"" + other.hex() + "\",\"person\":\"Tarrengold\"}]");
    CHECK_FALSE(tablet.ledger->remembered("last shown"));
    CHECK(tablet.ledger->remembered("other"));
    CHECK(find_players(*tablet.ledger, "zwick", 10).empty());
    CHECK(find_players(*tablet.ledger, "tarren", 10).size() == 1);
    CHECK(tablet.ledger->verify().faults.empty());
    CHECK(tablet.ledger->entities(forgotten).empty());
  }
  for (const std::string& secret : secrets) CHECK(count_of(bytes_on_disk(file), secret) == 0);
  // The others are all there.
  Tablet again("desk", file);
  CHECK(find_players(*again.ledger, "", 1000).size() == 101);
  CHECK(again.ledger->is_forgotten(forgotten));
  CHECK(again.ledger->verify().faults.empty());
}

TEST_CASE("a forgotten player's book comes back neither by hand nor from another device") {
  Tablet a("a"), b("b");
  const BookId book = a.add_player("Zwicklhuber", "Quendoline");
  meet(a, b, book);
  REQUIRE(a.ledger->forget(book));
  Draft draft(book, kPlayerBook, kActEdit);
  Person person;
  person.family_name = "Zwicklhuber";
  (void)put_new(draft, person, a.clock.now());
  const auto appended = a.ledger->append(draft);
  REQUIRE_FALSE(appended);
  CHECK(appended.error().code == FaultCode::refused);
  const auto report = must(a.ledger->ingest(b.ledger->missing(book, {}, 1 << 20), 1));
  CHECK(report.applied == 0);
  CHECK(report.forgotten == 1);
  CHECK(report.quarantined == 0);
  CHECK_FALSE(report.gaps);
  CHECK_FALSE(a.ledger->book(book));
  CHECK(a.ledger->books().empty());
  CHECK(a.ledger->missing(book, {}, 1 << 20).empty());
  // Once is enough, and who ordered it stays.
  REQUIRE(a.ledger->forget(book));
  REQUIRE(a.ledger->forgotten().size() == 1);
  CHECK(a.ledger->forgotten()[0].stub.device == "a");
  CHECK(a.ledger->forgotten()[0].stub.key == a.ledger->self().key);
  CHECK(proves_itself(a.ledger->forgotten()[0].stub));
}

TEST_CASE("a stub is obeyed only as its author signed it, and only for a player's book") {
  Tablet a("a"), b("b");
  const BookId book = a.add_player("Zwicklhuber", "Quendoline");
  meet(a, b, book);
  REQUIRE(a.ledger->forget(book));
  const Stub good = a.ledger->forgotten()[0].stub;
  Stub later = good, renamed = good, elsewhere = good, others = good;
  later.at += 1;
  renamed.device = "somebody else";
  elsewhere.book = b.add_player("Tarrengold", "Ilmari");
  others.key = b.ledger->self().key;
  for (const Stub& bad : {later, renamed, elsewhere, others}) {
    const auto report = must(b.ledger->obey(std::vector<Stub>{bad}, a.ledger->self().key));
    CHECK(report.refused == 1);
    CHECK(report.erased.empty());
  }
  CHECK(b.ledger->books().size() == 2);
  const Stub of_event = sign_stub(DeviceKey::generate(), "a", book, kEventBook, 1);
  CHECK(must(b.ledger->obey(std::vector<Stub>{of_event}, PublicKey{})).refused == 1);
  CHECK(must(b.ledger->obey(std::vector<Stub>{good}, a.ledger->self().key)).erased ==
        std::vector<BookId>{book});
  CHECK(b.ledger->books().size() == 1);
  CHECK(b.ledger->forgotten()[0].heard_from == a.ledger->self().key);
  CHECK(must(b.ledger->obey(std::vector<Stub>{good}, a.ledger->self().key)).erased.empty());
}

TEST_CASE("an event's book is about nobody and can't be forgotten") {
  Tablet a("a");
  const BookId book = a.ledger->create_book_id();
  EventInfo event;
  event.name = "Harbour Open";
  (void)a.add(book, event, kEventBook);
  CHECK(a.ledger->forget(book).error().code == FaultCode::refused);
  CHECK(a.ledger->forget(make_id<BookId>(kMonday)).error().code == FaultCode::not_found);
}

TEST_CASE("what a reader kept open while a player was forgotten is overwritten at the next start") {
  TemporaryFolder folder;
  const auto file = folder / "room.db";
  BookId book;
  {
    Tablet tablet("desk", file);
    book = tablet.add_player("Zwicklhuber", "Quendoline");
    // Another program reads (a backup in the making): the old pages have to stay for it.
    SQLite::Database reader(file.string(), SQLite::OPEN_READONLY);
    reader.exec("BEGIN");
    (void)reader.execAndGet("SELECT count(*) FROM entry");
    const auto report = must(tablet.ledger->forget(book));
    CHECK(report.erased.size() == 1);
    REQUIRE(report.not_yet_gone);
    CHECK(report.not_yet_gone->code == FaultCode::locked);
    CHECK_FALSE(tablet.ledger->book(book));
    reader.exec("ROLLBACK");
  }
  Tablet again("desk", file);
  CHECK(count_of(bytes_on_disk(file), "Zwicklhuber") == 0);
  CHECK(again.ledger->is_forgotten(book));
}

TEST_CASE("what was put aside of a forgotten player goes too, also where it came under a false book") {
  TemporaryFolder folder;
  const auto file = folder / "room.db";
  Tablet tablet("desk", file), other("bench");
  const BookId player = other.add_player("Zwicklhuber", "Quendoline");
  const Batch batch = other.ledger->missing(player, {}, 1 << 30);
  REQUIRE(tablet.ledger->ingest(batch, 1));
  for (const BookId& book : {player, tablet.ledger->create_book_id()}) {
    Batch forged = batch;
    forged.books.front().id = book;
    forged.authors.front().incarnation += 1;
    CHECK(must(tablet.ledger->ingest(forged, 1)).quarantined == forged.entries.size());
  }
  CHECK(tablet.ledger->quarantine().size() == 2 * batch.entries.size());
  REQUIRE(tablet.ledger->forget(player));
  CHECK(tablet.ledger->quarantine().empty());
  CHECK(count_of(bytes_on_disk(file), "Zwicklhuber") == 0);
}

TEST_CASE("a book that is let go by a rule is gone from the file, and may come back") {
  TemporaryFolder folder;
  const auto file = folder / "server.db";
  Tablet server("server", file), tablet("desk");
  const BookId gone = tablet.add_player("Zwicklhuber", "Quendoline"), stays = tablet.add_player("Tarrengold", "Ilmari");
  (void)tablet.add(gone, named_setup("scar on the left thumb"));
  meet(tablet, server, gone);
  meet(tablet, server, stays);
  REQUIRE(count_of(bytes_on_disk(file), "Zwicklhuber") > 0);

  const auto report = must(server.ledger->shed(std::vector{gone, server.ledger->create_book_id()}));
  CHECK(report.erased == std::vector<BookId>{gone});
  CHECK_FALSE(report.not_yet_gone);
  CHECK_FALSE(server.ledger->book(gone));
  CHECK_FALSE(server.ledger->is_forgotten(gone));
  CHECK(server.ledger->entities(gone).empty());
  CHECK(find_players(*server.ledger, "", 10).size() == 1);
  for (const char* secret : {"Zwicklhuber", "Quendoline", "scar on the left thumb"}) {
    INFO(secret);
    CHECK(count_of(bytes_on_disk(file), secret) == 0);
  }
  CHECK(server.ledger->verify().faults.empty());

  meet(tablet, server, gone);
  CHECK(find_players(*server.ledger, "zwick", 10).size() == 1);
  CHECK(server.ledger->heads(gone) == tablet.ledger->heads(gone));
  CHECK(server.ledger->verify().faults.empty());
}

TEST_CASE("a device lets go neither of its own words nor of an event, and of nothing if one of them is among many") {
  Tablet server("server"), tablet("desk");
  const BookId theirs = tablet.add_player("Zwicklhuber", "Quendoline");
  meet(tablet, server, theirs);
  const BookId own = server.add_player("Tarrengold", "Ilmari");
  const auto refused = server.ledger->shed(std::vector{theirs, own});
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(server.ledger->book(theirs));
  CHECK(server.ledger->book(own));

  const BookId event = server.ledger->create_book_id();
  EventInfo info;
  info.name = "Harbour Open";
  (void)server.add(event, info, kEventBook);
  const auto other = server.ledger->shed(std::vector{event});
  REQUIRE_FALSE(other);
  CHECK(other.error().code == FaultCode::refused);
  CHECK(server.ledger->book(event));
}
