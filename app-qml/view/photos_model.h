#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QQmlParserStatus>
#include <QUrl>
#include <QVariant>

#include "core/base/bytes.h"
#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/base/outcome.h"

class AppDevice;

// The pictures of a job's racket, those of its earlier jobs too, newest first: what lies on this tablet is shown, the rest is fetched when somebody wants it.
class PhotosModel : public QObject, public QQmlParserStatus {
  Q_OBJECT
  Q_INTERFACES(QQmlParserStatus)
  QML_ELEMENT
  Q_PROPERTY(QString book READ book WRITE setBook NOTIFY placeChanged)
  Q_PROPERTY(QString job READ job WRITE setJob NOTIFY placeChanged)
  // [{content, detail, note, state, progress, fault}]: content names it, state is a State, progress is 0 to 1, fault says why it did not come.
  Q_PROPERTY(QVariantList photos READ photos NOTIFY changed)

 public:
  // Here: it lies on this tablet. Elsewhere: it does not. Waiting: it was asked for, and comes once the event server has it. Coming: on its way.
  enum State { Here, Elsewhere, Waiting, Coming };
  Q_ENUM(State)

  explicit PhotosModel(QObject* parent = nullptr) : QObject(parent) {}
  // `device` must be open and outlive it.
  explicit PhotosModel(AppDevice& device, QObject* parent = nullptr);

  void classBegin() override {}
  void componentComplete() override;

  [[nodiscard]] QString book() const;
  [[nodiscard]] QString job() const;
  void setBook(const QString& book);
  void setJob(const QString& job);
  [[nodiscard]] const QVariantList& photos() const { return photos_; }

  // Keeps a picture file: made smaller, without place and time. `say` is what the toast says. False: failed() of the work has told why.
  Q_INVOKABLE bool add(const QUrl& file, const QString& say);
  // Keeps what a camera took, likewise.
  Q_INVOKABLE bool addPicture(const QImage& picture, const QString& say);
  // Asks the event server for it.
  Q_INVOKABLE void fetch(const QString& content);
  // As large as fits the box. Faults: that it is not here, or damaged.
  [[nodiscard]] weavelog::Outcome<QImage> image(const QString& content, QSize box) const;

 signals:
  void placeChanged();
  void changed();

 private:
  void follow(AppDevice& device);
  void refresh();
  bool keep(const weavelog::Outcome<weavelog::Bytes>& clean, const QString& say);

  AppDevice* device_ = nullptr;
  weavelog::BookId book_;
  weavelog::EntityId job_;
  QVariantList photos_;
};
