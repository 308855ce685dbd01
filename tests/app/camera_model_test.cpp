#include "app-qml/view/camera_model.h"

#include <qrcodegen/qrcodegen.hpp>

#include <QDeadlineTimer>
#include <QPainter>
#include <QSignalSpy>
#include <QVideoFrame>
#include <QVideoFrameFormat>

#include "app-qml/view/code_reader.h"
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
