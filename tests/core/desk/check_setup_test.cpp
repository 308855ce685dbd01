#include "core/desk/check_setup.h"

#include <catch2/catch.hpp>

#include "core/desk/cautions.h"
#include "core/desk/first_time.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

std::string codes(const Agreed& wish, const Racket* racket = nullptr) {
  std::string out;
  for (const auto& finding : check_setup(wish, racket))
    out += std::string(finding.refused ? "!" : "") + std::string(finding.code) + "@" +
           std::string(finding.field) + " ";
  return out;
}

template <class Change>
std::string codes_with(Change&& change, const Racket* racket = nullptr) {
  Agreed wish = day_wish();
  change(wish);
  return codes(wish, racket);
}

}  // namespace

TEST_CASE("an ordinary wish raises nothing") {
  CHECK(codes(day_wish()).empty());
  CHECK(require_sound(day_wish(), nullptr));
}

TEST_CASE("what stringing needs is asked for, nothing else") {
  CHECK(codes(Agreed{}) ==
        "!missing@mains_string !missing@crosses_string !missing@mains_tension !missing@crosses_tension ");
  FirstTimeAnswers answers;
  CHECK(still_needed(answers).size() == 5);
  CHECK(still_needed(answers)[0].field == "family_name");
  answers.person.family_name = "Aldermoor";
  answers.agreed = day_wish();
  CHECK(still_needed(answers).empty());
  for (const auto& question : first_time_questions()) {
    CAPTURE(question.field);
    const EntityKind kind = question.of == AskedOf::person   ? kPerson
                            : question.of == AskedOf::racket ? kRacket
                            : question.of == AskedOf::agreed ? kSetup
                                                             : kDropOff;
    CHECK(model_registry().find(kind, question.field) != nullptr);
  }
}

TEST_CASE("the likely slip of unit is named with the other unit") {
  CHECK(codes_with([](Agreed& w) {
          w.mains_tension = kg("55");
          w.crosses_tension = kg("53");
        }) == "!unit_slip@mains_tension !unit_slip@crosses_tension ");
  CHECK(codes_with([](Agreed& w) { w.mains_tension = w.crosses_tension = lb("24"); }) ==
        "unit_slip_likely@mains_tension unit_slip_likely@crosses_tension ");
  CHECK(
      codes_with([](Agreed& w) { w.mains_tension = w.crosses_tension = said("245", Unit::newton); }).empty());
  CHECK(codes_with([](Agreed& w) { w.mains_tension = w.crosses_tension = said("25", Unit::newton); }) ==
        "!unit_slip@mains_tension !unit_slip@crosses_tension ");
  Agreed wish = day_wish();
  wish.mains_tension = kg("55");
  const Fault fault = require_sound(wish, nullptr).error();
  CHECK(fault.message() ==
        "mains tension: 55\u00a0kg is beyond what frames take; 55\u00a0lb would be usual; ask which unit was "
        "meant");
}

TEST_CASE("tensions out of reach are refused, unusual ones only pointed out") {
  const auto both = [](const char* amount) {
    return codes_with([&](Agreed& w) { w.mains_tension = w.crosses_tension = kg(amount); });
  };
  CHECK(both("5").find('!') == std::string::npos);
  CHECK(both("4.9").find('!') != std::string::npos);
  CHECK(both("14").empty());
  CHECK(both("13.9") == "tension_unusual@mains_tension tension_unusual@crosses_tension ");
  CHECK(both("32").empty());
  CHECK(both("42").find('!') == std::string::npos);
  CHECK(both("42.1").find('!') != std::string::npos);
  CHECK(both("900000").find("!tension_beyond_reach") != std::string::npos);
  CHECK(codes_with([](Agreed& w) { w.mains_tension = mm("25"); }) == "!unit_not_force@mains_tension ");
}

TEST_CASE("the range printed on the racket is compared whatever the unit") {
  Racket racket;
  racket.tension_low = lb("46");
  racket.tension_high = lb("55");  // 24.95 kg
  CHECK(codes_with([](Agreed& w) { w.mains_tension = kg("25"); }, &racket)
            .empty());  // rounding of a printed range
  CHECK(codes_with([](Agreed& w) { w.mains_tension = kg("26"); }, &racket) ==
        "outside_printed_range@mains_tension ");
  Agreed wish = day_wish();
  wish.mains_tension = kg("26");
  const auto findings = check_setup(wish, &racket);
  CHECK(findings.at(0).what({}).find("46\u00a0lb to 55\u00a0lb") != std::string::npos);
  CHECK(findings.at(0).what_to_do({}).find("maker’s instructions") != std::string::npos);

  CHECK(cautions_for(Stage::on_machine, wish, &racket, false) ==
        std::vector{Caution::under_tension, Caution::tension_over_range});
  CHECK(cautions_for(Stage::on_machine, day_wish(), nullptr, false) == std::vector{Caution::under_tension});
  CHECK(cautions_for(Stage::cut_out, wish, &racket, true) ==
        std::vector{Caution::cracked_frame, Caution::cut_out});
  CHECK(cautions_for(Stage::collected, wish, &racket, true).empty());
}

TEST_CASE("the rest of a wish is looked at as well") {
  CHECK(codes_with([](Agreed& w) { w.crosses_tension = lb("53"); }) == "units_differ@crosses_tension ");
  CHECK(codes_with([](Agreed& w) { w.crosses_tension = kg("21"); }) == "difference_unusual@crosses_tension ");
  CHECK(codes_with([](Agreed& w) { w.mains_gauge = mm("12.5"); }) == "!gauge_beyond@mains_gauge ");
  CHECK(codes_with([](Agreed& w) { w.mains_gauge = mm("0.9"); }) == "gauge_unusual@mains_gauge ");
  CHECK(codes_with([](Agreed& w) { w.mains_prestretch = said("20", Unit::percent); }).empty());
  CHECK(codes_with([](Agreed& w) { w.mains_prestretch = said("21", Unit::percent); }) ==
        "!prestretch_beyond@mains_prestretch ");
  CHECK(codes_with([](Agreed& w) { w.mains_prestretch = said("-1", Unit::percent); }) ==
        "!prestretch_beyond@mains_prestretch ");
  CHECK(codes_with([](Agreed& w) { w.knot_pretension = said("20", Unit::percent); }).empty());
  CHECK(codes_with([](Agreed& w) { w.knot_pretension = said("20.5", Unit::percent); }) == "!knot_pretension_beyond@knot_pretension ");
  CHECK(codes_with([](Agreed& w) { w.knot_pretension = kg("2"); }) == "!knot_pretension_beyond@knot_pretension ");
  CHECK(codes_with([](Agreed& w) { w.pieces = 3; }) == "!pieces_odd@pieces ");
  CHECK(codes_with([](Agreed& w) { w.knots = 2; }) == "knots_do_not_fit@knots ");
  CHECK(codes_with([](Agreed& w) {
          w.pieces = 1;
          w.knots = 2;
        }) == "hybrid_one_piece@pieces ");
  Racket racket;
  racket.pieces_needed = 2;
  CHECK(codes_with(
            [](Agreed& w) {
              w.pieces = 1;
              w.knots = 2;
              w.crosses_string = w.mains_string;
            },
            &racket) == "two_pieces_needed@pieces ");
}

TEST_CASE("every finding and every caution can be said in every language") {
  CHECK(desk_words().gaps().empty());
  CHECK(desk_words().languages().size() == 4);
  Agreed odd = day_wish();
  odd.mains_tension = kg("55");
  odd.crosses_tension = lb("24");
  odd.mains_gauge = mm("3");
  odd.crosses_gauge = mm("0.9");
  odd.mains_prestretch = said("50", Unit::percent);
  odd.knots = 3;
  odd.knot_pretension = said("50", Unit::percent);
  for (const Language& language : desk_words().languages()) {
    for (const auto& finding : check_setup(odd, nullptr)) {
      CAPTURE(language.tag(), finding.code);
      CHECK_FALSE(finding.what(language).empty());
      CHECK_FALSE(finding.what_to_do(language).empty());
    }
    for (const auto caution : {Caution::cut_out, Caution::under_tension, Caution::cracked_frame,
                               Caution::tension_over_range, Caution::arm_pain}) {
      CHECK_FALSE(caution_text(language, caution).empty());
      CHECK_FALSE(caution_for_player(language, caution).empty());
    }
  }
  for (const char* code :
       {"missing", "unit_not_force", "unit_slip", "unit_slip_likely", "tension_beyond_reach",
        "tension_unusual", "outside_printed_range", "units_differ", "difference_unusual", "gauge_beyond",
        "gauge_unusual", "prestretch_beyond", "knot_pretension_beyond", "pieces_odd", "knots_odd", "knots_do_not_fit",
        "hybrid_one_piece", "two_pieces_needed"})
    CHECK((desk_words().has(std::string("check.") + code) &&
           desk_words().has(std::string("check.") + code + ".do")));
}

TEST_CASE("a caution is shown once per case") {
  CautionsShown shown;
  CHECK(shown.first_time("job 1", Caution::cut_out));
  CHECK_FALSE(shown.first_time("job 1", Caution::cut_out));
  CHECK(shown.first_time("job 1", Caution::under_tension));
  CHECK(shown.first_time("job 2", Caution::cut_out));
}
