#pragma once

#include <QtQml/qqmlregistration.h>
#include <QElapsedTimer>
#include <QImage>
#include <QObject>
#include <QPointer>
#include <QThreadPool>
#include <QVideoSink>

#include <memory>

class QCamera;
class QMediaCaptureSession;

// The device's camera: as a reader of codes (while it is on, every code that is held before it is said once), or for photos.
class CameraModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // There is one at all.
  Q_PROPERTY(bool present READ present CONSTANT)
  Q_PROPERTY(bool on READ on WRITE setOn NOTIFY onChanged)
  // It is on for photos: codes are not read.
  Q_PROPERTY(bool photos READ photos NOTIFY onChanged)
  // Where what it sees is shown: a VideoOutput's. The codes are read from the same pictures.
  Q_PROPERTY(QVideoSink* picture READ picture WRITE setPicture NOTIFY pictureChanged)
  // Why nothing is to be seen; empty while all is well.
  Q_PROPERTY(QString fault READ fault NOTIFY faultChanged)

 public:
  explicit CameraModel(QObject* parent = nullptr);
  ~CameraModel() override;

  [[nodiscard]] bool present() const;
  [[nodiscard]] bool on() const { return on_; }
  void setOn(bool on);
  [[nodiscard]] bool photos() const { return photos_; }
  // Turns it on for photos.
  Q_INVOKABLE void showForPhotos();
  // The next picture that it sees is taken().
  Q_INVOKABLE void take();
  [[nodiscard]] QVideoSink* picture() const { return sink_; }
  void setPicture(QVideoSink* sink);
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  // A code; the same one again only after it was out of sight.
  void read(const QString& code);
  void taken(const QImage& picture);
  void onChanged();
  void pictureChanged();
  void faultChanged();

 private:
  void start();
  void look(const QVideoFrame& frame);
  void photograph(const QVideoFrame& frame);
  void seen(const QStringList& codes);
  void setFault(const QString& fault);

  bool on_ = false;
  bool photos_ = false;
  bool taking_ = false;
  bool busy_ = false;  // a picture is being looked at
  QString fault_;
  QString last_;
  QElapsedTimer sinceLook_, sinceSeen_;
  QPointer<QVideoSink> sink_;
  std::unique_ptr<QMediaCaptureSession> session_;
  std::unique_ptr<QCamera> camera_;
  QThreadPool pool_;  // ends before what it reports to
};
