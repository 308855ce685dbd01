#include "app-qml/view/inspection_model.h"

#include <QSignalSpy>
#include <set>

#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct InspectionRoom : RoomOfJobs {
  BookId player = addPlayer(named("Okafor", "Sade"));
  MadeJob made = receive(player, day_wish(), 41);
  InspectionModel model{device->work()};

  InspectionRoom() { model.show(hex(made.book), hex(made.job)); }
  bool note(FramePlace place, FrameFault fault, FrameRemedy proposal, const QString& text = {}) {
    const auto& all = frame::places();
    model.setPlace(static_cast<int>(std::find(all.begin(), all.end(), place) - all.begin()));
    model.setFault(static_cast<int>(fault));
    model.setNote(text);
    model.setProposal(static_cast<int>(proposal));
    return model.noteFinding("noted");
  }
  [[nodiscard]] QVariantMap row(int n = 0) const { return model.findings().at(n).toMap(); }
  [[nodiscard]] QString id(int n = 0) const { return row(n)["id"].toString(); }
  /// The same racket in the room again, as its player's next job.
  MadeJob again() {
    const auto record = must(load_player(ledger(), player));
    Draft draft(player, kPlayerBook, kActDropOff);
    Job job;
    static_cast<Agreed&>(job) = day_wish();
    job.racket = record.jobs.front().now.racket;
    job.event = event;
    job.at = clock.now();
    job.tag_number = 55;
    const auto id = put_new(draft, job, clock.now()).id;
    StageMark mark;
    mark.job = id;
    mark.stage = Stage::received;
    mark.at = clock.now();
    (void)put_new(draft, mark, clock.now());
    append(draft);
    return {player, id};
  }
};

const FramePlace kHalfPastTwo{FramePart::head, 150};

}  // namespace

TEST_CASE("a tap on the drawing takes the nearest half hour, or throat, shaft, handle") {
  // Straight up is 12, to the right 3, down 6, to the left 9: as on a clock.
  const double x = frame::head.center().x(), y = frame::head.center().y();
  CHECK(frame::placeAt(x, frame::head.top()) == FramePlace{FramePart::head, 0});
  CHECK(frame::placeAt(frame::head.right(), y) == FramePlace{FramePart::head, 180});
  CHECK(frame::placeAt(x, frame::head.bottom()) == FramePlace{FramePart::head, 360});
  CHECK(frame::placeAt(frame::head.left(), y) == FramePlace{FramePart::head, 540});
  // 1 o'clock is seen from the middle at 30 degrees from the head.
  CHECK(frame::placeAt(x + 50, y - 50 * 1.7320508) == FramePlace{FramePart::head, 60});
  CHECK_FALSE(frame::placeAt(x + 5, y - 5).said());
  CHECK(frame::placeAt(x, 250).part == FramePart::throat);
  CHECK(frame::placeAt(x, 300).part == FramePart::shaft);
  CHECK(frame::placeAt(x, 399).part == FramePart::handle);
  CHECK_FALSE(frame::placeAt(std::nan(""), 3).said());
  std::set<std::pair<int, int>> seen;
  for (const auto& place : frame::places()) {
    const auto point = frame::pointOf(place);
    CHECK(frame::placeAt(point.x(), point.y()) == place);
    seen.emplace(static_cast<int>(place.part), place.minutes);
    // A finger's width apart from the other parts at the least size of the drawing, 240 pixels for 200 units.
    CHECK((point.x() >= 0 && point.x() <= frame::width && point.y() >= 0 && point.y() <= frame::height));
  }
  CHECK(seen.size() == 27);
  CHECK((frame::handleTop - frame::shaftTop) * 1.2 >= 48);
  CHECK((frame::shaftTop - frame::throatTop) * 1.2 >= 48);
}

TEST_CASE("a sound frame is one tap") {
  InspectionRoom room;
  CHECK(room.model.tag() == "41");
  CHECK(room.model.canBeSound());
  CHECK(room.model.sound("inspected"));
  CHECK(room.stageOf(room.made) == Stage::inspected);
  CHECK_FALSE(room.model.canBeSound());
  CHECK(room.device->work().undo());
  CHECK(room.stageOf(room.made) == Stage::received);
}

TEST_CASE("what a finding still lacks is told one thing after the other") {
  InspectionRoom room;
  auto& model = room.model;
  CHECK(model.missing() == InspectionModel::Missing::Place);
  CHECK_FALSE(model.isBegun());
  model.tap(frame::head.right(), frame::head.center().y());
  CHECK(model.summary() == "At 3 o’clock");
  CHECK(model.missing() == InspectionModel::Missing::Fault);
  model.setFault(static_cast<int>(FrameFault::other));
  CHECK(model.missing() == InspectionModel::Missing::Note);
  model.setNote("  ");
  CHECK(model.missing() == InspectionModel::Missing::Note);
  model.setNote("paint chipped");
  CHECK(model.missing() == InspectionModel::Missing::Proposal);
  CHECK_FALSE(model.noteFinding("noted"));
  model.setProposal(0);
  CHECK(model.noteFinding("noted"));
  CHECK_FALSE(model.isBegun());
  CHECK(room.row()["text"] == "Finding at 3 o’clock: paint chipped");
  CHECK(room.stageOf(room.made) == Stage::inspected);
}

TEST_CASE("the arrow keys reach every place and come round again") {
  InspectionRoom room;
  std::set<int> seen;
  for (int i = 0; i < 27; ++i) {
    room.model.stepPlace(1);
    seen.insert(room.model.place());
  }
  CHECK(seen.size() == 27);
  room.model.stepPlace(1);
  CHECK(room.model.place() == 0);
  room.model.stepPlace(-1);
  CHECK(room.model.part() == static_cast<int>(FramePart::handle));
  room.model.setPlace(99);
  CHECK(room.model.place() == -1);
}

TEST_CASE("a finding with a proposal holds the racket until the player's answer, which is kept with both names") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::grommet_split, FrameRemedy::tube));
  CHECK(room.stageOf(room.made) == Stage::waiting);
  CHECK(room.model.holding() == 1);
  CHECK(room.row()["text"] == "Split grommet at half past 2");
  CHECK(room.row()["number"] == 1);
  CHECK(room.row()["hold"] == static_cast<int>(FrameHold::unanswered));
  CHECK_FALSE(room.model.answer(room.id(), static_cast<int>(FrameRemedy::tube), "", "Ines", "answered"));
  CHECK(room.model.answer(room.id(), static_cast<int>(FrameRemedy::string_anyway), "the coach", "Ines", "answered"));
  CHECK(room.stageOf(room.made) == Stage::inspected);
  CHECK(room.model.holding() == 0);
  CHECK(room.row()["answer"] == "string it anyway");
  CHECK(room.row()["answered"].toString().contains("the coach"));
  CHECK(room.row()["answered"].toString().contains("Ines"));
}

TEST_CASE("the question is asked in the player's language, with the proposal marked among the answers") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::crack, FrameRemedy::do_not_string));
  const auto asked = room.model.question(room.id(), "fr");
  CHECK(asked["question"].toString().contains("fissure à 2 h 30"));
  CHECK(asked["remedies"].toList().size() == 4);
  CHECK(asked["remedies"].toList().at(3).toMap()["text"] == "Ne pas corder (notre proposition)");
  CHECK(asked["caution"].toString() == QString::fromStdString(caution_for_player(Language::from("fr").value(), Caution::cracked_frame)));
  CHECK(room.model.question(room.id(), "de")["yes"] == "Das ist meine Antwort");
  CHECK(room.model.question("nothing", "en").isEmpty());
}

TEST_CASE("somebody may let the racket go on, with a name and a reason") {
  InspectionRoom room;
  REQUIRE(room.note({FramePart::throat, -1}, FrameFault::dent, FrameRemedy::string_anyway));
  CHECK_FALSE(room.model.letGoOn(room.id(), "Ines", " ", "on"));
  CHECK_FALSE(room.model.letGoOn(room.id(), "", "the player is on court", "on"));
  CHECK(room.model.letGoOn(room.id(), "Ines", "the player is on court", "on"));
  CHECK(room.model.holding() == 0);
  CHECK(room.row()["overridden"].toString().contains("the player is on court"));
}

TEST_CASE("the caution about cracked frames is said once a racket") {
  InspectionRoom room;
  CHECK(room.model.caution().isEmpty());
  room.model.setFault(static_cast<int>(FrameFault::crack));
  const QString said = QString::fromStdString(caution_text({}, Caution::cracked_frame));
  CHECK(room.model.caution() == said);
  room.model.cautionRead();
  CHECK(room.model.caution().isEmpty());
  REQUIRE(room.note(kHalfPastTwo, FrameFault::crack, FrameRemedy::unsaid));
  CHECK(room.model.caution().isEmpty());
  const auto other = room.receive(room.player, day_wish(), 42);
  room.model.show(hex(other.book), hex(other.job));
  CHECK(room.model.caution().isEmpty());
  room.model.setFault(static_cast<int>(FrameFault::crack));
  CHECK(room.model.caution() == said);
}

TEST_CASE("what was found at an earlier job is shown at the next, and is history once it was put right") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::crack, FrameRemedy::string_anyway));
  REQUIRE(room.model.answer(room.id(), static_cast<int>(FrameRemedy::string_anyway), "Okafor", "Ines", ""));
  room.step(room.made, Stage::collected, "Ines", "handed over");
  room.clock.advance(20 * kDay);
  const auto next = room.again();
  room.model.show(hex(next.book), hex(next.job));
  REQUIRE(room.model.findings().size() == 1);
  CHECK(room.row()["earlier"].toBool());
  CHECK_FALSE(room.row()["asks"].toBool());
  CHECK(room.row()["detail"].toString().contains("Harbour"));
  CHECK(room.model.canBeSound());
  CHECK(room.model.findingsOn(hex(next.book), hex(next.job)).size() == 1);
  CHECK_FALSE(room.model.mend(room.id(), "", "mended"));
  CHECK(room.model.mend(room.id(), "Ines", "mended"));
  CHECK(room.model.findings().isEmpty());
  REQUIRE(room.model.history().size() == 1);
  CHECK(room.model.history().front().toMap()["detail"].toString().contains("put right by Ines"));
  CHECK(room.model.findingsOn(hex(next.book), hex(next.job)).isEmpty());
}

TEST_CASE("a racket past its inspection is shown, but nothing new can be noted") {
  InspectionRoom room;
  room.step(room.made, Stage::cut_out, "Ines");
  room.device->work().refresh();
  CHECK_FALSE(room.model.isOpen());
  CHECK_FALSE(room.note(kHalfPastTwo, FrameFault::dent, FrameRemedy::unsaid));
  CHECK(room.stageOf(room.made) == Stage::cut_out);
}

TEST_CASE("a racket that is not here is not shown") {
  InspectionRoom room;
  QSignalSpy asked(&room.model, &InspectionModel::asked);
  room.model.show("nothing", "nothing");
  CHECK(asked.count() == 0);
  CHECK_FALSE(room.model.hasJob());
  room.model.showFirst("oka");
  CHECK(asked.count() == 1);
  CHECK(room.model.player() == "Okafor Sade");
}

TEST_CASE("as time goes on what stands in the list stays in its place") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::dent, FrameRemedy::unsaid));
  QSignalSpy findings(&room.model, &InspectionModel::findingsChanged);
  room.clock.advance(30'000);
  room.device->work().refresh();
  CHECK(findings.count() == 0);
  REQUIRE(room.note({FramePart::shaft, -1}, FrameFault::dent, FrameRemedy::unsaid));
  CHECK(findings.count() == 1);
}

TEST_CASE("the words follow the language of the screens") {
  InspectionRoom room;
  QSignalSpy words(&room.model, &InspectionModel::wordsChanged);
  room.device->work().setLanguage("de");
  CHECK(words.count() == 1);
  CHECK(room.model.places().front().toMap()["text"] == "Auf 12 Uhr");
  CHECK(room.model.faults().front().toMap()["text"] == "Riss");
}

TEST_CASE("an answer taken at another tablet while the player is asked here is told, and none is written over it") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::crack, FrameRemedy::do_not_string));
  const QString id = room.id();
  CHECK(room.model.asking().isEmpty());
  REQUIRE(room.model.ask(id));
  CHECK(room.model.asking()["player"] == "Okafor Sade");
  CHECK(room.model.asking()["meanwhile"] == "");
  Tablet other("Bench tablet");
  bringTo(other, room, room.player);
  const auto there = must(load_player(*other.ledger, room.player));
  const FrameAnswer said{FrameRemedy::string_anyway, "Sade Okafor", "Corvin", room.clock.now()};
  other.append(must(answer_finding(there, there.findings.front().id(), said)));
  bringFrom(other, room, room.player);
  QSignalSpy failed(&room.device->work(), &Work::failed);
  SECTION("the screen says so") {
    REQUIRE(waitUntil([&] { return !room.model.asking()["meanwhile"].toString().isEmpty(); }));
    CHECK(room.model.asking()["meanwhile"].toString().contains("Corvin"));
  }
  SECTION("also in the same moment") {}
  CHECK_FALSE(room.model.answer(id, static_cast<int>(FrameRemedy::do_not_string), "Coach", "Ines", "noted"));
  CHECK_FALSE(room.model.letGoOn(id, "Ines", "hurry", "going on"));
  CHECK(failed.count() == 2);
  CHECK(must(load_player(room.ledger(), room.player)).findings.front().now.answer == FrameRemedy::string_anyway);
  // Asked again, by somebody who has read it.
  REQUIRE(room.model.ask(id));
  CHECK(room.model.answer(id, static_cast<int>(FrameRemedy::do_not_string), "Coach", "Ines", "noted"));
  CHECK(must(load_player(room.ledger(), room.player)).findings.front().now.answer == FrameRemedy::do_not_string);
  CHECK(room.model.asking().isEmpty());
}

TEST_CASE("an answer goes to the racket that was asked about, although another one is looked at by then") {
  InspectionRoom room;
  REQUIRE(room.note(kHalfPastTwo, FrameFault::crack, FrameRemedy::do_not_string));
  const QString id = room.id();
  REQUIRE(room.model.ask(id));
  const auto other = room.receive(room.addPlayer(named("Varga")), day_wish(), 42);
  room.model.show(hex(other.book), hex(other.job));
  REQUIRE(room.model.player() == "Varga");
  CHECK(room.model.asking()["player"] == "Okafor Sade");
  CHECK_FALSE(room.model.question(id, "en").isEmpty());
  CHECK(room.model.answer(id, static_cast<int>(FrameRemedy::string_anyway), "Sade", "Ines", "noted"));
  CHECK(must(load_player(room.ledger(), room.player)).findings.front().now.answer == FrameRemedy::string_anyway);
  CHECK(must(load_player(room.ledger(), other.book)).findings.empty());
}
