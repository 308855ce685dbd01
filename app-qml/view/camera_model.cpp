#include "app-qml/view/camera_model.h"

#include <QCamera>
#include <QCameraDevice>
#include <QDir>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>
#include <QVideoFrameFormat>

#include "app-qml/view/code_reader.h"

namespace {

constexpr qint64 kEvery = 120;         // ms: as often as a hand can hold a code still
constexpr qint64 kOutOfSight = 1'500;  // ms
constexpr int kWidest = 1280;

// The one that looks away from who holds the tablet, if there are several.
QCameraDevice bestCamera() {
  for (const QCameraDevice& camera : QMediaDevices::videoInputs())
    if (camera.position() == QCameraDevice::BackFace) return camera;
  return QMediaDevices::defaultVideoInput();
}

// The largest that is no larger than what is looked at.
QCameraFormat bestFormat(const QCameraDevice& camera) {
  QCameraFormat best;
  for (const QCameraFormat& format : camera.videoFormats()) {
    const int width = format.resolution().width();
    if (width <= kWidest && width > (best.isNull() ? 0 : best.resolution().width())) best = format;
  }
  return best;
}

// The light of every dot `step` bytes apart.
QImage lightOf(const uchar* bits, int stride, QSize size, int step) {
  QImage out(size, QImage::Format_Grayscale8);
  for (int y = 0; y < size.height(); ++y) {
    const uchar* from = bits + static_cast<qsizetype>(y) * stride;
    uchar* to = out.scanLine(y);
    for (int x = 0; x < size.width(); ++x) to[x] = from[static_cast<qsizetype>(x) * step];
  }
  return out;
}

// The picture in grey; null for a format that cameras do not give. QVideoFrame::toImage() of Qt 6.4 draws with OpenGL and crashes where there
// is none.
QImage greyPicture(QVideoFrame frame) {
  if (!frame.isValid() || !frame.map(QVideoFrame::ReadOnly)) return {};
  const uchar* bits = frame.bits(0);
  const int stride = frame.bytesPerLine(0);
  QImage out;
  switch (frame.pixelFormat()) {
    case QVideoFrameFormat::Format_Y8:
    case QVideoFrameFormat::Format_NV12:
    case QVideoFrameFormat::Format_NV21:
    case QVideoFrameFormat::Format_YUV420P:
    case QVideoFrameFormat::Format_YUV422P:
    case QVideoFrameFormat::Format_YV12:
      out = lightOf(bits, stride, frame.size(), 1);
      break;
    case QVideoFrameFormat::Format_YUYV:
      out = lightOf(bits, stride, frame.size(), 2);
      break;
    case QVideoFrameFormat::Format_UYVY:
      out = lightOf(bits + 1, stride, frame.size(), 2);
      break;
    case QVideoFrameFormat::Format_Jpeg:
      out = QImage::fromData(bits, frame.mappedBytes(0), "JPG");
      break;
    default:
      if (const auto format = QVideoFrameFormat::imageFormatFromPixelFormat(frame.pixelFormat()); format != QImage::Format_Invalid)
        out = QImage(bits, frame.width(), frame.height(), stride, format).convertToFormat(QImage::Format_Grayscale8);
  }
  frame.unmap();
  return out;
}

}  // namespace

CameraModel::CameraModel(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

CameraModel::~CameraModel() = default;

bool CameraModel::present() const {
#ifdef Q_OS_LINUX
  // To ask the multimedia library would load it at the start of every app.
  return !QDir(QStringLiteral("/dev")).entryList({QStringLiteral("video*")}, QDir::System).isEmpty();
#else
  return !QMediaDevices::videoInputs().isEmpty();
#endif
}

void CameraModel::setOn(bool on) {
  if (on == on_) return;
  on_ = on;
  last_.clear();
  setFault({});
  if (on_) {
    start();
  } else if (camera_) {
    camera_->stop();
    session_.reset();
    camera_.reset();
  }
  emit onChanged();
}

void CameraModel::start() {
  if (!sink_) return;  // goes on once it is there
  const QCameraDevice device = bestCamera();
  if (device.isNull()) return setFault(tr("No camera was found. Type the number that stands on the tag."));
  camera_ = std::make_unique<QCamera>(device);
  if (const QCameraFormat format = bestFormat(device); !format.isNull()) camera_->setCameraFormat(format);
  connect(camera_.get(), &QCamera::errorOccurred, this, [this](QCamera::Error, const QString& why) {
    setFault(tr("The camera can’t be used: %1. Another program may hold it; or type the number that stands on the tag.").arg(why));
  });
  session_ = std::make_unique<QMediaCaptureSession>();
  session_->setCamera(camera_.get());
  session_->setVideoSink(sink_);
  camera_->start();
}

void CameraModel::setPicture(QVideoSink* sink) {
  if (sink == sink_) return;
  if (sink_) sink_->disconnect(this);
  sink_ = sink;
  if (sink_) connect(sink_, &QVideoSink::videoFrameChanged, this, &CameraModel::look);
  if (on_ && sink_ && !camera_) start();
  emit pictureChanged();
}

void CameraModel::look(const QVideoFrame& frame) {
  if (!on_ || busy_ || (sinceLook_.isValid() && sinceLook_.elapsed() < kEvery)) return;
  sinceLook_.restart();
  const QImage picture = greyPicture(frame);
  if (picture.isNull()) return setFault(tr("The pictures of this camera can’t be read. Type the number that stands on the tag."));
  busy_ = true;
  pool_.start([this, picture] {
    const QStringList codes = codesOn(picture);
    QMetaObject::invokeMethod(this, [this, codes] { seen(codes); }, Qt::QueuedConnection);
  });
}

void CameraModel::seen(const QStringList& codes) {
  busy_ = false;
  if (!on_) return;
  if (sinceSeen_.isValid() && sinceSeen_.elapsed() > kOutOfSight) last_.clear();
  if (codes.isEmpty()) return;
  sinceSeen_.restart();
  // With several in sight nobody knows which one is meant.
  if (codes.size() > 1) return setFault(tr("Several codes are in sight: hold one before the camera."));
  setFault({});
  if (codes.front() == last_) return;
  last_ = codes.front();
  emit read(last_);
}

void CameraModel::setFault(const QString& fault) {
  if (fault == fault_) return;
  fault_ = fault;
  emit faultChanged();
}
