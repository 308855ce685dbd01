// Player cards on the screens: given away, taken in, and chosen for sheets.
#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QPainter>
#include <QSignalSpy>

#include "app-qml/papers/card_paper.h"
#include "app-qml/papers/qr_code.h"
#include "app-qml/view/card_picks_model.h"
#include "app-qml/view/code_reader.h"
#include "app-qml/view/give_card_model.h"
#include "app-qml/view/print_model.h"
#include "app-qml/view/scan_model.h"
#include "app-qml/view/take_card_model.h"
#include "sync/trust/pairing.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct CardsRoom : RoomOfJobs {
  BookId ilse = addIlse();
  GiveCardModel give{device->work()};
  TakeCardModel take{device->work()};
  QSignalSpy asked{&take, &TakeCardModel::asked};

  CardsRoom() { give.setFolder(QString::fromStdString((folder / "papers").string())); }
  BookId addIlse() {
    Person person = named("Wendelmoor", "Ilse");
    person.country = "NED";
    person.language = "fr";
    const BookId book = addPlayer(person);
    Draft draft(book, kPlayerBook, kActEdit);
    Setup setup;
    static_cast<Agreed&>(setup) = day_wish();
    setup.name = "day";
    (void)put_new(draft, setup, clock.now());
    Racket racket;
    racket.label = "2";
    racket.maker = "Orrin";
    (void)put_new(draft, racket, clock.now());
    append(draft);
    return book;
  }
  template <class S, class Change>
  void change(Ledger& ledger, const BookId& book, EntityKind kind, Change how) {
    for (const auto& state : ledger.entities(book, kind)) {
      S now = from_state<S>(state);
      how(now);
      Draft draft(book, kPlayerBook, kActEdit);
      put_changes(draft, state, now);
      REQUIRE(ledger.append(draft));
      return;
    }
    FAIL("there is none to change");
  }
  [[nodiscard]] QString saved(const char* suffix) const { return give.told().endsWith(QLatin1String(suffix)) ? give.told() : QString(); }
};

/// A card that another tablet made, of a player of its own.
struct Elsewhere : Tablet {
  Elsewhere() : Tablet("Away tablet") {}
  std::string card(const std::string& family) {
    const BookId book = add_player(family, "Mira");
    Setup setup;
    static_cast<Agreed&>(setup) = day_wish();
    setup.name = "day";
    add(book, setup);
    return must(make_card(*ledger, book)).text;
  }
};

}  // namespace

TEST_CASE("a player's card is shown with what is on it, and saved as picture and text") {
  CardsRoom room;
  room.give.show(hex(room.ilse));
  CHECK(room.give.trouble() == GiveCardModel::None);
  CHECK(room.give.name() == "Wendelmoor Ilse");
  CHECK(room.give.device() == "Desk tablet");
  CHECK(room.give.leftOut() == 0);
  REQUIRE(room.give.lines().size() == 2);
  CHECK(room.give.lines()[0].toMap()["text"] == QString::fromUtf8("Tarnbrook Silk / Velmora Round, 25\u00a0kg / 24\u00a0kg"));
  CHECK(room.give.lines()[0].toMap()["detail"] == "day");
  CHECK(room.give.lines()[1].toMap()["text"] == "2 Orrin");
  CHECK(room.give.rows().size() == static_cast<qsizetype>(codeModules(room.give.text().toStdString()).size()));
  room.give.savePicture();
  REQUIRE(room.give.result() == GiveCardModel::PictureSaved);
  CHECK(must(codesOnFile(room.saved(".png"))) == QStringList(room.give.text()));
  room.give.savePicture();
  CHECK(room.saved(" (2).png").size() > 0);  // the one before stays
  room.give.saveText();
  REQUIRE(room.give.result() == GiveCardModel::TextSaved);
  QFile file(room.saved(".txt"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(must(read_card(file.readAll().toStdString())).book == room.ilse);
  room.give.copyText();
  CHECK(QGuiApplication::clipboard()->text() == room.give.text());
  room.give.setFolder(QStringLiteral("/dev/null/none"));
  room.give.savePicture();
  CHECK(room.give.result() == GiveCardModel::NotSaved);
  room.give.leave();
  CHECK(room.give.text().isEmpty());
  CHECK(room.give.result() == GiveCardModel::Nothing);
}

TEST_CASE("who did not agree has no card, and the screen says what to do") {
  CardsRoom room;
  room.change<Person>(room.ledger(), room.ilse, kPerson, [](Person& now) { now.consent = ConsentChoice::withdrawn; });
  room.give.show(hex(room.ilse));
  CHECK(room.give.trouble() == GiveCardModel::NoConsent);
  CHECK(room.give.rows().isEmpty());
  CHECK(room.give.name() == "Wendelmoor Ilse");
  room.give.savePicture();
  CHECK(room.give.result() == GiveCardModel::Nothing);
  room.give.show("00");
  CHECK(room.give.trouble() == GiveCardModel::Other);
  CHECK_FALSE(room.give.troubleText().isEmpty());
}

TEST_CASE("a stranger's card becomes a book, with who signed it and when, and can be taken back") {
  CardsRoom room;
  Elsewhere away;
  room.take.take(QString::fromStdString(away.card("Kova")));
  CHECK(room.asked.count() == 1);
  REQUIRE(room.take.state() == TakeCardModel::Read);
  CHECK(room.take.name() == "Kova Mira");
  CHECK(room.take.device() == "Away tablet");
  CHECK_FALSE(room.take.words().isEmpty());
  CHECK(room.take.signer() == TakeCardModel::Stranger);
  CHECK_FALSE(room.take.held());
  CHECK(room.take.fresh() > 5);
  CHECK(room.take.newer().isEmpty());
  CHECK(room.take.consent() == 0);
  CHECK(room.take.store(false));
  CHECK(room.take.state() == TakeCardModel::Stored);
  const BookId book = *BookId::from_hex(room.take.book().toStdString());
  CHECK(must(load_player(room.ledger(), book)).setups.size() == 1);
  REQUIRE(room.ledger().entities(book, kCardTaken).size() == 1);
  CHECK(from_state<CardTaken>(room.ledger().entities(book, kCardTaken).front()).device == "Away tablet");
  CHECK_FALSE(room.take.store(false));  // once
  CHECK(room.device->work().undo());
  CHECK(find_players(room.ledger(), "kova").empty());
}

TEST_CASE("what is newer on a card waits for the player's word, what is older stays") {
  CardsRoom room;
  Tablet away("Away tablet");
  away.clock.set(room.clock.now());
  bringTo(away, room, room.ilse);
  away.clock.advance(kDay);
  room.change<Setup>(*away.ledger, room.ilse, kSetup, [](Setup& now) { now.mains_tension = kg("26"); });
  const auto newer = must(make_card(*away.ledger, room.ilse));
  room.clock.advance(2 * kDay);
  room.take.take(QString::fromStdString(newer.text));
  REQUIRE(room.take.state() == TakeCardModel::Read);
  CHECK(room.take.held());
  REQUIRE(room.take.newer().size() == 1);
  const auto line = room.take.newer()[0].toMap();
  CHECK(line["ours"] == QString::fromUtf8("25\u00a0kg"));
  CHECK(line["card"] == QString::fromUtf8("26\u00a0kg"));
  CHECK(line["of"] == "day");
  CHECK_FALSE(line["oursAt"].toString().isEmpty());
  CHECK(room.take.store(false));
  CHECK(must(load_player(room.ledger(), room.ilse)).setups[0].now.mains_tension == kg("25"));
  // The same card again, now with the player's word.
  room.take.take(QString::fromStdString(newer.text));
  CHECK(room.take.takenBefore());
  CHECK(room.take.store(true));
  CHECK(must(load_player(room.ledger(), room.ilse)).setups[0].now.mains_tension == kg("26"));
  // Changed here since: the card is the older one.
  room.clock.advance(kDay);
  room.change<Setup>(room.ledger(), room.ilse, kSetup, [](Setup& now) { now.mains_tension = kg("27"); });
  room.take.take(QString::fromStdString(newer.text));
  REQUIRE(room.take.older().size() == 1);
  CHECK(room.take.older()[0].toMap()["ours"] == QString::fromUtf8("27\u00a0kg"));
  CHECK(room.take.store(true));
  CHECK(room.take.state() == TakeCardModel::NothingNew);
}

TEST_CASE("each kind of card that can't be taken is told apart") {
  CardsRoom room;
  Elsewhere away;
  const std::string good = away.card("Kova");
  const auto stateOf = [&](const std::string& text) {
    room.take.take(QString::fromStdString(text));
    CHECK_FALSE(room.take.store(true));
    return room.take.state();
  };
  CHECK(stateOf("WL:AS59RB:137:9") == TakeCardModel::NoCard);
  CHECK(stateOf("") == TakeCardModel::NoCard);
  std::string damaged = good;
  damaged[60] = damaged[60] == 'A' ? 'B' : 'A';
  CHECK(stateOf(damaged) == TakeCardModel::Damaged);
  CHECK(stateOf(good.substr(0, good.size() / 2)) == TakeCardModel::Damaged);
  // Signed by one device in the name of another: whole, and a lie.
  PlayerCard lie = must(read_card(good));
  const auto body = card_body(lie);
  CHECK(stateOf(sign_card(body, room.ledger().key())) == TakeCardModel::Forged);
  // What a mail made of it.
  CHECK([&] {
    room.take.take(QString::fromStdString("  " + good.substr(0, 70) + "\r\n" + good.substr(70) + "\n"));
    return room.take.state();
  }() == TakeCardModel::Read);
  // A device that was shut out.
  auto& devices = room.device->station().devices();
  const auto invitation = must(devices.invite(Role::stringer));
  REQUIRE(devices.admit(number_of(invitation.secret), {}, pairing_proof(pairing_key(invitation.secret), PairingSide::guest, {}),
                        away.ledger->self().key, "Away tablet"));
  room.take.take(QString::fromStdString(good));
  CHECK(room.take.signer() == TakeCardModel::Member);
  REQUIRE(devices.revoke(away.ledger->self().key));
  CHECK(stateOf(good) == TakeCardModel::Revoked);
  CHECK(room.take.device() == "Away tablet");  // who and when is told all the same
  CHECK_FALSE(room.take.made().isEmpty());
  // The player's word counts for more than a card.
  const std::string own = must(make_card(room.ledger(), room.ilse)).text;
  room.take.take(QString::fromStdString(own));
  CHECK(room.take.signer() == TakeCardModel::Self);
  room.change<Person>(room.ledger(), room.ilse, kPerson, [](Person& now) { now.consent = ConsentChoice::withdrawn; });
  CHECK(stateOf(own) == TakeCardModel::NoConsent);
  REQUIRE(room.ledger().forget(room.ilse));
  CHECK(stateOf(own) == TakeCardModel::Forgotten);
}

TEST_CASE("a card is found on a picture, large or small, and what is none says so") {
  CardsRoom room;
  Elsewhere away;
  const std::string text = away.card("Kova");
  const auto look = [&](const QImage& picture, const char* name) {
    const QString file = QString::fromStdString((room.folder / name).string());
    REQUIRE(picture.save(file));
    room.take.takePicture(QUrl::fromLocalFile(file));
    REQUIRE(waitUntil([&] { return !room.take.looking(); }));
    return room.take.state();
  };
  REQUIRE(saveCardPicture(text, QString::fromStdString((room.folder / "card.png").string())));
  const QImage card(QString::fromStdString((room.folder / "card.png").string()));
  CHECK(look(card, "same.png") == TakeCardModel::Read);
  CHECK(room.take.name() == "Kova Mira");
  // One dot a module, as a program that strips everything saves it.
  const auto modules = static_cast<int>(codeModules(text).size()) + 8;
  CHECK(look(card.scaled(modules, modules), "tiny.png") == TakeCardModel::Read);
  // On a large photo of a table, turned by a few degrees, in grey light.
  QImage photo(4000, 3000, QImage::Format_RGB32);
  photo.fill(QColor(180, 175, 170));
  {
    QPainter painter(&photo);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(2600, 900);
    painter.rotate(7);
    painter.drawImage(QRect(0, 0, 900, 900), card);
  }
  CHECK(look(photo, "photo.jpg") == TakeCardModel::Read);
  QImage clear(card.size(), QImage::Format_ARGB32);
  clear.fill(Qt::transparent);
  for (int y = 0; y < card.height(); ++y)
    for (int x = 0; x < card.width(); ++x)
      if (qGray(card.pixel(x, y)) == 0) clear.setPixelColor(x, y, Qt::black);
  CHECK(look(clear, "clear.png") == TakeCardModel::Read);
  QImage blank(300, 300, QImage::Format_RGB32);
  blank.fill(Qt::white);
  CHECK(look(blank, "blank.png") == TakeCardModel::NoCode);
  CHECK(look(codePicture("WL:AS59RB:137:9", 300, 20), "tag.png") == TakeCardModel::NoCard);
  QFile none(QString::fromStdString((room.folder / "none.png").string()));
  REQUIRE(none.open(QIODevice::WriteOnly));
  none.write("no picture at all");
  none.close();
  for (const QString& file :
       {none.fileName(), QString::fromStdString((room.folder / "missing.png").string()), QString::fromStdString(room.folder.path().string())}) {
    room.take.takePicture(QUrl::fromLocalFile(file));
    REQUIRE(waitUntil([&] { return !room.take.looking(); }));
    CHECK(room.take.state() == TakeCardModel::NoFile);
    CHECK_FALSE(room.take.fault().isEmpty());
  }
}

TEST_CASE("a scanner's card goes to the cards, whatever has the keyboard") {
  CardsRoom room;
  ScanModel scan(room.device->work());
  QSignalSpy cards(&scan, &ScanModel::cardScanned);
  const std::string text = must(make_card(room.ledger(), room.ilse)).text;
  scan.take(QString::fromStdString(text));
  REQUIRE(cards.count() == 1);
  CHECK(cards[0][0].toString().toStdString() == text);
  ScanEar ear;
  qint64 at = 5000;
  int swallowed = 0;
  for (const char c : text) swallowed += ear.typed(QString(QLatin1Char(c)), at += 4) ? 1 : 0;
  CHECK(swallowed == static_cast<int>(text.size() - kCardPrefix.size()) + 1);  // from its last letter on
  CHECK(ear.inCard());
  CHECK(ear.entered(at + 4) == QString::fromStdString(text));
  CHECK_FALSE(ear.inCard());
  // A person who types those letters by hand goes on typing.
  for (const char c : text.substr(0, 40)) CHECK_FALSE(ear.typed(QString(QLatin1Char(c)), at += 200));
  CHECK_FALSE(ear.entered(at + 200));
  // A scanner that stops in the middle holds the keyboard for a second, no longer.
  for (const char c : text.substr(0, 40)) (void)ear.typed(QString(QLatin1Char(c)), at += 4);
  CHECK(ear.inCard());
  CHECK_FALSE(ear.typed("K", at += 1500));
  // A key that is stuck is no card.
  for (const char c : text.substr(0, 40)) (void)ear.typed(QString(QLatin1Char(c)), at += 4);
  for (int i = 0; i < 5000; ++i) (void)ear.typed("x", at += 1);
  CHECK_FALSE(ear.inCard());
}

TEST_CASE("cards for sheets are chosen one by one, by country or by room, and stay chosen while one looks for others") {
  CardsRoom room;
  Person ned = named("Okonjo", "Ada");
  ned.country = "NED";
  const BookId ada = room.addPlayer(ned);
  const BookId kova = room.addPlayer(named("Kova", "Mira"));
  (void)room.receive(kova, day_wish(), 7);
  CardPicksModel picks(room.device->work());
  picks.begin();
  CHECK(picks.count() == 3);
  REQUIRE(picks.countries().size() == 1);
  CHECK(picks.countries()[0].toMap()["text"] == "NED (2)");
  picks.tickCountry("NED");
  CHECK(picks.books() == QStringList({hex(ada), hex(room.ilse)}));  // by family name
  picks.setTyped("kov");
  REQUIRE(picks.count() == 1);
  CHECK(role(picks, 0, "name") == "Kova Mira");
  CHECK(role(picks, 0, "ticked") == false);
  picks.tickRoom();
  CHECK(role(picks, 0, "ticked") == true);
  CHECK(picks.ticked() == 3);
  picks.tick(hex(kova), false);
  CHECK(picks.ticked() == 2);
  picks.tickNobody();
  CHECK(picks.books().isEmpty());
  picks.tick(hex(kova), true);
  picks.tick("nonsense", true);
  CHECK(picks.ticked() == 1);
  PrintModel print(room.device->work(), *room.settings);
  print.showCards(picks.books());
  CHECK(print.paper() == "card");
  CHECK(print.pages() == 1);
  print.showCards({hex(kova), hex(ada)});
  CHECK(print.paper() == "card-sheet");
  CHECK(print.pages() == 1);
  CHECK(print.labels() == 0);
  CHECK(print.leftOut().isEmpty());
  print.setPaper("card");
  CHECK(print.pages() == 2);
  CHECK(print.sizes().size() == 2);
  CHECK(waitUntil([&] { return !print.looking(); }));
}
