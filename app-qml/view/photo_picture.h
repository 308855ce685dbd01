#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QQuickPaintedItem>

#include "app-qml/view/photos_model.h"

// One of a racket's pictures, as large as fits the item.
class PhotoPicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(PhotosModel* model READ model WRITE setModel NOTIFY wantedChanged)
  Q_PROPERTY(QString content READ content WRITE setContent NOTIFY wantedChanged)
  // It lies here: read it.
  Q_PROPERTY(bool here READ isHere WRITE setHere NOTIFY wantedChanged)
  // Why it can't be shown; "" if it can, or is not here.
  Q_PROPERTY(QString fault READ fault NOTIFY faultChanged)
  // Height of the picture for a width of one; 0 while there is none.
  Q_PROPERTY(qreal ratio READ ratio NOTIFY faultChanged)

 public:
  explicit PhotoPicture(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}

  [[nodiscard]] PhotosModel* model() const { return model_; }
  [[nodiscard]] QString content() const { return content_; }
  [[nodiscard]] bool isHere() const { return here_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] qreal ratio() const { return image_.isNull() ? 0 : qreal(image_.height()) / image_.width(); }
  void setModel(PhotosModel* model);
  void setContent(const QString& content);
  void setHere(bool here);
  void paint(QPainter* painter) override;
  void componentComplete() override;

 signals:
  void wantedChanged();
  void faultChanged();

 protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  void look();

  PhotosModel* model_ = nullptr;
  QString content_, fault_;
  bool here_ = false;
  QImage image_;
  QSize box_;  // for which it was read
};
