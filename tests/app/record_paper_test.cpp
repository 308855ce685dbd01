// What a player is given who asks what is held on them.
#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>

#include "app-qml/view/print_model.h"
#include "core/desk/person_books.h"
#include "core/model/photo.h"
#include "tests/app/paper_reading.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct RecordRoom : PaperRoom {
  MadeJob ilse() {
    Person person = named("Wendelmoor", "Ilse");
    person.language = "de";
    return receive(addPlayer(person), day_wish(), 7, clock.now() + kHour);
  }
  void photograph(const MadeJob& of) {
    Draft draft(of.book, kPlayerBook, kActPhoto);
    Photo photo;
    photo.job = of.job;
    photo.content = Bytes(32, 0x5a);
    photo.media_type = "image/jpeg";
    photo.size = 4711;
    put_new(draft, photo, clock.now());
    append(draft);
  }
  [[nodiscard]] PaperRequest record(const BookId& player) const {
    PaperRequest out = request(PaperKind::record);
    out.player = player;
    return out;
  }
};

bool has(const QString& letters, const char* text) { return letters.contains(lettersOf(QString::fromUtf8(text))); }

}  // namespace

TEST_CASE("a record says everything that is held on a player, in the player's language, and nothing of others") {
  RecordRoom room;
  const MadeJob made = room.ilse();
  room.receive(room.addPlayer(named("Quillon", "Bram")), day_wish(), 8);
  room.photograph(made);
  auto request = room.record(made.book);
  const QString without = lettersIn(room.pdf(room.made(request)));
  for (const char* said : {"Alles, was über Wendelmoor Ilse gespeichert ist", "Anhänger 7", "Spannung längs", "25 kg", "4.711 Byte", "Das Bild selbst ist nicht auf diesem Gerät"}) {
    CAPTURE(said);
    CHECK(has(without, said));
  }
  CHECK_FALSE(has(without, "Quillon"));
  // The picture is in it where it is held: of the colour that it has.
  request.picture = [](const BookId&, const Bytes& hash) {
    if (hash != Bytes(32, 0x5a)) return QImage();
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::red);
    return image;
  };
  const Paper with = room.made(request);
  CHECK_FALSE(has(lettersIn(room.pdf(with)), "Das Bild selbst ist nicht auf diesem Gerät"));
  qint64 red = 0;
  for (const auto& page : with.pages) {
    const QImage picture = page.picture(2);
    for (int y = 0; y < picture.height(); ++y)
      for (int x = 0; x < picture.width(); ++x) red += picture.pixelColor(x, y) == QColor(Qt::red);
  }
  // 70 mm high, 4 to 3, at two dots a millimetre.
  CHECK(red == Approx(140.0 * 140.0 * 4 / 3).epsilon(0.03));
}

TEST_CASE("a record holds every book that is linked to be the player's, and says which is not here") {
  RecordRoom room;
  const MadeJob one = room.ilse();
  const MadeJob other = room.receive(room.addPlayer(named("Wendelmoor", "I.")), day_wish(), 9);
  const BookId elsewhere = room.ledger().create_book_id();
  for (const BookId& book : {other.book, elsewhere})
    for (const Draft& draft : must(say_of_books(room.ledger(), one.book, book, LinkSaid::same_person, "Mara", room.clock.now()))) room.append(draft);
  const QString letters = lettersIn(room.pdf(room.made(room.record(one.book))));
  CHECK(has(letters, "Anhänger 7"));
  CHECK(has(letters, "Anhänger 9"));
  CHECK(has(letters, elsewhere.hex().c_str()));
}

TEST_CASE("a record is saved as PDF and for programs, and is refused for somebody who is not there") {
  RecordRoom room;
  const MadeJob made = room.ilse();
  PrintModel print(room.device->work(), *room.settings);
  const QString folder = QString::fromStdString((room.folder / "papers").string());
  print.setFolder(folder);
  print.showRecord(QString::fromStdString(made.book.hex()));
  CHECK(print.paper() == "record");
  CHECK(print.pages() >= 1);
  print.saveData();
  REQUIRE(print.result() == PrintModel::Saved);
  QFile file(print.told());
  REQUIRE(file.open(QIODevice::ReadOnly));
  const auto json = QJsonDocument::fromJson(file.readAll()).object();
  CHECK(json["format"] == "weavelog-player");
  CHECK(json["person"].toObject()["family_name"] == "Wendelmoor");
  print.savePdf();
  CHECK(print.result() == PrintModel::Saved);
  CHECK(QDir(folder).entryList({"*.pdf"}).size() == 1);
  CHECK(makePaper(room.ledger(), room.record(room.ledger().create_book_id())).error().code == FaultCode::not_found);
}
