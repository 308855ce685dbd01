#include "app-qml/view/code_reader.h"

#include <zbar.h>

namespace {

// A code that is held before a camera fills much of the picture; more dots than that only take time.
constexpr int kLongestSide = 1280;

}  // namespace

QStringList codesOn(const QImage& picture) {
  if (picture.isNull()) return {};
  QImage grey = picture;
  if (std::max(grey.width(), grey.height()) > kLongestSide)
    grey = grey.scaled(kLongestSide, kLongestSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  grey = grey.convertToFormat(QImage::Format_Grayscale8);
  // Lines of a QImage may be padded, those of zbar are not.
  QByteArray dots;
  dots.reserve(static_cast<qsizetype>(grey.width()) * grey.height());
  for (int y = 0; y < grey.height(); ++y) dots.append(reinterpret_cast<const char*>(grey.constScanLine(y)), grey.width());

  zbar::ImageScanner scanner;
  scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
  for (const auto kind : {zbar::ZBAR_QRCODE, zbar::ZBAR_CODE128}) scanner.set_config(kind, zbar::ZBAR_CFG_ENABLE, 1);
  zbar::Image image(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()), "Y800", dots.constData(),
                    static_cast<unsigned long>(dots.size()));
  QStringList out;
  if (scanner.scan(image) <= 0) return out;
  for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol) out.append(QString::fromStdString(symbol->get_data()));
  return out;
}
