// Player cards on paper, as pictures, and every code that we make at the sizes in which it is printed.
#include "app-qml/papers/card_paper.h"

#include <QImageReader>

#include "app-qml/papers/paper_words.h"
#include "app-qml/papers/qr_code.h"
#include "core/desk/tag_code.h"
#include "sync/carry/player_card.h"
#include "sync/trust/pairing.h"
#include "tests/app/paper_reading.h"
#include "tests/support/published.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct CardRoom : PaperRoom {
  BookId player(const std::string& family, const std::string& given, const std::string& country = {}, const std::string& language = {}) {
    Person person = named(family, given);
    person.country = country;
    person.language = language;
    return addPlayer(person);
  }
  EntityId setup(const BookId& book, const std::string& name = "usual") {
    Draft draft(book, kPlayerBook, kActEdit);
    Setup setup;
    static_cast<Agreed&>(setup) = day_wish();
    setup.name = name;
    const auto id = put_new(draft, setup, clock.now()).id;
    append(draft);
    return id;
  }
  void refuseOthers(const BookId& book) {
    const auto record = must(load_player(ledger(), book));
    Draft draft(book, kPlayerBook, kActEdit);
    Person person = record.person.now;
    person.consent = ConsentChoice::withdrawn;
    put_changes(draft, record.person.seen, person);
    append(draft);
  }
  [[nodiscard]] PaperRequest cards(PaperKind kind, std::vector<BookId> players, const char* size = "") const {
    PaperRequest out = request(kind, size);
    out.players = std::move(players);
    return out;
  }
  /// A card with as much on it as one can hold.
  MadeCard fullCard() {
    const BookId book = player("Wendelmoor", "Ilse", "NED", "fr");
    for (int i = 0; i < 30; ++i) setup(book, "setup number " + std::to_string(i));
    return must(make_card(ledger(), book));
  }
};

/// A code as a printer of so many dots to the inch puts it on paper, the symbol (without its quiet zone) so many mm wide: dots are black or white,
/// and a module is as many of them as its edges, rounded, lie apart.
QImage printed(const std::string& text, double mm, double dotsPerInch) {
  const auto rows = codeModules(text);
  const double side = mm / 25.4 * dotsPerInch;
  const double module = side / static_cast<double>(rows.size());
  const int edge = static_cast<int>(std::lround(module * codeQuietZone));
  const int whole = static_cast<int>(std::lround(side)) + 2 * edge;
  QImage out(whole, whole, QImage::Format_Grayscale8);
  out.fill(Qt::white);
  const auto at = [&](std::size_t n) { return edge + static_cast<int>(std::lround(static_cast<double>(n) * module)); };
  for (std::size_t y = 0; y < rows.size(); ++y)
    for (std::size_t x = 0; x < rows.size(); ++x)
      if (rows[y][x])
        for (int line = at(y); line < at(y + 1); ++line) std::fill(out.scanLine(line) + at(x), out.scanLine(line) + at(x + 1), uchar{0});
  return out;
}

bool reads(const std::string& text, double mm, double dotsPerInch) {
  return codesIn(printed(text, mm, dotsPerInch)).contains(QString::fromStdString(text));
}

}  // namespace

TEST_CASE("a card as large as a bank card says whose it is, what was agreed and who signed it, and a scanner reads it") {
  CardRoom room;
  const BookId ilse = room.player("Wendelmoor", "Ilse", "NED", "de");
  room.setup(ilse);
  const auto paper = room.made(room.cards(PaperKind::card, {ilse}));
  REQUIRE(paper.pages.size() == 1);
  CHECK(paper.leftOut.isEmpty());
  const QString pdf = room.pdf(paper);
  // ISO/IEC 7810, ID-1: 85.60 by 53.98 mm. PDF counts in points of 0.35 mm.
  CHECK(pageSizesIn(pdf).at(0).width() == Approx(85.6).margin(0.36));
  CHECK(pageSizesIn(pdf).at(0).height() == Approx(53.98).margin(0.36));
  const auto letters = lettersIn(pdf);
  // In the player's language, whatever the room speaks.
  for (const char* said : {"Wendelmoor", "Ilse", "NED", "Tarnbrook Silk", "Velmora Round", "25 kg", "24 kg", "1 Bespannungswunsch",
                           "Stand Mo., 26. Mai 2031", "Desk tablet", "Den Code dort scannen"}) {
    CAPTURE(said);
    CHECK(letters.contains(lettersOf(QString::fromUtf8(said))));
  }
  const QImage picture = paper.pages.front().picture(300 / 25.4);
  CHECK(edgesAreWhite(picture, {QPointF(), paper.pages.front().size()}, 2, 300 / 25.4));
  const auto codes = codesIn(picture);
  REQUIRE(codes.size() == 1);
  const PlayerCard card = must(read_card(codes[0].toStdString()));
  CHECK(card.book == ilse);
  CHECK(card.person().family_name == "Wendelmoor");
}

TEST_CASE("whatever the name and however full the card, nothing is cut off and the code is read at 203 dots to the inch") {
  CardRoom room;
  const BookId longest = room.player(std::string(60, 'W') + "-Montalbán de la Santísima", std::string(40, 'i') + " Ünal", "ESP", "es");
  const BookId arabic = room.player("محمد", "السعيدي");
  for (const auto& book : {longest, arabic})
    for (int i = 0; i < 20; ++i) room.setup(book, "setup " + std::to_string(i));
  for (const char* size : {"85x54", "62x100"}) {
    for (const auto& book : {longest, arabic}) {
      CAPTURE(size);
      const auto paper = room.made(room.cards(PaperKind::card, {book}, size));
      const auto& page = paper.pages.front();
      const QImage picture = page.picture(203 / 25.4);
      CHECK(edgesAreWhite(picture, {QPointF(), page.size()}, 1.8, 203 / 25.4));
      const auto codes = codesIn(picture);
      REQUIRE(codes.size() == 1);
      CHECK(must(read_card(codes[0].toStdString())).book == book);
    }
  }
}

TEST_CASE("cards of a team stand ten on a sheet, between marks where they are cut") {
  CardRoom room;
  std::vector<BookId> team;
  for (int i = 0; i < 12; ++i) team.push_back(room.player("Team" + std::to_string(i), "Ada", i % 2 == 0 ? "POR" : "NED"));
  for (const auto& book : team) room.setup(book);
  const auto paper = room.made(room.cards(PaperKind::cardSheet, team));
  REQUIRE(paper.pages.size() == 2);
  CHECK(pageSizesIn(room.pdf(paper)).at(0).width() == Approx(210).margin(0.36));
  const qreal dots = 300 / 25.4;
  const QImage picture = paper.pages.front().picture(dots);
  CHECK(codesIn(picture).size() == 10);
  CHECK(codesIn(paper.pages.back().picture(dots)).size() == 2);
  const QPointF corner((210 - 2 * 85.6) / 2, (297 - 5 * 54) / 2.0);
  for (int i = 0; i < 10; ++i) {
    CAPTURE(i);
    // No ink within 2 mm of where it is cut: neither of the card nor of a mark.
    CHECK(edgesAreWhite(picture, QRectF(corner.x() + i % 2 * 85.6, corner.y() + i / 2 * 54, 85.6, 54), 2, dots));
  }
  // Three marks above and below, six at either side, each 1.5 mm away from the cards.
  for (const qreal x : {0.0, 85.6, 171.2}) {
    CHECK_FALSE(isWhite(picture, {corner.x() + x - 0.3, corner.y() - 5, 0.6, 3}, dots));
    CHECK(isWhite(picture, {corner.x() + x - 0.3, corner.y() - 1, 0.6, 0.9}, dots));
    CHECK_FALSE(isWhite(picture, {corner.x() + x - 0.3, corner.y() + 270 + 2, 0.6, 3}, dots));
  }
  for (int row = 0; row <= 5; ++row) CHECK_FALSE(isWhite(picture, {corner.x() - 5, corner.y() + row * 54 - 0.3, 3, 0.6}, dots));
  CHECK(playersOfCountry(room.ledger(), "por").size() == 6);
  CHECK(playersOfCountry(room.ledger(), "SUI").empty());
}

TEST_CASE("who did not agree has no card, and is named beside the sheet") {
  CardRoom room;
  const BookId ilse = room.player("Wendelmoor", "Ilse"), ada = room.player("Okonjo", "Ada");
  room.refuseOthers(ada);
  const auto paper = room.made(room.cards(PaperKind::cardSheet, {ilse, ada}));
  CHECK(paper.cards == std::vector<BookId>{ilse});
  CHECK(codesIn(paper.pages.front().picture(8)).size() == 1);
  REQUIRE(paper.leftOut.size() == 1);
  CHECK(paper.leftOut[0] == "Okonjo Ada: no card, because the player did not agree that this goes to others");
  CHECK(makePaper(room.ledger(), room.cards(PaperKind::card, {ada})).error().code == FaultCode::refused);
  CHECK(makePaper(room.ledger(), room.cards(PaperKind::card, {})).error().code == FaultCode::not_found);
  CHECK(makePaper(room.ledger(), room.cards(PaperKind::cardSheet, std::vector<BookId>(501, ilse))).error().code == FaultCode::bad_input);
  // A card belongs to no event.
  auto travelling = room.cards(PaperKind::card, {ilse});
  travelling.event = {};
  CHECK(makePaper(room.ledger(), travelling));
}

TEST_CASE("a card's picture is 600 dots wide or more with its quiet zone, and says how large it is meant") {
  CardRoom room;
  const auto full = room.fullCard();
  const QString file = QString::fromStdString((room.folder / "card.png").string());
  REQUIRE(saveCardPicture(full.text, file));
  const QImage picture(file);
  CHECK(picture.width() >= 600);
  CHECK(picture.width() == picture.height());
  const auto modules = static_cast<int>(codeModules(full.text).size()) + 8;
  CHECK(picture.width() % modules == 0);  // whole dots a module: nothing is blurred
  const int quiet = picture.width() / modules * 4;
  CHECK(edgesAreWhite(picture, QRectF(0, 0, picture.width(), picture.height()), quiet - 2, 1));
  CHECK(qGray(picture.pixel(quiet, quiet)) == 0);  // and there it begins
  CHECK(picture.width() * 1000.0 / picture.dotsPerMeterX() == Approx(42).margin(0.1));
  CHECK(codesIn(picture) == QStringList(QString::fromStdString(full.text)));
  CHECK_FALSE(saveCardPicture(full.text, QString::fromStdString((room.folder / "none" / "card.png").string())));
  CHECK_FALSE(saveCardPicture(full.text, QStringLiteral("/dev/full")));
  CHECK(codeModules(std::string(8000, 'x')).empty());
  CHECK(codePicture(std::string(8000, 'x'), 600, 40).isNull());
}

TEST_CASE("a reader reads every code that we make at the sizes in which we print it") {
  CardRoom room;
  const std::string full = room.fullCard().text;
  const auto rows = test::published_rows("qr_capacity.csv");
  const auto of25 = std::find_if(rows.begin(), rows.end(), [](const auto& row) { return row.at("version") == "25" && row.at("ecc") == "M"; });
  REQUIRE(of25 != rows.end());
  REQUIRE(std::to_string(codeModules(full).size()) == of25->at("modules"));  // the largest that a card can be: ISO/IEC 18004, table 7
  const BookId small = room.player("Okonjo", "Ada");
  const std::string name = must(make_card(room.ledger(), small)).text;
  const std::string tag = tag_code(room.event, 137).value();
  PairingCode pairing;
  pairing.address = {"192.0.2.10", 47600};
  pairing.fingerprint.fill(0xa5);
  const std::string invite = pairing.text();
  for (const double mm : {20.0, 30.0, 40.0}) {
    for (const double inch : {203.0, 300.0}) {
      for (const std::string& text : {tag, invite, name, full}) {
        const double module = mm / 25.4 * inch / static_cast<double>(codeModules(text).size());
        CAPTURE(mm, inch, text.size(), module);
        // Where a module is at least two dots wide, it is read.
        if (module >= 2) CHECK(reads(text, mm, inch));
      }
    }
  }
  // What does not go: the fullest card at 20 mm on 203 dots has modules of one dot or two.
  CHECK_FALSE(reads(full, 20, 203));
}
