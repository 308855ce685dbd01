#include "app-qml/view/quality_model.h"

#include <QFile>

#include "core/base/csv.h"
#include "core/desk/bench.h"
#include "core/desk/machines.h"
#include "tests/app/paper_reading.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

double noise(int i) {
  static constexpr double of[] = {0.4, -1.9, 1.2, -0.6, 2.1, -1.1, 0.2, 1.6, -2.2, 0.9, -0.3, -1.4, 1.8, 0.1, -0.8, 1.3, -1.7, 0.6, 2.4, -0.1};
  return of[static_cast<std::size_t>(i) % std::size(of)];
}

struct QualityRoom : RoomOfJobs {
  EntityId machine;
  int strung = 0;

  QualityRoom() {
    Machine made;
    made.name = "1";
    made.kind = MachineKind::constant_pull;
    append(must(add_machine(event, load_machines(ledger(), event), made, clock.now())));
    machine = load_machines(ledger(), event).at(0).id();
  }
  // One of a model of frame, strung on the machine, read so many per cent off.
  MadeJob string(const std::string& by, double percent) {
    ++strung;
    const auto made = receive(addPlayer(named("Player" + std::to_string(strung), "Ilse")), day_wish(), strung);
    auto record = must(load_player(ledger(), made.book));
    Draft model(made.book, kPlayerBook, kActEdit);
    Racket racket = record.rackets.at(0).now;
    racket.model = "Corvid 98";
    put_changes(model, record.rackets.at(0).seen, racket);
    append(model);
    StageStep mount{Stage::on_machine, by, {}, clock.now()};
    mount.machine = machine;
    record = must(load_player(ledger(), made.book));
    append(must(take_step(record, std::span(&made.job, 1), mount)));
    read(made, 30 * (1 + percent / 100));
    clock.advance(10 * kMinute);
    return made;
  }
  void read(const MadeJob& made, double kilograms) {
    Reading reading;
    reading.what = ReadingKind::bed_stiffness;
    reading.value = Quantity{Decimal::rounded(kilograms, 2), Unit::kilogram_force_per_centimetre};
    reading.at = clock.now();
    append(must(put_reading(must(load_player(ledger(), made.book)), made.job, reading)));
  }
  void pull(double set, double shown) {
    MachineCare care;
    care.machine = machine;
    care.what = CareKind::calibrated;
    care.by = "Mara";
    care.asked = Quantity{Decimal::rounded(set, 1), Unit::kilogram_force};
    care.read = Quantity{Decimal::rounded(shown, 2), Unit::kilogram_force};
    append(must(note_care(event, care, clock.now())));
  }
  [[nodiscard]] QUrl file(const char* name) const { return QUrl::fromLocalFile(QString::fromStdString((folder / name).string())); }
};

bool settle(const QualityModel& quality) {
  return waitUntil([&] { return !quality.busy() && quality.ready(); });
}

}  // namespace

TEST_CASE("evenness is worked out only while somebody looks, and says plainly what is too little") {
  QualityRoom room;
  QualityModel quality(room.device->work());
  (void)room.string("Merrin", 0);
  room.device->work().refresh();
  CHECK_FALSE(quality.busy());
  CHECK_FALSE(quality.ready());
  quality.setWatched(true);
  REQUIRE(settle(quality));
  CHECK(quality.fault().isEmpty());
  REQUIRE(quality.points().size() == 1);
  CHECK_FALSE(quality.points()[0].toMap()["told"].toBool());
  CHECK(quality.capability().startsWith("Too few readings"));
  CHECK(quality.scatter().startsWith("Too few readings"));
  CHECK(quality.alarms().isEmpty());
  CHECK(quality.variance().isEmpty());
  REQUIRE(quality.machines().size() == 1);
  const auto machine = quality.machines()[0].toMap();
  CHECK_FALSE(machine["known"].toBool());
  CHECK(machine["missing"].toString() == "No pull against the gauge was noted.");
  CHECK(machine["due"].toString().contains("never"));
}

TEST_CASE("a machine that goes low stands out on the chart and in the list, by name, with what to do") {
  QualityRoom room;
  for (int i = 0; i < 24; ++i) (void)room.string(i % 2 == 0 ? "Merrin" : "Odalys", noise(i));
  for (int i = 0; i < 4; ++i) (void)room.string(i % 2 == 0 ? "Merrin" : "Odalys", noise(i) - 5);
  const auto last = room.string("Merrin", -6.5);
  QualityModel quality(room.device->work());
  quality.setWatched(true);
  quality.look("bench", hex(last.job));
  REQUIRE(settle(quality));
  REQUIRE(waitUntil([&] { return quality.verdicts().contains("bench"); }));
  CHECK(quality.rackets() == 29);
  REQUIRE_FALSE(quality.alarms().isEmpty());
  bool found = false;
  const auto alarms = quality.alarms();
  for (const auto& alarm : alarms)
    for (const auto& title : alarm.toMap()["titles"].toList()) found = found || title.toMap()["mark"] == "machine";
  CHECK(found);
  const auto newest = quality.alarms()[0].toMap();
  CHECK_FALSE(newest["text"].toString().isEmpty());
  CHECK_FALSE(newest["titles"].toList().isEmpty());
  CHECK_FALSE(newest["advice"].toString().isEmpty());
  CHECK_FALSE(newest["causes"].toList().isEmpty());
  bool marked = false;
  const auto points = quality.points();
  for (const auto& point : points) marked = marked || !point.toMap()["mark"].toString().isEmpty();
  CHECK(marked);
  CHECK(quality.capability().startsWith("Of 100 rackets about"));
  CHECK(quality.reach() >= 6.5);
  const auto verdict = quality.verdicts()["bench"].toMap();
  CHECK(verdict["off"].toBool());
  CHECK(verdict["text"].toString().contains("below"));
  CHECK(verdict["text"].toString().contains("Most likely"));
  // A stringer alone, with the average.
  CHECK(quality.choices().size() == 4);
  quality.setOf("stringer:Odalys");
  CHECK(quality.rackets() == 14);
  CHECK(quality.capability().startsWith("Too few readings to tell what can be held: 14"));
  CHECK(quality.points()[0].toMap()["average"].isValid());
  const auto table = room.file("points.csv");
  REQUIRE(quality.save(table));
  QFile saved(table.toLocalFile());
  REQUIRE(saved.open(QIODevice::ReadOnly));
  CHECK(must(read_csv(saved.readAll().toStdString())).rows.size() == 14);
  CHECK(quality.saved()->text() == "Saved as " + table.toLocalFile());
  CHECK_FALSE(quality.save(room.file("")));
  CHECK(quality.saved()->text().contains("is no file"));
  // Nobody looks at that racket any more.
  quality.look("bench", "");
  CHECK_FALSE(quality.verdicts().contains("bench"));
}

TEST_CASE("the chart, what stands out, the machine's line and every racket come back out of the saved PDF, each with its band") {
  QualityRoom room;
  for (const double set : {20.0, 25.0, 30.0})
    for (const double off : {0.02, -0.02}) room.pull(set, set * 0.97 + off);
  for (int i = 0; i < 24; ++i) (void)room.string(i % 2 == 0 ? "Merrin" : "Odalys", noise(i));
  for (int i = 0; i < 6; ++i) (void)room.string(i % 2 == 0 ? "Merrin" : "Odalys", noise(i) - 6);
  QualityModel quality(room.device->work());
  quality.setWatched(true);
  REQUIRE(settle(quality));
  const auto file = room.file("even.pdf");
  quality.savePdf(file);
  CHECK(quality.busy());
  REQUIRE(settle(quality));
  const QString pdf = file.toLocalFile();
  const QString letters = lettersIn(pdf);
  for (const char* text : {"How even the work is", "Racket after racket", "estimates", "What stands out", "Machine 1: -", "± ",
                           "Likely causes (estimate):", "Machines against the gauge", "To pull 25.0 kg, set 25.8 kg (estimate, 95 % between",
                           "The rackets one by one", "Merrin", "say nothing on anybody’s health"}) {
    CAPTURE(text);
    CHECK(letters.contains(lettersOf(QString::fromUtf8(text))));
  }
  // Every racket that can be compared is there with the figures that the table for other programs has.
  const auto table = must(read_csv(quality_csv(must(RoomQuality::make(room.ledger(), room.event)))));
  REQUIRE(table.rows.size() == 30);
  std::size_t compared = 0;
  for (const auto& row : table.rows) {
    CHECK(letters.contains(lettersOf(QString::fromStdString(row.fields[2]))));
    if (row.fields[10].empty()) continue;
    ++compared;
    const auto percent = must(Decimal::parse(row.fields[10])).to_double();
    const QString told = (percent > 0 ? QStringLiteral("+") : QString()) + QString::number(percent, 'f', 1) + QStringLiteral(" % ±");
    CAPTURE(row.fields[2], told.toStdString());
    // Of two decimals rounded again to one a half may fall to either side.
    const bool half = std::abs(std::remainder(percent * 10, 1.0)) > 0.499;
    CHECK((half || letters.contains(lettersOf(told))));
  }
  CHECK(compared > 20);
  for (const QSizeF& size : pageSizesIn(pdf)) {
    CHECK(size.width() == Approx(210).margin(0.5));
    CHECK(size.height() == Approx(297).margin(0.5));
  }
  // Where it can't be written it is told, and nothing is left behind.
  CHECK(quality.saved()->saved());
  quality.savePdf(room.file("no/even.pdf"));
  REQUIRE(settle(quality));
  CHECK_FALSE(quality.saved()->saved());
  CHECK(quality.saved()->text().contains("The folder is not there"));
}

TEST_CASE("evenness on paper is of the machine or stringer that is shown, in the room's language, and of nothing where nothing was read") {
  QualityRoom room;
  PaperRequest request;
  request.kind = PaperKind::evenness;
  request.event = room.event;
  request.language = *Language::from("de");
  request.now = room.clock.now();
  CHECK_FALSE(makePaper(room.ledger(), request).has_value());
  for (int i = 0; i < 8; ++i) (void)room.string(i % 2 == 0 ? "Merrin" : "Odalys", noise(i));
  request.watched = Watched::stringer;
  request.watchedName = "Odalys";
  const auto paper = must(makePaper(room.ledger(), request));
  const QString file = room.file("even.pdf").toLocalFile();
  REQUIRE(writePdf(paper, file));
  const QString letters = lettersIn(file);
  CHECK(letters.contains(lettersOf("Bespanner: Odalys")));
  CHECK(letters.contains(lettersOf("Schätzungen")));
  CHECK(letters.contains("Player2"));
  CHECK_FALSE(letters.contains("Player1"));
  CHECK_FALSE(letters.contains("Merrin"));
  for (const auto& page : paper.pages) CHECK(edgesAreWhite(page.picture(4), {QPointF(), page.size()}, 8, 4));
}

TEST_CASE("a machine's line says what to set, for a wanted pull too, and the rules are kept within their bounds") {
  QualityRoom room;
  for (const double set : {20.0, 25.0, 30.0})
    for (const double off : {0.02, -0.02}) room.pull(set, set * 0.97 + off);
  QualityModel quality(room.device->work());
  quality.setWatched(true);
  REQUIRE(settle(quality));
  REQUIRE(quality.machines().size() == 1);
  auto machine = quality.machines()[0].toMap();
  REQUIRE(machine["known"].toBool());
  CHECK(machine["beyond"].toBool());
  CHECK(machine["points"].toList().size() == 6);
  CHECK(machine["line"].toList().size() > 2);
  CHECK(machine["sentences"].toStringList()[0].startsWith(QStringLiteral("To pull 25.0\u00a0kg, set 25.8\u00a0kg")));
  quality.setWanted("24");
  CHECK(quality.machines()[0].toMap()["sentences"].toStringList()[0].startsWith(QStringLiteral("To pull 24.0\u00a0kg, set 24.7\u00a0kg")));
  quality.setWanted("900");
  CHECK_FALSE(quality.wrongWanted().isEmpty());
  quality.setWanted("60");
  CHECK(quality.wrongWanted().isEmpty());
  CHECK(quality.machines()[0].toMap()["sentences"].toStringList()[0].contains("not known"));
  // At the bench, in the unit that was agreed.
  const QString id = hex(room.machine);
  CHECK(quality.correction(id, "24", "kg").startsWith(QStringLiteral("To pull 24\u00a0kg, set 24.7\u00a0kg")));
  CHECK(quality.correction(id, "53", "lb").startsWith(QStringLiteral("To pull 53\u00a0lb, set 54.6\u00a0lb")));
  CHECK(quality.correction(id, "90", "kg").isEmpty());
  CHECK(quality.correction(id, "", "kg").isEmpty());
  CHECK(quality.correction(id, "24", "mm").isEmpty());
  CHECK(quality.correction("", "24", "kg").isEmpty());
  CHECK_FALSE(machine["overdue"].toBool());
  room.clock.advance(3 * kDay);
  room.device->work().refresh();
  REQUIRE(settle(quality));
  CHECK(quality.machines()[0].toMap()["overdue"].toBool());
  QString failed;
  QObject::connect(&room.device->work(), &Work::failed, [&](const QString& what) { failed = what; });
  for (const auto& [tolerance, days] : {std::pair("0.1", ""), std::pair("many", ""), std::pair("", "0"), std::pair("", "x"), std::pair("30", "400")})
    CHECK_FALSE(quality.setRules(tolerance, days, "kept"));
  CHECK_FALSE(failed.isEmpty());
  CHECK(quality.setRules("2.5", "7", "kept"));
  REQUIRE(waitUntil([&] { return !quality.busy() && quality.tolerance() == 2.5; }));
  CHECK(quality.ruledTolerance() == "2.5");
  CHECK(quality.ruledDays() == "7");
  CHECK_FALSE(quality.machines()[0].toMap()["overdue"].toBool());
}
