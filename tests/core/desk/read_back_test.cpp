#include "core/desk/read_back.h"

#include <catch2/catch.hpp>

#include "tests/support/rooms.h"
#include "tests/support/words.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

ReadBackRequest request(const char* language) {
  ReadBackRequest out;
  out.language = Language::from(language).value();
  Agreed before = day_wish();
  Agreed now = before;
  now.mains_tension = kg("24.50");
  out.lines = {{"1", now, before}, {"2", now, before}, {"3", before, before}};
  out.ready_by = Moment{kMonday + kHour, "UTC", Moment::Form::time_of_day};
  return out;
}

}  // namespace

TEST_CASE("the read-back says every value as it was spoken, once for rackets with one wish") {
  CHECK(read_back(request("en")) ==
        "2 rackets (1, 2):\n"
        "Mains: Tarnbrook Silk, 1.25\u00a0mm, from a reel, your own string. Tension 24.50\u00a0kg, "
        "pre-stretch 10\u00a0%.\n"
        "Crosses: Velmora Round, 1.23\u00a0mm, from a set, string of the room. Tension 24\u00a0kg.\n"
        "Two lengths of string.\n"
        "Four knots.\n"
        "Racket stencil: open ring, ink red.\n"
        "String stencil: bar, ink black.\n"
        "Dampener: round.\n"
        "Overgrip: white.\n"
        "Note to the stringer: knots to the outside\n"
        "Changed: mains tension, 25\u00a0kg → 24.50\u00a0kg.\n"
        "1 racket (3):\n"
        "Mains: Tarnbrook Silk, 1.25\u00a0mm, from a reel, your own string. Tension 25\u00a0kg, pre-stretch "
        "10\u00a0%.\n"
        "Crosses: Velmora Round, 1.23\u00a0mm, from a set, string of the room. Tension 24\u00a0kg.\n"
        "Two lengths of string.\n"
        "Four knots.\n"
        "Racket stencil: open ring, ink red.\n"
        "String stencil: bar, ink black.\n"
        "Dampener: round.\n"
        "Overgrip: white.\n"
        "Note to the stringer: knots to the outside\n"
        "Same as last time.\n"
        "Ready by 11:00\u202f"
        "AM.\n"
        "Please check and confirm.");
}

TEST_CASE("the pull before a knot is read back where there is any, and a change of it is a change") {
  ReadBackRequest out = request("de");
  Agreed before = day_wish(), now = before;
  now.knot_pretension = said("10", Unit::percent);
  out.lines = {{"1", now, before}};
  const std::string text = read_back(out);
  CHECK(holds(text, "Die letzte Saite vor jedem Knoten wird 10\u00a0% stärker gezogen."));
  CHECK(holds(text, "Mehrzug am Knoten, nicht gesagt → 10\u00a0%"));
  now.knot_pretension = said("0", Unit::percent);
  out.lines = {{"1", now, now}};
  CHECK_FALSE(holds(read_back(out), "Knoten wird"));
}

TEST_CASE("setups that every room has are named in the language of who reads, the player's own as they said") {
  const Language french = Language::from("fr").value();
  CHECK(setup_words(french, "=night") == "nuit");
  CHECK(setup_words(french, "=new_balls") == "balles neuves");
  CHECK(setup_words(french, "clay, windy") == "clay, windy");
  CHECK(setup_words(french, "") == "");
  CHECK(setup_words(french, "=indoor") == "indoor");  // a later version's
  for (const Language& language : desk_words().languages())
    for (const char* name : {"=usual", "=day", "=night", "=new_balls"}) CHECK_FALSE(setup_words(language, name).starts_with('='));
}

TEST_CASE("each language speaks with its own decimal sign and never changes the digits") {
  for (const auto& [language, tension, rackets] :
       {std::tuple{"de", "24,50\u00a0kg", "2 Schläger"}, std::tuple{"fr", "24,50\u00a0kg", "2 raquettes"},
        std::tuple{"es", "24,50\u00a0kg", "2 raquetas"}, std::tuple{"en", "24.50\u00a0kg", "2 rackets"}}) {
    const std::string text = read_back(request(language));
    CAPTURE(text);
    CHECK(holds(text, tension));
    CHECK(holds(text, rackets));
    CHECK(holds(text, "Tarnbrook Silk"));
    CHECK_FALSE(holds(text, "{"));
  }
}

TEST_CASE("what is not said is said to be missing, what is skippable is left out") {
  ReadBackRequest empty;
  empty.lines.push_back({});
  CHECK(read_back(empty) ==
        "1 racket:\nMains: string not said. Tension not said.\nCrosses: string not said. Tension not said.\n"
        "No time is promised.\n"
        "Please check and confirm.");
}

TEST_CASE("a rush is part of what is confirmed") {
  auto rush = request("en");
  rush.rush = Rush::on_court;
  CHECK(holds(read_back(rush), "On-court rush: ready by 11:00"));
  rush.ready_by.reset();
  CHECK(holds(read_back(rush), "On-court rush, but no time is promised."));
}

TEST_CASE("that no time is promised, and which of several answers holds, is said in every language") {
  for (const Language& language : desk_words().languages()) {
    auto out = request(language.tag().c_str());
    out.ready_by.reset();
    out.lines[0].settled = {{"mains_tension", {Value{kg("24")}, Value{kg("26")}}, Value{kg("24")}}};
    const std::string text = read_back(out);
    CAPTURE(text);
    CHECK(holds(text, desk_words().say(language, "read_back.no_time", {{"rush", std::string("none")}})));
    CHECK(holds(text, "24\u00a0kg, 26\u00a0kg"));
    // Racket 2 has the same wish, but nobody settled anything for it.
    CHECK(holds(text, "(1)"));
    CHECK(holds(text, "(2)"));
  }
  auto english = request("en");
  english.lines = {{"1", english.lines[2].agreed, std::nullopt, {}, {{"mains_tension", {Value{kg("24")}, Value{}}, Value{kg("25")}}}}};
  CHECK(holds(read_back(english), "Different answers stood for mains tension (24\u00a0kg, not said). From now on 25\u00a0kg holds.\n"));
}

TEST_CASE("what a player or stringer typed cannot break a sentence") {
  ReadBackRequest odd;
  Agreed wish;
  wish.mains_string = "{braces} 'and' {0, plural, other {#}}";
  wish.note = "line one\nline two";
  odd.lines.push_back({"ü {x}", wish, std::nullopt});
  const std::string text = read_back(odd);
  CHECK(holds(text, wish.mains_string));
  CHECK(holds(text, wish.note));
  CHECK(holds(text, "ü {x}"));
}

TEST_CASE("values of the choices are said in words") {
  const Language german = Language::from("de").value();
  CHECK(value_words(german, "mains_supply", Value{std::int64_t{1}}) == "Rolle");
  CHECK(value_words(german, "mains_tension", Value{lb("55")}) == "55\u00a0lb");
  CHECK(value_words(german, "mains_tension", Value{}) == "nicht gesagt");
  CHECK(value_words(german, "language", Value{std::string("es")}) == "español");
  CHECK(value_words(german, "language", Value{std::string("not a tag")}) == "not a tag");
  CHECK(value_words(german, "hand", Value{std::int64_t{2}}) == "links");
  CHECK(field_words(german, "birth_year") == "Geburtsjahr");
  CHECK(value_words(german, "knots", Value{std::int64_t{4}}) == "4");
  CHECK(field_words(german, "mains_tension") == "Spannung längs");
  CHECK(field_words(german, "no_such_field") == "no_such_field");
  for_each_field<Agreed>([&](FieldTag, std::string_view name, bool, auto) {
    CAPTURE(name);
    CHECK(desk_words().has("field." + std::string(name)));
  });
  for (const auto& stage : choices(Stage{})) CHECK(desk_words().has("stage." + std::string(stage.name)));
}
