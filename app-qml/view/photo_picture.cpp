#include "app-qml/view/photo_picture.h"

#include <QPainter>
#include <QQuickWindow>

void PhotoPicture::setModel(PhotosModel* model) {
  if (model_ == model) return;
  model_ = model;
  box_ = {};
  emit wantedChanged();
  look();
}

void PhotoPicture::setContent(const QString& content) {
  if (content_ == content) return;
  content_ = content;
  box_ = {};
  emit wantedChanged();
  look();
}

void PhotoPicture::setHere(bool here) {
  if (here_ == here) return;
  here_ = here;
  box_ = {};
  emit wantedChanged();
  look();
}

void PhotoPicture::componentComplete() {
  QQuickPaintedItem::componentComplete();
  look();
}

void PhotoPicture::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  look();
}

void PhotoPicture::look() {
  if (!isComponentComplete()) return;
  const qreal dots = window() != nullptr ? window()->effectiveDevicePixelRatio() : 1;
  // In steps, so that a window that is drawn larger does not read the file at every pixel.
  constexpr int kStep = 128;
  const auto stepped = [&](qreal length) { return (static_cast<int>(length * dots) / kStep + 1) * kStep; };
  const QSize box(stepped(width()), stepped(std::max(height(), width())));
  if (box == box_) return;
  box_ = box;
  image_ = {};
  fault_.clear();
  if (here_ && model_ != nullptr && !content_.isEmpty()) {
    if (auto image = model_->image(content_, box)) {
      image_ = std::move(*image);
    } else {
      fault_ = tr("The picture is damaged and can't be shown.");
    }
  }
  emit faultChanged();
  update();
}

void PhotoPicture::paint(QPainter* painter) {
  if (image_.isNull()) return;
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  const QSizeF size = QSizeF(image_.size()).scaled(QSizeF(width(), height()), Qt::KeepAspectRatio);
  painter->drawImage(QRectF(QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size), image_);
}
