#include "app-qml/papers/qr_code.h"

#include <algorithm>
#include <cmath>

#include <qrcodegen/qrcodegen.hpp>

std::vector<std::vector<bool>> codeModules(const std::string& text) try {
  const auto code = qrcodegen::QrCode::encodeSegments(qrcodegen::QrSegment::makeSegments(text.c_str()), qrcodegen::QrCode::Ecc::MEDIUM);
  const auto size = static_cast<std::size_t>(code.getSize());
  std::vector<std::vector<bool>> out(size, std::vector<bool>(size));
  for (int y = 0; y < code.getSize(); ++y)
    for (int x = 0; x < code.getSize(); ++x) out[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)] = code.getModule(x, y);
  return out;
} catch (const qrcodegen::data_too_long&) {
  return {};
}

QImage codePicture(const std::string& text, int least, qreal mm) {
  const auto rows = codeModules(text);
  if (rows.empty()) return {};
  const int modules = static_cast<int>(rows.size()) + 2 * codeQuietZone;
  const int module = std::max(1, (least + modules - 1) / modules);
  const int side = modules * module;
  QImage image(side, side, QImage::Format_Grayscale8);
  image.fill(Qt::white);
  for (int y = 0; y < modules - 2 * codeQuietZone; ++y)
    for (int x = 0; x < modules - 2 * codeQuietZone; ++x)
      if (rows[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)])
        for (int dot = 0; dot < module; ++dot)
          std::fill_n(image.scanLine((y + codeQuietZone) * module + dot) + (x + codeQuietZone) * module, module, uchar{0});
  const int dotsPerMetre = static_cast<int>(std::lround(side / mm * 1000));
  image.setDotsPerMeterX(dotsPerMetre);
  image.setDotsPerMeterY(dotsPerMetre);
  return image;
}
