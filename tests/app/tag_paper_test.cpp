#include <QFile>

#include <filesystem>

#include "app-qml/papers/paper_words.h"
#include "core/desk/tag_code.h"
#include "tests/app/paper_reading.h"
#include "tests/support/processor_time.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

constexpr qreal dots = 12;  // a mm: 300 to the inch, as label printers have

Agreed fullWish() {
  Agreed wish = day_wish();
  wish.mains_string = "Tarnbrook Silk";
  wish.crosses_string = "Velmora Round";
  wish.mains_gauge = Quantity{{125, 2}, Unit::millimetre};
  wish.mains_tension = Quantity{{55, 0}, Unit::pound_force};
  wish.crosses_tension = Quantity{{2450, 2}, Unit::kilogram_force};
  wish.mains_prestretch = Quantity{{10, 0}, Unit::percent};
  wish.pieces = 2;
  wish.knots = 4;
  wish.knot_pretension = Quantity{{10, 0}, Unit::percent};
  wish.racket_stencil = "Oru";
  wish.racket_ink = "white";
  return wish;
}

// Names of the world; all invented.
const char* const kNames[] = {
    "Żółć-Ñandú Đặng", "محمد السعيدي", "כהן־לוי",
    "王小明",          "山田はなこ",   "김하늘",
    "สมชายใจดี",        "Юлия Щукина",  "Wolfeschlegelsteinhausenbergerdorff-Montalbán de la Santísima Trinidad y Aldecoa-Urrutia"};

}  // namespace

TEST_CASE("a racket tag says in large print what was agreed, each figure with the unit in which it was said") {
  PaperRoom room;
  room.receive(room.addPlayer(named("Okafor", "Ada Bea")), fullWish(), 137, room.clock.now() + kHour, Rush::on_court);
  const auto letters = lettersIn(room.pdf(room.made(room.request(PaperKind::tags, "62x100"))));
  for (const char* said : {"137", "Okafor", "Ada Bea", "55", "lb", "24.50", "kg", "Tarnbrook Silk 1.25 mm", "Velmora Round", "pre-stretch 10 %",
                           "ON-COURT RUSH", "2 pieces", "4 knots", "knot pre-tension 10 %", "Stencil Oru, white", "Ready by", "Harbour"}) {
    CAPTURE(said);
    CHECK(letters.contains(lettersOf(QString::fromUtf8(said))));
  }
  CHECK_FALSE(letters.contains("24.9"));  // what 55 lb would be in kilograms
  const auto small = lettersIn(room.pdf(room.made(room.request(PaperKind::tags, "62x29"))));
  for (const char* said : {"137", "Okafor A. B.", "55 lb / 24.50 kg", "ON-COURT RUSH", "Ready by", "pre-stretch 10 %"}) {
    CAPTURE(said);
    CHECK(small.contains(lettersOf(QString::fromUtf8(said))));
  }
}

TEST_CASE("tags have the size of their roll, one page a racket") {
  PaperRoom room;
  const auto player = room.addPlayer(named("Okafor"));
  for (int tag = 1; tag <= 3; ++tag) room.receive(player, fullWish(), tag);
  const std::vector<std::pair<const char*, QSizeF>> rolls{{"62x100", {62, 100}}, {"62x29", {62, 29}}, {"80x100", {80, 100}}};
  for (const auto& [key, size] : rolls) {
    CAPTURE(key);
    const auto sizes = pageSizesIn(room.pdf(room.made(room.request(PaperKind::tags, key))));
    REQUIRE(sizes.size() == 3);
    for (const QSizeF& page : sizes) {
      // PDF counts in points of 0.35 mm.
      CHECK(page.width() == Approx(size.width()).margin(0.36));
      CHECK(page.height() == Approx(size.height()).margin(0.36));
    }
  }
}

TEST_CASE("names in every script print, and come back out of the PDF as they were written") {
  PaperRoom room;
  int tag = 0;
  for (const char* name : kNames) room.receive(room.addPlayer(named(name)), fullWish(), ++tag);
  for (const char* size : {"62x100", "62x29"}) {
    const auto paper = room.made(room.request(PaperKind::tags, size));
    const auto letters = lettersIn(room.pdf(paper));
    for (const char* name : kNames) {
      CAPTURE(size, name);
      CHECK(letters.contains(lettersOf(QString::fromUtf8(name))));
    }
    // No box of a missing character: every page has ink of its own where the name stands.
    for (const auto& page : paper.pages) CHECK(edgesAreWhite(page.picture(dots), {QPointF(), page.size()}, 1.5, dots));
  }
}

TEST_CASE("however long a text is, nothing of it is cut off or stands outside its label") {
  PaperRoom room;
  Agreed wish = fullWish();
  wish.mains_string = std::string(300, 'M');
  wish.crosses_string = "A string whose maker could not stop: spiral, coated, coextruded, seven-sided, natural";
  wish.note = std::string(600, 'n') + " end of note";
  wish.racket_stencil = std::string(80, 'S');
  const auto player = room.addPlayer(named(std::string(200, 'W'), std::string(120, 'i') + " Ünal"));
  for (int tag = 1; tag <= 25; ++tag) room.receive(player, wish, 100'000'000 + tag, room.clock.now() + kHour, Rush::on_court);
  for (const char* size : {"62x100", "62x29", "80x100"}) {
    for (const PaperKind kind : {PaperKind::tags, PaperKind::bagTags}) {
      CAPTURE(size, nameOf(kind));
      const auto paper = room.made(room.request(kind, size));
      const auto& page = paper.pages.front();
      CHECK(edgesAreWhite(page.picture(dots), {QPointF(), page.size()}, 1.8, dots));
      CHECK(lettersIn(room.pdf(paper)).contains(QString(200, 'W')));
    }
  }
  const auto sheet = room.made(room.request(PaperKind::labels));
  REQUIRE(sheet.pages.size() == 2);
  const QImage picture = sheet.pages.front().picture(8);
  for (int i = 0; i < 24; ++i) {
    CAPTURE(i);
    CHECK(edgesAreWhite(picture, QRectF(i % 3 * 70, 0.5 + i / 3 * 37, 70, 37), 3.5, 8));
  }
}

TEST_CASE("a scanner reads the tag's code off the paper") {
  PaperRoom room;
  room.receive(room.addPlayer(named("Okafor")), fullWish(), 137);
  const QString code = QString::fromStdString(must(tag_code(room.event, 137)));
  for (const char* size : {"62x100", "62x29", "80x100"}) {
    for (const PaperKind kind : {PaperKind::tags, PaperKind::bagTags}) {
      CAPTURE(size, nameOf(kind));
      CHECK(codesIn(room.made(room.request(kind, size)).pages.front().picture(dots)) == QStringList{code});
    }
  }
  // Out of the PDF too, as the printer draws it.
  const QString pdf = room.pdf(room.made(room.request(PaperKind::tags, "62x29")));
  (void)runReader("pdftoppm", {"-r", "300", "-png", "-singlefile", pdf, pdf});
  CHECK(codesIn(QImage(pdf + ".png")) == QStringList{code});
}

TEST_CASE("labels begin at the first free one and go on over sheets") {
  PaperRoom room;
  const auto player = room.addPlayer(named("Okafor"));
  for (int tag = 1; tag <= 22; ++tag) room.receive(player, fullWish(), tag);
  auto request = room.request(PaperKind::labels);
  request.start = 5;
  const auto paper = room.made(request);
  REQUIRE(paper.pages.size() == 2);
  const auto sizes = pageSizesIn(room.pdf(paper));
  CHECK(sizes.at(1).width() == Approx(210).margin(0.36));
  CHECK(sizes.at(1).height() == Approx(297).margin(0.36));
  const auto label = [](int position) { return QRectF((position - 1) % 3 * 70, 0.5 + (position - 1) / 3 * 37, 70, 37); };
  const QImage first = paper.pages[0].picture(6);
  for (int position = 1; position <= 24; ++position) {
    CAPTURE(position);
    CHECK(isWhite(first, label(position), 6) == (position < 5));
  }
  const QImage second = paper.pages[1].picture(6);
  for (int position = 1; position <= 24; ++position) CHECK(isWhite(second, label(position), 6) == (position > 2));
  request.start = 25;
  CHECK(makePaper(room.ledger(), request).error().code == FaultCode::bad_input);
}

TEST_CASE("a bag tag names its player, and tells how many rackets and which") {
  PaperRoom room;
  Draft draft(room.addPlayer(named("Okafor", "Ada")), kPlayerBook, kActDropOff);
  DropOff drop_off;
  drop_off.event = room.event;
  drop_off.bags = 2;
  const auto id = put_new(draft, drop_off, room.clock.now()).id;
  for (int tag = 41; tag <= 43; ++tag) {
    Job job;
    job.event = room.event;
    job.drop_off = id;
    job.at = room.clock.now();
    job.tag_number = tag;
    job.rush = tag == 42 ? Rush::rush : Rush::none;
    const auto made = put_new(draft, job, room.clock.now()).id;
    StageMark mark;
    mark.job = made;
    mark.stage = Stage::received;
    (void)put_new(draft, mark, room.clock.now());
  }
  room.append(draft);
  const auto paper = room.made(room.request(PaperKind::bagTags));
  REQUIRE(paper.pages.size() == 1);
  const auto letters = lettersIn(room.pdf(paper));
  for (const char* said : {"Okafor", "Ada", "3 rackets, 2 bags", "414243", "RUSH"}) CHECK(letters.contains(lettersOf(said)));
  CHECK(newestDropOff(room.ledger(), draft.book()).size() == 3);
}

TEST_CASE("what two people told differently is on the tag as a question, not as a fact") {
  PaperRoom room;
  const auto made = room.receive(room.addPlayer(named("Okafor")), fullWish(), 7);
  Tablet other("Bench tablet");
  bringTo(other, room, made.book);
  const auto say = [&](Ledger& ledger, std::int64_t pounds) {
    Draft draft(made.book, kPlayerBook, kActEdit);
    draft.put(*ledger.entity(made.book, made.job), tag_of<Job>(&Agreed::mains_tension), Quantity{{pounds, 0}, Unit::pound_force});
    return draft;
  };
  other.append(say(*other.ledger, 51));
  room.append(say(room.ledger(), 58));
  bringFrom(other, room, made.book);
  CHECK(lettersIn(room.pdf(room.made(room.request(PaperKind::tags)))).contains(lettersOf("TO BE ASKED: mains tension")));
}

TEST_CASE("papers speak four languages, and each says all that the others say") {
  CHECK(paperPhrases().gaps().empty());
  CHECK(paperPhrases().languages().size() == 4);
  PaperRoom room;
  room.receive(room.addPlayer(named("Okafor")), fullWish(), 137, room.clock.now() + kHour, Rush::rush);
  auto request = room.request(PaperKind::tags);
  request.language = *Language::from("de");
  const auto letters = lettersIn(room.pdf(room.made(request)));
  for (const char* said : {"EILT", "Längs", "Quer", "24,50", "Vorstrecken", "Fertig bis"})
    CHECK(letters.contains(lettersOf(QString::fromUtf8(said))));
}

TEST_CASE("no racket, no event, no such size: one clear fault, and a file that was there stays") {
  PaperRoom room;
  CHECK(makePaper(room.ledger(), room.request(PaperKind::tags)).error().code == FaultCode::not_found);
  room.receive(room.addPlayer(named("Okafor")), fullWish(), 1);
  CHECK(makePaper(room.ledger(), room.request(PaperKind::tags, "a4")).error().code == FaultCode::bad_input);
  auto nowhere = room.request(PaperKind::workList);
  nowhere.event = {};
  CHECK(makePaper(room.ledger(), nowhere).error().code == FaultCode::not_found);
  const auto paper = room.made(room.request(PaperKind::tags));
  CHECK(writePdf(paper, "/no/such/folder/paper.pdf").error().code == FaultCode::io);
  // What is no file stays what it is: a folder here, as a device would.
  const auto folder = (room.folder / "there.pdf").string();
  REQUIRE(std::filesystem::create_directory(folder));
  CHECK(writePdf(paper, QString::fromStdString(folder)).error().code == FaultCode::io);
  CHECK(std::filesystem::is_directory(folder));
}

TEST_CASE("tags and a work list of 500 rackets are laid out within bounded time") {
  PaperRoom room;
  const auto player = room.addPlayer(named("Wolfeschlegelsteinhausen-Montalbán", "Ada"));
  for (int tag = 1; tag <= 500; ++tag) room.receive(player, fullWish(), tag, room.clock.now() + tag * kMinute);
  for (const PaperKind kind : {PaperKind::labels, PaperKind::tags, PaperKind::workList}) {
    CAPTURE(nameOf(kind));
    const double begin = processor_ms();
    const auto paper = room.made(room.request(kind));
    CHECK(processor_ms() - begin < 6000);  // seen: well under one second on a quiet machine
    CHECK(paper.pages.size() >= 10);
  }
}
