// A player withdraws at the desk.

#include <fstream>

#include "app-qml/view/model_text.h"
#include "core/model/queries.h"
#include "tests/app/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE(
    "a forgotten player is off the card, the finder, the unfinished drop-offs and the file, also after a "
    "restart") {
  DeskRoom room;
  const BookId book = room.pastPlayer("Wendelmoor", 2);
  (void)room.pastPlayer("Tarrengold", 1);
  // One drop-off of the player's is left unfinished.
  room.desk->finder()->setTyped("wendel");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  room.desk->back();
  room.desk->next();
  REQUIRE(room.draft().unfinished().size() == 1);

  PlayerCard card(room.device->work());
  CHECK_FALSE(card.forget());
  card.show(idText(book));
  REQUIRE(card.book() == idText(book));
  REQUIRE(card.forget());
  CHECK(card.book().isEmpty());
  CHECK(room.faults.isEmpty());
  room.desk->finder()->setTyped("wendel");
  CHECK(find_players(room.ledger(), "wendel", 5).empty());
  // Another drop-off is begun and kept: what is written down then holds nothing of the player either.
  room.desk->finder()->setTyped("tarren");
  room.desk->choose(0);
  room.desk->sameAsLastTime();
  room.desk->back();
  std::string bytes;
  for (const char* suffix : {"", "-wal"}) {
    std::ifstream in((room.folder / "device" / "ledger.db").string() + suffix, std::ios::binary);
    bytes.append(std::istreambuf_iterator<char>(in), {});
  }
  CHECK(bytes.find("Tarrengold") != std::string::npos);
  CHECK(bytes.find("Wendelmoor") == std::string::npos);
  CHECK(bytes.find("wendelmoor") == std::string::npos);
}

TEST_CASE("all books of a person that are linked are forgotten and agreed for together, and the card says how many there are") {
  DeskRoom room;
  const BookId book = room.pastPlayer("Wendelmoor", 1), other = room.pastPlayer("Wendelmore", 1), alone = room.pastPlayer("Tarrengold", 1);
  PlayerCard card(room.device->work());
  CHECK(card.bookCount() == 0);
  card.show(idText(book));
  CHECK(card.bookCount() == 1);
  for (const Draft& draft : must(say_of_books(room.ledger(), book, other, LinkSaid::same_person, "Ines", room.clock.now()))) room.append(draft);
  room.settle();
  CHECK(card.bookCount() == 2);
  const int choice = static_cast<int>(ConsentChoice::events_entered);
  REQUIRE(card.giveConsent(choice, "en", PlayerCard::consentText(choice, "en")));
  CHECK(find_player(room.ledger(), book)->consent == ConsentChoice::events_entered);
  CHECK(find_player(room.ledger(), other)->consent == ConsentChoice::events_entered);
  CHECK(find_player(room.ledger(), alone)->consent == ConsentChoice::unsaid);
  REQUIRE(card.forget());
  CHECK(room.ledger().is_forgotten(book));
  CHECK(room.ledger().is_forgotten(other));
  CHECK_FALSE(room.ledger().is_forgotten(alone));
  CHECK(room.faults.isEmpty());
}
