#include "app-qml/view/frame_picture.h"

#include <QTransform>
#include <QVideoFrame>
#include <QVideoFrameFormat>

#include <algorithm>
#include <optional>

namespace {

using Format = QVideoFrameFormat;

// Where one part (light, blue, red) of a mapped frame lies: of every pixel, or of blocks of 2^across by 2^down pixels.
struct Part {
  int plane = 0;
  int offset = 0;  // bytes
  int step = 1;    // bytes from one to the next
  int across = 0;
  int down = 0;

  [[nodiscard]] int of(const QVideoFrame& frame, int x, int y) const {
    const uchar* line = frame.bits(plane) + offset + static_cast<qsizetype>(y >> down) * frame.bytesPerLine(plane);
    return line[static_cast<qsizetype>(x >> across) * step];
  }
  // Lines of frames that Qt 6.4 keeps in memory as YUV422P are too short for what should be in them.
  [[nodiscard]] bool fits(const QVideoFrame& frame) const {
    return plane < frame.planeCount() && offset + ((frame.width() - 1) >> across) * step < frame.bytesPerLine(plane);
  }
};

struct Parts {
  Part light;
  std::optional<Part> blue, red;
};

std::optional<Parts> partsOf(Format::PixelFormat format) {
  const Part whole{0, 0, 1, 0, 0};
  switch (format) {
    case Format::Format_Y8:
      return Parts{whole, {}, {}};
    case Format::Format_NV12:
      return Parts{whole, Part{1, 0, 2, 1, 1}, Part{1, 1, 2, 1, 1}};
    case Format::Format_NV21:
      return Parts{whole, Part{1, 1, 2, 1, 1}, Part{1, 0, 2, 1, 1}};
    case Format::Format_YUV420P:
      return Parts{whole, Part{1, 0, 1, 1, 1}, Part{2, 0, 1, 1, 1}};
    case Format::Format_YV12:
      return Parts{whole, Part{2, 0, 1, 1, 1}, Part{1, 0, 1, 1, 1}};
    case Format::Format_YUV422P:
      return Parts{whole, Part{1, 0, 1, 1, 0}, Part{2, 0, 1, 1, 0}};
    case Format::Format_YUYV:
      return Parts{{0, 0, 2, 0, 0}, Part{0, 1, 4, 1, 0}, Part{0, 3, 4, 1, 0}};
    case Format::Format_UYVY:
      return Parts{{0, 1, 2, 0, 0}, Part{0, 0, 4, 1, 0}, Part{0, 2, 4, 1, 0}};
    default:
      return std::nullopt;
  }
}

QImage lightOf(const QVideoFrame& frame, const Part& light) {
  QImage out(frame.size(), QImage::Format_Grayscale8);
  for (int y = 0; y < out.height(); ++y) {
    uchar* to = out.scanLine(y);
    for (int x = 0; x < out.width(); ++x) to[x] = static_cast<uchar>(light.of(frame, x, y));
  }
  return out;
}

// Kr and Kb of the standard; the rest follows from them.
struct Matrix {
  double red, blue;
  bool full;  // 0 to 255, not 16 to 235
};

Matrix matrixOf(const QVideoFrameFormat& format) {
  const bool full = format.colorRange() == Format::ColorRange_Full;
  return format.colorSpace() == Format::ColorSpace_BT709 ? Matrix{0.2126, 0.0722, full} : Matrix{0.299, 0.114, full};
}

QImage colourOf(const QVideoFrame& frame, const Parts& parts) {
  const Matrix matrix = matrixOf(frame.surfaceFormat());
  // In 1/65536, so that a large picture takes no longer than a blink.
  const auto fixed = [](double value) { return static_cast<int>(value * 65536 + (value < 0 ? -0.5 : 0.5)); };
  const double green = 1 - matrix.red - matrix.blue;
  const double scale = matrix.full ? 1 : 255.0 / 219, chroma = matrix.full ? 1 : 255.0 / 224;
  const int light = fixed(scale), black = matrix.full ? 0 : 16;
  const int redOfRed = fixed(chroma * 2 * (1 - matrix.red)), blueOfBlue = fixed(chroma * 2 * (1 - matrix.blue));
  const int greenOfRed = fixed(chroma * 2 * (1 - matrix.red) * matrix.red / green);
  const int greenOfBlue = fixed(chroma * 2 * (1 - matrix.blue) * matrix.blue / green);
  const auto level = [](int value) { return std::clamp((value + 32768) >> 16, 0, 255); };
  QImage out(frame.size(), QImage::Format_RGB32);
  for (int y = 0; y < out.height(); ++y) {
    auto* to = reinterpret_cast<QRgb*>(out.scanLine(y));
    for (int x = 0; x < out.width(); ++x) {
      const int grey = light * (parts.light.of(frame, x, y) - black);
      const int blue = parts.blue->of(frame, x, y) - 128, red = parts.red->of(frame, x, y) - 128;
      to[x] = qRgb(level(grey + redOfRed * red), level(grey - greenOfRed * red - greenOfBlue * blue), level(grey + blueOfBlue * blue));
    }
  }
  return out;
}

QImage picture(QVideoFrame& frame, bool colour) {
  if (!frame.isValid() || !frame.map(QVideoFrame::ReadOnly)) return {};
  QImage out;
  if (const auto parts = partsOf(frame.pixelFormat())) {
    const bool coloured = colour && parts->blue && parts->blue->fits(frame) && parts->red->fits(frame);
    if (parts->light.fits(frame)) out = coloured ? colourOf(frame, *parts) : lightOf(frame, parts->light);
  } else if (frame.pixelFormat() == Format::Format_Jpeg) {
    out = QImage::fromData(frame.bits(0), frame.mappedBytes(0), "JPG");
  } else if (const auto format = Format::imageFormatFromPixelFormat(frame.pixelFormat()); format != QImage::Format_Invalid) {
    out = QImage(frame.bits(0), frame.width(), frame.height(), frame.bytesPerLine(0), format).copy();
  }
  if (!out.isNull()) out = out.convertToFormat(colour ? QImage::Format_RGB32 : QImage::Format_Grayscale8);
  const int turned = static_cast<int>(frame.rotationAngle());
  frame.unmap();
  return turned == 0 ? out : out.transformed(QTransform().rotate(turned));
}

}  // namespace

QImage greyPicture(QVideoFrame frame) { return picture(frame, false); }

QImage colourPicture(QVideoFrame frame) { return picture(frame, true); }
