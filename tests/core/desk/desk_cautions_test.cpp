#include <catch2/catch.hpp>

#include "core/desk/cautions.h"
#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

void mark(Desk& desk, const BookId& book, Stage stage, const std::string& reason) {
  const EntityId job = desk.load(book).jobs.at(0).id();
  desk.append(
      take_step(desk.load(book), std::span(&job, 1), StageStep{stage, "Mara", reason, desk.clock.now()}));
}

}  // namespace

TEST_CASE("a frame that waited for an answer is doubted until it is strung") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const EntityId racket = desk.load(book).rackets.at(0).id();
  CHECK_FALSE(doubt_about(desk.load(book), racket));
  CHECK_FALSE(doubt_about(desk.load(book), {}));
  mark(desk, book, Stage::waiting, "fine line at the throat");
  CHECK(doubt_about(desk.load(book), racket) == "fine line at the throat");
  CHECK(cautions_at_desk(desk.load(book), racket, nullptr, day_wish()) ==
        std::vector{Caution::cracked_frame});
  SECTION("put aside, the doubt stays with the racket") {
    mark(desk, book, Stage::aside, "the player takes another one");
    CHECK(doubt_about(desk.load(book), racket) == "fine line at the throat");
  }
  SECTION("strung, somebody has looked") {
    mark(desk, book, Stage::strung, "only the paint");
    CHECK_FALSE(doubt_about(desk.load(book), racket));
  }
}

TEST_CASE("a racket put aside for another reason is not doubted") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  mark(desk, book, Stage::aside, "the player plays with another one");
  CHECK_FALSE(doubt_about(desk.load(book), desk.load(book).rackets.at(0).id()));
}

TEST_CASE("notes that speak of pain are noticed in each language, others are not") {
  for (const char* note : {"Elbow hurts since Tuesday", "mal au coude", "ÉPICONDYLITE", "dolor de codo",
                           "Tennisarm", "Schmerzen im Arm", "Ellenbogen empfindlich", "shoulder is sore"})
    CHECK(speaks_of_pain(note));
  for (const char* note : {"", "knots to the outside", "for Sorensen", "Dolores brings it", "painted frame"})
    CHECK_FALSE(speaks_of_pain(note));
}

TEST_CASE("the read-back warns the player of their own racket, in their language, and is stored so") {
  Desk desk;
  const PlayerRecord nobody = record_of(desk.ledger->create_book_id(), {}, {});
  auto request = desk.first_request(2);
  request.lines[1].made->tension_high = kg("24");
  request.lines[1].agreed.note = "coude douloureux";
  const std::string text = read_back_of(nobody, request);
  const auto over = caution_for_player(request.language, Caution::tension_over_range);
  CHECK(has(text, over));
  CHECK(text.find(over) > text.find("(2)"));  // in the block of the racket that it is about
  CHECK(text.find(over) == text.rfind(over));
  CHECK(has(text, caution_for_player(request.language, Caution::arm_pain)));
  CHECK(over != caution_for_player({}, Caution::tension_over_range));
  desk.append(drop_off(nobody, request, text, "Mara"));
  CHECK(desk.load(nobody.book).drop_offs.at(0).now.confirmed_text == text);
  // Nothing to warn of: not a word.
  request.lines.resize(1);
  CHECK_FALSE(has(read_back_of(nobody, request),
                  desk_words().say(request.language, "read_back.caution", {{"text", ""}})));
}

TEST_CASE("a wish above the printed range of one racket stands apart from the same wish on another") {
  Desk desk;
  const PlayerRecord nobody = record_of(desk.ledger->create_book_id(), {}, {});
  auto request = desk.first_request(3);
  request.language = Language{};
  request.lines[2].made->tension_high = kg("20");
  const std::string text = read_back_of(nobody, request);
  CHECK(has(text, "2 rackets (1, 2):"));
  CHECK(has(text, "1 racket (3):"));
}
