#include "app-qml/view/code_reader.h"

#include <zbar.h>

#include <QFileInfo>
#include <QImageReader>
#include <QPainter>
#include <algorithm>

namespace {

// Our tags' barcodes have 13 characters or more. In the modules of a QR code zbar now and then sees a Code 128 of no characters at all: whoever holds one card
// before the camera would be told that there are several.
constexpr int kShortestBarcode = 8;

}  // namespace

// A code that is held before a camera fills much of the picture; more dots than usualLook only take time.
QStringList codesOn(const QImage& picture, int longestSide) {
  if (picture.isNull()) return {};
  QImage grey = picture;
  if (std::max(grey.width(), grey.height()) > longestSide)
    grey = grey.scaled(longestSide, longestSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  grey = grey.convertToFormat(QImage::Format_Grayscale8);
  // Lines of a QImage may be padded, those of zbar are not.
  QByteArray dots;
  dots.reserve(static_cast<qsizetype>(grey.width()) * grey.height());
  for (int y = 0; y < grey.height(); ++y) dots.append(reinterpret_cast<const char*>(grey.constScanLine(y)), grey.width());

  zbar::ImageScanner scanner;
  scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
  for (const auto kind : {zbar::ZBAR_QRCODE, zbar::ZBAR_CODE128}) scanner.set_config(kind, zbar::ZBAR_CFG_ENABLE, 1);
  scanner.set_config(zbar::ZBAR_CODE128, zbar::ZBAR_CFG_MIN_LEN, kShortestBarcode);
  zbar::Image image(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()), "Y800", dots.constData(),
                    static_cast<unsigned long>(dots.size()));
  QStringList out;
  if (scanner.scan(image) <= 0) return out;
  for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol) out.append(QString::fromStdString(symbol->get_data()));
  return out;
}

weavelog::Outcome<QStringList> codesOnFile(const QString& file) {
  using weavelog::fail;
  using weavelog::FaultCode;
  const QFileInfo there(file);
  if (!there.isFile() || !there.isReadable())
    return fail(FaultCode::io, "there is no file that can be read", file.toStdString(), "choose another");
  QImageReader reader(file);
  reader.setDecideFormatFromContent(true);
  reader.setAutoTransform(true);
  const QImage read = reader.read();
  if (read.isNull()) return fail(FaultCode::bad_input, "this is no picture: " + reader.errorString().toStdString(), file.toStdString(), "choose a PNG or JPEG");
  // What is transparent is paper.
  QImage picture(read.size(), QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter(&picture).drawImage(0, 0, read);
  const int longest = std::max(picture.width(), picture.height());
  for (const int look : {usualLook, 2 * usualLook, 4 * usualLook}) {
    if (auto found = codesOn(picture, look); !found.isEmpty()) return found;
    if (longest <= look) break;
  }
  constexpr int enlarged = 4;
  if (longest * enlarged > 2 * usualLook) return QStringList();
  return codesOn(picture.scaled(picture.size() * enlarged, Qt::KeepAspectRatio, Qt::FastTransformation), 2 * usualLook);
}
