#include "app-qml/view/photo_image.h"

#include <QBuffer>
#include <QColorSpace>
#include <QCoreApplication>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

#include <algorithm>
#include <array>
#include <string_view>

#include "core/desk/photo.h"
#include "sync/exchange/content_files.h"

namespace {

using weavelog::FaultCode;

constexpr qint64 kMostPixels = 64'000'000;
constexpr int kMostMegabytes = 256;
constexpr int kPaperSide = 1000;
constexpr int kLongSide = 2048;
constexpr int kQuality = 85;

std::string say(const char* text) { return QCoreApplication::translate("Photos", text).toStdString(); }

// The decoders take a file that was cut short for a whole one with a grey rest. JPEG: the end's marker behind the first scan (ITU-T T.81, B.1.1, B.2.1:
// within a scan 0xff is never followed by it); PNG: the last chunk's name.
bool endsWhole(weavelog::ByteView bytes, bool png) {
  if (png) {
    constexpr std::string_view kEnd = "IEND";
    return std::search(bytes.begin(), bytes.end(), kEnd.begin(), kEnd.end()) != bytes.end();
  }
  std::size_t at = 2;
  while (at + 4 <= bytes.size() && bytes[at] == 0xff && bytes[at + 1] != 0xda)
    at += bytes[at + 1] == 0xff ? 1 : 2 + (std::size_t{bytes[at + 2]} << 8 | bytes[at + 3]);
  constexpr std::array<std::uint8_t, 2> kEnd{0xff, 0xd9};
  return at < bytes.size() && std::search(bytes.begin() + static_cast<std::ptrdiff_t>(at), bytes.end(), kEnd.begin(), kEnd.end()) != bytes.end();
}

tl::unexpected<weavelog::Fault> damaged() {
  return weavelog::fail(FaultCode::malformed, say(QT_TRANSLATE_NOOP("Photos", "The picture is damaged and can't be shown.")), {},
                        say(QT_TRANSLATE_NOOP("Photos", "Choose another file, or take the picture again.")));
}

}  // namespace

weavelog::Outcome<QImage> decodedPhoto(weavelog::ByteView bytes, QSize box) {
  const auto type = weavelog::picture_type(bytes);
  if (!type)
    return weavelog::fail(FaultCode::malformed, say(QT_TRANSLATE_NOOP("Photos", "This file is no picture.")), {},
                          say(QT_TRANSLATE_NOOP("Photos", "Choose a JPEG or PNG file.")));
  if (!endsWhole(bytes, *type == "image/png")) return damaged();
  QByteArray raw = QByteArray::fromRawData(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
  QBuffer buffer(&raw);
  if (!buffer.open(QIODevice::ReadOnly)) return damaged();
  QImageReader::setAllocationLimit(kMostMegabytes);
  QImageReader reader(&buffer, *type == "image/png" ? "png" : "jpeg");
  reader.setAutoDetectImageFormat(false);
  reader.setAutoTransform(true);
  QSize size = reader.size();
  if (!size.isValid() || size.isEmpty()) return damaged();
  if (qint64{size.width()} * size.height() > kMostPixels)
    return weavelog::fail(FaultCode::bad_input, say(QT_TRANSLATE_NOOP("Photos", "The picture has too many pixels.")), {},
                          say(QT_TRANSLATE_NOOP("Photos", "Make it smaller first: 64 megapixels at most.")));
  // Scaled before it is turned.
  if (reader.transformation() & QImageIOHandler::TransformationRotate90) box.transpose();
  if (size.width() > box.width() || size.height() > box.height())
    reader.setScaledSize(size.scaled(box, Qt::KeepAspectRatio).expandedTo({1, 1}));
  QImage image = reader.read();
  if (image.isNull()) return damaged();
  return image;
}

weavelog::Outcome<weavelog::Bytes> cleanPhoto(weavelog::ByteView bytes) {
  auto image = decodedPhoto(bytes, {kLongSide, kLongSide});
  if (!image) return weavelog::fail(image.error());
  return keptPhoto(std::move(*image));
}

weavelog::Outcome<weavelog::Bytes> keptPhoto(QImage image) {
  if (image.isNull()) return damaged();
  if (image.width() > kLongSide || image.height() > kLongSide)
    image = image.scaled(kLongSide, kLongSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  if (image.colorSpace().isValid()) image.convertToColorSpace(QColorSpace::SRgb);
  // Painted onto a new one: texts and profiles of the old one stay behind, and what was transparent is white.
  QImage clean(image.size(), QImage::Format_RGB32);
  clean.fill(Qt::white);
  QPainter painter(&clean);
  painter.drawImage(0, 0, image);
  painter.end();
  QByteArray out;
  QBuffer buffer(&out);
  QImageWriter writer(&buffer, "jpeg");
  writer.setQuality(kQuality);
  if (!writer.write(clean)) return damaged();
  return weavelog::Bytes(out.begin(), out.end());
}

std::function<QImage(const weavelog::BookId&, const weavelog::Bytes&)> heldPhotos(weavelog::ContentFiles& files) {
  return [&files](const weavelog::BookId& book, const weavelog::Bytes& hash) {
    weavelog::Digest digest{};
    if (hash.size() != digest.size()) return QImage();
    std::copy(hash.begin(), hash.end(), digest.begin());
    const auto bytes = files.read(book, digest);
    const auto image = bytes ? decodedPhoto(*bytes, {kPaperSide, kPaperSide}) : weavelog::Outcome<QImage>(QImage());
    return image ? *image : QImage();
  };
}
