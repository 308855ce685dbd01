#include "app-qml/view/photos_model.h"

#include <QBuffer>
#include <QFile>
#include <QImageWriter>
#include <QSignalSpy>
#include <boost/crc.hpp>

#include "app-qml/view/photo_image.h"
#include "core/desk/photo.h"
#include "sync/net/exchange_guest.h"
#include "sync/net/exchange_host.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

Bytes encoded(const QImage& image, const char* format) {
  QByteArray out;
  QBuffer buffer(&out);
  REQUIRE(QImageWriter(&buffer, format).write(image));
  return {out.begin(), out.end()};
}

/// Left half red, right half blue.
QImage twoHalves(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::red);
  for (int y = 0; y < height; ++y)
    for (int x = width / 2; x < width; ++x) image.setPixelColor(x, y, Qt::blue);
  return image;
}

/// An Exif block (CIPA DC-008, 4.5) with an orientation (tag 0x0112) and a GPS directory (0x8825) that holds a latitude reference, put behind SOI.
Bytes withExif(const Bytes& jpeg, std::uint8_t orientation) {
  Bytes exif{'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8,
             0, 2,
             0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0,
             0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 38,
             0, 0, 0, 0,
             0, 1,
             0, 1, 0, 2, 0, 0, 0, 2, 'N', 0, 0, 0,
             0, 0, 0, 0};
  Bytes out{0xff, 0xd8, 0xff, 0xe1, 0, static_cast<std::uint8_t>(exif.size() + 2)};
  out.insert(out.end(), exif.begin(), exif.end());
  out.insert(out.end(), jpeg.begin() + 2, jpeg.end());
  return out;
}

bool contains(const Bytes& bytes, std::string_view words) {
  return std::search(bytes.begin(), bytes.end(), words.begin(), words.end()) != bytes.end();
}

/// A PNG that claims so many pixels and has none: its chunks are as they should be (PNG, third edition, 5.3, 11.2.1).
Bytes claimed(std::uint32_t width, std::uint32_t height) {
  Bytes out{0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  const auto number = [](Bytes& to, std::uint32_t value) {
    for (int shift = 24; shift >= 0; shift -= 8) to.push_back(static_cast<std::uint8_t>(value >> shift));
  };
  const auto chunk = [&](std::string_view name, const Bytes& data) {
    Bytes body(name.begin(), name.end());
    body.insert(body.end(), data.begin(), data.end());
    boost::crc_32_type sum;
    sum.process_bytes(body.data(), body.size());
    number(out, static_cast<std::uint32_t>(data.size()));
    out.insert(out.end(), body.begin(), body.end());
    number(out, sum.checksum());
  };
  Bytes head;
  number(head, width);
  number(head, height);
  head.insert(head.end(), {8, 2, 0, 0, 0});
  chunk("IHDR", head);
  chunk("IDAT", {});
  chunk("IEND", {});
  return out;
}

struct PhotoRoom : RoomOfJobs {
  MadeJob made = receive(addPlayer(named("Okafor", "Sade")), day_wish(), 41);
  std::unique_ptr<PhotosModel> model = std::make_unique<PhotosModel>(*device);
  PhotoRoom() {
    model->setBook(hex(made.book));
    model->setJob(hex(made.job));
  }
  [[nodiscard]] QVariantMap row(int n = 0) const { return model->photos().at(n).toMap(); }
};

}  // namespace

TEST_CASE("a photo is turned as the camera was held, made smaller, and keeps nothing of where it was taken") {
  needApplication();
  // Orientation 6: the camera was turned, row 0 is the right side of what was seen (CIPA DC-008, tag 274).
  const Bytes raw = withExif(encoded(twoHalves(3000, 1000), "jpeg"), 6);
  REQUIRE(contains(raw, "Exif"));
  const auto clean = cleanPhoto(raw);
  REQUIRE(clean);
  CHECK_FALSE(contains(*clean, "Exif"));
  CHECK(picture_type(*clean) == "image/jpeg");
  const QImage image = QImage::fromData(clean->data(), static_cast<int>(clean->size()));
  CHECK(image.height() == 2048);
  CHECK(std::abs(image.width() - 683) <= 1);
  CHECK(image.pixelColor(image.width() / 2, 100).red() > 200);  // what was left is above
  CHECK(image.pixelColor(image.width() / 2, 1900).blue() > 200);
  // Words in a PNG stay behind too, and a small one is not made larger.
  QImage small = twoHalves(40, 30);
  small.setText("Comment", "court seven");
  const Bytes png = encoded(small, "png");
  const auto smaller = cleanPhoto(png);
  REQUIRE(smaller);
  CHECK(decodedPhoto(*smaller, {500, 500})->size() == QSize(40, 30));
  CHECK_FALSE(contains(*smaller, "court"));
}

TEST_CASE("what is no picture, damaged, or claims more pixels than are decoded is one clear fault") {
  needApplication();
  CHECK(cleanPhoto({}).error().code == FaultCode::malformed);
  CHECK(cleanPhoto(as_bytes("GIF89a and more")).error().code == FaultCode::malformed);
  CHECK(cleanPhoto(claimed(20'000, 20'000)).error().code == FaultCode::bad_input);
  CHECK_FALSE(cleanPhoto(claimed(60'000, 60'000)));
  CHECK_FALSE(cleanPhoto(claimed(0x7fffffff, 0x7fffffff)));
  CHECK(cleanPhoto(claimed(100, 100)).error().code == FaultCode::malformed);
  const Bytes png = encoded(twoHalves(300, 200), "png"), jpeg = encoded(twoHalves(300, 200), "jpeg");
  for (std::size_t cut = 0; cut + 12 <= png.size(); cut += 7) CHECK_FALSE(cleanPhoto(ByteView(png).first(cut)));
  for (std::size_t cut = 0; cut < jpeg.size(); ++cut) CHECK_FALSE(cleanPhoto(ByteView(jpeg).first(cut)));
  CHECK(cleanPhoto(png));
  CHECK(cleanPhoto(jpeg));
}

TEST_CASE("photos of a racket are shown newest first, and one that can't be kept says why") {
  PhotoRoom room;
  QSignalSpy failed(&room.device->work(), &Work::failed);
  CHECK(room.model->photos().isEmpty());
  REQUIRE(room.model->add(room.file("grip.png", encoded(twoHalves(400, 300), "png")), "kept"));
  room.clock.advance(60'000);
  REQUIRE(room.model->add(room.file("head.png", encoded(twoHalves(300, 300), "png")), "kept"));
  CHECK(failed.isEmpty());
  REQUIRE(room.model->photos().size() == 2);
  CHECK(room.row(0)["state"].toInt() == PhotosModel::Here);
  CHECK(room.row(0)["detail"].toString().startsWith("Ines"));
  CHECK(room.model->image(room.row(0)["content"].toString(), {1000, 1000})->size() == QSize(300, 300));
  CHECK(room.model->image(room.row(1)["content"].toString(), {200, 200})->size() == QSize(200, 150));
  CHECK_FALSE(room.model->add(room.file("note.txt", Bytes{'h', 'i'}), "kept"));
  CHECK_FALSE(room.model->add(QUrl::fromLocalFile("/nowhere/x.png"), "kept"));
  CHECK_FALSE(room.model->add(QUrl::fromLocalFile("/dev/zero"), "kept"));
  CHECK_FALSE(room.model->add(room.file("again.png", encoded(twoHalves(300, 300), "png")), "kept"));
  CHECK(failed.size() == 4);
  CHECK(room.model->photos().size() == 2);
  // Damaged on the disk: no picture, no crash.
  for (const auto& one : std::filesystem::recursive_directory_iterator(room.folder / "device" / "photos"))
    if (one.is_regular_file()) std::filesystem::resize_file(one.path(), 10);
  CHECK(room.model->image(room.row(0)["content"].toString(), {100, 100}).error().code == FaultCode::damaged);
}

TEST_CASE("a photo from the camera is kept like one from a file") {
  PhotoRoom room;
  QSignalSpy failed(&room.device->work(), &Work::failed);
  REQUIRE(room.model->addPicture(twoHalves(2560, 1440), "kept"));
  REQUIRE(room.model->photos().size() == 1);
  CHECK(room.model->image(room.row()["content"].toString(), {4000, 4000})->size() == QSize(2048, 1152));
  CHECK(failed.isEmpty());
  CHECK_FALSE(room.model->addPicture(QImage(), "kept"));
  CHECK(failed.size() == 1);
  CHECK(room.model->photos().size() == 1);
}

TEST_CASE("a photo that lies at the server only is fetched when somebody asks, and says how far it is") {
  PhotoRoom room;
  TemporaryFolder folder;
  StationOptions options;
  options.folder = folder / "server";
  options.device_name = "Event server";
  options.registry = &model_registry();
  auto server = must(Station::open(std::move(options)));
  ExchangeHostOptions host_options;
  host_options.address = "127.0.0.1";
  host_options.port = 0;
  host_options.certificate = must(load_or_create_certificate(folder / "server.pem"));
  host_options.names_content = [&](const BookId& book, const Digest& content) { return names_photo(server->ledger(), book, content); };
  auto host = must(ExchangeHost::start(*server, std::move(host_options)));

  const Bytes bytes = encoded(twoHalves(500, 400), "jpeg");
  PhotoTaken taken;
  taken.content = digest_of(bytes);
  taken.media_type = "image/jpeg";
  taken.size = bytes.size();
  taken.at = room.clock.now();
  room.append(must(put_photo(must(load_player(room.ledger(), room.made.book)), room.made.job, taken)));
  room.device->work().refresh();
  REQUIRE(room.model->photos().size() == 1);
  CHECK(room.row()["state"].toInt() == PhotosModel::Elsewhere);
  const QString content = room.row()["content"].toString();
  QSignalSpy failed(&room.device->work(), &Work::failed);
  room.model->fetch(content);  // not connected
  CHECK(failed.size() == 1);

  room.device->connectWith(ExchangeGuest::to_pair({{"127.0.0.1", host->port()}, host->fingerprint(), server->devices().invite(Role::desk)->secret}));
  const auto peer = must(room.device->station().peers().number_of(server->ledger().self().key));
  REQUIRE(room.device->station().peers().widen(peer, {room.made.book}));
  room.device->guest()->scope_changed();
  REQUIRE(waitUntil([&] { return server->ledger().book(room.made.book).has_value(); }));
  // Nobody has it yet.
  room.model->fetch(content);
  REQUIRE(waitUntil([&] { return !room.row()["fault"].toString().isEmpty(); }));
  CHECK(room.row()["state"].toInt() == PhotosModel::Elsewhere);
  REQUIRE(server->contents().add(room.made.book, bytes));
  room.model->fetch(content);
  CHECK(room.row()["state"].toInt() != PhotosModel::Elsewhere);
  REQUIRE(waitUntil([&] { return room.row()["state"].toInt() == PhotosModel::Here; }));
  CHECK(room.row()["fault"].toString().isEmpty());
  CHECK(room.model->image(content, {1000, 1000})->size() == QSize(500, 400));
  room.device->hangUp();
}
