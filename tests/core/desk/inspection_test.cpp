#include "core/desk/inspection.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/desk/cautions.h"
#include "core/desk/phrases.h"
#include "core/desk/questions.h"
#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Inspection : Desk {
  BookId book = first_drop_off(2);
  EntityId job = load(book).jobs.at(0).id();

  [[nodiscard]] Outcome<Draft> found(std::vector<FoundOnFrame> list) const {
    return inspect(load(book), job, list, "Mara", clock.now());
  }
  [[nodiscard]] Outcome<Draft> answered(const EntityId& finding, FrameRemedy remedy) const {
    return answer_finding(load(book), finding, {remedy, "the coach", "Mara", clock.now()});
  }
  [[nodiscard]] Outcome<Draft> step(Stage to, const std::string& reason = "") const {
    return take_step(load(book), std::span(&job, 1), {to, "Mara", reason, clock.now()});
  }
  [[nodiscard]] Stage stage() const { return load(book).stage_of(job).stage; }
  [[nodiscard]] EntityId finding(std::size_t n = 0) const { return load(book).findings.at(n).id(); }
};

FoundOnFrame crack(FrameRemedy proposal = FrameRemedy::string_anyway) {
  return {FrameFault::crack, FramePart::head, 75, proposal, "along the edge"};
}

}  // namespace

TEST_CASE("a sound frame is inspected in one action without findings") {
  Inspection room;
  room.append(room.found({}));
  CHECK(room.stage() == Stage::inspected);
  CHECK(room.load(room.book).findings.empty());
  CHECK(room.found({}).error().code == FaultCode::bad_input);  // a second time there is nothing to say
  CHECK(room.step(Stage::cut_out));
}

TEST_CASE("a racket whose player has not answered goes neither to cutting out nor to a machine, whatever the reason") {
  Inspection room;
  room.append(room.found({crack()}));
  CHECK(room.stage() == Stage::waiting);
  for (const Stage to : {Stage::cut_out, Stage::on_machine}) {
    CHECK(room.step(to).error().code == FaultCode::refused);
    CHECK(room.step(to, "in a hurry").error().code == FaultCode::refused);
  }
  // Also from `inspected`, where a step without an answer would lead.
  room.append(room.step(Stage::inspected));
  CHECK(room.step(Stage::cut_out).error().code == FaultCode::refused);
  // The player's other racket is not held.
  const EntityId other = room.load(room.book).jobs.at(1).id();
  CHECK(take_step(room.load(room.book), std::span(&other, 1), {Stage::cut_out, "Mara", "", room.clock.now()}));
}

TEST_CASE("the answer lets the racket go on and says who gave it, who took it and when") {
  Inspection room;
  room.append(room.found({crack(), {FrameFault::grommet_split, FramePart::head, 360, FrameRemedy::tube, ""}}));
  room.append(room.answered(room.finding(0), FrameRemedy::string_anyway));
  CHECK(room.stage() == Stage::waiting);  // for the other one
  const UnixMs answered_at = room.clock.now();
  room.append(room.answered(room.finding(1), FrameRemedy::replace_strip));
  CHECK(room.stage() == Stage::inspected);
  const FrameFinding held = room.load(room.book).findings.at(1).now;
  CHECK(held.answer == FrameRemedy::replace_strip);
  CHECK(held.answered_by == "the coach");
  CHECK(held.answer_taken_by == "Mara");
  CHECK(held.answered_at == answered_at);
  CHECK(room.step(Stage::cut_out));
}

TEST_CASE("a player who says not to string gets the racket put aside, and only an override by name takes it up again") {
  Inspection room;
  room.append(room.found({crack()}));
  room.append(room.answered(room.finding(), FrameRemedy::do_not_string));
  CHECK(room.stage() == Stage::aside);
  room.append(room.step(Stage::inspected, "the player came back"));
  CHECK(room.step(Stage::on_machine).error().code == FaultCode::refused);
  CHECK(override_finding(room.load(room.book), room.finding(), "", "why not", 1).error().code == FaultCode::bad_input);
  CHECK(override_finding(room.load(room.book), room.finding(), "Ruud", " ", 1).error().code == FaultCode::bad_input);
  room.clock.set(room.clock.now() + 1000);
  room.append(override_finding(room.load(room.book), room.finding(), "Ruud", "signed a waiver", room.clock.now()));
  CHECK(room.step(Stage::on_machine));
  CHECK(room.load(room.book).findings.at(0).now.override_by == "Ruud");
  // An answer that comes later counts again.
  room.clock.set(room.clock.now() + 1000);
  room.append(room.answered(room.finding(), FrameRemedy::do_not_string));
  CHECK(room.step(Stage::on_machine).error().code == FaultCode::refused);
}

TEST_CASE("two answers about one frame, taken apart, hold the racket until a person picks one") {
  Inspection room;
  room.append(room.found({crack()}));
  const PlayerRecord seen = room.load(room.book);
  const auto yes = answer_finding(seen, room.finding(), {FrameRemedy::string_anyway, "the player", "Mara", room.clock.now()});
  const auto no = answer_finding(seen, room.finding(), {FrameRemedy::tube, "the coach", "Ilja", room.clock.now()});
  room.append(yes);
  room.append(no);
  const PlayerRecord now = room.load(room.book);
  REQUIRE(now.questions.size() == 1);
  CHECK(holding_of(now, now.findings.at(0)) == FrameHold::two_answers);
  CHECK(held_back(now, room.job)->code == FaultCode::refused);
  CHECK(field_words(Language::from("de").value(), question_lines(*room.ledger, now).at(0).field) == "Antwort zum Rahmen");
  std::set<std::string> said;
  for (const CellValue& one : now.questions.at(0).cell.values) said.insert(value_words(Language::from("en").value(), "answer", one.value));
  CHECK(said == std::set<std::string>{"string it anyway", "protect the place with tubing"});
  room.append(room.answered(room.finding(), now.findings.at(0).now.answer));  // the same as is shown: closes it all the same
  CHECK(room.load(room.book).questions.empty());
  CHECK_FALSE(held_back(room.load(room.book), room.job));
}

TEST_CASE("findings follow the racket to its next job until they are put right") {
  Inspection room;
  room.append(room.found({crack(FrameRemedy::unsaid)}));
  CHECK(room.stage() == Stage::inspected);  // noted only
  const EntityId racket = room.load(room.book).jobs.at(0).now.racket;
  CHECK(findings_of(room.load(room.book), racket).size() == 1);
  CHECK(doubt_about(room.load(room.book), racket) == "along the edge");
  CHECK(room.answered(room.finding(), FrameRemedy::tube).error().code == FaultCode::refused);
  room.append(mend_finding(room.load(room.book), room.finding(), "Mara", room.clock.now()));
  CHECK(findings_of(room.load(room.book), racket).empty());
  CHECK(findings_of(room.load(room.book), racket, true).size() == 1);
  CHECK_FALSE(doubt_about(room.load(room.book), racket));
  CHECK(mend_finding(room.load(room.book), room.finding(), "Mara", 1).error().code == FaultCode::refused);
}

TEST_CASE("what is wrong with an inspection is said") {
  Inspection room;
  const auto code = [&](FoundOnFrame one) { return room.found({std::move(one)}).error().code; };
  CHECK(code({}) == FaultCode::bad_input);
  CHECK(code({FrameFault::other, FramePart::head, 10, FrameRemedy::tube, ""}) == FaultCode::bad_input);
  CHECK(code({FrameFault::crack, FramePart::head, 720, FrameRemedy::tube, ""}) == FaultCode::bad_input);
  CHECK(code({FrameFault::crack, FramePart::head, -1, FrameRemedy::tube, ""}) == FaultCode::bad_input);
  CHECK(code({FrameFault::crack, FramePart::unsaid, {}, FrameRemedy::tube, ""}) == FaultCode::bad_input);
  CHECK(code({static_cast<FrameFault>(99), FramePart::head, 0, FrameRemedy::tube, ""}) == FaultCode::bad_input);
  const EntityId nobody{{1}};
  const PlayerRecord record = room.load(room.book);
  CHECK(inspect(record, nobody, {}, "Mara", 1).error().code == FaultCode::not_found);
  CHECK(answer_finding(record, nobody, {FrameRemedy::tube, "a", "b", 1}).error().code == FaultCode::not_found);
  CHECK(override_finding(record, nobody, "a", "b", 1).error().code == FaultCode::not_found);
  CHECK(mend_finding(record, nobody, "a", 1).error().code == FaultCode::not_found);
  room.append(room.step(Stage::cut_out));
  CHECK(room.found({crack()}).error().code == FaultCode::refused);
}

TEST_CASE("a place on the frame is told as on a clock, in every language") {
  FrameFinding finding;
  finding.fault = FrameFault::crack;
  finding.part = FramePart::head;
  const auto words = [&](const char* language, std::int64_t minutes) {
    finding.clock_minutes = minutes;
    return finding_words(Language::from(language).value(), finding);
  };
  CHECK(words("en", 0) == "crack at 12 o’clock");
  CHECK(words("en", 150) == "crack at half past 2");
  CHECK(words("en", 359) == "crack at 6 o’clock");
  CHECK(words("en", 719) == "crack at 12 o’clock");
  CHECK(words("de", 150) == "Riss auf 2 Uhr 30");
  CHECK(words("fr", 180) == "fissure à 3 h");
  CHECK(words("es", 30) == "grieta a las 12 y media");
  CHECK(place_words(Language::from("en").value(), FramePart::head, 150) == "at half past 2");
  CHECK(place_words(Language::from("de").value(), FramePart::head, 705) == "auf 12 Uhr");
  CHECK(place_words(Language::from("fr").value(), FramePart::throat, std::nullopt) == "au cœur");
  CHECK(place_words(Language::from("es").value(), FramePart::handle, std::nullopt) == "en la empuñadura");
  finding.clock_minutes.reset();
  finding.part = FramePart::throat;
  finding.note = "hairline";
  CHECK(finding_words(Language::from("en").value(), finding) == "crack at the throat: hairline");
  // What a newer version found is told as such.
  finding.fault = FrameFault{77};
  CHECK(finding_words(Language::from("en").value(), finding) == "something that a newer version knows at the throat: hairline");
  CHECK(remedy_words(Language::from("de").value(), FrameRemedy{77}) == "etwas, das eine neuere Version kennt");
  for (const char* language : {"en", "fr", "es", "de"})
    for (const auto& fault : choices(FrameFault{})) {
      if (fault.value == FrameFault::unsaid) continue;
      finding.fault = fault.value;
      for (const auto& remedy : choices(FrameRemedy{})) {
        finding.proposal = remedy.value;
        CHECK(finding_question(Language::from(language).value(), finding).find("hairline") != std::string::npos);
      }
    }
}
