// What a peer gives and may not be here: a giver in error, or one that does not ask what players agreed to.

#include <catch2/catch.hpp>

#include "sync/exchange/session.h"
#include "tests/support/loopback.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Visit {
  SyncDevice host{"server"}, guest{"Bo's tablet"};
  std::set<BookId> unwanted;
  std::optional<BookId> list;  ///< with this here everything may stay, once all was said

  Visit() { enrol(host, guest); }
  [[nodiscard]] BookId brings(const std::string& label) {
    const BookId book = guest.ledger->create_book_id();
    guest.put(book, kOne, kLabel, label);
    guest.share(host, book);
    return book;
  }
  [[nodiscard]] SessionOptions strict(SyncDevice& taker) {
    SessionOptions out;
    out.may_stay = [this, &taker](const BookId& book, BookKind, const BookId&, bool settled) {
      if (list) return !settled || taker.ledger->book(*list).has_value();
      return !unwanted.contains(book);
    };
    return out;
  }
};

}  // namespace

TEST_CASE("a book that may not be here is let go again, everything else stays, and both sides can tell") {
  Visit visit;
  const BookId welcome = visit.brings("welcome"), other = visit.brings("of another room");
  visit.unwanted = {other};
  for (const int again : {1, 2}) {
    CAPTURE(again);
    Loopback session(visit.guest, visit.host, {}, visit.strict(visit.host));
    REQUIRE_FALSE(session.deliver());
    for (int quiet = 0; quiet < 6; ++quiet) session.changed();
    CHECK(visit.host.ledger->book(welcome));
    CHECK_FALSE(visit.host.ledger->book(other));
    CHECK(session.host.status().not_kept == 1);
    CHECK(session.host.status().at_odds);
    CHECK_FALSE(session.host.status().fault);
    // The giver does not take it for kept.
    CHECK_FALSE(session.guest.status().all_sent);
    // What is welcome still crosses in this very session.
    visit.guest.put(welcome, kOne, kLabel, std::string("changed") + std::to_string(again));
    session.changed();
    CHECK(visit.host.ledger->entity(welcome, kOne)->get_as<std::string>(kLabel) == "changed" + std::to_string(again));
  }
  CHECK(visit.host.ledger->verify().faults.empty());
  // The player agreed meanwhile: it comes whole.
  visit.unwanted.clear();
  Loopback session(visit.guest, visit.host, {}, visit.strict(visit.host));
  REQUIRE_FALSE(session.deliver());
  CHECK(session.host.status().state == SessionState::agreed);
  CHECK(session.host.status().not_kept == 0);
  CHECK(visit.host.ledger->entity(other, kOne)->get_as<std::string>(kLabel) == "of another room");
}

TEST_CASE("a tablet lets go of what a server gave it and should not have, but never of what it held before") {
  Visit visit;
  const BookId given = visit.host.ledger->create_book_id();
  visit.host.put(given, kOne, kLabel, std::string("given"));
  const BookId own = visit.brings("held before");
  visit.unwanted = {given, own};
  Loopback session(visit.guest, visit.host, visit.strict(visit.guest), {});
  REQUIRE_FALSE(session.deliver());
  CHECK_FALSE(visit.guest.ledger->book(given));
  CHECK(visit.guest.ledger->book(own));
  CHECK(visit.host.ledger->book(own));
  CHECK(session.guest.status().not_kept == 1);
}

TEST_CASE("what only a later word can decide waits until everything was said") {
  Visit visit;
  const BookId player = visit.brings("player"), list = visit.brings("entry list");
  visit.list = list;
  SessionOptions giver;
  giver.batch_bytes = 1;  // one entry a batch, the player's first
  Loopback session(visit.guest, visit.host, giver, visit.strict(visit.host));
  REQUIRE_FALSE(session.deliver());
  CHECK(visit.host.ledger->book(player));
  CHECK(visit.host.ledger->book(list));
  CHECK(session.host.status().state == SessionState::agreed);
  CHECK(session.host.status().not_kept == 0);
}

TEST_CASE("an exchange that is cut off leaves nothing behind that may not be here") {
  Visit visit;
  const BookId other = visit.brings("of another room");
  visit.unwanted = {other};
  for (std::size_t frames = 4; frames < 16; ++frames) {
    CAPTURE(frames);
    {
      Loopback session(visit.guest, visit.host, {}, visit.strict(visit.host));
      (void)session.deliver(frames);
    }
    CHECK_FALSE(visit.host.ledger->book(other));
  }
}

TEST_CASE("books that a guest may not begin are left out and counted on both sides, while everything else crosses") {
  Visit visit;
  const BookId welcome = visit.brings("welcome"), first = visit.brings("of another event"), second = visit.brings("of a third");
  SessionOptions host;
  host.rights.may_begin = [&](Role role, const BatchBook& book) { return role == Role::head || (book.id != first && book.id != second); };
  Loopback session(visit.guest, visit.host, {}, host);
  REQUIRE_FALSE(session.deliver());
  for (int quiet = 0; quiet < 6; ++quiet) session.changed();
  CHECK(visit.host.ledger->book(welcome));
  CHECK_FALSE(visit.host.ledger->book(first));
  CHECK_FALSE(visit.host.ledger->book(second));
  CHECK(session.host.status().not_begun == 2);
  CHECK(session.host.status().not_kept == 0);
  CHECK(session.guest.status().not_begun == 2);
  CHECK(session.guest.status().at_odds);
  CHECK_FALSE(session.guest.status().fault);
  CHECK_FALSE(session.guest.status().all_sent);
  // A head's device brings them, and then nothing is left out.
  REQUIRE(visit.host.devices->set_role(visit.guest.ledger->self().key, Role::head));
  Loopback head(visit.guest, visit.host, {}, host);
  REQUIRE_FALSE(head.deliver());
  CHECK(head.guest.status().state == SessionState::agreed);
  for (const Session* side : {&head.guest, &head.host}) CHECK(side->status().not_begun == 0);
  CHECK(visit.host.ledger->book(second));
}

TEST_CASE("a guest counts what the host let go again, and nothing that only came in pieces or in another order") {
  Visit visit;
  const BookId welcome = visit.brings("welcome"), other = visit.brings("of another room");
  visit.unwanted = {other};
  SessionOptions giver;
  giver.batch_bytes = 1;
  Loopback session(visit.guest, visit.host, giver, visit.strict(visit.host));
  REQUIRE_FALSE(session.deliver());
  for (int quiet = 0; quiet < 6; ++quiet) session.changed();
  CHECK(visit.host.ledger->book(welcome));
  CHECK(session.host.status().not_kept == 1);
  CHECK(session.host.status().not_begun == 0);
  CHECK(session.guest.status().not_begun == 1);
}
