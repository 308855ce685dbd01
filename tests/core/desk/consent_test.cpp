#include "core/desk/consent.h"

#include <catch2/catch.hpp>

#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a consent is stored as it was given and is the valid one until withdrawn") {
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  const Language french = Language::from("fr").value();
  const auto give = [&](ConsentChoice choice) {
    return give_consent(desk.load(book), choice,
                        {consent_text(french, choice), french, desk.clock.now(), desk.ledger->self().id()});
  };
  desk.append(give(ConsentChoice::events_entered));
  CHECK(desk.load(book).person.now.consent == ConsentChoice::events_entered);
  desk.append(give(ConsentChoice::withdrawn));
  const PlayerRecord record = desk.load(book);
  CHECK(record.person.now.consent == ConsentChoice::withdrawn);
  REQUIRE(record.consents.size() == 2);
  CHECK(record.consents[0].now.text == consent_text(french, ConsentChoice::events_entered));
  CHECK(record.consents[0].now.digest.size() == 32);
  CHECK_FALSE(give(ConsentChoice::unsaid));
  CHECK_FALSE(give_consent(record, ConsentChoice::any_room, {"yes", french, 1, {}}));
  CHECK_FALSE(give_consent(record_of(BookId{{3}}, {}, {}), ConsentChoice::any_room,
                           {consent_text(french, ConsentChoice::any_room), french, 1, {}}));
}
