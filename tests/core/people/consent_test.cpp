#include "core/people/consent.h"

#include "core/desk/consent.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct ConsentRoom : Tablet {
  BookId harbour = ledger->create_book_id();
  BookId lakeside = ledger->create_book_id();

  ConsentRoom() : Tablet("desk") {}

  void agree(const BookId& book, ConsentChoice choice, const BookId& event = {}) {
    agree(*this, book, choice, event);
  }
  static void agree(Tablet& tablet, const BookId& book, ConsentChoice choice, const BookId& event = {}) {
    const Language language = Language::from("es").value();
    const Confirmation shown{consent_text(language, choice), language, tablet.clock.now(),
                             tablet.ledger->self().id()};
    tablet.append(give_consent(must(load_player(*tablet.ledger, book)), choice, shown, event));
  }
};

}  // namespace

TEST_CASE("\"events entered\" are those whose entry list names the player, or where a racket of the player's was strung") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse"), other = room.add_player("Quillon", "Bram");
  CHECK(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));  // new, and nothing else is known
  Job strung;
  strung.event = room.ledger->create_book_id();
  room.add(player, strung);
  for (const bool said : {false, true}) {  // who was not asked yet counts as one who said so
    if (said) room.agree(player, ConsentChoice::events_entered, strung.event);
    CHECK(may_cross(*room.ledger, player, kPlayerBook));  // somebody carries it on
    CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));
    CHECK(may_cross(*room.ledger, player, kPlayerBook, room.lakeside, true));  // a person sees the player in the list
  }
  EntryListItem item;
  item.family_name = "Wendelmoor";
  item.player = player;
  const std::uint64_t before = crossing_mark(*room.ledger, room.lakeside);
  const EntityId entry = room.add(room.lakeside, item, kEventBook);
  CHECK(crossing_mark(*room.ledger, room.lakeside) != before);
  CHECK(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook, room.harbour));

  Job job;
  job.event = room.harbour;
  room.add(other, job);
  CHECK(may_cross(*room.ledger, other, kPlayerBook, room.harbour));
  CHECK_FALSE(may_cross(*room.ledger, other, kPlayerBook, room.lakeside));
  room.agree(other, ConsentChoice::events_entered, room.lakeside);  // who is asked there is there
  CHECK(may_cross(*room.ledger, other, kPlayerBook, room.lakeside));

  // Taken off the list again.
  Draft draft(room.lakeside, kEventBook, kActEdit);
  EntryListItem nobody = item;
  nobody.player = {};
  const auto state = room.ledger->entity(room.lakeside, entry);
  put_changes(draft, *state, nobody);
  room.append(draft);
  CHECK(crossing_mark(*room.ledger, room.lakeside) == before);
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));
}

TEST_CASE("a person's linked books go together to where one of them is entered") {
  ConsentRoom room;
  const BookId one = room.add_player("Wendelmoor", "Ilse"), two = room.add_player("Vendelmor", "Ilse");
  EntryListItem item;
  item.player = one;
  room.add(room.lakeside, item, kEventBook);
  Job strung;
  strung.event = room.harbour;
  room.add(two, strung);
  CHECK_FALSE(may_cross(*room.ledger, two, kPlayerBook, room.lakeside));
  const std::uint64_t before = crossing_mark(*room.ledger, room.lakeside);
  BookLink link;
  link.other = one;
  link.said = LinkSaid::same_person;
  room.add(two, link);
  CHECK(crossing_mark(*room.ledger, room.lakeside) != before);
  CHECK(may_cross(*room.ledger, two, kPlayerBook, room.lakeside));
}

TEST_CASE("kit books never cross, event books do, and players who said nothing do") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse");
  CHECK_FALSE(may_cross(*room.ledger, room.ledger->create_book_id(), kKitBook, room.harbour));
  CHECK(crossing(*room.ledger, room.ledger->create_book_id(), kKitBook, room.harbour) == Crossing::private_kit);
  CHECK(may_cross(*room.ledger, room.harbour, kEventBook));
  CHECK(may_cross(*room.ledger, player, kPlayerBook));
}

TEST_CASE("who has withdrawn goes nowhere until a new answer") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse");
  room.agree(player, ConsentChoice::withdrawn, room.harbour);
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook, room.harbour));
  CHECK(crossing(*room.ledger, player, kPlayerBook, room.harbour) == Crossing::withdrew);
  room.agree(player, ConsentChoice::any_room, room.harbour);
  CHECK(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));
}

TEST_CASE("\"this room\" is the room where it was said") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse");
  room.agree(player, ConsentChoice::this_room, room.harbour);
  CHECK(may_cross(*room.ledger, player, kPlayerBook, room.harbour));
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook, room.lakeside));
  CHECK(crossing(*room.ledger, player, kPlayerBook, room.lakeside) == Crossing::other_room);
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook));
  room.agree(player, ConsentChoice::this_room);
  CHECK_FALSE(may_cross(*room.ledger, player, kPlayerBook));
}

TEST_CASE("of two answers given apart the more careful one counts until somebody decides") {
  ConsentRoom here;
  Tablet there("bench");
  const BookId player = here.add_player("Wendelmoor", "Ilse");
  meet(here, there, player);
  here.agree(player, ConsentChoice::any_room, here.harbour);
  there.clock.set(here.clock.now() - kHour);
  ConsentRoom::agree(there, player, ConsentChoice::withdrawn);
  meet(here, there, player);
  REQUIRE(here.ledger->open_questions(player).size() == 1);
  CHECK_FALSE(may_cross(*here.ledger, player, kPlayerBook, here.harbour));
  CHECK_FALSE(may_cross(*there.ledger, player, kPlayerBook, here.harbour));

  here.agree(player, ConsentChoice::any_room, here.harbour);
  CHECK(here.ledger->open_questions(player).empty());
  CHECK(may_cross(*here.ledger, player, kPlayerBook, here.harbour));
}

TEST_CASE("a consent notes where it was given, and closes every answer that stood, even one like it") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse");
  room.agree(player, ConsentChoice::events_entered, room.harbour);
  const auto given = from_state<ConsentGiven>(room.ledger->entities(player, kConsentGiven).front());
  CHECK(given.event == room.harbour);
}

TEST_CASE("what came and may not be here goes, but an entry list that is still on its way is waited for") {
  ConsentRoom room;
  const BookId player = room.add_player("Wendelmoor", "Ilse");
  room.agree(player, ConsentChoice::any_room, room.harbour);
  const BookId elsewhere = room.ledger->create_book_id();
  CHECK(may_stay(*room.ledger, player, kPlayerBook, elsewhere, true));
  room.agree(player, ConsentChoice::events_entered, room.harbour);
  CHECK(may_stay(*room.ledger, player, kPlayerBook, elsewhere, false));
  CHECK_FALSE(may_stay(*room.ledger, player, kPlayerBook, elsewhere, true));
  room.agree(player, ConsentChoice::this_room, room.harbour);
  CHECK_FALSE(may_stay(*room.ledger, player, kPlayerBook, elsewhere, false));
  CHECK(may_stay(*room.ledger, player, kPlayerBook, room.harbour, true));
  CHECK_FALSE(may_stay(*room.ledger, player, kKitBook, room.harbour, false));
}
