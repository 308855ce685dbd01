#include "app-qml/view/bed_model.h"

#include <QFile>
#include <QSignalSpy>
#include <QUrl>

#include "core/desk/bench.h"
#include "core/model/stock.h"
#include "tests/app/paper_reading.h"
#include "tests/app/room_jobs.h"
#include "tests/app/rows.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct BedRoom : RoomOfJobs {
  BookId player;

  BedRoom() {
    player = addPlayer(named("Varga", "Ilka"));
    stock("Tarnbrook Silk", StringMaterial::multifilament, 125);
    stock("Velmora Round", StringMaterial::polyester, 120);
  }
  void stock(const char* name, StringMaterial material, std::int64_t gauge) {
    StockItem item;
    item.name = name;
    item.supply = Supply::reel;
    item.material = material;
    item.gauge = Quantity{{gauge, 2}, Unit::millimetre};
    Draft draft(event, kEventBook, kActStock);
    (void)put_new(draft, item, clock.now());
    append(draft);
  }
  void read(const MadeJob& made, ReadingKind what, const Quantity& value) {
    Reading reading;
    reading.what = what;
    reading.value = value;
    reading.at = clock.now();
    reading.by = "Bo";
    append(must(put_reading(must(load_player(ledger(), made.book)), made.job, reading)));
  }
};

bool settle(const BedModel& bed) {
  return waitUntil([&] { return !bed.busy() && bed.ready(); });
}

double first(const QVariantMap& row, const char* name) {
  return row[name].toString().split(QChar(0xa0)).first().toDouble();
}

}  // namespace

TEST_CASE("a racket's bed is worked out beside the screen, only while somebody looks, with bands and what was assumed") {
  BedRoom room;
  const auto made = room.receive(room.player, day_wish(), 12, room.clock.now() + 20 * kHour);
  BedModel bed(room.device->work());
  QSignalSpy asked(&bed, &BedModel::asked);
  bed.show(hex(made.book), hex(made.job));
  CHECK(asked.count() == 1);
  CHECK_FALSE(bed.busy());
  CHECK_FALSE(bed.ready());
  bed.setWatched(true);
  REQUIRE(settle(bed));
  CHECK(bed.fault().isEmpty());
  CHECK(bed.title().startsWith("12 Varga"));
  REQUIRE(bed.figures().size() == 4);
  const auto stiffness = at(bed.figures(), 0);
  CHECK(stiffness["now"].toString().endsWith("N/mm"));
  CHECK(first(stiffness, "now") > 15);
  CHECK(first(stiffness, "now") < 60);
  CHECK(first(stiffness, "match") < first(stiffness, "now"));
  CHECK(stiffness["nowBand"].toString().contains(" to "));
  CHECK(first(at(bed.figures(), 1), "now") > 300);  // Hz
  CHECK(bed.strings().size() > 100);
  CHECK(bed.outline().size() > 20);
  CHECK(bed.curve().size() > 10);
  const auto map = bed.map();
  const auto steps = map["legend"].toStringList().size();
  CHECK(steps >= 3);
  CHECK(map["areas"].toList().size() == steps);
  CHECK(map["edges"].toList().size() == steps);
  REQUIRE(map["spots"].toList().size() == 9);
  CHECK(map["spots"].toList()[0].toList()[2].toString().toDouble() == Approx(first(stiffness, "now")).margin(0.51));
  CHECK(map["spoken"].toString().contains("estimates"));
  CHECK(bed.mapNote().contains(stiffness["nowBand"].toString().section(" to ", 0, 0)));
  CHECK(bed.left().contains("%"));
  CHECK(bed.data().contains("model"));
  // The test's rackets have neither head size nor pattern, and it is not strung yet.
  CHECK(bed.assumed().join('\n').contains("632"));
  CHECK(bed.assumed().join('\n').contains("16 x 19"));
  CHECK(bed.assumed().join('\n').contains("off the machine now"));
  CHECK(bed.choices().size() == 2);
}

TEST_CASE("another string, a gauge or a kilo more has its tension, and what can't be says why") {
  BedRoom room;
  const auto made = room.receive(room.player, day_wish(), 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(settle(bed));
  bed.propose(BedModel::String, BedModel::Both, "1");
  REQUIRE(settle(bed));
  const QString set = bed.proposal()["set"].toString();
  CHECK(set.contains("kg"));
  CHECK(bed.proposal()["lines"].toStringList().size() == 3);
  CHECK(bed.proposal()["lines"].toStringList().join(' ').contains("estimate"));
  CHECK(bed.proposal()["fault"].toString().isEmpty());
  bed.propose(BedModel::Mains, BedModel::Both, "1");
  REQUIRE(settle(bed));
  CHECK(bed.proposal()["set"].toString() != set);
  CHECK(bed.proposal()["lines"].toStringList().size() == 2);  // the mains are as they were said
  bed.propose(BedModel::Mains, BedModel::Both, "30");
  REQUIRE(settle(bed));
  CHECK_FALSE(bed.proposal()["fault"].toString().isEmpty());
  CHECK(bed.headUnit() == QStringLiteral("cm²"));
  CHECK(bed.headSize() == "632");
  CHECK(bed.mainsCount() == 16);
  // A larger head of the same strings is softer, and so is one with fewer of them: both are pulled tighter.
  for (const auto& [what, value] : {std::pair{BedModel::HeadSize, "700"}, std::pair{BedModel::Pattern, "14x16"}}) {
    bed.propose(what, BedModel::Both, value);
    REQUIRE(settle(bed));
    const QString kilos = bed.proposal()["set"].toString().section("Set ", 1).section(QChar(0xa0), 0, 0);
    CHECK(kilos.toDouble() > 24.5);
    CHECK(bed.proposal()["other"].toBool());
  }
  for (const char* value : {"18", "18x", "0x0", "x"}) {
    bed.propose(BedModel::Pattern, BedModel::Both, value);
    REQUIRE(settle(bed));
    CHECK(bed.proposal()["set"].toString().isEmpty());
  }
  bed.propose(BedModel::String, BedModel::Both, "7");
  CHECK(bed.proposal().isEmpty());
}

TEST_CASE("where mains and crosses are set alike one figure with its band is told") {
  BedRoom room;
  Agreed alike = day_wish();
  alike.crosses_tension = alike.mains_tension;
  const auto made = room.receive(room.player, alike, 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(settle(bed));
  bed.propose(BedModel::HeadSize, BedModel::Both, "680");
  REQUIRE(settle(bed));
  CHECK(bed.proposal()["set"].toString().contains("keep this feel; nine times of ten"));
  CHECK_FALSE(bed.proposal()["set"].toString().contains("crosses"));
}

TEST_CASE("a tone gives tension and stiffness back, or says that it is not this racket's") {
  BedRoom room;
  const auto made = room.receive(room.player, day_wish(), 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(settle(bed));
  const int tone = static_cast<int>(first(at(bed.figures(), 1), "now"));
  bed.hear(QString::number(tone));
  REQUIRE(settle(bed));
  CHECK(bed.heard()["lines"].toStringList().size() == 3);
  bed.hear(QString::number(2 * tone));
  REQUIRE(settle(bed));
  CHECK(bed.heard()["fault"].toString().contains("tone"));
  bed.hear("");
  CHECK(bed.heard().isEmpty());
}

TEST_CASE("readings of the player's rackets are told as data, and a job without a tension says what is missing") {
  BedRoom room;
  const auto made = room.receive(room.player, day_wish(), 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(settle(bed));
  const double before = first(at(bed.figures(), 0), "now");
  // Of a racket that nobody strung here the age is not known: such a reading is kept apart.
  for (const Stage stage : {Stage::cut_out, Stage::on_machine, Stage::strung}) room.step(made, stage, "Bo");
  room.read(made, ReadingKind::bed_stiffness, {Decimal::rounded(before * 1.2, 1), Unit::newton_per_millimetre});
  room.read(made, ReadingKind::bed_stiffness, {Decimal{70, 0}, Unit::none});
  room.device->work().refresh();
  REQUIRE(settle(bed));
  CHECK(first(at(bed.figures(), 0), "now") > before * 1.1);
  CHECK(bed.data().contains("1 reading"));
  CHECK(bed.data().contains("left out"));

  const QString file = QString::fromStdString((room.folder / "bed.csv").string());
  CHECK(bed.saved()->text().isEmpty());
  CHECK(bed.saveCsv(QUrl::fromLocalFile(file)));
  CHECK(bed.saved()->text() == "Saved as " + file);
  QFile table(file);
  REQUIRE(table.open(QIODevice::ReadOnly));
  CHECK(table.readAll().contains("centre stiffness,N/mm,match,"));
  CHECK_FALSE(bed.saveCsv(QUrl::fromLocalFile(QString::fromStdString((room.folder / "no" / "bed.csv").string()))));
  CHECK_FALSE(bed.saved()->saved());
  CHECK(bed.saved()->text().endsWith("The folder is not there; choose another one."));

  Agreed nothing = day_wish();
  nothing.mains_tension.reset();
  nothing.crosses_tension.reset();
  const auto bare = room.receive(room.player, nothing, 13);
  bed.show(hex(bare.book), hex(bare.job));
  REQUIRE(waitUntil([&] { return !bed.busy() && !bed.fault().isEmpty(); }));
  CHECK(bed.fault().contains("tension"));
  CHECK(bed.figures().isEmpty());
  CHECK_FALSE(bed.saveCsv(QUrl::fromLocalFile(file)));
}

TEST_CASE("the sheet of a bed comes back out of its PDF: figures with bands, what is left, the change that was asked for, cautions") {
  BedRoom room;
  Agreed wish = day_wish();
  wish.note = "elbow pain since Monday";
  const auto made = room.receive(room.player, wish, 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(settle(bed));
  bed.propose(BedModel::Pattern, BedModel::Both, "18x20");
  REQUIRE(settle(bed));
  const QUrl file = QUrl::fromLocalFile(QString::fromStdString((room.folder / "bed.pdf").string()));
  bed.savePdf(file);
  CHECK(bed.busy());
  REQUIRE(settle(bed));
  const QString letters = lettersIn(file.toLocalFile());
  QStringList texts{"String bed",
                    "tag 12",
                    "Varga",
                    "(estimate)",
                    "What is left of the tension",
                    "Same feel with",
                    "another racket strung 18 x 20",
                    "Tarnbrook Silk",
                    "Velmora Round",
                    "gauge 1.30 mm",
                    "nine times of ten",
                    "physician",
                    "632",
                    bed.left(),
                    bed.proposal()["set"].toString().section("Set ", 1).section(" on", 0, 0)};
  texts.append(bed.cautions());
  CHECK(bed.cautions().size() == 1);
  for (const auto& row : bed.figures())
    for (const char* key : {"now", "nowBand", "match", "matchBand"}) texts.append(row.toMap()[key].toString());
  for (const auto& spot : bed.map()["spots"].toList()) texts.append(spot.toList()[2].toString());
  for (const QString& text : texts) {
    CAPTURE(text.toStdString());
    CHECK(letters.contains(lettersOf(text)));
  }
  const auto sizes = pageSizesIn(file.toLocalFile());
  REQUIRE_FALSE(sizes.empty());
  for (const QSizeF& size : sizes) {
    CHECK(size.width() == Approx(210).margin(0.5));
    CHECK(size.height() == Approx(297).margin(0.5));
  }
  CHECK(bed.saved()->text() == "Saved as " + file.toLocalFile());
  bed.savePdf(QUrl::fromLocalFile(QString::fromStdString((room.folder / "no" / "bed.pdf").string())));
  REQUIRE(settle(bed));
  CHECK_FALSE(bed.saved()->saved());
  CHECK(bed.saved()->text().contains("The folder is not there"));
  bed.setWatched(false);
  CHECK(bed.saved()->text().isEmpty());
}

TEST_CASE("string beds stand on rolls too, in every language, and one of several that can't be told says why") {
  PaperRoom room;
  (void)room.receive(room.addPlayer(named("Aldana", "Iria")), day_wish(), 1);
  Agreed nothing = day_wish();
  nothing.mains_tension.reset();
  nothing.crosses_tension.reset();
  (void)room.receive(room.addPlayer(named("Brekke", "Sol")), nothing, 2);
  for (const auto& [language, size] : {std::pair("en", "a4"), std::pair("de", "80"), std::pair("fr", "a4"), std::pair("es", "62")}) {
    CAPTURE(language, size);
    auto request = room.request(PaperKind::stringBed, size);
    request.language = *Language::from(language);
    const auto paper = room.made(request);
    const QString letters = lettersIn(room.pdf(paper));
    CHECK(letters.contains("Aldana"));
    CHECK(letters.contains("Brekke"));
    CHECK(letters.contains("tension"));
    CHECK_FALSE(letters.contains("bed."));
    for (const auto& page : paper.pages) CHECK(edgesAreWhite(page.picture(4), {QPointF(), page.size()}, 2.5, 4));
  }
  auto request = room.request(PaperKind::stringBed);
  request.jobs.erase(request.jobs.begin());
  CHECK_FALSE(makePaper(room.ledger(), request).has_value());
  request.jobs.clear();
  CHECK_FALSE(makePaper(room.ledger(), request).has_value());
}
