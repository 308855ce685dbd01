#include "app-qml/view/camera_model.h"

#include <QCamera>
#include <QCameraDevice>
#include <QDir>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>

#include "app-qml/view/code_reader.h"
#include "app-qml/view/frame_picture.h"

namespace {

constexpr qint64 kEvery = 120;         // ms: as often as a hand can hold a code still
constexpr qint64 kOutOfSight = 1'500;  // ms
constexpr int kWidestForCodes = 1280, kWidestForPhotos = 2560;

// The one that looks away from who holds the tablet, if there are several.
QCameraDevice bestCamera() {
  for (const QCameraDevice& camera : QMediaDevices::videoInputs())
    if (camera.position() == QCameraDevice::BackFace) return camera;
  return QMediaDevices::defaultVideoInput();
}

// The largest that is no larger than what is looked at.
QCameraFormat bestFormat(const QCameraDevice& camera, int widest) {
  QCameraFormat best;
  for (const QCameraFormat& format : camera.videoFormats()) {
    const int width = format.resolution().width();
    if (width <= widest && width > (best.isNull() ? 0 : best.resolution().width())) best = format;
  }
  return best;
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
  if (!on_) photos_ = false;
  taking_ = false;
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

void CameraModel::showForPhotos() {
  setOn(false);
  photos_ = true;
  setOn(true);
}

void CameraModel::take() {
  if (on_ && photos_) taking_ = true;
}

void CameraModel::start() {
  if (!sink_) return;  // goes on once it is there
  const QCameraDevice device = bestCamera();
  if (device.isNull()) return setFault(photos_ ? tr("No camera was found. Add a photo from a file.") : tr("No camera was found. Type the number that stands on the tag."));
  camera_ = std::make_unique<QCamera>(device);
  if (const QCameraFormat format = bestFormat(device, photos_ ? kWidestForPhotos : kWidestForCodes); !format.isNull()) camera_->setCameraFormat(format);
  connect(camera_.get(), &QCamera::errorOccurred, this, [this](QCamera::Error, const QString& why) {
    setFault(photos_ ? tr("The camera can’t be used: %1. Another program may hold it; or add a photo from a file.").arg(why)
                     : tr("The camera can’t be used: %1. Another program may hold it; or type the number that stands on the tag.").arg(why));
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
  if (on_ && photos_) return photograph(frame);
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

void CameraModel::photograph(const QVideoFrame& frame) {
  if (!taking_) return;
  taking_ = false;
  const QImage picture = colourPicture(frame);
  if (picture.isNull()) return setFault(tr("The pictures of this camera can’t be read. Add a photo from a file."));
  setFault({});
  emit taken(picture);
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
