#include "core/desk/other_names.h"

#include <catch2/catch.hpp>

#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("another name is kept with who said it, found by, and taken back") {
  Desk desk;
  const BookId book = desk.add_player("Wendelmoor", "Ilse");
  OtherName before;
  before.family_name = "Ostrel";
  before.given_name = "Ilse";
  before.why = NameWhy::former;
  desk.append(add_other_name(desk.load(book), before, "Mara", desk.clock.now()));
  REQUIRE(desk.load(book).other_names.size() == 1);
  const auto held = desk.load(book).other_names[0];
  CHECK(held.now.by == "Mara");
  CHECK(other_name_words(held.now) == "Ostrel Ilse");
  CHECK(find_players(*desk.ledger, "ostr").size() == 1);
  CHECK(add_other_name(desk.load(book), before, "Mara", desk.clock.now()).error().code == FaultCode::refused);
  desk.append(drop_other_name(desk.load(book), held.id()));
  CHECK(desk.load(book).other_names.empty());
  CHECK(find_players(*desk.ledger, "ostr").empty());
  CHECK(drop_other_name(desk.load(book), held.id()).error().code == FaultCode::not_found);
}

TEST_CASE("an other name that is none is refused, with the reason") {
  Desk desk;
  const BookId book = desk.add_player("Wendelmoor", "Ilse");
  const auto refusal = [&](const BookId& player, const OtherName& name, const std::string& by) {
    const auto draft = add_other_name(record_of(player, desk.ledger->entities(player), {}), name, by, desk.clock.now());
    return draft ? std::string("no fault") : draft.error().message();
  };
  OtherName same;
  same.family_name = "wendelmoor";
  same.given_name = "ILSE";
  CHECK(refusal(book, same, "Mara").find("called so already") != std::string::npos);
  CHECK(refusal(book, {}, "Mara").find("no other name") != std::string::npos);
  same.family_name = "Ostrel";
  CHECK(refusal(book, same, "").find("who says so") != std::string::npos);
  CHECK(refusal(desk.ledger->create_book_id(), same, "Mara").find("no player yet") != std::string::npos);
}
