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

TEST_CASE("a consent said at the drop-off is stored in the same action") {
  Desk desk;
  const BookId book = desk.ledger->create_book_id();
  const PlayerRecord nobody = record_of(book, {}, {});
  auto request = desk.first_request(1);
  request.consent =
      ConsentSaid{ConsentChoice::this_room, consent_text(request.language, ConsentChoice::this_room)};
  const std::string shown = read_back_of(nobody, request);
  desk.append(drop_off(nobody, request, shown, "Mara"));
  CHECK(desk.ledger->heads(book).at(0).seq == 1);
  PlayerRecord record = desk.load(book);
  CHECK(record.person.now.consent == ConsentChoice::this_room);
  REQUIRE(record.consents.size() == 1);
  CHECK(record.consents[0].now.text == request.consent->text);
  CHECK(record.consents[0].now.language == "fr");
  CHECK(record.consents[0].now.event == desk.event);
  CHECK(record.consents[0].now.at == record.drop_offs.at(0).now.confirmed_at);

  SECTION("of somebody known as well, in place of what was said before") {
    auto again = desk.first_request(1);
    again.new_person.reset();
    again.lines[0].made->label = "9";
    again.consent =
        ConsentSaid{ConsentChoice::any_room, consent_text(again.language, ConsentChoice::any_room)};
    desk.append(drop_off(record, again, read_back_of(record, again), "Mara"));
    CHECK(desk.load(book).person.now.consent == ConsentChoice::any_room);
    CHECK(desk.load(book).consents.size() == 2);
  }
  SECTION("of somebody with two books it is for both, and none where nothing was asked") {
    const BookId second = desk.add_player("Wendelmore", "Ilse");
    for (const Draft& draft : must(say_of_books(*desk.ledger, book, second, LinkSaid::same_person, "Mara", desk.clock.now()))) desk.append(draft);
    for (const Draft& draft : must(consent_beside(*desk.ledger, book, request))) desk.append(draft);
    const PlayerRecord other = desk.load(second);
    CHECK(other.person.now.consent == ConsentChoice::this_room);
    REQUIRE(other.consents.size() == 1);
    CHECK(other.consents[0].now.event == desk.event);
    CHECK(other.consents[0].now.text == request.consent->text);
    CHECK(desk.load(book).consents.size() == 1);
    request.consent.reset();
    CHECK(must(consent_beside(*desk.ledger, book, request)).empty());
  }
  SECTION("in other words than its choice's it is refused, and nothing is stored") {
    auto again = desk.first_request(1);
    again.lines[0].made->label = "9";
    again.consent = ConsentSaid{ConsentChoice::any_room, consent_text({}, ConsentChoice::any_room)};
    const auto refused = drop_off(record, again, read_back_of(record, again), "Mara");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().where == "consent");
  }
}

TEST_CASE("the consent question can be asked in every language") {
  for (const Language& language : desk_words().languages())
    for (const char* key : {"consent.title", "consent.about", "consent.later", "consent.open",
                            "consent.answer", "consent.change", "consent.keep"})
      CHECK_FALSE(desk_words().say(language, key).empty());
}
