#include "app-qml/view/scan_model.h"

#include <QSignalSpy>

#include "core/desk/tag_code.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct ScanRoom : RoomOfJobs {
  BookId okafor = addPlayer(named("Okafor", "Sade"));
  BookId lindqvist = addPlayer(named("Lindqvist", "Tove"));
  MadeJob first = receive(okafor, day_wish(), 41);
  MadeJob second = receive(okafor, day_wish(), 42);
  MadeJob other = receive(lindqvist, day_wish(), 43);
  ScanModel model{device->work()};
  QSignalSpy found{&model, &ScanModel::found};
  QSignalSpy failed{&device->work(), &Work::failed};

  [[nodiscard]] QString code(std::int64_t number) const { return QString::fromStdString(tag_code(event, number).value()); }
  [[nodiscard]] QString said() const { return failed.empty() ? QString() : failed.back().front().toString(); }
};

void type(ScanEar& ear, const QString& text, qint64& at, qint64 gap) {
  for (const QChar c : text) ear.typed(c, at += gap);
}

}  // namespace

TEST_CASE("a scanner is heard among what a person types") {
  const QString code = QString::fromStdString(tag_code(BookId{{1, 2, 3}}, 7).value());
  ScanEar ear;
  qint64 at = 5000;
  type(ear, code, at, 4);
  CHECK(ear.entered(at + 4) == code);
  CHECK_FALSE(ear.entered(at + 5));
  type(ear, "Kova", at, 180);
  type(ear, code, at, 4);
  CHECK(ear.entered(at + 4) == code);
  // By hand, the whole of it: a code that reads as one.
  type(ear, code, at, 300);
  CHECK(ear.entered(at + 300) == code);
}

TEST_CASE("what a person types is never taken for a damaged tag, what a scanner types is") {
  ScanEar ear;
  qint64 at = 5000;
  type(ear, "WL-2 strings", at, 180);
  CHECK_FALSE(ear.entered(at + 180));
  type(ear, "Wladimir", at, 4);
  CHECK_FALSE(ear.entered(at + 4));
  type(ear, "WL:AS59RB:138:9", at, 180);
  CHECK_FALSE(ear.entered(at + 180));
  type(ear, "WL:AS59RB:138:9", at, 4);
  CHECK(ear.entered(at + 4) == "WL:AS59RB:138:9");
  type(ear, QString::fromUtf8("WLÖAS59RBÖ137Ö9"), at, 4);
  CHECK(ear.entered(at + 4) == QString::fromUtf8("WLÖAS59RBÖ137Ö9"));
  // A code, a long pause, and Enter for something else.
  type(ear, "WL:AS59RB:137:9", at, 4);
  CHECK_FALSE(ear.entered(at + 5000));
  type(ear, QString(100'000, u'x'), at, 1);
  CHECK_FALSE(ear.entered(at));
}

TEST_CASE("a scan finds the racket of its tag") {
  ScanRoom room;
  room.model.take(room.code(43));
  REQUIRE(room.found.count() == 1);
  CHECK(room.found[0][0].toString() == hex(room.other.book));
  CHECK(room.found[0][1].toString() == hex(room.other.job));
  const auto job = room.model.jobOf(hex(room.other.book), hex(room.other.job));
  CHECK(job["text"] == "Tag 43, Lindqvist Tove");
  CHECK(job["nextStage"] == static_cast<int>(Stage::inspected));
}

TEST_CASE("a tag that leads nowhere says why") {
  ScanRoom room;
  room.model.take(QString::fromStdString(tag_code(room.okafor, 41).value()));
  CHECK(room.said() == "This tag is of another event");
  room.model.take("WL:AS59RB:138:9");
  CHECK(room.said() == "The tag was misread");
  room.model.take(QString::fromUtf8("WLÖAS59RBÖ137Ö9"));
  CHECK(room.said() == "The scanner types for another keyboard");
  room.model.take(room.code(99));
  CHECK(room.said() == "No racket here has tag 99");
  room.model.take("4006381333931X");
  CHECK(room.said() == "This is no code of a tag");
  CHECK(room.found.empty());
}

TEST_CASE("a number that was given out twice means the racket in the room, or asks") {
  ScanRoom room;
  const auto twin = room.receive(room.lindqvist, day_wish(), 41);
  QSignalSpy several(&room.model, &ScanModel::severalFound);
  room.model.take(room.code(41));
  CHECK(several.count() == 1);
  CHECK(room.model.several().size() == 2);
  CHECK(room.found.empty());
  room.step(room.first, Stage::collected, "Ines", "handed over");
  room.model.take(room.code(41));
  REQUIRE(room.found.count() == 1);
  CHECK(room.found[0][1].toString() == hex(twin.job));
}

TEST_CASE("no single scan moves on what waits for an answer or is where two people moved it") {
  ScanRoom room;
  room.step(room.first, Stage::waiting, "Ines", "hairline");
  CHECK(room.model.jobOf(hex(room.first.book), hex(room.first.job))["nextStage"] == 0);
  room.stepApart(room.second, Stage::cut_out, Stage::inspected);
  CHECK(room.model.jobOf(hex(room.second.book), hex(room.second.job))["nextStage"] == 0);
  CHECK(room.model.jobOf("nothing", "nothing").isEmpty());
}

TEST_CASE("a number that is typed finds its rackets") {
  ScanRoom room;
  REQUIRE(room.model.withNumber(" 42 ").size() == 1);
  CHECK(room.model.withNumber("42").front().toMap()["text"] == "Tag 42, Okafor Sade");
  for (const char* text : {"", "0", "-42", "4.2", "Okafor", "99999999999999999999"}) CHECK(room.model.withNumber(text).isEmpty());
}

TEST_CASE("two tags of one racket agree, and its next step is there") {
  ScanRoom room;
  for (const auto stage : {Stage::cut_out, Stage::on_machine, Stage::strung}) room.step(room.first, stage, "Bo");
  room.model.setComparing(true);
  room.model.take(room.code(41));
  CHECK(room.model.compared() == ScanModel::Compared::First);
  room.model.take("41");
  CHECK(room.model.compared() == ScanModel::Compared::Same);
  CHECK(room.model.both()["nextStage"] == static_cast<int>(Stage::checked));
  CHECK(room.found.empty());
  // The next scan begins with another racket.
  room.model.take(room.code(43));
  CHECK(room.model.compared() == ScanModel::Compared::First);
}

TEST_CASE("tags of two rackets are an alarm that names both players") {
  ScanRoom room;
  room.model.setComparing(true);
  room.model.take(room.code(41));
  room.model.take(room.code(43));
  CHECK(room.model.compared() == ScanModel::Compared::Different);
  CHECK(room.model.sides().at(0).toMap()["player"] == "Okafor Sade");
  CHECK(room.model.sides().at(1).toMap()["player"] == "Lindqvist Tove");
  CHECK(room.model.both().isEmpty());
  // Two rackets of one player are two rackets.
  room.model.compareAgain();
  room.model.take(room.code(41));
  room.model.take(room.code(42));
  CHECK(room.model.compared() == ScanModel::Compared::Different);
}

TEST_CASE("a tag that cannot be read is no agreement, and is scanned again in its place") {
  ScanRoom room;
  room.model.setComparing(true);
  room.model.take(room.code(41));
  room.model.take("WL:AS59RB:138:9");
  CHECK(room.model.compared() == ScanModel::Compared::Unknown);
  CHECK(room.model.sides().at(1).toMap()["fault"].toBool());
  CHECK(room.failed.empty());
  room.model.take(room.code(41));
  CHECK(room.model.compared() == ScanModel::Compared::Same);
  room.receive(room.lindqvist, day_wish(), 41);
  room.model.compareAgain();
  room.model.take(room.code(41));
  CHECK(room.model.compared() == ScanModel::Compared::Unknown);
  room.model.setComparing(false);
  CHECK(room.model.compared() == ScanModel::Compared::Nothing);
}
