#include "core/desk/keep_rule.h"

#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct RuledEvent : Tablet {
  BookId event = ledger->create_book_id();

  RuledEvent() : Tablet("server") {
    EventInfo info;
    info.name = "Harbour Open";
    info.first_day = "2031-05-26";
    info.last_day = "2031-06-08";
    info.time_zone = "Europe/Lisbon";  // an hour after UTC in June
    append(new_event(event, info, clock.now()));
  }
  [[nodiscard]] EventRecord record() const { return must(load_event(*ledger, event)); }
};

// 2031-06-22T23:00:00Z: the end of 22 June in Lisbon.
constexpr UnixMs kEndOf22June = 1'939'935'600'000;

}  // namespace

TEST_CASE("players' books go at the end of so many days after the last one, as the place counts them") {
  RuledEvent room;
  CHECK_FALSE(books_go_at(*room.ledger, room.event));
  room.append(set_keep_days(room.record(), 14));
  CHECK(books_go_at(*room.ledger, room.event) == kEndOf22June);
  CHECK_FALSE(event_is_over(*room.ledger, room.event, kEndOf22June - 1));
  const auto over = event_is_over(*room.ledger, room.event, kEndOf22June);
  REQUIRE(over);
  CHECK(over->code == FaultCode::expired);
  CHECK(over->what.find("Harbour Open") == 0);

  room.append(set_keep_days(room.record(), 0));
  CHECK(books_go_at(*room.ledger, room.event) == kEndOf22June - 14 * kDay);
  room.append(set_keep_days(room.record(), std::nullopt));
  CHECK_FALSE(event_is_over(*room.ledger, room.event, kEndOf22June + 10'000 * kDay));
}

TEST_CASE("a rule that can't be is refused") {
  RuledEvent room;
  for (const std::int64_t days : {std::int64_t{-1}, kMostKeepDays + 1}) CHECK(set_keep_days(room.record(), days).error().code == FaultCode::bad_input);
  CHECK(set_keep_days(room.record(), std::nullopt).error().code == FaultCode::conflict);
  EventInfo endless;
  endless.name = "Lakeside Trophy";
  const BookId book = room.ledger->create_book_id();
  room.append(new_event(book, endless, room.clock.now()));
  CHECK(set_keep_days(must(load_event(*room.ledger, book)), 14).error().code == FaultCode::bad_input);
  endless.keep_days = 3;
  CHECK(new_event(room.ledger->create_book_id(), endless, room.clock.now()).error().code == FaultCode::bad_input);
}

TEST_CASE("a wall clock that jumped ahead and was set right within the hour erases nothing") {
  using std::chrono::minutes;
  LettingGo letting_go;
  const auto begin = LettingGo::Steady::now();
  CHECK_FALSE(letting_go.due(true, begin));
  CHECK_FALSE(letting_go.due(true, begin + minutes(59)));
  CHECK_FALSE(letting_go.due(false, begin + minutes(60)));  // set right
  CHECK_FALSE(letting_go.due(true, begin + minutes(61)));   // the wait begins anew
  CHECK_FALSE(letting_go.due(true, begin + minutes(120)));
  CHECK(letting_go.due(true, begin + minutes(121)));
}

TEST_CASE("a server lets every player's book go when the time has come, and not before") {
  RuledEvent server;
  Tablet tablet("desk");
  for (int i = 0; i < 250; ++i) meet(tablet, server, tablet.add_player("Player" + std::to_string(i), "One"));
  server.append(set_keep_days(server.record(), 14));
  CHECK(must(let_books_go(*server.ledger, server.event, kEndOf22June - 1)) == 0);
  CHECK(server.ledger->books(kPlayerBook).size() == 250);
  CHECK(must(let_books_go(*server.ledger, server.event, kEndOf22June)) == 250);
  CHECK(server.ledger->books(kPlayerBook).empty());
  CHECK(must(let_books_go(*server.ledger, server.event, kEndOf22June)) == 0);
  CHECK(must(load_event(*server.ledger, server.event)).event.now.name == "Harbour Open");
  CHECK(server.ledger->verify().faults.empty());
}
