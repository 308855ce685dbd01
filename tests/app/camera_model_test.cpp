#include "app-qml/view/camera_model.h"

#include <qrcodegen/qrcodegen.hpp>
#include <zbar.h>

#include <QDeadlineTimer>
#include <QPainter>
#include <QSignalSpy>
#include <QVideoFrame>
#include <QVideoFrameFormat>

#include "app-qml/view/code_reader.h"
#include "app-qml/view/frame_picture.h"
#include "core/desk/tag_code.h"
#include "tests/app/device_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// The code as it is printed, somewhere on a picture of a desk.
QImage picture_of(const QString& text, QSize size, double turned = 0, int module = 6) {
  const auto code = qrcodegen::QrCode::encodeText(text.toUtf8().constData(), qrcodegen::QrCode::Ecc::MEDIUM);
  const int side = (code.getSize() + 8) * module;
  QImage out(size, QImage::Format_RGB32);
  out.fill(QColor(150, 140, 120));
  QPainter painter(&out);
  painter.translate(size.width() * 0.45, size.height() * 0.55);
  painter.rotate(turned);
  painter.fillRect(-side / 2, -side / 2, side, side, Qt::white);
  for (int y = 0; y < code.getSize(); ++y)
    for (int x = 0; x < code.getSize(); ++x)
      if (code.getModule(x, y)) painter.fillRect(-side / 2 + (x + 4) * module, -side / 2 + (y + 4) * module, module, module, Qt::black);
  return out;
}

QVideoFrame luma_frame(const QImage& picture, QVideoFrameFormat::PixelFormat format) {
  const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
  QVideoFrame frame(QVideoFrameFormat(grey.size(), format));
  REQUIRE(frame.map(QVideoFrame::WriteOnly));
  const bool between = format == QVideoFrameFormat::Format_YUYV || format == QVideoFrameFormat::Format_UYVY;
  for (int y = 0; y < grey.height(); ++y)
    for (int x = 0; x < grey.width(); ++x)
      frame.bits(0)[static_cast<qsizetype>(y) * frame.bytesPerLine(0) + (between ? 2 * x + (format == QVideoFrameFormat::Format_UYVY) : x)] =
          grey.constScanLine(y)[x];
  frame.unmap();
  return frame;
}

/// Six bars of one colour each, in a frame as cameras give it. Light, blue and red parts of the full bars by ITU-R BT.601, from memory.
struct Bar {
  int y, cb, cr;
  QColor colour;
};
const Bar kBars[] = {{235, 128, 128, Qt::white}, {210, 16, 146, Qt::yellow}, {145, 54, 34, Qt::green},
                     {81, 90, 240, Qt::red},     {41, 240, 110, Qt::blue},   {16, 128, 128, Qt::black}};

QVideoFrame bars_frame(QVideoFrameFormat::PixelFormat format) {
  using F = QVideoFrameFormat;
  constexpr int kBarWidth = 20, kHeight = 8;
  QVideoFrame frame(F(QSize(kBarWidth * 6, kHeight), format));
  REQUIRE(frame.map(QVideoFrame::WriteOnly));
  const auto at = [&](int plane, int x, int y) { return frame.bits(plane) + static_cast<qsizetype>(y) * frame.bytesPerLine(plane) + x; };
  for (int y = 0; y < kHeight; ++y) {
    for (int x = 0; x < kBarWidth * 6; ++x) {
      const Bar& bar = kBars[x / kBarWidth];
      const auto light = static_cast<uchar>(bar.y), blue = static_cast<uchar>(bar.cb), red = static_cast<uchar>(bar.cr);
      const bool even = x % 2 == 0;
      switch (format) {
        case F::Format_YUYV:
          *at(0, 2 * x, y) = light;
          *at(0, 2 * x + 1, y) = even ? blue : red;
          break;
        case F::Format_UYVY:
          *at(0, 2 * x + 1, y) = light;
          *at(0, 2 * x, y) = even ? blue : red;
          break;
        case F::Format_NV12:
        case F::Format_NV21:
          *at(0, x, y) = light;
          *at(1, x, y / 2) = even == (format == F::Format_NV12) ? blue : red;
          break;
        default:
          *at(0, x, y) = light;
          *at(format == F::Format_YV12 ? 2 : 1, x / 2, y / 2) = blue;
          *at(format == F::Format_YV12 ? 1 : 2, x / 2, y / 2) = red;
      }
    }
  }
  frame.unmap();
  return frame;
}

void show(QVideoSink& sink, const QImage& picture) {
  const QImage dots = picture.convertToFormat(QImage::Format_ARGB32);
  QVideoFrame frame(QVideoFrameFormat(dots.size(), QVideoFrameFormat::Format_BGRA8888));
  REQUIRE(frame.map(QVideoFrame::WriteOnly));
  for (int y = 0; y < dots.height(); ++y)
    std::memcpy(frame.bits(0) + static_cast<qsizetype>(y) * frame.bytesPerLine(0), dots.constScanLine(y), static_cast<std::size_t>(dots.width()) * 4);
  frame.unmap();
  sink.setVideoFrame(frame);
}

void rest(int ms) {
  const QDeadlineTimer end(ms);
  while (!end.hasExpired()) QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
}

}  // namespace

TEST_CASE("codes are read off pictures, turned, large, small; none off what has none") {
  const QString tag = QString::fromStdString(tag_code(BookId{{1, 2, 3}}, 137).value());
  CHECK(codesOn(picture_of(tag, {640, 480})) == QStringList{tag});
  CHECK(codesOn(picture_of(tag, {641, 481}, 30)) == QStringList{tag});
  CHECK(codesOn(picture_of(tag, {4000, 3000}, 180, 24)) == QStringList{tag});
  CHECK(codesOn(picture_of(tag, {320, 240}, 0, 3)) == QStringList{tag});
  QImage nothing(640, 480, QImage::Format_RGB32);
  nothing.fill(Qt::white);
  CHECK(codesOn(nothing).isEmpty());
  CHECK(codesOn(QImage()).isEmpty());
}

TEST_CASE("a barcode of no characters beside a code is none, so that one card before the camera is one") {
  const QString tag = QString::fromStdString(tag_code(BookId{{1, 2, 3}}, 137).value());
  QImage picture = picture_of(tag, {640, 480});
  // Code 128 (ISO/IEC 15417): start B, the check digit of nothing (104 mod 103 = 1), stop; widths of bars and gaps by turns.
  QPainter painter(&picture);
  painter.fillRect(10, 5, 220, 70, Qt::white);
  int x = 40;
  bool bar = true;
  for (const char width : std::string("211214" "222122" "2331112")) {
    const int dots = 2 * (width - '0');
    if (bar) painter.fillRect(x, 10, dots, 60, Qt::black);
    x += dots;
    bar = !bar;
  }
  painter.end();
  zbar::ImageScanner scanner;
  const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
  zbar::Image seen(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()), "Y800", grey.constBits(), static_cast<unsigned long>(grey.sizeInBytes()));
  CHECK(scanner.scan(seen) == 2);  // what is planted is what zbar takes for a code
  CHECK(codesOn(picture) == QStringList{tag});
}

TEST_CASE("the camera says a code once while it is held before it, and again after it was away") {
  needApplication();
  CameraModel model;
  QVideoSink sink;
  QSignalSpy read(&model, &CameraModel::read);
  model.setPicture(&sink);
  const QImage first = picture_of("WL:AS59RB:137:9", {640, 480});
  show(sink, first);
  rest(60);
  CHECK(read.isEmpty());  // it is off

  model.setOn(true);
  if (!model.present()) CHECK(model.fault().contains("No camera"));
  show(sink, first);
  const bool heard = waitUntil([&] { return read.size() == 1; });
  INFO(model.fault().toStdString());
  REQUIRE(heard);
  CHECK(read.front().front().toString() == "WL:AS59RB:137:9");
  for (int i = 0; i < 4; ++i) {
    rest(140);
    show(sink, first);
  }
  rest(200);
  CHECK(read.size() == 1);
  show(sink, picture_of("WL:AS59RB:138:7", {640, 480}));
  REQUIRE(waitUntil([&] { return read.size() == 2; }));

  QImage both(1280, 480, QImage::Format_RGB32);
  QPainter painter(&both);
  painter.drawImage(0, 0, first);
  painter.drawImage(640, 0, picture_of("WL:AS59RB:138:7", {640, 480}));
  painter.end();
  rest(140);
  show(sink, both);
  REQUIRE(waitUntil([&] { return model.fault().contains("Several"); }));
  CHECK(read.size() == 2);

  rest(1700);
  show(sink, picture_of("WL:AS59RB:138:7", {640, 480}));
  REQUIRE(waitUntil([&] { return read.size() == 3; }));
  model.setOn(false);
  rest(140);
  show(sink, first);
  rest(200);
  CHECK(read.size() == 3);
}

TEST_CASE("every form of picture that cameras give is read") {
  const auto format = GENERATE(QVideoFrameFormat::Format_NV12, QVideoFrameFormat::Format_YUV420P, QVideoFrameFormat::Format_YUYV,
                               QVideoFrameFormat::Format_UYVY, QVideoFrameFormat::Format_Y8);
  needApplication();
  CameraModel model;
  QVideoSink sink;
  QSignalSpy read(&model, &CameraModel::read);
  model.setPicture(&sink);
  model.setOn(true);
  sink.setVideoFrame(luma_frame(picture_of("WL:AS59RB:137:9", {640, 480}, 12), format));
  const bool heard = waitUntil([&] { return read.size() == 1; });
  INFO(model.fault().toStdString());
  REQUIRE(heard);
  CHECK(read.front().front().toString() == "WL:AS59RB:137:9");
}

TEST_CASE("a camera that is shut off while a picture is looked at tells nothing and does not crash") {
  needApplication();
  QVideoSink sink;
  auto model = std::make_unique<CameraModel>();
  model->setPicture(&sink);
  model->setOn(true);
  show(sink, picture_of("WL:AS59RB:137:9", {1280, 720}));
  model.reset();
  rest(100);
  SUCCEED("gone while it worked");
}

TEST_CASE("a photo has the colours that the camera saw, whatever form its pictures have") {
  using F = QVideoFrameFormat;
  const auto format = GENERATE(F::Format_NV12, F::Format_NV21, F::Format_YUV420P, F::Format_YV12, F::Format_YUYV, F::Format_UYVY);
  const QImage picture = colourPicture(bars_frame(format));
  REQUIRE(picture.size() == QSize(120, 8));
  for (int bar = 0; bar < 6; ++bar) {
    CAPTURE(bar, static_cast<int>(format));
    const QColor seen = picture.pixelColor(bar * 20 + 10, 5), meant = kBars[bar].colour;
    CHECK(std::abs(seen.red() - meant.red()) <= 2);
    CHECK(std::abs(seen.green() - meant.green()) <= 2);
    CHECK(std::abs(seen.blue() - meant.blue()) <= 2);
  }
  CHECK(greyPicture(bars_frame(format)).pixelColor(70, 2).red() == 81);
}

TEST_CASE("the camera takes a photo when somebody says so, and reads no codes meanwhile") {
  needApplication();
  CameraModel model;
  QVideoSink sink;
  QSignalSpy taken(&model, &CameraModel::taken), read(&model, &CameraModel::read);
  model.setPicture(&sink);
  model.take();  // it is off
  model.showForPhotos();
  CHECK(model.photos());
  if (!model.present()) CHECK(model.fault().contains("from a file"));
  const QImage code = picture_of("WL:AS59RB:137:9", {640, 480});
  show(sink, code);
  rest(200);
  CHECK(taken.isEmpty());
  model.take();
  show(sink, code);
  REQUIRE(taken.size() == 1);
  CHECK(taken.front().front().value<QImage>().size() == QSize(640, 480));
  show(sink, code);
  CHECK(taken.size() == 1);
  CHECK(read.isEmpty());
  CHECK(model.fault().isEmpty());
  model.setOn(false);
  CHECK_FALSE(model.photos());
  model.setOn(true);
  show(sink, code);
  REQUIRE(waitUntil([&] { return read.size() == 1; }));
}
