#include "core/desk/money.h"
#include "core/model/money.h"
#include "tests/app/paper_reading.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

// Where texts stand in a paper, in the order of the paper; -1 for one that is not there.
std::vector<qsizetype> placesOf(const QString& letters, std::initializer_list<const char*> texts) {
  std::vector<qsizetype> out;
  for (const char* text : texts) out.push_back(letters.indexOf(lettersOf(QString::fromUtf8(text))));
  return out;
}
bool inOrder(const std::vector<qsizetype>& places) {
  return places.front() >= 0 && std::is_sorted(places.begin(), places.end());
}

void charge(PaperRoom& room, const MadeJob& made, const char* service, std::int64_t cents, const char* note = "") {
  Draft draft(room.event, kEventBook, kActCharge);
  Charge line;
  line.player = made.book;
  line.job = made.job;
  line.service = service;
  line.note = note;
  line.amount_minor = cents;
  line.currency = "EUR";
  line.at = room.clock.now();
  (void)put_new(draft, line, room.clock.now());
  room.append(draft);
}
void pay(PaperRoom& room, const BookId& player, std::int64_t cents) {
  Draft draft(room.event, kEventBook, kActPayment);
  Payment line;
  line.player = player;
  line.amount_minor = cents;
  line.currency = "EUR";
  line.means = PaidBy::cash;
  line.at = room.clock.now();
  (void)put_new(draft, line, room.clock.now());
  room.append(draft);
}

}  // namespace

TEST_CASE("the work list has what is to be strung by the time promised, and neither what is ready nor what is gone") {
  PaperRoom room;
  const auto now = room.clock.now();
  room.receive(room.addPlayer(named("Later")), day_wish(), 3, now + 5 * kHour);
  room.receive(room.addPlayer(named("Untimed")), day_wish(), 4);
  room.receive(room.addPlayer(named("Sooner")), day_wish(), 2, now + kHour, Rush::rush);
  const auto ready = room.receive(room.addPlayer(named("Done")), day_wish(), 1, now);
  room.step(ready, Stage::cut_out, "Bo");
  room.step(ready, Stage::on_machine, "Bo");
  room.step(ready, Stage::strung, "Bo");
  room.step(ready, Stage::ready, "Bo");
  for (const char* size : {"a4", "80", "62"}) {
    CAPTURE(size);
    const auto paper = room.made(room.request(PaperKind::workList, size));
    const QString pdf = room.pdf(paper);
    const QString letters = lettersIn(pdf);
    CHECK(inOrder(placesOf(letters, {"Work list", "3 rackets to be strung", "RUSH", "Later", "Untimed"})));
    CHECK(inOrder(placesOf(letters, {"Sooner", "Later"})));
    CHECK_FALSE(letters.contains("Done"));
    const auto& page = paper.pages.front();
    CHECK(edgesAreWhite(page.picture(6), {QPointF(), page.size()}, 2.5, 6));
  }
}

TEST_CASE("no word of the work list is broken as long as its columns have room to spare") {
  PaperRoom room;
  const auto made = room.receive(room.addPlayer(named("Hollingbrooke", "Wilhelmina")), day_wish(), 3, room.clock.now() + kHour, Rush::on_court);
  room.step(made, Stage::cut_out, "Bo");
  const std::pair<const char*, const char*> stages[] = {{"de", "ausgeschnitten"}, {"en", "cut out"}, {"fr", "décordée"}, {"es", "descordada"}};
  for (const auto& [language, stage] : stages) {
    auto request = room.request(PaperKind::workList, "a4");
    request.language = Language::from(language).value();
    const QString text = runReader("pdftotext", {"-layout", room.pdf(room.made(request)), "-"});
    CAPTURE(text);
    CHECK(text.contains("Hollingbrooke"));
    CHECK(text.contains("Wilhelmina"));
    CHECK(text.contains(QString::fromUtf8(stage)));
  }
}

TEST_CASE("the pick-up list goes by family name as the language sorts, or by tag, and asks for what is due once") {
  PaperRoom room;
  const auto ready = [&](const char* family, int tag) {
    const auto made = room.receive(room.addPlayer(named(family)), day_wish(), tag);
    room.step(made, Stage::strung, "Bo", "strung elsewhere");
    room.step(made, Stage::ready, "Bo");
    return made;
  };
  ready("Zárate", 1);
  const auto asli = ready("Öz", 2);
  ready("Abara", 3);
  charge(room, asli, "labour", 1550);
  const auto byName = lettersIn(room.pdf(room.made(room.request(PaperKind::pickUpList))));
  CHECK(inOrder(placesOf(byName, {"Abara", "Öz", "Zárate"})));
  CHECK(byName.count(lettersOf("15.50")) == 1);
  auto request = room.request(PaperKind::pickUpList);
  request.byTag = true;
  CHECK(inOrder(placesOf(lettersIn(room.pdf(room.made(request))), {"Zárate", "Öz", "Abara"})));
}

TEST_CASE("a statement has every line and what is due, in the player's language") {
  PaperRoom room;
  Person person = named("Beaumarais", "Ilse");
  person.language = "fr";
  const auto made = room.receive(room.addPlayer(person), day_wish(), 41);
  charge(room, made, "labour", 2000);
  charge(room, made, "string", 1250, "Tarnbrook Silk");
  pay(room, made.book, 3000);
  auto request = room.request(PaperKind::statement);
  request.player = made.book;
  const auto letters = lettersIn(room.pdf(room.made(request)));
  for (const char* said : {"Relevé", "Beaumarais Ilse", "Cordage: Tarnbrook Silk", "numéro 41", "Payé en espèces", "Facturé", "À payer : 2,50"}) {
    CAPTURE(said);
    CHECK(letters.contains(lettersOf(QString::fromUtf8(said))));
  }
  pay(room, made.book, 1000);
  CHECK(lettersIn(room.pdf(room.made(request))).contains(lettersOf(QString::fromUtf8("À rendre : 7,50"))));
  request.player = room.ledger().create_book_id();
  CHECK(makePaper(room.ledger(), request).error().code == FaultCode::not_found);
}

TEST_CASE("a long list goes on over pages that are numbered, and no row is lost or parted") {
  PaperRoom room;
  const auto player = room.addPlayer(named("Okafor", "Ada"));
  for (int tag = 1001; tag <= 1090; ++tag) room.receive(player, day_wish(), tag, room.clock.now() + tag * kMinute);
  const auto paper = room.made(room.request(PaperKind::workList));
  REQUIRE(paper.pages.size() > 2);
  const QString pdf = room.pdf(paper);
  const QString letters = lettersIn(pdf);
  for (int tag = 1001; tag <= 1090; ++tag) CHECK(letters.count(QString::number(tag)) == 1);
  CHECK(letters.contains(lettersOf(QString("Page 2 of %1").arg(paper.pages.size()))));
  for (const QSizeF& size : pageSizesIn(pdf)) CHECK(size.height() == Approx(297).margin(0.36));
  for (const auto& page : paper.pages) CHECK(edgesAreWhite(page.picture(4), {QPointF(), page.size()}, 10, 4));
  // On a roll each page is as long as what is on it, and no longer than a printer takes.
  for (const QSizeF& size : pageSizesIn(room.pdf(room.made(room.request(PaperKind::workList, "80"))))) {
    CHECK(size.width() == Approx(80).margin(0.36));
    CHECK(size.height() < 401);
  }
}

TEST_CASE("an empty list says that it is empty") {
  PaperRoom room;
  CHECK(lettersIn(room.pdf(room.made(room.request(PaperKind::workList)))).contains(lettersOf("Nothing is waiting to be strung.")));
  CHECK(lettersIn(room.pdf(room.made(room.request(PaperKind::pickUpList)))).contains(lettersOf("No racket is waiting to be collected.")));
}

TEST_CASE("the wrap-up counts rackets by day, stringer, string and tension, and what of them was on time") {
  PaperRoom room;
  const auto now = room.clock.now();
  const auto player = room.addPlayer(named("Okafor"));
  const auto made = [&](int tag, std::optional<UnixMs> readyBy, const char* by) {
    const auto job = room.receive(player, day_wish(), tag, readyBy);
    room.step(job, Stage::strung, by, "straight to the machine");
    room.step(job, Stage::ready, "Desk");
    return job;
  };
  made(1, now + kHour, "Bo");
  made(2, now - kHour, "Bo");
  charge(room, made(3, std::nullopt, "Ines"), "labour", 2000);
  room.receive(player, day_wish(), 4);
  pay(room, player, 500);
  for (const char* size : {"a4", "80"}) {
    CAPTURE(size);
    const auto letters = lettersIn(room.pdf(room.made(room.request(PaperKind::wrapUp, size))));
    for (const char* said :
         {"Taken in4", "Strung3", "Ready3", "On time1 of 2", "Still in the room4", "25 to under 26 kg", "Stringing20.00 EUR", "Charged20.00 EUR", "Paid in cash5.00 EUR"}) {
      CAPTURE(said);
      CHECK(letters.contains(lettersOf(said)));
    }
  }
  const auto letters = lettersIn(room.pdf(room.made(room.request(PaperKind::wrapUp))));
  for (const char* said : {"Bo2221 of 2", "Ines111"}) CHECK(letters.contains(lettersOf(said)));
}
